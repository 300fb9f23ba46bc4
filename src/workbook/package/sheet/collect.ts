/** One pass over a sheet that is to be changed: where the cells are that a change needs, and where new ones go. */
import type { Area } from "../../port";
import { parseCells } from "../../reader/reference";
import type { NextSlice } from "../../timeSlices";
import { isTrue, numberOf, type XmlNode } from "../xml/node";
import { scanText, type TagPlace } from "../xml/scan";
import { contains } from "./formulas";
import { sheetScan, type ScannedCell, type ScannedRow } from "./scan";

type Cells = Omit<Area, "sheet">;

/** A cell that the file doesn't hold yet. */
export interface NewPlace {
  readonly row: number;
  readonly column: number;
  /** Where its text goes. */
  readonly at: number;
  /** The row that it goes into; undefined where that is new as well. */
  readonly into: ScannedRow | undefined;
  /** The style of its row or column. */
  readonly style: number;
}

export interface ArrayCells {
  readonly first: ScannedCell;
  readonly area: Cells;
  readonly others: ScannedCell[];
}

export interface SharedGroup {
  first: ScannedCell | undefined;
  readonly members: ScannedCell[];
}

export interface Collected {
  /** By key: the cells that were asked for. */
  readonly cells: ReadonlyMap<number, ScannedCell>;
  readonly places: readonly NewPlace[];
  /** Arrays and what-if tables that touch a cell asked for. */
  readonly arrays: readonly ArrayCells[];
  readonly groups: ReadonlyMap<number, SharedGroup>;
  readonly elements: readonly XmlNode[];
  readonly data: { readonly open: TagPlace; readonly empty: boolean } | undefined;
}

const COLUMNS = 16_384;

export const keyOf = (row: number, column: number): number => row * COLUMNS + column;
export const placeOfKey = (key: number): { readonly row: number; readonly column: number } => ({
  row: Math.floor(key / COLUMNS),
  column: key % COLUMNS,
});

interface Wanted {
  /** Columns by row, both rising. */
  readonly rows: readonly (readonly [row: number, columns: readonly number[]])[];
  readonly byRow: ReadonlyMap<number, readonly number[]>;
}

function wantedOf(keys: Iterable<number>): Wanted {
  const byRow = new Map<number, number[]>();
  for (const key of [...keys].sort((a, b) => a - b)) {
    const { row, column } = placeOfKey(key);
    const columns = byRow.get(row);
    if (columns === undefined) byRow.set(row, [column]);
    else columns.push(column);
  }
  return { rows: [...byRow], byRow };
}

/** Looks at the rows of the area or at those that are wanted, whichever are fewer. */
function touches(area: Cells, { rows, byRow }: Wanted): boolean {
  const within = (columns: readonly number[] | undefined): boolean =>
    columns?.some((column) => column >= area.column && column < area.column + area.columns) ?? false;
  if (area.rows > rows.length)
    return rows.some(([row, columns]) => row >= area.row && row < area.row + area.rows && within(columns));
  for (let row = area.row; row < area.row + area.rows; row++) if (within(byRow.get(row))) return true;
  return false;
}

function columnStyles(elements: readonly XmlNode[]): (column: number) => number {
  const columns = elements.find(({ name }) => name === "cols")?.children ?? [];
  return (column) => {
    const own = columns.find(
      ({ attributes }) =>
        column + 1 >= (numberOf(attributes["min"]) ?? 0) && column + 1 <= (numberOf(attributes["max"]) ?? 0),
    );
    return numberOf(own?.attributes["style"]) ?? 0;
  };
}

