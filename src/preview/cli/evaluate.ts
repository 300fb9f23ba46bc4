import type { RaisedCaution } from "../../../core";
import type { FunctionsGlobal } from "../../functions/globals";
import type { Address, Block, CellValue } from "../../workbook/port";
import { isCellFault } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import type { SheetBook } from "../host/sheetBook";
import type { CallRecord } from "../host/callSites";
import { emptySheet } from "../file/bookData";
import type { BookData, SheetData } from "../file/bookData";
import { plainMessage } from "../host/faultMessages";

/** Evaluates formulas and whole workbooks in the sheet engine, without a screen. */

export interface EvaluatedError {
  readonly code: string;
  readonly message: string;
}

type EvaluatedCell = string | number | boolean | null | EvaluatedError;

export interface Evaluated {
  readonly formula: string;
  /** The formula's cell, for the cells of a workbook. */
  readonly address?: string;
  /** A matrix where the result spills; an error inside a matrix is an object with code and message. */
  readonly value?: string | number | boolean | null | readonly (readonly EvaluatedCell[])[];
  readonly error?: EvaluatedError;
  readonly cautions: readonly RaisedCaution[];
}

/** Each formula has a sheet of its own, with its cell away from the corner, so that A1 is an empty cell. */
const PLACE = { row: 0, column: 26 };
const ROOM = { rows: 10_000, columns: 160 };
/** Sheets in one workbook at a time. */
const BATCH = 500;

const errorOf = ({ error, message }: { error: string; message?: string }): EvaluatedError => ({
  code: error,
  message: message ?? plainMessage(error),
});

const evaluatedCell = (value: CellValue): EvaluatedCell => (isCellFault(value) ? errorOf(value) : value);

/** The cautions of our calls in a formula, each once. */
const cautionsOf = (calls: readonly CallRecord[], warmback: FunctionsGlobal): readonly RaisedCaution[] => {
  const found = new Map<string, RaisedCaution>();
  for (const { id, args } of calls) {
    for (const { code, severity, text } of warmback.explain(id, args).cautions) {
      found.set(JSON.stringify([code, severity, text]), { code, severity, text });
    }
  }
  return [...found.values()];
};

const evaluatedAt = (book: SheetBook, cell: Address, formula: string, warmback: FunctionsGlobal): Evaluated => {
  const area = book.spill(cell) ?? { ...cell, rows: 1, columns: 1 };
  const { values }: Block = book.read(area);
  const cautions = cautionsOf(book.calls(cell), warmback);
  const first = values[0]?.[0] ?? null;
  if (area.rows * area.columns > 1) {
    return { formula, value: values.map((line) => line.map(evaluatedCell)), cautions };
  }
  return isCellFault(first) ? { formula, error: errorOf(first), cautions } : { formula, value: first, cautions };
};

const sheetFor = (formula: string, place: number): SheetData => ({
  ...emptySheet(`Formula${place + 1}`),
  cells: [{ ...PLACE, value: null, formula }],
  room: ROOM,
});

const withSign = (line: string): string => (line.startsWith("=") ? line : `=${line}`);

/** Evaluates formulas in order; the first sign "=" may be missing. One that can't be read is an error like others. */
export const evaluateFormulas = async (
  book: SheetBook,
  lines: readonly string[],
  warmback: FunctionsGlobal,
): Promise<readonly Evaluated[]> => {
  const results: Evaluated[] = [];
  for (let from = 0; from < lines.length; from += BATCH) {
    const batch = lines.slice(from, from + BATCH).map((line) => ({
      line,
      formula: withSign(line),
      fault: book.unreadable(withSign(line)),
    }));
    book.load({
      sheets: batch.map(({ formula, fault }, place) => sheetFor(fault === undefined ? formula : '=""', place)),
      names: [],
    });
    await book.settled();
    batch.forEach(({ line, fault }, place) => {
      const cell = { sheet: `Formula${place + 1}`, ...PLACE };
      if (fault === undefined) results.push(evaluatedAt(book, cell, line, warmback));
      else results.push({ formula: line, error: { code: "#VALUE!", message: fault }, cautions: [] });
    });
  }
  return results;
};

/** A file lists its filled cells only: empty cells are added after them, so that results can spill as in Excel. */
const roomy = (sheet: SheetData): SheetData => ({
  ...sheet,
  room: {
    rows: ROOM.rows + Math.max(0, ...sheet.cells.map(({ row }) => row)),
    columns: ROOM.columns + Math.max(0, ...sheet.cells.map(({ column }) => column)),
  },
});

/** Recalculates a workbook and evaluates each cell that has a formula: sheet by sheet, row by row. */
export const evaluateWorkbook = async (
  book: SheetBook,
  data: BookData,
  warmback: FunctionsGlobal,
): Promise<readonly Evaluated[]> => {
  book.load({ ...data, sheets: data.sheets.map(roomy) });
  await book.settled();
  return data.sheets.flatMap((sheet) =>
    sheet.cells
      .filter((cell) => cell.formula !== undefined)
      .sort((a, b) => a.row - b.row || a.column - b.column)
      .map(({ row, column, formula = "" }) => {
        const cell = { sheet: sheet.name, row, column };
        return { address: addressText(cell), ...evaluatedAt(book, cell, formula, warmback) };
      }),
  );
};
