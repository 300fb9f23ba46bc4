/** The new text of a sheet: its old text with the touched cells replaced. */
import type { CellValue } from "../../port";
import { cellsText } from "../../reader/reference";
import type { NextSlice } from "../../timeSlices";
import { brokenFile } from "../refusal";
import { cellText, formulaText, needsQuote, otherAttributes, type CellParts } from "../sheet/cellText";
import { keyOf, placeOfKey, type Collected } from "../sheet/collect";
import type { ScannedCell } from "../sheet/scan";
import { storedValue, type ValueContext } from "../sheet/value";
import type { StyleAppender } from "../styles/append";
import { numberOf, withAttributes } from "../xml/node";
import type { Splice } from "../xml/text";
import { newCellSplices, type NewCell, type NewCellContext } from "./newCells";
import { staysAsIs, type CellPlan, type Content, type PatchPlan } from "./plan";

export interface SheetTextContext extends NewCellContext {
  readonly values: ValueContext;
  readonly styles: StyleAppender;
  readonly pause: NextSlice;
  /** The cell metadata that mark dynamic arrays: a new spilling formula takes the first. */
  readonly dynamic: ReadonlySet<number>;
}

/** Where a cell is and what the file holds there. */
interface Place {
  readonly row: number;
  readonly column: number;
  readonly style: number;
  readonly old?: ScannedCell | undefined;
  /** The formula that a written-out group gives the cell. */
  readonly expanded?: string | undefined;
}

const spillArea = ({ row, column }: Place, spill: readonly (readonly CellValue[])[]): string =>
  cellsText({ row, column, rows: spill.length, columns: spill[0]?.length ?? 1 });

function styleFor(place: Place, plan: CellPlan, value: CellValue, context: SheetTextContext): number {
  const { content, format } = plan;
  const isText = content?.kind === "value" || content?.kind === "frozen";
  const quote = isText ? needsQuote(value) : content?.kind === "formula" ? false : undefined;
  return context.styles.like(place.style, { format, quote });
}

/** The whole formula element that a cell keeps. */
function keptFormula({ old, expanded }: Place, { source, prefix }: SheetTextContext): string | undefined {
  if (expanded !== undefined) return formulaText(expanded, prefix);
  return old?.formula === undefined ? undefined : source.slice(old.formula.start, old.formula.end);
}

function newValue(place: Place, content: Content | undefined, context: SheetTextContext): CellValue {
  const given = content !== undefined && "value" in content ? content.value : undefined;
  if (given !== undefined) return given;
  return place.old === undefined ? null : storedValue(place.old, context.values);
}

interface Kept {
  readonly formula?: string | undefined;
  readonly cm?: number | undefined;
  readonly vm?: number | undefined;
}

function formulaOf(place: Place, content: Content | undefined, context: SheetTextContext): Kept {
  const cm = numberOf(place.old?.attributes["cm"]);
  if (content === undefined)
    return { formula: keptFormula(place, context), cm, vm: numberOf(place.old?.attributes["vm"]) };
  // Value metadata tell of the old value.
  if (content.kind === "result") return { formula: keptFormula(place, context), cm };
  if (content.kind !== "formula") return {};
  const { formula, spill } = content;
  const area = spill === undefined ? undefined : spillArea(place, spill);
  const dynamic = area === undefined ? undefined : [...context.dynamic][0];
  return { formula: formulaText(formula, context.prefix, area), cm: dynamic };
}

/** A cell that holds nothing, and that has no look of its own, needs no element. */
const isNothing = ({ value, formula, style, others, attributes }: CellParts): boolean =>
  value === null && formula === undefined && style === 0 && (others ?? "") === "" && (attributes ?? "") === "";

function writtenCell(place: Place, plan: CellPlan, context: SheetTextContext): string {
  const { old, row, column } = place;
  const value = newValue(place, plan.content, context);
  const parts: CellParts = {
    row,
    column,
    attributes: otherAttributes(old?.attributes ?? {}),
    style: styleFor(place, plan, value, context),
    ...formulaOf(place, plan.content, context),
    value,
    others: old?.others.map(({ start, end }) => context.source.slice(start, end)).join("") ?? "",
  };
  return isNothing(parts) ? "" : cellText(parts, context.prefix);
}

