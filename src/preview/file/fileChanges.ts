/** What the page changed in an opened file: the cells that saving writes, and nothing else. */
import { callsUs, type CellChange, type CellContent } from "../../workbook/package";
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import type { BookData, CellData, PlainValue, SheetData } from "./bookData";
import { FILE_TOLERANCE, sameAsFile, type ShownValue } from "./differences";
import { cellKey, followers } from "./followers";
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

/** A cell as it was opened and as it is now. */
interface Pair extends Address {
  readonly before: CellData | undefined;
  readonly now: CellData | undefined;
}

const byPlace = ({ cells }: SheetData): Map<string, CellData> =>
  new Map(cells.map((cell) => [`${cell.row},${cell.column}`, cell] as const));

function pairsOf(before: SheetData, now: SheetData): readonly Pair[] {
  const [old, current] = [byPlace(before), byPlace(now)];
  const places = new Set([...old.keys(), ...current.keys()]);
  return [...places].map((place) => {
    const [a, b] = [old.get(place), current.get(place)];
    const { row, column } = a ?? b ?? { row: 0, column: 0 };
    return { sheet: before.name, row, column, before: a, now: b };
  });
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

/** @param now the workbook of the page */
export async function fileChanges(
  { data, known }: FileBook,
  now: BookData,
  texts: FormulaTexts,
  pause: () => Promise<void> | undefined = () => undefined,
): Promise<FileChanges> {
  const opened = new Map(data.sheets.map((sheet) => [sheet.name, sheet] as const));
  const pairs: Pair[] = [];
  for (const sheet of now.sheets) {
    const before = opened.get(sheet.name);
    if (before !== undefined) for (const pair of pairsOf(before, sheet)) pairs.push(pair);
    await pause();
  }
  const differs = ({ before, now: cell }: Pair, tolerance: number): boolean =>
    before?.formula !== undefined && cell !== undefined && !sameAsFile(shownBy(before), shownBy(cell), tolerance);
  const typed = pairs.filter(isTyped);
  const ours = pairs.filter(
    (pair) => callsUs(pair.before?.formula ?? "") && !isTyped(pair) && differs(pair, FILE_TOLERANCE),
  );
  const roots = [...typed, ...ours];
  const added = now.sheets.filter(({ name }) => !opened.has(name));
  const graph = roots.length === 0 ? undefined : await followers(now, known, pause);
  const follows = graph?.of(roots) ?? new Set<string>();
  const cells: CellChange[] = [];
  const outdated: string[] = [];
  const edited = new Set(typed.map(cellKey));
  for (const pair of pairs) {
    await pause();
    const { sheet, row, column, before } = pair;
    const format = formatChange(pair);
    if (edited.has(cellKey(pair))) cells.push({ sheet, row, column, content: typedContent(pair, texts), ...format });
    else {
      if ("format" in format) cells.push({ sheet, row, column, ...format });
      if (!follows.has(cellKey(pair))) continue;
      if (before?.kept !== undefined) outdated.push(addressText(pair));
      else if (differs(pair, 0)) cells.push(...resultChanges(pair, texts));
    }
  }
  return { cells: joinedChanges(cells), added, outdated };
}

/** Each cell once: a new format joins what else changes there. */
function joinedChanges(changes: readonly CellChange[]): readonly CellChange[] {
  const found = new Map<string, CellChange>();
  for (const change of changes) found.set(cellKey(change), { ...found.get(cellKey(change)), ...change });
  return [...found.values()];
}
