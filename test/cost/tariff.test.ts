import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellInput, CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";

const definition = compile(lookUp(CATALOGUE, "COST.TARIFF")!);
const run = (...raw: readonly CellInput[]) => evaluate(definition, raw, CATALOGUE);
const bill = (...raw: readonly CellInput[]): CellMatrix => {
  const out = run(...raw);
  if (isFault(out)) throw new Error(out.message);
  return out as CellMatrix;
};
const cell = (table: CellMatrix, row: string, column: string): number => {
  const place = (table[0] ?? []).findIndex((head) => String(head).replace(/ \(.*/, "") === column);
  return Number(table.find(([name]) => name === row)?.[place]);
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

/** Years without leap day by the weekday of their 1 January. */
const YEARS = { Monday: 2018, Tuesday: 2019, Friday: 2021, Saturday: 2022, Sunday: 2023 } as const;

/** The hours of a real year by the calendar of the language: month from 1, hour, day of the week from Sunday 0. */
const hoursOf = (year: number) =>
  Array.from({ length: 8760 }, (_, hour) => {
    const at = new Date(Date.UTC(year, 0, 1, hour));
    return { month: at.getUTCMonth() + 1, hour: at.getUTCHours(), day: at.getUTCDay() };
  });
/** Kilowatts that differ in every hour, without a random number. */
const LOAD = Array.from({ length: 8760 }, (_, hour) => 2 + Math.sin(hour * 0.7) + Math.cos(hour * 0.013));
const ROWS = LOAD.map((each) => [each]);

const TARIFF = [
  ["energy", 0.31, 6, 9, "weekdays", 16, 21],
  ["energy", 0.07, 1, 12, "all", 22, 6],
  ["energy", 0.12],
  ["demand", 14, 6, 9, "weekdays", 16, 21],
  ["demand", 6, 1, 12, "all", 0, 24, 0.8],
  ["fixed", 25],
  ["fixed", 5, 11, 2],
];

describe("COST.TARIFF", () => {
  test.each(Object.entries(YEARS))("bills a year that begins on a %s as the calendar does", (weekday, year) => {
    const hours = hoursOf(year).map((at, place) => ({ ...at, load: LOAD[place] ?? 0 }));
    const working = (day: number): boolean => day > 0 && day < 6;
    const peak = ({ month, hour, day }: (typeof hours)[number]): boolean =>
      month >= 6 && month <= 9 && working(day) && hour >= 16 && hour < 21;
    const table = bill(ROWS, TARIFF, null, weekday);
    const highest = Array.from({ length: 12 }, (_, month) =>
      Math.max(...hours.filter((at) => at.month === month + 1).map(({ load }) => load)),
    );
    for (const [place, name] of ["Jan", "Jun", "Sep", "Dec"].entries()) {
      const month = [1, 6, 9, 12][place] ?? 0;
      const own = hours.filter((at) => at.month === month);
      const energy = own.reduce(
        (all, at) => all + at.load * (peak(at) ? 0.31 : at.hour >= 22 || at.hour < 6 ? 0.07 : 0.12),
        0,
      );
      const summer = Math.max(0, ...own.filter(peak).map(({ load }) => load));
      const ratchet = Math.max(highest[month - 1] ?? 0, 0.8 * Math.max(...highest));
      expect(cell(table, name, "energy charge")).toBeCloseTo(energy, 6);
      expect(cell(table, name, "demand charge")).toBeCloseTo(14 * summer + 6 * ratchet, 6);
      expect(cell(table, name, "fixed charge")).toBe(month === 1 || month === 12 ? 30 : 25);
    }
    expect(cell(table, "Year", "energy")).toBeCloseTo(
      LOAD.reduce((all, each) => all + each, 0),
      6,
    );
    const months = table.slice(1, 13).reduce((all, row) => all + Number(row[6]), 0);
    expect(cell(table, "Year", "total")).toBeCloseTo(months, 6);
  });

  test("takes 24 rows as every day of the year", () => {
    const day = Array.from({ length: 24 }, (_, hour) => [hour]);
    const year = Array.from({ length: 8760 }, (_, hour) => [hour % 24]);
    expect(bill(day, TARIFF)).toEqual(bill(year, TARIFF));
  });

  test("bills what the ratchet holds where the month's peak is low", () => {
    const once = Array.from({ length: 8760 }, (_, hour) => [hour === 5000 ? 100 : 10]);
    const table = bill(once, [["energy", 0.1], ["demand", 1, 1, 12, "all", 0, 24, 0.6]]); // prettier-ignore
    expect([cell(table, "Jan", "billed demand"), cell(table, "Jul", "billed demand")]).toEqual([60, 100]);
  });

  test("gives demand no column value where nothing is charged for it", () => {
    expect(bill(ROWS, [["energy", 0.1]]).at(-1)?.[3]).toBe("");
  });

  test("refuses hours without a price, a wrong number of hours and negative energy", () => {
    expect(refusal(run(ROWS, [["energy", 0.1, 1, 12, "weekdays"]]))).toContain(
      "no energy price for Jan, weekends, 0 to 1 h",
    );
    expect(refusal(run(ROWS.slice(1), [["energy", 0.1]]))).toContain("expected 8,760 rows (a year) or 24");
    expect(
      refusal(
        run(
          ROWS.map(() => [-1]),
          [["energy", 0.1]],
        ),
      ),
    ).toContain("must be at least 0");
  });

  test("warns of demand by the hour only where demand is charged", () => {
    const codes = (tariff: CellMatrix) =>
      explain(definition, [ROWS.slice(0, 24), tariff], CATALOGUE, { steps: false }).cautions.map(({ code }) => code);
    expect(codes([["energy", 0.1], ["demand", 5]])).toContain("COST-HOURLY-DEMAND"); // prettier-ignore
    expect(codes([["energy", 0.1]])).not.toContain("COST-HOURLY-DEMAND");
  });
});
