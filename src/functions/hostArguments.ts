/** Puts the arguments that a host passes into the places of a definition. */
import type { Compiled, CellInput, CellScalar } from "../../core";

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

const isInvocation = (value: unknown): value is object =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Whether Excel calls only to show a value beside a formula that is still being typed. */
export const isValuePreview = (hostArguments: readonly unknown[]): boolean => {
  const last = hostArguments.at(-1);
  return isInvocation(last) && "isInValuePreview" in last && last.isInValuePreview === true;
};

/** Comes behind the arguments from a host that calculates in slices. */
export interface HostSlices {
  /** Whether other tasks want their turn. */
  isOver(): boolean;
  nextTurn(): Promise<void>;
}

export const slicesOf = (hostArguments: readonly unknown[]): HostSlices | undefined => {
  const last = hostArguments.at(-1);
  return isInvocation(last) && "isOver" in last ? (last as HostSlices) : undefined;
};

/** Excel passes null for every optional argument that was left out. */
function withoutOmitted(values: readonly CellInput[]): readonly CellInput[] {
  let end = values.length;
  while (end > 0 && values[end - 1] === null) end--;
  return end === values.length ? values : values.slice(0, end);
}

/**
 * The arguments of a call in their places: those of the definition, without the invocation that Excel puts behind them and
 * without omitted ones at the end. A repeated argument's list is spread.
 */
export const placeArguments = (compiled: Compiled, hostArguments: readonly unknown[]): readonly CellInput[] => {
  const last = compiled.args.length - 1;
  if (!compiled.repeats) return withoutOmitted(hostArguments.slice(0, last + 1).map(rawOrOmitted));
  const before = hostArguments.slice(0, last).map(rawOrOmitted);
  const list = hostArguments[last];
  const repeated = isList(list) ? list : hostArguments.slice(last).filter((value) => !isInvocation(value));
  return withoutOmitted([...before, ...repeated.map((each) => single(rawOrOmitted(each)))]);
};
