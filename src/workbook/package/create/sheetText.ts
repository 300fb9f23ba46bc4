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
import { lineTexts } from "./lineTexts";
import type { SharedTexts } from "./sharedTexts";
import { pageText } from "./pageText";
import { outlineDepth, rowAttributes } from "./rowAttributes";
import { NO_LOOK, type NewCondition, type NewSheet, type NewValidation, type PlacedCell } from "./newSheet";

export interface NewSheetContext {
  readonly main: string;
  readonly styles: StyleBuilder;
  /** Missing where no sheet has lines. */
  readonly texts: SharedTexts | undefined;
  /** The cell metadata that mark a dynamic array, where the workbook has such. */
  readonly dynamic: number | undefined;
  readonly pause: NextSlice;
  /** The element that names the sheet's drawing; empty where it has none. */
  readonly drawing: string;
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

/** The cells by key, with what array formulas fill. */
export function filledCells({ cells }: NewSheet): ReadonlyMap<number, PlacedCell> {
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
  return found;
}

/** The cells row by row, with what array formulas fill. */
function orderedCells(sheet: NewSheet): readonly PlacedCell[] {
  if (isOrdered(sheet.cells)) return sheet.cells;
  const found = filledCells(sheet);
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
      style: context.styles.of(style ?? NO_LOOK, formula === undefined && needsQuote(shown)),
      cm: isArray ? context.dynamic : undefined,
      formula: formula === undefined ? undefined : formulaText(formula, "", area),
      value: shown,
    },
    "",
  );
}

/** Each row's element, those without a cell that have a height or an outline included. */
function* rowTexts(sheet: NewSheet, context: NewSheetContext): Generator<string> {
  const attributes = rowAttributes(sheet);
  const special = [...attributes.keys()];
  let next = 0;
  const element = (at: number, content: string): string =>
    `<row r="${at + 1}"${attributes.get(at) ?? ""}>${content}</row>`;
  function* emptyBefore(limit: number): Generator<string> {
    for (; (special[next] ?? Infinity) < limit; next++) yield element(special[next] ?? 0, "");
    if (special[next] === limit) next++;
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

function conditionText(one: NewCondition, at: number, styles: StyleBuilder): string {
  const rule = `<cfRule type="expression" dxfId="${styles.difference(one)}" priority="${at + 1}" stopIfTrue="1">`;
  return (
    `<conditionalFormatting sqref="${escapedAttribute(one.areas)}">${rule}` +
    `<formula>${escapedXml(one.formula)}</formula></cfRule></conditionalFormatting>`
  );
}

const list = (name: string, items: readonly string[]): string =>
  items.length === 0 ? "" : `<${name} count="${items.length}">${items.join("")}</${name}>`;

/** Rows that are encoded together: the text of a large sheet is never held as one. */
const ROWS_AT_ONCE = 256;

/** The part's bytes. */
export async function newSheetBytes(sheet: NewSheet, context: NewSheetContext): Promise<Uint8Array> {
  const { merged = [], validations = [], conditions = [], print } = sheet;
  const { main, pause, styles, texts: shared, drawing } = context;
  const depth = outlineDepth(sheet);
  const outline = depth === 0 ? "" : '<outlinePr summaryBelow="0"/>';
  const fits = outline + (print?.fitToWidth === true ? '<pageSetUpPr fitToPage="1"/>' : "");
  const properties = fits === "" ? "" : `<sheetPr>${fits}</sheetPr>`;
  const levels = depth === 0 ? "" : ` outlineLevelRow="${depth}"`;
  const merges = merged.map((area) => `<mergeCell ref="${cellsText(area)}"/>`);
  const encoder = new TextEncoder();
  const pieces: Uint8Array[] = [];
  let texts = [
    `${DECLARATION}<worksheet xmlns="${main}">${properties}${viewText(sheet)}<sheetFormatPr defaultRowHeight="15"${levels}/>`,
    `${columnsText(sheet)}<sheetData>`,
  ];
  for (const rows of [rowTexts(sheet, context), lineTexts(sheet, styles, shared)])
    for (const row of rows) {
      texts.push(row);
      if (texts.length >= ROWS_AT_ONCE) pieces.push(encoder.encode(texts.splice(0).join("")));
      const wait = pause();
      if (wait !== undefined) await wait;
    }
  texts = [
    ...texts,
    "</sheetData>",
    list("mergeCells", merges),
    ...conditions.map((one, at) => conditionText(one, at, styles)),
    list("dataValidations", validations.map(validationText)),
    print === undefined ? "" : pageText(print),
    drawing,
    "</worksheet>",
  ];
  pieces.push(encoder.encode(texts.join("")));
  return joined(pieces);
}
