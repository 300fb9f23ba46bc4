import { assert, constantFrom, double, pre, property, record } from "fast-check";
import { describe, expect, it } from "vitest";
import { rateCoil } from "../../core/exchanger/coil/coil";
import type { CoilGeometry } from "../../core/exchanger/coil/shell";
import { matchStreams, type ZonesInput } from "../../core/exchanger/zones/zones";
import { zonesOf, type DutyInputs } from "../../core/exchanger/zones/working";
import { isFault } from "../../core/kernel/values/fault";
import { recorder, type Step } from "../../core/kernel/define/steps";
import { loadRefrigerant } from "../../core/refrigerant/refrigerant";
import { cellsIn, numberIn } from "../golden/rows";

/** The case that test/golden/coil-hand-calculation.csv works by hand. */
const duty: DutyInputs = {
  refrigerant: "R-22",
  heatRejected: 10_000,
  massFlow: undefined,
  dischargeTemperature: 343.15,
  evaporating: undefined,
  condensing: 313.15,
  subcooling: 5,
  superheat: 5,
  efficiency: 0.65,
  waterFlow: 0.0006,
  enteringWater: 298.15,
  direction: "counterflow",
};
const geometry: CoilGeometry = {
  outsideDiameter: 0.015875,
  wall: 0.0007112,
  conductivity: 16,
  tubes: 2,
  tubeLength: 20,
  coilDiameter: 0.25,
  pitch: 0.025,
  shellDiameter: 0.3,
  coreDiameter: 0.2,
  insideFouling: 0.00005,
  outsideFouling: 0.0001,
};

const fluid = loadRefrigerant("R-22");
const rated = (changes: Partial<CoilGeometry> = {}) =>
  rateCoil(fluid, zonesOf(duty), { ...geometry, ...changes }, duty.waterFlow);

/** Every equation's value by the titles above it. */
const values = (steps: readonly Step[], path: readonly string[] = []): readonly (readonly [string, string, number])[] =>
  steps.flatMap((step) => {
    if (step.type === "group") return values(step.steps, [...path, step.title]);
    return step.type === "equation" ? [[path.join(" / "), step.equation.name, step.value] as const] : [];
  });

