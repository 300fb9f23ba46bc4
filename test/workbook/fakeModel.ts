/** The workbook that the fake Excel keeps: plain data. */
import type { Area } from "../../src/workbook/port";

export interface FakeCell {
  formula: string;
  value: string | number | boolean;
  error?: boolean;
  /** The cell whose result spills here, "A1". */
  parent?: string;
}

export interface FakeTable {
  readonly name: string;
  readonly sheet: string;
  readonly area: Omit<Area, "sheet">;
  readonly columns: readonly string[];
  readonly headers: boolean;
  readonly totals: boolean;
}

export interface FakeSheet {
  readonly id: string;
  name: string;
  visibility: string;
  protected: boolean;
  readonly cells: Map<string, FakeCell>;
  readonly names: Map<string, string>;
  /** Pictures over the cells: what was set of each, its bytes as `data`. */
  readonly shapes: Record<string, unknown>[];
  /** Everything else that was set, "B4.style" → value. */
  readonly set: Map<string, unknown>;
}

export interface FakeWorkbook {
  readonly sheets: FakeSheet[];
  readonly names: Map<string, string>;
  readonly tables: FakeTable[];
  readonly dirty: string[];
  readonly runs: object[];
  supported: string;
  active: { sheet: string; row: number; column: number };
  syncs: number;
  readonly events: Map<string, Set<(event: object) => Promise<void>>>;
}

/** What Office.js throws: a code. */
export class OfficeError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

export function addSheet(book: FakeWorkbook, name: string): FakeSheet {
  const id = `{${String(book.sheets.length + 1)}-${name}}`;
  const sheet: FakeSheet = {
    id,
    name,
    visibility: "Visible",
    protected: false,
    cells: new Map(),
    names: new Map(),
    shapes: [],
    set: new Map(),
  };
  book.sheets.push(sheet);
  return sheet;
}

export function fakeWorkbook(...names: string[]): FakeWorkbook {
  const book: FakeWorkbook = {
    sheets: [],
    names: new Map(),
    tables: [],
    dirty: [],
    runs: [],
    supported: "1.20",
    active: { sheet: names[0] ?? "", row: 0, column: 0 },
    syncs: 0,
    events: new Map(),
  };
  for (const name of names) addSheet(book, name);
  return book;
}

export const sheetOf = (book: FakeWorkbook, name: string): FakeSheet => {
  const found = book.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase() || one.id === name);
  if (found === undefined) throw new OfficeError("ItemNotFound");
  return found;
};
