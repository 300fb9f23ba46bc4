/**
 * A copy of a workbook's calculation for people without the add-in: values in place of every formula that needs us, and a
 * record of those formulas. The workbook itself is only read.
 */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import type { Address, Area, CellValue, HandOverCopy, ValueArea, Workbook } from "../port";
import { isCellFault } from "../port";
import type { Engine } from "../reader/prepare";
import { readCells, type Reading } from "../reader/read";
import { addressText, columnLetters } from "../reader/reference";
import { recordLines, type Describe, type RecordOptions } from "./recordSheet";
import { dependentCells, type DependentCell } from "./dependents";
import { timeSlices } from "../timeSlices";
import { freeName } from "../starterCells";

/** The calculation, and its description of a call. */
export interface RecordingEngine extends Engine {
  describe: Describe;
  /** The edition that computed the record. */
  readonly edition: string;
}

const isTable = ({ rows, columns }: Area): boolean => rows * columns > 1;

/** The record's columns: heading and width in characters. */
export const RECORD_COLUMNS: readonly (readonly [string, number])[] = [
  ["Cell", 13],
  ["Formula", 28],
  ["Inputs with units", 34],
  ["Value", 13],
  ["Unit", 12],
  ["Method", 24],
  ["Source", 25],
  ["Cautions", 33],
];

const HEAD_ROWS = 3;
const LAST = columnLetters(RECORD_COLUMNS.length - 1);

const headCells = (edition: string): readonly (readonly [string, SheetCell])[] => [
  ["A1", { content: "Record of the calculation", style: "Title" }],
  [
    "A2",
    {
      content: `Computed by ${edition}. The sheets of this copy hold values: they change with no input. Method, source and cautions are those of the live workbook at hand-over.`,
      style: "Explanatory Text",
    },
  ],
  ...RECORD_COLUMNS.map(([heading], at): readonly [string, SheetCell] => [
    `${columnLetters(at)}${String(HEAD_ROWS)}`,
    { content: heading, style: "Heading 3" },
  ]),
];

type Content = string | number | boolean;

/** Enough digits to check by, few enough for the column. */
const formatOf = (value: number): string => {
  const size = Math.abs(value);
  if (value === 0 || size >= 1e9 || size < 1e-3) return "General";
  return size >= 1000 ? "#,##0.0" : size >= 10 ? "0.00" : size >= 1 ? "0.000" : "0.00000";
};

const bodyCell = (content: Content, column: number): SheetCell => ({
  content,
  entry: true,
  ...(typeof content === "string" && { text: true, wrap: true, ...(column > 0 && { indent: true }) }),
  ...(typeof content === "number" && { format: formatOf(content) }),
});

/** A printed sheet of the lines. */
function recordSheet(edition: string, lines: readonly (readonly Content[])[]): StarterSheet {
  const body = lines.flatMap((line, down) =>
    line.map((content, over): readonly [string, SheetCell] => [
      `${columnLetters(over)}${String(HEAD_ROWS + 1 + down)}`,
      bodyCell(content, over),
    ]),
  );
  return {
    id: "record",
    name: "Record",
    summary: "The formulas behind the values.",
    widths: RECORD_COLUMNS.map(([, width]) => width),
    cells: Object.fromEntries([...headCells(edition), ...body]),
    names: {},
    frozenRows: HEAD_ROWS,
    print: {
      area: `A1:${LAST}${String(HEAD_ROWS + lines.length)}`,
      landscape: true,
      fitToWidth: true,
      titleRows: `1:${String(HEAD_ROWS)}`,
      footer: `Record, ${edition}: sheet &P of &N`,
    },
  };
}

const bySheet = (areas: readonly (readonly [string, ValueArea])[]): ReadonlyMap<string, readonly ValueArea[]> => {
  const sheets = new Map<string, ValueArea[]>();
  for (const [sheet, area] of areas) sheets.set(sheet, [...(sheets.get(sheet) ?? []), area]);
  return sheets;
};

/** The present values of everything that the formulas fill. */
async function currentValues(book: Workbook, cells: readonly DependentCell[]): Promise<ReturnType<typeof bySheet>> {
  const tables = cells.filter(({ area }) => isTable(area));
  const blocks = tables.length === 0 ? [] : await book.read(tables.map(({ area }) => area));
  const values = new Map(tables.map((cell, at) => [cell, blocks[at]?.values] as const));
  return bySheet(
    cells.map((cell) => {
      const { sheet, row, column } = cell.address;
      const own: readonly (readonly CellValue[])[] = values.get(cell) ?? [[cell.value]];
      refuseUnfinished([{ address: cell.address, value: own[0]?.[0] ?? null }]);
      return [sheet, { row, column, values: own }];
    }),
  );
}

/** What a host shows in a cell that has no value yet. */
const UNFINISHED = new Set(["#BUSY!", "#GETTING_DATA"]);
const MOST_NAMED = 5;

const isUnfinished = (value: CellValue): boolean => isCellFault(value) && UNFINISHED.has(value.code);

/** @throws a sentence where cells have no value yet that could be handed over */
function refuseUnfinished(cells: readonly { readonly address: Address; readonly value: CellValue }[]): void {
  const unfinished = cells.filter(({ value }) => isUnfinished(value));
  if (unfinished.length === 0) return;
  const named = unfinished.slice(0, MOST_NAMED).map(({ address }) => addressText(address));
  const more = unfinished.length > MOST_NAMED ? ` and ${String(unfinished.length - MOST_NAMED)} more` : "";
  throw new Error(`Excel is still calculating ${named.join(", ")}${more}: wait until it is done, then make the copy`);
}

/** Reads the calls of all cells; the record names an argument that can't be read. */
const readingsOf = (
  book: Workbook,
  cells: readonly DependentCell[],
  engine: Engine,
  { signal }: RecordOptions,
): Promise<readonly Reading[]> =>
  readCells(
    book,
    cells.map(({ address, formula, value }) => ({ address, formula, value })),
    engine,
    { signal },
  );

export interface HandOver extends HandOverCopy {
  /** How many cells hold values instead of formulas, spilled ones not counted. */
  readonly cells: number;
  /** How many of those hold calls of ours. */
  readonly ours: number;
  /** Cells whose value differs from what their formula gives now: their record would not match it. */
  readonly stale: number;
}

/**
 * @returns the copy; undefined if no cell of the workbook uses us
 * @throws ENDED if the signal cancelled it, even during a read of the host
 */
export async function handOver(
  book: Workbook,
  engine: RecordingEngine,
  recording: RecordOptions = {},
): Promise<HandOver | undefined> {
  const nextSlice = timeSlices({}, recording.signal === undefined ? [] : [recording.signal]);
  const cells = await dependentCells(book);
  await nextSlice();
  if (cells.length === 0) return undefined;
  refuseUnfinished(cells);
  const readings = await readingsOf(book, cells, engine, recording);
  const lines = await recordLines(cells, readings, engine.describe, recording);
  const titles = (await book.sheets()).map(({ name }) => name);
  const areas = await currentValues(book, cells);
  await nextSlice();
  const sheets = [...areas].map(([sheet, own]) => {
    const title = freeName(`${sheet.slice(0, LONGEST_COPIED)} values`, titles);
    titles.push(title);
    return { sheet, title, areas: own };
  });
  return {
    sheets,
    record: recordSheet(engine.edition, lines),
    cells: cells.length,
    ours: readings.filter(({ calls }) => calls.length > 0).length,
    stale: readings.filter(({ stale }) => stale).length,
  };
}

/** A sheet's name may have 31 characters: these remain for the original name before the word "values". */
const LONGEST_COPIED = 24;
