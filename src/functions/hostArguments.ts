/** Puts the arguments that a host passes into the places of a definition. */
import type { Compiled } from "../../core";
import type { CellInput, CellScalar } from "../workbook/values";

const isRaw = (value: unknown): value is CellInput =>
  value === null || Array.isArray(value) || ["string", "number", "boolean"].includes(typeof value);

const rawOrOmitted = (value: unknown): CellInput => (isRaw(value) ? value : null);

/** A host passes all values of a repeated argument as one list: of matrices or of single values, never one matrix. */
const isList = (value: unknown): value is readonly unknown[] => {
  if (!Array.isArray(value)) return false;
  const first: unknown = value[0];
  return !Array.isArray(first) || Array.isArray(first[0]);
};

const single = (value: CellInput): CellInput => {
  const matrix = Array.isArray(value) ? (value as readonly (readonly CellScalar[])[]) : undefined;
  return matrix?.length === 1 && matrix[0]?.length === 1 ? (matrix[0][0] ?? null) : value;
};

const spread = (list: readonly unknown[]): CellInput[] => {
  const values = list.map((each) => single(rawOrOmitted(each)));
  while (values.length > 0 && values.at(-1) === null) values.pop();
  return values;
};

/**
 * The arguments of a call in their places. The list of a repeated argument is spread; an object that a host appends (its
 * invocation, under stale metadata) counts as omitted.
 */
export const placeArguments = (compiled: Compiled, hostArguments: readonly unknown[]): readonly CellInput[] => {
  if (!compiled.repeats) return hostArguments.every(isRaw) ? hostArguments : hostArguments.map(rawOrOmitted);
  const last = compiled.args.length - 1;
  const before = hostArguments.slice(0, last).map(rawOrOmitted);
  const list = hostArguments[last];
  return [...before, ...spread(isList(list) ? list : hostArguments.slice(last))];
};
