/** Reads cells through Office.js, in requests of a size that every Excel takes. */
import type { Area, Block, CellFault, CellValue } from "../port";
import { cellsOf } from "../reader/sheets";
import { inPortions } from "./portions";
import { RANGE_COST, rangesOf, type Piece } from "./ranges";
import { reading, supports } from "./run";
import { dropSpilled } from "./spills";

/** So many cells are asked for at once: 1.5 MB where a cell holds a formula of 75 characters and its value. */
const CELLS_AT_ONCE = 10_000;
const CELL_COST = 150;

/**
 * An error's code as `values` may have it. Microsoft's reference has it in English there in every language of Excel
 * (`NameErrorCellValue.basicValue`); only `text`, which isn't read, is the user's. Should an Excel differ, #¡DIV/0! and #N/D
 * are taken for errors too.
 */
const LOOKS_LIKE_ERROR = /^#[\p{Lu}¡¿][\p{Lu}\d/_]*[!?]?$/u;

/** The pieces of an area from the top down, none of more cells than that. */
function cutRows(area: Area, most: number): readonly Area[] {
  const deep = Math.max(1, Math.floor(most / area.columns));
  const pieces: Area[] = [];
  for (let down = 0; down < area.rows; down += deep)
    pieces.push({ ...area, row: area.row + down, rows: Math.min(deep, area.rows - down) });
  return pieces;
}

/** Excel gives "" for an empty cell: only a formula, or nothing, can be behind it. */
const cellOf = (value: unknown, formula: unknown): CellValue =>
  value === "" && formula === "" ? null : (value as string | number | boolean);

const isFormula = (text: unknown): text is string => typeof text === "string" && text.startsWith("=");

function pieceOf(area: Area, range: Excel.Range): Piece {
  const written = range.formulas as unknown[][];
  const values = range.values as unknown[][];
  return {
    area,
    // A text that begins with "=" is its own formula's text; a formula's value is another one.
    formulas: written.map((row, down) =>
      row.map((text, over) => (isFormula(text) && values[down]?.[over] !== text ? text : "")),
    ),
    values: values.map((row, down) => row.map((value, over) => cellOf(value, written[down]?.[over]))),
    // One range: true, false, or null where its cells differ.
    spilled: supports("1.12") && (range.hasSpill as boolean | null) !== false,
  };
}

const readPieces = (areas: readonly Area[]): Promise<readonly Piece[]> =>
  reading(async (context) => {
    const ranges = rangesOf(context, areas);
    for (const range of ranges) range.load(supports("1.12") ? "values,formulas,hasSpill" : "values,formulas");
    await context.sync();
    return ranges.map((range, at) => pieceOf(areas[at] as Area, range));
  });

const typesOf = (pieces: readonly Piece[]): Promise<readonly (readonly [Piece, string[][]])[]> =>
  reading(async (context) => {
    const ranges = rangesOf(
      context,
      pieces.map(({ area }) => area),
    );
    for (const range of ranges) range.load("valueTypes");
    await context.sync();
    return ranges.map((range, at) => [pieces[at] as Piece, range.valueTypes] as const);
  });

const costOf = (area: Area): number => RANGE_COST + CELL_COST * cellsOf(area);

/** A text like #N/A is an error only where Excel says that it is one: asked for only where such a text came. */
async function markErrors(pieces: readonly Piece[]): Promise<void> {
  const doubtful = pieces.filter(({ values }) =>
    values.some((row) => row.some((cell) => typeof cell === "string" && LOOKS_LIKE_ERROR.test(cell))),
  );
  for (const [{ values }, types] of await inPortions(doubtful, { cost: ({ area }) => costOf(area), run: typesOf }))
    types.forEach((row, down) =>
      row.forEach((type, over) => {
        const cells = values[down];
        if (cells !== undefined && type === "Error") cells[over] = { code: String(cells[over]) } satisfies CellFault;
      }),
    );
}

/** A piece to read, and which of the areas it is of. */
interface Wanted {
  readonly area: Area;
  readonly which: number;
}

/** Formulas and values of areas; a large one is read piece by piece and put together. */
export async function readAreas(areas: readonly Area[]): Promise<readonly Block[]> {
  const wanted = areas.flatMap((area, which) =>
    cutRows(area, CELLS_AT_ONCE).map((piece): Wanted => ({ area: piece, which })),
  );
  const read = await inPortions(wanted, {
    cost: ({ area }) => costOf(area),
    run: async (some) =>
      (await readPieces(some.map(({ area }) => area))).map((piece, at) => ({ piece, which: some[at]?.which })),
    split({ area, which }): readonly Wanted[] | undefined {
      const halves = area.rows > 1 ? cutRows(area, cellsOf(area) / 2) : cutColumns(area);
      return halves?.map((half) => ({ area: half, which }));
    },
  });
  await markErrors(read.map(({ piece }) => piece));
  const pieces = areas.map((): Piece[] => []);
  for (const { piece, which } of read) if (which !== undefined) pieces[which]?.push(piece);
  const whole = areas.map((area, which) => joined(area, pieces[which] ?? []));
  await dropSpilled(whole);
  return whole.map(({ area, formulas, values }) => ({ area, formulas, values }));
}

function cutColumns(area: Area): readonly Area[] | undefined {
  if (area.columns < 2) return undefined;
  const left = Math.floor(area.columns / 2);
  return [
    { ...area, columns: left },
    { ...area, column: area.column + left, columns: area.columns - left },
  ];
}

/** An area out of its pieces, which came row by row, those of one row from left to right. */
function joined(area: Area, pieces: readonly Piece[]): Piece {
  const formulas: string[][] = Array.from({ length: area.rows }, () => []);
  const values: CellValue[][] = Array.from({ length: area.rows }, () => []);
  for (const piece of pieces)
    for (let down = 0; down < piece.area.rows; down++) {
      const row = piece.area.row - area.row + down;
      for (const text of piece.formulas[down] ?? []) formulas[row]?.push(text);
      for (const value of piece.values[down] ?? []) values[row]?.push(value);
    }
  return { area, formulas, values, spilled: pieces.some(({ spilled }) => spilled) };
}
