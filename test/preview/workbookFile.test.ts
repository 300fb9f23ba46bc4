/** Workbooks of other people through the page: what a save changes in their files, and what it leaves. */
import { strFromU8, unzipSync } from "fflate";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { starterData } from "../../src/preview/file/starterBook";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { fileChanges } from "../../src/preview/file/fileChanges";
import { openedBook } from "../../src/preview/file/openedBook";
import { workbookFile, type WorkbookFile } from "../../src/preview/file/workbookFile";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import { isCellFault } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";
import { SMALL } from "../workbook/contractSheets";
import { fullBook } from "../workbook/package/fullBook";
import { recalculated, skipsLibreOffice, titled } from "../workbook/package/libreOffice";
import { problemsOf } from "../workbook/package/soundness";
import { PLAIN_STYLES, plainBook, zipOf } from "../workbook/package/zipParts";
import { filesHere } from "./files";
import { fixtureSet, newBook } from "./support";

const { metadata } = fixtureSet();
const texts = formulaTexts("WARMBACK", metadata);

let book: SheetBook;
let file: WorkbookFile;
beforeEach(() => {
  book = newBook();
  file = workbookFile(book, texts, filesHere());
});
afterEach(() => book.dispose());

const partsOf = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));

const at = (sheet: string, address: string) => ({ sheet, ...parseCells(address)! });

async function put(sheet: string, cells: Readonly<Record<string, string | number | null>>): Promise<void> {
  book.write(Object.entries(cells).map(([address, content]) => ({ ...at(sheet, address), content })));
  await book.whenCalculated();
}

const valueAt = (sheet: string, address: string): unknown => {
  const value = book.read(at(sheet, address)).values[0]?.[0] ?? null;
  return isCellFault(value) ? value.code : value;
};

const cellIn = (text: string, address: string): string | undefined =>
  new RegExp(`<c r="${address}"[^>]*?(?:/>|>.*?</c>)`, "s").exec(text)?.[0];

/** Paths of parts that differ, left out or new. */
const changedIn = (before: Record<string, string>, after: Record<string, string>): readonly string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])].filter((path) => before[path] !== after[path]).sort();

