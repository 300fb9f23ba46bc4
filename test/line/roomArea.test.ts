import { assert, constantFrom, double, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { isFault, type Fault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

const call = (id: string, ...raw: readonly unknown[]): unknown => {
  const compiled = COMPILED.get(id);
  if (!compiled) throw new Error(`no ${id}`);
  return evaluate(compiled, raw, CATALOGUE);
};

const listOf = (...raw: readonly unknown[]): ReadonlyMap<string, number | string | Fault> => {
  const out = call("LINE.ROOMLIMIT", ...raw);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as [string, number | string | Fault][]).map(([label, value]) => [label, value]));
};

const UNVENTILATED = "unventilated";
const PRINTED = "unventilated as printed";
const CIRCULATION = "circulation 0.5";

/** Ceilings for a release at 2.2 m are as high as that. */
const areaOf = (row: GoldenCells, method: string): unknown =>
  call(
    "LINE.ROOMAREA",
    row["refrigerant"],
    numberIn(row, "charge_kg"),
    numberIn(row, "h0_m"),
    method,
    2.2,
    numberIn(row, "LFL_kg_m3"),
    0,
    "SI",
  );

const deviation = (got: unknown, wanted: number): number => Math.abs(Number(got) / wanted - 1);

describe("rooms of the independent grid", () => {
  const rows = cellsIn("room-charge.csv");

  // The grid prints ten digits of the same published equations.
  test.each([
    [UNVENTILATED, "A_unventilated_capped_m2"],
    [PRINTED, "A_unventilated_m2"],
    [CIRCULATION, "A_circulation_0.5_m2"],
  ])("least area by the method %s agrees to nine digits", (method, column) => {
    for (const row of rows) {
      const got = areaOf(row, method);
      const band = wordIn(row, "band");
      if (row[column] !== "") expect(deviation(got, numberIn(row, column)), JSON.stringify(row)).toBeLessThan(1e-8);
      else if (band === "up to m1") expect(got).toBe(0);
      else expect(isFault(got) && got.code, JSON.stringify(row)).toBe("#N/A");
    }
  });

  test("bounds and circulation agree to nine digits", () => {
    for (const row of rows) {
      const charge = numberIn(row, "charge_kg");
      const limit = numberIn(row, "LFL_kg_m3");
      const list = listOf(row["refrigerant"], 100, numberIn(row, "h0_m"), charge, CIRCULATION, 2.2, limit, 0, "SI");
      expect(deviation(list.get("charge without limit"), numberIn(row, "m1_kg"))).toBeLessThan(1e-8);
      expect(deviation(list.get("charge ceiling"), numberIn(row, "m2_kg"))).toBeLessThan(1e-8);
      expect(deviation(list.get("charge of scope"), numberIn(row, "m3_kg"))).toBeLessThan(1e-8);
      if (row["Qmin_30_m3_h"] !== "")
        expect(deviation(list.get("least circulation"), numberIn(row, "Qmin_30_m3_h"))).toBeLessThan(1e-8);
    }
  });
});

