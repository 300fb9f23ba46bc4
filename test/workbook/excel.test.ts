import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { excelWorkbook } from "../../src/workbook/excel";
import { asTyped } from "../../src/workbook/excel/cells";
import { ruleOf } from "../../src/workbook/excel/starter";
import type { Area, HandOverCopy, PlacedPicture } from "../../src/workbook/port";
import { readCells } from "../../src/workbook/reader/read";
import { callLog } from "../../src/workbook/log";
import { contract } from "./contract";
import { SMALL } from "./contractSheets";
import { fakeWorkbook, fire, install, sheetOf } from "./fakeExcel";
import type { FakeWorkbook } from "./fakeExcel";

contract("Office.js, as far as the mock goes", () => {
  const fake = fakeWorkbook("Sheet1");
  const uninstall = install(fake);
  return Promise.resolve({
    book: excelWorkbook(),
    calculates: false,
    close: () => Promise.resolve(uninstall()),
    protect: (sheet) => {
      sheetOf(fake, sheet).protected = true;
      return Promise.resolve();
    },
  });
});

const area = (sheet: string, row: number, column: number, rows = 1, columns = 1): Area => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

describe("The Office.js adapter", () => {
  let fake: FakeWorkbook;
  let uninstall: () => void;
  const book = excelWorkbook();

  beforeEach(() => {
    fake = fakeWorkbook("Sheet1", "Data");
    uninstall = install(fake);
  });
  afterEach(() => uninstall());

  test("formats a starter sheet with built-in styles, formats, rules, widths, frozen rows and print set-up", async () => {
    await book.insert(SMALL);
    const { set } = sheetOf(fake, "Small sheet");
    expect(Object.fromEntries(set)).toMatchObject({
      "A1.style": "SheetTitle",
      "B2.style": "Input",
      "B2.numberFormat": [["0.0"]],
      "B2.rule": { custom: { formula: "=AND(ISNUMBER(B2),B2>0,B2<=200)" } },
      "B2.prompt": { message: "Water flow in gpm, above 0 to 200", showPrompt: true, title: "" },
      "B3.rule": { list: { inCellDropDown: true, source: "1 1/2 in,2 in" } },
      "B5.style": "Calculation",
      "A2.wrapText": true,
      "A1.columnWidth": 108.75,
      frozenRows: 1,
      printArea: "A1:F20",
      titleRows: "$1:$2",
      orientation: "Portrait",
      zoom: { horizontalFitToPages: 1 },
      footer: "Page &P of &N",
    });
    expect(fake.active.sheet).toBe("Small sheet");
  });

  test("leaves out what an older Excel lacks, and still inserts", async () => {
    fake.supported = "1.6";
    await book.insert(SMALL);
    const { set, cells } = sheetOf(fake, "Small sheet");
    expect(set.has("printArea") || set.has("frozenRows") || set.has("B2.rule")).toBe(false);
    expect(cells.get("B2")?.value).toBe(40);
  });

  test("takes away a sheet that it couldn't finish", async () => {
    const broken = { ...SMALL, cells: { ...SMALL.cells, B9: { content: "=BAD(" } } };
    await expect(book.insert(broken)).rejects.toThrow("Excel refused a value, a formula or an address");
    expect((await book.sheets()).map(({ name }) => name)).toEqual(["Sheet1", "Data"]);
  });

  const COPY: HandOverCopy = {
    sheets: [
      {
        sheet: "Data",
        title: "Data values",
        areas: [
          {
            row: 0,
            column: 1,
            values: [
              [2.5, "=A1"],
              [null, "1-2"],
            ],
          },
        ],
      },
    ],
    record: { ...SMALL, name: "Record", cells: { A1: { content: "=A1+1", text: true, entry: true, indent: true } } },
  };

  test("hands over new sheets with values in place of formulas; the originals stay", async () => {
    await book.write([
      { sheet: "Data", row: 0, column: 0, content: 7 },
      { sheet: "Data", row: 0, column: 1, content: "=A1*2" },
      { sheet: "Data", row: 1, column: 2, content: "=A1" },
      { sheet: "Data", row: 5, column: 5, content: "=A1+1" },
    ]);
    expect(await book.handOver(COPY)).toBe("the new sheets “Data values”, “Record”");
    expect((await book.sheets()).map(({ name }) => name)).toEqual(["Sheet1", "Data", "Data values", "Record"]);
    const { cells } = sheetOf(fake, "Data values");
    const plain = (at: string): unknown => [cells.get(at)?.formula, cells.get(at)?.value];
    expect(plain("B1")).toEqual(["", 2.5]);
    expect(plain("C1")).toEqual(["", "=A1"]);
    expect(plain("C2")).toEqual(["", "1-2"]);
    expect(cells.get("B2")).toBeUndefined();
    expect(cells.get("F6")?.formula).toBe("=A1+1");
    expect(sheetOf(fake, "Data").cells.get("B1")?.formula).toBe("=A1*2");
    expect(sheetOf(fake, "Record").cells.get("A1")).toMatchObject({ formula: "", value: "=A1+1" });
    expect(Object.fromEntries(sheetOf(fake, "Record").set)).toMatchObject({
      "A1.verticalAlignment": "Top",
      "A1.indentLevel": 1,
    });
  });

  test("hands over a protected sheet without a password, and leaves the original protected", async () => {
    sheetOf(fake, "Data").protected = true;
    await book.handOver(COPY);
    expect(sheetOf(fake, "Data values").protected).toBe(false);
    expect(sheetOf(fake, "Data").protected).toBe(true);
  });

  test("takes away the copies where the record can't be made, and says where copying isn't to be had", async () => {
    const broken = { ...COPY, record: { ...COPY.record, cells: { A1: { content: "=BAD(" } } } };
    await expect(book.handOver(broken)).rejects.toThrow("Excel refused a value, a formula or an address");
    expect((await book.sheets()).map(({ name }) => name)).toEqual(["Sheet1", "Data"]);
    fake.supported = "1.6";
    await expect(book.handOver(COPY)).rejects.toThrow("this Excel can't copy sheets");
  });

  const PICTURE: PlacedPicture = {
    name: "POOL.YEAR: Heat by month",
    says: "Heat of each month.",
    png: "iVBORw0KGgoAAAA=",
    width: 390,
    height: 243,
  };

  test("puts a picture beside an area with name, alternative text and its size, in one undo step", async () => {
    expect(await book.placePicture?.(PICTURE, area("Data", 9, 1, 14, 3))).toBe("beside Data!B10");
    expect(sheetOf(fake, "Data").shapes).toEqual([
      {
        data: PICTURE.png,
        name: "POOL.YEAR: Heat by month",
        altTextDescription: "Heat of each month.",
        left: 4 * 48 + 6,
        top: 9 * 15,
        width: 390,
        height: 243,
        lockAspectRatio: true,
      },
    ]);
    expect(fake.runs.at(-1)).toMatchObject({ mergeUndoGroup: true });
  });

  test("gives a second picture of the same name a number, and keeps inside the sheet's last column", async () => {
    await book.placePicture?.(PICTURE, area("Data", 0, 0));
    await book.placePicture?.(PICTURE, area("Data", 0, 16_380, 1, 4));
    await book.placePicture?.(PICTURE, area("Data", 0, 0));
    const { shapes } = sheetOf(fake, "Data");
    expect(shapes.map(({ name }) => name)).toEqual([PICTURE.name, `${PICTURE.name} 2`, `${PICTURE.name} 3`]);
    expect(shapes[1]?.["left"]).toBe(16_380 * 48 + 6);
  });

  test("can't put pictures below Excel's set of shapes, and says what is in the way on a sheet", async () => {
    sheetOf(fake, "Data").protected = true;
    await expect(book.placePicture?.(PICTURE, area("Data", 0, 0))).rejects.toThrow("the sheet is protected");
    await expect(book.placePicture?.(PICTURE, area("Gone", 0, 0))).rejects.toThrow('there is no sheet named "Gone"');
    fake.supported = "1.8";
    expect(book.placePicture).toBeUndefined();
    expect(book.savePicture).toBeUndefined();
  });

  test("writes in one undo step where Excel has that", async () => {
    await book.write([{ sheet: "Data", row: 0, column: 0, content: 1 }]);
    expect(fake.runs.at(-1)).toMatchObject({ mergeUndoGroup: true });
    fake.supported = "1.19";
    await book.write([{ sheet: "Data", row: 0, column: 0, content: 1 }]);
    expect(fake.runs.at(-1)).not.toHaveProperty("mergeUndoGroup");
  });

  test("writes back what was there when Excel breaks off half way", async () => {
    const cell = (row: number, content: string | number) => ({ sheet: "Data", row, column: 0, content });
    await book.write([cell(0, 1), cell(1, "1-2"), cell(2, "=A1")]);
    await expect(book.write([cell(0, 5), cell(1, 6), cell(2, "=BAD(")])).rejects.toThrow("Excel refused");
    expect(sheetOf(fake, "Data").cells.get("A2")?.value).toBe("1-2");
    expect(sheetOf(fake, "Data").cells.get("A1")?.value).toBe(1);
    expect(sheetOf(fake, "Data").cells.get("A3")?.formula).toBe("=A1");
  });

  test("tells an error from a text of the same characters", async () => {
    const { cells } = sheetOf(fake, "Data");
    cells.set("A1", { formula: "=1/0", value: "#DIV/0!", error: true });
    cells.set("B1", { formula: "", value: "#N/A" });
    const [block] = await book.read([area("Data", 0, 0, 1, 2)]);
    expect(block?.values).toEqual([[{ error: "#DIV/0!" }, "#N/A"]]);
  });

  test("gives a spilled cell no formula of its own, though Excel may show its parent's", async () => {
    const { cells } = sheetOf(fake, "Data");
    const formula = "=WARMBACK.WATER.PROPERTIES($F$1)";
    cells.set("A1", { formula, value: "density", parent: "A1" });
    cells.set("A2", { formula, value: "heat capacity", parent: "A1" });
    cells.set("A4", { formula, value: "density" });
    cells.set("B4", { formula, value: "density" });
    const [block] = await book.read([area("Data", 0, 0, 4, 2)]);
    expect(block?.formulas).toEqual([
      [formula, ""],
      ["", ""],
      ["", ""],
      [formula, formula],
    ]);
    expect(await book.resolve([{ text: "A1#", from: area("Data", 9, 9) }])).toEqual([area("Data", 0, 0, 2, 1)]);
    expect(await book.resolve([{ text: "A4#", from: area("Data", 9, 9) }])).toEqual([undefined]);
  });

  test("reads a large area piece by piece, at most 50,000 cells a round trip", async () => {
    sheetOf(fake, "Data").cells.set("C12000", { formula: "", value: 7 });
    const before = fake.syncs;
    const [block] = await book.read([area("Data", 0, 0, 12_000, 10)]);
    expect(fake.syncs - before).toBe(3);
    expect(block?.values).toHaveLength(12_000);
    expect(block?.values[11_999]?.[2]).toBe(7);
  });

  test("follows tables: columns, this row, headers, totals", async () => {
    fake.tables.push({
      name: "Pumps",
      sheet: "Data",
      area: { row: 2, column: 1, rows: 5, columns: 3 },
      columns: ["Flow", "Head", "Flow rate"],
      headers: true,
      totals: true,
    });
    const from = { sheet: "Data", row: 4, column: 3 };
    const texts = [
      "Pumps[Flow]",
      "Pumps[[flow]:[Head]]",
      "Pumps[@Head]",
      "[@[Flow rate]]",
      "Pumps[#All]",
      "Pumps[#Headers]",
    ];
    const more = ["Pumps[[#Totals],[Head]]", "Pumps", "Pumps[Power]", "Fans[Flow]"];
    expect(await book.resolve([...texts, ...more].map((text) => ({ text, from })))).toEqual([
      area("Data", 3, 1, 3, 1),
      area("Data", 3, 1, 3, 2),
      area("Data", 4, 2),
      area("Data", 4, 3),
      area("Data", 2, 1, 5, 3),
      area("Data", 2, 1, 1, 3),
      area("Data", 6, 2),
      area("Data", 3, 1, 3, 3),
      undefined,
      undefined,
    ]);
    const outside = { sheet: "Data", row: 20, column: 3 };
    expect(
      await book.resolve([
        { text: "[@Flow]", from: outside },
        { text: "Pumps[@Flow]", from: outside },
      ]),
    ).toEqual([undefined, undefined]);
  });

  test("needs no more round trips for 200 references than for two", async () => {
    const from = { sheet: "Data", row: 0, column: 0 };
    const before = fake.syncs;
    await book.resolve(Array.from({ length: 200 }, (_, at) => ({ text: `Sheet1!A${String(at + 1)}`, from })));
    expect(fake.syncs - before).toBe(3);
  });

  test("marks areas dirty", async () => {
    await book.recalculate([area("Data", 0, 0, 2, 2), area("Sheet1", 4, 4)]);
    expect(fake.dirty).toEqual(["Data!A1:B2", "Sheet1!E5"]);
  });

  test("tells of recalculated sheets too, and of none below Excel's event set", async () => {
    const seen: string[] = [];
    const stop = book.onChange((sheets) => seen.push(...sheets));
    await new Promise((resolve) => setTimeout(resolve, 50));
    await fire(fake, "onCalculated", { worksheetId: sheetOf(fake, "Data").id });
    expect(seen).toEqual(["Data"]);
    stop();
    fake.supported = "1.8";
    const later = book.onChange((sheets) => seen.push(...sheets));
    await new Promise((resolve) => setTimeout(resolve, 50));
    await fire(fake, "onCalculated", { worksheetId: sheetOf(fake, "Data").id });
    expect(seen).toEqual(["Data"]);
    later();
  });

  test("reads nothing that it didn't load: the mock's own rule holds", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Data").getRangeByIndexes(0, 0, 1, 1);
      expect(String(range.values)).toMatch(/not loaded/i);
      range.load("values");
      expect(String(range.values)).toMatch(/sync/i);
      await context.sync();
      expect(range.values).toEqual([[""]]);
    });
  });

  test("lets the reader follow a table's column through Excel", async () => {
    fake.tables.push({
      name: "Pumps",
      sheet: "Data",
      area: { row: 0, column: 0, rows: 3, columns: 1 },
      columns: ["Flow"],
      headers: true,
      totals: false,
    });
    const { cells } = sheetOf(fake, "Data");
    cells.set("A2", { formula: "", value: 40 });
    cells.set("A3", { formula: "", value: 50 });
    const cell = {
      address: { sheet: "Data", row: 2, column: 4 },
      formula: "=WARMBACK.PIPE.SIZE(SUM(Pumps[Flow]),[@Flow])",
      value: 1,
    };
    const engine = { known: new Set(["PIPE.SIZE"]), log: callLog(), call: () => ({ value: 1 }) };
    const [outside] = await readCells(book, [cell], engine);
    expect(outside?.calls[0]?.args[0]).toEqual({ value: 90 });
    const [inside] = await readCells(book, [{ ...cell, address: { sheet: "Data", row: 2, column: 0 } }], engine);
    expect(inside?.calls[0]?.args).toEqual([{ value: 90 }, { value: 50 }]);
  });
});

