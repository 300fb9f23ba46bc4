import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { savingUncertaintyOf, type Interval } from "../../core/cost/saved";
import { lookUp } from "../../core/kernel/define/catalogue";
import { silent } from "../../core/kernel/define/steps";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import type { CellInput, CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { studentQuantile } from "../../core/numeric/student";
import { cellsIn, numberIn, wordIn } from "../golden/rows";

const run = (...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, "COST.SAVED")!), raw, CATALOGUE);
const list = (out: unknown): Readonly<Record<string, string | number>> => {
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries((out as CellMatrix).map(([label, value]) => [label, value as string | number]));
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

const ROWS = cellsIn("guideline14.csv");
const FITS = ROWS.filter((row) => row["kind"] === "fit" && row["interval"] !== "temperature");
const TEMPERATURES = ROWS.filter((row) => row["interval"] === "temperature");
const SAVINGS = ROWS.filter((row) => row["kind"] === "savings_uncertainty");
const numbers = (text: string): readonly number[] => text.split(";").map(Number);

describe("COST.SAVED", () => {
  test.each([...FITS, ...TEMPERATURES].map((row) => [wordIn(row, "id"), row] as const))(
    "agrees with the evaluated fit %s",
    (_, row) => {
      const modelled = numbers(wordIn(row, "modelled"));
      const before = numbers(wordIn(row, "measured")).map((measured, i) => [measured, modelled[i] ?? 0]);
      const found = list(
        run(
          before,
          before,
          row["interval"] === "temperature" ? "" : wordIn(row, "interval"),
          numberIn(row, "p"),
          0.9,
          0,
        ),
      );
      const near = (label: string, expected: number): void =>
        expect(Math.abs(Number(found[label]) - expected), label).toBeLessThanOrEqual(1e-5 * Math.abs(expected) + 1e-8);
      near("bias", numberIn(row, "NMBE_pct") / 100);
      near("variation", numberIn(row, "CVRMSE_pct") / 100);
      near("error", numberIn(row, "RMSE"));
      // The limits aren't meant for temperatures: their rows have no verdict.
      if (row["interval"] !== "temperature") expect(found["model"]).toBe(wordIn(row, "verdict"));
    },
  );

  test.each(SAVINGS.map((row) => [wordIn(row, "id"), row] as const))(
    "agrees with the evaluated uncertainty %s",
    (_, row) => {
      const given = {
        interval: wordIn(row, "interval") as Interval,
        count: numberIn(row, "n"),
        parameters: numberIn(row, "p"),
        after: numberIn(row, "m"),
        months: numberIn(row, "months"),
        variation: numberIn(row, "cv"),
        share: numberIn(row, "F"),
        confidence: numberIn(row, "conf"),
      };
      const plain = savingUncertaintyOf({ ...given, autocorrelation: 0 }, silent);
      expect(Math.abs(plain.t / numberIn(row, "t") - 1)).toBeLessThan(1e-5);
      expect(Math.abs((100 * plain.U) / numberIn(row, "U_plain_pct") - 1)).toBeLessThan(1e-4);
      const { U, k } = savingUncertaintyOf({ ...given, autocorrelation: numberIn(row, "rho") }, silent);
      expect(Math.abs(k / numberIn(row, "n_effective") - 1)).toBeLessThan(1e-5);
      expect(Math.abs((100 * U) / numberIn(row, "U_autocorrelated_pct") - 1)).toBeLessThan(1e-4);
    },
  );

  test("has a row for each kind of the table", () =>
    expect([FITS.length, TEMPERATURES.length, SAVINGS.length]).toEqual([14, 2, 9]));

  // Printed tables of Student's distribution, 90 and 95 % to both sides.
  test.each([
    [0.95, 1, 12.706],
    [0.95, 2, 4.303],
    [0.9, 9, 1.833],
    [0.95, 30, 2.042],
    [0.95, 100_000, 1.96],
  ])("the quantile of %d at %d degrees of freedom is the printed one", (confidence, freedom, t) =>
    expect(studentQuantile(confidence, freedom)).toBeCloseTo(t, 3),
  );

  const twelve = Array.from({ length: 12 }, (_, i) => [100 + 5 * (-1) ** i, 100]);
  test("saves what is expected less what was measured, between its bounds", () => {
    const found = list(
      run(
        twelve,
        twelve.map(([, modelled]) => [80, modelled ?? 0]),
      ),
    );
    expect(found["saved"]).toBe(240);
    expect(found["share saved"]).toBeCloseTo(0.2, 12);
    expect(Number(found["most"]) - 240).toBeCloseTo(240 - Number(found["least"]), 9);
    expect(Number(found["most"]) / 240 - 1).toBeCloseTo(Number(found["uncertainty"]), 9);
  });

  test("answers a saving of nothing with its bounds, and refuses too few independent points", () => {
    const none = list(
      run(
        twelve,
        twelve.map(([, modelled]) => [modelled ?? 0, modelled ?? 0]),
      ),
    );
    expect(none["uncertainty"]).toBe("");
    expect(Number(none["least"])).toBeLessThan(0);
    expect(refusal(run(twelve, twelve, "month", 3, 0.9, 0.9))).toContain("#N/A before: only 0.6 of 12 points");
    expect(refusal(run(twelve.slice(0, 3), twelve, "month", 3))).toContain("#VALUE! before: must have more rows");
  });
});
