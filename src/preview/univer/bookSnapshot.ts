/** The engine's snapshot of a workbook that is given as data. */
import { LocaleType } from "@univerjs/core";
import type { ICellData, IRange, IWorkbookData, IWorksheetData } from "@univerjs/core";

import { MOST_COLUMNS, MOST_ROWS } from "../../workbook/reader/reference";
import type { BookData, CellData, MergedArea, NameData, SheetData } from "../file/bookData";
import { valueCell } from "./cellValue";
import { chartAreas, markCorners } from "./chartCells";
import { pointsToPixels, widthToPixels } from "./sizes";
import { styleOf } from "./styles";

const LEAST_ROWS = 200;
const LEAST_COLUMNS = 26;
/** Spare room behind the last cell, so that there is somewhere to type. */
const SPARE = 50;

/** Set part by part: there are hundreds of thousands, and objects put together of others cost several times as much. */
function engineCell({ value, look, format, formula, kept, state, validation }: CellData): ICellData {
  // The last result shows until the formula is calculated.
  const cell: ICellData = value === null ? {} : valueCell(value);
  const style = styleOf(look, format);
  if (formula !== undefined) cell.f = formula;
  if (style !== undefined) cell.s = style;
  if (validation !== undefined || state || kept !== undefined)
    cell.custom = { ...(validation && { validation }), ...(state && { state }), ...(kept && { kept }) };
  return cell;
}

/** Numbers of rows or columns that aren't shown, as the engine's records of them. */
const hiddenIn = (numbers: readonly number[] = []): Record<number, { hd: 1 }> =>
  Object.fromEntries(numbers.map((number) => [number, { hd: 1 as const }]));

function joined<A extends object, B extends object>(
  a: Readonly<Record<number, A>>,
  b: Readonly<Record<number, B>>,
): Record<number, A & B> {
  const all = { ...a } as Record<number, A & B>;
  for (const [key, value] of Object.entries(b)) all[Number(key)] = { ...all[Number(key)], ...value } as A & B;
  return all;
}

const largest = (numbers: readonly number[], least: number): number =>
  numbers.reduce((most, number) => Math.max(most, number), least);

const mapValues = <T>(record: Readonly<Record<number, number>>, map: (value: number) => T): Record<number, T> =>
  Object.fromEntries(Object.entries(record).map(([key, value]) => [key, map(value)]));

const rangeOf = ({ row, column, rows, columns }: MergedArea): IRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

export type CellRows = Record<number, Record<number, ICellData>>;

function cellRows(cells: readonly CellData[]): CellRows {
  const rows: CellRows = {};
  for (const cell of cells) (rows[cell.row] ??= {})[cell.column] = engineCell(cell);
  return rows;
}

export const engineSheet = (
  id: string,
  sheet: SheetData,
  cellData: CellRows = cellRows(sheet.cells),
): Partial<IWorksheetData> => {
  const { frozenRows, frozenColumns, charts = [], groups = [] } = sheet;
  markCorners(cellData, [...chartAreas(charts), ...groups]);
  return {
    id,
    name: sheet.name,
    cellData,
    custom: {
      ...(sheet.print && { print: sheet.print }),
      ...(sheet.names && { names: sheet.names }),
      ...(sheet.locked && { locked: true }),
      ...(charts.length > 0 && { charts }),
      ...(groups.length > 0 && { groups }),
    },
    rowCount: Math.min(
      MOST_ROWS,
      largest(
        sheet.cells.map((cell) => cell.row + SPARE),
        sheet.room?.rows ?? LEAST_ROWS,
      ),
    ),
    columnCount: Math.min(
      MOST_COLUMNS,
      largest(
        sheet.cells.map((cell) => cell.column + 10),
        sheet.room?.columns ?? LEAST_COLUMNS,
      ),
    ),
    columnData: joined(
      mapValues(sheet.widths, (width) => ({ w: widthToPixels(width) })),
      hiddenIn(sheet.hiddenColumns),
    ),
    rowData: joined(
      mapValues(sheet.heights, (height) => ({ h: pointsToPixels(height), ia: 0 as const })),
      hiddenIn(sheet.hiddenRows),
    ),
    mergeData: sheet.merged.map(rangeOf),
    hidden: sheet.hidden ? 1 : 0,
    freeze: {
      xSplit: frozenColumns,
      ySplit: frozenRows,
      startRow: frozenRows > 0 ? frozenRows : -1,
      startColumn: frozenColumns > 0 ? frozenColumns : -1,
    },
  };
};

const NAMES_RESOURCE = "SHEET_DEFINED_NAME_PLUGIN";

const namesResource = (names: readonly NameData[]): string =>
  JSON.stringify(
    Object.fromEntries(
      names.map(({ name, refersTo }, place) => [
        `name${place}`,
        { id: `name${place}`, name, formulaOrRefString: refersTo },
      ]),
    ),
  );

const bookOf = (id: string, sheets: readonly Partial<IWorksheetData>[], { names }: BookData): IWorkbookData => {
  return {
    id,
    name: "Workbook",
    appVersion: "0.25.1",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: sheets.map((sheet) => sheet.id ?? ""),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id ?? "", sheet] as const)),
    resources: [{ name: NAMES_RESOURCE, data: namesResource(names) }],
  };
};

export const engineBook = (id: string, book: BookData): IWorkbookData =>
  bookOf(
    id,
    book.sheets.map((sheet, place) => engineSheet(`${id}-${place}`, sheet)),
    book,
  );

/** A sheet's cells for the engine, with pauses between them. */
export async function cellRowsInSlices(
  cells: readonly CellData[],
  pause: () => Promise<void> | undefined,
): Promise<CellRows> {
  const rows: CellRows = {};
  for (const cell of cells) {
    (rows[cell.row] ??= {})[cell.column] = engineCell(cell);
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  return rows;
}

/** The same with pauses between the cells. */
export async function engineBookInSlices(
  id: string,
  book: BookData,
  pause: () => Promise<void> | undefined,
): Promise<IWorkbookData> {
  const sheets: Partial<IWorksheetData>[] = [];
  for (const [place, sheet] of book.sheets.entries()) {
    sheets.push(engineSheet(`${id}-${place}`, sheet, await cellRowsInSlices(sheet.cells, pause)));
  }
  return bookOf(id, sheets, book);
}
