import { describe, expect, test } from "vitest";
import { us } from "../../core/kernel/values/quantity";
import { balanceWater, siteFactor, type PoolWater } from "../../core/water/scale";
import { cellsIn, numberIn, type GoldenCells } from "../golden/rows";

const rows = cellsIn("saturation-index.csv");

const waterOf = (row: GoldenCells): PoolWater => ({
  water: us("temperature", numberIn(row, "bulk_degF")),
  pH: numberIn(row, "pH"),
  calciumHardness: numberIn(row, "calcium_hardness"),
  totalAlkalinity: numberIn(row, "total_alkalinity"),
  cyanuricAcid: numberIn(row, "cyanuric_acid"),
  borate: numberIn(row, "boron_mg_L"),
  dissolvedSolids: numberIn(row, "TDS_mg_L"),
  salt: numberIn(row, "of_it_NaCl_mg_L"),
});

const balanceOf = (row: GoldenCells) => balanceWater(waterOf(row), us("temperature", numberIn(row, "film_degF")));

describe("the saturation index", () => {
  // The rows are printed to 7 digits.
  test("repeats every row of another program with the same constants", () => {
    for (const row of rows) {
      const found = balanceOf(row);
      expect(Math.abs(found.index - numberIn(row, "SI_bulk"))).toBeLessThan(1e-6);
      expect(Math.abs(found.filmIndex - numberIn(row, "SI_film"))).toBeLessThan(1e-6);
      expect(Math.abs(found.filmPh - numberIn(row, "pH_film"))).toBeLessThan(1e-6);
      expect(Math.abs(found.filmIndexPhHeld - numberIn(row, "SI_film_pH_held"))).toBeLessThan(1e-6);
      expect(Math.abs(found.precipitation - numberIn(row, "CCPP_bulk_mg_L"))).toBeLessThan(2e-5);
      expect(Math.abs(found.filmPrecipitation - numberIn(row, "CCPP_film_mg_L"))).toBeLessThan(2e-5);
      expect(Math.abs(found.siteTable - numberIn(row, "SI_site_table"))).toBeLessThan(1e-6);
      expect(Math.abs(found.carbonateAlkalinity - numberIn(row, "carbonate_alkalinity"))).toBeLessThan(1e-4);
    }
  });

  // PHREEQC counts ion pairs, which the index leaves out: stated as 0.017 on average, 0.17 at most.
  test("lies within 0.18 of PHREEQC at the water's temperature, and 0.02 on average", () => {
    const differences = rows.map((row) => balanceOf(row).index - numberIn(row, "PHREEQC_SI_bulk"));
    expect(Math.max(...differences.map(Math.abs))).toBeLessThan(0.18);
    expect(Math.abs(differences.reduce((a, b) => a + b, 0) / differences.length)).toBeLessThan(0.02);
  });

  test("rises with pH, hardness, alkalinity and film temperature", () => {
    for (const row of rows.slice(0, 60)) {
      const water = waterOf(row);
      const film = us("temperature", numberIn(row, "film_degF"));
      const at = (more: Partial<PoolWater>, warmer = 0) => balanceWater({ ...water, ...more }, film + warmer);
      const plain = at({});
      expect(at({ pH: water.pH + 0.05 }).index).toBeGreaterThan(plain.index);
      expect(at({ calciumHardness: water.calciumHardness * 1.1 }).index).toBeGreaterThan(plain.index);
      expect(at({ totalAlkalinity: water.totalAlkalinity * 1.1 }).index).toBeGreaterThan(plain.index);
      expect(at({}, 3).filmIndex).toBeGreaterThan(plain.filmIndex);
      expect(balanceWater(water, water.water).filmIndex).toBeCloseTo(plain.index, 7);
      // Cyanurate may leave no pH that balances the water.
      if (!Number.isNaN(plain.balancedPh)) expect(at({ pH: plain.balancedPh }).index).toBeCloseTo(0, 6);
    }
  });

  test("joins the site's temperature factors by straight lines", () => {
    expect(siteFactor(us("temperature", 76))).toBeCloseTo(0.6, 9);
    expect(siteFactor(us("temperature", 80))).toBeCloseTo(0.65, 9);
    expect(siteFactor(us("temperature", 140))).toBe(1);
  });
});
