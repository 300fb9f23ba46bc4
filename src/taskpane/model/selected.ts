/** Reads the selected cell: which calls of ours it holds, or whose spill it belongs to. */
import type { WaitOptions } from "../../workbook/pending";
import type { Address, Area, Block, CellValue, Workbook } from "../../workbook/port";
import { isCellFault } from "../../workbook/port";
import { parseReference } from "../../workbook/reader/reference";
import { mentionsUs } from "../../workbook/reader/calls";
import type { CellToRead } from "../../workbook/reader/prepare";
import { readCells, type ReadCall, type Reading } from "../../workbook/reader/read";
import { isMatrix, isOutcomeFault } from "../../workbook/values";
import type { PanelEngine } from "../engine";

export type Selected =
  | { readonly state: "nothing" }
  /** A cell without a call of ours. */
  | {
      readonly state: "other";
      readonly address: Address;
      readonly formula: string;
      /** The cell that a plain reference shows. */
      readonly refersTo?: Address;
    }
  | {
      readonly state: "ours";
      /** The cell that holds the formula. */
      readonly address: Address;
      /** The selected cell, if it only shows part of a spill. */
      readonly inSpill?: Address;
      /** The selected cell, if its formula is a plain reference to the explained one. */
      readonly shownBy?: Address;
      readonly value: CellValue;
      readonly reading: Reading;
    };

const one = ({ sheet, row, column }: Address): Area => ({ sheet, row, column, rows: 1, columns: 1 });

interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** The size of the spill of a call that is the whole formula; undefined for a single value. */
const spillOf = (formula: string, calls: readonly ReadCall[]): Size | undefined => {
  const outcome = calls.find(({ whole }) => whole)?.outcome;
  if (outcome === undefined || isOutcomeFault(outcome) || /^=\s*@/.test(formula)) return undefined;
  const { value } = outcome;
  return isMatrix(value) ? { rows: value.length, columns: value[0]?.length ?? 0 } : undefined;
};

interface By {
  readonly engine: PanelEngine;
  readonly waiting: WaitOptions;
}

/** Reads a cell; if its formula spills, compares the whole spill with the current result. */
async function readCell(book: Workbook, cell: CellToRead, { engine, waiting }: By): Promise<Reading | undefined> {
  const [reading] = await readCells(book, [cell], engine, waiting);
  if (reading === undefined || isCellFault(cell.value)) return reading;
  const size = spillOf(cell.formula, reading.calls);
  if (size === undefined) return reading;
  const [block] = await book.read([{ ...one(cell.address), ...size }]);
  if (block === undefined) return reading;
  const [again] = await readCells(book, [{ ...cell, spill: block.values }], engine, waiting);
  return again ?? reading;
}

/** The cells that a formula of ours fills. */
export const filledBy = ({ address, reading }: Extract<Selected, { state: "ours" }>): Area => ({
  ...one(address),
  ...spillOf(reading.formula, reading.calls),
});

/** How far above and left of a cell to search for the formula that spills into it. */
const REACH = { up: 400, left: 16 };
const MOST_TRIED = 4;

/** The formula cells of ours in a block, the nearest to its last cell first. */
const candidates = ({ area, formulas, values }: Block): readonly CellToRead[] =>
  formulas
    .flatMap((row, down) =>
      row.flatMap((formula, over): CellToRead[] => {
        if (!mentionsUs(formula)) return [];
        const address = { sheet: area.sheet, row: area.row + down, column: area.column + over };
        return [{ address, formula, value: values[down]?.[over] ?? null }];
      }),
    )
    .reverse();

async function spillSource(book: Workbook, at: Address, { engine, waiting }: By): Promise<CellToRead | undefined> {
  const row = Math.max(0, at.row - REACH.up);
  const column = Math.max(0, at.column - REACH.left);
  const area = { sheet: at.sheet, row, column, rows: at.row - row + 1, columns: at.column - column + 1 };
  const [block] = await book.read([area]);
  const tried = block === undefined ? [] : candidates(block).slice(0, MOST_TRIED);
  const readings = await readCells(book, tried, engine, waiting);
  return tried.find(({ address, formula }, place) => {
    const size = spillOf(formula, readings[place]?.calls ?? []);
    return size !== undefined && at.row < address.row + size.rows && at.column < address.column + size.columns;
  });
}

/** The one cell that a formula like "=B110", "=Inputs!$B$4" or "=PoolLoss" shows. */
async function plainReference(book: Workbook, formula: string, from: Address): Promise<Address | undefined> {
  const text = /^=\s*\+?(.+?)\s*$/.exec(formula)?.[1] ?? "";
  const meaning = parseReference(text);
  if (meaning === undefined) return undefined;
  const isCell = meaning.kind === "cells" && !meaning.spill;
  const [area] = isCell
    ? [{ sheet: from.sheet, ...meaning.area, ...(meaning.sheet !== undefined && { sheet: meaning.sheet }) }]
    : await book.resolve([{ text, from }]);
  if (area?.rows !== 1 || area.columns !== 1) return undefined;
  return { sheet: area.sheet, row: area.row, column: area.column };
}

/** So many references in a row are followed: more are a circle. */
const MOST_HOPS = 8;

/** What the selected cell says; a plain reference is followed to the cell that calculates. */
export async function readSelected(
  book: Workbook,
  address: Address | undefined,
  engine: PanelEngine,
  waiting: WaitOptions = {},
): Promise<Selected> {
  if (address === undefined) return { state: "nothing" };
  const by: By = { engine, waiting };
  const own = await readAddress(book, address, by);
  if (own.state !== "other") return own;
  let there: Selected = own;
  for (let hop = 0; hop < MOST_HOPS && there.state === "other"; hop++) {
    const next = await plainReference(book, there.formula, there.address);
    if (next === undefined) break;
    there = await readAddress(book, next, by);
  }
  if (there.state === "ours") return { ...there, shownBy: address };
  return there === own || there.state !== "other" ? own : { ...own, refersTo: there.address };
}

async function readAddress(book: Workbook, address: Address, by: By): Promise<Selected> {
  const [block] = await book.read([one(address)]);
  const formula = block?.formulas[0]?.[0] ?? "";
  const value = block?.values[0]?.[0] ?? null;
  const source = formula === "" && value !== null ? await spillSource(book, address, by) : { address, formula, value };
  const reading = source === undefined || !mentionsUs(source.formula) ? undefined : await readCell(book, source, by);
  if (source === undefined || reading === undefined || (reading.calls.length === 0 && reading.refusal === undefined))
    return { state: "other", address, formula };
  const inSpill = source.address === address ? {} : { inSpill: address };
  return { state: "ours", address: source.address, ...inSpill, value: source.value, reading };
}
