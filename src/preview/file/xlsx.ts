import type { Cell, CellValue, DataValidation, PageSetup, Workbook, Worksheet } from "exceljs";

import type { PrintSetUp } from "../../sheets/sheet";
import { cellsText } from "../../workbook/reader/reference";
import { absoluteText, areaOf } from "./address";
import type { BookData, CellData, MergedArea, NameData, PlainValue, SheetData, ValidationData } from "./bookData";
import type { FormulaTexts } from "./formulaTexts";
import { fileStyle, lookOfFile } from "./xlsxStyles";

/** .xlsx files in and out; the library behind is loaded when it is first needed. */

const DAY_MS = 86_400_000;
/** Day 0 of the date numbers in spreadsheets. */
const DAY_ZERO = Date.UTC(1899, 11, 30);

const newWorkbook = async (): Promise<Workbook> => {
  const library = await import("exceljs");
  return new library.default.Workbook();
};

const plainOf = (value: CellValue): PlainValue | null => {
  if (value === null || value === undefined) return null;
  if (value instanceof Date) return (value.getTime() - DAY_ZERO) / DAY_MS;
  if (typeof value !== "object") return value;
  if ("error" in value) return value.error;
  if ("richText" in value) return value.richText.map((part) => part.text).join("");
  if ("text" in value) return typeof value.text === "string" ? value.text : plainOf(value.text);
  if ("result" in value) return plainOf(value.result ?? null);
  return null;
};

const cellFrom = (cell: Cell, texts: FormulaTexts): CellData | undefined => {
  const value = plainOf(cell.value);
  const formula = cell.formula as string | undefined;
  const look = lookOfFile(cell.style);
  const format = cell.numFmt as string | undefined;
  const validation = cell.dataValidation as ValidationData | undefined;
  if (value === null && !formula && look === undefined && format === undefined && validation === undefined)
    return undefined;
  return {
    row: Number(cell.row) - 1,
    column: Number(cell.col) - 1,
    value,
    ...(formula !== undefined && formula !== "" && { formula: texts.fromFile(formula) }),
    ...(look !== undefined && { look }),
    ...(format !== undefined && format !== "General" && { format }),
    ...(validation !== undefined && { validation }),
  };
};

const within = (area: MergedArea, row: number, column: number): boolean =>
  row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns;

/** The cells that array formulas fill: they hold old results, which would block new ones. */
const filledBy = (cell: Cell): MergedArea | undefined => {
  const value = cell.value as { shareType?: string; ref?: string } | null;
  return value !== null && typeof value === "object" && value.shareType === "array" && value.ref !== undefined
    ? areaOf(value.ref, "")
    : undefined;
};

const printOf = ({ pageSetup, headerFooter }: Worksheet): PrintSetUp | undefined => {
  const { printArea, printTitlesRow, orientation } = pageSetup as Partial<PageSetup> & { printTitlesRow?: string };
  if (printArea === undefined && printTitlesRow === undefined) return undefined;
  return {
    area: printArea ?? "",
    landscape: orientation === "landscape",
    fitToWidth: true,
    titleRows: printTitlesRow ?? "",
    footer: (headerFooter as { oddFooter?: string } | undefined)?.oddFooter ?? "",
  };
};

const sheetFrom = (sheet: Worksheet, texts: FormulaTexts): SheetData => {
  const cells: CellData[] = [];
  const arrays: MergedArea[] = [];
  const heights: Record<number, number> = {};
  sheet.eachRow({ includeEmpty: true }, (row, number) => {
    if ((row.height as number | undefined) !== undefined) heights[number - 1] = row.height;
    row.eachCell({ includeEmpty: true }, (cell) => {
      const array = filledBy(cell);
      if (array !== undefined) arrays.push(array);
      const read = cell.isMerged && cell.master !== cell ? undefined : cellFrom(cell, texts);
      if (read !== undefined) cells.push(read);
    });
  });
  const view = ((sheet.views as typeof sheet.views | null)?.[0] ?? {}) as {
    state?: string;
    xSplit?: number;
    ySplit?: number;
  };
  const frozen = view.state === "frozen";
  const columns = (sheet.columns as readonly { width?: number }[] | null) ?? [];
  const print = printOf(sheet);
  return {
    name: sheet.name,
    cells: cells.map((cell) =>
      cell.formula === undefined && arrays.some((area) => within(area, cell.row, cell.column))
        ? { ...cell, value: null }
        : cell,
    ),
    widths: Object.fromEntries(
      columns.flatMap(({ width }, column) => (width === undefined ? [] : [[column, width] as const])),
    ),
    heights,
    frozenRows: frozen ? (view.ySplit ?? 0) : 0,
    frozenColumns: frozen ? (view.xSplit ?? 0) : 0,
    hidden: sheet.state !== "visible",
    merged: ((sheet.model as { merges?: string[] }).merges ?? []).flatMap((text) => areaOf(text, "") ?? []),
    ...(print !== undefined && { print }),
  };
};

