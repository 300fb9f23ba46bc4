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
