/** What reading a formula collects, and where its parts are used. */
import type { BookFacts } from "../../../workbook/package";
import type { Address, Area } from "../../../workbook/port";
import { plainName } from "../../../workbook/reader/evaluate";
import { parseReference } from "../../../workbook/reader/reference";
import type { CallTree, Tree } from "../../../workbook/reader/tree";
import {
  CELL_BY_CELL,
  OF_DATES,
  OF_HIDDEN_ROWS,
  READABLE,
  type ArgumentKind,
  type ReadableFunction,
} from "./functions";
import type { LongSheets } from "./longLines";
import { bookNames, type BookNames } from "./names";
import { isOne, meetingCell, sheetPlaces, textOf, type SheetPlaces } from "./places";

export interface ReadableBook {
  readonly book: BookFacts;
  readonly places: SheetPlaces;
  readonly names: BookNames;
  /** Our functions by their names in cells: whether each argument takes a range. */
  readonly ours: ReadonlyMap<string, ReadableFunction>;
  /** Sheets with hidden rows. */
  readonly hiding: ReadonlySet<string>;
  /** Sheets whose whole columns or rows are long. */
  readonly long: LongSheets;
}

export function readableBook(
  book: BookFacts,
  ours: ReadonlyMap<string, ReadableFunction>,
  hiding: ReadonlySet<string>,
  typed: (formula: string) => string,
  long: LongSheets = { rows: new Set(), columns: new Set() },
): ReadableBook {
  const places = sheetPlaces(book);
  return { book, places, names: bookNames(book, places, typed), ours, hiding, long };
}

/**
 * Where a part of a formula is used. "value": one value, and a range meets the formula's row or column. "single": one
 * value, and a range has no meaning. "range": a range as it is. "ranges": as many as there are. "array": a calculation
 * over ranges too. "any": in a formula that was stored as an array.
 */
export type FormulaUse = "value" | "single" | "range" | "ranges" | "array" | "any";

export interface FormulaEdit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface FormulaPass {
  readonly at: Address;
  readonly known: ReadableBook;
  readonly edits: FormulaEdit[];
  readonly reasons: string[];
  /** Names that are calculations are written out, so that the panel can follow them in a formula that calls us. */
  readonly writesOut: boolean;
  /** Names that are being read, so that one that leads to itself ends. */
  readonly naming: ReadonlySet<string>;
}

export const SEVERAL_CELLS = "calculations over ranges that Excel meets with one row or column";
export const SEVERAL_AREAS = "names and unions of several areas";

export const takesSeveral = (use: FormulaUse): boolean => use === "any" || use === "array";

export function refuseWith(pass: FormulaPass, why: string): void {
  pass.reasons.push(why);
}

export const editAt = (pass: FormulaPass, { start, end }: Pick<Tree, "start" | "end">, text: string): void =>
  void pass.edits.push({ start, end, text });

export function useMeeting(tree: Tree, area: Area, pass: FormulaPass): void {
  editAt(pass, tree, meetingCell(area, pass.at) ?? "#VALUE!");
}

/** @param asIs the engine reads the reference's own text as the same cells */
export function useAreas(tree: Tree, areas: readonly Area[], use: FormulaUse, asIs: boolean, pass: FormulaPass): void {
  const [first] = areas;
  if (first === undefined) return;
  if (areas.length > 1) {
    if (use === "ranges") editAt(pass, tree, areas.map((area) => textOf(area, pass.at)).join(","));
    else refuseWith(pass, SEVERAL_AREAS);
  } else if (!isOne(areas) && use === "value") useMeeting(tree, first, pass);
  else if (!isOne(areas) && use === "single") refuseWith(pass, SEVERAL_CELLS);
  else if (!asIs) editAt(pass, tree, textOf(first, pass.at));
}

/** The sheet is spelled as in its tab, which the engine wants. */
export function isSpelled(text: string, area: Area | undefined): boolean {
  const meaning = parseReference(text);
  return meaning?.kind === "cells" && (meaning.sheet === undefined || meaning.sheet === area?.sheet);
}

export const isCallOf = (tree: Tree, name: string): boolean => tree.kind === "call" && plainName(tree.name) === name;

export const inOperator = (use: FormulaUse): FormulaUse =>
  use === "any" || use === "array" || use === "value" ? use : "single";

/** How an argument of a kind is used, inside a function that is used so itself. */
export function useOf(kind: ArgumentKind, name: string, use: FormulaUse, more: boolean): FormulaUse {
  if (use === "any") return "any";
  if (kind === "a") return "array";
  if (kind === "r") return more ? "ranges" : "range";
  if (use === "array") return CELL_BY_CELL.has(name) ? "array" : "single";
  if (kind === "b") return use;
  return kind === "s" && use === "value" ? "value" : "single";
}

/** Zero or nothing for a row or a column takes all of them. */
export const takesAll = (argument: Tree | undefined): boolean =>
  argument?.kind === "omitted" || (argument?.kind === "number" && argument.value === 0);

/** Reasons that lie in the function itself. */
export function reasonAgainst(
  tree: CallTree,
  name: string,
  use: FormulaUse,
  { known }: FormulaPass,
): string | undefined {
  if (known.book.date1904 && OF_DATES.has(name)) return "dates counted from 1904";
  if (OF_HIDDEN_ROWS.has(name) && known.hiding.size > 0) return `${name} where rows are hidden`;
  if (READABLE.get(name)?.spills === true && (use === "value" || use === "single"))
    return "results of several cells in a formula of one";
  const one = use === "value" || use === "single";
  if (name === "INDEX" && one && tree.args.slice(1).some(takesAll)) return SEVERAL_CELLS;
  if (name === "INDEX" && use !== "any" && tree.args[0]?.kind === "binary") return "INDEX of a calculation";
  if (name === "IF" && tree.args.some(({ kind }) => kind === "omitted")) return "IF with an empty branch";
  return undefined;
}

export function editedText(formula: string, edits: readonly FormulaEdit[]): string {
  let text = "";
  let done = 0;
  for (const { start, end, text: replacement } of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    text += formula.slice(done, start) + replacement;
    done = end;
  }
  return text + formula.slice(done);
}
