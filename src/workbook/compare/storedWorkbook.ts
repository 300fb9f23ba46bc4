/** A workbook file as a port that can only be read: formulas and the values that the file last showed. */
import type { Address, Area, Block, CellValue, ReferenceText, Workbook } from "../port";
import { cellContext, openPackage, readBook, readStoredSheet, type FileCell, type PackageWork } from "../package";
import { parseReference } from "../reader/reference";
import type { MendKnowledge } from "../mend/knowledge";
import { repairFormula } from "../mend/repair";

/** A sheet with a cell further out than this is compared no more: reading it would fill the memory. */
const MOST_CELLS = 2_000_000;

interface Held {
  readonly formula: string;
  readonly value: CellValue;
  readonly spill?: Omit<Area, "sheet">;
}

type Grid = Map<string, Held>;

const keyOf = ({ row, column }: Omit<Address, "sheet">): string => `${String(row)},${String(column)}`;

/** A stored formula as it is typed; what can't be read stays in its stored form. */
function typed(text: string, knowledge: MendKnowledge): string {
  const formula = `=${text}`;
  const repair = repairFormula(formula, knowledge);
  return repair.state === "mended" ? repair.formula : formula.replace(/_xl(?:fn|ws|pm)\./gi, "");
}

function heldOf({ formula, value }: FileCell, knowledge: MendKnowledge): Held {
  if (formula === undefined || formula.kind === "filled" || formula.kind === "dataTable") return { formula: "", value };
  const own = { formula: typed(formula.text, knowledge), value };
  return formula.kind === "array" ? { ...own, spill: formula.area } : own;
}

function blockOf(grid: Grid, area: Area): Block {
  const rows = Array.from({ length: area.rows }, (_, down) =>
    Array.from({ length: area.columns }, (_, over) =>
      grid.get(keyOf({ row: area.row + down, column: area.column + over })),
    ),
  );
  return {
    area,
    formulas: rows.map((row) => row.map((cell) => cell?.formula ?? "")),
    values: rows.map((row) => row.map((cell) => cell?.value ?? null)),
  };
}

function usedOf(sheet: string, grid: Grid): Area | undefined {
  let [rows, columns] = [0, 0];
  for (const place of grid.keys()) {
    const [row = 0, column = 0] = place.split(",").map(Number);
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  }
  if (rows * columns > MOST_CELLS) throw new Error(`the sheet ${sheet} reaches too far to be compared`);
  return rows === 0 ? undefined : { sheet, row: 0, column: 0, rows, columns };
}

const refuse = (): Promise<never> => Promise.reject(new Error("a file that is compared isn't changed"));

/** @throws a sentence where the file can't be read */
export async function storedWorkbook(
  bytes: Uint8Array,
  knowledge: MendKnowledge,
  work: PackageWork = {},
): Promise<Workbook> {
  const pack = await openPackage(bytes, work);
  const book = await readBook(pack);
  const context = await cellContext(pack, book, work);
  const grids = new Map<string, Grid>();
  for (const { name, kind } of book.sheets) {
    if (kind !== "worksheet") continue;
    const grid: Grid = new Map();
    await readStoredSheet(
      pack,
      book,
      name,
      context,
      (cell) => {
        const held = heldOf(cell, knowledge);
        if (held.formula !== "" || held.value !== null) grid.set(keyOf(cell), held);
      },
      work,
    );
    grids.set(name, grid);
  }
  const sheetOf = (name: string): string | undefined =>
    [...grids.keys()].find((own) => own.toLowerCase() === name.toLowerCase());
  const resolveOne = ({ text, from }: ReferenceText): Area | undefined => {
    const meaning = parseReference(text);
    if (meaning === undefined || meaning.kind === "table") return undefined;
    const sheet = sheetOf(meaning.sheet ?? from.sheet);
    if (sheet === undefined) return undefined;
    if (meaning.kind === "cells") {
      const spill = meaning.spill ? grids.get(sheet)?.get(keyOf(meaning.area))?.spill : meaning.area;
      return spill && { sheet, ...spill };
    }
    const called = book.names.filter(({ name }) => name.toLowerCase() === meaning.name.toLowerCase());
    const named = called.find((one) => one.sheet === sheet) ?? called.find((one) => one.sheet === undefined);
    const target =
      named === undefined || named.formula.toLowerCase() === meaning.name.toLowerCase()
        ? undefined
        : parseReference(named.formula);
    const there = target?.kind === "cells" && !target.spill ? sheetOf(target.sheet ?? sheet) : undefined;
    return target?.kind === "cells" && there !== undefined ? { sheet: there, ...target.area } : undefined;
  };
  return {
    host: "preview",
    sheets: async () => [...grids.keys()].map((name) => ({ name, visible: true, protected: true })),
    used: async (sheet) => usedOf(sheet, grids.get(sheetOf(sheet) ?? "") ?? new Map<string, Held>()),
    read: async (areas) =>
      areas.map((area) => blockOf(grids.get(sheetOf(area.sheet) ?? "") ?? new Map<string, Held>(), area)),
    resolve: async (references) => references.map(resolveOne),
    selection: async () => undefined,
    select: refuse,
    write: refuse,
    insert: refuse,
    documentName: refuse,
    documentBytes: refuse,
    deliverCopy: refuse,
    recalculate: refuse,
    onSelection: () => () => undefined,
    onChange: () => () => undefined,
  };
}
