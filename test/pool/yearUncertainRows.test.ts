/** The rows of the year's uncertainty, from runs of round numbers. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { shareInTime, uncertaintyRows } from "../../core/pool/year/uncertainTable";
import type { UncertainInput } from "../../core/uncertainty/ranges";

/** 0 to 9: of ten runs, P10 lies between the first two, P50 in the middle and P90 between the last two. */
const TEN = [...Array(10).keys()];
const rising = (from: number, step: number): number[] => TEN.map((run) => from + step * run);
const falling = (values: readonly number[]): number[] => [...values].reverse();
const none = TEN.map(() => NaN);

const inputNamed = (label: string): UncertainInput => ({
  ...{ label, likely: 1, mean: 1, deviation: 1, freedom: Infinity, unit: "m" },
  at: (share) => share,
});

const HEAT = rising(1e9, 1e8);
const DAYS = rising(86_400, 86_400);
const MONEY = rising(-2, 1);
const PAYBACK = [...rising(1, 1).slice(0, 8), Infinity, Infinity];

const runsOf = (outcomes: readonly (readonly number[])[], inputs: readonly (readonly number[])[] = []) => ({
  inputs: inputs.map((values) => [...values]),
  outcomes: outcomes.map((values) => [...values]),
  refused: 0,
});

const RUNS = runsOf([HEAT, DAYS, MONEY, PAYBACK]);
const LIKELY = [1.5e9, 5 * 86_400, 3, 4] as const;

const rowsOf = (...[inputs, runs, likely = LIKELY, within = 5]: Partial<Parameters<typeof uncertaintyRows>>) =>
  uncertaintyRows(inputs ?? [], runs ?? RUNS, likely, within);

/** What a row holds besides blanks. */
const filled = (row: object | undefined): object =>
  Object.fromEntries(Object.entries(row ?? {}).filter(([, value]) => value !== ""));

describe("percentiles and the likely inputs", () => {
  test("lie between the middles of the runs, and a payback that never comes is said in a word", () => {
    expect(rowsOf().slice(0, 4).map(filled)).toEqual([
      { statistic: "P10", heatTaken: 1.05e9, warmDays: 1.5 * 86_400, moneySaved: -1.5, payback: 1.5 },
      { statistic: "P50", heatTaken: 1.45e9, warmDays: 5.5 * 86_400, moneySaved: 2.5, payback: 5.5 },
      { statistic: "P90", heatTaken: 1.85e9, warmDays: 9.5 * 86_400, moneySaved: 6.5, payback: "never" },
      { statistic: "likely inputs", heatTaken: 1.5e9, warmDays: 5 * 86_400, moneySaved: 3, payback: 4 },
    ]);
  });

  test("are blank, not 0, where an outcome can't be had, and every row has every column", () => {
    const rows = rowsOf([inputNamed("wind")], runsOf([HEAT, DAYS, none, none], [TEN]), [1e9, 0, NaN, NaN]);
    expect(filled(rows[1])).toEqual({ statistic: "P50", heatTaken: 1.45e9, warmDays: 5.5 * 86_400 });
    expect(filled(rows[3])).toEqual({ statistic: "likely inputs", heatTaken: 1e9, warmDays: 0 });
    expect(new Set(rows.map((row) => Object.keys(row).sort().join())).size).toBe(1);
    expect(rows.flatMap((row) => Object.values(row)).filter((cell) => cell === undefined)).toEqual([]);
  });

  test("are blank where one of the runs has no such outcome, and so are its ranks", () => {
    const money = [...MONEY.slice(0, 9), NaN];
    const rows = rowsOf([inputNamed("wind")], runsOf([HEAT, DAYS, money, rising(1, 1)], [TEN]));
    expect(filled(rows[1])).toEqual({ statistic: "P50", heatTaken: 1.45e9, warmDays: 5.5 * 86_400, payback: 5.5 });
    expect(filled(rows[7])).toEqual({ statistic: "wind", rankHeatTaken: 1, rankWarmDays: 1, rankPayback: 1 });
  });

  test("a likely year that never pays back says so", () =>
    expect(filled(rowsOf([], RUNS, [1e9, 0, -1, Infinity])[3])).toMatchObject({ payback: "never" }));
});

