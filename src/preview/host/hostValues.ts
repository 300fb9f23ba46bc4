/** Values as a host hands them to a custom function and takes them back. */
import type { HostSlices } from "../../functions/hostArguments";
import type { CellMatrix, CellScalar, Fault } from "../../../core";

export type HostArgument = CellScalar | CellMatrix | readonly CellScalar[] | readonly CellMatrix[];

export type ResultCell = string | number | boolean | Fault;
export type CallResult = ResultCell | readonly (readonly ResultCell[])[];

export type CustomFunction = (...args: (HostArgument | HostSlices)[]) => unknown;

export const isFaultValue = (value: unknown): value is Fault =>
  typeof value === "object" && value !== null && "code" in value && typeof value.code === "string";

export const isMatrixResult = (value: CallResult): value is readonly (readonly ResultCell[])[] => Array.isArray(value);
