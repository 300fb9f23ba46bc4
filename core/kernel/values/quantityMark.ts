/**
 * Quantities inside messages of models. A model computes in SI and knows nothing of a cell's units, so it tells a quantity
 * by kind and base value; the runner writes it in the cell's units.
 */

/** A base value of a kind, to stand inside a message. */
export const quantityMark = (kind: string, value: number): string => `\u27e6${kind}|${value}\u27e7`;

const TOLD = /\u27e6([^|\u27e7]*)\|([^\u27e7]*)\u27e7/g;

/** The message with every told quantity written by `write`. */
export const replaceMarks = (message: string, write: (kind: string, value: number) => string): string =>
  message.includes("\u27e6")
    ? message.replace(TOLD, (_, kind: string, value: string) => write(kind, Number(value)))
    : message;

/** The base values that a message tells. */
export function markedValues(message: string): readonly number[] {
  return [...message.matchAll(TOLD)].map(([, , value]) => Number(value));
}
