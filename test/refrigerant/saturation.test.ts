import { assert, constantFrom, double, pre, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { inSystem } from "../../core/kernel/fault";
import { isOutside } from "../../core/numeric/outside";
import type { Fluid } from "../../core/refrigerant/models/refrigerant";
import { isPure, refrigerant, REFRIGERANTS } from "../../core/refrigerant/models/refrigerant";
import { saturatedState, saturationPressure, saturationTemperature } from "../../core/refrigerant/models/saturation";
import { fluidsIn, goldenRows, printedTolerance } from "./goldenRows";

const ALL = [...REFRIGERANTS, "R-125", "R-143a"];
const rows = goldenRows("refrigerant-saturation.csv");
const relative = (found: number, wanted: number) => Math.abs(found / wanted - 1);
const span = (fluid: Fluid, share: number) => fluid.coldest + share * (fluid.warmestSaturated - fluid.coldest);

describe("saturation against another program's rows", () => {
  it.each(fluidsIn(rows))("%s agrees on both curves", (name) => {
    const fluid = refrigerant(name);
    const pure = isPure(fluid);
    // Share of pressure, share of density, J/kg, share of heat capacity.
    const [p, rho, h, cp] = pure ? [1e-4, 2e-4, 50, 2e-3] : [1e-3, 1e-3, 200, 1e-2];
    for (const row of rows.filter((r) => r.word("fluid") === name)) {
      const T = row.number("T_K");
      expect(relative(saturationPressure(fluid, T, "bubble"), row.number("p_bubble_Pa"))).toBeLessThan(p);
      expect(relative(saturationPressure(fluid, T, "dew"), row.number("p_dew_Pa"))).toBeLessThan(p);
      const dewTemperature = saturationTemperature(fluid, row.number("p_bubble_Pa"), "dew");
      expect(Math.abs(dewTemperature - row.number("T_dew_at_pbub_K"))).toBeLessThan(0.01);
      for (const [curve, phase] of [
        ["bubble", "L"],
        ["dew", "V"],
      ] as const) {
        const found = saturatedState(fluid, T, curve);
        expect(relative(found.density, row.number(`rho${phase}_kg/m3`))).toBeLessThan(rho);
        expect(Math.abs(found.enthalpy - row.number(`h${phase}_J/kg`))).toBeLessThan(h);
        expect(Math.abs(found.entropy - row.number(`s${phase}_J/kg/K`))).toBeLessThan(h / 250);
        expect(relative(found.cp, row.number(`cp${phase}_J/kg/K`))).toBeLessThan(cp);
        expect(relative(found.speedOfSound, row.number(`w${phase}_m/s`))).toBeLessThan(cp);
      }
    }
  });
});

describe("saturation against print", () => {
  const printed = goldenRows("refrigerant-papers.csv").filter((r) => ["bubble", "dew"].includes(r.word("kind")));
  it.each(printed.map((row) => [row.word("fluid"), row.word("kind"), row.number("T_K"), row] as const))(
    "%s %s at %d K reads as the paper prints it",
    (name, kind, T, row) => {
      const found = saturatedState(refrigerant(name), T, kind === "bubble" ? "bubble" : "dew");
      const check = (column: string, value: number) => {
        const text = row.text(column);
        // The papers print the last digit cut off as often as rounded.
        if (text) expect(Math.abs(value - Number(text)), column).toBeLessThan(2 * printedTolerance(text));
      };
      check("p_MPa", found.pressure / 1e6);
      check("density", found.density);
      check("h_kJ/kg", found.enthalpy / 1e3);
      check("cv_kJ/kg/K", found.cv / 1e3);
      check("cp_kJ/kg/K", found.cp / 1e3);
      check("w_m/s", found.speedOfSound);
    },
  );

  const tables = goldenRows("refrigerant-pressure-tables.csv");
  it.each(fluidsIn(tables))("%s agrees with its printed pressure-temperature table", (name) => {
    const fluid = refrigerant(name);
    const psig = (pressure: number) => (pressure - 101325) / 6894.757293168;
    for (const row of tables.filter((r) => r.word("fluid") === name)) {
      const T = (row.number("T_F") + 459.67) / 1.8;
      const bubble = psig(saturationPressure(fluid, T, "bubble"));
      if (row.word("within_psi") === "between") {
        expect(row.number("p_psig")).toBeLessThan(bubble);
        expect(row.number("p_psig")).toBeGreaterThan(psig(saturationPressure(fluid, T, "dew")));
      } else {
        expect(Math.abs(bubble - row.number("p_psig"))).toBeLessThan(row.number("within_psi"));
      }
    }
  });

  it("the saturated liquid at 0 degC reads the zero of the International Institute of Refrigeration", () => {
    for (const name of ALL) {
      const { enthalpy, entropy } = saturatedState(refrigerant(name), 273.15, "bubble");
      expect(enthalpy).toBeCloseTo(200e3, 1);
      expect(entropy).toBeCloseTo(1e3, 3);
    }
  });
});

const names = constantFrom(...ALL);
const curves = constantFrom("bubble" as const, "dew" as const);
const share = double({ min: 0, max: 1, noNaN: true });

describe("saturation lines", () => {
  it("the lines lead from temperature to pressure and back to within 1e-9 K", () => {
    assert(
      property(names, curves, share, (name, curve, at) => {
        const fluid = refrigerant(name);
        const T = span(fluid, at);
        const back = saturationTemperature(fluid, saturationPressure(fluid, T, curve), curve);
        expect(Math.abs(back - T)).toBeLessThan(1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  it("the saturation pressure rises with temperature", () => {
    assert(
      property(names, curves, share, share, (name, curve, a, b) => {
        const fluid = refrigerant(name);
        const [low, high] = [span(fluid, Math.min(a, b)), span(fluid, Math.max(a, b))];
        pre(high - low >= 1e-6);
        expect(saturationPressure(fluid, high, curve)).toBeGreaterThan(saturationPressure(fluid, low, curve));
      }),
      { numRuns: 1000 },
    );
  });

  it("the dew pressure never exceeds the bubble pressure", () => {
    for (const name of ALL) {
      const fluid = refrigerant(name);
      for (let i = 0; i <= 500; i++) {
        const T = span(fluid, i / 500);
        const bubble = saturationPressure(fluid, T, "bubble");
        expect(saturationPressure(fluid, T, "dew")).toBeLessThanOrEqual(bubble * (1 + 1e-8));
      }
    }
  });

  it("pure fluids obey Clapeyron's relation below 0.98 of the critical temperature", () => {
    for (const name of ALL.filter((n) => isPure(refrigerant(n)))) {
      const fluid = refrigerant(name);
      for (let i = 1; i < 40; i++) {
        const T = fluid.coldest + (i / 40) * (0.98 * fluid.critical.temperature - fluid.coldest);
        const step = 1e-3;
        const slope =
          (saturationPressure(fluid, T + step, "dew") - saturationPressure(fluid, T - step, "dew")) / (2 * step);
        const [L, V] = [saturatedState(fluid, T, "bubble"), saturatedState(fluid, T, "dew")];
        const latent = T * slope * (1 / V.density - 1 / L.density);
        expect(relative(latent, V.enthalpy - L.enthalpy)).toBeLessThan(1e-3);
      }
    }
  });

  it("the lines reach 0.99 of the critical temperature or more", () => {
    for (const name of ALL) {
      const { warmestSaturated, critical } = refrigerant(name);
      expect(warmestSaturated / critical.temperature).toBeGreaterThanOrEqual(0.99);
    }
  });
});

describe("outside the saturation lines", () => {
  const refused = (call: () => unknown): string => {
    try {
      call();
    } catch (error) {
      if (isOutside(error)) return inSystem(error.message, "SI");
      throw error;
    }
    return "answered";
  };

  it("a refusal above the critical temperature names it", () => {
    const message = refused(() => saturationPressure(refrigerant("R-744"), 310, "dew"));
    expect(message).toContain("R-744 saturation temperature");
    expect(message).toContain("critical temperature, 30.9782 °C");
    expect(message).toContain("got 36.85 °C");
  });

  it("a refusal below the fit names the range", () => {
    expect(refused(() => saturationPressure(refrigerant("R-32"), 100, "dew"))).toContain("from -83.15 °C");
    expect(refused(() => saturationTemperature(refrigerant("R-32"), 1, "dew"))).toContain("got 0.001 kPa absolute");
    expect(refused(() => saturationTemperature(refrigerant("R-32"), 7e6, "dew"))).toContain("critical pressure");
  });

  it("NaN is refused, not answered with NaN", () => {
    expect(refused(() => saturationPressure(refrigerant("R-32"), NaN, "dew"))).toContain(
      "R-32 saturation temperature: must be",
    );
    expect(refused(() => saturationTemperature(refrigerant("R-32"), NaN, "dew"))).toContain(
      "R-32 saturation pressure: must be",
    );
    expect(refused(() => saturationTemperature(refrigerant("R-32"), -5, "dew"))).toContain(
      "R-32 saturation pressure: must be",
    );
  });

  it("an unknown refrigerant is answered with the list", () => {
    expect(refused(() => refrigerant("R-999"))).toContain("R-454B");
    expect(refrigerant("r 410 a").name).toBe("R-410A");
  });
});
