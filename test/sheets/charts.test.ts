/** The charts of the starter sheets: what they draw and where they are. */
import { describe, expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import { exchangerInquiry } from "../../src/sheets/exchangerInquiry";
import { poolLoop } from "../../src/sheets/poolLoop";
import { recoverySizing } from "../../src/sheets/recoverySizing";
import { refrigerantSide } from "../../src/sheets/refrigerantSide";
import type { SheetChart, StarterSheet } from "../../src/sheets/sheet";
import { parseCells } from "../../src/workbook/reader/reference";
import { isCellFault, type CellValue } from "../../src/workbook/port";
import { rowsOf, withInputs } from "./calculated";

const CHARTED: Readonly<Record<string, number>> = {
  "Recovery sizing": 2,
  "Exchanger inquiry": 1,
  "Pool loop": 1,
  "Refrigerant side": 1,
};

const area = (text: string) => {
  const found = parseCells(text);
  if (found === undefined) throw new Error(`${text} is no area`);
  return found;
};
type Box = ReturnType<typeof area>;

const meets = (a: Box, b: Box): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

const isWithin = (a: Box, b: Box): boolean =>
  a.row >= b.row &&
  a.row + a.rows <= b.row + b.rows &&
  a.column >= b.column &&
  a.column + a.columns <= b.column + b.columns;

test("charts belong to these sheets", () => {
  const counts = STARTER_SHEETS.flatMap(({ name, charts }) => (charts ? [[name, charts.length] as const] : []));
  expect(Object.fromEntries(counts)).toEqual(CHARTED);
});

describe.each(STARTER_SHEETS.filter(({ charts }) => charts !== undefined).map((sheet) => [sheet.name, sheet] as const))(
  "the charts of %s",
  (_, sheet) => {
    const charts = sheet.charts ?? [];

    test("cover no cell and no other chart, and are printed", () => {
      const places = charts.map(({ place }) => area(place));
      for (const [at, place] of places.entries()) {
        const covered = Object.keys(sheet.cells).filter((address) => meets(place, area(address)));
        expect(covered).toEqual([]);
        expect(places.filter((other, one) => one !== at && meets(place, other))).toEqual([]);
        expect(isWithin(place, area(sheet.print.area))).toBe(true);
      }
    });

    test("draw columns of cells that are there, equally long", () => {
      for (const { series } of charts)
        for (const { x, y } of series) {
          const [across, up] = [area(x), area(y)];
          expect([across.columns, up.columns]).toEqual([1, 1]);
          expect(up.rows).toBe(across.rows);
          for (let row = up.row; row < up.row + up.rows; row++)
            expect(sheet.cells[`${y.charAt(0)}${String(row + 1)}`]?.content).toBeDefined();
        }
    });

    test("name what is along their axes with its unit, and say what they show", () => {
      for (const { title, description, x, y } of charts) {
        expect(title).not.toBe("");
        expect(description).toMatch(/\.$/);
        expect(`${x} ${y}`).toMatch(/\(.+\)/);
      }
    });
  },
);

type Rows = ReadonlyMap<string, readonly CellValue[]>;

const number = (rows: Rows, label: string, column: number): number => {
  const value = rows.get(label)?.[column];
  if (typeof value !== "number") throw new Error(`${label} has no number: ${JSON.stringify(value)}`);
  return value;
};

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const POINTS = [1, 2, 3, 4, 5, 6, 7, 8];

describe("the rows that charts draw", () => {
  test("the loop's curves cross the pump's where pump and loop meet", async () => {
    const rows = await rowsOf(poolLoop);
    for (const [after, column] of [
      [1, 3],
      [2, 4],
    ] as const) {
      const flow = number(rows, "Flow where pump and loop meet", after);
      const over = (at: number): number =>
        number(rows, `Point ${String(at)} of the curves`, 2) -
        number(rows, `Point ${String(at)} of the curves`, column);
      const flowAt = (at: number): number => number(rows, `Point ${String(at)} of the curves`, 1);
      const at = POINTS.findIndex((point) => over(point + 1) < 0) + 1;
      expect(flowAt(at)).toBeLessThan(flow);
      expect(flowAt(at + 1)).toBeGreaterThan(flow);
    }
    // At the known flow the curve has the head that the parts take together there.
    const known = POINTS.find((point) => number(rows, `Point ${String(point)} of the curves`, 1) === 75) ?? 0;
    expect(number(rows, `Point ${String(known)} of the curves`, 4)).toBeCloseTo(
      number(rows, "Head lost at the known flow", 2),
      9,
    );
  });

  test("the months add up to the year, and their warmest mean is no warmer than its warmest water", async () => {
    const heatRows = new Map<string, readonly CellValue[]>();
    const poolRows = new Map<string, readonly CellValue[]>();
    const rows = await rowsOf(renamed(recoverySizing));
    for (const month of MONTHS) {
      heatRows.set(month, rows.get(`heat ${month}`) ?? []);
      poolRows.set(month, rows.get(`pool ${month}`) ?? []);
    }
    const sum = (column: number): number => MONTHS.reduce((all, month) => all + number(heatRows, month, column), 0);
    expect(sum(1)).toBeCloseTo(number(rows, "Back-up heat without recovery", 1), 6);
    expect(sum(3)).toBeCloseTo(number(rows, "Back-up heat with recovery", 1), 6);
    expect(sum(2)).toBeGreaterThan(0);
    const means = MONTHS.map((month) => number(poolRows, month, 2));
    expect(Math.max(...means)).toBeLessThanOrEqual(number(rows, "Warmest water with recovery", 1));
    for (const month of MONTHS) {
      expect(number(poolRows, month, 2)).toBeGreaterThanOrEqual(number(poolRows, month, 1));
      expect([3, 4].map((column) => number(poolRows, month, column))).toEqual([82, 88]);
    }
  });

  test("the streams along the exchanger end where the zones end, in both directions", async () => {
    for (const direction of ["counterflow", "parallel"]) {
      const rows = await rowsOf(withInputs(exchangerInquiry, { Direction: direction }));
      const ends = ["Gas inlet", "Dew point", "Bubble point", "Liquid outlet"];
      const heats = ends.map((end) => number(rows, end, 1));
      expect(heats).toEqual([...heats].sort((a, b) => a - b));
      expect(number(rows, "Gas inlet", 2)).toBeCloseTo(number(rows, "Hot gas enters at", 1), 9);
      expect(number(rows, "Liquid outlet", 2)).toBeCloseTo(number(rows, "Liquid leaves at", 1), 9);
      const [warmEnd, coldEnd] =
        direction === "counterflow" ? ["Gas inlet", "Liquid outlet"] : ["Liquid outlet", "Gas inlet"];
      expect(number(rows, warmEnd, 3)).toBeCloseTo(number(rows, "Water leaves at", 1), 9);
      expect(number(rows, coldEnd, 3)).toBeCloseTo(number(rows, "Entering water", 1), 9);
      for (const end of ends) expect(number(rows, end, 2)).toBeGreaterThan(number(rows, end, 3));
    }
  });

  test("a pressure that isn't there leaves a gap in the chart, and the table says none", async () => {
    // R-404A has its critical point at 161.7 °F: NIST REFPROP, as the ASHRAE handbook prints it (value from memory).
    const rows = await rowsOf(
      withInputs(refrigerantSide, { Refrigerant: "R-404A", "First temperature": 100, Step: 20 }),
    );
    const cool = rows.get("120") ?? [];
    expect([cool[5], cool[6]]).toEqual([cool[1], cool[2]]);
    const hot = rows.get("180") ?? [];
    expect(hot.slice(1, 3)).toEqual(["none", "none"]);
    expect(hot.slice(5, 7).map((value) => isCellFault(value) && value.code)).toEqual(["#N/A", "#N/A"]);
  });
});

/** Months come several times on the sheet: the drawn ones get labels of their own. */
function renamed(sheet: StarterSheet): StarterSheet {
  const cells = { ...sheet.cells };
  const kinds = ["heat", "pool"];
  (sheet.charts ?? []).forEach((chart: SheetChart, at) => {
    const { row, rows } = area(chart.series[0].x);
    for (let line = row + 1; line <= row + rows; line++) {
      const cell = cells[`A${String(line)}`];
      if (cell !== undefined)
        cells[`A${String(line)}`] = { ...cell, content: `${kinds[at] ?? ""} ${String(cell.content)}` };
    }
  });
  return { ...sheet, cells };
}
