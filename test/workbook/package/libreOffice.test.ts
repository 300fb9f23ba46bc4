/** What another program makes of the files that are written: it opens them and works out the same values. */
import { expect, test } from "vitest";
import {
  addSheets,
  cellContext,
  handOverPackage,
  newWorkbook,
  openPackage,
  packageBytes,
  patchCells,
  readBook,
  readStoredSheet,
  type CellChange,
  type NewSheet,
} from "../../../src/workbook/package";
import { fullBook } from "./fullBook";
import { recalculated, skipsLibreOffice, titled } from "./libreOffice";
import { zipOf } from "./zipParts";

const MINUTES = 180_000;
const skipIf = test.skipIf(skipsLibreOffice);

/** Values by sheet and address, empty cells left out. */
async function valuesOf(bytes: Uint8Array): Promise<ReadonlyMap<string, unknown>> {
  const pack = await openPackage(bytes);
  const book = await readBook(pack);
  const context = await cellContext(pack, book);
  const values = new Map<string, unknown>();
  for (const { name, kind } of book.sheets)
    if (kind === "worksheet")
      await readStoredSheet(pack, book, name, context, ({ row, column, value }) => {
        if (value !== null && value !== "") values.set(`${name} ${row} ${column}`, value);
      });
  return values;
}

/** Texts and truth values alike; numbers to 1e-12 of their size. */
function compare(
  before: ReadonlyMap<string, unknown>,
  after: ReadonlyMap<string, unknown>,
  except: readonly string[] = [],
): void {
  const differing = [...before].filter(([key, value]) => {
    const other = after.get(key);
    if (except.includes(key)) return false;
    if (typeof value === "boolean" && typeof other === "number") return Number(value) !== other;
    if (typeof value !== "number" || typeof other !== "number") return JSON.stringify(value) !== JSON.stringify(other);
    return Math.abs(value - other) > 1e-12 * Math.max(1, Math.abs(value));
  });
  expect(differing.map(([key, value]) => [key, value, after.get(key)])).toEqual([]);
  expect([...before.keys()].length).toBeGreaterThan(5);
}

skipIf(
  titled("LibreOffice opens a saved workbook with every kind of part and agrees in every value"),
  async () => {
    const pack = await openPackage(zipOf(fullBook()));
    const changes: CellChange[] = [
      { sheet: "Loop", row: 1, column: 0, content: { kind: "value", value: 45 } },
      { sheet: "Loop", row: 1, column: 2, content: { kind: "formula", formula: "A2*3", value: 135 } },
      { sheet: "Loop", row: 1, column: 4, content: { kind: "result", value: 155 } },
      { sheet: "Loop", row: 3, column: 4, content: { kind: "result", value: 45 } },
      { sheet: "Loop", row: 5, column: 0, content: { kind: "result", value: 90 } },
      { sheet: "Loop", row: 11, column: 0, content: { kind: "value", value: "=text" }, format: "0.000" },
      { sheet: "Prices", row: 0, column: 1, content: { kind: "value", value: "Price each" } },
    ];
    const bytes = await packageBytes((await patchCells(pack, await readBook(pack), changes)).pack);
    // The linked workbook isn't there, and LibreOffice lays the pivot table out anew.
    const except = ["Loop 9 0", "Other book 0 0", "Pivot 2 0", "Pivot 4 0", "Pivot 4 1"];
    compare(await valuesOf(bytes), await valuesOf(recalculated(bytes, "xlsm")), except);
  },
  MINUTES,
);

skipIf(
  titled("LibreOffice opens a handed-over copy and agrees in every value"),
  async () => {
    const pack = await openPackage(zipOf(fullBook()));
    const note: NewSheet = {
      name: "Read me",
      cells: [
        { row: 0, column: 0, value: "+5 is a text" },
        { row: 1, column: 0, formula: "Loop!E2*2", value: 300 },
      ],
    };
    const copy = await handOverPackage(pack, {
      choice: { sheets: ["Loop"] },
      changes: [{ sheet: "Loop", row: 1, column: 4, content: { kind: "frozen" } }],
      sheets: [note],
    });
    const bytes = await packageBytes(copy.pack);
    const after = recalculated(bytes);
    compare(await valuesOf(bytes), await valuesOf(after));
    expect((await readBook(await openPackage(after))).sheets.map(({ name }) => name)).toEqual([
      "Prices",
      "Loop",
      "Read me",
    ]);
  },
  MINUTES,
);

