/** Values as a host hands them to a custom function and takes them back. */

/** null is an omitted argument or a blank cell. */
export type RawScalar = string | number | boolean | null;
export type RawMatrix = readonly (readonly RawScalar[])[];
export type RawArgument = RawScalar | RawMatrix | readonly RawScalar[] | readonly RawMatrix[];

/** An error value with the message that belongs to it; the message is empty where nobody gave one. */
export interface Fault {
  readonly code: string;
  readonly message: string;
}

export type ResultCell = string | number | boolean | Fault;
export type CallResult = ResultCell | readonly (readonly ResultCell[])[];

export type CustomFunction = (...args: RawArgument[]) => unknown;

export const isFaultValue = (value: unknown): value is Fault =>
  typeof value === "object" && value !== null && "code" in value && typeof value.code === "string";

export const isMatrixResult = (value: CallResult): value is readonly (readonly ResultCell[])[] => Array.isArray(value);
