import type { RaisedCaution } from "../../../core";
import type { FunctionsGlobal } from "../../functions/globals";
import type { Address, Block, CellValue, CellFault } from "../../workbook/port";
import { isCellFault } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import type { SheetBook } from "../host/sheetBook";
import type { CallRecord } from "../host/callSites";
import { emptySheet } from "../file/bookData";
import type { BookData, CellData, KeptFormula, PlainValue, SheetData } from "../file/bookData";
import { fileValue } from "../file/newSheets";
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
  /** The formula can't be read here: the value is the one that the file holds. */
  readonly stored?: true;
  readonly cautions: readonly RaisedCaution[];
}

/** A formula that is not to be calculated, by its place in the list, and the error in its stead. */
export interface SkippedFormula {
  readonly place: number;
  readonly error: EvaluatedError;
}

/** Hears which formula of the list is worked on; undefined where it's none in particular. */
export type OnPlace = (place: number | undefined) => void;

/** Each formula has a sheet of its own, with its cell away from the corner, so that A1 is an empty cell. */
const PLACE = { row: 0, column: 26 };
const SHEET_SIZE = { rows: 10_000, columns: 160 };
/** How large a result may be. */
export const RESULT_ROOM = { rows: SHEET_SIZE.rows - PLACE.row, columns: SHEET_SIZE.columns - PLACE.column };
/** Sheets in one workbook at a time. */
const BATCH = 500;

const silent: OnPlace = () => undefined;

const errorOf = ({ code, message }: CellFault): EvaluatedError => ({
  code,
  message: message ?? plainMessage(code),
});

const evaluatedCell = (value: CellValue): EvaluatedCell => (isCellFault(value) ? errorOf(value) : value);

/** The cautions of our calls in a formula, each once. */
export const cautionsOfCalls = (
  calls: readonly Pick<CallRecord, "id" | "args">[],
  warmback: FunctionsGlobal,
): readonly RaisedCaution[] => {
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
  const cautions = cautionsOfCalls(book.calls(cell), warmback);
  const first = values[0]?.[0] ?? null;
  // A result without room for it keeps the area that it would take.
  const hasRoom = !isCellFault(first) || first.code !== "#SPILL!";
  if (area.rows * area.columns > 1 && hasRoom) {
    return { formula, value: values.map((line) => line.map(evaluatedCell)), cautions };
  }
  return isCellFault(first) ? { formula, error: errorOf(first), cautions } : { formula, value: first, cautions };
};

const sheetFor = (formula: string, place: number): SheetData => ({
  ...emptySheet(`Formula${place + 1}`),
  cells: [{ ...PLACE, value: null, formula }],
  room: SHEET_SIZE,
});

const withSign = (line: string): string => (line.startsWith("=") ? line : `=${line}`);

/** Evaluates formulas in order; the first sign "=" may be missing. One that can't be read is an error like others. */
export const evaluateFormulas = async (
  book: SheetBook,
  lines: readonly string[],
  warmback: FunctionsGlobal,
  onPlace: OnPlace = silent,
): Promise<readonly Evaluated[]> => {
  const results: Evaluated[] = [];
  for (let from = 0; from < lines.length; from += BATCH) {
    const batch = lines.slice(from, from + BATCH).map((line, place) => {
      onPlace(from + place);
      return { line, formula: withSign(line), fault: book.unreadable(withSign(line)) };
    });
    onPlace(undefined);
    book.load({
      sheets: batch.map(({ formula, fault }, place) => sheetFor(fault === undefined ? formula : '=""', place)),
      names: [],
    });
    await book.whenCalculated();
    batch.forEach(({ line, fault }, place) => {
      onPlace(from + place);
      const cell = { sheet: `Formula${place + 1}`, ...PLACE };
      if (fault === undefined) results.push(evaluatedAt(book, cell, line, warmback));
      else results.push({ formula: line, error: { code: "#VALUE!", message: fault }, cautions: [] });
    });
    onPlace(undefined);
  }
  return results;
};