describe("A workbook with every kind of part", () => {
  const original = zipOf(fullBook());
  const before = partsOf(original);

  test("comes back byte for byte where nothing was changed", async () => {
    await file.open(original);
    expect(partsOf(await file.savedBytes())).toEqual(before);
  });

  test("is the same part by part after a save with one changed cell, but for the cells that follow from it", async () => {
    await file.open(original);
    await put("Loop", { A2: 45 });
    const after = partsOf(await file.savedBytes());
    expect(changedIn(before, after)).toEqual([
      "[Content_Types].xml",
      "_rels/.rels",
      "_xmlsignatures/_rels/origin.sigs.rels",
      "_xmlsignatures/origin.sigs",
      "_xmlsignatures/sig1.xml",
      "xl/workbook.xml",
      "xl/worksheets/sheet2.xml",
    ]);
    const sheet = before["xl/worksheets/sheet2.xml"]!;
    const expected = [
      ['<c r="A2" s="1"><v>40</v></c>', '<c r="A2" s="1"><v>45</v></c>'],
      ["</f><v>320</v>", "</f><v>330</v>"],
      ["<f>SUM(A2:A4)</f><v>150</v>", "<f>SUM(A2:A4)</f><v>155</v>"],
      ['<f>INDIRECT("A"&amp;2)</f><v>40</v>', '<f>INDIRECT("A"&amp;2)</f><v>45</v>'],
      ["A2:A4*2</f><v>80</v>", "A2:A4*2</f><v>90</v>"],
    ].reduce((text, [from = "", to = ""]) => text.replace(from, to), sheet);
    expect(after["xl/worksheets/sheet2.xml"]).toBe(expected);
    expect(after["xl/workbook.xml"]).toBe(
      before["xl/workbook.xml"]!.replace('iterateCount="50"/>', 'iterateCount="50" fullCalcOnLoad="1"/>'),
    );
    expect(problemsOf(partsOf(await file.savedBytes()))).toEqual([]);
  });

  test("lists what can't be read, and how Excel calculates it", async () => {
    const { unread, differing, settings } = await file.open(original);
    expect(unread.map(({ why, cells }) => [why, cells.length])).toEqual([["references to other workbooks", 2]]);
    expect(settings).toEqual([expect.stringMatching(/^Excel calculates its circles up to 50 times/)]);
    expect(differing).toEqual([]);
  });

  test("shows neither hidden rows nor hidden columns, and knows its protected sheet", async () => {
    await file.open(original);
    const loop = book.data().sheets.find(({ name }) => name === "Loop");
    expect(loop?.hiddenRows).toEqual([23]);
    expect(loop?.hiddenColumns).toEqual([7]);
    expect(book.sheets().map((sheet) => `${sheet.name} ${sheet.visible} ${sheet.protected}`)).toEqual([
      "Prices true false",
      "Loop true true",
      "cfg false false",
      "Pivot true false",
      "Other book false false",
    ]);
  });

  test("takes a starter sheet, which stands behind its own sheets in the saved file", async () => {
    await file.open(original);
    const title = await previewWorkbook(book).insert(SMALL);
    await put(title, { B2: 55 });
    const after = partsOf(await file.savedBytes());
    expect(changedIn(before, after)).toEqual([
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/charts/chart2.xml",
      "xl/drawings/_rels/drawing2.xml.rels",
      "xl/drawings/drawing2.xml",
      "xl/styles.xml",
      "xl/workbook.xml",
      "xl/worksheets/_rels/sheet6.xml.rels",
      "xl/worksheets/sheet6.xml",
    ]);
    expect(cellIn(after["xl/worksheets/sheet6.xml"]!, "B2")).toContain("<v>55</v>");
    expect(after["xl/workbook.xml"]).toContain(`<definedName name="small_flow">'Small sheet'!$B$2</definedName>`);
    const again = await openedBook(await file.savedBytes(), texts);
    expect(again.facts.sheets.map(({ name }) => name)).toEqual([
      ...["Prices", "Loop", "cfg", "Pivot", "Other book"],
      "Small sheet",
    ]);
  });

  test.skipIf(skipsLibreOffice)(
    titled("opens in LibreOffice after a save, with the values that the page showed"),
    async () => {
      await file.open(original);
      await put("Loop", { A2: 45, C3: "=A3*4", B2: 250 });
      const saved = await file.savedBytes();
      const theirs = await openedBook(recalculated(saved, "xlsm"), texts);
      const loop = theirs.data.sheets.find(({ name }) => name === "Loop");
      for (const [address, value] of Object.entries({ A2: 45, C2: 340, C3: 200, C4: 370, E2: 155, F2: 125, A6: 90 })) {
        const { row, column } = parseCells(address)!;
        const cell = loop?.cells.find((one) => one.row === row && one.column === column);
        expect([address, cell?.value]).toEqual([address, value]);
        expect([address, valueAt("Loop", address)]).toEqual([address, value]);
      }
    },
    180_000,
  );
});

const SHEET = `<sheetData><row r="1"><c r="A1"><v>10</v></c><c r="B1"><f>A1*2</f><v>20</v></c><c r="C1" s="1"><f>B1+1</f><v>21</v></c></row><row r="2"><c r="A2" t="inlineStr"><is><t>note</t></is></c><c r="B2"><f>[1]Prices!B4*A1</f><v>190</v></c><c r="C2"><f>B2+1</f><v>191</v></c></row><row r="3"><c r="A3" cm="1"><f t="array" ref="A3:A5">_xlfn.SEQUENCE(3)*A1</f><v>10</v></c></row><row r="4"><c r="A4"><v>20</v></c></row><row r="5"><c r="A5"><v>30</v></c></row></sheetData>`;

