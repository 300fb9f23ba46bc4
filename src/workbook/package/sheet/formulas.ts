/** The kinds of formula of a sheet's cells, in the order in which the cells come. */
import { parseCells } from "../../reader/reference";
import type { Area } from "../../port";
import { shiftOf, type Shift } from "../formula/shift";
import { isTrue, numberOf } from "../xml/node";
import type { FileFormula } from "./facts";
import type { ScannedCell, ScannedFormula } from "./scan";

type Cells = Omit<Area, "sheet">;
type Place = { readonly row: number; readonly column: number };

interface Group extends Place {
  readonly text: string;
  readonly shift: Shift | undefined;
}

export interface FormulaKinds {
  /** Undefined: no formula. "later": one cell of a group whose first cell hasn't come yet. */
  of(cell: ScannedCell): FileFormula | "later" | undefined;
}

export const contains = (area: Cells, { row, column }: Place): boolean =>
  row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns;

interface Filled {
  readonly area: Cells;
  readonly by: Place;
}

function arrayOf(cell: ScannedCell, formula: ScannedFormula, dynamic: boolean, filled: Filled[]): FileFormula {
  const { row, column } = cell;
  const area = parseCells(formula.attributes["ref"] ?? "") ?? { row, column, rows: 1, columns: 1 };
  if (area.rows * area.columns > 1) filled.push({ area, by: { row, column } });
  const { r1, r2 } = formula.attributes;
  if (formula.attributes["t"] === "array") return { kind: "array", text: formula.text, area, dynamic };
  return { kind: "dataTable", area, inputs: [r1, r2].filter((text) => text !== undefined) };
}

function sharedOf(cell: ScannedCell, formula: ScannedFormula, groups: Map<number, Group>): FileFormula | "later" {
  const group = numberOf(formula.attributes["si"]) ?? -1;
  const { row, column } = cell;
  if (formula.text !== "") {
    // A cell of a group may hold a text of its own, which counts; only one with an area begins the group.
    if (formula.attributes["ref"] !== undefined || !groups.has(group))
      groups.set(group, { row, column, text: formula.text, shift: shiftOf(formula.text) });
    return { kind: "shared", text: formula.text, group };
  }
  const first = groups.get(group);
  if (first === undefined) return "later";
  const text = first.shift?.(row - first.row, column - first.column);
  return text === undefined ? { kind: "unreadable", text: first.text } : { kind: "shared", text, group };
}

/** @param dynamic the cell metadata that mark a dynamic array */
export function formulaKinds(dynamic: ReadonlySet<number>): FormulaKinds {
  const groups = new Map<number, Group>();
  let filled: Filled[] = [];
  let row = -1;
  return {
    of(cell) {
      const { formula } = cell;
      if (cell.row !== row) {
        row = cell.row;
        if (filled.length > 0) filled = filled.filter(({ area }) => area.row + area.rows > row);
      }
      const by = filled.find(({ area }) => contains(area, cell))?.by;
      if (by !== undefined && (by.row !== cell.row || by.column !== cell.column)) return { kind: "filled", by };
      if (formula === undefined) return undefined;
      const type = formula.attributes["t"];
      const isDynamic = dynamic.has(numberOf(cell.attributes["cm"]) ?? 0) && !isTrue(formula.attributes["aca"]);
      if (type === "array" || type === "dataTable") return arrayOf(cell, formula, isDynamic, filled);
      if (type === "shared") return sharedOf(cell, formula, groups);
      return formula.text === "" ? undefined : { kind: "normal", text: formula.text };
    },
  };
}
