import { assert, constantFrom, double, pre, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { ARRANGEMENTS, type Arrangement } from "../../core/exchanger/args";
import { counterflowUnits } from "../../core/exchanger/effectivenessEquations";
import { logMeanDifference } from "../../core/exchanger/equations";
import { correctionOf } from "../../core/exchanger/models/correction";
import { effectivenessOf, mostEffectiveness, unitsOf } from "../../core/exchanger/models/effectiveness";
import { meanDifferenceOf } from "../../core/exchanger/models/ends";
import { cellsIn } from "../golden/rows";

const number = (value: number | undefined): number => value ?? Number.NaN;

/** Rows of a file; `number` is undefined for an empty cell. */
const goldenRows = (file: string) =>
  cellsIn(file).map((cells) => ({
    word: (column: string): string => cells[column] ?? "",
    number: (column: string): number | undefined => (cells[column] ? Number(cells[column]) : undefined),
  }));

const close = (got: number, expected: number, within: number, about: string): void =>
  expect(Math.abs(got - expected), `${about}: ${got} against ${expected}`).toBeLessThanOrEqual(within);

describe("log mean difference", () => {
  const rows = goldenRows("exchanger-lmtd.csv");

  it("the golden file has rows of every kind", () => expect(rows).toHaveLength(72));

  it.each([
    ["counterflow", "cf", 68],
    ["parallel", "par", 51],
  ] as const)(
    "the log mean difference in %s agrees with 50 digits to 1e-9 by the printed end differences",
    (_, key, count) => {
      let compared = 0;
      for (const row of rows) {
        const exact = row.number(`${key}_LMTD_exact_K`);
        if (exact === undefined || exact <= 0) continue;
        compared++;
        const ends = { dT1: number(row.number(`${key}_dT1_K`)), dT2: number(row.number(`${key}_dT2_K`)) };
        close(logMeanDifference.code(ends) / exact, 1, 1e-9, row.word("note"));
      }
      expect(compared).toBe(count);
    },
  );

  it.each([
    ["counterflow", 4],
    ["parallel", 21],
  ] as const)(
    "the log mean difference in %s by four temperatures agrees or is refused as the rows say",
    (way, count) => {
      const key = way === "counterflow" ? "cf" : "par";
      let refused = 0;
      for (const row of rows) {
        const [hotIn, hotOut, coldIn, coldOut] = ["Thi_degC", "Tho_degC", "Tci_degC", "Tco_degC"].map(
          (each) => number(row.number(each)) + 273.15,
        ) as [number, number, number, number];
        const work = () => meanDifferenceOf({ hotIn, hotOut, coldIn, coldOut }, way);
        const exact = row.number(`${key}_LMTD_exact_K`);
        if (exact === undefined || exact <= 0) {
          expect(work, row.word("note")).toThrow(/hotIn .*coldOut/);
          refused++;
        } else close(work() / exact, 1, row.word("note").includes("1e-09") ? 3e-6 : 1e-7, row.word("note"));
      }
      expect(refused).toBe(count);
    },
  );

  it("lies between the geometric and the arithmetic mean of the ends, in either order", () => {
    assert(
      property(
        double({ min: 1e-6, max: 200, noNaN: true }),
        double({ min: 1e-6, max: 200, noNaN: true }),
        (dT1, dT2) => {
          const mean = logMeanDifference.code({ dT1, dT2 });
          expect(mean).toBe(logMeanDifference.code({ dT1: dT2, dT2: dT1 }));
          expect(mean).toBeGreaterThanOrEqual(Math.sqrt(dT1 * dT2) * (1 - 1e-12));
          expect(mean).toBeLessThanOrEqual(((dT1 + dT2) / 2) * (1 + 1e-12));
        },
      ),
    );
  });
});

const NAMES: Readonly<Record<string, Arrangement>> = {
  counterflow: "counterflow",
  parallel: "parallel",
  "shell-and-tube 1-2 (1 shell, 2n tube passes)": "shell and tube",
  "crossflow, both unmixed (exact)": "crossflow unmixed",
  "crossflow, Cmin mixed": "crossflow mixed hot",
  "crossflow, Cmax mixed": "crossflow mixed cold",
};

/** How many rows each has in the golden file. */
const ROWS: Readonly<Record<string, number>> = {
  counterflow: 35,
  parallel: 38,
  "shell-and-tube 1-2 (1 shell, 2n tube passes)": 38,
  "crossflow, both unmixed (exact)": 37,
  "crossflow, Cmin mixed": 40,
  "crossflow, Cmax mixed": 36,
};

describe("effectiveness", () => {
  const rows = goldenRows("exchanger-entu.csv");

  it.each(Object.entries(NAMES))(
    "the effectiveness of %s agrees with 50 digits, and its inverse gives the transfer units back",
    (name, way) => {
      const own = rows.filter((row) => row.word("configuration") === name);
      expect(own).toHaveLength(ROWS[name] ?? 0);
      for (const row of own) {
        const [N, C, e] = [
          number(row.number("NTU")),
          number(row.number("Cr")),
          number(row.number("effectiveness_own")),
        ];
        close(effectivenessOf(way, N, C), e, 1e-11, `NTU ${N}, C ${C}`);
        if (mostEffectiveness(way, C) - e > 1e-5) close(unitsOf(way, e, C) / N, 1, 1e-6, `e ${e}, C ${C}`);
      }
    },
  );

  it("the effectiveness of a condensing stream is that of counterflow at capacity ratio 0", () => {
    for (const N of [0, 0.1, 1, 3, 10])
      expect(effectivenessOf("condensing", N, 0)).toBeCloseTo(effectivenessOf("counterflow", N, 0), 14);
  });

  const C01 = double({ min: 0, max: 1, noNaN: true });
  const units = double({ min: 0, max: 30, noNaN: true });
  const ways = constantFrom(...ARRANGEMENTS.filter((each) => each !== "condensing"));

  it("stays within 0, the counterflow's and the arrangement's own limit, and grows with transfer units", () => {
    assert(
      property(ways, units, C01, double({ min: 1, max: 2, noNaN: true }), (way, N, C, more) => {
        const e = effectivenessOf(way, N, C);
        expect(e).toBeGreaterThanOrEqual(0);
        expect(e).toBeLessThanOrEqual(mostEffectiveness(way, C) * (1 + 1e-12));
        expect(e).toBeLessThanOrEqual(effectivenessOf("counterflow", N, C) * (1 + 1e-12) + 1e-15);
        expect(effectivenessOf(way, N * more, C)).toBeGreaterThanOrEqual(e * (1 - 1e-12));
      }),
      { numRuns: 1000 },
    );
  });

  it("the number of transfer units inverts the effectiveness", () => {
    assert(
      property(ways, double({ min: 0.001, max: 5, noNaN: true }), C01, (way, N, C) => {
        const e = effectivenessOf(way, N, C);
        pre(mostEffectiveness(way, C) - e >= 1e-6);
        close(unitsOf(way, e, C) / N, 1, 1e-8, `${way} ${C}`);
      }),
      { numRuns: 1000 },
    );
  });

  it("stays finite and at its limits at 0 and 1,000 transfer units, capacity ratio 0 to 1", () => {
    for (const way of ARRANGEMENTS)
      for (const C of way === "condensing" ? [0] : [0, 1e-12, 1e-6, 0.5, 1 - 1e-12, 1]) {
        expect(effectivenessOf(way, 0, C)).toBeCloseTo(0, 14);
        const far = effectivenessOf(way, 1000, C);
        const missing = way.startsWith("crossflow unmixed") || way === "counterflow" ? 0.02 : 1e-9;
        close(far, mostEffectiveness(way, C), missing, `${way} ${C}`);
        expect(unitsOf(way, 0, C)).toBeCloseTo(0, 12);
      }
  });

  it("an effectiveness beyond an arrangement's limit has no transfer units, and the limit is named", () => {
    expect(() => unitsOf("parallel", 0.6, 1)).toThrow(/below 0.5 in parallel/);
    expect(() => unitsOf("shell and tube", 0.586, 1)).toThrow(/below 0.585786/);
    expect(() => unitsOf("crossflow mixed hot", 0.7, 1)).toThrow(/below 0.632121/);
    expect(() => unitsOf("crossflow mixed cold", 0.7, 1)).toThrow(/below 0.632121/);
    expect(() => unitsOf("crossflow unmixed", 0.9999, 1)).toThrow(/crossflow unmixed/);
    expect(() => effectivenessOf("condensing", 1, 0.5)).toThrow(/capacityRatio: must be 0/);
  });
});

describe("correction factor", () => {
  const rows = goldenRows("exchanger-F.csv");
  const endsOf = (row: (typeof rows)[number]) => ({
    hotIn: number(row.number("Thi_degC")) + 273.15,
    hotOut: number(row.number("Tho_degC")) + 273.15,
    coldIn: number(row.number("Tci_degC")) + 273.15,
    coldOut: number(row.number("Tco_degC")) + 273.15,
  });

  it("agrees with 50 digits, or is refused with the limit, on every row", () => {
    expect(rows.map((row) => row.word("F_exists")).filter((each) => each === "yes")).toHaveLength(120);
    expect(rows).toHaveLength(180);
    for (const row of rows) {
      const about = `${row.word("shells")} shells, R ${row.word("R")}, P ${row.word("P")}`;
      const work = () => correctionOf(endsOf(row), number(row.number("shells")));
      if (row.word("F_exists") === "yes") close(work(), number(row.number("F_own")), 1e-8, about);
      else {
        expect(work, about).toThrow(/no correction factor exists/);
        const limit = /must be below ([0-9.]+)/.exec(String(catchError(work)))?.[1];
        close(Number(limit), number(row.number("P_limit")), 1e-5, about);
      }
    }
  });

  it("the factor of two shells turns the counterflow's transfer units into those of the 2-4 rows", () => {
    const shells = goldenRows("exchanger-entu.csv").filter((row) => row.word("configuration").includes("2-4"));
    expect(shells.filter((row) => number(row.number("NTU")) <= 4)).toHaveLength(30);
    for (const row of shells) {
      const [N, C, e] = [number(row.number("NTU")), number(row.number("Cr")), number(row.number("effectiveness_own"))];
      if (N > 4) continue;
      const ends = { hotIn: 400, hotOut: 400 - 100 * e * C, coldIn: 300, coldOut: 300 + 100 * e };
      close(counterflowUnits.code({ e, C }) / correctionOf(ends, 2) / N, 1, 1e-6, `NTU ${N}, C ${C}`);
    }
  });

  it("the factor is the same with the streams' roles swapped, at most 1, and more shells never lower it", () => {
    const part = double({ min: 0.01, max: 0.55, noNaN: true });
    assert(
      property(part, part, (hot, cold) => {
        const one = correctionOf({ hotIn: 400, hotOut: 400 - 100 * hot, coldIn: 300, coldOut: 300 + 100 * cold }, 1);
        const other = correctionOf({ hotIn: 400, hotOut: 400 - 100 * cold, coldIn: 300, coldOut: 300 + 100 * hot }, 1);
        const two = correctionOf({ hotIn: 400, hotOut: 400 - 100 * hot, coldIn: 300, coldOut: 300 + 100 * cold }, 2);
        close(one, other, 1e-9, "swapped");
        expect(two).toBeLessThanOrEqual(1 + 1e-12);
        expect(two).toBeGreaterThanOrEqual(one - 1e-12);
      }),
    );
  });
});

const catchError = (work: () => unknown): unknown => {
  try {
    work();
  } catch (thrown) {
    return thrown;
  }
  return undefined;
};