describe("a coil rated by its geometry", () => {
  it("shows the lines of the hand calculation in its working", () => {
    const { trace, steps } = recorder();
    rateCoil(fluid, zonesOf(duty, trace), geometry, duty.waterFlow, trace);
    const told = values(steps);
    const rows = cellsIn("coil-hand-calculation.csv");
    expect(rows).toHaveLength(47);
    for (const row of rows) {
      const here = told.filter(
        ([path, name]) => (row.group === "whole" || path.endsWith(row.group ?? "")) && name === row.line,
      );
      const nearest = Math.min(...here.map(([, , value]) => Math.abs(value / numberIn(row, "value") - 1)));
      expect(nearest, `${row.group}: ${row.line}`).toBeLessThan(2e-5);
    }
  });

  it("has more margin with more tube, and needs less area in faster water", () => {
    assert(
      property(double({ min: 5, max: 60, noNaN: true }), double({ min: 1.05, max: 2, noNaN: true }), (length, more) => {
        expect(rated({ tubeLength: length * more }).margin).toBeGreaterThan(rated({ tubeLength: length }).margin);
      }),
      { numRuns: 60 },
    );
    expect(rated({ coreDiameter: 0.22 }).areaNeeded).toBeLessThan(rated({ coreDiameter: 0 }).areaNeeded);
  });

  it("needs more area for more heat, and for fouling on either side", () => {
    const more = rateCoil(fluid, zonesOf({ ...duty, heatRejected: 12_000 }), geometry, duty.waterFlow);
    expect(more.areaNeeded).toBeGreaterThan(rated().areaNeeded);
    expect(rated({ insideFouling: 0.0003 }).areaNeeded).toBeGreaterThan(rated().areaNeeded);
    expect(rated({ outsideFouling: 0.0003 }).areaNeeded).toBeGreaterThan(rated().areaNeeded);
  });

  it("keeps the surface between water and refrigerant in random cases", () => {
    const cases = record({
      name: constantFrom("R-22", "R-32", "R-410A", "R-407C", "R-454B"),
      condensing: double({ min: 303, max: 325, noNaN: true }),
      approach: double({ min: 3, max: 20, noNaN: true }),
      heat: double({ min: 3000, max: 30_000, noNaN: true }),
      tubes: constantFrom(1, 2, 4),
      waterFlow: double({ min: 0.0004, max: 0.005, noNaN: true }),
    });
    assert(
      property(cases, ({ name, condensing, approach, heat, tubes, waterFlow }) => {
        const input: ZonesInput = {
          fluid: loadRefrigerant(name),
          heat,
          inlet: (dew) => ({ temperature: dew + 30 }),
          condensing,
          subcooling: 2,
          waterFlow,
          enteringWater: condensing - approach - heat / (waterFlow * 4.15e6),
          direction: "counterflow",
        };
        pre(input.enteringWater > 275);
        const found = (() => {
          try {
            return matchStreams(input);
          } catch (fault) {
            if (isFault(fault)) return undefined;
            throw fault;
          }
        })();
        pre(found !== undefined);
        const rating = rateCoil(input.fluid, found, { ...geometry, tubes }, waterFlow);
        expect(rating.hottestFilm).toBeGreaterThan(found.total.waterIn);
        expect(rating.hottestFilm).toBeLessThan(condensing + 30);
        for (const zone of Object.values(rating.zones)) {
          expect(zone.filmShare).toBeGreaterThan(0);
          expect(zone.filmShare).toBeLessThan(1);
          expect(zone.U).toBeLessThan(Math.min(zone.insideFilm, zone.outside.film));
          expect(zone.outside.film).toBeGreaterThanOrEqual(Math.max(zone.outside.forced, zone.outside.natural));
        }
        const bore = geometry.outsideDiameter - 2 * geometry.wall;
        const volume = (Math.PI / 4) * bore ** 2 * geometry.tubeLength * tubes;
        expect(rating.holdUp).toBeGreaterThan(volume * found.curve.inlet.density);
        expect(rating.holdUp).toBeLessThan(volume * found.curve.outlet.density);
      }),
      { numRuns: 300, maxSkipsPerRun: 60 },
    );
  }, 60_000);

  it("refuses a coil that does not fit its shell", () => {
    expect(() => rated({ pitch: 0.01 })).toThrow(/^pitch: must be at least outside diameter/);
    expect(() => rated({ shellDiameter: 0.26 })).toThrow(/^shell diameter: must be above/);
    expect(() => rated({ coreDiameter: 0.24 })).toThrow(/^core diameter: must be below/);
    expect(() => rated({ wall: 0.01 })).toThrow(/^wall: must be below half/);
  });
});

describe("the drop of the water", () => {
  // 1.5 velocity heads at 40 gpm: 0.295 m in two 1-1/2 in ports (1.592 in), 0.108 m in 2 in ports (2.049 in).
  it.each([
    [1.592, 0.295],
    [2.049, 0.108],
  ])("is mostly lost in two ports of %s in: %s m", (inches, head) => {
    const flow = 40 * 6.30901964e-5;
    const { bundleDrop, waterDrop } = rateCoil(
      fluid,
      zonesOf({ ...duty, waterFlow: flow }),
      { ...geometry, portBore: inches * 0.0254 },
      flow,
    );
    const metres = (drop = Number.NaN): number => drop / (996 * 9.80665);
    expect(metres(waterDrop)).toBeGreaterThan(head);
    expect(metres(waterDrop)).toBeLessThan(head * 1.8);
    expect(metres(bundleDrop)).toBeLessThan(0.1 * head);
  });

  it("is not told without the ports", () => expect(rated().waterDrop).toBeUndefined());
});
