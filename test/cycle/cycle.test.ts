import { assert, constantFrom, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { afterExpansion, cycle } from "../../core/cycle/models/cycle";
import { inSystem } from "../../core/kernel/fault";
import { isOutside } from "../../core/numeric/outside";
import { refrigerant, REFRIGERANTS } from "../../core/refrigerant/models/refrigerant";
import { fluidsIn, goldenRows } from "../refrigerant/goldenRows";

const rows = goldenRows("refrigerant-cycle.csv");

describe("the cycle", () => {
  it.each(fluidsIn(rows))("the cycle of %s agrees with another program's rows", (name) => {
    for (const row of rows.filter((r) => r.word("fluid") === name)) {
      const c = cycle({
        refrigerant: refrigerant(name),
        evaporating: row.number("Te_dew_K"),
        condensing: row.number("Tc_dew_K"),
        superheat: row.number("SH_K"),
        subcooling: row.number("SC_K"),
        efficiency: row.number("eta_is"),
      });
      const near = (found: number, column: string, within: number) =>
        expect(Math.abs(found - row.number(column)), column).toBeLessThan(within);
      const share = (found: number, column: string, within: number) =>
        expect(Math.abs(found / row.number(column) - 1), column).toBeLessThan(within);
      share(c.cop, "COP_c", 1e-3);
      share(c.heatingCop, "COP_h", 1e-3);
      share(c.rejectionFactor, "HR_rejected_per_cooling", 1e-3);
      share(c.volumetricCooling, "vol_cooling_J/m3", 1e-3);
      share(c.suction.density, "rho1_kg/m3", 1e-3);
      near(c.discharge.temperature, "T2_K", 0.1);
      near(c.isentropicDischarge.temperature, "T2s_K", 0.1);
      near(c.bubble.temperature, "T_bub_c_K", 0.01);
      near(c.liquid.temperature, "T3_K", 0.01);
      near(afterExpansion(c).temperature, "T4_K", 0.05);
      near(c.shares.desuperheating, "share_desuper", 1e-3);
      near(c.shares.condensing, "share_cond", 1e-3);
      near(c.shares.subcooling, "share_subcool", 1e-3);
    }
  });

  it("closes its energy balance, and its shares sum to one", () => {
    assert(
      property(
        constantFrom(...REFRIGERANTS.filter((name) => name !== "R-744")),
        double({ min: 243, max: 288, noNaN: true }),
        double({ min: 3, max: 50, noNaN: true }),
        double({ min: 0, max: 15, noNaN: true }),
        double({ min: 0, max: 20, noNaN: true }),
        double({ min: 0.55, max: 1, noNaN: true }),
        (name, evaporating, lift, superheat, subcooling, efficiency) => {
          const fluid = refrigerant(name);
          const condensing = Math.min(evaporating + lift, 0.95 * fluid.critical.temperature);
          const c = cycle({ refrigerant: fluid, evaporating, condensing, superheat, subcooling, efficiency });
          expect(Math.abs((c.cooling + c.work) / c.rejected - 1)).toBeLessThan(1e-9);
          const { desuperheating, condensing: mid, subcooling: last } = c.shares;
          expect(Math.abs(desuperheating + mid + last - 1)).toBeLessThan(1e-9);
          expect(c.heatingCop - c.cop).toBeCloseTo(1, 7);
          expect(Math.abs(c.isentropicDischarge.entropy - c.suction.entropy)).toBeLessThan(1e-5);
          expect(c.discharge.enthalpy).toBeGreaterThanOrEqual(c.isentropicDischarge.enthalpy - 1e-3);
          // Carnot between the dew temperatures bounds the COP; a subcooled liquid and a glide lend a little.
          expect(c.cop).toBeLessThan(((evaporating + superheat) / (condensing - evaporating)) * 1.4);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("the isentropic compression may end wet, where the dew line overhangs", () => {
    const c = cycle({
      refrigerant: refrigerant("R-600a"),
      evaporating: 263.15,
      condensing: 323.15,
      superheat: 0,
      subcooling: 0,
      efficiency: 1,
    });
    expect(c.isentropicDischarge.phase).toBe("two-phase");
    expect(c.shares.desuperheating).toBeLessThan(0);
    expect(Math.abs((c.cooling + c.work) / c.rejected - 1)).toBeLessThan(1e-9);
  });

  it("expands at constant enthalpy into the two-phase region at the evaporating pressure", () => {
    for (const name of ["R-410A", "R-407C", "R-290"]) {
      const c = cycle({
        refrigerant: refrigerant(name),
        evaporating: 275,
        condensing: 318,
        superheat: 5,
        subcooling: 5,
        efficiency: 0.7,
      });
      const after = afterExpansion(c);
      if (after.phase !== "two-phase") throw new Error("one phase");
      expect(after.enthalpy).toBeCloseTo(c.liquid.enthalpy, 1);
      expect(after.pressure).toBeCloseTo(c.evaporatingPressure, 3);
      expect(after.quality).toBeGreaterThan(0.1);
      // The evaporating temperature is the dew point: a blend with glide enters colder.
      expect(after.temperature).toBeLessThanOrEqual(275 + 1e-9);
    }
  });
});

describe("refusals of the cycle", () => {
  const at = { evaporating: 275, condensing: 318, superheat: 5, subcooling: 5, efficiency: 0.7 };
  const refused = (name: string, change: Partial<typeof at>): string => {
    try {
      cycle({ refrigerant: refrigerant(name), ...at, ...change });
    } catch (error) {
      if (isOutside(error)) return inSystem(error.message, "SI");
      throw error;
    }
    return "answered";
  };

  it("refuses to condense R-744 above its critical temperature", () => {
    expect(refused("R-744", {})).toContain("critical temperature, 30.9782 °C, got 44.85 °C");
  });

  it("names each argument that leaves its limits", () => {
    expect(refused("R-32", { condensing: 270 })).toContain("condensing temperature");
    expect(refused("R-32", { superheat: -1 })).toContain("superheat: must be 0 K or more, got -1 K");
    expect(refused("R-32", { subcooling: -1 })).toContain("subcooling");
    expect(refused("R-32", { efficiency: 0 })).toContain("efficiency");
    expect(refused("R-32", { efficiency: 1.2 })).toContain("at most 1, got 1.2");
    expect(refused("R-32", { evaporating: NaN })).toContain("R-32 condensing temperature: must be");
  });
});
