import { describe, expect, test } from "vitest";
import { mendFormulas, mendFormula } from "../../src/workbook/mend/mend";
import type { CellWrite, Workbook } from "../../src/workbook/port";
import { at, fakePort, type GridCell } from "./fakeWorkbook";

const KNOWN = new Set(["PIPE.HEADLOSS", "POOL.AREA", "REFRIG.PRESSURE"]);

describe("A broken formula", () => {
  test.each([
    ["as a file keeps it", '=_xldudf_WARMBACK_PIPE_HEADLOSS(B3,"2 in",100)', '=WARMBACK.PIPE.HEADLOSS(B3,"2 in",100)'],
    ["behind a lost book's number", "=[2]!_xldudf_WARMBACK_POOL_AREA(B1,B2)", "=WARMBACK.POOL.AREA(B1,B2)"],
    ["behind a book's name", "=Book.xla!_xldudf_WARMBACK_POOL_AREA(B1,B2)", "=WARMBACK.POOL.AREA(B1,B2)"],
    [
      "behind a book's quoted path",
      "='C:\\Tools\\My Book.xlam'!_xldudf_WARMBACK_POOL_AREA(B1)",
      "=WARMBACK.POOL.AREA(B1)",
    ],
    ["behind a book's name, written with points", "=Book.xla!WARMBACK.POOL.AREA(B1,B2)", "=WARMBACK.POOL.AREA(B1,B2)"],
    ["under a file's prefix", "=_xlfn._xldudf_WARMBACK_POOL_AREA(B1)", "=WARMBACK.POOL.AREA(B1)"],
    [
      "at several depths",
      "=IFERROR([1]!_xldudf_WARMBACK_POOL_AREA(B1)*2,_xldudf_WARMBACK_POOL_AREA(B2))+'Pool loop'!B3",
      "=IFERROR(WARMBACK.POOL.AREA(B1)*2,WARMBACK.POOL.AREA(B2))+'Pool loop'!B3",
    ],
    ["in any case", "=_XLDUDF_warmback_pool_area(B1)", "=WARMBACK.POOL.AREA(B1)"],
    ["behind an @ and spaces", "= @_xldudf_WARMBACK_POOL_AREA( B1 )", "= @WARMBACK.POOL.AREA( B1 )"],
  ])("a broken formula is mended %s", (_what, formula, expected) => {
    expect(mendFormula(formula, KNOWN)).toBe(expected);
  });

  test.each([
    ["a proper call", "=WARMBACK.POOL.AREA(B1)"],
    ["a proper call in small letters", "=warmback.pool.area(B1)"],
    ["a function that isn't ours", "=_xldudf_OTHER_POOL_AREA(B1)"],
    ["one of ours that isn't known here", "=_xldudf_WARMBACK_NO_SUCH(B1)"],
    ["a quoted text", '="_xldudf_WARMBACK_POOL_AREA(B1)"&A1'],
    ["what isn't a formula", "_xldudf_WARMBACK_POOL_AREA(B1)"],
    ["a formula that can't be read", "=_xldudf_WARMBACK_POOL_AREA(B1)!!"],
  ])("mending leaves %s as it is", (_what, formula) => {
    expect(mendFormula(formula, KNOWN)).toBe(formula);
  });
});

const NAMELESS = { code: "#NAME?" };
const cell = (formula: string, value: GridCell["value"] = NAMELESS): GridCell => ({ formula, value });

/** A workbook that keeps what is written: calls by their proper names come to 1. */
function writable(
  cells: Parameters<typeof fakePort>[0],
  shut: readonly string[] = [],
): { readonly book: Workbook; readonly written: (readonly CellWrite[])[] } {
  const { book, sheets } = fakePort(cells);
  const written: (readonly CellWrite[])[] = [];
  return {
    written,
    book: {
      ...book,
      sheets: async () => (await book.sheets()).map((one) => ({ ...one, protected: shut.includes(one.name) })),
      write: async (writes) => {
        written.push(writes);
        for (const { sheet, row, column, content } of writes) {
          const formula = String(content);
          const value = formula.includes("UNKNOWN") ? NAMELESS : 1;
          sheets.get(sheet)?.set(`${String(row)},${String(column)}`, { formula, value });
        }
      },
    },
  };
}

describe("Mending a workbook", () => {
  test("writes all its broken cells at once and says which", async () => {
    const { book, written } = writable({
      Loop: { A1: cell("=[2]!_xldudf_WARMBACK_POOL_AREA(B1)"), A2: cell("=SUM(B1:B9)", 4), B1: 3 },
      Pool: { C3: cell("=_xldudf_WARMBACK_POOL_AREA(B1)"), C4: cell("=WARMBACK.POOL.AREA(B1)", 7) },
    });
    const mending = await mendFormulas(book, KNOWN);
    expect(mending).toEqual({ mended: [at("Loop", "A1"), at("Pool", "C3")], failing: [], protectedSheets: [] });
    expect(written).toEqual([
      [
        { ...at("Loop", "A1"), content: "=WARMBACK.POOL.AREA(B1)" },
        { ...at("Pool", "C3"), content: "=WARMBACK.POOL.AREA(B1)" },
      ],
    ]);
  });

  test("writes a proper formula again that shows #NAME?, and leaves others that do", async () => {
    const { book, written } = writable({
      Loop: { A1: cell("=warmback.pool.area(B1)"), A2: cell("=UNKNOWN(B1)"), A3: cell('="WARMBACK.POOL.AREA("&x') },
    });
    expect((await mendFormulas(book, KNOWN)).mended).toEqual([at("Loop", "A1")]);
    expect(written.flat().map(({ content }) => content)).toEqual(["=warmback.pool.area(B1)"]);
  });

  test("says which cells show #NAME? still", async () => {
    const { book } = writable({
      Loop: { A1: cell("=_xldudf_WARMBACK_POOL_AREA(UNKNOWN)"), A2: cell("=WARMBACK.POOL.AREA(1)") },
    });
    const mending = await mendFormulas(book, KNOWN);
    expect(mending.mended).toHaveLength(2);
    expect(mending.failing).toEqual([at("Loop", "A1")]);
  });

  test("leaves protected sheets alone and lists them, but only those with something to mend", async () => {
    const { book, written } = writable(
      {
        Loop: { A1: cell("=_xldudf_WARMBACK_POOL_AREA(B1)"), A2: cell("=_xldudf_WARMBACK_POOL_AREA(B2)") },
        Pool: { A1: cell("=SUM(B1)", 3) },
      },
      ["Loop", "Pool"],
    );
    expect(await mendFormulas(book, KNOWN)).toEqual({
      mended: [],
      failing: [],
      protectedSheets: [{ sheet: "Loop", cells: 2 }],
    });
    expect(written).toEqual([]);
  });

  test("mending a sound workbook writes nothing", async () => {
    const { book, written } = writable({ Loop: { A1: cell("=WARMBACK.POOL.AREA(B1)", 9), B1: "_xldudf_WARMBACK_" } });
    expect((await mendFormulas(book, KNOWN)).mended).toEqual([]);
    expect(written).toEqual([]);
  });
});
