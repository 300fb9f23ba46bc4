/** Writes a function with its inputs into the workbook and says what its cell then holds. */
import type { CellFunction } from "../../../core";
import { isCellFault, type Address, type Area, type CellValue, type Workbook } from "../../workbook/port";
import { readCells } from "../../workbook/reader/read";
import { addressText, MOST_COLUMNS, MOST_ROWS } from "../../workbook/reader/reference";
import { isOutcomeFault } from "../../workbook/values";
import type { PanelEngine } from "../engine";
import { freeCellsRefusal } from "./freeCells";
import { insertionOf, type CallExample } from "./insertion";

/** What to insert. */
export interface Chosen {
  readonly definition: CellFunction;
  readonly example: CallExample;
  /** Texts used in the formula in place of arguments, by place. */
  readonly references?: ReadonlyMap<number, string>;
}

export interface Inserted {
  readonly result: Address;
  /** The cell shows an error. */
  readonly failed: boolean;
  /** What happened, as a sentence. */
  readonly sentence: string;
}

const counted = (count: number, word: string): string => `${count.toLocaleString("en-US")} ${word}s`;

/** The sentence if an area goes beyond the last row or column that a sheet can have. */
function beyondSheet({ row, column, rows, columns }: Area): string | undefined {
  if (column + columns > MOST_COLUMNS) {
    const left = counted(MOST_COLUMNS - column, "column");
    return `This needs ${counted(columns, "column")}, and the sheet has ${left} left here: select a cell further left.`;
  }
  if (row + rows > MOST_ROWS) {
    const left = counted(MOST_ROWS - row, "row");
    return `This needs ${counted(rows, "row")}, and the sheet has ${left} left here: select a cell further up.`;
  }
  return undefined;
}

/** Codes of a cell whose result has not come yet. */
const BUSY = new Set(["#BUSY!", "#GETTING_DATA"]);

const isBusy = (value: CellValue): boolean =>
  isCellFault(value) ? BUSY.has(value.code) : typeof value === "string" && BUSY.has(value);

export interface Patience {
  /** How often to read a cell that still calculates. */
  readonly times: number;
  /** Milliseconds between two of them. */
  readonly every: number;
}

const USUAL: Patience = { times: 60, every: 250 };

const one = ({ sheet, row, column }: Address): Area => ({ sheet, row, column, rows: 1, columns: 1 });

/** What a cell holds, once it has its result or the patience ends. */
async function settledValue(book: Workbook, at: Address, { times, every }: Patience): Promise<CellValue> {
  for (let tried = 1; ; tried++) {
    const [block] = await book.read([one(at)]);
    const value = block?.values[0]?.[0] ?? null;
    const waiting = isBusy(value) || value === null || value === "";
    if (!waiting || tried >= times) return value;
    await new Promise((resolve) => setTimeout(resolve, every));
  }
}

/** The message of the call in a cell: some hosts keep only its code. */
async function messageOf(book: Workbook, engine: PanelEngine, address: Address, formula: string): Promise<string> {
  const [reading] = await readCells(book, [{ address, formula, value: null }], engine);
  const outcome = reading?.calls[0]?.outcome;
  return outcome !== undefined && isOutcomeFault(outcome) ? (outcome.message ?? "") : "";
}

/** The outcome in words: "Inserted" only over a result. */
async function outcomeOfCell(
  { book, engine }: Host,
  { id }: CellFunction,
  { result, formula }: { readonly result: Address; readonly formula: string },
  value: CellValue,
): Promise<Omit<Inserted, "result">> {
  const at = addressText(result);
  if (isBusy(value)) return { failed: false, sentence: `${id} at ${at} is still calculating.` };
  if (value === null || value === "")
    return { failed: false, sentence: `${id} is written at ${at}; the cell shows no result yet.` };
  if (!isCellFault(value)) return { failed: false, sentence: `Inserted ${id} at ${at}.` };
  const message = value.message ?? (await messageOf(book, engine, result, formula));
  const why = message === "" ? "" : `: ${message}`;
  return { failed: true, sentence: `${id} at ${at} gives ${value.code}${why}.` };
}

interface Host {
  readonly book: Workbook;
  readonly engine: PanelEngine;
}

/**
 * Inserts at a cell: nothing is written over what cells hold.
 * @throws Error with a sentence where there is no room
 */
export async function insertChosen(
  host: Host,
  { definition, example, references }: Chosen,
  at: Address,
  patience: Patience = USUAL,
): Promise<Inserted> {
  const { book } = host;
  const insertion = insertionOf(definition, example, at, references);
  const { area, cells, result } = insertion;
  const beyond = beyondSheet(area);
  if (beyond !== undefined) throw new Error(beyond);
  const [block] = await book.read([area]);
  const refusal = block && freeCellsRefusal(block);
  if (refusal !== undefined) throw new Error(refusal);
  await book.makeRoom?.(area);
  await book.write(cells);
  await book.select(result);
  const value = await settledValue(book, result, patience);
  return { result, ...(await outcomeOfCell(host, definition, insertion, value)) };
}
