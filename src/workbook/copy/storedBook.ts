/** A workbook as its file stores it, for the reader of formulas: what a copy is made of and what a finished copy holds. */
import {
  cellContext,
  readBook,
  readStoredSheet,
  type BookFacts,
  type FileCell,
  type FileFormula,
  type Package,
  type PackageWork,
} from "../package";
import type { Address, Area, BookReader } from "../port";
import { isCellFault } from "../port";
import type { FormulaCell } from "./dependents";
import { meaningsIn, type Meanings } from "./storedMeaning";
import { addCell, blockOf, labelIn, noCells, placeKey, type StoredCells } from "./storedSheets";
import { typedFormula } from "./typedFormula";

export interface StoredFormula extends FormulaCell {
  /** What it fills. */
  readonly area: Area;
  /** A what-if table, or a formula whose text can't be followed. */
  readonly opaque: boolean;
  /** Its value is an error that the file explains elsewhere: one that is newer than the format. */
  readonly newerError: boolean;
}

export interface StoredBook {
  readonly facts: BookFacts;
  /** As one types them, sheet by sheet in the order of the file. */
  readonly formulas: readonly StoredFormula[];
  /** Cells that show an error. */
  readonly failing: readonly Address[];
  readonly reader: BookReader;
  readonly meanings: Meanings;
  /** Whether the cell holds a value. */
  holds(address: Address): boolean;
  /** The text that names a cell. */
  labelOf(address: Address): string;
}

interface Typed {
  readonly text: string;
  readonly area?: Omit<Area, "sheet">;
  readonly opaque: boolean;
}

function typedOf(formula: FileFormula | undefined): Typed | undefined {
  if (formula === undefined || formula.kind === "filled") return undefined;
  if (formula.kind === "dataTable")
    return { text: `=TABLE(${formula.inputs.join(",")})`, area: formula.area, opaque: true };
  const opaque = formula.kind === "unreadable";
  return { text: typedFormula(formula.text), opaque, ...(formula.kind === "array" && { area: formula.area }) };
}

interface Draft {
  readonly sheets: Map<string, StoredCells>;
  readonly formulas: StoredFormula[];
  readonly failing: Address[];
  /** What formulas of several cells fill, by their first cell. */
  readonly spills: Map<string, Area>;
}

const spillKey = (sheet: string, row: number, column: number): string => `${sheet}!${placeKey(row, column)}`;

function addStored(draft: Draft, sheet: string, cells: StoredCells, cell: FileCell): void {
  const { row, column, value, formula, valueMetadata } = cell;
  const address = { sheet, row, column };
  addCell(cells, row, column, value);
  if (isCellFault(value)) draft.failing.push(address);
  const typed = typedOf(formula);
  if (typed === undefined) return;
  const { text, opaque } = typed;
  const area = { sheet, ...(typed.area ?? { row, column, rows: 1, columns: 1 }) };
  cells.formulas.set(placeKey(row, column), text);
  if (typed.area !== undefined) draft.spills.set(spillKey(sheet, row, column), area);
  const newerError = valueMetadata !== undefined && isCellFault(value);
  draft.formulas.push({ address, formula: text, value, area, opaque, newerError });
}

function readerOf({ sheets }: BookFacts, cells: ReadonlyMap<string, StoredCells>, meanings: Meanings): BookReader {
  return {
    sheets: async () => sheets.map(({ name, state }) => ({ name, visible: state === "visible", protected: false })),
    async used(sheet) {
      const { rows, columns } = cells.get(sheet) ?? noCells();
      return rows === 0 ? undefined : { sheet, row: 0, column: 0, rows, columns };
    },
    read: async (areas) => areas.map((area) => blockOf(cells.get(area.sheet), area)),
    resolve: async (references) => references.map((reference) => meanings.areaOf(reference)),
  };
}

export async function readStoredBook(pack: Package, work: PackageWork = {}): Promise<StoredBook> {
  const facts = await readBook(pack);
  const context = await cellContext(pack, facts, work);
  const draft: Draft = { sheets: new Map(), formulas: [], failing: [], spills: new Map() };
  for (const [at, { name, kind }] of facts.sheets.entries()) {
    work.onProgress?.(at, facts.sheets.length);
    if (kind !== "worksheet") continue;
    const cells = noCells();
    draft.sheets.set(name, cells);
    const inner = { ...work, onProgress: () => undefined };
    await readStoredSheet(pack, facts, name, context, (cell) => addStored(draft, name, cells, cell), inner);
  }
  const meanings = meaningsIn(facts, (sheet, row, column) => draft.spills.get(spillKey(sheet, row, column)));
  return {
    facts,
    formulas: draft.formulas,
    failing: draft.failing,
    reader: readerOf(facts, draft.sheets, meanings),
    meanings,
    holds: ({ sheet, row, column }) => draft.sheets.get(sheet)?.values.has(placeKey(row, column)) === true,
    labelOf: (address) => labelIn(draft.sheets.get(address.sheet), address),
  };
}
