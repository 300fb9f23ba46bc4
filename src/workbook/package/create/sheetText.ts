/** The text of a new sheet: ECMA-376 part 1, 18.3.1.99. */
import type { CellValue } from "../../port";
import { cellsText } from "../../reader/reference";
import { cellText, formulaText, needsQuote } from "../sheet/cellText";
import { keyOf } from "../sheet/collect";
import type { NextSlice } from "../../timeSlices";
import type { StyleBuilder } from "../styles/build";
import { escapedXml, escapedAttribute } from "../xml/text";
import { joined } from "../zip/write";
import { DECLARATION } from "./minimal";
import type { NewPrint, NewSheet, NewValidation, PlacedCell } from "./newSheet";

export interface NewSheetContext {
  readonly main: string;
  readonly styles: StyleBuilder;
  /** The cell metadata that mark a dynamic array, where the workbook has such. */
  readonly dynamic: number | undefined;
  readonly pause: NextSlice;
}

/** Row by row, as most sheets are made. */
function isOrdered(cells: readonly PlacedCell[]): boolean {
  let last = -1;
  for (const { row, column, spill } of cells) {
    const key = keyOf(row, column);
    if (key <= last || spill !== undefined) return false;
    last = key;
  }
  return true;
}

/** The cells row by row, with what array formulas fill. */
function orderedCells({ cells }: NewSheet): readonly PlacedCell[] {
  if (isOrdered(cells)) return cells;
  const found = new Map<number, PlacedCell>();
  const put = (cell: PlacedCell): void => {
    const key = keyOf(cell.row, cell.column);
    const before = found.get(key);
    found.set(key, before === undefined ? cell : { ...before, ...cell });
  };
  for (const cell of cells) put(cell);
  for (const { row, column, spill } of cells)
    spill?.forEach((line, down) =>
      line.forEach((value, right) => {
        if (down + right > 0) put({ row: row + down, column: column + right, value });
      }),
    );
  return [...found.keys()].sort((a, b) => a - b).flatMap((key) => found.get(key) ?? []);
}

function oneCell({ row, column, value = null, formula, spill, style }: PlacedCell, context: NewSheetContext): string {
  const isArray = formula !== undefined && spill !== undefined;
  const area = isArray ? cellsText({ row, column, rows: spill.length, columns: spill[0]?.length ?? 1 }) : undefined;
  const shown: CellValue = value ?? spill?.[0]?.[0] ?? null;
  return cellText(
    {
      row,
      column,
      style: context.styles.of(style ?? {}, formula === undefined && needsQuote(shown)),
      cm: isArray ? context.dynamic : undefined,
      formula: formula === undefined ? undefined : formulaText(formula, "", area),
      value: shown,
    },
    "",
  );
}

/** Each row's element, those that have nothing but a height included. */
function* rowTexts(sheet: NewSheet, context: NewSheetContext): Generator<string> {
  const { heights = {} } = sheet;
  const high = Object.keys(heights)
    .map(Number)
    .sort((a, b) => a - b);
  let next = 0;
  const element = (at: number, content: string): string => {
    const height = heights[at];
    const ht = height === undefined ? "" : ` ht="${height}" customHeight="1"`;
    return `<row r="${at + 1}"${ht}>${content}</row>`;
  };
  function* emptyBefore(limit: number): Generator<string> {
    for (; (high[next] ?? Infinity) < limit; next++) yield element(high[next] ?? 0, "");
    if (high[next] === limit) next++;
  }
  let row = -1;
  let cells = "";
  for (const cell of orderedCells(sheet)) {
    if (cell.row !== row) {
      if (row >= 0) yield element(row, cells);
      yield* emptyBefore(cell.row);
      row = cell.row;
      cells = "";
    }
    cells += oneCell(cell, context);
  }
  if (row >= 0) yield element(row, cells);
  yield* emptyBefore(Infinity);
}

