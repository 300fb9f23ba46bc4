/** Calls of NOTE.UNCERTAINTY with normal and log-normal arguments. */
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { normalQuantile } from "../../core/numeric/normal";

const TENTH = normalQuantile(0.9);

const compiledNote = () => {
  const compiled = COMPILED.get("NOTE.UNCERTAINTY");
  if (compiled === undefined) throw new Error("no such function");
  return compiled;
};

export type Raw = readonly unknown[];

export const rowsOf = (...raw: Raw): readonly (readonly unknown[])[] => {
  const out = evaluate(compiledNote(), raw, CATALOGUE);
  if (!Array.isArray(out)) throw out as unknown as Error;
  return out as readonly (readonly unknown[])[];
};

export const cellsOf = (...raw: Raw): ReadonlyMap<unknown, unknown> =>
  new Map(rowsOf(...raw).map(([label, value]) => [label, value]));

export const refusalOf = (...raw: Raw): string => {
  const out = evaluate(compiledNote(), raw, CATALOGUE);
  return out instanceof Error ? out.message : "no refusal";
};

export const codesOf = (...raw: Raw): readonly string[] =>
  explain(compiledNote(), raw as never, CATALOGUE).cautions.map(({ code }) => code);

export const normal = (label: string, mean: number, deviation: number, freedom: number | null = null): Raw => [
  label,
  "normal",
  mean - TENTH * deviation,
  null,
  mean + TENTH * deviation,
  null,
  freedom,
];

export const logNormal = (label: string, median: number, deviation: number): Raw => [
  label,
  "log-normal",
  median / deviation ** TENTH,
  null,
  median * deviation ** TENTH,
];

const VOLTAGE = normal("volume", 4.999, 0.0032);
const CURRENT = normal("flow", 0.019661, 0.0000095);
/** Ohms as hours: volts as m³, amperes as m³/h. */
export const IMPEDANCE: Raw = ["POOL.TURNOVER", [VOLTAGE, CURRENT], "", "", "SI"];

/** The steps of a call's working, as text. */
export const workingOf = (...raw: Raw): string => JSON.stringify(explain(compiledNote(), raw, CATALOGUE).steps);
