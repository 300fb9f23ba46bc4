/**
 * The last way to hand over: copies of sheets within the workbook that a host has open, with values in place of every
 * formula that needs us, and their record. For a host that doesn't give the workbook's bytes.
 */
import type { Address, Area, BookReader, CellValue, SheetCopies, ValueArea } from "../port";
import { readCells } from "../reader/read";
import { freeName } from "../starterCells";
import type { CopyFacts } from "./copyFacts";
import { pauseIn, type CopyWork } from "./copyWork";
import { dependentCells, type DependentCell } from "./dependents";
import { recordPage } from "./recordPage";
import { recordLines } from "./recordSheet";
import type { RecordingEngine } from "./recordTypes";
import { isUnfinished, refuseUnfinished } from "./survey";

const isTable = ({ rows, columns }: Area): boolean => rows * columns > 1;

/** The present values of everything that the formulas fill, by sheet. */
async function currentValues(
  book: BookReader,
  cells: readonly DependentCell[],
): Promise<ReadonlyMap<string, readonly ValueArea[]>> {
  const tables = cells.filter(({ area }) => isTable(area));
  const blocks = tables.length === 0 ? [] : await book.read(tables.map(({ area }) => area));
  const read = new Map(tables.map((cell, at) => [cell, blocks[at]?.values] as const));
  const sheets = new Map<string, ValueArea[]>();
  for (const cell of cells) {
    const { sheet, row, column } = cell.address;
    const values: readonly (readonly CellValue[])[] = read.get(cell) ?? [[cell.value]];
    refuseUnfinished(isUnfinished(values[0]?.[0] ?? null) ? [cell.address] : []);
    const areas = sheets.get(sheet);
    if (areas === undefined) sheets.set(sheet, [{ row, column, values }]);
    else areas.push({ row, column, values });
  }
  return sheets;
}

/** A label is looked for so many columns to the left. */
const NEAR_COLUMNS = 12;

/** The nearest text to the left of each cell, read in one round trip. */
async function labelsBeside(book: BookReader, cells: readonly DependentCell[]): Promise<(address: Address) => string> {
  const beside = cells.filter(({ address }) => address.column > 0);
  const areas = beside.map(({ address: { sheet, row, column } }) => {
    const columns = Math.min(NEAR_COLUMNS, column);
    return { sheet, row, column: column - columns, rows: 1, columns };
  });
  const blocks = areas.length === 0 ? [] : await book.read(areas);
  const labels = new Map(
    beside.map(({ address }, at) => {
      const texts = (blocks[at]?.values[0] ?? []).filter((value) => typeof value === "string" && value.trim() !== "");
      return [address, String(texts.at(-1) ?? "")] as const;
    }),
  );
  return (address) => labels.get(address) ?? "";
}

export interface MadeSheetCopies {
  readonly copies: SheetCopies;
  /** How many cells hold values instead of formulas, spilled ones not counted. */
  readonly cells: number;
  /** How many of those hold calls of ours. */
  readonly ours: number;
  /** Cells whose value differs from what their formula gives now: their record would not match it. */
  readonly differing: readonly Address[];
}

/** A sheet's name may have 31 characters: these remain for the original name before the word "values". */
const LONGEST_COPIED = 24;

/**
 * @returns undefined if no cell of the workbook uses us
 * @throws CANCELLED once the signal is aborted, even during a read of the host
 */
export async function sheetCopies(
  book: BookReader,
  engine: RecordingEngine,
  facts: Omit<CopyFacts, "edition">,
  work: CopyWork = {},
): Promise<MadeSheetCopies | undefined> {
  const pause = pauseIn(work);
  const cells = await dependentCells(book);
  await pause();
  if (cells.length === 0) return undefined;
  refuseUnfinished(cells.filter(({ value }) => isUnfinished(value)).map(({ address }) => address));
  const read = await readCells(book, cells, engine, { signal: work.signal });
  const readings = new Map(cells.flatMap((cell, at) => (read[at] === undefined ? [] : [[cell, read[at]] as const])));
  const labelOf = await labelsBeside(book, cells);
  const words = { labelOf, formulaOf: ({ formula }: DependentCell) => formula };
  const lines = await recordLines(cells, readings, engine.describe, words, work);
  const titles = (await book.sheets()).map(({ name }) => name);
  const areas = await currentValues(book, cells);
  await pause();
  const sheets = [...areas].map(([sheet, own]) => {
    const title = freeName(`${sheet.slice(0, LONGEST_COPIED)} values`, titles);
    titles.push(title);
    return { sheet, title, areas: own };
  });
  return {
    copies: { sheets, record: recordPage({ ...facts, edition: engine.edition }, lines) },
    cells: cells.length,
    ours: read.filter(({ calls }) => calls.length > 0).length,
    differing: read.filter(({ stale }) => stale).map(({ address }) => address),
  };
}