describe("What is typed into Excel", () => {
  test.each(["2 in", "1-2", "007", "-x", "TRUE", "May 5", "50%", "@home", "+1", "'quoted"])(
    "%s typed into Excel stays text",
    (text) => {
      expect(asTyped(text)).toBe(`'${text}`);
    },
  );

  test.each(["gpm", "Water flow", "=A1", "maybe", "R-410A"])("%s typed into Excel is left as it is", (text) => {
    expect(asTyped(text)).toBe(text);
  });

  test("limits become Excel's validation rules", () => {
    expect(ruleOf({ from: 0, to: 1, prompt: "" }, "B2")).toEqual({
      decimal: { formula1: 0, formula2: 1, operator: "Between" },
    });
    expect(ruleOf({ above: 0, prompt: "" }, "B2")).toEqual({ decimal: { formula1: 0, operator: "GreaterThan" } });
    expect(ruleOf({ from: 1, prompt: "" }, "B2")).toEqual({
      decimal: { formula1: 1, operator: "GreaterThanOrEqualTo" },
    });
    expect(ruleOf({ to: 9, prompt: "" }, "B2")).toEqual({ decimal: { formula1: 9, operator: "LessThanOrEqualTo" } });
    expect(() => ruleOf({ list: ["a,b"], prompt: "" }, "B2")).toThrow(/B2.*no commas/);
  });
});
