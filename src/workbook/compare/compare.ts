/** Compares sheets: inputs that differ, results that differ and by how much, cautions raised since or no longer raised. Pure. */
import type { CellValue } from "../port";
import { sameCell } from "../values";
import { keyedCells, type ComparedCaution, type ComparedCell, type ComparedSheet } from "./keyedCells";

export interface LineDifference {
  readonly label: string;
  readonly before: ComparedCell;
  readonly after: ComparedCell;
  /** Of two numbers: after less before. */
  readonly by?: number;
  /** The same as a share of the value before. */
  readonly share?: number;
  /** The formulas differ too. */
  readonly formulaDiffers: boolean;
}

export interface CautionChange {
  readonly label: string;
  readonly cell: ComparedCell;
  readonly caution: ComparedCaution;
}

export interface Comparison {
  readonly inputs: readonly LineDifference[];
  readonly results: readonly LineDifference[];
  /** Formulas that differ and give the same. */
  readonly formulas: readonly LineDifference[];
  readonly raised: readonly CautionChange[];
  readonly cleared: readonly CautionChange[];
  /** Cells without a counterpart. */
  readonly onlyBefore: readonly ComparedCell[];
  readonly onlyAfter: readonly ComparedCell[];
  /** Sheets of whole workbooks without a counterpart. */
  readonly sheetsBefore: readonly string[];
  readonly sheetsAfter: readonly string[];
  /** Cells that have a counterpart. */
  readonly compared: number;
}

const NOTHING: Comparison = {
  inputs: [],
  results: [],
  formulas: [],
  raised: [],
  cleared: [],
  onlyBefore: [],
  onlyAfter: [],
  sheetsBefore: [],
  sheetsAfter: [],
  compared: 0,
};

const amounts = (before: CellValue, after: CellValue): Pick<LineDifference, "by" | "share"> => {
  if (typeof before !== "number" || typeof after !== "number") return {};
  const by = after - before;
  return before === 0 ? { by } : { by, share: by / Math.abs(before) };
};

/** Formulas without spaces and case, so that typing doesn't count. */
const folded = (formula: string): string => formula.replace(/\s+/g, "").toUpperCase();

const isComputed = ({ formula, spilled }: ComparedCell): boolean => formula !== "" || spilled;

/** The same caution about other numbers is neither new nor gone. */
const cautionKey = ({ code, text }: ComparedCaution): string => `${code}|${text.replace(/[-\d.,]+/g, "#")}`;

/** The cautions of `cell` that `other` hasn't. */
function missing(cell: ComparedCell, other: ComparedCell | undefined): readonly CautionChange[] {
  const there = new Set((other?.cautions ?? []).map(cautionKey));
  return cell.cautions
    .filter((caution) => !there.has(cautionKey(caution)))
    .map((caution) => ({ label: cell.label, cell, caution }));
}

interface Draft {
  readonly inputs: LineDifference[];
  readonly results: LineDifference[];
  readonly formulas: LineDifference[];
}

function compareCell(before: ComparedCell, after: ComparedCell, draft: Draft): void {
  const formulaDiffers = folded(before.formula) !== folded(after.formula);
  const same = sameCell(before.value, after.value);
  if (same && !formulaDiffers) return;
  const difference = { label: before.label, before, after, ...amounts(before.value, after.value), formulaDiffers };
  if (same) draft.formulas.push(difference);
  else if (isComputed(before) || isComputed(after)) draft.results.push(difference);
  else draft.inputs.push(difference);
}

/** Two sheets, whatever their names. */
export function compareSheets(before: ComparedSheet, after: ComparedSheet): Comparison {
  const [left, right] = [keyedCells(before), keyedCells(after)];
  const draft: Draft = { inputs: [], results: [], formulas: [] };
  const [raised, cleared]: [CautionChange[], CautionChange[]] = [[], []];
  const onlyBefore: ComparedCell[] = [];
  let compared = 0;
  for (const [key, cell] of left) {
    const other = right.get(key);
    cleared.push(...missing(cell, other));
    if (other === undefined) onlyBefore.push(cell);
    else {
      compared++;
      compareCell(cell, other, draft);
    }
  }
  for (const [key, cell] of right) raised.push(...missing(cell, left.get(key)));
  const onlyAfter = [...right].filter(([key]) => !left.has(key)).map(([, cell]) => cell);
  return { ...NOTHING, ...draft, raised, cleared, onlyBefore, onlyAfter, compared };
}

const joined = (a: Comparison, b: Comparison): Comparison => ({
  ...a,
  inputs: [...a.inputs, ...b.inputs],
  results: [...a.results, ...b.results],
  formulas: [...a.formulas, ...b.formulas],
  raised: [...a.raised, ...b.raised],
  cleared: [...a.cleared, ...b.cleared],
  onlyBefore: [...a.onlyBefore, ...b.onlyBefore],
  onlyAfter: [...a.onlyAfter, ...b.onlyAfter],
  compared: a.compared + b.compared,
});

/**
 * Whole workbooks, sheet by sheet of the same name. An inquiry holds only some of the sheets: those that are missing are
 * named. One sheet on each side is compared whatever it is called.
 */
export function compareWorkbooks(before: readonly ComparedSheet[], after: readonly ComparedSheet[]): Comparison {
  const [only, other] = [before[0], after[0]];
  if (before.length === 1 && after.length === 1 && only !== undefined && other !== undefined)
    return compareSheets(only, other);
  const named = new Map(after.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  const pairs = before.flatMap((sheet) => {
    const match = named.get(sheet.name.toLowerCase());
    return match === undefined ? [] : [[sheet, match] as const];
  });
  const all = pairs.map(([left, right]) => compareSheets(left, right)).reduce(joined, NOTHING);
  const paired = new Set(pairs.map(([left]) => left.name.toLowerCase()));
  const alone = (sheets: readonly ComparedSheet[]): readonly string[] =>
    sheets.map(({ name }) => name).filter((name) => !paired.has(name.toLowerCase()));
  return { ...all, sheetsBefore: alone(before), sheetsAfter: alone(after) };
}
