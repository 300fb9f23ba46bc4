import { assert, constantFrom, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { vapourPressureOfAir } from "../../core/air/models/moistAir";
import { recorder, type Step } from "../../core/kernel/steps";
import { evaporationOf, transferCoefficient, type EvaporationMethod } from "../../core/pool/evaporation/evaporation";
import { METHODS } from "../../core/pool/args";
import { latentHeatOfWater } from "../../core/water/models/latentHeat";
import { vapourPressureOfWater } from "../../core/water/saturation";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

const SEA_LEVEL = 101_325;

const stateOf = (water: number, air: number, humidity: number, wind: number, area = 1) => ({
  area,
  water: water + 273.15,
  air: air + 273.15,
  vapourPressure: vapourPressureOfAir(air + 273.15, humidity),
  wind,
  pressure: SEA_LEVEL,
});

const stateIn = (row: GoldenCells, wind: number, area = 1) =>
  stateOf(numberIn(row, "water_degC"), numberIn(row, "air_degC"), numberIn(row, "RH_pct") / 100, wind, area);

/** kg/(h·m²) */
const rate = (method: EvaporationMethod, state: ReturnType<typeof stateOf>, activity = 1): number =>
  (evaporationOf(method, activity, state).rate * 3600) / state.area;

/** 1.5 %; near equal vapour pressures, where percentages mean nothing, 0.2 g/(h·m²). */
const near = (found: number, expected: number, what: string): void => {
  expect(Math.abs(found - expected), `${what}: ${found} for ${expected}`).toBeLessThan(
    Math.max(0.015 * Math.abs(expected), 2e-4),
  );
};

describe("evaporation outdoors", () => {
  const rows = cellsIn("pool-evaporation-wind.csv");

  it("agrees with an independent evaluation of Smith-Lof-Jones, Carrier and McMillan within 1.5 %", () => {
    expect(rows).toHaveLength(484);
    for (const row of rows) {
      const wind = numberIn(row, "wind_m_s");
      const state = stateIn(row, wind);
      near(rate("Smith-Lof-Jones", state), numberIn(row, "E_SmithLofJones_1994"), "Smith-Lof-Jones");
      near(rate("Carrier", state), numberIn(row, "E_Carrier_SI"), "Carrier");
      near(rate("Carrier", state), numberIn(row, "E_Carrier_IP_form"), "Carrier, inch-pound print");
      near(rate("McMillan", stateIn(row, wind, 50)), numberIn(row, "E_McMillan_area_50m2"), "McMillan");
    }
  });
});

describe("evaporation indoors", () => {
  it("agrees with an independent evaluation of the ASHRAE form, Shah and VDI 2089 within 1.5 %", () => {
    const rows = cellsIn("pool-evaporation-indoor.csv");
    expect(rows.length).toBeGreaterThan(130);
    for (const row of rows) {
      const state = stateIn(row, 0);
      near(rate("ASHRAE indoor", state), numberIn(row, "E_ASHRAE_IP_rule_AF1"), "ASHRAE");
      near(rate("ASHRAE indoor", state, 0.5), numberIn(row, "E_ASHRAE_IP_rule_AF0.5"), "ASHRAE 0.5");
      near(rate("Shah", state), numberIn(row, "E_Shah_unoccupied"), "Shah");
      near(rate("VDI 2089", state), numberIn(row, "E_VDI2089_idle_7"), "VDI at rest");
      near(rate("VDI 2089", state, 4), numberIn(row, "E_VDI2089_use_28"), "VDI in use");
      near(rate("Carrier", stateIn(row, 0.1)), numberIn(row, "E_Carrier_SI_v0.1"), "Carrier");
    }
  });

  it("repeats the tabulated values of Shah", () => {
    for (const row of cellsIn("pool-shah-table.csv"))
      expect(rate("Shah", stateIn(row, 0)) / numberIn(row, "E0_table_kg_m2h")).toBeCloseTo(1, 2);
  });
});

const NAMED: Readonly<Record<string, readonly [EvaporationMethod, number, number]>> = {
  "Carrier 1918 / ASHRAE": ["Carrier", 1, 1],
  "Smith-Lof-Jones 1994": ["Smith-Lof-Jones", 1, 1],
  "McMillan with area term, 50 m2": ["McMillan", 1, 50],
  "ASHRAE 0.1 AF, AF 1.0": ["ASHRAE indoor", 1, 1],
  "ASHRAE 0.1 AF, AF 0.5": ["ASHRAE indoor", 0.5, 1],
  "Shah unoccupied": ["Shah", 1, 1],
  "VDI 2089 idle 7 m/h": ["VDI 2089", 1, 1],
  "VDI 2089 in use 28 m/h (memory)": ["VDI 2089", 4, 1],
};

describe("evaporation by several relations", () => {
  it("agrees with the comparison of relations, mass and heat", () => {
    const rows = cellsIn("pool-evaporation-compare.csv").filter((row) => wordIn(row, "relation") in NAMED);
    expect(rows).toHaveLength(114);
    for (const row of rows) {
      const [method, activity, area] = NAMED[wordIn(row, "relation")] ?? ["Carrier", 1, 1];
      // Blank for relations that know no wind.
      const wind = wordIn(row, "wind_m_s") === "" ? 0 : numberIn(row, "wind_m_s");
      const state = stateIn(row, wind, area);
      near(rate(method, state, activity), numberIn(row, "E_kg_m2h"), wordIn(row, "relation"));
      const heat = (rate(method, state, activity) / 3600) * latentHeatOfWater(state.water);
      near(heat / 700, numberIn(row, "latent_heat_loss_W_m2") / 700, `${wordIn(row, "relation")}, heat`);
    }
  });

  it("gives the measured ratios to the handbook equation: 0.72 calm, 0.83 at 5 mph, 0.74 undisturbed", () => {
    const ratio = (wind: number) => {
      const state = stateOf(27, 20, 0.5, wind);
      return rate("Smith-Lof-Jones", state) / rate("Carrier", state);
    };
    const print = new Map(
      cellsIn("pool-worked-examples.csv").map((row) => [wordIn(row, "id"), numberIn(row, "expected")]),
    );
    expect(Math.abs(ratio(0) - (print.get("P03") ?? 0))).toBeLessThan(0.03);
    expect(Math.abs(ratio(2.2352) - (print.get("P04") ?? 0))).toBeLessThan(0.03);
    expect(Math.abs(ratio(0) - (print.get("P05") ?? 0))).toBeLessThan(0.03);
    // 15 to 20 swimmers per 1,000 ft²: activity 1.7 on the quiet surface.
    expect(Math.abs(1.7 * ratio(0) - (print.get("P06") ?? 0))).toBeLessThan(0.05);
  });

  it("evaporation is linear in the vapour pressures and the area, and signed", () => {
    const temperature = double({ min: 5, max: 45, noNaN: true });
    assert(
      property(
        constantFrom(...METHODS),
        temperature,
        temperature,
        double({ min: 0.05, max: 1, noNaN: true }),
        double({ min: 0, max: 0.15, noNaN: true }),
        (method, water, air, humidity, wind) => {
          const state = stateOf(water, air, humidity, wind);
          const pw = vapourPressureOfWater.code({ T: state.water });
          const found = evaporationOf(method, 1, state);
          expect(Math.sign(found.rate)).toBe(Math.sign(pw - state.vapourPressure));
          expect(found.coefficient).toBeGreaterThan(0);
          expect(Number.isFinite(found.rate)).toBe(true);
          const twice = evaporationOf(method, 2, state);
          expect(twice.rate).toBeCloseTo(2 * found.rate, 12);
        },
      ),
    );
  });

  it("stays finite at equal vapour pressures, where a ratio would be 0/0", () => {
    const state = { ...stateOf(25, 25, 1, 0), vapourPressure: vapourPressureOfWater.code({ T: 298.15 }) };
    for (const method of METHODS) {
      expect(evaporationOf(method, 1, state).rate).toBe(0);
      expect(transferCoefficient(method, state, state.vapourPressure, 2.44e6)).toBeGreaterThan(0);
    }
  });

  it("shows in its working how every other method reads", () => {
    const { trace, steps } = recorder();
    evaporationOf("Carrier", 1, stateOf(27, 20, 0.5, 0.1), trace);
    const group = steps.find((step): step is Extract<Step, { type: "group" }> => step.type === "group");
    expect(group?.title).toContain("other methods");
    const titles = group?.steps.map((step) => (step.type === "group" ? step.title : ""));
    expect(titles).toEqual(METHODS.filter((each) => each !== "Carrier"));
  });
});
