/** A port in memory for the reader and the scan: sheets as grids; it counts what is asked of it. */
import type { Address, Area, Block, CellValue, Workbook } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";

export interface GridCell {
  readonly formula?: string;
  readonly value: CellValue;
}

export interface FakePort {
  readonly book: Workbook;
  readonly sheets: Map<string, Map<string, GridCell>>;
  /** Reference text → "Sheet!A1:B2", for names, tables and spills. */
  readonly meanings: Map<string, string>;
  readonly asked: { reads: number; areas: number; resolves: number; largest: number };
}

const refuse = (what: string) => (): never => {
  throw new Error(`${what} isn't part of this fake`);
};

export function fakePort(sheets: Readonly<Record<string, Readonly<Record<string, CellValue | GridCell>>>>): FakePort {
  const asked = { reads: 0, areas: 0, resolves: 0, largest: 0 };
  const grids = new Map<string, Map<string, GridCell>>();
  for (const [name, cells] of Object.entries(sheets)) {
    const grid = new Map<string, GridCell>();
    for (const [at, cell] of Object.entries(cells)) {
      const area = parseCells(at);
      const isCell = typeof cell === "object" && cell !== null && "value" in cell;
      grid.set(`${String(area?.row)},${String(area?.column)}`, isCell ? cell : { value: cell });
    }
    grids.set(name, grid);
  }
  const meanings = new Map<string, string>();
  const block = (area: Area): Block => {
    asked.areas++;
    asked.largest = Math.max(asked.largest, area.rows * area.columns);
    const grid = grids.get(area.sheet);
    if (grid === undefined) throw new Error(`there is no sheet named "${area.sheet}"`);
    const rows = Array.from({ length: area.rows }, (_, down) =>
      Array.from({ length: area.columns }, (_, over) =>
        grid.get(`${String(area.row + down)},${String(area.column + over)}`),
      ),
    );
    return {
      area,
      formulas: rows.map((row) => row.map((cell) => cell?.formula ?? "")),
      values: rows.map((row) => row.map((cell) => cell?.value ?? null)),
    };
  };
  const book: Workbook = {
    host: "preview",
    sheets: async () => [...grids.keys()].map((name) => ({ name, visible: true, protected: false })),
    used: async (sheet) => {
      const places = [...(grids.get(sheet)?.keys() ?? [])].map((at) => at.split(",").map(Number));
      if (places.length === 0) return undefined;
      const [rows, columns] = [places.map(([row = 0]) => row), places.map(([, column = 0]) => column)];
      const max = (all: readonly number[]): number => all.reduce((a, b) => Math.max(a, b), 0);
      return { sheet, row: 0, column: 0, rows: max(rows) + 1, columns: max(columns) + 1 };
    },
    read: async (areas) => {
      asked.reads++;
      return areas.map(block);
    },
    resolve: async (references) => {
      asked.resolves++;
      return references.map(({ text }) => {
        const [sheet = "", cells = ""] = meanings.get(text)?.split("!") ?? [];
        const area = parseCells(cells);
        return area && { sheet, ...area };
      });
    },
    selection: async () => undefined,
    select: refuse("select"),
    write: refuse("write"),
    insert: refuse("insert"),
    documentName: async () => "",
    documentBytes: refuse("documentBytes"),
    deliverCopy: refuse("deliverCopy"),
    recalculate: refuse("recalculate"),
    onSelection: refuse("onSelection"),
    onChange: refuse("onChange"),
  };
  return { book, sheets: grids, meanings, asked };
}

export const at = (sheet: string, text: string): Address => {
  const area = parseCells(text);
  return { sheet, row: area?.row ?? 0, column: area?.column ?? 0 };
};
