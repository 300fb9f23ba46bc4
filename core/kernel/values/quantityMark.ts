/**
 * Quantities inside the messages of solvers. A solver computes in SI and doesn't know the cell's units, so it marks a
 * quantity with its kind and base value; the runner prints it in the cell's units.
 */

/** Marks a base value of a kind for use inside a message. */
export const quantityMark = (kind: string, value: number): string => `\u27e6${kind}|${value}\u27e7`;

const MARK = /\u27e6([^|\u27e7]*)\|([^\u27e7]*)\u27e7/g;

/** The message with every marked quantity printed by `write`. */
export const replaceMarks = (message: string, write: (kind: string, value: number) => string): string =>
  message.includes("\u27e6")
    ? message.replace(MARK, (_, kind: string, value: string) => write(kind, Number(value)))
    : message;

/** The base values that a message marks. */
export function markedValues(message: string): readonly number[] {
  return [...message.matchAll(MARK)].map(([, , value]) => Number(value));
}
