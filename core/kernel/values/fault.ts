/**
 * Faults: what a cell shows in place of a value. Two codes only, since only these carry a message in a cell:
 * `#VALUE!` is an input to mend; `#N/A` is outside what the method, the data or physics covers.
 */

import { replaceMarks } from "./quantityMark";
import { show, type KindName, type System } from "./quantity";

export type FaultCode = "#VALUE!" | "#N/A";

export interface Fault extends Error {
  readonly fault: true;
  /** One of the two codes above, or an error of the host's own that came in with an argument and passes through. */
  readonly code: string;
}

const fault = (code: string, message: string): Fault => {
  const error = new Error(message);
  return Object.assign(error, { fault: true as const, code });
};

/** An input to mend (`#VALUE!`). The message names argument, rule, limit with unit, and what came. */
export const valueError = (message: string): Fault => fault("#VALUE!", message);

/** Outside what the method, the data or physics covers (`#N/A`). */
export const notAvailable = (message: string): Fault => fault("#N/A", message);

/** An error that stood in an argument's cell: it passes through unchanged. */
export const hostError = (code: string, message: string): Fault => fault(code, message);

export const isFault = (value: unknown): value is Fault =>
  value instanceof Error && (value as Partial<Fault>).fault === true;

/** A message with its told quantities written in one system's units. */
export const renderMarks = (message: string, system: System): string =>
  replaceMarks(message, (kind, value) => show(value, kind as KindName, system));
