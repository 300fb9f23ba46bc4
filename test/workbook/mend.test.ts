import { describe, expect, test } from "vitest";
import { findDamage } from "../../src/workbook/mend/damage";
import { mendCells, type MendOutcome } from "../../src/workbook/mend/mend";
import type { CellWrite, Workbook } from "../../src/workbook/port";
import type { Engine } from "../../src/workbook/reader/prepare";
import { sessionLog } from "../../src/workbook/callLog";
import { at, fakePort, type GridCell } from "./fakeWorkbook";

const KNOWLEDGE = {
  known: new Set(["PIPE.HEADLOSS", "POOL.AREA"]),
  isSingle: () => true,
  mostArguments: () => undefined,
};

const ENGINE: Engine = {
  known: KNOWLEDGE.known,
  log: sessionLog(),
  call: () => ({ code: "#VALUE!", message: "bore: must be above 0 in, got 0 in" }),
};

const NAMELESS = { code: "#NAME?" };
const cell = (formula: string, value: GridCell["value"] = NAMELESS): GridCell => ({ formula, value });

/** A workbook that keeps what is written: calls by their proper names come to 1, those of BAD to #VALUE!. */
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
      recalculate: async () => undefined,
      write: async (writes) => {
        written.push(writes);
        for (const { sheet, row, column, content } of writes) {
          const formula = String(content);
          const value = formula.includes("UNKNOWN") ? NAMELESS : formula.includes("BAD") ? { code: "#VALUE!" } : 1;
          sheets.get(sheet)?.set(`${String(row)},${String(column)}`, { formula, value });
        }
      },
    },
  };
}

const mendAll = async (book: Workbook): Promise<readonly MendOutcome[]> =>
  mendCells(book, ENGINE, (await findDamage(book, KNOWLEDGE)).damaged);

const AREA = "=WARMBACK.POOL.AREA(B1)";
const LOST = "=_xldudf_WARMBACK_POOL_AREA(B1)";

describe("The list of damaged formulas", () => {
  test("holds each cell, its formula and the formula meant, and writes nothing", async () => {
    const { book, written } = writable({
      Loop: { A1: cell("=[2]!_xldudf_WARMBACK_POOL_AREA(B1)"), A2: cell("=SUM(B1:B9)", 4), B1: 3 },
      Pool: { C3: cell(LOST), C4: cell(AREA, 7) },
    });
    expect(await findDamage(book, KNOWLEDGE)).toEqual({
      damaged: [
        {
          address: at("Loop", "A1"),
          now: "=[2]!_xldudf_WARMBACK_POOL_AREA(B1)",
          meant: AREA,
          kind: "formula",
          notes: [],
        },
        { address: at("Pool", "C3"), now: LOST, meant: AREA, kind: "formula", notes: [] },
      ],
      unmendable: [],
    });
    expect(written).toEqual([]);
  });

  test("names the reason for each cell that can't be mended", async () => {
    const { book } = writable({
      Loop: { A1: cell("=_xldudf_WARMBACK_POOL_AREA(#REF!)"), A2: cell("=_xldudf_WARMBACK_NONE(1)", 0) },
    });
    const { damaged, unmendable } = await findDamage(book, KNOWLEDGE);
    expect(damaged).toEqual([]);
    expect(unmendable.map(({ address, why }) => [address, why])).toEqual([
      [at("Loop", "A1"), "an input is lost (#REF!): refer to it again"],
      [at("Loop", "A2"), "this edition has no function WARMBACK.NONE"],
    ]);
  });

  test("leaves a sound formula out that shows a value, even one that can't be read here", async () => {
    const { book } = writable({ Loop: { A1: cell(`${AREA}@@`, 4), A2: cell("=@WARMBACK.POOL.AREA(B1)", 4) } });
    expect(await findDamage(book, KNOWLEDGE)).toEqual({ damaged: [], unmendable: [] });
  });

  test("takes a sound formula that shows #NAME? as one to enter again, and leaves others that do", async () => {
    const { book } = writable({
      Loop: { A1: cell("=warmback.pool.area(B1)"), A2: cell("=UNKNOWN(B1)"), A3: cell('="WARMBACK.POOL.AREA("&x') },
    });
    const { damaged } = await findDamage(book, KNOWLEDGE);
    expect(damaged).toMatchObject([{ address: at("Loop", "A1"), kind: "again", meant: "=warmback.pool.area(B1)" }]);
  });

  test("takes a call typed as a text for a formula, but not one that repeats a formula elsewhere or a record's", async () => {
    const { book } = writable({
      Loop: {
        A1: "=WARMBACK.POOL.AREA(B2)",
        A2: " =warmback.pool.area( B1 )",
        A3: cell(AREA, 1),
        A4: "see WARMBACK.POOL.AREA(B1)",
      },
      Record: { A1: "Record of the calculation", B4: "=WARMBACK.POOL.AREA(B7)" },
    });
    const { damaged, unmendable } = await findDamage(book, KNOWLEDGE);
    expect(damaged).toMatchObject([{ address: at("Loop", "A1"), kind: "text", meant: "=WARMBACK.POOL.AREA(B2)" }]);
    expect(unmendable).toMatchObject([{ address: at("Loop", "A2"), why: "this text repeats the formula of Loop!A3" }]);
  });

  test("names the protected sheet as the reason, only where there is something to mend", async () => {
    const { book } = writable({ Loop: { A1: cell(LOST) }, Pool: { A1: cell("=SUM(B1)", 3) } }, ["Loop", "Pool"]);
    expect(await findDamage(book, KNOWLEDGE)).toEqual({
      damaged: [],
      unmendable: [
        { address: at("Loop", "A1"), now: LOST, why: "the sheet Loop is protected: take the protection off first" },
      ],
    });
  });
});

