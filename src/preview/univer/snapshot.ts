import { CellValueType, LocaleType } from "@univerjs/core";
import type { ICellData, IRange, IStyleData, IWorkbookData, IWorksheetData, Nullable } from "@univerjs/core";

import type { PrintSetUp, SheetChart } from "../../sheets/sheet";
import { MOST_COLUMNS, MOST_ROWS } from "../../workbook/reader/reference";
import type {
  BookData,
  CellData,
  KeptFormula,
  MergedArea,
  NameData,
  PlainValue,
  SheetData,
  ValidationData,
} from "../file/bookData";
import { chartAreas, markCorners, movedCharts, movedGroups } from "./chartCells";
import { cellStyleOf, styleOf } from "./styles";
import { typedOf } from "./typedCell";

/** Between a workbook as data and the engine's snapshot of it. */

const LEAST_ROWS = 200;
const LEAST_COLUMNS = 26;
/** Spare room behind the last cell, so that there is somewhere to type. */
const SPARE = 50;

/** A column of n characters is about 7 n + 5 pixels wide in the standard font of spreadsheets. */
const widthToPixels = (characters: number): number => Math.round(characters * 7 + 5);
const pixelsToWidth = (pixels: number): number => Math.round(((pixels - 5) / 7) * 100) / 100;
const pointsToPixels = (points: number): number => Math.round((points * 4) / 3);
const pixelsToPoints = (pixels: number): number => (pixels * 3) / 4;

export const valueCell = (value: PlainValue): ICellData => {
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
};

/** What a cell of the engine holds; null where it is empty. */
export const plainValue = (cell: Nullable<ICellData>): PlainValue | null => {
  if (cell === null || cell === undefined) return null;
  // What HYPERLINK gives is rich text alone; its last two signs end the paragraph.
  if (cell.v === null || cell.v === undefined) return cell.p?.body?.dataStream.replace(/\r\n$/, "") ?? null;
  if (cell.t === CellValueType.BOOLEAN) return cell.v === true || cell.v === 1 || cell.v === "1";
  if (cell.t === CellValueType.NUMBER) return Number(cell.v);
  if (cell.t === CellValueType.STRING || cell.t === CellValueType.FORCE_STRING) return String(cell.v);
  return cell.v;
};

const engineCell = (cell: CellData): ICellData => {
  const style = styleOf(cell.look, cell.format);
  const { formula, kept, state, validation } = cell;
  return {
    // The last result shows until the formula is calculated.
    ...(cell.value !== null && valueCell(cell.value)),
    ...(formula !== undefined && { f: formula }),
    ...(style !== undefined && { s: style }),
    ...((validation !== undefined || state || kept !== undefined) && {
      custom: { ...(validation && { validation }), ...(state && { state }), ...(kept && { kept }) },
    }),
  };
};

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

type CellRows = Record<number, Record<number, ICellData>>;

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

/** The same with pauses between the rows. */
export async function engineBookInSlices(
  id: string,
  book: BookData,
  pause: () => Promise<void> | undefined,
): Promise<IWorkbookData> {
  const sheets: Partial<IWorksheetData>[] = [];
  for (const [place, sheet] of book.sheets.entries()) {
    const cellData: CellRows = {};
    for (const cell of sheet.cells) {
      (cellData[cell.row] ??= {})[cell.column] = engineCell(cell);
      await pause();
    }
    sheets.push(engineSheet(`${id}-${place}`, sheet, cellData));
  }
  return bookOf(id, sheets, book);
}

export const numbered = <T>(record: Readonly<Record<number, T>> | undefined): readonly (readonly [number, T])[] =>
  Object.entries(record ?? {}).map(([key, value]) => [Number(key), value] as const);

/** The formula that a cell can't work out; none once something else is in the cell. */
export const keptOf = (cell: Nullable<ICellData>): KeptFormula | undefined => {
  const kept = cell?.custom?.["kept"] as KeptFormula | undefined;
  return kept !== undefined && (cell?.f ?? "") === "" && plainValue(cell) === kept.value ? kept : undefined;
};

/** Whether nothing may be written on the sheet. */
export const isLocked = (sheet: Partial<IWorksheetData>): boolean => sheet.custom?.["locked"] === true;

/** The engine carries a cell's rule along with the cell. */
export const validationOf = (cell: Nullable<ICellData>): ValidationData | undefined =>
  cell?.custom?.["validation"] as ValidationData | undefined;