skipIf(
  titled("LibreOffice opens a workbook of our own and agrees in every value, spilled ones too"),
  async () => {
    const sheet: NewSheet = {
      name: "Pool loop",
      cells: [
        {
          row: 0,
          column: 0,
          value: "Fernhill Hall (invented)",
          style: { bold: true, size: 14, color: "#1f3a5f", wrap: true },
        },
        {
          row: 1,
          column: 0,
          value: 40,
          style: {
            format: "0.00",
            fill: "#fff4d6",
            edges: { bottom: { style: "thin", color: "#b59b4c" } },
            indent: true,
          },
        },
        { row: 2, column: 0, formula: "A2*2", value: 80 },
        { row: 3, column: 0, formula: "TRANSPOSE(A2:A3)", value: 40, spill: [[40, 80]] },
        { row: 4, column: 0, formula: "flow+1", value: 41 },
        { row: 5, column: 0, value: "2 in" },
        { row: 6, column: 0, value: true },
        { row: 7, column: 0, formula: 'IF(A7,"yes & no","")', value: "yes & no" },
      ],
      widths: { 0: 24 },
      heights: { 0: 30 },
      merged: [{ row: 0, column: 0, rows: 1, columns: 2 }],
      frozenRows: 1,
      validations: [
        {
          areas: "A6",
          type: "list",
          formulas: ['"1 in,2 in"'],
          allowBlank: true,
          prompt: "size",
          showInputMessage: true,
        },
      ],
      print: { area: "A1:B8", titleRows: "1:1", landscape: true, fitToWidth: true, footer: "&P" },
    };
    const first = await newWorkbook([sheet], [{ name: "flow", formula: "'Pool loop'!$A$2" }]);
    const bytes = await packageBytes(
      await addSheets(first, [
        { name: "Second", cells: [{ row: 0, column: 0, formula: "flow", value: 40 }], state: "hidden" },
      ]),
    );
    compare(await valuesOf(bytes), await valuesOf(recalculated(bytes)));
  },
  MINUTES,
);

skipIf(
  titled("LibreOffice agrees with 2,000 formulas of which every tenth was changed or frozen"),
  async () => {
    const cells = Array.from({ length: 2_000 }, (_, row) => ({
      row,
      column: 1,
      formula: `A${row + 1}*2+SUM($A$1:$A$10)`,
      value: row * 2 + 45,
    }));
    const inputs = Array.from({ length: 2_000 }, (_, row) => ({ row, column: 0, value: row }));
    const pack = await newWorkbook([{ name: "S", cells: [...cells, ...inputs] }]);
    const changes = cells
      .filter(({ row }) => row % 10 === 0)
      .map(({ row }): CellChange => ({
        sheet: "S",
        row,
        column: 1,
        content: row % 20 === 0 ? { kind: "frozen" } : { kind: "formula", formula: `A${row + 1}/8`, value: row / 8 },
      }));
    const patched = await patchCells(pack, await readBook(pack), changes);
    const bytes = await packageBytes(patched.pack);
    compare(await valuesOf(bytes), await valuesOf(recalculated(bytes)));
  },
  MINUTES,
);

skipIf(
  titled("LibreOffice corrects a wrong stored value, so that the comparisons above can fail"),
  async () => {
    const pack = await newWorkbook([{ name: "S", cells: [{ row: 0, column: 0, formula: "1+1", value: 999 }] }]);
    const after = await valuesOf(recalculated(await packageBytes(pack)));
    expect(after.get("S 0 0")).toBe(2);
  },
  MINUTES,
);
