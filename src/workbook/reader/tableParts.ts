/** The part of a table that a reference means. */
import type { Area } from "../port";
import type { ReferenceMeaning, TablePart } from "./reference";

/** What a host says of a table. */
export interface TableShape {
  readonly area: Area;
  readonly headers: boolean;
  readonly totals: boolean;
  readonly columns: readonly string[];
}

/** The part of a table that a reference means; undefined where the table has no such part or column. */
export function partOfTable(
  facts: TableShape,
  { part, first, last }: ReferenceMeaning & { kind: "table" },
  row: number,
): Area | undefined {
  const names = facts.columns.map((column) => column.toLowerCase());
  const from = first === undefined ? 0 : names.indexOf(first.toLowerCase());
  const to = last === undefined ? names.length - 1 : names.indexOf(last.toLowerCase());
  const rows = rowsOfPart(facts, part, row);
  if (from < 0 || to < 0 || rows === undefined) return undefined;
  const column = facts.area.column + Math.min(from, to);
  return { sheet: facts.area.sheet, ...rows, column, columns: Math.abs(to - from) + 1 };
}

function rowsOfPart(facts: TableShape, part: TablePart, row: number): { row: number; rows: number } | undefined {
  const { area, headers, totals } = facts;
  const top = area.row + Number(headers);
  const rows = area.rows - Number(headers) - Number(totals);
  if (part === "all") return { row: area.row, rows: area.rows };
  if (part === "data") return { row: top, rows };
  if (part === "headers") return headers ? { row: area.row, rows: 1 } : undefined;
  if (part === "totals") return totals ? { row: area.row + area.rows - 1, rows: 1 } : undefined;
  return row >= top && row < top + rows ? { row, rows: 1 } : undefined;
}
