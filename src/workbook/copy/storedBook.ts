/** A workbook as its file stores it, for the reader of formulas: what a copy is made of and what a finished copy holds. */
import {
  cellContext,
  readBook,
  readFrame,
  type BookFacts,
  type FileFormula,
  type FrameCell,
  type Package,
  type PackageWork,
  type SheetFrame,
  type SheetFrames,
} from "../package";
import { placeNumber } from "../columns";
import type { Address, Area, BookReader } from "../port";
import { isCellFault } from "../port";
import type { FormulaCell } from "./dependents";
import { meaningsIn, type Meanings } from "./storedMeaning";
import { addCell, blockOf, labelIn, noCells, type StoredCells } from "./storedSheets";
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
  /** What choosing sheets needs to know of them. */
  readonly frames: SheetFrames;
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

/** A sheet while its cells come. */
interface SheetDraft {
  readonly cells: StoredCells;
  readonly formulas: StoredFormula[];
  readonly failing: Address[];
  /** What formulas of several cells fill, by their first cell. */
  readonly spills: Map<number, Area>;
}

function addStored({ cells, formulas, failing, spills }: SheetDraft, sheet: string, cell: FrameCell): void {
  const { row, column, value, formula, hasValueMetadata } = cell;
  addCell(cells, row, column, value);
  const isFault = isCellFault(value);
  if (!isFault && formula === undefined) return;
  const address = { sheet, row, column };
  if (isFault) failing.push(address);
  const typed = typedOf(formula);
  if (typed === undefined) return;
  const { text, opaque } = typed;
  const area = typed.area === undefined ? { sheet, row, column, rows: 1, columns: 1 } : { sheet, ...typed.area };
  if (typed.area !== undefined) spills.set(placeNumber(row, column), area);
  formulas.push({ address, formula: text, value, area, opaque, newerError: isFault && hasValueMetadata });
}

function readerOf({ sheets }: BookFacts, drafts: ReadonlyMap<string, SheetDraft>, meanings: Meanings): BookReader {
  return {
    sheets: async () => sheets.map(({ name, state }) => ({ name, visible: state === "visible", protected: false })),
    async used(sheet) {
      const { rows, columns } = drafts.get(sheet)?.cells ?? noCells();
      return rows === 0 ? undefined : { sheet, row: 0, column: 0, rows, columns };
    },
    read: async (areas) =>
      areas.map((area) => {
        const draft = drafts.get(area.sheet);
        return blockOf(draft?.cells, draft?.formulas ?? [], area);
      }),
    resolve: async (references) => references.map((reference) => meanings.areaOf(reference)),
  };
}

/** Sheets whose cells come in any order of the sheets. */
export interface StoredSheets {
  /** Takes a sheet's cells; a sheet that comes again begins anew. */
  sheet(name: string): (cell: FrameCell) => void;
  /** The workbook of these sheets. */
  book(facts: BookFacts, frames?: SheetFrames): StoredBook;
}

export function storedSheets(): StoredSheets {
  const drafts = new Map<string, SheetDraft>();
  return {
    sheet(name) {
      const draft: SheetDraft = { cells: noCells(), formulas: [], failing: [], spills: new Map() };
      drafts.set(name, draft);
      return (cell) => addStored(draft, name, cell);
    },
    book(facts, frames = new Map()) {
      const meanings = meaningsIn(facts, (sheet, row, column) =>
        drafts.get(sheet)?.spills.get(placeNumber(row, column)),
      );
      const all = facts.sheets.flatMap(({ name }) => drafts.get(name) ?? []);
      return {
        ...{ facts, meanings, frames },
        formulas: all.flatMap(({ formulas }) => formulas),
        failing: all.flatMap(({ failing }) => failing),
        reader: readerOf(facts, drafts, meanings),
        holds: ({ sheet, row, column }) => drafts.get(sheet)?.cells.values.has(placeNumber(row, column)) === true,
        labelOf: (address) => labelIn(drafts.get(address.sheet)?.cells, address),
      };
    },
  };
}

export async function readStoredBook(pack: Package, work: PackageWork = {}): Promise<StoredBook> {
  const facts = await readBook(pack);
  const context = await cellContext(pack, facts, work);
  const stored = storedSheets();
  const frames = new Map<string, SheetFrame>();
  for (const [at, { name, kind, path }] of facts.sheets.entries()) {
    work.onProgress?.(at, facts.sheets.length);
    if (kind !== "worksheet") continue;
    frames.set(path, await readFrame(pack, path, work, context, stored.sheet(name)));
  }
  return stored.book(facts, frames);
}
