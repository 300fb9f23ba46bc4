/** Runs of a year's uncertainty that cells share, and their working. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { UNFINISHED } from "../../core/kernel/define/slice";
import { recorder, silent } from "../../core/kernel/define/steps";
import type { UncertainEntries } from "../../core/pool/year/uncertainInputs";
import { uncertainRuns } from "../../core/pool/year/uncertainRuns";
import { traceUncertainty } from "../../core/pool/year/uncertainWorking";
import type { UncertainYear } from "../../core/pool/year/uncertainYear";
import type { UncertainInput, UncertainRange } from "../../core/uncertainty/ranges";

/** From 2 to 4 in the unit of the call. */
const WIND: UncertainInput = {
  ...{ label: "wind", likely: 3, mean: 3, deviation: 1, freedom: Infinity, unit: "m/s" },
  at: (share, trace = silent) => {
    trace.remark(`at ${String(share)}`);
    return 2 + 2 * share;
  },
};

/** Counts its runs; outcomes are the input, twice and three times that, and none. */
function modelOf(more: Partial<UncertainYear> = {}) {
  const seen: number[] = [];
  const compute = (values: readonly number[]): readonly number[] => {
    seen.push(values[0] ?? NaN);
    return [1, 2, 3].map((times) => times * (values[0] ?? NaN)).concat(NaN);
  };
  const model: UncertainYear = { inputs: [WIND], correlation: undefined, trace: compute, compute, ...more };
  return { model, seen };
}

const RANGE: UncertainRange = {
  label: "wind",
  distribution: "rectangular",
  low: 2,
  likely: 3,
  high: 4,
  unit: undefined,
};
const INPUTS = { poolArea: 100, waterDepth: 1.5 } as UncertainEntries;
const CLIMATE = [
  ["month", "air"],
  [1, 290],
];
type Arguments = Parameters<typeof uncertainRuns>;
const GIVEN = [INPUTS, CLIMATE, [RANGE], 4, "SI"] as const satisfies readonly Partial<Arguments>[number][];

describe("runs of equal arguments", () => {
  test("are made once: the likely inputs, then one run after the other", () => {
    const { model, seen } = modelOf();
    const { likely, found } = uncertainRuns(model, ...GIVEN);
    expect(likely).toEqual([3, 6, 9, NaN]);
    expect(seen).toHaveLength(5);
    expect(new Set(found.inputs[0]).size).toBe(4);
    expect(found.outcomes).toHaveLength(4);
    expect(found.outcomes[1]).toEqual(found.inputs[0]?.map((wind) => 2 * wind));
    const other = modelOf();
    expect(uncertainRuns(other.model, ...GIVEN).found).toBe(found);
    expect(uncertainRuns(other.model, { ...INPUTS }, [...CLIMATE], [{ ...RANGE }], 4, "SI").found).toBe(found);
    expect(other.seen).toEqual([]);
  });

  test.each<[string, Arguments]>([
    ["input", [modelOf().model, { ...INPUTS, waterDepth: 1.6 }, CLIMATE, [RANGE], 4, "SI"]],
    ["climate", [modelOf().model, INPUTS, [["month", "air"], [1, 291]], [RANGE], 4, "SI"]], // prettier-ignore
    ["range", [modelOf().model, INPUTS, CLIMATE, [{ ...RANGE, high: 5 }], 4, "SI"]],
    ["number of runs", [modelOf().model, INPUTS, CLIMATE, [RANGE], 5, "SI"]],
    ["unit system", [modelOf().model, INPUTS, CLIMATE, [RANGE], 4, "US"]],
    [
      "correlation",
      [modelOf({ correlation: { matrix: [[1, 0.5]], factor: [[1]] } }).model, INPUTS, CLIMATE, [RANGE], 4, "SI"],
    ],
  ])("another %s has runs of its own", (_what, args) => {
    const { found } = uncertainRuns(modelOf().model, ...GIVEN);
    expect(uncertainRuns(...args).found).not.toBe(found);
  });

  test("other coefficients of the same pair have runs of their own", () => {
    const at = (r: number) => {
      const { model } = modelOf({ correlation: { matrix: [[1, r]], factor: [[1]] } });
      return uncertainRuns(model, ...GIVEN).found;
    };
    expect(at(0.2)).not.toBe(at(0.3));
    expect(at(0.3)).toBe(at(0.3));
  });

  test("stop where the slice is over, and go on from there", () => {
    const { model, seen } = modelOf();
    const inputs = { ...INPUTS, poolArea: 50 };
    expect(() => uncertainRuns(model, inputs, CLIMATE, [RANGE], 4, "SI", () => true)).toThrow(UNFINISHED);
    expect(seen).toHaveLength(2);
    expect(uncertainRuns(model, inputs, CLIMATE, [RANGE], 4, "SI", () => false).found.inputs[0]).toHaveLength(4);
    expect(seen).toHaveLength(5);
  });
});

describe("the working", () => {
  const runs = (money: readonly number[]) => ({
    inputs: [[2, 3]],
    outcomes: [[1e9, 2e9], [86_400, 0], [...money], [Infinity, 4]],
    refused: 0,
  });
  const workingOf = (money: readonly number[]) => {
    const { trace, steps } = recorder();
    traceUncertainty(modelOf().model, runs(money), trace);
    return steps;
  };
  const remark = (text: string) => ({ type: "remark", text });
  const series = (title: string, kind: string, values: readonly number[]) => ({
    ...{ type: "series", title, kind, values, of: "year", total: "mean" },
  });
  const WIND_STEPS = {
    type: "group",
    title: "wind: P10, P50 and P90",
    steps: [remark("at 0.1"), remark("at 0.5"), remark("at 0.9")],
  };

  test("shows each input's percentiles, and the outcomes of the years by kind", () =>
    expect(workingOf([5, -6])).toEqual([
      WIND_STEPS,
      series("Heat taken", "heat", [1e9, 2e9]),
      series("Warm days", "days", [86_400, 0]),
      series("Money saved", "money", [5, -6]),
    ]));

  test("leaves out an outcome that a year doesn't have", () =>
    expect(workingOf([5, NaN])).toEqual([
      WIND_STEPS,
      series("Heat taken", "heat", [1e9, 2e9]),
      series("Warm days", "days", [86_400, 0]),
    ]));
});
