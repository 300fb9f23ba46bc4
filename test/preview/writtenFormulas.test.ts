/** What a write changes of a sheet's formulas is found without listing those of the whole workbook. */
import { LocaleType, LogLevel, RTree, Univer } from "@univerjs/core";
import { FormulaDataModel, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import fc from "fast-check";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { createCallSites } from "../../src/preview/host/callSites";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { univerBook } from "../../src/preview/univer/univerBook";
import { updateOfEngine, updateOfSheet } from "../../src/preview/univer/writtenFormulas";

let univer: Univer;
let book: SheetBook;
let model: FormulaDataModel;

beforeEach(() => {
  univer = new Univer({ locale: LocaleType.EN_US, locales: { enUS: {} }, logLevel: LogLevel.SILENT });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [] });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  const sheets = ["S", "T"].map((name) => ({
    ...emptySheet(name),
    cells: [{ row: 0, column: 0, value: null, formula: "=1+1" }],
  }));
  book = univerBook(univer, createCallSites(), { sheets, names: [] }, { withoutPictures: true, withoutTyping: true });
  model = univer.__getInjector().get(FormulaDataModel);
});
afterEach(() => {
  vi.restoreAllMocks();
  book.dispose();
});

/** What the engine reads of a model, without the proxy that it may come in. */
const plain = (): never =>
  Object.assign(Object.create(FormulaDataModel.prototype), {
    _univerInstanceService: (model as unknown as { _univerInstanceService: object })._univerInstanceService,
    _lexerTreeBuilder: (model as unknown as { _lexerTreeBuilder: object })._lexerTreeBuilder,
  }) as never;

const content = (shared: boolean) =>
  fc.oneof(
    fc.constant(null),
    fc.constant({ v: 3 }),
    fc.constant({ f: null, si: null, v: 1 }),
    fc.constantFrom({ f: "=A1" }, { f: "=B2*2" }, { f: "=" }, { f: "text" }),
    ...(shared ? [fc.constantFrom({ f: "=A1", si: "i" }, { si: "i" }, { f: "=C1", si: "j" }, { si: "j" })] : []),
  );

const cells = (shared: boolean) =>
  fc.dictionary(
    fc.constantFrom("0", "1", "2", "3"),
    fc.dictionary(fc.constantFrom("0", "1", "2"), content(shared), { noNullPrototype: true }),
    { noNullPrototype: true },
  );

test.each([
  ["without shared formulas", false],
  ["with shared formulas", true],
])("a write changes the same formulas as in the engine's own way, %s", (_title, shared) => {
  fc.assert(
    fc.property(cells(shared), cells(shared), (held, written) => {
      const service = (model as unknown as { _univerInstanceService: { getUnit(id: string): never } })
        ._univerInstanceService;
      const unit = service.getUnit("book1") as { getSheetBySheetId(id: string): { getCellMatrix(): never } };
      const sheet = unit.getSheetBySheetId("book1-0").getCellMatrix() as {
        reset(): void;
        setValue(row: number, column: number, cell: unknown): void;
      };
      sheet.reset();
      for (const [row, line] of Object.entries(held))
        for (const [column, cell] of Object.entries(line))
          if (cell !== null) sheet.setValue(Number(row), Number(column), cell);
      const at = ["book1", "book1-0", written as never] as const;
      expect(updateOfSheet.call(plain(), ...at)).toEqual(updateOfEngine.call(plain(), ...at));
    }),
    { seed: 20_261_127, numRuns: 300 },
  );
});

test("a write lists no formulas of the workbook", async () => {
  await book.whenCalculated();
  const listed = vi.spyOn(FormulaDataModel.prototype, "getFormulaData");
  book.write([
    { sheet: "S", row: 1, column: 0, content: "=2+2" },
    { sheet: "S", row: 0, column: 0, content: 5 },
  ]);
  expect(listed).not.toHaveBeenCalled();
  await book.whenCalculated();
  const area = { sheet: "S", row: 0, column: 0, rows: 2, columns: 1 };
  expect(book.read(area)).toEqual({ area, formulas: [[""], ["=2+2"]], values: [[5], [4]] });
});

test("a calculation sorts formulas by their place for OFFSET and INDIRECT alone", async () => {
  await book.whenCalculated();
  const insert = vi.spyOn(RTree.prototype, "insert");
  /** Rows of the places that were sorted; what formulas refer to is in row 0. */
  const rows = () => insert.mock.calls.map(([{ range }]) => range.startRow);
  book.write([{ sheet: "S", row: 1, column: 0, content: "=A1*2" }]);
  await book.whenCalculated();
  expect(rows()).not.toContain(1);
  book.write([{ sheet: "S", row: 2, column: 0, content: "=OFFSET(A1,1,0)" }]);
  await book.whenCalculated();
  expect(rows()).toContain(2);
  book.write([{ sheet: "S", row: 0, column: 0, content: "=3+4" }]);
  await book.whenCalculated();
  expect(book.read({ sheet: "S", row: 0, column: 0, rows: 3, columns: 1 }).values).toEqual([[7], [14], [14]]);
});