/** Reads a file's bytes; a file that is no workbook is refused with a plain sentence. */
export const readXlsx = async (bytes: ArrayBuffer, texts: FormulaTexts): Promise<BookData> => {
  const workbook = await newWorkbook();
  try {
    await workbook.xlsx.load(bytes);
  } catch {
    throw new Error("this file can't be read as an .xlsx workbook");
  }
  const names: NameData[] = workbook.definedNames.model.flatMap(({ name, ranges }) =>
    ranges[0] === undefined || name.startsWith("_xlnm.") ? [] : [{ name, refersTo: ranges[0] }],
  );
  return { sheets: workbook.worksheets.map((sheet) => sheetFrom(sheet, texts)), names };
};

const ERROR_TEXT = /^#(?:N\/A|REF!|NAME\?|DIV\/0!|NULL!|VALUE!|NUM!)$/;

const fileValue = (value: PlainValue | null): CellValue =>
  typeof value === "string" && ERROR_TEXT.test(value) ? ({ error: value } as CellValue) : value;

const putCell = (sheet: Worksheet, data: CellData, texts: FormulaTexts): void => {
  const cell = sheet.getCell(data.row + 1, data.column + 1);
  const { formula, spill } = data;
  if (formula === undefined) cell.value = fileValue(data.value);
  else {
    const written = { formula: texts.toFile(formula), result: fileValue(data.value) ?? undefined };
    const { row, column } = data;
    const array = {
      shareType: "array",
      ref: cellsText({ row, column, rows: spill?.length ?? 1, columns: spill?.[0]?.length ?? 1 }),
    };
    cell.value = (spill === undefined ? written : { ...written, ...array }) as CellValue;
  }
  cell.style = fileStyle(data.look, data.format);
  if (data.validation !== undefined) cell.dataValidation = data.validation as DataValidation;
};

/** The old results beside an array formula, for readers that don't calculate. */
const putSpill = (sheet: Worksheet, { row, column, spill }: CellData): void => {
  spill?.forEach((line, down) =>
    line.forEach((value, right) => {
      if (down + right > 0) sheet.getCell(row + down + 1, column + right + 1).value = fileValue(value);
    }),
  );
};

const putSheet = (workbook: Workbook, data: SheetData, texts: FormulaTexts): void => {
  const sheet = workbook.addWorksheet(data.name, { state: data.hidden ? "hidden" : "visible" });
  for (const cell of data.cells) putCell(sheet, cell, texts);
  for (const cell of data.cells) putSpill(sheet, cell);
  for (const [column, width] of Object.entries(data.widths)) sheet.getColumn(Number(column) + 1).width = width;
  for (const [row, height] of Object.entries(data.heights)) sheet.getRow(Number(row) + 1).height = height;
  for (const { row, column, rows, columns } of data.merged) {
    sheet.mergeCells(row + 1, column + 1, row + rows, column + columns);
  }
  const { frozenRows, frozenColumns, print } = data;
  if (frozenRows + frozenColumns > 0) {
    sheet.views = [{ state: "frozen", xSplit: frozenColumns, ySplit: frozenRows }];
  }
  if (print === undefined) return;
  sheet.pageSetup = {
    ...sheet.pageSetup,
    orientation: print.landscape ? "landscape" : "portrait",
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
    ...(print.area !== "" && { printArea: print.area }),
    ...(print.titleRows !== "" && { printTitlesRow: print.titleRows }),
  };
  if (print.footer !== "") sheet.headerFooter = { ...sheet.headerFooter, oddFooter: print.footer };
};

/** The bytes of an .xlsx file. Formulas keep their text and their last result. */
export const writeXlsx = async (book: BookData, texts: FormulaTexts): Promise<ArrayBuffer> => {
  const workbook = await newWorkbook();
  for (const sheet of book.sheets) putSheet(workbook, sheet, texts);
  workbook.definedNames.model = book.names.flatMap(({ name, refersTo }) => {
    const area = areaOf(refersTo, book.sheets[0]?.name ?? "");
    return area === undefined ? [] : [{ name, ranges: [absoluteText(area)] }];
  });
  return await workbook.xlsx.writeBuffer();
};
