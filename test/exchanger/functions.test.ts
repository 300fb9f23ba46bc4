import { assert, double, pre, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { decayShare } from "../../core/exchanger/surface/equations";
import { holdHeadOf } from "../../core/exchanger/water/holdHead";
import { governing, overallOf, resistancesOf } from "../../core/exchanger/surface/overall";
import { capacityRateOfWater } from "../../core/exchanger/water/equations";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import { densityOfWater, heatCapacityOfWater } from "../../core/water/equations";

type Cell = string | number | null;

const definition = (name: string) => {
  const found = lookUp(CATALOGUE, name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
const run = (name: string, ...raw: readonly Cell[]) => evaluate(compile(definition(name)), raw, CATALOGUE);
const codes = (name: string, ...raw: readonly Cell[]): readonly string[] =>
  explain(compile(definition(name)), raw, CATALOGUE).cautions.map(({ code }) => code);
const message = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

describe("mean difference in the cell", () => {
  it("refuses crossed ends with the four temperatures in the cell's units", () => {
    const told = message(run("EXCHANGER.LMTD", 120, 110, 85, 130));
    expect(told).toMatch(/^#N\/A .*hotIn 120 °F, hotOut 110 °F, coldIn 85 °F, coldOut 130 °F/);
  });

  it("refuses streams that run the wrong way as inputs to mend", () => {
    expect(message(run("EXCHANGER.LMTD", 110, 120, 80, 85))).toMatch(
      /^#VALUE! hotOut: must be at most hotIn \(110 °F\)/,
    );
    expect(message(run("EXCHANGER.LMTD", 120, 110, 85, 80))).toMatch(/^#VALUE! coldOut: must be at least coldIn/);
  });

  it("warns of condensing between the ends only when both limits are passed", () => {
    const code = "EXCHANGER-CONDENSING-BETWEEN";
    expect(codes("EXCHANGER.LMTD", 125, 100, 80, 90)).toContain(code);
    expect(codes("EXCHANGER.LMTD", 120, 100, 80, 90)).not.toContain(code);
    expect(codes("EXCHANGER.LMTD", 125, 100, 80, 95)).not.toContain(code);
  });

  it("gives UA and duty that undo each other in either direction", () => {
    const ua = run("EXCHANGER.UA", 110000, 110, 105, 80, 90, "parallel", 0.95);
    expect(run("EXCHANGER.DUTY", Number(ua), 110, 105, 80, 90, "parallel", 0.95)).toBeCloseTo(110000, 6);
  });
});

const tube = {
  insideFilm: 1500,
  outsideFilm: 2500,
  outsideDiameter: 0.015875,
  wall: 0.000711,
  conductivity: 16,
  insideFouling: 0,
  outsideFouling: 0,
};

describe("overall coefficient", () => {
  it("adds up its resistances and names the one that governs", () => {
    const each = resistancesOf(tube);
    expect(1 / (each.Ri + each.Rfi + each.Rw + each.Rfo + each.Ro)).toBeCloseTo(overallOf(tube), 9);
    expect(governing(each)).toBe("inside film");
    expect(governing(resistancesOf({ ...tube, outsideFouling: 0.01 }))).toBe("outside fouling");
  });

  it("shows every share, which add up to one, and the governing one in the working", () => {
    const { steps } = explain(
      compile(definition("EXCHANGER.OVERALL")),
      [300, 400, 0.625, 0.028, "titanium", 0, 0.0005],
      CATALOGUE,
    );
    const text = JSON.stringify(steps);
    expect(text.match(/Share of the (inside film|inside fouling|wall|outside fouling|outside film)/g)).toHaveLength(5);
    expect(text).toContain("The inside film governs.");
  });

  it("raises its cautions for clean coils and metals that pool water attacks, not for a bare conductivity", () => {
    const call = (material: Cell, fouling: number) =>
      codes("EXCHANGER.OVERALL", 300, 400, 0.625, 0.028, material, 0, fouling);
    expect(call("copper", 0)).toEqual(expect.arrayContaining(["EXCHANGER-ATTACKED-METAL", "EXCHANGER-CLEAN-COIL"]));
    expect(call("titanium", 0.001)).not.toContain("EXCHANGER-ATTACKED-METAL");
    expect(call("titanium", 0.001)).not.toContain("EXCHANGER-CLEAN-COIL");
    expect(call(9.25, 0.001)).toEqual([]);
  });

  it("refuses a wall that fills the tube", () => {
    expect(message(run("EXCHANGER.OVERALL", 300, 400, 0.5, 0.25, "titanium"))).toMatch(/^#VALUE! wall: .*0.25 in/);
  });

  it("never grows with fouling, nor above the smaller film on its area", () => {
    const amount = double({ min: 10, max: 20_000, noNaN: true });
    const dirt = double({ min: 0, max: 0.002, noNaN: true });
    assert(
      property(amount, amount, dirt, dirt, (insideFilm, outsideFilm, insideFouling, outsideFouling) => {
        const clean = overallOf({ ...tube, insideFilm, outsideFilm });
        expect(overallOf({ ...tube, insideFilm, outsideFilm, insideFouling, outsideFouling })).toBeLessThanOrEqual(
          clean,
        );
        expect(clean).toBeLessThan(Math.min(insideFilm, outsideFilm));
      }),
    );
  });
});

describe("water side", () => {
  it("rise, flow and duty undo each other at 80 °F", () => {
    const flow = Number(run("EXCHANGER.WATERFLOW", 110000, 6));
    expect(run("EXCHANGER.WATERRISE", 110000, flow)).toBeCloseTo(6, 9);
    expect(run("EXCHANGER.WATERDUTY", flow, 77, 83)).toBeCloseTo(110000, 3);
  });

  it("raises a caution under 3 °F of rise and refuses a fall", () => {
    expect(codes("EXCHANGER.WATERDUTY", 40, 80, 82.9)).toContain("EXCHANGER-SMALL-RISE");
    expect(codes("EXCHANGER.WATERDUTY", 40, 80, 83)).not.toContain("EXCHANGER-SMALL-RISE");
    expect(message(run("EXCHANGER.WATERDUTY", 40, 82, 80))).toMatch(/^#VALUE! out: must be at least in \(82 °F\)/);
  });
});

describe("held head", () => {
  const capacity = (flow: number, T: number): number =>
    capacityRateOfWater.code({ V: flow, rho: densityOfWater.code({ T }), cp: heatCapacityOfWater.code({ T }) });

  it("the cut flow condenses at just the least temperature, and never exceeds the full flow", () => {
    assert(
      property(
        double({ min: 2000, max: 60_000, noNaN: true }),
        double({ min: 200, max: 8000, noNaN: true }),
        double({ min: 275, max: 305, noNaN: true }),
        double({ min: 1, max: 40, noNaN: true }),
        double({ min: 0, max: 1, noNaN: true }),
        (heat, ua, water, above, waterFilmShare) => {
          // More heat than that on the conductance finds nothing that condenses any more.
          pre(heat / ua < 75);
          const held = { heat, ua, water, leastCondensing: water + above, flow: 0.003, waterFilmShare };
          const answer = holdHeadOf(held);
          expect(answer.flowThrough).toBeLessThanOrEqual(held.flow);
          const C = capacity(answer.flowThrough, water);
          // Films in a row, the water's by the 0.6th power of its flow.
          const film = (waterFilmShare / ua) * (held.flow / answer.flowThrough) ** 0.6;
          const UA = 1 / ((1 - waterFilmShare) / ua + film);
          const condensing = water + heat / (UA * decayShare(UA / C));
          if (answer.holds) expect(Math.abs(condensing - held.leastCondensing)).toBeLessThan(1e-6 * above);
          else expect(answer.condensingAtFullFlow).toBeGreaterThanOrEqual(held.leastCondensing);
          expect(answer.leavingWater).toBeLessThanOrEqual(condensing + 1e-9);
          expect(C * (answer.leavingWater - water)).toBeCloseTo(heat, 3);
        },
      ),
    );
  });

  it("finds the cut flow with little heat on much conductance, where the water leaves at the condensing temperature", () => {
    const answer = holdHeadOf({
      heat: 2000,
      ua: 8000,
      water: 280,
      leastCondensing: 320,
      flow: 0.003,
      waterFilmShare: 0,
    });
    expect(answer.leavingWater).toBeCloseTo(320, 6);
    expect(capacity(answer.flowThrough, 280) * 40).toBeCloseTo(2000, 3);
  });

  it("colder water or more conductance never condenses hotter at full flow", () => {
    const base = { heat: 30_000, ua: 3000, water: 295, leastCondensing: 300, flow: 0.002, waterFilmShare: 0.4 };
    assert(
      property(double({ min: 0, max: 20, noNaN: true }), double({ min: 1, max: 4, noNaN: true }), (colder, more) => {
        const now = holdHeadOf(base).condensingAtFullFlow;
        expect(holdHeadOf({ ...base, water: base.water - colder }).condensingAtFullFlow).toBeLessThanOrEqual(
          now + 1e-9,
        );
        expect(holdHeadOf({ ...base, ua: base.ua * more }).condensingAtFullFlow).toBeLessThanOrEqual(now + 1e-9);
      }),
    );
  });

  it("cuts the flow less where half of the resistance is the water's film", () => {
    const flowAt = (share: number): number => {
      const rows = run("EXCHANGER.HOLDHEAD", 58_500, 4500, 72, 90, 35, share) as readonly (readonly unknown[])[];
      return Number(rows.find(([label]) => label === "flow through exchanger")?.[1]);
    };
    expect(flowAt(0)).toBeCloseTo(13.06, 1);
    expect(flowAt(0.35)).toBeCloseTo(19.8, 1);
    expect(flowAt(0.5)).toBeCloseTo(21.8, 1);
  });

  it("says that nothing needs holding where the water is warm", () => {
    const rows = run("EXCHANGER.HOLDHEAD", 110000, 8000, 84, 90, 40) as readonly (readonly unknown[])[];
    expect(rows.map(([, value]) => value)).toContain("nothing needs holding");
    expect(codes("EXCHANGER.HOLDHEAD", 110000, 8000, 84, 90, 40)).not.toContain("EXCHANGER-CUT-FLOW");
    expect(codes("EXCHANGER.HOLDHEAD", 110000, 8000, 60, 90, 40)).toContain("EXCHANGER-CUT-FLOW");
  });
});
