/** What both adapters need to insert a starter sheet. */
import type { SheetCell, StarterSheet } from "../sheets/sheet";
import { parseCells } from "./reader/reference";

/** Excel's limit for a sheet's name. */
const LONGEST_NAME = 31;

/** The name; if it is taken, the name with the first free number appended. */
export function freeName(name: string, taken: readonly string[]): string {
  const used = new Set(taken.map((one) => one.toLowerCase()));
  for (let number = 1; ; number++) {
    const tail = number === 1 ? "" : ` ${String(number)}`;
    const candidate = name.slice(0, LONGEST_NAME - tail.length) + tail;
    if (!used.has(candidate.toLowerCase())) return candidate;
  }
}

/** A cell and its place. */
export interface Placed {
  readonly row: number;
  readonly column: number;
  readonly cell: SheetCell;
}

/** A starter sheet's cells with their places; throws if an address isn't one cell. */
export function placedCells(sheet: StarterSheet): readonly Placed[] {
  return Object.entries(sheet.cells).map(([address, cell]) => {
    const area = parseCells(address);
    if (area?.rows !== 1 || area.columns !== 1) throw new Error(`${address} is not the address of one cell`);
    return { row: area.row, column: area.column, cell };
  });
}