const small = (): Uint8Array => zipOf(plainBook({ S: SHEET, T: "<sheetData/>" }));
const saved = async (): Promise<string> => partsOf(await file.savedBytes())["xl/worksheets/sheet1.xml"]!;

describe("A save of an opened file", () => {
  test("writes values, formulas, texts, empty cells and number formats that were changed", async () => {
    await file.open(small());
    await put("S", { A1: null, A2: "=not text", B1: "=A3+1", D9: "new", D10: "=WARMBACK.TEST.DOUBLE(4)" });
    const text = await saved();
    expect(cellIn(text, "A1")).toBeUndefined();
    expect(cellIn(text, "B1")).toBe('<c r="B1"><f>A3+1</f><v>1</v></c>');
    expect(cellIn(text, "C1")).toBe('<c r="C1" s="1"><f>B1+1</f><v>2</v></c>');
    expect(cellIn(text, "D9")).toContain('<t xml:space="preserve">new</t>');
    expect(cellIn(text, "D10")).toBe('<c r="D10"><f>WARMBACK.TEST.DOUBLE(4)</f><v>8</v></c>');
  });

  test("gives a cell its number format alone", async () => {
    const opened = await openedBook(small(), texts);
    const [first, ...rest] = opened.data.sheets;
    const cells = first!.cells.map((cell) =>
      cell.row === 0 && cell.column === 0 ? { ...cell, format: "0.000" } : cell,
    );
    const now = { ...opened.data, sheets: [{ ...first!, cells }, ...rest] };
    const changes = await fileChanges(opened, now, texts);
    expect(changes.cells).toEqual([{ sheet: "S", row: 0, column: 0, format: "0.000" }]);
  });

  test("keeps the result of a cell that can't be read, lists it, and has Excel calculate on opening", async () => {
    await file.open(small());
    await put("S", { A1: 11 });
    const { bytes, sentences } = await file.save();
    const parts = partsOf(bytes);
    const text = parts["xl/worksheets/sheet1.xml"]!;
    expect(cellIn(text, "B2")).toBe('<c r="B2"><f>[1]Prices!B4*A1</f><v>190</v></c>');
    expect(cellIn(text, "C2")).toBe('<c r="C2"><f>B2+1</f><v>191</v></c>');
    expect(sentences).toEqual([
      "1 cell that can't be worked out here keeps its old result until Excel opens the file: S!B2.",
    ]);
    expect(parts["xl/workbook.xml"]).toContain('fullCalcOnLoad="1"');
  });

  test("gives an array its new results, and leaves its formula", async () => {
    await file.open(small());
    await put("S", { A1: 11 });
    const text = await saved();
    expect(cellIn(text, "A3")).toContain('ref="A3:A5">_xlfn.SEQUENCE(3)*A1</f><v>11</v>');
    expect([cellIn(text, "A4"), cellIn(text, "A5")]).toEqual(['<c r="A4"><v>22</v></c>', '<c r="A5"><v>33</v></c>']);
  });

  test("leaves a formula as the file has it where the page reads it otherwise", async () => {
    const cells = `<sheetData><row r="1"><c r="A1"><v>3</v></c><c r="B1"><f>SUM(S:T!A1)</f><v>3</v></c></row></sheetData>`;
    await file.open(zipOf(plainBook({ S: cells, T: "<sheetData/>" })));
    await put("T", { A1: 4 });
    expect(cellIn(await saved(), "B1")).toBe('<c r="B1"><f>SUM(S:T!A1)</f><v>7</v></c>');
  });

  test("writes the results of our functions that the file showed as errors, and what follows from them", async () => {
    const cells = `<sheetData><row r="1"><c r="A1" t="e"><f>_xldudf_WARMBACK_TEST_DOUBLE(4)</f><v>#NAME?</v></c><c r="B1" t="e"><f>A1+1</f><v>#NAME?</v></c><c r="C1"><f>1+1</f><v>5</v></c></row></sheetData>`;
    const { differing } = await file.open(zipOf(plainBook({ S: cells })));
    expect(differing.map(({ address }) => address)).toEqual(["S!A1", "S!B1", "S!C1"]);
    const text = await saved();
    expect(cellIn(text, "A1")).toBe('<c r="A1"><f>_xldudf_WARMBACK_TEST_DOUBLE(4)</f><v>8</v></c>');
    expect(cellIn(text, "B1")).toBe('<c r="B1"><f>A1+1</f><v>9</v></c>');
    // Not ours, and no input of it changed: it keeps what the file holds.
    expect(cellIn(text, "C1")).toBe('<c r="C1"><f>1+1</f><v>5</v></c>');
  });
});

