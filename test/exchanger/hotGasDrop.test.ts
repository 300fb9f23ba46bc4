import { assert, constantFrom, double, pre, property, record } from "fast-check";
import { describe, expect, it } from "vitest";
import { balanceOf } from "../../core/exchanger/balance/balance";
import type { CoolingMachine } from "../../core/exchanger/balance/compressor";
import { machineOf, machineState } from "../../core/exchanger/balance/machine";
import { coilBalanceOf, coilDuty } from "../../core/exchanger/balance/withCoil";
import { zonesOf } from "../../core/exchanger/zones/working";
import { isFault } from "../../core/kernel/values/fault";
import { us } from "../../core/kernel/values/quantity";
import { loadRefrigerant } from "../../core/refrigerant/refrigerant";
import { cellsIn, numberIn, wordIn } from "../golden/rows";

const degF = (value: number): number => us("temperature", value);
const psi = (value: number): number => us("pressure drop", value);

const machineFor = (name: string, hotGasDrop = 0): CoolingMachine => ({
  ...machineOf({
    fluid: loadRefrigerant(name),
    cooling: us("heat rate", 90_000),
    evaporating: degF(45),
    condensing: degF(115),
    wetBulb: degF(67),
    superheat: 5.6,
    subcooling: 5.6,
    efficiency: 0.65,
    volumetricEfficiency: 0.95,
  }),
  hotGasDrop,
});

const tried = <T>(work: () => T): T | undefined => {
  try {
    return work();
  } catch (error) {
    if (isFault(error)) return undefined;
    throw error;
  }
};

const cases = record({
  name: constantFrom("R-22", "R-32", "R-410A", "R-407C", "R-454B"),
  ua: double({ min: 1500, max: 15_000, noNaN: true }),
  waterFlow: double({ min: 0.001, max: 0.008, noNaN: true }),
  enteringWater: double({ min: 283, max: 306, noNaN: true }),
  wetBulb: double({ min: 288, max: 297, noNaN: true }),
  drop: double({ min: 0.1, max: 40, noNaN: true }),
});

describe("a machine behind a hot-gas drop", () => {
  it("discharges where CoolProp puts the dew temperature before each valve's drop", () => {
    const rows = cellsIn("valve-drop.csv").filter((row) => row["state"] === "ok");
    expect(rows.length).toBeGreaterThan(15);
    for (const row of rows) {
      const fall = numberIn(row, "dT_sat_K");
      const before = degF(numberIn(row, "condensing_dew_F"));
      const machine = machineFor(wordIn(row, "refrigerant"), numberIn(row, "dP_kPa") * 1000);
      const found = machineState(machine, before - fall, degF(67), degF(45));
      expect(Math.abs(found.dischargeCondensing - before)).toBeLessThan(Math.max(0.01 * fall, 0.002));
    }
  });

  it("adds the drop to the pressure, closes its heat balance, and loses cooling and needs power with each drop more", () => {
    assert(
      property(cases, ({ name, ua, waterFlow, enteringWater, wetBulb, drop }) => {
        const at = (hotGasDrop: number) =>
          tried(() => balanceOf(machineFor(name, hotGasDrop), { ua, waterFlow }, { enteringWater, wetBulb }));
        const [none, some, more] = [at(0), at(psi(drop)), at(psi(drop * 1.5))];
        pre(none !== undefined && some !== undefined && more !== undefined);
        expect(some.dischargePressure - some.condensingPressure).toBeCloseTo(psi(drop), 3);
        expect(none.dischargeCondensing).toBe(none.condensing);
        for (const found of [some, more]) {
          const taken = found.capacityRate * (found.leavingWater - enteringWater);
          expect(Math.abs(taken / (found.cooling + found.power) - 1)).toBeLessThan(1e-6);
          expect(Math.abs((found.sink.conductance * (found.meanCondensing - enteringWater)) / taken - 1)).toBeLessThan(
            1e-6,
          );
        }
        expect(some.cooling).toBeLessThan(none.cooling);
        expect(more.cooling).toBeLessThan(some.cooling);
        expect(some.power).toBeGreaterThan(none.power);
        expect(more.power).toBeGreaterThan(some.power);
      }),
      { numRuns: 100, maxSkipsPerRun: 30 },
    );
  }, 30_000);

  it("settles on a coil where its conductance gives the same, and the coil passes all the heat", () => {
    const coil = {
      outsideDiameter: 0.01905,
      wall: 0.0009,
      conductivity: 21,
      tubes: 2,
      tubeLength: 14,
      coilDiameter: 0.23,
      pitch: 0.03,
      shellDiameter: 0.31,
      coreDiameter: 0.15,
      insideFouling: 0,
      outsideFouling: 0.0001,
    };
    const exchanger = { coil, waterFlow: 0.0025, direction: "counterflow" } as const;
    const conditions = { enteringWater: degF(82), wetBulb: degF(67) };
    for (const name of ["R-410A", "R-454B"]) {
      const machine = machineFor(name, psi(12));
      const found = coilBalanceOf(machine, exchanger, conditions);
      expect(Math.abs(found.rating.margin)).toBeLessThan(1e-5);
      if (found.ua === undefined) throw new Error("no conductance");
      const given = balanceOf(machine, { ua: found.ua, waterFlow: 0.0025 }, conditions);
      expect(found.condensing).toBeCloseTo(given.condensing, 4);
      expect(found.power / given.power).toBeCloseTo(1, 6);
      const streams = zonesOf(coilDuty(machine, found, exchanger, conditions.enteringWater));
      expect(streams.total.duty / (found.cooling + found.power)).toBeCloseTo(1, 6);
    }
  });
});
