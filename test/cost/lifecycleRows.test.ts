/** Rows of the life-cycle table about carbon, tariffs and price indices. */
import { assert, double, integer, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

const compiled = (id: string) => {
  const found = COMPILED.get(id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const run = (id: string, ...raw: readonly unknown[]) => evaluate(compiled(id), raw, CATALOGUE);
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

const ROWS = cellsIn("lifecycle.csv");
const of = (kind: string) => ROWS.filter((row) => row["kind"] === kind).map((row) => [wordIn(row, "id"), row] as const);
const numberAfter = (row: GoldenCells, name: string): number =>
  Number(new RegExp(`${name}=(-?[\\d.]+)`).exec(wordIn(row, "inputs"))?.[1]);
const near = (got: unknown, row: GoldenCells): void =>
  expect(Math.abs(Number(got) / numberIn(row, "value") - 1), String(got)).toBeLessThan(1e-7);

describe("Carbon dioxide saved", () => {
  test.each(of("carbon"))("is that of the gas and of the electricity at the stated factor: %s", (_, row) => {
    const gas = run(
      "COST.CARBON",
      `${numberAfter(row, "heat") / 10} MMBTU`,
      "natural gas",
      numberAfter(row, "efficiency"),
      "SI",
    );
    const kWh = numberAfter(row, "kWh saved");
    const factor = 1000 * numberAfter(row, "grid");
    const grid = run("COST.CARBON", `${Math.abs(kWh)} kWh`, "electric resistance", 1, "SI", factor);
    near(Number(gas) + Math.sign(kWh) * Number(grid), row);
  });

  test("has no grid factor of a fuel, and names its own", () => {
    expect(refusal(run("COST.CARBON", 1e6, "natural gas", 0.8, "US", 0.5))).toContain("gridFactor: is for electricity");
    const codes = (...raw: readonly unknown[]) =>
      explain(compiled("COST.CARBON"), raw as never, CATALOGUE, { steps: false }).cautions.map(({ code }) => code);
    expect(codes(1e6, "heat pump", 5, "US", 0.5)).toContain("COST-GRID-FACTOR");
    expect(codes(1e6, "heat pump", 5, "US", 0.5)).not.toContain("COST-GRID-AVERAGE");
    expect(codes(1e6, "heat pump", 5)).toContain("COST-GRID-AVERAGE");
  });
});

/** A year of hours that are 0 but for those given. */
const yearOf = (hours: Readonly<Record<number, number>>): CellMatrix =>
  Array.from({ length: 8760 }, (_, hour) => [hours[hour] ?? 0]);

const billed = (out: unknown, month: string, column: string): number => {
  if (isFault(out)) throw new Error(out.message);
  const table = out as CellMatrix;
  const place = (table[0] ?? []).findIndex((head) => String(head).replace(/ \(.*/, "") === column);
  return Number(table.find(([name]) => name === month)?.[place]);
};

/** First hours of the months. */
const STARTS = [0, 744, 1416, 2160, 2880, 3624, 4344, 5088, 5832, 6552, 7296, 8016];

describe("A tariff", () => {
  test.each(of("tariff").filter(([, row]) => wordIn(row, "quantity") === "energy_cost"))(
    "bills each band's energy at its own price: %s",
    (_, row) => {
      const bands = [...wordIn(row, "inputs").matchAll(/=(\d+) kWh at ([\d.]+)/g)].map(([, kWh, price]) => [
        Number(kWh),
        Number(price),
      ]);
      const hours = Object.fromEntries(bands.map(([kWh = 0], at) => [24 + 6 * at, kWh]));
      const tariff = bands.map(([, price = 0], at) => [
        "energy",
        price,
        1,
        12,
        "all",
        6 * at,
        at === bands.length - 1 ? 24 : 6 * at + 6,
      ]);
      near(billed(run("COST.TARIFF", yearOf(hours), tariff), "Year", "energy charge"), row);
    },
  );

  test.each(of("tariff").filter(([, row]) => wordIn(row, "quantity") === "demand_cost"))(
    "bills the month's peak, or the ratchet's share of the highest: %s",
    (_, row) => {
      const past = (/peaks=\[([^\]]*)\]/.exec(wordIn(row, "inputs"))?.[1] ?? "").split(",").map(Number);
      const peaks = [...past, numberAfter(row, "month peak")];
      const hours = Object.fromEntries(peaks.map((peak, month) => [(STARTS[month] ?? 0) + 12, peak]));
      const tariff = [
        ["energy", 0.1],
        ["demand", numberAfter(row, "rate"), 1, 12, "all", 0, 24, numberAfter(row, "ratchet")],
      ].map((line) => Array.from({ length: 8 }, (_each, at) => line[at] ?? ""));
      const name = ["Jan", "Feb", "Mar", "Apr", "May"][past.length] ?? "";
      near(billed(run("COST.TARIFF", yearOf(hours), tariff), name, "demand charge"), row);
    },
  );
});

describe("A price index", () => {
  const indexOf = (row: GoldenCells): readonly number[] =>
    (/years 1\.\.\d+ = (.*)$/.exec(wordIn(row, "inputs"))?.[1] ?? "").split(";").map(Number);
  const column = (index: readonly number[]): CellMatrix => index.map((each) => [each]);

  test.each(of("index_factor"))("has the evaluated factor of %s", (_, row) => {
    const index = indexOf(row);
    near(run("COST.FACTOR", "UPV*", index.length, numberAfter(row, "d"), "", "", column(index)), row);
  });

  test("is compared on all rows", () =>
    expect([of("carbon").length, of("tariff").length, of("index_factor").length]).toEqual([2, 4, 12]));

  test("that rises evenly is an escalation", () =>
    assert(
      property(
        integer({ min: 1, max: 40 }),
        double({ min: 0, max: 0.2, noNaN: true }),
        double({ min: -0.05, max: 0.1, noNaN: true }),
        (years, discount, rise) => {
          const index = column(Array.from({ length: years + 3 }, (_, at) => (1 + rise) ** (at + 1)));
          for (const kind of ["SPV", "UPV", "capital recovery"]) {
            const even = Number(run("COST.FACTOR", kind, years, discount, rise));
            expect(Number(run("COST.FACTOR", kind, years, discount, 0, "", index)) / even).toBeCloseTo(1, 9);
          }
        },
      ),
      { numRuns: 40 },
    ));

  test("moves payments to the middle of the years by discounting alone", () => {
    const index = column([1.1, 1.2]);
    const expected = 1.1 / 1.05 ** 0.5 + 1.2 / 1.05 ** 1.5;
    expect(run("COST.FACTOR", "UPV mid-year", 2, 0.05, "", "", index)).toBeCloseTo(expected, 12);
  });

  test("is refused with too few years, half a year, or an escalation beside it", () => {
    const message = /#VALUE!.*priceIndex: needs whole years and a row for each/;
    expect(refusal(run("COST.FACTOR", "UPV", 3, 0.03, 0, "", column([1, 1])))).toMatch(message);
    expect(refusal(run("COST.FACTOR", "UPV", 1.5, 0.03, 0, "", column([1, 1])))).toMatch(message);
    expect(refusal(run("COST.FACTOR", "UPV", 2, 0.03, 0.01, "", column([1, 1])))).toMatch(message);
  });
});
