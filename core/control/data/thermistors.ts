/** Steinhart–Hart constants of the two 10 kΩ curves that building controls use. */
import type { Source } from "../../kernel/reference";

export interface ThermistorCurve {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly source: Source;
}

export const CURVES = {
  "type II": { A: 1.12924e-3, B: 2.34108e-4, C: 0.87755e-7, source: "ntcTable" },
  "type III": { A: 1.028444e-3, B: 2.392435e-4, C: 1.562216e-7, source: "ntcTypeThree" },
} as const satisfies Readonly<Record<string, ThermistorCurve>>;
