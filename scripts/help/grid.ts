/** Ranges and spilled results on a help page: long ones are shortened, wide ones transposed. */
import { type CellOut, labelOf, readableCell, type CellMatrix, type Shape } from "../../core";
import { scrolled, table } from "./html";

/** The most columns of a table; wider tables are transposed. */
const MOST_COLUMNS = 10;
/** The most rows of a result, and of a block of labels. */
const MOST_ROWS = 16;
/** The most rows of an input range of numbers. */
const MOST_INPUT_ROWS = 8;
/** The most rows of a transposed table; of a longer one only the first and the last are shown. */
const MOST_TRANSPOSED = 4;

export type GridCells = readonly (readonly (CellOut | null)[])[];

const isHeaded = ([heads = [], ...body]: GridCells): boolean =>
  body.length > 0 && heads.every((cell) => typeof cell === "string");

const unnamed = (width: number): readonly string[] =>
  Array.from({ length: width }, (_, place) => `column ${String(place + 1)}`);

interface Cut {
  readonly rows: GridCells;
  /** Which rows are shown, for the caption; "" if all are. */
  readonly extent: string;
}

/** The first rows and the last: it is the total of many. */
const cut = (rows: GridCells, most: number): Cut => {
  if (rows.length <= most) return { rows, extent: "" };
  const first = most - 1;
  const begin = first === 1 ? "the first" : `the first ${String(first)}`;
  return {
    rows: [...rows.slice(0, first), ...rows.slice(-1)],
    extent: `: ${begin} and the last of ${String(rows.length)} rows`,
  };
};

const transposed = (caption: string, heads: readonly string[], body: GridCells): string => {
  const { rows, extent } = cut(body, body.length > MOST_TRANSPOSED ? 2 : MOST_TRANSPOSED);
  const [corner = "", ...names] = heads;
  const lines = names.map((name, place) => [name, ...rows.map((row) => readableCell(row[place + 1] ?? null))]);
  const columns = [corner, ...rows.map((row) => readableCell(row[0] ?? null))];
  return scrolled(`${caption}, transposed, a column in each row${extent}`, columns, lines);
};

const grid = (caption: string, heads: readonly string[], body: GridCells, most: number): string => {
  if (heads.length > MOST_COLUMNS) return transposed(caption, heads, body);
  const { rows, extent } = cut(body, most);
  return scrolled(
    `${caption}${extent}`,
    heads,
    rows.map((row) => row.map(readableCell)),
  );
};

/** A spilled result. A first row of texts only names the columns, or `heads` does. */
export const resultGrid = (cells: GridCells, heads?: readonly string[]): string => {
  const [first = [], ...body] = cells;
  const caption = "What it shows";
  if (heads !== undefined)
    return table(
      caption,
      heads,
      cells.map((row) => row.map(readableCell)),
      "narrow",
    );
  return isHeaded(cells)
    ? grid(caption, first.map(readableCell), body, MOST_ROWS)
    : grid(caption, unnamed(first.length), cells, MOST_ROWS);
};

const labelsOf = (shape: Shape): readonly string[] => {
  if (shape.type === "block") return ["label", "value", "unit"];
  return shape.type === "rows" ? Object.keys(shape.columns).map(labelOf) : [];
};

/** A range that a formula refers to. */
export const inputGrid = (name: string, shape: Shape, cells: CellMatrix): string => {
  const [first = [], ...body] = cells;
  const caption = `The range “${name}”`;
  if (shape.type !== "block" && isHeaded(cells)) return grid(caption, first.map(readableCell), body, MOST_INPUT_ROWS);
  const width = Math.max(...cells.map((row) => row.length));
  const labels = labelsOf(shape);
  const heads = unnamed(width).map((plain, place) => labels[place] ?? plain);
  return grid(caption, heads, cells, shape.type === "block" ? MOST_ROWS : MOST_INPUT_ROWS);
};
