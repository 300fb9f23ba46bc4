/** Calls of POOL.UNCERTAINTY on a pool in Miami. */
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { rawOfExample } from "../../core/kernel/explain/describe";
import { isFault } from "../../core/kernel/values/fault";
import { MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../../core/pool/data/miami";

export type Row = readonly (string | number | null)[];

export const BLOCK = {
  ...MIAMI_POOL,
  ...MIAMI_MACHINE,
  designLoad: 22,
  backUpSource: "natural gas",
  backUpPrice: 0.05,
  electricityPrice: 0.15,
} as const;

export const compiledOf = (id: string) => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`no ${id}`);
  return compiled;
};

export const raw = (ranges: readonly Row[], more: object = {}, runs: number | null = 8) => [
  rawOfExample({ ...BLOCK, ...more }),
  MIAMI_MONTHS,
  ranges,
  runs,
  "SI",
];

export const tableOf = (args: readonly unknown[], id = "POOL.UNCERTAINTY"): readonly (readonly unknown[])[] => {
  const out = evaluate(compiledOf(id), args, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return out as readonly (readonly unknown[])[];
};

export const refusalOf = (args: readonly unknown[]): string => {
  const out = evaluate(compiledOf("POOL.UNCERTAINTY"), args, CATALOGUE);
  return isFault(out) ? out.message : "no refusal";
};
