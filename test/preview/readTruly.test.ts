/** Formulas of other people's workbooks: each is worked out as Excel does, or keeps the file's result and says so. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CellData } from "../../src/preview/file/bookData";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { openedBook } from "../../src/preview/file/openedBook";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { sessionLog } from "../../src/workbook/callLog";
import { isCellFault, type CellValue } from "../../src/workbook/port";
import { readCells } from "../../src/workbook/reader/read";
import { parseCells } from "../../src/workbook/reader/reference";
import { plainBook, rels, zipOf, type PartTexts } from "../workbook/package/zipParts";
import { fixtureSet, newBook } from "./support";

const { metadata } = fixtureSet();
const texts = formulaTexts("WARMBACK", metadata);

let book: SheetBook;
beforeAll(() => {
  book = newBook();
});
afterAll(() => book.dispose());

type Content = number | string | { readonly f: string; readonly v?: number | string; readonly attributes?: string };

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

function cellText(address: string, content: Content): string {
  if (typeof content === "number") return `<c r="${address}"><v>${content}</v></c>`;
  if (typeof content === "string") return `<c r="${address}" t="inlineStr"><is><t>${escaped(content)}</t></is></c>`;
  const { f, v, attributes = "" } = content;
  const type = typeof v === "string" ? ' t="str"' : "";
  const value = v === undefined ? "" : `<v>${escaped(String(v))}</v>`;
  return `<c r="${address}"${type}><f${attributes}>${escaped(f)}</f>${value}</c>`;
}

type Cells = Readonly<Record<string, Content>>;

/** Rows in order, as files hold them; `hidden` rows count from 1. */
function sheetText(cells: Cells, hidden: readonly number[] = [], rest = ""): string {
  const rows = new Map<number, [number, string][]>();
  for (const [address, content] of Object.entries(cells)) {
    const { row = 0, column = 0 } = parseCells(address) ?? {};
    rows.set(row, [...(rows.get(row) ?? []), [column, cellText(address, content)]]);
  }
  const lines = [...rows]
    .sort(([a], [b]) => a - b)
    .map(([row, line]) => {
      const texts = line.sort(([a], [b]) => a - b).map(([, text]) => text);
      return `<row r="${row + 1}"${hidden.includes(row + 1) ? ' hidden="1"' : ""}>${texts.join("")}</row>`;
    });
  return `<sheetData>${lines.join("")}</sheetData>${rest}`;
}

interface Made {
  readonly sheets: Readonly<Record<string, Cells>>;
  /** Names by their definition; "Sheet!name" is one of a sheet. */
  readonly names?: Readonly<Record<string, string>>;
  readonly hidden?: readonly number[];
  readonly book?: string;
  readonly parts?: PartTexts;
}

function workbook({ sheets, names = {}, hidden = [], book: more = "", parts = {} }: Made): Uint8Array {
  const tabs = Object.keys(sheets);
  const defined = Object.entries(names).map(([name, formula]) => {
    const [sheet, own] = name.includes("!") ? name.split("!") : [undefined, name];
    const local = sheet === undefined ? "" : ` localSheetId="${tabs.indexOf(sheet)}"`;
    return `<definedName name="${own}"${local}>${escaped(formula)}</definedName>`;
  });
  return zipOf(
    plainBook(
      Object.fromEntries(
        tabs.map((tab, at) => [tab, sheetText(sheets[tab]!, at === 0 ? hidden : [], parts[`after ${tab}`] as string)]),
      ),
      {
        book: `${defined.length === 0 ? "" : `<definedNames>${defined.join("")}</definedNames>`}${more}`,
        parts: Object.fromEntries(Object.entries(parts).filter(([path]) => path.includes("/"))),
      },
    ),
  );
}

const shown = (value: CellValue): unknown => (isCellFault(value) ? value.code : value);

interface Found {
  readonly at: (sheet: string, address: string) => unknown;
  readonly cell: (sheet: string, address: string) => CellData | undefined;
  readonly kept: readonly string[];
}

async function found(made: Made): Promise<Found> {
  const { data } = await openedBook(workbook(made), texts);
  book.load(data);
  await book.whenCalculated();
  const cell = (sheet: string, address: string): CellData | undefined => {
    const place = parseCells(address)!;
    return data.sheets
      .find(({ name }) => name === sheet)
      ?.cells.find(({ row, column }) => row === place.row && column === place.column);
  };
  return {
    cell,
    at: (sheet, address) => shown(book.read({ sheet, ...parseCells(address)! }).values[0]?.[0] ?? null),
    kept: data.sheets.flatMap(({ cells }) => cells.flatMap(({ kept }) => (kept === undefined ? [] : [kept.why]))),
  };
}

