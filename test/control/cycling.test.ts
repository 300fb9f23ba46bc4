import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { steadyCycle } from "../../core/control/cycling";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";

const definition = lookUp(CATALOGUE, "CONTROL.CYCLING");
if (!definition) throw new Error("no CONTROL.CYCLING");
const compiled = compile(definition);

function cycling(block: Readonly<Record<string, number>>): ReadonlyMap<string, string | number> {
  const out = evaluate(compiled, [Object.entries(block)], CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as readonly [string, string | number][]).map(([label, value]) => [label, value]));
}

/** Swing of the sensor and seconds on, in a run of many small steps. */
function simulated(rise: number, fall: number, tau: number, band: number): number {
  let [water, sensor, on, since, last] = [0, 0, true, 0, 0];
  const dt = Math.min(tau, band / (rise + fall)) / 2000;
  for (let cycle = 0; cycle < 40;) {
    water += (on ? rise : -fall) * dt;
    sensor += ((water - sensor) * dt) / tau;
    since += dt;
    if (on ? sensor < band : sensor > 0) continue;
    if (on) [last, cycle] = [since, cycle + 1];
    [on, since] = [!on, 0];
  }
  return last;
}

describe("CONTROL.CYCLING", () => {
  test.each([
    [0.02, 0.02, 15, 0.5],
    [0.5, 0.1, 15, 2],
    [1, 0.2, 30, 1],
  ] as const)("a rise of %d, fall of %d K/s, lag of %d s on %d K agrees with a simulation", (rise, fall, tau, band) => {
    const wanted = simulated(rise, fall, tau, band);
    expect(Math.abs(steadyCycle(rise, fall, tau, band) - wanted)).toBeLessThan(0.005 * wanted);
  });

  test("switches most at half load, less on a wider band and a larger pool, and never below its least times", () => {
    const base = { heat: 60_000, volume: 4, band: 5, sensor: 20, "least on": 0, "least off": 0 };
    const cycles = (more: Readonly<Record<string, number>>) => Number(cycling({ ...base, ...more }).get("cycles"));
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.95, noNaN: true }), (load) => {
        expect(cycles({ load })).toBeLessThanOrEqual(cycles({}) * (1 + 1e-12));
        expect(cycles({ load, band: 6 })).toBeLessThan(cycles({ load }));
        expect(cycles({ load, volume: 5 })).toBeLessThan(cycles({ load }));
        const held = cycling({ ...base, load, "least on": 3, "least off": 4 });
        expect(Number(held.get("on time"))).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(Number(held.get("off time"))).toBeGreaterThanOrEqual(4 - 1e-9);
      }),
      { numRuns: 50 },
    );
  });

  // The lag of 15 s on 72.9 °F/min reads 18.2 °F low: a long cycle swings by band and lag together.
  test("widens the swing by heat times lag over capacity where the cycle is long", () => {
    const found = cycling({
      heat: 48_000,
      volume: 1.2,
      metal: 8,
      band: 400 / 12,
      sensor: 1,
      "least on": 0,
      "least off": 0,
    });
    expect(Number(found.get("swing"))).toBeCloseTo(400 / 12 + 72.9 / 60, 2);
  });
});
