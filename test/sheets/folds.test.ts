/** Rows of the starter sheets that fold: inputs and workings do, results and checks stay in sight. */
import { describe, expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import { heading, input, sheetOf, type Line } from "../../src/sheets/layout";
import type { StarterSheet } from "../../src/sheets/sheet";
import { parseCells } from "../../src/workbook/reader/reference";

/** First and last row, counted from 1. */
const spansOf = ({ groups = [] }: StarterSheet): readonly (readonly [number, number])[] =>
  groups.map((area) => {
    const { row, rows } = parseCells(area) ?? { row: 0, rows: 0 };
    return [row + 1, row + rows] as const;
  });

const sheetWith = (lines: readonly Line[]): StarterSheet =>
  sheetOf({ id: "x", name: "X", summary: "", widths: [], lines, named: {}, frozenRows: 1 });

test("a part folds with its groups, each up to the empty lines before the next heading", () => {
  const line = (key: string): Line => input(key, key, 1, "ft");
  const sheet = sheetWith([
    { ...heading("part", "Inputs"), fold: "starts" },
    heading("group", "Pool"),
    line("length"),
    line("width"),
    heading("group", "Pump"),
    line("flow"),
    { label: "" },
    { label: "", key: "end", fold: "ends" },
    heading("part", "Checks"),
    line("check"),
  ]);
  expect(sheet.groups).toEqual(["A2:A6", "A3:A4", "A6"]);
});

test("the head of a table is no group, and the rows that a spill or a chart takes fold with it", () => {
  const sheet = sheetWith([
    { ...heading("part", "Year"), fold: "starts" },
    { label: "month", labelStyle: "Heading 3", value: "heat", style: "Heading 3" },
    { key: "chart", label: "", spills: 3 },
    { label: "" },
  ]);
  expect(sheet.groups).toEqual(["A2:A6"]);
});

describe.each(STARTER_SHEETS.map((sheet) => [sheet.name, sheet] as const))("%s", (_, sheet) => {
  const spans = spansOf(sheet);
  const rowOf = (label: string): number =>
    Number(
      Object.entries(sheet.cells)
        .find(([, { content }]) => content === label)?.[0]
        .slice(1),
    );

  test("keeps its first column and its head in sight", () => {
    expect(sheet.frozenColumns).toBe(1);
    expect(sheet.frozenRows).toBe(4);
  });

  test("folds under headings, groups within parts", () => {
    expect(spans.length).toBeGreaterThan(3);
    for (const [first, last] of spans) {
      expect(sheet.cells[`A${first - 1}`]?.style).toMatch(/^Heading [23]$/);
      expect(first).toBeLessThanOrEqual(last);
      for (const [from, to] of spans)
        expect(to < first || from > last || (from <= first && last <= to) || (first <= from && to <= last)).toBe(true);
    }
  });

  test("folds every input, and neither results nor checks", () => {
    const folds = (row: number): boolean => spans.some(([first, last]) => first <= row && row <= last);
    const [results, about, checks] = [rowOf("Results"), rowOf("About"), rowOf("Checks")];
    for (const [address, { style }] of Object.entries(sheet.cells)) {
      const row = Number(address.replace(/\D/g, ""));
      if (row > results && row < about) expect(folds(row)).toBe(false);
      if (row >= checks) expect(folds(row)).toBe(false);
      if (row > about && row < checks && (style === "Input" || style === "Calculation")) expect(folds(row)).toBe(true);
    }
  });
});
