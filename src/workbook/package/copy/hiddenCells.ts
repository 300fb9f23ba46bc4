/** Hidden rows and columns of a sheet. */
import type { Area } from "../../port";
import { columnLetters, MOST_COLUMNS, MOST_ROWS } from "../../reader/reference";
import { childrenOf, isTrue, numberOf } from "../xml/node";
import type { HiddenItem } from "./choice";
import type { SheetFrame } from "./sheetFrame";

export interface HiddenArea extends HiddenItem {
  readonly area: Area;
}

type Run = readonly [first: number, last: number];

/** Neighbours together. */
function runs(spans: readonly Run[]): readonly Run[] {
  const found: [number, number][] = [];
  for (const [first, last] of [...spans].sort((a, b) => a[0] - b[0])) {
    const before = found.at(-1);
    if (before !== undefined && first <= before[1] + 1) before[1] = Math.max(before[1], last);
    else found.push([first, last]);
  }
  return found;
}

const between = (one: string, many: string, first: string, last: string): string =>
  first === last ? `${one} ${first}` : `${many} ${first} to ${last}`;

function rowItem(sheet: string, [first, last]: Run): HiddenArea {
  return {
    id: `rows:${sheet}:${first + 1}-${last + 1}`,
    kind: "rows",
    sheet,
    text: between("row", "rows", String(first + 1), String(last + 1)),
    byDefault: "keep",
    area: { sheet, row: first, column: 0, rows: last - first + 1, columns: MOST_COLUMNS },
  };
}

function columnItem(sheet: string, [first, last]: Run): HiddenArea {
  const letters = [columnLetters(first), columnLetters(last)] as const;
  return {
    id: `columns:${sheet}:${letters.join("-")}`,
    kind: "columns",
    sheet,
    text: between("column", "columns", ...letters),
    byDefault: "keep",
    area: { sheet, row: 0, column: first, rows: MOST_ROWS, columns: last - first + 1 },
  };
}

/** A row or column of no size is as hidden as one that is marked so. */
export function hiddenCells(sheet: string, { elements, rows }: SheetFrame): readonly HiddenArea[] {
  const hiddenRows = rows.filter(({ hidden, height }) => hidden || height === 0).map(({ row }): Run => [row, row]);
  const columns = elements
    .filter(({ name }) => name === "cols")
    .flatMap((node) => childrenOf(node, "col"))
    .filter(({ attributes }) => isTrue(attributes["hidden"]) || numberOf(attributes["width"]) === 0)
    .map(({ attributes }): Run => [(numberOf(attributes["min"]) ?? 1) - 1, (numberOf(attributes["max"]) ?? 1) - 1]);
  return [...runs(hiddenRows).map((run) => rowItem(sheet, run)), ...runs(columns).map((run) => columnItem(sheet, run))];
}
