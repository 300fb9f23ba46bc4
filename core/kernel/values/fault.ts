/**
 * Faults: what a cell shows in place of a value. Two codes of our own, since only these carry a message in a cell:
 * `#VALUE!` is an input to correct; `#N/A` is outside what the method, the data or physics covers.
 */
import { show, type KindName, type System } from "./quantity";
import { replaceMarks } from "./quantityMark";

/** A fault as data: between core, cells, workbook and panel. */
export interface Fault {
  /** An error code of the sheet: one of our two, or one that an argument held and that passes through. */
  readonly code: string;
  /** What to do about it; empty if unknown. */
  readonly message: string;
}

/** A fault that can be thrown. */
export type FaultError = Error & Fault;

const faultError = (code: string, message: string): FaultError =>
  Object.assign(new Error(message), { name: "Fault", code });

/** `#VALUE!`: an input to correct. The message names argument, rule, limit with unit, and the input. */
export const valueError = (message: string): FaultError => faultError("#VALUE!", message);

/** `#N/A`: outside what the method, the data or physics covers. */
export const notAvailable = (message: string): FaultError => faultError("#N/A", message);

/** An error of the host's own in an argument: it passes through unchanged. */
export const hostError = (code: string, message: string): FaultError => faultError(code, message);

/** A quantity outside its range, in words with units. */
export interface OutOfRange {
  /** Its name: "R-32 temperature". */
  readonly quantity: string;
  /** What it must be: "at most 478.5 K". */
  readonly limit: string;
  /** Its value: "500 K". */
  readonly got: string;
}

/** `#N/A`: a quantity is outside the range that a method covers. */
export const outOfRange = ({ quantity, limit, got }: OutOfRange): FaultError =>
  notAvailable(`${quantity}: must be ${limit}, got ${got}`);

/** Whether a value, returned or caught, is a fault. Every error code of a sheet begins with "#". */
export const isFault = (value: unknown): value is Fault =>
  typeof value === "object" &&
  value !== null &&
  typeof (value as Partial<Fault>).code === "string" &&
  (value as Fault).code.startsWith("#");

/** A message with every marked quantity printed in one system's units. */
export const renderMarks = (message: string, system: System): string =>
  replaceMarks(message, (kind, value) => show(value, kind as KindName, system));