describe("Mending", () => {
  test("writes all cells at once and says what each gives now", async () => {
    const { book, written } = writable({
      Loop: {
        A1: cell(LOST),
        A2: cell("=_xldudf_WARMBACK_POOL_AREA(UNKNOWN)"),
        A3: cell("=_xldudf_WARMBACK_POOL_AREA(BAD)"),
      },
      Pool: { C3: "=WARMBACK.POOL.AREA(B9)" },
    });
    const outcomes = await mendAll(book);
    expect(written).toHaveLength(1);
    expect(written[0]?.map(({ content, fromText }) => [content, fromText])).toEqual([
      [AREA, undefined],
      ["=WARMBACK.POOL.AREA(UNKNOWN)", undefined],
      ["=WARMBACK.POOL.AREA(BAD)", undefined],
      ["=WARMBACK.POOL.AREA(B9)", true],
    ]);
    expect(outcomes.map((one) => one.outcome)).toEqual([
      { value: 1 },
      { failing: "#NAME?", message: "UNKNOWN can't be followed here" },
      { failing: "#VALUE!", message: "BAD can't be followed here" },
      { value: 1 },
    ]);
  });

  test("gives the call's own message where the host has none", async () => {
    const { book } = writable({ Loop: { A1: cell('=_xldudf_WARMBACK_POOL_AREA("BAD")') } });
    expect((await mendAll(book))[0]?.outcome).toEqual({
      failing: "#VALUE!",
      message: "bore: must be above 0 in, got 0 in",
    });
  });

  test("leaves a cell that was changed since the list was made", async () => {
    const { book, written } = writable({ Loop: { A1: cell(LOST), A2: cell(LOST) } });
    const { damaged } = await findDamage(book, KNOWLEDGE);
    await book.write([{ ...at("Loop", "A1"), content: "=1" }]);
    const outcomes = await mendCells(book, ENGINE, damaged);
    expect(written.at(-1)).toEqual([{ ...at("Loop", "A2"), content: AREA }]);
    expect(outcomes.map((one) => one.outcome)).toEqual([
      { value: 1 },
      { left: "it was changed since the list was made" },
    ]);
  });
});