const LOOP: Cells = { A1: 120000, A2: 2400, A3: 30, B1: 1, B2: 2, B3: 3 };

/** A table "Loop" over D1:E4 of the first sheet: gpm and head, no totals. */
const TABLE = (sheet: string): PartTexts => ({
  [`after ${sheet}`]: '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
  "xl/worksheets/_rels/sheet1.xml.rels": rels([["rId1", "table", "../tables/table1.xml"]]),
  "xl/tables/table1.xml":
    '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Loop" displayName="Loop" ref="D1:E4" totalsRowShown="0"><autoFilter ref="D1:E4"/><tableColumns count="2"><tableColumn id="1" name="gpm"/><tableColumn id="2" name="head"/></tableColumns></table>',
});

const TABLE_CELLS: Cells = { D1: "gpm", E1: "head", D2: 10, D3: 20, D4: 40, E2: 1, E3: 2, E4: 3 };

describe("A formula that Excel works out so is read so", () => {
  test.each<[title: string, made: Made, sheet: string, address: string, value: unknown]>([
    [
      "a name that is a calculation",
      { sheets: { S: { ...LOOP, C1: { f: "Gpm+1", v: 41 } } }, names: { Gpm: "S!$A$2/60" } },
      "S",
      "C1",
      41,
    ],
    [
      "a name that is a calculation, in a call of ours",
      {
        sheets: { S: { ...LOOP, C1: { f: "_xldudf_WARMBACK_TEST_DOUBLE(Gpm)", v: 80 } } },
        names: { Gpm: "S!$A$2/60" },
      },
      "S",
      "C1",
      80,
    ],
    [
      "a name that is a constant",
      { sheets: { S: { ...LOOP, C1: { f: "A3*Rate", v: 2.475 } } }, names: { Rate: "0.0825" } },
      "S",
      "C1",
      2.475,
    ],
    [
      "a name that is a LAMBDA",
      {
        sheets: { S: { ...LOOP, C1: { f: "Tons(A1)", v: 10 } } },
        names: { Tons: "_xlfn.LAMBDA(_xlpm.btu,_xlpm.btu/12000)" },
      },
      "S",
      "C1",
      10,
    ],
    [
      "one of two names of a spelling that belong to single sheets",
      {
        sheets: { S: { A1: 40, B1: { f: "Flow*2", v: 80 } }, T: { A1: 60, B1: { f: "Flow*2", v: 120 } } },
        names: { "S!Flow": "S!$A$1", "T!Flow": "T!$A$1" },
      },
      "T",
      "B1",
      120,
    ],
    [
      "the other of two names of a spelling",
      {
        sheets: { S: { A1: 40, B1: { f: "Flow*2", v: 80 } }, T: { A1: 60, B1: { f: "Flow*2", v: 120 } } },
        names: { "S!Flow": "S!$A$1", "T!Flow": "T!$A$1" },
      },
      "S",
      "B1",
      80,
    ],
    [
      "a name of another sheet",
      {
        sheets: { S: { A1: 40, B1: { f: "T!Flow*2", v: 120 } }, T: { A1: 60 } },
        names: { Flow: "S!$A$1", "T!Flow": "T!$A$1" },
      },
      "S",
      "B1",
      120,
    ],
    [
      "the sum of a name of several areas",
      { sheets: { S: { A1: 10, A3: 20, C1: { f: "SUM(Two)", v: 30 } } }, names: { Two: "S!$A$1,S!$A$3" } },
      "S",
      "C1",
      30,
    ],
    ["the sum of a union", { sheets: { S: { A1: 10, A3: 20, C1: { f: "SUM((A1,A3))", v: 30 } } } }, "S", "C1", 30],
    [
      "a column that meets the formula's row",
      {
        sheets: { S: { B2: 20, B3: 60, B4: 30, D3: { f: "Flows*2", v: 120 } } },
        names: { Flows: "S!$B$2:$B$4" },
      },
      "S",
      "D3",
      120,
    ],
    [
      "a column outside the formula's row",
      { sheets: { S: { B2: 20, B3: 60, D9: { f: "B2:B3*2", v: "#VALUE!" } } } },
      "S",
      "D9",
      "#VALUE!",
    ],
    [
      "a row that meets the formula's column",
      { sheets: { S: { A1: 5, B1: 7, C1: 9, B4: { f: "ROUND(A1:C1,0)", v: 7 } } } },
      "S",
      "B4",
      7,
    ],
    [
      "a column in a call of ours that takes one value",
      { sheets: { S: { B2: 20, B3: 60, D3: { f: "_xldudf_WARMBACK_TEST_DOUBLE(B2:B3)", v: 120 } } } },
      "S",
      "D3",
      120,
    ],
    [
      "a column of a table",
      { sheets: { S: { ...TABLE_CELLS, G1: { f: "SUM(Loop[gpm])", v: 70 } } }, parts: TABLE("S") },
      "S",
      "G1",
      70,
    ],
    [
      "a table's cell of the row",
      { sheets: { S: { ...TABLE_CELLS, G3: { f: "Loop[[#This Row],[gpm]]*2", v: 40 } } }, parts: TABLE("S") },
      "S",
      "G3",
      40,
    ],
    [
      "a conditional sum over a table",
      {
        sheets: { S: { ...TABLE_CELLS, G1: { f: 'SUMIFS(Loop[gpm],Loop[head],">=2")', v: 60 } } },
        parts: TABLE("S"),
      },
      "S",
      "G1",
      60,
    ],
    [
      "the sum over several sheets",
      { sheets: { S: { A1: 1, C1: { f: "SUM(S:U!A1)", v: 7 } }, T: { A1: 2 }, U: { A1: 4 } } },
      "S",
      "C1",
      7,
    ],
    ["@ of a range", { sheets: { S: { ...LOOP, C2: { f: "_xlfn.SINGLE(A1:A3)+1", v: 2401 } } } }, "S", "C2", 2401],
    [
      "the intersection of two ranges",
      { sheets: { S: { ...LOOP, D9: { f: "A1:B2 B1:B3*10", v: 10 } } } },
      "S",
      "D9",
      "#VALUE!",
    ],
    ["the sum of an intersection", { sheets: { S: { ...LOOP, D9: { f: "SUM(A1:B2 B1:B3)", v: 3 } } } }, "S", "D9", 3],
    [
      "ranges without a common cell",
      { sheets: { S: { ...LOOP, D9: { f: "SUM(A1:A2 B1:B3)", v: "#NULL!" } } } },
      "S",
      "D9",
      "#NULL!",
    ],
    [
      "a result that was stored as an array",
      {
        sheets: {
          S: { ...LOOP, D1: { f: "A1:A3*2", v: 240000, attributes: ' t="array" ref="D1:D3"' }, D2: 4800, D3: 60 },
        },
      },
      "S",
      "D2",
      4800,
    ],
    [
      "LET with names of its own",
      { sheets: { S: { ...LOOP, C1: { f: "_xlfn.LET(_xlpm.x,A3,_xlpm.x*2)", v: 60 } } } },
      "S",
      "C1",
      60,
    ],
    [
      "a sum up to a corner that INDEX finds",
      { sheets: { S: { ...LOOP, C1: { f: "SUM(B1:INDEX(B1:B9,2))", v: 3 } } } },
      "S",
      "C1",
      3,
    ],
    [
      "a count of different values",
      { sheets: { S: { ...LOOP, C1: { f: "SUMPRODUCT(1/COUNTIF(B1:B3,B1:B3))", v: 3 } } } },
      "S",
      "C1",
      3,
    ],
    [
      "a branch that is a range",
      { sheets: { S: { ...LOOP, C1: { f: "SUM(IF(B1=1,B1:B3,A1:A3))", v: 6 } } } },
      "S",
      "C1",
      6,
    ],
    ["a sum of products", { sheets: { S: { ...LOOP, C1: { f: "SUMPRODUCT((B1:B3>1)*B1:B3)", v: 5 } } } }, "S", "C1", 5],
  ])("%s", async (_title, made, sheet, address, value) => {
    const { at, kept } = await found(made);
    expect(kept).toEqual([]);
    expect(at(sheet, address)).toEqual(value);
  });

  test("a number in a format that looks like a date's is the number", async () => {
    const styles = plainBook({})["xl/styles.xml"] as string;
    const own = styles
      .replace(
        "<fonts",
        '<numFmts count="1"><numFmt numFmtId="164" formatCode="0.0&quot; gpm/day&quot;"/></numFmts><fonts',
      )
      .replace(
        /<cellXfs.*<\/cellXfs>/s,
        '<cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="14" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>',
      );
    const sheet =
      '<sheetData><row r="1"><c r="A1" s="1"><v>40.5</v></c><c r="B1" s="2"><v>60000.25</v></c><c r="C1"><f>A1+B1</f><v>60040.75</v></c></row></sheetData>';
    const { data } = await openedBook(zipOf(plainBook({ S: sheet }, { styles: own })), texts);
    expect(data.sheets[0]?.cells.map(({ value }) => value)).toEqual([40.5, 60000.25, 60040.75]);
    book.load(data);
    await book.whenCalculated();
    expect(book.read({ sheet: "S", row: 0, column: 2, rows: 1, columns: 1 }).values).toEqual([[60040.75]]);
  });
});

