/** Finds the counterpart of a cell on another sheet: by what its line is called, not by its address, so that lines may move. */
import type { Address, CellValue } from "../port";

export interface ComparedCell {
  readonly address: Address;
  /** What its line is called; its address where nothing names it. */
  readonly label: string;
  readonly formula: string;
  readonly value: CellValue;
  /** Shows a part of a spill. */
  readonly spilled: boolean;
  readonly cautions: readonly ComparedCaution[];
}

export interface ComparedCaution {
  readonly severity: string;
  readonly code: string;
  readonly text: string;
}

export interface ComparedSheet {
  readonly name: string;
  /** Row by row. */
  readonly cells: readonly ComparedCell[];
}

const folded = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\s\u00a0]+/g, " ")
    .trim();

const isText = ({ value, formula, spilled }: ComparedCell): boolean =>
  typeof value === "string" && value.trim() !== "" && formula === "" && !spilled;

/** Lines of a sheet, in their order. */
function linesOf(cells: readonly ComparedCell[]): readonly (readonly ComparedCell[])[] {
  const lines = new Map<number, ComparedCell[]>();
  for (const cell of cells) {
    const line = lines.get(cell.address.row);
    if (line === undefined) lines.set(cell.address.row, [cell]);
    else line.push(cell);
  }
  return [...lines.values()];
}

/** Cells by their keys: heading above, name of the line, columns from it, and which of several such. */
export function keyedCells({ cells }: ComparedSheet): ReadonlyMap<string, ComparedCell> {
  const found = new Map<string, ComparedCell>();
  const counts = new Map<string, number>();
  let heading = "";
  for (const line of linesOf(cells)) {
    const first = line[0];
    if (first === undefined) continue;
    const name = line.find(isText);
    if (line.length === 1 && name !== undefined) heading = folded(String(name.value));
    for (const cell of line) {
      if (cell === name) continue;
      const place =
        name === undefined ? `@${String(cell.address.row)},${String(cell.address.column)}` : folded(String(name.value));
      const over = name === undefined ? 0 : cell.address.column - name.address.column;
      const key = [heading, place, over].join("|");
      const count = (counts.get(key) ?? 0) + 1;
      counts.set(key, count);
      found.set(`${key}|${String(count)}`, name === undefined ? cell : { ...cell, label: String(name.value) });
    }
  }
  return found;
}
