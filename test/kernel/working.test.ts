import { describe, expect, test } from "vitest";
import { quantityMark } from "../../core/kernel/values/quantityMark";
import { si, us } from "../../core/kernel/values/quantity";
import type { KindName } from "../../core/kernel/values/quantity";
import { recorder, type Total } from "../../core/kernel/define/steps";
import { workingLines } from "../../core/kernel/explain/working";

const lineOf = (total: Total, kind: KindName, values: readonly number[]) => {
  const { trace, steps } = recorder();
  trace.series({ title: "Hours", of: "hours", kind, total, values });
  return workingLines(steps, "US")[0];
};

describe("a series in the working", () => {
  test("a series adds up amounts, and gives first, last, least and most", () => {
    const line = lineOf("sum", "time", [3600, 10_800, 7200]);
    expect(line).toMatchObject({ text: "Hours, sum", value: 6, unit: "h" });
    expect(line?.numbers).toBe("3 hours: first 1 h, last 2 h, least 1 h, most 3 h");
  });

  test("has the mean of states and rates, on a scale with its own zero too", () => {
    const line = lineOf("mean", "temperature", [us("temperature", 50), us("temperature", 80)]);
    expect(line).toMatchObject({ text: "Hours, mean", unit: "°F" });
    expect(line?.value).toBeCloseTo(65, 9);
    expect(lineOf("mean", "heat rate", [us("heat rate", 1000), us("heat rate", 5000)])?.value).toBeCloseTo(3000, 6);
  });

  test("has the harmonic mean of conductances that lie behind one another", () =>
    expect(lineOf("harmonic mean", "number", [2, 6])).toMatchObject({ text: "Hours, harmonic mean", value: 3 }));

  test("shows a difference that is only rounding as nothing", () => {
    expect(lineOf("mean", "heat rate", [-1.8e-12, si("heat rate", 20)])?.numbers).toContain("first 0 BTU/h,");
    expect(lineOf("mean", "heat rate", [1.8e-12, si("heat rate", -20)])?.numbers).toContain("first 0 BTU/h,");
    expect(lineOf("mean", "heat rate", [-1.8e-12, 1e-12])?.numbers).not.toContain("first 0 ");
  });

  test("says of one value that it is one", () =>
    expect(lineOf("sum", "time", [3600])).toMatchObject({ numbers: "one value", value: 1 }));
});

test("groups are numbered, and their lines below them", () => {
  const { trace, steps } = recorder();
  trace.remark("one");
  trace.within(`above ${quantityMark("length", 0.3048)}`, () => {
    trace.remark("two");
    trace.within("inner", () => trace.remark("three"));
  });
  trace.remark("four");
  const lines = workingLines(steps, "US");
  expect(lines.map(({ number, text }) => [number, text])).toEqual([
    ["1", "one"],
    ["2", "above 1 ft"],
    ["2.1", "two"],
    ["2.2", "inner"],
    ["2.2.1", "three"],
    ["3", "four"],
  ]);
  expect(lines[1]).toEqual({ number: "2", text: "above 1 ft", numbers: "", value: "", unit: "", source: "" });
});
