/** Values as a host hands them to a custom function and takes them back. */

/** null is an omitted argument or a blank cell. */
export type HostScalar = string | number | boolean | null;
export type HostMatrix = readonly (readonly HostScalar[])[];
export type HostArgument = HostScalar | HostMatrix | readonly HostScalar[] | readonly HostMatrix[];

/** An error value with the message that belongs to it; the message is empty where nobody gave one. */
export interface HostFault {
  readonly code: string;
  readonly message: string;
}

export type ResultCell = string | number | boolean | HostFault;
export type CallResult = ResultCell | readonly (readonly ResultCell[])[];

export type CustomFunction = (...args: HostArgument[]) => unknown;

export const isFaultValue = (value: unknown): value is HostFault =>
  typeof value === "object" && value !== null && "code" in value && typeof value.code === "string";

export const isMatrixResult = (value: CallResult): value is readonly (readonly ResultCell[])[] => Array.isArray(value);