describe("A formula that can't be read keeps the file's result", () => {
  test.each<[title: string, made: Made, address: string, value: unknown, why: RegExp]>([
    ["of another workbook", { sheets: { S: { A1: { f: "[1]Prices!B4*2", v: 19 } } } }, "A1", 19, /other workbooks/],
    [
      "over hidden rows",
      { sheets: { S: { A1: 10, A2: 20, A3: 30, B9: { f: "SUBTOTAL(109,A1:A3)", v: 40 } } }, hidden: [2] },
      "B9",
      40,
      /SUBTOTAL where rows are hidden/,
    ],
    [
      "of a spilled range",
      {
        sheets: {
          S: {
            A1: 1,
            E3: { f: "_xlfn.SEQUENCE(2)", v: 1, attributes: ' t="array" ref="E3:E4"' },
            E4: 2,
            G1: { f: "SUM(_xlfn.ANCHORARRAY(E3))", v: 3 },
          },
        },
      },
      "G1",
      3,
      /spilled range/,
    ],
    [
      "of a name of several areas outside a sum",
      { sheets: { S: { A1: 1, A3: 5, C1: { f: "LARGE(Two,1)", v: 5 } } }, names: { Two: "S!$A$1,S!$A$3" } },
      "C1",
      5,
      /several areas/,
    ],
    [
      "of a name that means another cell everywhere",
      { sheets: { S: { A1: 8, B2: { f: "Left+1", v: 9 } } }, names: { Left: "S!A1" } },
      "B2",
      9,
      /other cells in every cell/,
    ],
    [
      "with an unknown function",
      { sheets: { S: { A1: { f: "CUBEVALUE(1)", v: 6 } } } },
      "A1",
      6,
      /the function CUBEVALUE/,
    ],
    [
      "of a sheet with a name that every object has",
      { sheets: { S: { A1: { f: "'__proto__'!A1*2", v: 16 } }, ["__proto__"]: { A1: 8 } } },
      "A1",
      16,
      /name the engine keeps for itself/,
    ],
    [
      "of a calculation over ranges inside a sum",
      { sheets: { S: { ...LOOP, C2: { f: "SUM(B1:B3*2)", v: 4 } } } },
      "C2",
      4,
      /meets with one row or column/,
    ],
    [
      "of a branch inside a sum of products",
      { sheets: { S: { ...LOOP, C9: { f: "SUMPRODUCT(IF(B1:B3>1,B1:B3))", v: "#VALUE!" } } } },
      "C9",
      "#VALUE!",
      /meets with one row or column/,
    ],
    [
      "of several cells in a formula of one",
      { sheets: { S: { ...LOOP, C9: { f: "_xlfn._xlws.SORT(B1:B3)+1", v: 2 } } } },
      "C9",
      2,
      /several cells in a formula of one/,
    ],
    [
      "of a what-if table",
      {
        sheets: {
          S: { A1: 2, B2: { f: "", v: 7, attributes: ' t="dataTable" ref="B2:B3" dt2D="0" dtr="0" r1="A1"' }, B3: 9 },
        },
      },
      "B3",
      9,
      /what-if tables/,
    ],
    [
      "of DOLLAR, whose text differs",
      { sheets: { S: { A1: { f: "DOLLAR(3)", v: "$3.00" } } } },
      "A1",
      "$3.00",
      /DOLLAR/,
    ],
  ])("%s", async (_title, made, address, value, why) => {
    const { at, kept, cell } = await found(made);
    expect(at("S", address)).toEqual(value);
    expect(kept).toEqual([expect.stringMatching(why)]);
    expect(cell("S", address)?.value).toEqual(value);
  });

  test("and what relies on it is worked out from that result", async () => {
    const { at } = await found({ sheets: { S: { A1: { f: "[1]Prices!B4", v: 19 }, A2: { f: "A1*2", v: 38 } } } });
    expect(at("S", "A2")).toBe(38);
  });

  test("and a total over it is kept too", async () => {
    const { kept } = await found({
      sheets: {
        S: { A1: 1, A2: { f: "SUBTOTAL(9,A1,[1]P!B1)", v: 2 }, A3: { f: "SUBTOTAL(9,A1:A2)", v: 1 } },
      },
    });
    expect(kept).toEqual(["references to other workbooks", "totals over totals that keep their result"]);
  });

  test("where its functions of dates count from 1904", async () => {
    const parts = plainBook({
      S: sheetText({ A1: 38000, B1: { f: "YEAR(A1)", v: 2008 }, C1: { f: "A1+1", v: 38001 } }),
    });
    const own = {
      ...parts,
      "xl/workbook.xml": (parts["xl/workbook.xml"] as string).replace("<sheets>", '<workbookPr date1904="1"/><sheets>'),
    };
    const { data } = await openedBook(zipOf(own), texts);
    expect(data.sheets[0]?.cells.map(({ kept, value }) => [kept?.why, value])).toEqual([
      [undefined, 38000],
      ["dates counted from 1904", 2008],
      [undefined, 38001],
    ]);
  });
});

