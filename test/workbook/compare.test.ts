import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core";
import { compareSheets, compareWorkbooks } from "../../src/workbook/compare/compare";
import type { ComparedCell, ComparedSheet } from "../../src/workbook/compare/keyedCells";
import { readSide } from "../../src/workbook/compare/readSide";
import { storedFile } from "../../src/workbook/compare/storedSheets";
import { storedWorkbook } from "../../src/workbook/compare/storedWorkbook";
import { mendKnowledge } from "../../src/workbook/mend/knowledge";
import { parseCells } from "../../src/workbook/reader/reference";
import { plainBook, zipOf } from "./package/zipParts";
import { ENGINE, onPreview, type OnPreview } from "./previewEngine";

type Content = string | number | { readonly formula: string; readonly value: number };

const sheet = (name: string, cells: Readonly<Record<string, Content>>): ComparedSheet => ({
  name,
  cells: Object.entries(cells).map(([at, content]): ComparedCell => {
    const { row = 0, column = 0 } = parseCells(at) ?? {};
    const own = typeof content === "object" ? content : { formula: "", value: content };
    return { address: { sheet: name, row, column }, label: at, ...own, spilled: false, cautions: [] };
  }),
});

describe("A comparison of two sheets", () => {
  const before = sheet("Old", {
    A1: "Loop",
    A2: "Flow",
    B2: 40,
    C2: "gpm",
    A3: "Head lost",
    B3: { formula: "=B2*2", value: 80 },
    A4: "Depth",
    B4: 5,
  });

  test("names inputs and results that differ, by how much and in which share", () => {
    const after = sheet("New", {
      A1: "Loop",
      A2: "Flow",
      B2: 50,
      C2: "gpm",
      A3: "Head lost",
      B3: { formula: "=B2*2", value: 100 },
      A4: "Depth",
      B4: 5,
    });
    const found = compareSheets(before, after);
    expect(found.inputs).toMatchObject([{ label: "Flow", by: 10, share: 0.25, formulaDiffers: false }]);
    expect(found.results).toMatchObject([{ label: "Head lost", by: 20, share: 0.25 }]);
    expect([found.onlyBefore, found.onlyAfter]).toEqual([[], []]);
    expect(found.compared).toBe(4);
  });

  test("finds lines that moved, and lists those without a counterpart", () => {
    const after = sheet("New", {
      A1: "Loop",
      A3: "Pump",
      B3: 2,
      A4: "Flow",
      B4: 40,
      C4: "gpm",
      A7: "Head lost",
      B7: { formula: "=B4*2", value: 80 },
    });
    const found = compareSheets(before, after);
    expect(found.inputs).toEqual([]);
    expect(found.results).toEqual([]);
    expect(found.formulas.map(({ label }) => label)).toEqual(["Head lost"]);
    expect(found.onlyBefore.map(({ label }) => label)).toEqual(["Depth"]);
    expect(found.onlyAfter.map(({ label }) => label)).toEqual(["Pump"]);
  });

  test("is empty for a sheet and itself", () => {
    const { compared, ...rest } = compareSheets(before, before);
    expect(compared).toBe(4);
    expect(Object.values(rest).flat()).toEqual([]);
  });

  test("counts numbers to nine digits as the same, and tells a text from a number", () => {
    const other = sheet("New", { A1: "Loop", A2: "Flow", B2: 40 * (1 + 1e-10), C2: "gpm", A4: "Depth", B4: "5" });
    const { inputs } = compareSheets(before, other);
    expect(inputs.map(({ label, by }) => [label, by])).toEqual([["Depth", undefined]]);
  });

  test("names the sheets that an inquiry hasn't", () => {
    const found = compareWorkbooks([before, sheet("Bid", { A1: "x" })], [sheet("old", { A2: "Flow", B2: 41 })]);
    expect(found.sheetsBefore).toEqual(["Bid"]);
  });
});

describe("A comparison of calculated sheets", () => {
  let on: OnPreview;
  beforeAll(async () => {
    on = await onPreview("Slow", "Fast");
    for (const [name, flow] of [
      ["Slow", 40],
      ["Fast", 90],
    ] as const)
      await on.put(name, {
        A1: "Flow",
        B1: flow,
        A2: "Head lost",
        B2: '=WARMBACK.PIPE.HEADLOSS(B1,"2 in",100)',
        A4: "States",
        B4: '=WARMBACK.CYCLE.STATES("R-410A",45,B1+65)',
      });
  });
  afterAll(() => on.sheets.dispose());

  test("says which cautions came and went, and takes a spill for results", async () => {
    const [slow, fast] = [await readSide(on.book, ENGINE, ["Slow"]), await readSide(on.book, ENGINE, ["Fast"])];
    const found = compareWorkbooks(slow, fast);
    expect(found.inputs.map(({ label }) => label)).toEqual(["Flow"]);
    expect(found.raised.map(({ label, caution }) => [label, caution.code])).toContainEqual([
      "Head lost",
      "PIPE-FAST-WATER",
    ]);
    expect(found.cleared.map(({ caution }) => caution.code)).not.toContain("PIPE-FAST-WATER");
    expect(found.results.length).toBeGreaterThan(5);
    const back = compareWorkbooks(fast, slow);
    expect(back.cleared).toHaveLength(found.raised.length);
  });
});

test("A file is read with its stored values, its calls by their proper names and their cautions", async () => {
  const text = (value: string): string => `<is><t>${value}</t></is>`;
  const parts = plainBook({
    Loop:
      `<sheetData><row r="1"><c r="A1" t="inlineStr">${text("Flow")}</c><c r="B1"><v>90</v></c></row>` +
      `<row r="2"><c r="A2" t="inlineStr">${text("Head lost")}</c>` +
      `<c r="B2"><f>_xldudf_WARMBACK_PIPE_HEADLOSS(B1,"2 in",100)</f><v>11.5</v></c></row></sheetData>`,
  });
  const book = storedWorkbook(await storedFile(zipOf(parts), mendKnowledge(CATALOGUE)));
  const [side] = await readSide(book, ENGINE, ["Loop"]);
  const head = side?.cells.find(({ address }) => address.row === 1 && address.column === 1);
  expect(head).toMatchObject({ formula: '=WARMBACK.PIPE.HEADLOSS(B1,"2 in",100)', value: 11.5 });
  expect(head?.cautions.map(({ code }) => code)).toContain("PIPE-FAST-WATER");
  await expect(book.write([])).rejects.toThrow("isn't changed");
});