/** Only looks change: the rest of the cell stays byte for byte. */
function restyled(old: ScannedCell, plan: CellPlan, context: SheetTextContext): Splice[] {
  const base = numberOf(old.attributes["s"]) ?? 0;
  const style = context.styles.like(base, { format: plan.format });
  if (style === base) return [];
  const openEnd = context.source.indexOf(">", old.start) + 1;
  return [withAttributes(context.source, { start: old.start, openEnd }, { s: String(style) })];
}

/** A cell without a formula is frozen as it is: its text may have looks within. */
const isFrozenAlready = (content: Content, old: ScannedCell): boolean =>
  content.kind === "frozen" && content.value === undefined && staysAsIs(old);

async function oldCells(collected: Collected, plan: PatchPlan, context: SheetTextContext): Promise<Splice[]> {
  const touched = new Map(collected.cells);
  for (const { first, others } of collected.arrays)
    for (const cell of [first, ...others]) touched.set(keyOf(cell.row, cell.column), cell);
  for (const { members } of collected.groups.values())
    for (const cell of members)
      if (plan.cells.has(keyOf(cell.row, cell.column))) touched.set(keyOf(cell.row, cell.column), cell);
  const splices: Splice[] = [];
  for (const [key, old] of touched) {
    const own = plan.cells.get(key);
    if (own === undefined) continue;
    const wait = context.pause();
    if (wait !== undefined) await wait;
    const expanded = plan.expanded.get(key)?.formula;
    const { row, column, start, end } = old;
    const place = { row, column, style: numberOf(old.attributes["s"]) ?? 0, old, expanded };
    if (own.content === undefined || isFrozenAlready(own.content, old)) {
      splices.push(...restyled(old, own, context), ...writtenOut(old, expanded, context));
    } else splices.push({ from: start, to: end, text: writtenCell(place, own, context) });
  }
  return splices;
}

/** The formula of a group in a cell that is otherwise left alone. */
function writtenOut({ formula }: ScannedCell, text: string | undefined, { prefix }: SheetTextContext): Splice[] {
  if (formula === undefined || text === undefined) return [];
  const always = formula.attributes["ca"] === undefined ? "" : ` ca="${formula.attributes["ca"]}"`;
  const written = formulaText(text, prefix).replace(`<${prefix}f>`, `<${prefix}f${always}>`);
  return [{ from: formula.start, to: formula.end, text: written }];
}

function expandedCells(plan: PatchPlan, context: SheetTextContext): Splice[] {
  return [...plan.expanded].flatMap(([key, { cell, formula }]) =>
    plan.cells.has(key) ? [] : writtenOut(cell, formula, context),
  );
}

async function newCells(collected: Collected, plan: PatchPlan, context: SheetTextContext): Promise<NewCell[]> {
  const cells: NewCell[] = [];
  for (const place of collected.places) {
    const key = keyOf(place.row, place.column);
    const own = plan.cells.get(key);
    if (collected.cells.has(key)) throw brokenFile("the rows or cells of a sheet are out of order");
    const text = own === undefined ? "" : writtenCell(place, own, context);
    if (text !== "") cells.push({ place, text });
    const wait = context.pause();
    if (wait !== undefined) await wait;
  }
  return cells;
}

/** The replaced pieces of a sheet's text. */
export async function sheetSplices(
  collected: Collected,
  plan: PatchPlan,
  context: SheetTextContext,
): Promise<readonly Splice[]> {
  const cells = await newCells(collected, plan, context);
  return [
    ...(await oldCells(collected, plan, context)),
    ...expandedCells(plan, context),
    ...newCellSplices(cells, collected, context),
  ];
}

export const addressesOf = (keys: readonly number[], sheet: string): { sheet: string; row: number; column: number }[] =>
  keys.map((key) => ({ sheet, ...placeOfKey(key) }));