test("Changes count as unsaved from the first one on, until the next save or opening", async () => {
  expect(file.isEdited()).toBe(false);
  await put("Sheet1", { A1: 7 });
  expect(file.isEdited()).toBe(true);
  await file.open(small());
  expect(file.isEdited()).toBe(false);
  await previewWorkbook(book).insert(SMALL);
  expect(file.isEdited()).toBe(true);
  await file.save();
  expect(file.isEdited()).toBe(false);
  await put("S", { A1: 12 });
  expect(file.isEdited()).toBe(true);
});

test.each(['0.0 "days"', '0.0 "my head"', "[Red]0.0", "[$SAR] 0.0", "0.0\\ \\m", "yyyy\\-mm\\-dd", "[h]:mm"])(
  "A number in the format %s stays a number, with its format",
  async (format) => {
    const code = format.replaceAll('"', "&quot;");
    const sheet = `<sheetData><row r="1"><c r="A1" s="1"><v>45000.5</v></c><c r="B1"><f>A1*2</f><v>90001</v></c></row></sheetData>`;
    const numFmt = `<numFmts count="1"><numFmt numFmtId="164" formatCode="${code}"/></numFmts><fonts`;
    const styles = PLAIN_STYLES.replace("<fonts", numFmt).replace('xf numFmtId="2"', 'xf numFmtId="164"');
    const parts = plainBook({ S: sheet }, { styles });
    const { differing } = await file.open(zipOf(parts));
    expect(differing).toEqual([]);
    expect(valueAt("S", "A1")).toBe(45_000.5);
    await put("S", { C1: "=A1+1" });
    const text = await saved();
    expect(cellIn(text, "A1")).toBe('<c r="A1" s="1"><v>45000.5</v></c>');
    expect(text).toContain("<v>45001.5</v>");
  },
);

test("A LAMBDA without anything in it is kept as the file has it, and the file opens", async () => {
  const cells = `<sheetData><row r="1"><c r="A1"><f>_xlfn.LAMBDA()</f><v>3</v></c><c r="B1"><f>A1+1</f><v>4</v></c></row></sheetData>`;
  const { unread } = await file.open(zipOf(plainBook({ S: cells })));
  expect(unread.map(({ why }) => why).join()).toContain("a LAMBDA without a calculation");
  expect([valueAt("S", "A1"), valueAt("S", "B1")]).toEqual([3, 4]);
});

