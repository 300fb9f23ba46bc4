/** The law of propagation of uncertainty, its degrees of freedom and tolerance, against the golden rows. */
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { studentQuantile, studentTable } from "../../core/numeric/student";
import {
  coverageFactor,
  effectiveFreedom,
  endsAgree,
  firstOrder,
  leastTrials,
  numericalTolerance,
} from "../../core/uncertainty/firstOrder";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";
import { goldenModel } from "./goldenModels";
import { normal } from "./noteCalls";

const GOLDEN = cellsIn("uncertainty.csv");

/** The numbers after a name: "u=(1, inf)" or "u=1". */
const numbersAfter = (row: GoldenCells, name: string): readonly number[] => {
  const text = new RegExp(`(?:^|; )${name}=\\(?([^;)]*)`).exec(wordIn(row, "inputs"))?.[1] ?? "";
  return text.split(",").map((each) => (each.trim() === "inf" ? Infinity : Number(each)));
};

const law = (row: GoldenCells) => firstOrder(goldenModel(wordIn(row, "model"), wordIn(row, "inputs")));

const freedomOf = (row: GoldenCells): number => effectiveFreedom(numbersAfter(row, "u"), numbersAfter(row, "nu"));

const ANSWERS: Readonly<Record<string, (row: GoldenCells) => number>> = {
  gum_estimate: (row) => law(row).estimate,
  gum_u: (row) => law(row).uncertainty,
  nu_eff: freedomOf,
  k: (row) => coverageFactor(numbersAfter(row, "P")[0] ?? 0, freedomOf(row)),
  delta: (row) => numericalTolerance(numbersAfter(row, "u")[0] ?? 0, numbersAfter(row, "ndig")[0] ?? 0),
  least_trials: (row) => leastTrials(numbersAfter(row, "P")[0] ?? 0),
};

/** Its printed 31.7 comes from inputs with one more digit than the row has: compared below. */
const isGaugeBlock = (row: GoldenCells): boolean =>
  wordIn(row, "id") === "gauge-block" && wordIn(row, "quantity") === "gum_u";

const ROWS = GOLDEN.filter((row) => wordIn(row, "quantity") in ANSWERS && !isGaugeBlock(row));

/** The cells of a call by their label. */
const called = (name: string, ranges: readonly (readonly unknown[])[], ...raw: readonly unknown[]) => {
  const compiled = COMPILED.get("NOTE.UNCERTAINTY");
  if (compiled === undefined) throw new Error("no such function");
  const out = evaluate(compiled, [name, ranges, ...raw], CATALOGUE);
  const lines = Array.isArray(out) ? (out as readonly (readonly unknown[])[]) : [];
  const message = out instanceof Error ? out.message : "";
  return { message, cells: new Map(lines.map(([label, cell]) => [label, cell])) };
};

describe("The law of propagation of uncertainty", () => {
  test("is compared on all rows", () => expect(ROWS.length).toBeGreaterThan(25));

  test.each(ROWS.map((row) => [`${wordIn(row, "id")} ${wordIn(row, "quantity")}`, row] as const))(
    "%s is the printed value",
    (_, row) => {
      const got = ANSWERS[wordIn(row, "quantity")]?.(row) ?? NaN;
      expect(Math.abs(got - numberIn(row, "value")), `got ${got}`).toBeLessThanOrEqual(numberIn(row, "tolerance"));
    },
  );

  test.each(
    GOLDEN.filter((row) => wordIn(row, "quantity") === "nu_eff").map((row) => [wordIn(row, "id"), row] as const),
  )("%s comes from a cell too, as a sum of contributions", (_, row) => {
    const [u, nu] = [numbersAfter(row, "u"), numbersAfter(row, "nu")];
    // Two inputs of a product: each contribution is the other's mean times its own deviation.
    const ranges = u.slice(0, 2).map((each, at) => normal(at === 0 ? "length" : "width", 100, each / 100, nu[at]));
    const blanks = ranges.map((range) => range.map((each) => (each === Infinity ? null : each)));
    const { cells } = called("POOL.AREA", blanks, "rectangle", "", "", "SI");
    expect(cells.get("effective degrees of freedom")).toBeCloseTo(effectiveFreedom(u.slice(0, 2), nu.slice(0, 2)), 5);
    expect(cells.get("contribution of length")).toBeCloseTo(u[0] ?? NaN, 8);
    expect(cells.get("sensitivity coefficient of width")).toBeCloseTo(100, 6);
  });

  test("has the normal factor where no degrees of freedom are given", () => {
    const { cells } = called("POOL.AREA", [normal("length", 10, 0.1)], "rectangle", "", 5, "SI");
    expect(cells.get("effective degrees of freedom")).toBe("infinite");
    expect(cells.get("coverage factor")).toBeCloseTo(1.959964, 6);
    expect(cells.get("GUM standard uncertainty")).toBeCloseTo(0.5, 9);
  });

  test("keeps a whole number of degrees of freedom whole", () => {
    const { cells } = called("POOL.AREA", [normal("length", 10, 0.1, 9)], "rectangle", "", 5, "SI");
    expect(cells.get("coverage factor")).toBeCloseTo(2.262157, 5);
  });

  test("refuses less than one degree of freedom", () => {
    const { message } = called("POOL.AREA", [normal("length", 10, 0.1, 0.5)], "rectangle", "", 5, "SI");
    expect(message).toMatch(/freedom: must be 1 or more.*got 0\.5/);
  });

  test("differs from the runs where the function bends", () => {
    const ranges = [["length", "log-normal", 2, null, 50]];
    const { cells } = called("POOL.AREA", ranges, "rectangle", "", 5, "SI");
    expect(cells.get("GUM beside the runs")).toBe("differs");
  });

  test("says that the runs don't tell where they scatter by more than the ends are apart", () => {
    expect(endsAgree(0.04, 0.05, 0.005)).toBe("agrees");
    expect(endsAgree(0.04, 0.05, 0.02)).toBe("too few runs to tell");
    expect(endsAgree(0.08, 0.05, 0.02)).toBe("differs");
  });

  test.each([1, 3, 9, 25.6])("takes Student's distribution of %s degrees of freedom in the runs", (freedom) => {
    const at = studentTable(freedom);
    for (const confidence of [0.5, 0.9, 0.99])
      expect(at((1 + confidence) / 2) / studentQuantile(confidence, freedom)).toBeCloseTo(1, 3);
    expect(at(0.3)).toBeCloseTo(-at(0.7), 9);
    expect(Number.isFinite(at(1 / 8192))).toBe(true);
  });
});
