/**
 * What many formulas refer to. Formulas that differ in their cells alone, as those of a filled column do, have one shape:
 * it is parsed once. A formula that leads out of its sheet is parsed by itself.
 */
import { placeNumber } from "../columns";
import type { Address, Area } from "../port";
import { MOST_COLUMNS, MOST_ROWS } from "../reader/reference";
import { LONGEST_FORMULA } from "../reader/tokens";
import { plainArea, referencesOf } from "./reach";
import type { Meanings } from "./storedMeaning";

/** A shape's references in order, each a text or the next one of the cells; "each" where they can't be matched to cells. */
type Shape = readonly (string | undefined)[] | "unknown" | "each";

/** In the place of a cell and of a range: no formula holds them outside of its texts. */
const CELL = "\u0001";
const RANGE = "\u0002";

const QUOTE = 34;
const DOLLAR = 36;
const COLON = 58;

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isLetter = (code: number): boolean => (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
/** Letters, digits and $ . _ */
const isWord = (code: number): boolean =>
  isLetter(code) || isDigit(code) || code === DOLLAR || code === 46 || code === 95;

/** What may come between words, by code: any other character could lead out of the sheet, or change what a word is. */
const BETWEEN: ReadonlySet<number> = new Set([..." +-*/^&=<>(),:;%"].map((char) => char.charCodeAt(0)));
const OPEN = 40;

const wordEnd = (text: string, at: number): number => {
  let end = at;
  while (isWord(text.charCodeAt(end))) end++;
  return end;
};

/** Row and column of a word that is a cell, as one number; -1 for any other word, NaN for a cell outside of a sheet. */
function cellKey(text: string, from: number, end: number): number {
  let at = text.charCodeAt(from) === DOLLAR ? from + 1 : from;
  const letters = at;
  let column = 0;
  for (; isLetter(text.charCodeAt(at)); at++) column = column * 26 + (text.charCodeAt(at) & 31);
  if (at === letters || at > letters + 3) return -1;
  if (text.charCodeAt(at) === DOLLAR) at++;
  const digits = at;
  let row = 0;
  for (; isDigit(text.charCodeAt(at)); at++) row = row * 10 + text.charCodeAt(at) - 48;
  if (at !== end || at === digits || text.charCodeAt(end) === OPEN) return -1;
  return row > 0 && row <= MOST_ROWS && column <= MOST_COLUMNS ? placeNumber(row - 1, column - 1) : Number.NaN;
}

function areaOf(sheet: string, first: number, last: number): Area {
  const rowA = Math.floor(first / MOST_COLUMNS);
  const rowB = Math.floor(last / MOST_COLUMNS);
  const columnA = first % MOST_COLUMNS;
  const columnB = last % MOST_COLUMNS;
  return {
    sheet,
    row: Math.min(rowA, rowB),
    column: Math.min(columnA, columnB),
    rows: Math.abs(rowA - rowB) + 1,
    columns: Math.abs(columnA - columnB) + 1,
  };
}

/** The end of a quoted text that opens at `at`; a doubled quote opens the next one. */
const textEnd = (formula: string, at: number): number => {
  const end = formula.indexOf('"', at + 1);
  return end < 0 ? formula.length : end + 1;
};

interface Shaped {
  readonly key: string;
  /** The formula's cells and ranges, in order. */
  readonly areas: Area[];
}

/** Undefined: the formula has to be parsed by itself. */
function shaped(formula: string, sheet: string): Shaped | undefined {
  if (formula.length > LONGEST_FORMULA) return undefined;
  const areas: Area[] = [];
  let key = "";
  let kept = 0;
  for (let at = 0; at < formula.length;) {
    const code = formula.charCodeAt(at);
    if (code === QUOTE) at = textEnd(formula, at);
    else if (!isWord(code)) {
      if (!BETWEEN.has(code)) return undefined;
      at++;
    } else {
      let end = wordEnd(formula, at);
      const first = cellKey(formula, at, end);
      if (Number.isNaN(first)) return undefined;
      if (first >= 0) {
        const next = formula.charCodeAt(end) === COLON ? wordEnd(formula, end + 1) : end;
        const last = next === end ? -1 : cellKey(formula, end + 1, next);
        if (Number.isNaN(last)) return undefined;
        areas.push(areaOf(sheet, first, last < 0 ? first : last));
        key += formula.slice(kept, at) + (last < 0 ? CELL : RANGE);
        if (last >= 0) end = next;
        kept = end;
      }
      at = end;
    }
  }
  return { key: key + formula.slice(kept), areas };
}

const CELLS_TEXT = /^\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?$/;

const isSame = (a: Area | undefined, b: Area | undefined): boolean =>
  a?.row === b?.row && a?.column === b?.column && a?.rows === b?.rows && a?.columns === b?.columns;

function shapeOf(formula: string, from: Address, areas: readonly Area[]): Shape {
  const found = referencesOf(formula, from);
  if (found === undefined) return "unknown";
  let next = 0;
  const parts = found.map((reference) => {
    const { text } = reference;
    if (!CELLS_TEXT.test(text) || next >= areas.length || !isSame(plainArea(reference), areas[next])) return text;
    next++;
    return undefined;
  });
  // LET can bind a name that looks like a cell.
  return next === areas.length && parts.every((text) => text === undefined || !CELLS_TEXT.test(text)) ? parts : "each";
}

/** @returns the areas that a formula refers to, one after the other; undefined if one of them isn't known */
export function areasReader(meanings: Meanings): (formula: string, from: Address) => readonly Area[] | undefined {
  const shapes = new Map<string, Shape>();
  const all = (texts: readonly (string | undefined)[], from: Address, areas: readonly Area[]) => {
    const found: Area[] = [];
    let next = 0;
    for (const text of texts) {
      const some = text === undefined ? areas.slice(next, ++next) : meanings.reachOf({ text, from });
      if (some === undefined) return undefined;
      for (const area of some) found.push(area);
    }
    return found;
  };
  return (formula, from) => {
    const own = shaped(formula, from.sheet);
    let shape: Shape = "each";
    if (own !== undefined) {
      const known = shapes.get(own.key);
      shape = known ?? shapeOf(formula, from, own.areas);
      if (known === undefined) shapes.set(own.key, shape);
    }
    if (shape === "unknown") return undefined;
    if (own === undefined || shape === "each") {
      const texts = referencesOf(formula, from)?.map(({ text }) => text);
      return texts && all(texts, from, []);
    }
    return shape.length === own.areas.length ? own.areas : all(shape, from, own.areas);
  };
}