describe("The panel reads an argument of ours", () => {
  const known = new Set(["TEST.DOUBLE"]);
  const engine = { known, call: (_id: string, [value]: readonly unknown[]) => ({ value: Number(value) * 2 }) };
  test.each<[title: string, made: Made, address: string, argument: object]>([
    [
      "through a name that is a calculation",
      {
        sheets: { S: { ...LOOP, C1: { f: "_xldudf_WARMBACK_TEST_DOUBLE(Gpm)", v: 80 } } },
        names: { Gpm: "S!$A$2/60" },
      },
      "C1",
      { value: 40 },
    ],
    [
      "through a name that is a constant",
      { sheets: { S: { C1: { f: "_xldudf_WARMBACK_TEST_DOUBLE(Rate)", v: 5 } } }, names: { Rate: "2.5" } },
      "C1",
      { value: 2.5 },
    ],
    [
      "through a name of the sheet's own",
      {
        sheets: { S: { A1: 40, B1: { f: "_xldudf_WARMBACK_TEST_DOUBLE(Flow)", v: 80 } }, T: { A1: 60 } },
        names: { Flow: "T!$A$1", "S!Flow": "S!$A$1" },
      },
      "B1",
      { value: 40 },
    ],
    [
      "through a table",
      {
        sheets: { S: { ...TABLE_CELLS, G3: { f: "_xldudf_WARMBACK_TEST_DOUBLE(Loop[[#This Row],[gpm]])", v: 40 } } },
        parts: TABLE("S"),
      },
      "G3",
      { value: 20 },
    ],
    [
      "through a column that meets its row",
      { sheets: { S: { B2: 20, B3: 60, D3: { f: "_xldudf_WARMBACK_TEST_DOUBLE(B2:B3)", v: 120 } } } },
      "D3",
      { value: 60 },
    ],
    [
      "or says that it can't, where a total is one",
      { sheets: { S: { A1: 3, C1: { f: "_xldudf_WARMBACK_TEST_DOUBLE(SUBTOTAL(9,A1))", v: 6 } } } },
      "C1",
      { unreadable: expect.any(String) as string },
    ],
  ])("%s", async (_title, made, address, argument) => {
    await found(made);
    const place = { sheet: "S", ...parseCells(address)! };
    const { formulas, values } = book.read(place);
    const cell = { address: place, formula: formulas[0]![0]!, value: values[0]![0]! };
    const [reading] = await readCells(previewWorkbook(book), [cell], { ...engine, log: sessionLog() });
    expect(reading?.calls.map(({ args }) => args)).toEqual([[argument]]);
    expect(reading?.stale).toBe(false);
  });
});