function viewText({ frozenRows = 0, frozenColumns = 0 }: NewSheet): string {
  if (frozenRows + frozenColumns === 0) return '<sheetViews><sheetView workbookViewId="0"/></sheetViews>';
  const corner = cellsText({ row: frozenRows, column: frozenColumns, rows: 1, columns: 1 });
  const pane = frozenRows === 0 ? "topRight" : frozenColumns === 0 ? "bottomLeft" : "bottomRight";
  const split =
    (frozenColumns > 0 ? ` xSplit="${frozenColumns}"` : "") + (frozenRows > 0 ? ` ySplit="${frozenRows}"` : "");
  return `<sheetViews><sheetView workbookViewId="0"><pane${split} topLeftCell="${corner}" activePane="${pane}" state="frozen"/></sheetView></sheetViews>`;
}

function columnsText({ widths = {} }: NewSheet): string {
  const columns = Object.entries(widths).map(
    ([column, width]) =>
      `<col min="${Number(column) + 1}" max="${Number(column) + 1}" width="${width}" customWidth="1"/>`,
  );
  return columns.length === 0 ? "" : `<cols>${columns.join("")}</cols>`;
}

const VALIDATION_ATTRIBUTES = [
  "type",
  "errorStyle",
  "operator",
  "allowBlank",
  "showInputMessage",
  "showErrorMessage",
  "errorTitle",
  "error",
  "promptTitle",
  "prompt",
] as const;

function validationText(one: NewValidation): string {
  const attributes = VALIDATION_ATTRIBUTES.map((name) => {
    const value = one[name];
    if (value === undefined) return "";
    return ` ${name}="${typeof value === "boolean" ? (value ? "1" : "0") : escapedAttribute(value)}"`;
  });
  const formulas = one.formulas.map((text, at) => `<formula${at + 1}>${escapedXml(text)}</formula${at + 1}>`);
  return `<dataValidation${attributes.join("")} sqref="${escapedAttribute(one.areas)}">${formulas.join("")}</dataValidation>`;
}

const list = (name: string, items: readonly string[]): string =>
  items.length === 0 ? "" : `<${name} count="${items.length}">${items.join("")}</${name}>`;

function pageText({ landscape, fitToWidth, onePage, footer }: NewPrint): string {
  // Without a height in pages it is one.
  const fit = fitToWidth === true && onePage !== true ? ' fitToHeight="0"' : "";
  const foot =
    footer === undefined || footer === ""
      ? ""
      : `<headerFooter><oddFooter>${escapedXml(footer)}</oddFooter></headerFooter>`;
  return (
    '<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/>' +
    `<pageSetup${fit} orientation="${landscape === true ? "landscape" : "portrait"}"/>${foot}`
  );
}

/** Rows that are encoded together: the text of a large sheet is never held as one. */
const ROWS_AT_ONCE = 256;

/** The part's bytes. */
export async function newSheetBytes(sheet: NewSheet, context: NewSheetContext): Promise<Uint8Array> {
  const { merged = [], validations = [], print } = sheet;
  const { main, pause } = context;
  const fits = print?.fitToWidth === true ? '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>' : "";
  const merges = merged.map((area) => `<mergeCell ref="${cellsText(area)}"/>`);
  const encoder = new TextEncoder();
  const pieces: Uint8Array[] = [];
  let texts = [
    `${DECLARATION}<worksheet xmlns="${main}">${fits}${viewText(sheet)}<sheetFormatPr defaultRowHeight="15"/>`,
    `${columnsText(sheet)}<sheetData>`,
  ];
  for (const row of rowTexts(sheet, context)) {
    texts.push(row);
    if (texts.length >= ROWS_AT_ONCE) pieces.push(encoder.encode(texts.splice(0).join("")));
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  texts = [
    ...texts,
    "</sheetData>",
    list("mergeCells", merges),
    list("dataValidations", validations.map(validationText)),
    print === undefined ? "" : pageText(print),
    "</worksheet>",
  ];
  pieces.push(encoder.encode(texts.join("")));
  return joined(pieces);
}
