/** What a sheet says of the cells that a user marked: label, unit and value. */
import { resumeWhenReady } from "../pending";
import type { Address, Area, Block, CellValue, Workbook } from "../port";
import { isCellFault } from "../port";
import { readCells, type Reading } from "../reader/read";
import { addressText } from "../reader/reference";
import type { RecordingEngine } from "../copy/recordTypes";

export interface MarkedCell {
  readonly address: Address;
  /** The text beside or above the cell; its address where there is none. */
  readonly label: string;
  readonly unit: string;
  readonly formula: string;
  readonly value: CellValue;
  readonly reading: Reading;
}

/** How far to the left and up a label is looked for. */
const REACH = { left: 6, up: 6 };
const LONGEST_UNIT = 18;

const surroundings = ({ sheet, row, column }: Address): Area => {
  const top = Math.max(0, row - REACH.up);
  const left = Math.max(0, column - REACH.left);
  return { sheet, row: top, column: left, rows: row - top + 1, columns: column - left + 2 };
};

const isText = (value: CellValue | undefined): value is string => typeof value === "string" && value.trim() !== "";

/** A label: letters at least, and no text that a formula gives beside it, such as "agrees". */
const isLabel = (value: CellValue | undefined): value is string => isText(value) && /\p{L}{2}/u.test(value);

function labelIn({ area, values }: Block, { row, column }: Address): string | undefined {
  const [down, over] = [row - area.row, column - area.column];
  const before = (values[down] ?? []).slice(0, over).reverse();
  const left = before.find(isLabel);
  if (left !== undefined) return left;
  for (let up = down - 1; up >= 0; up--) {
    const above = values[up]?.[over];
    if (isLabel(above)) return above;
  }
  return undefined;
}

function unitIn({ area, values }: Block, { row, column }: Address): string {
  const beside = values[row - area.row]?.[column - area.column + 1];
  return isText(beside) && beside.length <= LONGEST_UNIT ? beside.trim() : "";
}

/** The unit of a call that is the whole formula. */
function unitOf(reading: Reading, engine: RecordingEngine, signal: AbortSignal | undefined): Promise<string> | string {
  const call = reading.calls.find(({ whole }) => whole);
  const values = call?.args.flatMap((argument) => ("value" in argument ? [argument.value] : [])) ?? [];
  if (call === undefined || values.length !== call.args.length) return "";
  const unit = resumeWhenReady(() => engine.describe(call.id, values)?.unit ?? "", { signal });
  return unit;
}

/** Reads marked cells with two round trips; the order stays. */
export async function readMarked(
  book: Workbook,
  engine: RecordingEngine,
  addresses: readonly Address[],
  signal?: AbortSignal,
): Promise<readonly MarkedCell[]> {
  const blocks = addresses.length === 0 ? [] : await book.read(addresses.map(surroundings));
  const cells = addresses.map((address, at) => {
    const block = blocks[at];
    const [down, over] = [address.row - (block?.area.row ?? 0), address.column - (block?.area.column ?? 0)];
    return { address, formula: block?.formulas[down]?.[over] ?? "", value: block?.values[down]?.[over] ?? null, block };
  });
  const readings = await readCells(book, cells, engine, { signal });
  const marked: MarkedCell[] = [];
  for (const [at, { address, formula, value, block }] of cells.entries()) {
    const reading = readings[at] as Reading;
    const beside = block === undefined ? "" : unitIn(block, address);
    const unit = beside === "" ? await unitOf(reading, engine, signal) : beside;
    const label = (block === undefined ? undefined : labelIn(block, address)) ?? addressText(address);
    marked.push({ address, label, unit, formula, value, reading });
  }
  return marked;
}

/** A value in a few words. */
export const briefValue = (value: CellValue): string =>
  value === null
    ? "blank"
    : isCellFault(value)
      ? value.code
      : typeof value === "number"
        ? String(Number(value.toPrecision(6)))
        : String(value);
