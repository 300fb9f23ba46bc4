import { assert, constantFrom, double, pre, property, record } from "fast-check";
import { describe, expect, it } from "vitest";
import { airSink, balanceOf, outdoorBalanceOf } from "../../core/exchanger/balance/balance";
import { machineOf } from "../../core/exchanger/balance/machine";
import type { MachineRating } from "../../core/exchanger/balance/compressor";
import { us } from "../../core/kernel/values/quantity";
import { isFault } from "../../core/kernel/values/fault";
import { solveCycle } from "../../core/cycle/cycle";
import { loadRefrigerant } from "../../core/refrigerant/refrigerant";

const NAMES = ["R-22", "R-32", "R-134a", "R-410A", "R-407C", "R-454B"] as const;
const degF = (value: number): number => us("temperature", value);

const ratingOf = (name: string, changes: Partial<MachineRating> = {}): MachineRating => ({
  fluid: loadRefrigerant(name),
  cooling: us("heat rate", 90_000),
  evaporating: degF(45),
  condensing: degF(115),
  wetBulb: degF(67),
  superheat: 5.6,
  subcooling: 5.6,
  efficiency: 0.65,
  volumetricEfficiency: 0.95,
  ...changes,
});

const cases = record({
  name: constantFrom(...NAMES),
  efficiency: double({ min: 0.5, max: 0.8, noNaN: true }),
  volumetricEfficiency: double({ min: 0.8, max: 1, noNaN: true }),
  subcooling: double({ min: 0, max: 8, noNaN: true }),
  ua: double({ min: 1500, max: 20_000, noNaN: true }),
  waterFlow: double({ min: 0.0008, max: 0.01, noNaN: true }),
  enteringWater: double({ min: 278, max: 308, noNaN: true }),
  wetBulb: double({ min: 288, max: 297, noNaN: true }),
});

/** Undefined where the refrigerant's range or the machine's ends first. */
const tried = <T>(work: () => T): T | undefined => {
  try {
    return work();
  } catch (error) {
    if (isFault(error)) return undefined;
    throw error;
  }
};