/** Whether a cell says a check's state. */
export const saysState = (cell: Nullable<ICellData>): boolean => cell?.custom?.["state"] === true;

export interface DataReading {
  readonly styles: IWorkbookData["styles"];
  /** The formula of a cell, shared formulas resolved; "" where there is none. */
  formulaAt(sheetId: string, row: number, column: number, cell: ICellData): string;
  /** What a formula spills, undefined where it doesn't. */
  spillAt(sheetId: string, row: number, column: number): CellData["spill"];
}

const cellOf = (reading: DataReading, sheetId: string, row: number, column: number, cell: ICellData): CellData => {
  const style: Nullable<IStyleData> = typeof cell.s === "string" ? reading.styles[cell.s] : cell.s;
  const formula = reading.formulaAt(sheetId, row, column, cell);
  const look = cellStyleOf(style);
  const format = style?.n?.pattern;
  const spill = formula === "" ? undefined : reading.spillAt(sheetId, row, column);
  const validation = validationOf(cell);
  const kept = keptOf(cell);
  const source = typedOf(cell, formula);
  return {
    row,
    column,
    value: plainValue(cell),
    ...(formula !== "" && { formula }),
    ...(source !== undefined && { source }),
    ...(look !== undefined && { look }),
    ...(format !== undefined && { format }),
    ...(validation !== undefined && { validation }),
    ...(saysState(cell) && { state: true as const }),
    ...(spill !== undefined && { spill }),
    ...(kept !== undefined && { kept }),
  };
};

/** The names that only a sheet knows; the engine carries them along. */
export const sheetNames = (sheet: Partial<IWorksheetData>): readonly NameData[] =>
  (sheet.custom?.["names"] as readonly NameData[] | undefined) ?? [];

/** A sheet's charts where they are now. */
export const sheetCharts = ({ custom, cellData }: Partial<IWorksheetData>): readonly SheetChart[] =>
  movedCharts((custom?.["charts"] as readonly SheetChart[] | undefined) ?? [], cellData);

/** A sheet's groups of rows where they are now. */
export const sheetGroups = ({ custom, cellData }: Partial<IWorksheetData>): readonly string[] =>
  movedGroups((custom?.["groups"] as readonly string[] | undefined) ?? [], cellData);

type CellsOfRow = readonly CellData[];

export const rowCells = (
  reading: DataReading,
  sheetId: string,
  row: number,
  line: Readonly<Record<number, ICellData>>,
): CellsOfRow => numbered(line).map(([column, cell]) => cellOf(reading, sheetId, row, column, cell));

/** A sheet of a snapshot as data. */
export const sheetData = (
  reading: DataReading,
  sheet: Partial<IWorksheetData>,
  cells: readonly CellData[] = numbered(sheet.cellData).flatMap(([row, line]) =>
    rowCells(reading, sheet.id ?? "", row, line),
  ),
): SheetData => {
  const widths = numbered(sheet.columnData).flatMap(([column, data]) =>
    data.w === undefined ? [] : [[column, pixelsToWidth(data.w)] as const],
  );
  const heights = numbered(sheet.rowData).flatMap(([row, data]) =>
    data.h === undefined || data.ia === 1 ? [] : [[row, pixelsToPoints(data.h)] as const],
  );
  const print = sheet.custom?.["print"] as PrintSetUp | undefined;
  const names = sheetNames(sheet);
  const charts = sheetCharts(sheet);
  const groups = sheetGroups(sheet);
  return {
    name: sheet.name ?? "",
    ...(groups.length > 0 && { groups }),
    ...(charts.length > 0 && { charts }),
    ...(print !== undefined && { print }),
    ...(names.length > 0 && { names }),
    cells,
    widths: Object.fromEntries(widths),
    heights: Object.fromEntries(heights),
    frozenRows: sheet.freeze?.ySplit ?? 0,
    frozenColumns: sheet.freeze?.xSplit ?? 0,
    hidden: sheet.hidden === 1,
    hiddenRows: numbered(sheet.rowData).flatMap(([row, data]) => (data.hd === 1 ? [row] : [])),
    hiddenColumns: numbered(sheet.columnData).flatMap(([column, data]) => (data.hd === 1 ? [column] : [])),
    merged: (sheet.mergeData ?? []).map(({ startRow, startColumn, endRow, endColumn }) => ({
      row: startRow,
      column: startColumn,
      rows: endRow - startRow + 1,
      columns: endColumn - startColumn + 1,
    })),
  };
};
