/** The sheet "Alternatives": its solar day by integration, its prices at break-even, its heat pump at the tested points. */
import { describe, expect, test } from "vitest";
import { alternatives } from "../../src/sheets/alternatives";
import type { SheetCell, StarterSheet } from "../../src/sheets/sheet";
import { rowsOf, withInputs } from "./calculated";

const WAYS = ["Electric heater", "Pool heat pump", "Unglazed solar, gas", "Cover, gas", "Recovered heat, gas"] as const;

/** Rows of all labels are by the last line of a label: the table of present values ends the sheet. */
const values = async (sheet: StarterSheet) => {
  const rows = await rowsOf(sheet);
  return (way: string, column: number): number => Number(rows.get(way)?.[column]);
};

/** Other values in a column of a month's climate. */
const withClimate = (column: string, value: number): StarterSheet => {
  const cells: Record<string, SheetCell> = { ...alternatives.cells };
  const head = Object.entries(cells).find(([, { content }]) => content === "air (°F)")?.[0] ?? "";
  const first = Number(head.slice(1)) + 1;
  for (let row = first; row < first + 12; row++) {
    const place = `${column}${row}`;
    cells[place] = { ...(cells[place] as SheetCell), content: value };
  }
  return { ...alternatives, cells };
};

describe("Alternatives", () => {
  test("reckons every way against gas, with a range, and names the cheapest", async () => {
    const rows = await rowsOf(alternatives);
    const costs = new Map(["Gas heater", ...WAYS].map((way) => [way, Number(rows.get(way)?.[1])]));
    const cheapest = [...costs].sort(([, a], [, b]) => a - b)[0]?.[0];
    expect(rows.get("Costs least over the years")?.[1]).toBe(cheapest);
    for (const way of WAYS) {
      const [cost, saves, range] = [1, 2, 3].map((column) => Number(rows.get(way)?.[column])) as [
        number,
        number,
        number,
      ];
      expect(saves).toBeCloseTo((costs.get("Gas heater") ?? 0) - cost, 6);
      expect(range).toBeGreaterThan(0);
    }
    expect(rows.get("Gas heater")?.[2]).toBe("base");
  });

  test.each([
    ["Pool heat pump", "Natural gas", 4],
    ["Cover, gas", "Natural gas", 4],
    ["Recovered heat, gas", "Natural gas", 4],
    ["Pool heat pump", "Electricity", 5],
    ["Electric heater", "Electricity", 5],
  ] as const)("%s saves nothing at the break-even price of %s", async (way, price, column) => {
    const before = await values(alternatives);
    const at = await values(withInputs(alternatives, { [price]: before(way, column) }));
    expect(Math.abs(at(way, 2))).toBeLessThan(0.01);
  });

  test("spreads the sun as a sum over the hours of a half sine does", async () => {
    const [air, swing, wind, sun] = [74, 20, 7, 1500];
    let sheet = withClimate("B", air);
    for (const [column, value] of [
      ["C", swing],
      ["E", wind],
      ["F", sun],
    ] as const) {
      const cells = { ...sheet.cells };
      for (const [place, cell] of Object.entries(withClimate(column, value).cells))
        if (place.startsWith(column) && cell.style === "Input" && cell.content === value) cells[place] = cell;
      sheet = { ...sheet, cells };
    }
    const rows = await rowsOf(sheet);
    // The last table of the months is that of the heat: the one before is read through its use of April's collectors.
    const april = rows.get("Apr") ?? [];
    const v = wind * 0.44704 * 0.4;
    const [gain, film] = [0.85 - 0.04 * v, 11.56 + 4.37 * v];
    const day = 105;
    const tilt = (23.45 * Math.sin((2 * Math.PI * (284 + day)) / 365) * Math.PI) / 180;
    const N = (24 / Math.PI) * Math.acos(-Math.tan((30 * Math.PI) / 180) * Math.tan(tilt));
    const H = sun * 3.154591;
    let got = 0;
    const steps = 100_000;
    for (let i = 0; i < steps; i++) {
      const G = ((Math.PI * H) / (2 * N)) * Math.sin((Math.PI * (i + 0.5)) / steps);
      const q = gain * (G + 0.95 * -60) - (film * (82 - (air + swing / 4))) / 1.8;
      got += (Math.max(0, q) * N) / steps;
    }
    const heat = (800 * (got / 3.154591) * 30) / 1e6;
    expect(Number(april[1])).toBeGreaterThan(heat);
    expect(Number(april[2]) / heat).toBeCloseTo(1, 3);
  });

  test("gives the heat pump the COP of its tested point at that air", async () => {
    // Air by day is the mean and a quarter of the swing.
    const sheet = withClimate("B", 75);
    const cells = { ...sheet.cells };
    for (const [place, cell] of Object.entries(cells))
      if (
        cell.style === "Input" &&
        /^[CD]\d+$/.test(place) &&
        Number(place.slice(1)) >= 30 &&
        Number(place.slice(1)) < 50
      )
        cells[place] = { ...cell, content: place.startsWith("C") ? 20 : 0.8 };
    const rows = await rowsOf({ ...sheet, cells });
    expect(Number(rows.get("Apr")?.[4])).toBeCloseTo(5.9, 9);
  });
});