describe("LINE.ROOMAREA", () => {
  // Manual of an R-32 hydronic unit, table of areas at a release height of 0.6 m: two decimals, 0.307 kg/m³.
  test.each([
    [1.84, 28.81],
    [1.9, 30.72],
    [2, 34.04],
    [2.2, 41.19],
    [2.5, 53.19],
    [2.8, 66.72],
    [3, 76.6],
    [3.3, 92.68],
    [3.5, 104.26],
  ])("asks for %s kg of R-32 the area that the manual prints, %s m²", (kg, area) =>
    expect(Math.abs(Number(call("LINE.ROOMAREA", "R-32", kg, 0.6, PRINTED, 2.2, 0.307, 0, "SI")) - area)).toBeLessThan(
      0.02,
    ),
  );

  test("asks the ceiling and wall areas of the manual only as printed", () => {
    const at = (h0: number, method: string) =>
      Number(call("LINE.ROOMAREA", "R-32", 1.85, h0, method, 2.2, 0.307, 0, "SI"));
    expect(at(1.8, PRINTED)).toBeCloseTo(3.2 * (1.85 / 1.84) ** 2, 1);
    // 1.85 / (0.75 × 0.307 × 1.8)
    expect(at(1.8, UNVENTILATED)).toBeCloseTo(4.464, 3);
  });

  test("takes 7.2 ft and 2.2 m of ceiling as the same height", () => {
    const at = (height: number | string) => call("LINE.ROOMAREA", "R-454B", 9.4, 7, CIRCULATION, height);
    expect(at("7.2 ft")).toBe(at("2.2 m"));
    expect(at(9)).toBe(at("2.2 m"));
    expect(Number(at(7))).toBeGreaterThan(Number(at(7.2)));
  });

  test("grows with the pool exchanger and its lines as worked by hand", () => {
    // R-454B (0.296 kg/m³): 7.0 lb alone, 9.4 lb with coil and lines; 2.2 m, half the limit; wall 1.8 m unventilated.
    const at = (charge: number, method: string, height: number | string) =>
      Number(call("LINE.ROOMAREA", "R-454B", charge, height, method));
    expect(at(7, CIRCULATION, 7.2)).toBeCloseTo(105, 1);
    expect(at(9.4, CIRCULATION, 7.2)).toBeCloseTo(141, 1);
    expect(at(7, UNVENTILATED, "1.8 m") * 0.09290304).toBeCloseTo(10.44, 2);
    expect(at(9.4, UNVENTILATED, "1.8 m") * 0.09290304).toBeCloseTo(18.83, 2);
    const airflow = (charge: number) => Number(listOf("R-454B", 900, 7.2, charge).get("least circulation"));
    expect(airflow(7)).toBeCloseTo(189, 0);
    expect(airflow(9.4)).toBeCloseTo(254, 0);
  });

  test("is the inverse of the room's limit in every method", () => {
    assert(
      property(
        constantFrom(UNVENTILATED, PRINTED, CIRCULATION),
        constantFrom("R-32", "R-454B", "R-1234yf"),
        double({ min: 2, max: 14, noNaN: true }),
        double({ min: 0.6, max: 2.2, noNaN: true }),
        (method, refrigerant, charge, height) => {
          const area = Number(call("LINE.ROOMAREA", refrigerant, charge, height, method, 2.2, "", 0, "SI"));
          const limit = Number(listOf(refrigerant, area, height, charge, method, 2.2, "", 0, "SI").get("charge limit"));
          expect(limit / charge).toBeCloseTo(1, 8);
        },
      ),
      { numRuns: 100 },
    );
  });

  test("refuses altitudes above 2,000 ft, whose factor isn't held", () => {
    expect(isFault(call("LINE.ROOMAREA", "R-32", 9, 6, UNVENTILATED, 8, "", 2001))).toBe(true);
    expect(isFault(call("LINE.ROOMAREA", "R-32", 9, 6, UNVENTILATED, 8, "", 2000))).toBe(false);
  });

  test("refuses a release above the ceiling and names both", () => {
    const out = call("LINE.ROOMAREA", "R-32", 9, 8);
    expect(isFault(out) && out.message).toMatch(/releaseHeight: must be at most ceilingHeight, 7.2 ft, got 8 ft/);
  });
});

describe("LINE.ROOMLIMIT with a charge", () => {
  test("says within or above, and never that a charge is allowed", () => {
    for (const [charge, word] of [
      [5, "within"],
      [30, "above"],
      [400, "above"],
    ] as const) {
      const list = listOf("R-32", 300, 6, charge);
      expect(list.get("finding")).toMatch(new RegExp(`^${word}`));
      expect([...list.values()].join(" ")).not.toMatch(/allowed|permitted/);
    }
  });

  test("gives the dispersal volume of a room of 12 × 14 × 8 ft as worked by hand", () => {
    // 0.5 × 0.306 × 38.06 m³ = 5.823 kg; RCL 0.077 × 38.06 = 2.930 kg.
    const list = listOf("R-32", 168, 6, "", "", 8);
    expect(list.get("dispersal limit")).toBeCloseTo(12.84, 2);
    expect(list.get("concentration limit")).toBeCloseTo(6.46, 2);
  });

  test("fails only the row of the area where the charge is above the band", () => {
    const list = listOf("R-32", 300, 6, 60);
    expect(isFault(list.get("least area"))).toBe(true);
    expect(list.get("charge limit")).toBeGreaterThan(0);
  });
});
