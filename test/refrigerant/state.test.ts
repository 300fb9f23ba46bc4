import { assert, constantFrom, double, pre, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { renderMarks } from "../../core/kernel/values/fault";
import { isFault } from "../../core/kernel/values/fault";
import { phaseState } from "../../core/refrigerant/helmholtz/substance";
import { isPure, loadRefrigerant, REFRIGERANTS } from "../../core/refrigerant/refrigerant";
import {
  saturatedState,
  refrigerantSaturationPressure,
  saturationTemperature,
} from "../../core/refrigerant/saturation/saturation";
import type { RefrigerantState } from "../../core/refrigerant/state/state";
import { stateAt } from "../../core/refrigerant/state/state";
import { stateByEnthalpy, stateByEntropy } from "../../core/refrigerant/state/stateBy";
import { fluidsIn, goldenRows, printedTolerance } from "./goldenRows";

const BLENDS = REFRIGERANTS.filter((name) => !isPure(loadRefrigerant(name)));
const rows = goldenRows("refrigerant-singlephase.csv");
const relative = (found: number, wanted: number) => Math.abs(found / wanted - 1);
const single = (state: RefrigerantState) => {
  if (state.phase === "two-phase") throw new Error("two-phase");
  return state;
};

describe("a state by pressure and temperature", () => {
  it.each(fluidsIn(rows))("a state of %s agrees with another program's rows", (name) => {
    const fluid = loadRefrigerant(name);
    const [rho, h, cp] = isPure(fluid) ? [2e-4, 50, 2e-3] : [1e-3, 200, 1e-2];
    const phases: Record<string, string> = { V: "vapour", L: "liquid", SC: "supercritical" };
    for (const row of rows.filter((r) => r.word("fluid") === name)) {
      const [T, p] = [row.number("T_K"), row.number("p_Pa")];
      // On the line itself pressure and temperature don't fix the state: the line's own side is asked instead.
      const region = row.word("region");
      const onLine = region !== "SC" && row.number("dT_K") === 0;
      const state = onLine ? saturatedState(fluid, T, region === "L" ? "bubble" : "dew") : single(stateAt(fluid, p, T));
      if (region !== "SC") expect(state.phase).toBe(phases[region]);
      expect(relative(state.density, row.number("rho_kg/m3"))).toBeLessThan(rho);
      expect(Math.abs(state.enthalpy - row.number("h_J/kg"))).toBeLessThan(h);
      expect(Math.abs(state.entropy - row.number("s_J/kg/K"))).toBeLessThan(h / 250);
      expect(relative(state.cp, row.number("cp_J/kg/K"))).toBeLessThan(cp);
      expect(relative(state.cv, row.number("cv_J/kg/K"))).toBeLessThan(cp);
      expect(relative(state.speedOfSound, row.number("w_m/s"))).toBeLessThan(cp);
    }
  });

  const printed = goldenRows("refrigerant-papers.csv").filter((row) => row.word("kind") === "state");
  it.each(printed.map((row) => [row.word("fluid"), row.number("T_K"), row.number("p_MPa"), row] as const))(
    "a state of %s at %d K and %d MPa reads as the paper prints it",
    (name, T, p, row) => {
      const state = single(stateAt(loadRefrigerant(name), p * 1e6, T));
      const check = (column: string, value: number) => {
        const text = row.text(column);
        if (text) expect(Math.abs(value - Number(text)), column).toBeLessThan(2 * printedTolerance(text));
      };
      check("density", state.density);
      check("h_kJ/kg", state.enthalpy / 1e3);
      check("cv_kJ/kg/K", state.cv / 1e3);
      check("cp_kJ/kg/K", state.cp / 1e3);
      check("w_m/s", state.speedOfSound);
    },
  );

  it("has heat capacities with cp above cv, and a speed of sound that the isentropic slope confirms", () => {
    assert(
      property(
        constantFrom(...REFRIGERANTS),
        double({ min: 0, max: 1, noNaN: true }),
        double({ min: -40, max: 60, noNaN: true }),
        (name, share, away) => {
          const fluid = loadRefrigerant(name);
          const T = fluid.coldest + 5 + share * (0.97 * fluid.critical.temperature - fluid.coldest - 5);
          pre(Math.abs(away) >= 0.5 && T + away >= fluid.coldest);
          const line = refrigerantSaturationPressure(fluid, T, away > 0 ? "dew" : "bubble");
          const near = single(stateAt(fluid, line, T + away));
          // A state by entropy is good to 1e-11 of its temperature. The pressures differ by enough for the densities to
          // differ by far more than that moves them: a liquid hardly gives way.
          const step = Math.max(1e-4 * line, 1e-6 * near.density * near.speedOfSound ** 2);
          const state = single(stateAt(fluid, line + (away > 0 ? 0 : step), T + away));
          expect(state.cp).toBeGreaterThan(state.cv);
          expect(state.cv).toBeGreaterThan(0);
          // The other route: density at the same entropy at a slightly changed pressure.
          const up = single(stateByEntropy(fluid, state.pressure + step, state.entropy));
          const down = single(stateByEntropy(fluid, state.pressure - step, state.entropy));
          pre(up.phase === state.phase && down.phase === state.phase);
          const slope = (2 * step) / (up.density - down.density);
          expect(relative(Math.sqrt(slope), state.speedOfSound)).toBeLessThan(1e-5);
        },
      ),
      { numRuns: 500, examples: [["R-454B", 0, -2.47195937]] },
    );
  });

  it("fits its own density: the equation of state gives the pressure back", () => {
    assert(
      property(
        constantFrom(...REFRIGERANTS),
        double({ min: 0, max: 1, noNaN: true }),
        double({ min: Math.log(2e4), max: Math.log(2e7), noNaN: true }),
        (name, share, log) => {
          const fluid = loadRefrigerant(name);
          const T = fluid.coldest + share * (fluid.range.limit - fluid.coldest);
          const p = Math.min(Math.exp(log), fluid.range.pressure);
          let state: RefrigerantState;
          try {
            state = stateAt(fluid, p, T);
          } catch (error) {
            expect(isFault(error)).toBe(true);
            return;
          }
          pre(state.phase !== "two-phase");
          const again = phaseState(fluid.substance, {
            phase: state.phase,
            temperature: T,
            density: state.density / fluid.substance.molarMass,
          });
          // A cold liquid's pressure is a small difference of large terms.
          const scale = Math.max(p, state.density * 8.3 * T * 1e-4);
          expect(Math.abs(again.pressure - p)).toBeLessThan(1e-7 * scale);
          expect(Number.isFinite(state.enthalpy + state.entropy + state.cp + state.speedOfSound)).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe("a state by pressure and entropy or enthalpy", () => {
  it("a state by pressure and entropy or enthalpy is the one by pressure and temperature", () => {
    assert(
      property(
        constantFrom(...REFRIGERANTS),
        double({ min: 0, max: 1, noNaN: true }),
        double({ min: Math.log(5e4), max: Math.log(1.5e7), noNaN: true }),
        (name, share, log) => {
          const fluid = loadRefrigerant(name);
          const T = fluid.coldest + 2 + share * (fluid.range.limit - fluid.coldest - 4);
          const p = Math.min(Math.exp(log), fluid.range.pressure);
          // Next to the critical point neither coordinate moves with temperature as it should for a comparison.
          pre(relative(T, fluid.critical.temperature) >= 0.02 || relative(p, fluid.critical.pressure) >= 0.1);
          const state = stateAt(fluid, p, T);
          pre(state.phase !== "two-phase");
          for (const again of [stateByEntropy(fluid, p, state.entropy), stateByEnthalpy(fluid, p, state.enthalpy)]) {
            expect(Math.abs(again.temperature - T)).toBeLessThan(2e-5);
            expect(relative(again.density, state.density)).toBeLessThan(1e-5);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("a pure fluid between bubble and dew point mixes the two by the lever rule", () => {
    const fluid = loadRefrigerant("R-32");
    const [L, V] = [saturatedState(fluid, 280, "bubble"), saturatedState(fluid, 280, "dew")];
    const state = stateByEnthalpy(fluid, L.pressure, 0.7 * L.enthalpy + 0.3 * V.enthalpy);
    if (state.phase !== "two-phase") throw new Error("one phase");
    expect(state.quality).toBeCloseTo(0.3, 9);
    expect(state.temperature).toBeCloseTo(280, 9);
    expect(1 / state.density).toBeCloseTo(0.7 / L.density + 0.3 / V.density, 12);
  });

  it("a blend inside its glide has the temperature whose flash has the enthalpy", () => {
    for (const name of BLENDS) {
      const fluid = loadRefrigerant(name);
      const p = refrigerantSaturationPressure(fluid, 280, "bubble");
      const [from, to] = [280, saturationTemperature(fluid, p, "dew")];
      const inside = stateAt(fluid, p, from + 0.4 * (to - from));
      expect(inside.phase).toBe("two-phase");
      const again = stateByEnthalpy(fluid, p, inside.enthalpy);
      expect(Math.abs(again.temperature - inside.temperature)).toBeLessThan(1e-7);
      expect(relative(again.density, inside.density)).toBeLessThan(1e-5);
    }
  });

  it("an entropy or enthalpy out of reach, or no number, is refused", () => {
    const caught = (call: () => unknown): unknown => {
      try {
        return call();
      } catch (error) {
        return error;
      }
    };
    for (const name of ["R-134a", "R-407C"]) {
      const fluid = loadRefrigerant(name);
      for (const value of [5e3, -5e3, NaN, Infinity])
        expect(isFault(caught(() => stateByEntropy(fluid, 1e5, value)))).toBe(true);
      expect(isFault(caught(() => stateByEnthalpy(fluid, 1e7, 9e6)))).toBe(true);
      expect(isFault(caught(() => stateByEnthalpy(fluid, NaN, 3e5)))).toBe(true);
      expect(isFault(caught(() => stateByEnthalpy(fluid, 0, 3e5)))).toBe(true);
    }
  });
});

describe("inside a blend's glide", () => {
  it("both phases are in equilibrium and their mix has the blend's composition", () => {
    for (const name of BLENDS) {
      const fluid = loadRefrigerant(name);
      const z = fluid.components.map((part) => part.moleFraction);
      for (const T of [215, 260, 300, 0.97 * fluid.critical.temperature]) {
        const [low, high] = [
          refrigerantSaturationPressure(fluid, T, "dew"),
          refrigerantSaturationPressure(fluid, T, "bubble"),
        ];
        for (const share of [0.02, 0.3, 0.5, 0.9, 0.99]) {
          const state = stateAt(fluid, low + share * (high - low), T);
          if (state.phase !== "two-phase") throw new Error(`${name}: one phase`);
          const { x, y, residual, passes } = state.flash!;
          expect(residual).toBeLessThan(1e-9);
          expect(passes).toBeLessThanOrEqual(30);
          // Vapour's share by mole, from any component, is the same.
          const mole = (fractions: readonly number[]) =>
            fluid.components.reduce((sum, part, i) => sum + fractions[i]! * part.fluid.molarMass, 0);
          const moles = state.quality / mole(y) / (state.quality / mole(y) + (1 - state.quality) / mole(x));
          z.forEach((part, i) => expect(moles * y[i]! + (1 - moles) * x[i]!).toBeCloseTo(part, 9));
          expect(state.liquid.density).toBeGreaterThan(state.vapour.density);
        }
      }
    }
  });

  it("the flash meets the saturated states at the ends of the glide", () => {
    const fluid = loadRefrigerant("R-407C");
    const [low, high] = [
      refrigerantSaturationPressure(fluid, 290, "dew"),
      refrigerantSaturationPressure(fluid, 290, "bubble"),
    ];
    const [wet, dry] = [stateAt(fluid, high * (1 - 1e-7), 290), stateAt(fluid, low * (1 + 1e-7), 290)];
    expect(wet.enthalpy).toBeCloseTo(saturatedState(fluid, 290, "bubble").enthalpy, -1);
    expect(dry.enthalpy).toBeCloseTo(saturatedState(fluid, 290, "dew").enthalpy, -1);
  });
});

describe("refusals of a state", () => {
  const refused = (call: () => unknown): string => {
    try {
      call();
    } catch (error) {
      if (isFault(error)) return renderMarks(error.message, "SI");
      throw error;
    }
    return "answered";
  };

  it("a pure fluid on its line is refused, a little off it is answered", () => {
    const fluid = loadRefrigerant("R-134a");
    const p = refrigerantSaturationPressure(fluid, 300, "dew");
    expect(refused(() => stateAt(fluid, p, 300))).toContain("don't fix the phase");
    expect(stateAt(fluid, p, 300.001).phase).toBe("vapour");
    expect(stateAt(fluid, p, 299.999).phase).toBe("liquid");
  });

  it("R-744 above its critical point is a state", () => {
    const state = stateAt(loadRefrigerant("R-744"), 10e6, 313.15);
    expect(state.phase).toBe("supercritical");
    expect(state.density).toBeGreaterThan(600);
  });

  it("the critical point itself is refused by name", () => {
    const { critical, name } = loadRefrigerant("R-744");
    const message = refused(() => stateAt(loadRefrigerant(name), critical.pressure, critical.temperature));
    expect(message).toContain("critical point (30.9782 °C");
  });

  it("a refusal beyond the equation's range names the limit and what came", () => {
    const fluid = loadRefrigerant("R-1234yf");
    expect(refused(() => stateAt(fluid, 1e5, 480))).toContain("to 177.85 °C, got 206.85 °C");
    expect(refused(() => stateAt(fluid, 1e5, 100))).toContain("got -173.15 °C");
    expect(refused(() => stateAt(fluid, -1, 300))).toContain("got -0.001 kPa absolute");
    expect(refused(() => stateAt(fluid, 2e8, 300))).toContain("to 100000 kPa absolute");
    expect(refused(() => stateAt(fluid, NaN, 300))).toContain("R-1234yf pressure: must be from 0.001");
    expect(refused(() => stateAt(fluid, 1e5, NaN))).toContain("R-1234yf temperature: must be from");
  });
});

describe("at an azeotrope", () => {
  it("the lever rule between dew and bubble pressure replaces the flash at an azeotrope", () => {
    const fluid = loadRefrigerant("R-507A");
    // Near 220 K both curves of R-507A run together to 1e-9.
    const T = 220;
    const [low, high] = [
      refrigerantSaturationPressure(fluid, T, "dew"),
      refrigerantSaturationPressure(fluid, T, "bubble"),
    ];
    expect(high / low - 1).toBeLessThan(1e-6);
    const enthalpy = saturatedState(fluid, T, "bubble").enthalpy * 0.5 + saturatedState(fluid, T, "dew").enthalpy * 0.5;
    const state = stateByEnthalpy(fluid, low, enthalpy);
    if (state.phase !== "two-phase") throw new Error("one phase");
    expect(state.quality).toBeCloseTo(0.5, 3);
    expect(Math.abs(state.temperature - T)).toBeLessThan(1e-5);
  });
});