/** Notes arrays and shared groups as their cells pass. */
function formulaNotes(wanted: Wanted) {
  const arrays: ArrayCells[] = [];
  const groups = new Map<number, SharedGroup>();
  let open: ArrayCells[] = [];
  return {
    arrays,
    groups,
    note(cell: ScannedCell): void {
      if (open.length > 0) {
        open = open.filter(({ area }) => area.row + area.rows > cell.row);
        open.find(({ area }) => contains(area, cell))?.others.push(cell);
      }
      const { t: type, ref = "", si } = cell.formula?.attributes ?? {};
      if (type === "array" || type === "dataTable") {
        const area = parseCells(ref) ?? { row: cell.row, column: cell.column, rows: 1, columns: 1 };
        if (!touches(area, wanted)) return;
        const array = { first: cell, area, others: [] };
        arrays.push(array);
        open.push(array);
      } else if (type === "shared") {
        const number = numberOf(si) ?? -1;
        const group = groups.get(number) ?? { first: undefined, members: [] };
        groups.set(number, group);
        if (cell.formula?.text !== "" && ref !== "") group.first = cell;
        else group.members.push(cell);
      }
    },
  };
}

/** Finds where the cells go that the file doesn't hold, as rows and cells pass in their order. */
function placeFinder({ rows, byRow }: Wanted, styleOf: (column: number) => number) {
  const places: NewPlace[] = [];
  let nextRow = 0;
  let columns: readonly number[] = [];
  let nextColumn = 0;
  const add = (row: number, column: number, at: number, into: ScannedRow | undefined): void => {
    const ownStyle = into !== undefined && isTrue(into.attributes["customFormat"]) ? into.attributes["s"] : undefined;
    places.push({ row, column, at, into, style: numberOf(ownStyle) ?? styleOf(column) });
  };
  const rowsBefore = (limit: number, at: number): void => {
    for (; (rows[nextRow]?.[0] ?? Infinity) < limit; nextRow++)
      for (const column of rows[nextRow]?.[1] ?? []) add(rows[nextRow]?.[0] ?? 0, column, at, undefined);
  };
  const columnsBefore = (row: ScannedRow, limit: number, at: number): void => {
    for (; (columns[nextColumn] ?? Infinity) < limit; nextColumn++) add(row.row, columns[nextColumn] ?? 0, at, row);
  };
  return {
    places,
    row(row: ScannedRow): void {
      rowsBefore(row.row, row.open.start);
      columns = byRow.get(row.row) ?? [];
      nextColumn = 0;
      if (rows[nextRow]?.[0] === row.row) nextRow++;
    },
    cell(row: ScannedRow, cell: ScannedCell): boolean {
      columnsBefore(row, cell.column, cell.start);
      const isWanted = columns[nextColumn] === cell.column;
      if (isWanted) nextColumn++;
      return isWanted;
    },
    rowEnd: (row: ScannedRow, close: TagPlace): void => columnsBefore(row, Infinity, close.start),
    dataEnd: (close: TagPlace): void => rowsBefore(Infinity, close.start),
  };
}

/** @param keys of the cells that are to change */
export async function collect(
  path: string,
  source: string,
  keys: Iterable<number>,
  pause: NextSlice,
): Promise<Collected> {
  const wanted = wantedOf(keys);
  const cells = new Map<number, ScannedCell>();
  const elements: XmlNode[] = [];
  const formulas = formulaNotes(wanted);
  const finder = placeFinder(wanted, (column) => columnStyles(elements)(column));
  let data: Collected["data"];
  let current: ScannedRow | undefined;
  await scanText(
    path,
    source,
    sheetScan({
      element: (node) => void elements.push(node),
      data: (open, empty) => {
        data = { open, empty };
      },
      dataEnd: finder.dataEnd,
      row: (row) => {
        current = row;
        finder.row(row);
      },
      rowEnd: finder.rowEnd,
      cell: (cell) => {
        if (current !== undefined && finder.cell(current, cell)) cells.set(keyOf(cell.row, cell.column), cell);
        formulas.note(cell);
      },
    }),
    pause,
  );
  return { cells, places: finder.places, arrays: formulas.arrays, groups: formulas.groups, elements, data };
}
