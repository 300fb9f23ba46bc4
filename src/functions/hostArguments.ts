/** Arguments as a host passes them, put into the places of a definition. */
import type { Compiled } from "../../core";
import type { RawValue, Scalar } from "../workbook/values";

const isRaw = (value: unknown): value is RawValue =>
  value === null || Array.isArray(value) || ["string", "number", "boolean"].includes(typeof value);

const rawOrOmitted = (value: unknown): RawValue => (isRaw(value) ? value : null);

/** A host passes all values of a repeated argument as one list: of matrices or of single values, never one matrix. */
const isList = (value: unknown): value is readonly unknown[] => {
  if (!Array.isArray(value)) return false;
  const first: unknown = value[0];
  return !Array.isArray(first) || Array.isArray(first[0]);
};

const single = (value: RawValue): RawValue => {
  const matrix = Array.isArray(value) ? (value as readonly (readonly Scalar[])[]) : undefined;
  return matrix?.length === 1 && matrix[0]?.length === 1 ? (matrix[0][0] ?? null) : value;
};

const spread = (list: readonly unknown[]): RawValue[] => {
  const values = list.map((each) => single(rawOrOmitted(each)));
  while (values.length > 0 && values.at(-1) === null) values.pop();
  return values;
};

/**
 * The arguments of a call in their places. A repeated argument's list is spread; an object that a host appends (its
 * invocation, under stale metadata) becomes an omitted argument.
 */
export const placeArguments = (compiled: Compiled, hostArguments: readonly unknown[]): readonly RawValue[] => {
  if (!compiled.repeats) return hostArguments.every(isRaw) ? hostArguments : hostArguments.map(rawOrOmitted);
  const last = compiled.args.length - 1;
  const before = hostArguments.slice(0, last).map(rawOrOmitted);
  const list = hostArguments[last];
  return [...before, ...spread(isList(list) ? list : hostArguments.slice(last))];
};
