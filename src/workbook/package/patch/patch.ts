/** Changes named cells of a workbook and nothing else. */
import type { NextSlice } from "../../timeSlices";
import type { BookFacts, SheetEntry } from "../book/facts";
import { removeSignatures, SIGNATURE_SENTENCE } from "../book/signatures";
import { recalculation } from "../book/text";
import { MOST_COLUMNS, MOST_ROWS } from "../../reader/reference";
import { partsEditor, type PartsEditor } from "../parts/edits";
import type { Package } from "../parts/package";
import { RELATIONS, relationsOf, STRICT_RELATIONS } from "../parts/relations";
import { refusal } from "../refusal";
import { collect } from "../sheet/collect";
import { cellContext, sheetNamed, type CellContext } from "../sheet/read";
import { styleAppender, type StyleAppender } from "../styles/append";
import { MAIN, MINIMAL_STYLES, STRICT_MAIN, STYLES_TYPE } from "../create/minimal";
import { pauseOf, type PackageWork } from "../work";
import { rootPrefix } from "../xml/scan";
import { spliced } from "../xml/text";
import type { CellChange, OutsideFormula, PatchOptions, PatchReport } from "./changes";
import { clearedColumns, clearedRules, frozenNames, outsideOfBook, outsideOfSheet } from "./outside";
import { changesByCell, planSheet, replacesFormula, type PatchPlan } from "./plan";
import { addressesOf, sheetSplices } from "./sheetText";
import { asHeading, patchTables } from "./tables";

export interface Patched {
  readonly pack: Package;
  readonly report: PatchReport;
}

interface Session {
  readonly book: BookFacts;
  readonly editor: PartsEditor;
  readonly context: CellContext;
  readonly styles: StyleAppender;
  readonly options: PatchOptions;
  readonly work: PackageWork;
}

interface SheetResult {
  readonly sheet: string;
  readonly plan: PatchPlan;
  readonly outside: readonly OutsideFormula[];
  readonly changesFormulas: boolean;
}

/** The styles part; a workbook without one gets the smallest. */
async function stylesOf(book: BookFacts, editor: PartsEditor): Promise<StyleAppender & { save(): Promise<void> }> {
  const path = book.styles.path ?? `${book.path.slice(0, book.path.lastIndexOf("/") + 1)}styles.xml`;
  const isNew = book.styles.path === undefined;
  const smallest = book.strict ? MINIMAL_STYLES.replace(MAIN, STRICT_MAIN) : MINIMAL_STYLES;
  const appender = styleAppender(path, isNew ? smallest : await editor.text(path));
  return {
    ...appender,
    async save() {
      const text = appender.text();
      if (text === undefined) return;
      editor.set(path, text);
      if (!isNew) return;
      editor.setType(path, STYLES_TYPE);
      await editor.addRelation(book.path, `${book.strict ? STRICT_RELATIONS : RELATIONS}/styles`, path);
    },
  };
}

/** Groups and arrays bring formulas with them that weren't named. */
const changesFormulas = ({ cells, expanded, frozenAreas }: PatchPlan, held: (key: number) => boolean): boolean =>
  expanded.size > 0 ||
  frozenAreas.length > 0 ||
  [...cells].some(([key, { content }]) => replacesFormula(content) && (content?.kind === "formula" || held(key)));

const MENTION = /warmback/i;
const NO_PLAN: PatchPlan = {
  cells: new Map(),
  expanded: new Map(),
  frozenAreas: [],
  expandedGroups: 0,
  frozenCells: [],
};

async function patchSheet(
  sheet: SheetEntry,
  changes: readonly CellChange[],
  { book, editor, context, styles, options, work }: Session,
): Promise<SheetResult> {
  const pause = pauseOf(work);
  const untouched = { sheet: sheet.name, plan: NO_PLAN, outside: [], changesFormulas: false };
  if (changes.length === 0 && options.ours === "ignore") return untouched;
  const source = await editor.text(sheet.path);
  if (changes.length === 0 && !MENTION.test(source)) return untouched;
  const plans = changesByCell(changes);
  const collected = await collect(sheet.path, source, plans.keys(), pause);
  if (plans.size > 0 && collected.data === undefined)
    throw refusal("change", `The sheet ${JSON.stringify(sheet.name)} holds no cells to change.`);
  const plan = planSheet(collected, plans);
  const values = { strings: context.strings, date1904: book.date1904 };
  const prefix = rootPrefix(source);
  const { dynamic } = context;
  const splices = [...(await sheetSplices(collected, plan, { source, prefix, values, styles, pause, dynamic }))];
  if (options.ours === "freeze") splices.push(...clearedRules(source, collected.elements));
  await pause();
  const changed = spliced(source, splices);
  if (changed !== source) editor.set(sheet.path, changed);
  return {
    sheet: sheet.name,
    plan,
    outside: outsideOfSheet(sheet.name, collected.elements),
    changesFormulas: changesFormulas(plan, (key) => collected.cells.get(key)?.formula !== undefined),
  };
}

