/** The open workbook as data, in one piece or in slices. */
import type { ICellData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { isCellFault } from "../../workbook/port";
import type { BookData, CellData, NameData, SheetData } from "../file/bookData";
import type { OpenBook } from "./open";
import { numbered, rowCells, sheetData } from "./sheetData";
import type { DataReading } from "./sheetData";

export const namesOf = (open: OpenBook): readonly NameData[] =>
  Object.values(open.services.definedNames.getDefinedNameMap(open.unitId()) ?? {}).map(
    ({ name, formulaOrRefString }) => ({ name, refersTo: formulaOrRefString }),
  );

const readingData = (open: OpenBook, { styles }: Pick<IWorkbookData, "styles">): DataReading => {
  const formulaAt = (sheetId: string, row: number, column: number, { f, si }: ICellData): string =>
    (si ?? "") === ""
      ? (f ?? "")
      : (open.services.model.getFormulaStringByCell(row, column, sheetId, open.unitId()) ?? "");
  const spillAt = (sheetId: string, row: number, column: number): CellData["spill"] => {
    const sheet = open.workbook().getSheetBySheetId(sheetId);
    const area = sheet === null || sheet === undefined ? undefined : open.cells().spill(sheet, row, column);
    if (area === undefined || sheet === null || sheet === undefined) return undefined;
    const values = open
      .cells()
      .read(sheet, area)
      .values.map((line) => line.map((value) => (isCellFault(value) ? value.code : value)));
    // Without room the engine keeps the area that the result would take, which others fill.
    return values[0]?.[0] === "#SPILL!" ? undefined : values;
  };
  return { styles, formulaAt, spillAt };
};

export const dataOf = (open: OpenBook): BookData => {
  const snapshot = open.workbook().save();
  const reading = readingData(open, snapshot);
  return {
    sheets: snapshot.sheetOrder.map((id) => sheetData(reading, snapshot.sheets[id] ?? {})),
    names: namesOf(open),
  };
};

/** A sheet of a snapshot as data, with pauses between its rows. */
async function sheetDataInSlices(
  reading: DataReading,
  sheet: Partial<IWorksheetData>,
  pause: () => Promise<void> | undefined,
): Promise<SheetData> {
  const cells: CellData[] = [];
  for (const [row, line] of numbered(sheet.cellData)) {
    for (const cell of rowCells(reading, sheet.id ?? "", row, line)) cells.push(cell);
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  return sheetData(reading, sheet, cells);
}

/** Undefined where the workbook changed meanwhile. */
export async function dataInSlices(
  open: OpenBook,
  pause: () => Promise<void> | undefined,
  isStale: () => boolean,
): Promise<BookData | undefined> {
  const snapshot = open.workbook().getSnapshot();
  const reading = readingData(open, snapshot);
  const sheets: SheetData[] = [];
  for (const id of snapshot.sheetOrder) {
    sheets.push(await sheetDataInSlices(reading, snapshot.sheets[id] ?? {}, pause));
    if (isStale()) return undefined;
  }
  return { sheets, names: namesOf(open) };
}
