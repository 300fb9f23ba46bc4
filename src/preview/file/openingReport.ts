/** What there is to say of a file that was opened: what can't be read, and what differs from what it last showed. */
import type { BookFacts } from "../../workbook/package";
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { plainOf } from "./openedSheet";
import type { SheetBook } from "../host/sheetBook";
import type { BookData, CellData } from "./bookData";
import { sameAsFile, type ShownValue } from "./differences";
import { followers } from "./followers";
import type { FileBook } from "./openedBook";
import { isVolatile } from "./readable/volatile";

export interface Difference extends Address {
  readonly address: string;
  readonly stored: ShownValue;
  readonly now: ShownValue;
}

export interface UnreadKind {
  readonly why: string;
  readonly cells: readonly Address[];
}

export interface OpeningReport {
  readonly unread: readonly UnreadKind[];
  readonly differing: readonly Difference[];
  /** Cells that are another value at every calculation, and what follows from them: their differences say nothing. */
  readonly changing: readonly Difference[];
  /** How Excel calculates this workbook, where that isn't the usual way; whole sentences. */
  readonly settings: readonly string[];
}

export function unreadKinds({ sheets }: BookData): readonly UnreadKind[] {
  const kinds = new Map<string, Address[]>();
  for (const { name: sheet, cells } of sheets)
    for (const { row, column, kept } of cells)
      if (kept !== undefined) {
        const of = kinds.get(kept.why);
        if (of === undefined) kinds.set(kept.why, [{ sheet, row, column }]);
        else of.push({ sheet, row, column });
      }
  return [...kinds].map(([why, cells]) => ({ why, cells }));
}

export function settingSentences({ date1904, calculation }: BookFacts): readonly string[] {
  const { mode, iterate, iterations, largestChange, fullPrecision } = calculation;
  return [
    ...(date1904 ? ["Its dates count from 1904: functions of dates keep the file's results."] : []),
    ...(fullPrecision ? [] : ["Excel calculates it with precision as displayed, this page with all digits."]),
    ...(iterate
      ? [
          `Excel calculates its circles up to ${iterations} times, until they change by less than ${largestChange}: they keep the file's results.`,
        ]
      : []),
    ...(mode === "manual"
      ? ["Excel calculates it only when asked to (manual mode): the file's results may be older than its inputs."]
      : []),
    ...(mode === "exceptTables" ? ["Excel calculates its what-if tables only when asked to."] : []),
  ];
}

/** @param shown what a formula's cell shows now */
export async function differencesIn(
  { data, known }: Pick<FileBook, "data" | "known">,
  shown: (cell: Address & CellData) => ShownValue,
  pause: () => Promise<void> | undefined = () => undefined,
): Promise<Pick<OpeningReport, "differing" | "changing">> {
  const found: Difference[] = [];
  const roots: Address[] = [];
  for (const { name: sheet, cells } of data.sheets)
    for (const cell of cells) {
      const wait = pause();
      if (wait !== undefined) await wait;
      const { row, column, formula, value, spill } = cell;
      if (isVolatile(formula ?? cell.kept?.formula)) roots.push({ sheet, row, column });
      // What no program has calculated yet shows nothing to compare with.
      if (formula === undefined || value === null) continue;
      const now = shown({ sheet, ...cell });
      const stored = spill ?? value;
      if (!sameAsFile(stored, now))
        found.push({ sheet, row, column, address: addressText({ sheet, row, column }), stored, now });
    }
  if (roots.length === 0 || found.length === 0) return { differing: found, changing: [] };
  const changing = await (await followers(data, known, pause)).of(roots);
  return { differing: found.filter((cell) => !changing.has(cell)), changing: found.filter(changing.has) };
}

/** @param book undefined where every cell is known to show what the file does */
export async function openingReport(
  opened: FileBook,
  book: SheetBook | undefined,
  pause: () => Promise<void> | undefined,
): Promise<OpeningReport> {
  const said = { unread: unreadKinds(opened.data), settings: settingSentences(opened.facts) };
  if (book === undefined) return { ...said, differing: [], changing: [] };
  const shown = (cell: Address & CellData): ShownValue => {
    const { sheet, row, column } = cell;
    // Where the file holds one cell, one is compared.
    const spill = cell.spill === undefined ? undefined : book.spill(cell);
    const area = spill ?? { sheet, row, column, rows: 1, columns: 1 };
    const values = book.read(area).values.map((line) => line.map(plainOf));
    const first = values[0]?.[0] ?? null;
    return area.rows * area.columns > 1 && first !== "#SPILL!" ? values : first;
  };
  return { ...said, ...(await differencesIn(opened, shown, pause)) };
}
