/**
 * Tells cells that a formula spills into from cells that hold it themselves: Excel shows a spill's formula in each of its
 * cells. One question answers for a whole run of equal formulas; only what it leaves open is asked cell by cell.
 */
import type { Area } from "../port";
import { RANGE_COST, rangeOf, type Piece } from "./ranges";
import { inPortions } from "./portions";
import { brief, reading, supports } from "./run";

/** A cell whose formula also is its neighbour's, or may be that of a cell outside what was read. */
interface Doubt {
  readonly piece: Piece;
  readonly down: number;
  readonly over: number;
}

const cost = (): number => RANGE_COST;

const keyOf = ({ down, over }: Doubt): string => `${String(down)},${String(over)}`;

const textAt = ({ formulas }: Piece, down: number, over: number): string => formulas[down]?.[over] ?? "";

const cellArea = ({ piece: { area }, down, over }: Doubt): Area => ({
  sheet: area.sheet,
  row: area.row + down,
  column: area.column + over,
  rows: 1,
  columns: 1,
});

/** The cells of a piece that may belong to a spill: by runs of equal formulas that touch, each from its first cell on. */
function runsIn(piece: Piece): readonly (readonly Doubt[])[] {
  const { area, formulas } = piece;
  const seen = new Set<string>();
  const runs: Doubt[][] = [];
  formulas.forEach((row, down) =>
    row.forEach((text, over) => {
      if (text === "" || seen.has(keyOf({ piece, down, over }))) return;
      const run = runFrom({ piece, down, over }, text, seen);
      const atEdge = run.some((one) => (one.down === 0 && area.row > 0) || (one.over === 0 && area.column > 0));
      if (run.length > 1 || atEdge) runs.push(run);
    }),
  );
  return runs;
}

function runFrom(first: Doubt, text: string, seen: Set<string>): Doubt[] {
  const run: Doubt[] = [];
  const open = [first];
  seen.add(keyOf(first));
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    run.push(one);
    const { piece, down, over } = one;
    for (const [row, column] of [
      [down + 1, over],
      [down - 1, over],
      [down, over + 1],
      [down, over - 1],
    ] as const) {
      const next: Doubt = { piece, down: row, over: column };
      if (textAt(piece, row, column) !== text || seen.has(keyOf(next))) continue;
      seen.add(keyOf(next));
      open.push(next);
    }
  }
  return run.sort((a, b) => a.down - b.down || a.over - b.over);
}

type Box = Pick<Area, "row" | "column" | "rows" | "columns">;

const PLACE = "rowIndex,columnIndex,rowCount,columnCount";

const boxOf = (range: Excel.Range): Box | undefined =>
  range.isNullObject
    ? undefined
    : { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount };

/** The spill that each cell is the first one of. */
const spillsFrom = (cells: readonly Doubt[]): Promise<readonly (Box | undefined)[]> =>
  reading(async (context) => {
    const spills = cells.map((cell) => brief(rangeOf(context, cellArea(cell)).getSpillingToRangeOrNullObject()));
    for (const spill of spills) spill.load(PLACE);
    await context.sync();
    return spills.map(boxOf);
  });

/** Whether each cell belongs to a spill of another one. */
const belongToOthers = (cells: readonly Doubt[]): Promise<readonly boolean[]> =>
  reading(async (context) => {
    const parents = cells.map((cell) => brief(rangeOf(context, cellArea(cell)).getSpillParentOrNullObject()));
    for (const parent of parents) parent.load(PLACE);
    await context.sync();
    return parents.map((parent, at) => {
      const own = cellArea(cells[at] as Doubt);
      const box = boxOf(parent);
      return box !== undefined && (box.row !== own.row || box.column !== own.column);
    });
  });

/** Cells of one column of a run, one below the other. */
interface Strip {
  readonly cells: readonly Doubt[];
}

function stripsOf(cells: readonly Doubt[]): readonly Strip[] {
  const strips: Doubt[][] = [];
  for (const cell of [...cells].sort((a, b) => a.over - b.over || a.down - b.down)) {
    const last = strips.at(-1)?.at(-1);
    if (last?.piece === cell.piece && last.over === cell.over && last.down + 1 === cell.down) strips.at(-1)?.push(cell);
    else strips.push([cell]);
  }
  return strips.map((strip) => ({ cells: strip }));
}

/** The strips that hold a cell of a spill. */
const withSpills = (strips: readonly Strip[]): Promise<readonly Strip[]> =>
  reading(async (context) => {
    const ranges = strips.map(({ cells }) => rangeOf(context, { ...cellArea(cells[0] as Doubt), rows: cells.length }));
    for (const range of ranges) range.load("hasSpill");
    await context.sync();
    return strips.filter((_, at) => (ranges[at]?.hasSpill as boolean | null | undefined) !== false);
  });

const isWithin = (cell: Doubt, { row, column, rows, columns }: Box): boolean => {
  const own = cellArea(cell);
  return own.row >= row && own.row < row + rows && own.column >= column && own.column < column + columns;
};

/** Empties the formulas of cells that another cell spills into. */
export async function dropSpilled(pieces: readonly Piece[]): Promise<void> {
  if (!supports("1.12")) return;
  const runs = pieces.filter(({ spilled }) => spilled).flatMap(runsIn);
  const firsts = runs.map((run) => run[0] as Doubt);
  const spills = await inPortions(firsts, { cost, run: spillsFrom });
  const drop = ({ piece, down, over }: Doubt): void => {
    const row = piece.formulas[down];
    if (row !== undefined) row[over] = "";
  };
  const open: Doubt[] = [];
  runs.forEach((run, at) => {
    const spill = spills[at];
    for (const [place, cell] of run.entries())
      if (spill === undefined || !isWithin(cell, spill)) open.push(cell);
      else if (place > 0) drop(cell);
  });
  const strips = await inPortions(stripsOf(open), { cost, run: withSpills });
  const left = strips.flatMap(({ cells }) => cells);
  const others = await inPortions(left, { cost, run: belongToOthers });
  left.forEach((cell, at) => others[at] === true && drop(cell));
}
