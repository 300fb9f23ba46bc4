/** The elements of rows that are made as they are written. */
import type { CellValue } from "../../port";
import { columnLetters } from "../../reader/reference";
import { needsQuote, valueCellText } from "../sheet/cellText";
import type { StyleBuilder } from "../styles/build";
import { escapedCellText } from "../xml/text";
import { NO_LOOK, type NewSheet } from "./newSheet";
import type { SharedTexts } from "./sharedTexts";

/** Longer texts may be refused. */
const SHORT = 32_000;

/** A text whose white space a reader may not change, though nothing says that it is to be kept. */
const isPlain = (text: string): boolean =>
  text.length < SHORT &&
  text.charCodeAt(0) > 32 &&
  text.charCodeAt(text.length - 1) > 32 &&
  !/[\t\n\r]| {2}/.test(text);

/** Writes the cells of one column. */
function columnCells(column: number, shared: SharedTexts | undefined) {
  const letters = columnLetters(column);
  let before = "";
  let inner = "";
  return (row: string, style: number, value: CellValue): string => {
    const address = letters + row;
    const fits = typeof value === "string" && (shared === undefined ? isPlain(value) : value.length < SHORT);
    if (!fits) return valueCellText(address, style, value);
    if (value !== before)
      inner =
        shared === undefined
          ? `t="inlineStr"><is><t>${escapedCellText(value)}</t></is></c>`
          : `t="s"><v>${shared.of(value)}</v></c>`;
    before = value;
    return `<c r="${address}"${style === 0 ? "" : ` s="${style}"`} ${inner}`;
  };
}

export function* lineTexts(
  { lines }: NewSheet,
  styles: StyleBuilder,
  texts: SharedTexts | undefined,
): Generator<string> {
  if (lines === undefined) return;
  const { count, firstRow, sharedColumns } = lines;
  const columns: ReturnType<typeof columnCells>[] = [];
  for (let at = 0; at < count; at++) {
    const { values, styles: looks, height } = lines.line(at);
    const number = String(firstRow + at + 1);
    let text = `<row r="${number}"${height === undefined ? "" : ` ht="${height}" customHeight="1"`}>`;
    for (let column = 0; column < values.length; column++) {
      const value = values[column] ?? null;
      const style = styles.of(looks[column] ?? NO_LOOK, needsQuote(value));
      columns[column] ??= columnCells(column, sharedColumns.has(column) ? texts : undefined);
      text += columns[column]?.(number, style, value) ?? "";
    }
    yield `${text}</row>`;
  }
}
