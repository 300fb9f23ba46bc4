/** Correlated inputs and other coverage probabilities, from a cell and in the law of propagation. */
import { assert, double, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { standardDeviation } from "../../core/numeric/series";
import { correlationOf } from "../../core/uncertainty/correlation";
import { firstOrder } from "../../core/uncertainty/firstOrder";
import { addRun, noRuns } from "../../core/uncertainty/study";
import { goldenModel } from "./goldenModels";
import { cellsOf, codesOf, IMPEDANCE, logNormal, normal, refusalOf, rowsOf, workingOf, type Raw } from "./noteCalls";

describe("Example H.2 of JCGM 100", () => {
  const inputs =
    "V=normal(mean 4.999, sd 0.0032); I=normal(mean 0.019661, sd 0.0000095); f=normal(mean 1.04446, sd 0.00075)";

  // Printed in table H.4.
  test.each([
    ["resistance", "V*cos(f)/I", 127.732, 0.071],
    ["reactance", "V*sin(f)/I", 219.847, 0.295],
    ["impedance", "V/I + 0*f", 254.26, 0.236],
  ])("has the printed %s with its uncertainty", (_, formula, value, uncertainty) => {
    const model = goldenModel(formula, inputs);
    const pairs = [
      { label: "V", with: "I", r: -0.3553 },
      { label: "V", with: "f", r: 0.8576 },
      { label: "I", with: "f", r: -0.6451 },
    ];
    const correlated = { ...model, correlation: correlationOf(pairs, model.inputs) };
    const law = firstOrder(correlated);
    // Half a unit of the angle's last printed digit moves the parts by 0.0011.
    expect(Math.abs(law.estimate - value)).toBeLessThanOrEqual(0.0016);
    expect(Math.abs(law.uncertainty - uncertainty)).toBeLessThanOrEqual(0.001);
    const all = noRuns(correlated, 1);
    for (let run = 0; run < 2048; run++) addRun(correlated, run, all);
    const [runs = []] = all.outcomes;
    expect(standardDeviation(runs) / law.uncertainty).toBeCloseTo(1, 2);
  });

  test("has the printed impedance from a cell too", () => {
    const cells = cellsOf(...IMPEDANCE, "correlations", [["volume", "flow", -0.36]]);
    expect(Math.abs(Number(cells.get("GUM estimate")) - 254.26)).toBeLessThanOrEqual(0.001);
    expect(Math.abs(Number(cells.get("GUM standard uncertainty")) - 0.236)).toBeLessThanOrEqual(0.001);
    expect(cells).toEqual(cellsOf(...IMPEDANCE, "Correlation", "flow", "volume", -0.36));
  });
});

describe("Correlations and coverage of NOTE.UNCERTAINTY", () => {
  test("leave every byte of the result where they are 0 and 95 %", () =>
    expect(JSON.stringify(rowsOf(...IMPEDANCE, "coverage", 0.95, "correlations", [["flow", "volume", 0]]))).toBe(
      JSON.stringify(rowsOf(...IMPEDANCE)),
    ));

  test("count as left out where their cells are blank, however the host passes those", () => {
    for (const blank of [null, "", 0])
      expect(rowsOf(...IMPEDANCE, "coverage", blank, "correlations", blank)).toEqual(rowsOf(...IMPEDANCE));
    expect(rowsOf(...IMPEDANCE, "coverage", 0.9, null, null)).toEqual(rowsOf(...IMPEDANCE, "coverage", 0.9));
  });

  test("make the variance of a sum that of its parts and twice their product times r", () =>
    assert(
      property(
        double({ min: -1, max: 1, noNaN: true }),
        double({ min: 0.01, max: 2, noNaN: true }),
        double({ min: 0.01, max: 1, noNaN: true }),
        (r, a, b) => {
          const ranges = [normal("cooling", 20, a), normal("power", 10, b)];
          const cells = cellsOf("AIRCON.REJECTED", ranges, "", "", 0, "SI", "correlations", "cooling", "power", r);
          const u = Number(cells.get("GUM standard uncertainty"));
          expect(u * u).toBeCloseTo(a * a + b * b + 2 * r * a * b, 7);
          expect(Number(cells.get("standard deviation")) ** 2).toBeCloseTo(u * u, 1);
        },
      ),
      { numRuns: 25 },
    ));

  test("take all of a difference away where two equal inputs move as one", () => {
    const call = ["POOL.SURFACELOSS", [normal("water", 28, 0.5), normal("air", 20, 0.5)], 10, "", "", 20, "SI"];
    const cells = cellsOf(...call, "correlations", "water", "air", 1);
    expect(Number(cells.get("GUM standard uncertainty"))).toBeLessThan(1e-7);
    expect(Number(cells.get("standard deviation"))).toBeLessThan(1e-7);
    expect(cells.get("effective degrees of freedom")).toBe("infinite");
  });

  test("take Student's factor of the least degrees of freedom among inputs that belong together", () => {
    const ranges = [normal("volume", 4.999, 0.0032, 4), normal("flow", 0.019661, 0.0000095, 9)];
    const call = ["POOL.TURNOVER", ranges, "", "", "SI", "correlations", "volume", "flow", -0.36];
    const cells = cellsOf(...call, "coverage", 0.99);
    // Printed tables of Student's distribution: 4 degrees of freedom, 99 % to both sides.
    expect(cells.get("effective degrees of freedom")).toBeCloseTo(4, 9);
    expect(cells.get("coverage factor")).toBeCloseTo(4.604, 3);
    expect(codesOf(...call)).toContain("UNCERTAINTY-FREEDOM");
    expect(codesOf(...IMPEDANCE, "correlations", "volume", "flow", -0.36)).not.toContain("UNCERTAINTY-FREEDOM");
  });

  test("warn of inputs that aren't normal and of ends beyond the runs", () => {
    const area = ["POOL.AREA", [logNormal("length", 0.5, 1.6), normal("width", 20, 1)], "rectangle", "", "", "SI"];
    expect(codesOf(...area, "correlations", "length", "width", 0.6)).toContain("UNCERTAINTY-NOT-NORMAL");
    expect(codesOf(...IMPEDANCE, "correlations", "volume", "flow", 0.6)).not.toContain("UNCERTAINTY-NOT-NORMAL");
    expect(codesOf(...IMPEDANCE, "coverage", 0.999)).toContain("UNCERTAINTY-FEW-BEYOND");
    expect(codesOf(...IMPEDANCE)).not.toContain("UNCERTAINTY-FEW-BEYOND");
  });

  test("show the law in the working", () => {
    const text = workingOf(...IMPEDANCE, "correlations", "volume", "flow", -0.36);
    for (const name of [
      "What a correlation adds to the variance",
      "Law of propagation of uncertainty",
      "Expanded uncertainty",
    ])
      expect(text).toContain(name);
  });

  test.each<readonly [string, Raw, RegExp]>([
    ["a coefficient beyond 1", ["correlations", [["volume", "flow", 1.2]]], /row 1, r: must be at most 1, got 1\.2/],
    [
      "a label without a range",
      ["correlations", [["volume", "water", 0.2]]],
      /no range of "water"; there are volume, flow/,
    ],
    ["a pair of one label", ["correlations", [["flow", "flow", 1]]], /flow and flow: needs two labels that differ/],
    ["a pair twice with two values", ["correlations", [["volume", "flow", 0.2], ["flow", "volume", 0.3]]], /given twice, 0\.2 and 0\.3/], // prettier-ignore
    ["a percentage without its sign", ["coverage", 95], /coverage: must be at most 0\.9999.*got 95/],
    ["a coverage of all", ["coverage", 1], /coverage: must be at most 0\.9999.*got 1/],
    ["a word that it doesn't know", ["coverage", 0.9, "covrage", 0.9], /got "covrage"/],
    ["a range as coverage", ["coverage", [[0.9, 0.95]]], /coverage: expected one value/],
  ])("refuse %s", (_, options, message) => expect(refusalOf(...IMPEDANCE, ...options)).toMatch(message));

  test("take a pair twice with one value", () =>
    expect(rowsOf(...IMPEDANCE, "correlations", [["volume", "flow", 0.2], ["flow", "volume", 0.2]])).toEqual(rowsOf(...IMPEDANCE, "correlations", "volume", "flow", 0.2))); // prettier-ignore
});
