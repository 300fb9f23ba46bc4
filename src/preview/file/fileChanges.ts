/** What the page changed in an opened file: the cells that saving writes, and nothing else. */
import { callsUs, type CellChange, type CellContent } from "../../workbook/package";
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { placeNumber } from "../../workbook/columns";
import type { BookData, CellData, PlainValue, SheetData } from "./bookData";
import { cellMap } from "./cellMap";
import { FILE_TOLERANCE, sameAsFile, type ShownValue } from "./differences";
import { followers } from "./followers";
import type { FormulaTexts } from "./formulaTexts";
import { fileSpill, fileValue } from "./newSheets";
import type { FileBook } from "./openedBook";

export interface FileChanges {
  readonly cells: readonly CellChange[];
  /** Sheets that the page added. */
  readonly added: readonly SheetData[];
  /** Addresses of cells that keep the file's result although one of their inputs changed. */
  readonly outdated: readonly string[];
}

type Pause = () => Promise<void> | undefined;

/** A cell as it was opened and as it is now. */
interface Pair extends Address {
  readonly before: CellData | undefined;
  readonly now: CellData | undefined;
}

/** The cells that may have to be written: those that are no longer as they were, and those that keep their result. */
async function addPairs(before: SheetData, now: SheetData, pairs: Pair[], pause: Pause): Promise<void> {
  const current = new Map<number, CellData>();
  const sheet = before.name;
  for (const cell of now.cells) {
    const wait = pause();
    if (wait !== undefined) await wait;
    current.set(placeNumber(cell.row, cell.column), cell);
  }
  for (const cell of before.cells) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const { row, column } = cell;
    const place = placeNumber(row, column);
    const same = current.get(place);
    current.delete(place);
    if (same !== cell || cell.kept !== undefined) pairs.push({ sheet, row, column, before: cell, now: same });
  }
  for (const cell of current.values()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    pairs.push({ sheet, row: cell.row, column: cell.column, before: undefined, now: cell });
  }
}

/** Spilled cells and cells that keep their result hold nothing that was typed. */
const typedValue = (cell: CellData | undefined): PlainValue | null =>
  cell?.formula === undefined ? (cell?.value ?? null) : null;

function isTyped({ before, now }: Pair): boolean {
  if ((before?.formula ?? "") !== (now?.formula ?? "")) return true;
  return now?.formula === undefined && (typedValue(before) ?? "") !== (typedValue(now) ?? "");
}

const shownBy = (cell: CellData | undefined): ShownValue => cell?.spill ?? cell?.value ?? null;

function typedContent({ now }: Pair, texts: FormulaTexts): CellContent {
  if (now?.formula === undefined) return { kind: "value", value: fileValue(now?.value ?? null) };
  const { formula, source = formula, value, spill } = now;
  return {
    kind: "formula",
    formula: texts.toFile(source),
    value: fileValue(value),
    ...(spill !== undefined && { spill: fileSpill(spill) }),
  };
}

/** New results where the formula stays; an array that fills other cells than before is written anew. */
function resultChanges(pair: Pair, texts: FormulaTexts): readonly CellChange[] {
  const { sheet, row, column, before, now } = pair;
  if (before === undefined || now === undefined) return [];
  const value = fileValue(now.value ?? now.spill?.[0]?.[0] ?? null);
  const result = (down: number, over: number, cell: PlainValue | null): CellChange => ({
    sheet,
    row: row + down,
    column: column + over,
    content: { kind: "result", value: fileValue(cell) },
  });
  // The file holds one cell of it, and the formula isn't an array there.
  if (before.spill === undefined) return [{ sheet, row, column, content: { kind: "result", value } }];
  const spill = now.spill ?? [[now.value]];
  const sameSize = spill.length === before.spill.length && spill[0]?.length === before.spill[0]?.length;
  if (sameSize) return spill.flatMap((line, down) => line.map((cell, over) => result(down, over, cell)));
  const formula = texts.toFile(before.source ?? before.formula ?? "");
  return [{ sheet, row, column, content: { kind: "formula", formula, value, spill: fileSpill(spill) } }];
}

const formatChange = ({ before, now }: Pair): { readonly format?: string } => {
  const [a, b] = [before?.format ?? "General", now?.format ?? "General"];
  return now === undefined || a === b ? {} : { format: b };
};

/** Each cell once: a new format joins what else changes there. */
function joinedChanges() {
  const changes: CellChange[] = [];
  const places = cellMap<number>();
  return {
    changes,
    add(change: CellChange): void {
      const known = places.get(change);
      if (known === undefined) places.set(change, changes.push(change) - 1);
      else changes[known] = { ...changes[known], ...change };
    },
  };
}

const differs = ({ before, now }: Pair, tolerance: number): boolean =>
  before?.formula !== undefined && now !== undefined && !sameAsFile(shownBy(before), shownBy(now), tolerance);

/** What the page works out otherwise than the file showed it: what was typed, and functions of ours. */
async function changedPairs(pairs: readonly Pair[], pause: Pause) {
  const [typed, ours]: [Pair[], Pair[]] = [[], []];
  for (const pair of pairs) {
    const wait = pause();
    if (wait !== undefined) await wait;
    if (isTyped(pair)) typed.push(pair);
    else if (differs(pair, FILE_TOLERANCE) && callsUs(pair.before?.formula ?? "")) ours.push(pair);
  }
  return { typed: new Set(typed), roots: [...typed, ...ours] };
}

/** @param now the workbook of the page */
export async function fileChanges(
  { data, known }: FileBook,
  now: BookData,
  texts: FormulaTexts,
  pause: Pause = () => undefined,
): Promise<FileChanges> {
  const opened = new Map(data.sheets.map((sheet) => [sheet.name, sheet] as const));
  const pairs: Pair[] = [];
  for (const sheet of now.sheets) {
    const before = opened.get(sheet.name);
    if (before !== undefined) await addPairs(before, sheet, pairs, pause);
  }
  const { typed, roots } = await changedPairs(pairs, pause);
  const added = now.sheets.filter(({ name }) => !opened.has(name));
  const graph = roots.length === 0 ? undefined : await followers(now, known, pause);
  const follows = await graph?.of(roots);
  const { changes: cells, add } = joinedChanges();
  const outdated: string[] = [];
  for (const pair of pairs) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const { sheet, row, column, before } = pair;
    const format = formatChange(pair);
    if (typed.has(pair)) add({ sheet, row, column, content: typedContent(pair, texts), ...format });
    else {
      if ("format" in format) add({ sheet, row, column, ...format });
      if (follows?.has(pair) !== true) continue;
      if (before?.kept !== undefined) outdated.push(addressText(pair));
      else if (differs(pair, 0)) resultChanges(pair, texts).forEach(add);
    }
  }
  return { cells, added, outdated };
}