describe("A file that can't be opened", () => {
  test.each<[title: string, bytes: () => Uint8Array, message: RegExp]>([
    ["no zip", () => new TextEncoder().encode("not a workbook"), /no \.xlsx workbook\.$/],
    ["a zip without a workbook", () => zipOf({ "a.txt": "a" }), /holds no Excel workbook\.$/],
    [
      "an old workbook",
      () => Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Array<number>(600).fill(0)),
      /\.$/,
    ],
    ["a damaged sheet", () => zipOf(plainBook({ S: "<sheetData><row" })), /damaged.*\.$/],
  ])("%s is refused with a sentence, and the open workbook stays", async (_title, bytes, message) => {
    await put("Sheet1", { A1: 7 });
    await expect(file.open(bytes())).rejects.toThrow(message);
    expect(valueAt("Sheet1", "A1")).toBe(7);
    expect(partsOf(await file.savedBytes())["xl/worksheets/sheet1.xml"]).toContain("<v>7</v>");
  });

  test("an ended opening leaves the workbook as it was, at whatever step", async () => {
    await put("Sheet1", { A1: 7 });
    let steps = 0;
    for (let end = 1; ; end++) {
      const ending = new AbortController();
      steps = 0;
      const turn = async (): Promise<void> => {
        if (++steps === end) ending.abort();
      };
      const work = { signal: ending.signal, slices: { slice: -1, turn } };
      if (end > 8) break;
      await expect(file.open(zipOf(fullBook()), work)).rejects.toThrow();
      expect(valueAt("Sheet1", "A1")).toBe(7);
      expect(book.sheets()).toHaveLength(1);
    }
  });
});

test("A workbook of the page's own is saved from a package of our own", async () => {
  const { sheet, names } = starterData(SMALL, SMALL.name, new Set());
  book.load({ sheets: [sheet], names });
  await book.whenCalculated();
  const bytes = await file.savedBytes();
  expect(problemsOf(partsOf(bytes))).toEqual([]);
  const again = await openedBook(bytes, texts);
  expect(again.data.sheets.map(({ name }) => name)).toEqual(["Small sheet"]);
  expect(again.data.names.map(({ name }) => name)).toEqual(["small_flow", "small_block"]);
});

test("What differs at every calculation is listed apart, with what follows from it", async () => {
  const cells = `<sheetData><row r="1"><c r="A1"><f>TODAY()</f><v>40000</v></c><c r="B1"><f>A1+1</f><v>40001</v></c><c r="C1"><f>1+1</f><v>3</v></c></row></sheetData>`;
  const { differing, changing } = await file.open(zipOf(plainBook({ S: cells })));
  expect(differing.map(({ address }) => address)).toEqual(["S!C1"]);
  expect(changing.map(({ address }) => address)).toEqual(["S!A1", "S!B1"]);
});

test("Circles that Excel calculates step by step keep their results", async () => {
  const cells = `<sheetData><row r="1"><c r="A1"><f>B1/2+1</f><v>2</v></c><c r="B1"><f>A1</f><v>2</v></c><c r="C1"><f>A1*3</f><v>6</v></c></row></sheetData>`;
  const book1 = '<calcPr iterate="1"/>';
  const { unread, differing } = await file.open(zipOf(plainBook({ S: cells }, { book: book1 })));
  expect(unread.map(({ why, cells: kept }) => [why, kept.length])).toEqual([
    ["circles that Excel calculates step by step", 3],
  ]);
  expect(differing).toEqual([]);
  expect(valueAt("S", "C1")).toBe(6);
});

test("Cells in the last column and sheets of many cells open like others", async () => {
  const far = Array.from(
    { length: 400 },
    (_, row) => `<row r="${row * 100 + 1}"><c r="XFD${row * 100 + 1}"><v>${row}</v></c></row>`,
  );
  const began = performance.now();
  await file.open(zipOf(plainBook({ S: `<sheetData>${far.join("")}</sheetData>` })));
  expect(valueAt("S", "XFD39901")).toBe(399);
  const row = (at: number): string =>
    `<row r="${at}">${Array.from(
      { length: 130 },
      (_, column) => `<c r="${String.fromCharCode(65 + (column % 26))}${at}"><v>1</v></c>`,
    )
      .slice(0, 26)
      .join("")}</row>`;
  const many = Array.from({ length: 6_000 }, (_, at) => row(at + 1));
  await file.open(zipOf(plainBook({ S: `<sheetData>${many.join("")}</sheetData>` })));
  expect(valueAt("S", "Z6000")).toBe(1);
  expect(performance.now() - began).toBeLessThan(60_000);
});
