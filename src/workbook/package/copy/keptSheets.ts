/** Which sheets a copy keeps: those chosen, and those that something kept needs. */
import type { BookFacts, SheetEntry } from "../book/facts";
import { nameKey, type Resolver } from "../formula/resolve";
import type { Package } from "../parts/package";
import { refusal } from "../refusal";
import { sheetNamed } from "../sheet/read";
import type { KeptSheet } from "./choice";
import { NO_FRAME, type SheetFrame } from "./sheetFrame";
import { needsOfSheet, type Need } from "./sheetNeeds";

export interface KeptFrame extends SheetFrame {
  readonly entry: SheetEntry;
}

export interface SheetChoice {
  readonly kept: readonly KeptFrame[];
  readonly reasons: readonly KeptSheet[];
  readonly dropped: readonly string[];
  /** Names that rules and charts of kept sheets use, by key. */
  readonly names: ReadonlySet<string>;
}

export type FrameOf = (sheet: SheetEntry) => Promise<SheetFrame>;

interface Search {
  readonly reasons: Map<SheetEntry, string[]>;
  readonly frames: Map<SheetEntry, SheetFrame>;
  readonly names: Set<string>;
  readonly waiting: SheetEntry[];
}

const KEPT_KINDS: ReadonlySet<string> = new Set(["worksheet", "chartsheet"]);

function add(search: Search, sheet: SheetEntry, reason: string | undefined): void {
  const reasons = search.reasons.get(sheet);
  if (reasons === undefined) {
    search.reasons.set(sheet, reason === undefined ? [] : [reason]);
    search.waiting.push(sheet);
  } else if (reasons.length > 0 && reason !== undefined && !reasons.includes(reason)) reasons.push(reason);
}

/** A need that leans on another workbook, or on nothing that can be followed, keeps no sheet: it is cut off later. */
function follow(search: Search, book: BookFacts, resolve: Resolver, need: Need, from: string): void {
  const { sheets, names, external, unclear } = resolve.of(need.formula, from);
  if (external || unclear) return;
  for (const name of names) search.names.add(name);
  for (const name of sheets) if (name !== from) add(search, sheetNamed(book, name), `${need.by} on ${from} needs it`);
}

/**
 * @param pivots paths of the pivot tables that are kept
 * @param keptNames keys of names that are kept because somebody chose them
 */
export async function keptSheets(
  pack: Package,
  book: BookFacts,
  chosen: readonly string[],
  resolve: Resolver,
  pivots: ReadonlySet<string>,
  keptNames: ReadonlySet<string>,
  frameOf: FrameOf,
): Promise<SheetChoice> {
  const search: Search = { reasons: new Map(), frames: new Map(), names: new Set(), waiting: [] };
  for (const name of chosen) {
    const sheet = sheetNamed(book, name);
    if (!KEPT_KINDS.has(sheet.kind))
      throw refusal(
        "change",
        `The sheet ${JSON.stringify(sheet.name)} holds macros or a dialog: it can't be handed over.`,
      );
    add(search, sheet, undefined);
  }
  if (chosen.length === 0) throw refusal("change", "Choose at least one sheet to hand over.");
  for (const entry of book.names)
    if (keptNames.has(nameKey(entry)))
      for (const name of resolve.ofName(nameKey(entry))?.sheets ?? [])
        add(search, sheetNamed(book, name), `the name ${entry.name} needs it`);
  for (let sheet = search.waiting.pop(); sheet !== undefined; sheet = search.waiting.pop()) {
    const frame = await frameOf(sheet);
    search.frames.set(sheet, frame);
    for (const need of await needsOfSheet(pack, sheet, frame.elements, pivots))
      follow(search, book, resolve, need, sheet.name);
  }
  const kept = book.sheets.filter((sheet) => search.reasons.has(sheet));
  return {
    kept: kept.map((entry) => ({ entry, ...(search.frames.get(entry) ?? NO_FRAME) })),
    reasons: kept.map((sheet) => ({ name: sheet.name, reasons: search.reasons.get(sheet) ?? [] })),
    dropped: book.sheets.filter((sheet) => !search.reasons.has(sheet)).map(({ name }) => name),
    names: search.names,
  };
}