/** The order in which cells were calculated last: a list of the cells with formulas, so it goes when those change. */
async function removeCalculationChain(pack: Package, book: BookFacts, editor: PartsEditor): Promise<void> {
  const chains = (await relationsOf(pack, book.path)).filter(({ kind }) => kind === "calcChain");
  for (const { target } of chains) editor.remove(target);
  await editor.removeRelations(book.path, ({ kind }) => kind === "calcChain");
}

function checkPlace({ name, kind }: SheetEntry, { row, column }: CellChange): void {
  if (kind !== "worksheet") throw refusal("change", `The sheet ${JSON.stringify(name)} holds no cells to change.`);
  const inside = (number: number, most: number): boolean => Number.isInteger(number) && number >= 0 && number < most;
  if (!inside(row, MOST_ROWS) || !inside(column, MOST_COLUMNS))
    throw refusal(
      "change",
      `Row ${row + 1}, column ${column + 1} lies outside of a sheet, which has ${MOST_ROWS} rows and ${MOST_COLUMNS} columns.`,
    );
}

/** Changes under their sheets; the sheet's name as the workbook spells it. */
async function bySheet(
  book: BookFacts,
  changes: readonly CellChange[],
  pause: NextSlice,
): Promise<Map<SheetEntry, CellChange[]>> {
  const found = new Map<SheetEntry, CellChange[]>();
  const entries = new Map<string, SheetEntry>();
  for (const change of changes) {
    const sheet = entries.get(change.sheet) ?? sheetNamed(book, change.sheet);
    entries.set(change.sheet, sheet);
    checkPlace(sheet, change);
    const own = asHeading(book, change.sheet === sheet.name ? change : { ...change, sheet: sheet.name });
    const list = found.get(sheet);
    if (list === undefined) found.set(sheet, [own]);
    else list.push(own);
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  return found;
}

/** Our calls in names and tables, frozen where that is asked. */
async function patchOutside({ book, editor, options }: Session): Promise<void> {
  if (options.ours !== "freeze") return;
  await editor.splice(book.path, frozenNames(await editor.text(book.path), options.nameValues ?? new Map()));
  await clearedColumns(book, editor);
}

/**
 * @param changes each cell once
 * @returns a new package; the one given stays as it was
 * @throws a refusal where the file can't take a change: then nothing is changed
 */
export async function patchCells(
  pack: Package,
  book: BookFacts,
  changes: readonly CellChange[],
  options: PatchOptions = {},
  work: PackageWork = {},
): Promise<Patched> {
  const editor = partsEditor(pack);
  const styles = await stylesOf(book, editor);
  const session = { book, editor, styles, options, work, context: await cellContext(pack, book, work) };
  const sheets = await bySheet(book, changes, pauseOf(work));
  await patchTables(book, [...sheets.values()].flat(), editor);
  const results: SheetResult[] = [];
  for (const sheet of book.sheets) {
    if (sheet.kind !== "worksheet") continue;
    work.onProgress?.(results.length, book.sheets.length);
    results.push(await patchSheet(sheet, sheets.get(sheet) ?? [], session));
  }
  await patchOutside(session);
  await styles.save();
  if (results.some((one) => one.changesFormulas)) await removeCalculationChain(pack, book, editor);
  const recalculates = options.recalculate ?? changes.some(({ content }) => content !== undefined);
  if (recalculates) await editor.splice(book.path, [recalculation(await editor.text(book.path))]);
  const signed = changes.length > 0 && (await removeSignatures(pack, editor));
  work.onProgress?.(book.sheets.length, book.sheets.length);
  return {
    pack: await editor.done(),
    report: reportOf(results, options.ours === "ignore" ? [] : outsideOfBook(book), signed),
  };
}

function reportOf(results: readonly SheetResult[], outside: readonly OutsideFormula[], signed: boolean): PatchReport {
  return {
    frozenAreas: results.flatMap(({ sheet, plan }) => plan.frozenAreas.map((area) => ({ sheet, ...area }))),
    expandedGroups: results.reduce((sum, { plan }) => sum + plan.expandedGroups, 0),
    frozenCells: results.flatMap(({ sheet, plan }) => addressesOf(plan.frozenCells, sheet)),
    outside: [...outside, ...results.flatMap((one) => one.outside)],
    sentences: signed ? [SIGNATURE_SENTENCE] : [],
  };
}