describe("a machine that settles on pool water", () => {
  it("closes its heat balance to a millionth and never violates the second law, 2,000 random cases", () => {
    assert(
      property(cases, ({ name, ua, waterFlow, enteringWater, wetBulb, ...machine }) => {
        const ready = machineOf(ratingOf(name, machine));
        const found = tried(() => balanceOf(ready, { ua, waterFlow }, { enteringWater, wetBulb }));
        pre(found !== undefined);
        const taken = found.capacityRate * (found.leavingWater - enteringWater);
        expect(Math.abs(taken / (found.cooling + found.power) - 1)).toBeLessThan(1e-6);
        const passed = found.sink.conductance * (found.meanCondensing - enteringWater);
        expect(Math.abs(passed / found.rejected - 1)).toBeLessThan(1e-6);
        expect(found.leavingWater).toBeLessThan(found.meanCondensing);
        expect(found.evaporating).toBeLessThan(wetBulb);
        // Carnot between the air's wet bulb and the water: no machine does better.
        if (enteringWater > wetBulb)
          expect(found.cooling / found.power).toBeLessThan(wetBulb / (enteringWater - wetBulb));
      }),
      { numRuns: 2000, maxSkipsPerRun: 30 },
    );
  }, 60_000);

  it("runs the same cycle that the cycle functions know", () => {
    const machine = machineOf(ratingOf("R-454B"));
    const found = balanceOf(machine, { ua: 2600, waterFlow: 0.0025 }, { enteringWater: 300, wetBulb: 292 });
    const { fluid, superheat, subcooling, efficiency } = machine.rating;
    const known = solveCycle({
      refrigerant: fluid,
      evaporating: found.evaporating,
      condensing: found.condensing,
      superheat,
      subcooling,
      efficiency,
    });
    expect(found.cooling / found.power).toBeCloseTo(known.cop, 7);
    expect(found.rejected / found.massFlow).toBeCloseTo(known.rejected, 2);
  });

  it("never condenses higher on colder water, and never lower with less conductance", () => {
    assert(
      property(cases, ({ name, ua, waterFlow, enteringWater, wetBulb, ...machine }) => {
        const ready = machineOf(ratingOf(name, machine));
        const at = (UA: number, water: number) =>
          tried(() => balanceOf(ready, { ua: UA, waterFlow }, { enteringWater: water, wetBulb }));
        const [now, colder, larger] = [at(ua, enteringWater), at(ua, enteringWater - 3), at(ua * 1.3, enteringWater)];
        pre(now !== undefined && colder !== undefined && larger !== undefined);
        expect(colder.condensing).toBeLessThan(now.condensing);
        expect(larger.condensing).toBeLessThan(now.condensing);
        expect(larger.cooling).toBeGreaterThan(now.cooling);
        expect(larger.power).toBeLessThan(now.power);
      }),
      { numRuns: 200, maxSkipsPerRun: 30 },
    );
  }, 30_000);

  it("gives its rating back on the outdoor coil at the rating's air", () => {
    for (const name of NAMES) {
      const machine = machineOf(ratingOf(name));
      const found = outdoorBalanceOf(machine, { ratedOutdoor: degF(95) }, degF(95), degF(67));
      expect(found.condensing, name).toBeCloseTo(degF(115), 4);
      expect(found.evaporating, name).toBeCloseTo(degF(45), 4);
      expect(found.cooling / us("heat rate", 90_000), name).toBeCloseTo(1, 6);
    }
  });

  it("moves the outdoor coil's difference with the heat", () => {
    const machine = machineOf(ratingOf("R-22"));
    const sink = airSink(machine, { ratedOutdoor: degF(95) }, degF(80));
    const found = outdoorBalanceOf(machine, { ratedOutdoor: degF(95) }, degF(80), degF(67));
    const rated = (us("heat rate", 90_000) * machine.rated.rejected) / machine.rated.cooling;
    expect((found.condensing - degF(80)) / (degF(115) - degF(95))).toBeCloseTo(found.rejected / rated, 6);
    expect(sink.temperature).toBe(degF(80));
  });

  it("holds the least condensing temperature on the outdoor coil of a cold day", () => {
    const machine = machineOf(ratingOf("R-410A"));
    const free = outdoorBalanceOf(machine, { ratedOutdoor: degF(95) }, degF(35), degF(67));
    const held = outdoorBalanceOf(machine, { ratedOutdoor: degF(95) }, degF(35), degF(67), degF(80));
    expect(free.condensing).toBeLessThan(degF(60));
    expect(held.condensing).toBe(degF(80));
    expect(held.cooling / held.power).toBeLessThan((free.cooling / free.power) * 0.6);
    // The heat that the cut fan still carries off is what the machine gives.
    expect((held.sink.conductance * (held.meanCondensing - degF(35))) / held.rejected).toBeCloseTo(1, 9);
    const warm = outdoorBalanceOf(machine, { ratedOutdoor: degF(95) }, degF(95), degF(67), degF(80));
    expect(warm.condensing).toBeCloseTo(degF(115), 4);
  });

  it("needs few passes, each within its bracket", () => {
    const machine = machineOf(ratingOf("R-410A"));
    for (const water of [280, 290, 300, 306]) {
      const { search, condensing } = balanceOf(
        machine,
        { ua: 2600, waterFlow: 0.0025 },
        { enteringWater: water, wetBulb: 292 },
      );
      expect(search.iterations).toBeLessThan(9);
      expect(condensing).toBeGreaterThanOrEqual(search.bracket[0]);
      expect(condensing).toBeLessThanOrEqual(search.bracket[1]);
    }
  });

  it("refuses an exchanger too small for any pressure", () => {
    const machine = machineOf(ratingOf("R-410A"));
    expect(() => balanceOf(machine, { ua: 60, waterFlow: 0.0025 }, { enteringWater: 300, wetBulb: 292 })).toThrow(
      /no condensing temperature up to/,
    );
  });
});
