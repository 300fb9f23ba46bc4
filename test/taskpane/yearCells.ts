/** Cells of a sheet with calls that take long, for an invented community hall's pool in Miami. */
import type { CellInput } from "../../core";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";

export type Cells = readonly (readonly [string, string | number])[];

export const typed = (value: CellInput, columns: string): Cells =>
  (value as readonly (readonly (string | number)[])[]).flatMap((row, down) =>
    row.map((each, over): readonly [string, string | number] => [`${columns[over] ?? ""}${String(down + 1)}`, each]),
  );

export const YEAR: CellInput = [
  ["pool area", 1076],
  ["water depth", 5],
  ["latitude", 25.82],
  ["rated cooling", 90000],
  ["rated power", 8.1],
  ["outdoor fan", 0.6],
  ["exchanger UA", 5000],
];

export const YEAR_CELLS: Cells = [
  ...typed(YEAR, "GH"),
  ...typed(MIAMI_MONTHS, "JKLMNO"),
  ["A80", "=WARMBACK.POOL.YEAR(G1:H7,J1:O13)"],
];
