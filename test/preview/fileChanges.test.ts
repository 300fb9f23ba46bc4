/** What a save writes of a large workbook is found with pauses between the cells. */
import { expect, test } from "vitest";
import { emptySheet, type CellData } from "../../src/preview/file/bookData";
import { fileChanges } from "../../src/preview/file/fileChanges";
import { followers } from "../../src/preview/file/followers";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { openedBook } from "../../src/preview/file/openedBook";
import { plainBook, zipOf } from "../workbook/package/zipParts";
import { fixtureSet } from "./support";

const ROWS = 60;
const texts = formulaTexts("WARMBACK", fixtureSet().metadata);

/** Each row adds 1 to the row above; the last one sums all. */
const cellsFrom = (first: number): readonly CellData[] => [
  { row: 0, column: 0, value: first },
  ...Array.from({ length: ROWS - 1 }, (_, at) => ({
    ...{ row: at + 1, column: 0 },
    formula: `=A${at + 1}+1`,
    value: first + at + 1,
  })),
  { row: 0, column: 2, formula: `=SUM(A1:A${ROWS})`, value: ROWS * first + (ROWS * (ROWS - 1)) / 2 },
  { row: 1, column: 2, formula: "=1+1", value: 2 },
];

const opened = async () => {
  const { known, facts } = await openedBook(zipOf(plainBook({ S: "<sheetData/>", T: "<sheetData/>" })), texts);
  const sheet = { ...emptySheet("S"), cells: cellsFrom(10) };
  return { known, facts, data: { sheets: [sheet, emptySheet("T")], names: [] } };
};

/** Counts how often work lets others have their turn. */
const counted = () => {
  let pauses = 0;
  return { pause: () => void pauses++, pauses: () => pauses };
};

test("finds what follows from a cell with a pause at each cell, names of sheets in any case", async () => {
  const { data, known } = await opened();
  const graph = await followers(data, known);
  const { pause, pauses } = counted();
  const counting = await followers(data, known, pause);
  const before = pauses();
  const found = await counting.of([{ sheet: "s", row: 0, column: 0 }]);
  expect(pauses() - before).toBe(ROWS + 1);
  expect([0, ROWS - 1].map((row) => found.has({ sheet: "S", row, column: 0 }))).toEqual([true, true]);
  expect([0, 1].map((row) => found.has({ sheet: "S", row, column: 2 }))).toEqual([true, false]);
  const none = await graph.of([{ sheet: "T", row: 0, column: 0 }]);
  expect(none.has({ sheet: "S", row: 0, column: 0 })).toBe(false);
});

test("writes the input and each result that follows from it once", async () => {
  const before = await opened();
  const sheet = { ...emptySheet("S"), cells: cellsFrom(20) };
  const { pause, pauses } = counted();
  const { cells, added, outdated } = await fileChanges(
    before,
    { sheets: [sheet, emptySheet("T")], names: [] },
    texts,
    pause,
  );
  expect(cells).toEqual([
    { sheet: "S", row: 0, column: 0, content: { kind: "value", value: 20 } },
    ...Array.from({ length: ROWS - 1 }, (_, at) => ({
      ...{ sheet: "S", row: at + 1, column: 0 },
      content: { kind: "result", value: 21 + at },
    })),
    { sheet: "S", row: 0, column: 2, content: { kind: "result", value: ROWS * 20 + (ROWS * (ROWS - 1)) / 2 } },
  ]);
  expect([added, outdated]).toEqual([[], []]);
  // Pairing each cell from both sides, sorting the pairs, reading the formulas, following them, writing.
  expect(pauses()).toBeGreaterThanOrEqual(5 * ROWS);
});
