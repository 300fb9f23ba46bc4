/** The elements of rows that are made as they are written. */
import type { CellValue } from "../../port";
import { columnLetters } from "../../reader/reference";
import { needsQuote, valueCellText } from "../sheet/cellText";
import type { StyleBuilder } from "../styles/build";
import { escapedCellText } from "../xml/text";
import { NO_LOOK, type NewSheet } from "./newSheet";

/** Longer texts may be refused. */
const SHORT = 32_000;

/** A text whose white space a reader may not change, though nothing says that it is to be kept. */
const isPlain = (text: string): boolean =>
  text.length < SHORT &&
  text.charCodeAt(0) > 32 &&
  text.charCodeAt(text.length - 1) > 32 &&
  !/[\t\n\r]| {2}/.test(text);

/** Writes the cells of one column, where the same text often comes again. */
function columnCells(column: number) {
  const letters = columnLetters(column);
  let before = "";
  let inner = "";
  return (row: string, style: number, value: CellValue): string => {
    const address = letters + row;
    if (typeof value !== "string" || !isPlain(value)) return valueCellText(address, style, value);
    if (value !== before) inner = `t="inlineStr"><is><t>${escapedCellText(value)}</t></is></c>`;
    before = value;
    return `<c r="${address}"${style === 0 ? "" : ` s="${style}"`} ${inner}`;
  };
}

export function* lineTexts({ lines }: NewSheet, styles: StyleBuilder): Generator<string> {
  const columns: ReturnType<typeof columnCells>[] = [];
  for (let at = 0; at < (lines?.count ?? 0); at++) {
    const { values = [], styles: looks = [], height } = lines?.line(at) ?? {};
    const number = String((lines?.firstRow ?? 0) + at + 1);
    let text = `<row r="${number}"${height === undefined ? "" : ` ht="${height}" customHeight="1"`}>`;
    for (let column = 0; column < values.length; column++) {
      const value = values[column] ?? null;
      const style = styles.of(looks[column] ?? NO_LOOK, needsQuote(value));
      text += (columns[column] ??= columnCells(column))(number, style, value);
    }
    yield `${text}</row>`;
  }
}
