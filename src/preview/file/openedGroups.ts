/** Groups of rows from the outline levels of a file's rows. */
import type { StoredSheetFacts } from "../../workbook/package";
import { cellsText } from "../../workbook/reader/reference";

type Rows = StoredSheetFacts["rows"];

/** Rows one after the other of this level or a deeper one, as cells of the first column. */
function groupsAt(level: number, rows: Rows): readonly { readonly first: number; readonly last: number }[] {
  const found: { first: number; last: number }[] = [];
  for (const { row, outline } of rows) {
    if (outline < level) continue;
    const open = found.at(-1);
    if (open?.last === row - 1) open.last = row;
    else found.push({ first: row, last: row });
  }
  return found;
}

/** The groups, one before those within it. */
export function openedGroups(rows: Rows): readonly string[] {
  const ordered = [...rows].sort((a, b) => a.row - b.row);
  const deepest = rows.reduce((most, { outline }) => Math.max(most, outline), 0);
  return Array.from({ length: deepest }, (_, at) => groupsAt(at + 1, ordered))
    .flat()
    .map(({ first, last }) => cellsText({ row: first, column: 0, rows: last - first + 1, columns: 1 }));
}
