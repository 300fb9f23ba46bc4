/** The formula of a shared group in each of its cells: references without $ move with the cell. */
import { columnLetters, columnNumber, MOST_COLUMNS, MOST_ROWS } from "../../reader/reference";
import { isRefusal, tokens } from "../../reader/tokens";
import { splitSheet } from "./uses";

/** Gives the formula so many rows down and columns to the right of the cell that holds its text. */
export type Shift = (rows: number, columns: number) => string;

type Piece = string | { readonly letters: string; readonly digits: string };

const CELL = /(\$?[A-Za-z]{1,3})(\$?\d{1,7})/y;
const ROW = /()(\$?\d{1,7})/y;
const COLUMN = /(\$?[A-Za-z]{1,3})()/y;

/** A1, A1:B2, A:C or 1:3 as pieces; undefined where the text is no cells. */
function cellPieces(text: string): Piece[] | undefined {
  for (const pattern of [CELL, COLUMN, ROW]) {
    const pieces: Piece[] = [];
    let at = 0;
    for (;;) {
      pattern.lastIndex = at;
      const found = pattern.exec(text);
      if (found === null) break;
      pieces.push({ letters: found[1] ?? "", digits: found[2] ?? "" });
      at = pattern.lastIndex;
      if (text[at] !== ":") break;
      pieces.push(":");
      at++;
    }
    const single = pieces.length === 1 && pattern !== CELL;
    if (at === text.length && pieces.length > 0 && !single) return pieces;
    if (at === text.length - 1 && text[at] === "#" && pattern === CELL && pieces.length === 1) return [...pieces, "#"];
  }
  return undefined;
}

function moved({ letters, digits }: Exclude<Piece, string>, rows: number, columns: number): string | undefined {
  let column = letters;
  let row = digits;
  if (letters !== "" && !letters.startsWith("$")) {
    const number = columnNumber(letters) + columns;
    if (number < 0 || number >= MOST_COLUMNS) return undefined;
    column = columnLetters(number);
  }
  if (digits !== "" && !digits.startsWith("$")) {
    const number = Number(digits) + rows;
    if (number < 1 || number > MOST_ROWS) return undefined;
    row = String(number);
  }
  return column + row;
}

/** A reference that leaves the sheet is lost, as when the formula is filled there. */
function movedPieces(pieces: readonly Piece[], rows: number, columns: number): string {
  const texts = pieces.map((piece) => (typeof piece === "string" ? piece : moved(piece, rows, columns)));
  return texts.includes(undefined) ? "#REF!" : texts.join("");
}

/** @returns undefined where the text can't be cut into tokens */
export function shiftOf(formula: string): Shift | undefined {
  const found = tokens(formula);
  if (isRefusal(found)) return undefined;
  const parts: (string | readonly Piece[])[] = [];
  let at = 0;
  for (const token of found) {
    const { sheet, rest } = token.kind === "reference" ? splitSheet(token.text) : { sheet: undefined, rest: "" };
    const pieces = token.kind === "reference" ? cellPieces(rest) : undefined;
    if (pieces === undefined) continue;
    const start = sheet === undefined ? token.start : token.end - rest.length;
    parts.push(formula.slice(at, start), pieces);
    at = token.end;
  }
  parts.push(formula.slice(at));
  return (rows, columns) =>
    parts.map((part) => (typeof part === "string" ? part : movedPieces(part, rows, columns))).join("");
}
