/**
 * Repairs formulas that lost their functions. Without the add-in a workbook keeps its calls as `_xldudf_WARMBACK_…`, other
 * add-ins may put a lost book before them (`[2]!`, `Book.xla!`), and a cell stays `#NAME?` until its formula is rewritten.
 */
import { NAMESPACE } from "../../../core";
import type { Address, Block, CellValue, CellWrite, Workbook } from "../port";
import { isCellFault } from "../port";
import { mentionsUs, ourId } from "../reader/calls";
import { readFormulas } from "../reader/sheets";
import { isRefusal, tokens, type Token } from "../reader/tokens";

/** What files put before a name they don't know. */
const PREFIXES = /^(?:_xlfn\.|_xlws\.|_xludf\.)+/i;

/** The correct name of a broken call; undefined if the token calls none of ours, or is correct already. */
function mendedName({ kind, text }: Token, known: ReadonlySet<string>): string | undefined {
  if (kind !== "function") return undefined;
  const bare = text.slice(text.lastIndexOf("!") + 1).replace(PREFIXES, "");
  const id = ourId(bare, known);
  const proper = id === undefined ? undefined : `${NAMESPACE}.${id}`;
  return proper === undefined || proper === text.toUpperCase() ? undefined : proper;
}

/** The formula with every broken call of ours repaired; quoted texts don't change. */
export function mendFormula(formula: string, known: ReadonlySet<string>): string {
  if (!mentionsUs(formula)) return formula;
  const found = tokens(formula);
  if (isRefusal(found)) return formula;
  let text = "";
  let from = 0;
  for (const token of found) {
    const name = mendedName(token, known);
    if (name === undefined) continue;
    text += formula.slice(from, token.start) + name;
    from = token.end;
  }
  return text + formula.slice(from);
}

/** Whether a formula calls one of ours by its proper name. */
const callsUs = (formula: string, known: ReadonlySet<string>): boolean => {
  const found = mentionsUs(formula) ? tokens(formula) : [];
  return !isRefusal(found) && found.some(({ kind, text }) => kind === "function" && ourId(text, known) !== undefined);
};

const isNameless = (value: CellValue): boolean => isCellFault(value) && value.code === "#NAME?";

export interface Mending {
  /** Cells whose formulas were rewritten. */
  readonly mended: readonly Address[];
  /** Those of them that still show #NAME?: something else in the formula isn't known. */
  readonly failing: readonly Address[];
  /** Sheets with such cells that are protected, and how many cells. */
  readonly protectedSheets: readonly { readonly sheet: string; readonly cells: number }[];
}

/** The cells of a sheet to rewrite. */
function broken(blocks: readonly Block[], known: ReadonlySet<string>): readonly CellWrite[] {
  const found: CellWrite[] = [];
  for (const { area, formulas, values } of blocks)
    formulas.forEach((line, down) =>
      line.forEach((formula, over) => {
        const content = mendFormula(formula, known);
        const again = isNameless(values[down]?.[over] ?? null) && callsUs(formula, known);
        if (content === formula && !again) return;
        found.push({ sheet: area.sheet, row: area.row + down, column: area.column + over, content });
      }),
    );
  return found;
}

async function stillFailing(book: Workbook, cells: readonly Address[]): Promise<readonly Address[]> {
  const blocks = cells.length === 0 ? [] : await book.read(cells.map((cell) => ({ ...cell, rows: 1, columns: 1 })));
  return cells.filter((_, at) => isNameless(blocks[at]?.values[0]?.[0] ?? null));
}

/** Repairs the whole workbook in one write, which is one undo step if the host supports that. */
export async function mendFormulas(book: Workbook, known: ReadonlySet<string>): Promise<Mending> {
  const writes: CellWrite[] = [];
  const protectedSheets: { sheet: string; cells: number }[] = [];
  const sheets = await book.sheets();
  const read = await readFormulas(
    book,
    sheets.map(({ name }) => name),
  );
  for (const { name, protected: shut } of sheets) {
    const cells = broken(read.get(name)?.blocks ?? [], known);
    if (shut && cells.length > 0) protectedSheets.push({ sheet: name, cells: cells.length });
    else writes.push(...cells);
  }
  if (writes.length > 0) await book.write(writes);
  const addresses = writes.map(({ sheet, row, column }) => ({ sheet, row, column }));
  return { mended: addresses, failing: await stillFailing(book, addresses), protectedSheets };
}
