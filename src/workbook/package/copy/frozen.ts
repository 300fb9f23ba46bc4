/** Which formulas of the kept sheets can't stay live in the copy, and which cells are emptied. */
import type { Area } from "../../port";
import type { BookFacts } from "../book/facts";
import type { Resolver } from "../formula/resolve";
import { cellContext, readStoredSheet } from "../sheet/read";
import { contains } from "../sheet/formulas";
import type { FileCell } from "../sheet/facts";
import type { Package } from "../parts/package";
import type { CellChange } from "../patch/changes";
import { pauseOf, type PackageWork } from "../work";
import type { FrozenFormula } from "./choice";
import type { KeptFrame } from "./keptSheets";

/** Why a formula can't stay; undefined where it can. */
export type Verdict = (formula: string, sheet: string) => { reason: string } | { names: ReadonlySet<string> };

export interface VerdictFacts {
  readonly book: BookFacts;
  readonly resolve: Resolver;
  /** In lower case. */
  readonly droppedSheets: ReadonlySet<string>;
  /** Names that the copy can't keep, by key. */
  readonly lostNames: ReadonlySet<string>;
  /** Emptied cells of kept sheets. */
  readonly emptied: readonly Area[];
}

const overlap = (a: Omit<Area, "sheet">, b: Omit<Area, "sheet">): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

/** A text in the formula that is an address on a sheet which goes, as links have them: "#cfg!A1". */
function spelled(formula: string, dropped: ReadonlySet<string>): string | undefined {
  const texts = (formula.match(/"(?:[^"]|"")*"/g) ?? []).filter((text) => text.includes("!"));
  if (texts.length === 0) return undefined;
  return [...dropped].find((sheet) =>
    texts.some((text) => {
      const at = text.toLowerCase().search(new RegExp(`(?<![\\p{L}\\p{N}_.])${escapedPattern(sheet)}'?!`, "u"));
      return at >= 0;
    }),
  );
}

const escapedPattern = (text: string): string => text.replaceAll("'", "''").replace(/[\\^$.*+?()[\]{}|/]/g, "\\$&");

const NO_NAMES: ReadonlySet<string> = new Set();

export function verdicts({ book, resolve, droppedSheets, lostNames, emptied }: VerdictFacts): Verdict {
  const titles = new Map(book.sheets.map(({ name }) => [name.toLowerCase(), name]));
  const drops = droppedSheets.size + emptied.length > 0;
  const cells = (uses: ReturnType<Resolver["of"]>["uses"], sheet: string): boolean =>
    uses.areas.some(({ sheet: own = sheet, area }) =>
      emptied.some((one) => one.sheet.toLowerCase() === own.toLowerCase() && overlap(one, area)),
    );
  const ofNames = (names: ReadonlySet<string>, sheet: string): boolean =>
    emptied.length > 0 &&
    [...names].some((key) => cells(resolve.ofName(key)?.uses ?? resolve.of("0", sheet).uses, sheet));
  const tables = new Map(book.tables.map(({ name, area }) => [name.toLowerCase(), area]));
  const inTables = (names: readonly string[]): boolean =>
    names.some((name) => {
      const area = tables.get(name.toLowerCase());
      return area !== undefined && emptied.some((one) => one.sheet === area.sheet && overlap(one, area));
    });
  return (formula, sheet) => {
    // Nothing is dropped, and the formula leads out of its sheet neither by a sheet, a book, a table nor a name.
    if (!drops && !/[![]/.test(formula) && !resolve.mayName(formula)) return { names: NO_NAMES };
    const { sheets, names, external, unclear, uses } = resolve.of(formula, sheet);
    const gone = [...sheets].find((name) => droppedSheets.has(name.toLowerCase()));
    if (gone !== undefined) return { reason: `the sheet ${gone}` };
    if (external) return { reason: "another workbook" };
    if ([...names].some((key) => lostNames.has(key))) return { reason: "a name that isn't in the copy" };
    const title = formula.includes('"') ? spelled(formula, droppedSheets) : undefined;
    if (title !== undefined) return { reason: `the sheet ${titles.get(title) ?? title}` };
    if (unclear && drops) return { reason: "references that can't be followed" };
    const all = uses.names.map(({ name }) => name).concat(uses.tables);
    if (cells(uses, sheet) || ofNames(names, sheet) || inTables(all))
      return { reason: "hidden cells that were dropped" };
    return { names };
  };
}

export interface SheetVerdict {
  readonly changes: readonly CellChange[];
  readonly frozen: readonly FrozenFormula[];
  readonly usedNames: ReadonlySet<string>;
}

type Place = Pick<FileCell, "row" | "column">;

/** Headings stay even in a column that is emptied: the table needs them. */
function isHeading(book: BookFacts, sheet: string, cell: Place): boolean {
  return book.tables.some(
    ({ area, headerRows }) => area.sheet === sheet && contains(area, cell) && cell.row < area.row + headerRows,
  );
}

/** @param emptied areas of this sheet */
export async function judgeSheet(
  pack: Package,
  book: BookFacts,
  { entry: { name: sheet }, ...frame }: KeptFrame,
  emptied: readonly Area[],
  verdict: Verdict,
  work: PackageWork,
): Promise<SheetVerdict> {
  const changes: CellChange[] = [];
  const frozen: FrozenFormula[] = [];
  const usedNames = new Set<string>();
  const isEmptied = (cell: Place): boolean =>
    emptied.some((area) => contains(area, cell)) && !isHeading(book, sheet, cell);
  if (emptied.length > 0) {
    const context = await cellContext(pack, book, work);
    const onCell = (cell: FileCell): void => {
      const { row, column } = cell;
      if (isEmptied(cell)) changes.push({ sheet, row, column, content: { kind: "value", value: null } });
    };
    await readStoredSheet(pack, book, sheet, context, onCell, work);
  }
  const pause = pauseOf(work);
  for (const cell of frame.formulas) {
    const wait = pause();
    if (wait !== undefined) await wait;
    if (isEmptied(cell)) continue;
    const { row, column, text: formula } = cell;
    const found = verdict(formula, sheet);
    if ("names" in found) for (const name of found.names) usedNames.add(name);
    else {
      changes.push({ sheet, row, column, content: { kind: "frozen" } });
      frozen.push({ sheet, row, column, formula, reason: found.reason });
    }
  }
  return { changes, frozen, usedNames };
}
