/** Names the cells and places of charts by the keys of lines. */
import type { Line } from "./layout";

/** The rows from the first to the last key in a column. */
export const cellsBetween = (first: string, last: string, column: string): string =>
  `[${first}@${column}]:[${last}@${column}]`;

/** A place over the columns of the rows that a line keeps free: `chartRows`. */
export const placeOver = (key: string, columns: readonly [first: string, last: string]): string =>
  `[${key}@${columns[0]}]:[${key}End@${columns[1]}]`;

const CHART_ROWS = 16;

/** Rows kept free for charts. */
export const chartRows = (key: string): readonly Line[] => [
  { key, label: "", spills: CHART_ROWS },
  { key: `${key}End`, label: "" },
];
