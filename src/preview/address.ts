import type { Address, Area } from "../workbook/port";

/** Cell addresses as text, in the manner of spreadsheets: columns in letters, rows from 1. */

export const columnLetters = (column: number): string => {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? columnLetters(rest - 1) : "") + String.fromCharCode(65 + (column % 26));
};

export const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

export const cellText = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

/** A sheet's name as a formula writes it: quoted unless it is a plain word. */
export const sheetText = (name: string): string =>
  /^[A-Za-z_][A-Za-z0-9_.]*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`;

export const addressText = ({ sheet, row, column }: Address): string => `${sheetText(sheet)}!${cellText(row, column)}`;

/** A cell or range text, absolute or not, with an optional sheet before it, split into its parts. */
const REFERENCE =
  /^(?:(?:'((?:[^']|'')+)'|([^'!\s]+))!)?\$?([A-Za-z]{1,3})\$?(\d{1,7})(?::\$?([A-Za-z]{1,3})\$?(\d{1,7}))?$/;

/** The area that a plain reference text means, undefined where it is no plain reference. */
export const areaOf = (text: string, sheet: string): Area | undefined => {
  const parts = REFERENCE.exec(text.trim());
  const [, quoted, plain, letters, digits, otherLetters, otherDigits] = parts ?? [];
  if (letters === undefined || digits === undefined) return undefined;
  const first = { row: Number(digits) - 1, column: columnNumber(letters) };
  const last = {
    row: otherDigits === undefined ? first.row : Number(otherDigits) - 1,
    column: otherLetters === undefined ? first.column : columnNumber(otherLetters),
  };
  return {
    sheet: quoted?.replaceAll("''", "'") ?? plain ?? sheet,
    row: Math.min(first.row, last.row),
    column: Math.min(first.column, last.column),
    rows: Math.abs(last.row - first.row) + 1,
    columns: Math.abs(last.column - first.column) + 1,
  };
};

const QUOTED_OR_REFERENCE =
  /"(?:[^"]|"")*"|(?:(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?\$?[A-Za-z]{1,3}\$?\d{1,7}(?::\$?[A-Za-z]{1,3}\$?\d{1,7})?(?![\w.(!])/g;

/** The plain references in a formula, in order. */
export const referencesIn = (formula: string, sheet: string): readonly Area[] =>
  [...formula.matchAll(QUOTED_OR_REFERENCE)].flatMap(([text]) =>
    text.startsWith('"') ? [] : (areaOf(text, sheet) ?? []),
  );
