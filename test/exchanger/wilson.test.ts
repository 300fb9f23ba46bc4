import { assert, double, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellInput, CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn } from "../golden/rows";

const definition = compile(lookUp(CATALOGUE, "EXCHANGER.WILSON")!);
const run = (...raw: readonly CellInput[]) => evaluate(definition, raw, CATALOGUE);
const split = (...raw: readonly CellInput[]): Readonly<Record<string, number>> => {
  const out = run(...raw);
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries((out as CellMatrix).map(([label, value]) => [label, value as number]));
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

const ROWS = cellsIn("wilson.csv").filter((row) => row["kind"] === "one_side");
const list = (text: string): readonly number[] => text.replace("R: ", "").split(";").map(Number);

describe("EXCHANGER.WILSON", () => {
  test.each(ROWS.map((row) => [wordIn(row, "id"), row] as const))("agrees with the evaluated %s", (_, row) => {
    const values = wordIn(row, "UA_or_R");
    const flows = list(wordIn(row, "flow") || wordIn(row, "flow_cold"));
    const readings = list(values).map((value, i) => [flows[i] ?? 0, values.startsWith("R") ? 1 / value : value]);
    const [exponent, at] = [numberIn(row, "exponent"), numberIn(row, "at")];
    const found = split(readings, exponent, at, "SI");
    const near = (got: number | undefined, expected: number, tolerance: number): void =>
      expect(Math.abs(Number(got) / expected - 1), `${got} ${expected}`).toBeLessThan(tolerance);
    near(1 / (found["rest"] ?? 0), numberIn(row, "R0"), 1e-5);
    near(at ** exponent / (found["water film"] ?? 0), numberIn(row, "b1"), 1e-5);
    near(found["conductance"], numberIn(row, "UA_at"), 1e-5);
    near(found["film share"], numberIn(row, "share_pct") / 100, 1e-3);
    near((found["rest error"] ?? 0) / (found["rest"] ?? 0), numberIn(row, "se_R0"), 1e-3);
    near((found["film error"] ?? 0) * numberIn(row, "b1"), numberIn(row, "se_b1"), 1e-3);
    expect(Math.abs((found["determination"] ?? 0) - numberIn(row, "R2"))).toBeLessThan(1e-5);
  });

  test("has every one-sided row of the table", () => expect(ROWS.length).toBeGreaterThan(10));

  test("agrees with the published and evaluated split of two streams", () => {
    const row = cellsIn("wilson.csv").find((each) => each["kind"] === "two_side");
    if (row === undefined) throw new Error("no two-sided row");
    const [hot, cold, R] = [list(wordIn(row, "flow")), list(wordIn(row, "flow_cold")), list(wordIn(row, "UA_or_R"))];
    const found = split(
      R.map((each, i) => [cold[i] ?? 0, 1 / each, "", hot[i] ?? 0]),
      0.8,
      500,
      "SI",
    );
    const meanHot = hot.reduce((all, each) => all + each, 0) / hot.length;
    const near = (got: number, expected: number, tolerance: number): void =>
      expect(Math.abs(got / expected - 1), `${got} ${expected}`).toBeLessThan(tolerance);
    near(1 / Number(found["rest"]), numberIn(row, "R0"), 1e-5);
    near(meanHot ** 0.8 / Number(found["other film"]), numberIn(row, "b1"), 1e-5);
    near(500 ** 0.8 / Number(found["water film"]), numberIn(row, "b2"), 1e-5);
    near(Number(found["rest error"]) / Number(found["rest"]), numberIn(row, "se_R0"), 1e-3);
    near(Number(found["other error"]) * numberIn(row, "b1"), numberIn(row, "se_b1"), 1e-3);
    near(Number(found["film error"]) * numberIn(row, "b2"), numberIn(row, "se_b2"), 1e-3);
    expect(Number(found["determination"])).toBeCloseTo(numberIn(row, "R2"), 5);
  });

  const FOULING = cellsIn("wilson.csv").filter((row) => row["kind"] === "fouling");
  test.each(FOULING.map((row) => [wordIn(row, "id"), row] as const))("agrees with the evaluated drift %s", (_, row) => {
    const [clean = 0, now = 0, area = 0] = [...wordIn(row, "UA_or_R").matchAll(/[\d.]+/g)].map(Number);
    const dated = [
      [40, clean, 0],
      [40, now, 365],
    ];
    const found = split(dated, null, null, "SI", area);
    expect(Math.abs(Number(found["fouling"]) / numberIn(row, "R0") - 1)).toBeLessThan(1e-5);
    expect(Math.abs(Number(found["fouling error"]) / numberIn(row, "se_R0") - 1)).toBeLessThan(1e-3);
    expect(Math.abs(100 * Number(found["lost"]) - numberIn(row, "loss_pct"))).toBeLessThan(0.006);
    expect(found["drift"]).toBe("found");
    expect(found["water film"]).toBe("");
  });

  // UA 2,400 to 2,150 (3 % each), 14 ft²: 0.00068 ± 0.00026 h·ft²·°F/BTU, worked by hand.
  test("finds the fouling of a year in the trade's units, and none below twice its error", () => {
    const found = split([[40, 2400, 0], [40, 2150, 365]], null, null, null, 14); // prettier-ignore
    expect(Number(found["fouling"])).toBeCloseTo(0.00068, 5);
    expect(Number(found["fouling error"])).toBeCloseTo(0.00026, 5);
    expect(split([[40, 2400, 0], [40, 2350, 365]], null, null, null, 14)["drift"]).toBe("none found"); // prettier-ignore
  });

  test("finds the drift of two flow tests whose films are one line", () => {
    const at = (rest: number, date: number) =>
      [20, 30, 40, 60].map((flow) => [flow, 1 / (1 / rest + 1 / (150 * flow ** 0.8)), date]);
    const found = split([...at(5000, 0), ...at(4000, 700)], 0.8, 40, null, 10, 0.001);
    expect(Number(found["rest"])).toBeCloseTo(4000, 4);
    expect(Number(found["fouling"])).toBeCloseTo(10 * (1 / 4000 - 1 / 5000), 9);
    const clean = 1 / (1 / 5000 + 1 / (150 * 40 ** 0.8));
    expect(Number(found["lost"])).toBeCloseTo(1 - Number(found["conductance"]) / clean, 9);
  });

  test("gives back the line that readings lie on", () =>
    assert(
      property(
        double({ min: 500, max: 5000, noNaN: true }),
        double({ min: 200, max: 3000, noNaN: true }),
        (rest, film) => {
          const readings = [1, 2, 3, 4].map((flow) => [flow, 1 / (1 / rest + 1 / (film * flow ** 0.8))]);
          const found = split(readings, 0.8, 2, "SI");
          expect((found["rest"] ?? 0) / rest).toBeCloseTo(1, 6);
          expect((found["water film"] ?? 0) / (film * 2 ** 0.8)).toBeCloseTo(1, 6);
        },
      ),
    ));

  test("refuses readings at one flow, and UA that falls with the flow", () => {
    expect(
      refusal(
        run([
          [20, 2000],
          [20, 2100],
        ]),
      ),
    ).toContain("#VALUE! readings: all at one flow");
    expect(
      refusal(
        run([
          [20, 2000],
          [40, 1500],
        ]),
      ),
    ).toContain("#N/A readings: UA doesn't rise");
  });

  test("warns of flows too near each other", () => {
    const codes = (readings: CellMatrix) =>
      explain(definition, [readings], CATALOGUE, { steps: false }).cautions.map(({ code }) => code);
    expect(
      codes([
        [38, 2310],
        [40, 2365],
        [42, 2352],
      ]),
    ).toContain("EXCHANGER-WILSON-NARROW");
    expect(
      codes([
        [20, 2078],
        [30, 2460],
        [40, 2706],
        [60, 2931],
      ]),
    ).not.toContain("EXCHANGER-WILSON-NARROW");
  });
});