describe("chances", () => {
  test("are shares of the runs: in time up to the limit itself, never, and nothing saved with 0", () => {
    expect(rowsOf().slice(4, 7).map(filled)).toEqual([
      { statistic: "pays back within", payback: 5, share: 0.5 },
      { statistic: "never pays back", share: 0.2 },
      { statistic: "saves nothing", share: 0.3 },
    ]);
  });

  test("a payback after the time, and no run at a loss, are no share", () => {
    const rows = rowsOf([], runsOf([HEAT, DAYS, rising(1, 1), rising(6, 1)]));
    expect(rows.slice(4, 7).map(filled)).toEqual([
      { statistic: "pays back within", payback: 5, share: 0 },
      { statistic: "never pays back", share: 0 },
      { statistic: "saves nothing", share: 0 },
    ]);
  });

  test("are blank without a payback, and where one run has none", () => {
    expect(shareInTime(RUNS, 8)).toBe(0.8);
    expect(shareInTime(runsOf([HEAT, DAYS, MONEY, none]), 8)).toBe("");
    expect(shareInTime(runsOf([HEAT, DAYS, MONEY, [NaN, ...PAYBACK.slice(1)]]), 8)).toBe("");
    const rows = rowsOf([], runsOf([HEAT, DAYS, none, none]));
    expect(rows.slice(4, 7).map(filled)).toEqual([
      { statistic: "pays back within", payback: 5 },
      { statistic: "never pays back" },
      { statistic: "saves nothing" },
    ]);
  });
});

describe("uncertain inputs", () => {
  /** Two neighbours changed places: 1 − 6·2/(10·99). */
  const swapped = [1, 0, ...TEN.slice(2)];
  const NEARLY = 1 - 12 / 990;
  /** The outer pairs changed places: squares of 9, 9, 7 and 7. */
  const mixed = [9, 8, ...TEN.slice(2, 8), 1, 0];
  const MIXED = 1 - (6 * (81 + 49 + 49 + 81)) / 990;
  const labels = ["shade", "price", "load"].map(inputNamed);

  test("rank by the size of their correlation with the saving, falling ones too", () => {
    const runs = runsOf([falling(HEAT), DAYS, MONEY, falling(rising(1, 1))], [mixed, swapped, falling(TEN)]);
    const rows = rowsOf(labels, runs).slice(7);
    expect(rows.map(({ statistic }) => statistic)).toEqual(["load", "price", "shade"]);
    const close = (value: number): unknown => expect.closeTo(value, 12);
    expect(rows.map(filled)).toEqual([
      { statistic: "load", rankHeatTaken: 1, rankWarmDays: -1, rankMoneySaved: -1, rankPayback: 1 },
      {
        statistic: "price",
        ...{ rankHeatTaken: close(-NEARLY), rankWarmDays: close(NEARLY) },
        ...{ rankMoneySaved: close(NEARLY), rankPayback: close(-NEARLY) },
      },
      {
        statistic: "shade",
        ...{ rankHeatTaken: close(-MIXED), rankWarmDays: close(MIXED) },
        ...{ rankMoneySaved: close(MIXED), rankPayback: close(-MIXED) },
      },
    ]);
  });

  test("without a saving they rank by the heat taken, and money and payback stay blank", () => {
    const rows = rowsOf(labels, runsOf([HEAT, DAYS, none, none], [mixed, falling(TEN), swapped])).slice(7);
    expect(rows.map(filled)).toEqual([
      { statistic: "price", rankHeatTaken: -1, rankWarmDays: -1 },
      { statistic: "load", rankHeatTaken: expect.closeTo(NEARLY, 12), rankWarmDays: expect.closeTo(NEARLY, 12) },
      { statistic: "shade", rankHeatTaken: expect.closeTo(MIXED, 12), rankWarmDays: expect.closeTo(MIXED, 12) },
    ]);
  });

  test("a saving that an input doesn't touch leaves the heat to rank it", () => {
    const flat = TEN.map(() => 5);
    const rows = rowsOf(labels, runsOf([HEAT, DAYS, flat, none], [mixed, swapped, TEN])).slice(7);
    expect(rows.map(({ statistic, rankMoneySaved }) => [statistic, rankMoneySaved])).toEqual([
      ["load", 0],
      ["price", 0],
      ["shade", 0],
    ]);
  });
});