/** A file lists its filled cells only: empty cells are added after them, so that results can spill as in Excel. */
const roomy = (sheet: SheetData): SheetData => ({
  ...sheet,
  room: {
    rows: SHEET_SIZE.rows + sheet.cells.reduce((most, { row }) => Math.max(most, row), 0),
    columns: SHEET_SIZE.columns + sheet.cells.reduce((most, { column }) => Math.max(most, column), 0),
  },
});

interface FormulaCell extends Address {
  /** As the file has it. */
  readonly formula: string;
  readonly kept: KeptFormula | undefined;
  readonly spill: CellData["spill"];
}

/** A workbook's cells with formulas, in the order of the answers: sheet by sheet, row by row. */
export const formulaCells = ({ sheets }: BookData): readonly FormulaCell[] =>
  sheets.flatMap((sheet) =>
    sheet.cells
      .filter(({ formula, kept }) => formula !== undefined || kept !== undefined)
      .sort((a, b) => a.row - b.row || a.column - b.column)
      .map(({ row, column, formula = "", source, kept, spill }) => ({
        sheet: sheet.name,
        row,
        column,
        formula: kept?.formula ?? source ?? formula,
        kept,
        spill,
      })),
  );

const NO_RESULT = "can't be read here, and the file holds no result";

const storedCell = (value: PlainValue | null): EvaluatedCell => {
  const plain = fileValue(value);
  return isCellFault(plain) ? errorOf(plain) : plain;
};

/** A formula that can't be read has the file's result. */
const storedResult = ({ formula, spill }: FormulaCell, { value, why }: KeptFormula): Evaluated => {
  const cell = storedCell(value);
  if (spill !== undefined)
    return { formula, value: spill.map((line) => line.map(storedCell)), stored: true, cautions: [] };
  if (cell === null) return { formula, error: { code: "#CALC!", message: `${why} ${NO_RESULT}` }, cautions: [] };
  const isError = typeof cell === "object";
  return { formula, ...(isError ? { error: cell } : { value: cell }), stored: true, cautions: [] };
};

const keyOf = ({ sheet, row, column }: Address): string => `${sheet}!${String(row)}:${String(column)}`;

/** Puts errors in the place of formulas, so that what depends on them passes the error on. */
const withErrors = (data: BookData, errors: ReadonlyMap<string, EvaluatedError>): BookData => ({
  ...data,
  sheets: data.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => {
      const error = errors.get(keyOf({ ...cell, sheet: sheet.name }));
      return error === undefined ? cell : { ...cell, formula: `=${error.code}` };
    }),
  })),
});

/** Recalculates a workbook and evaluates each cell that has a formula: sheet by sheet, row by row. */
export const evaluateWorkbook = async (
  book: SheetBook,
  data: BookData,
  warmback: FunctionsGlobal,
  skipped: readonly SkippedFormula[] = [],
  onPlace: OnPlace = silent,
): Promise<readonly Evaluated[]> => {
  const cells = formulaCells(data);
  const errors = new Map<string, EvaluatedError>();
  for (const { place, error } of skipped) {
    const cell = cells[place];
    if (cell !== undefined) errors.set(keyOf(cell), error);
  }
  const roomyData = { ...data, sheets: data.sheets.map(roomy) };
  book.load(errors.size === 0 ? roomyData : withErrors(roomyData, errors));
  await book.whenCalculated();
  const results = cells.map((cell, place): Evaluated => {
    onPlace(place);
    const address = addressText(cell);
    const error = errors.get(keyOf(cell));
    if (error !== undefined) return { address, formula: cell.formula, error, cautions: [] };
    if (cell.kept !== undefined) return { address, ...storedResult(cell, cell.kept) };
    return { address, ...evaluatedAt(book, cell, cell.formula, warmback) };
  });
  onPlace(undefined);
  return results;
};
