import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellOut } from "../../core/kernel/call/present";
import type { Compressor } from "../../core/sink/data/rejectionFactors";
import { rackHeat, type RackInputs } from "../../core/sink/rackHeat";
import { rejectionFactor } from "../../core/sink/rejection";
import { spaceHeat, type SpaceInputs } from "../../core/sink/spaceHeat";
import { cellsIn, numberIn } from "../golden/rows";

const run = (id: string, ...raw: readonly unknown[]): ReadonlyMap<string, CellOut> | string => {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`${id} is not listed`);
  const out = evaluate(compile(definition), raw, CATALOGUE);
  if (isFault(out)) return `${out.code} ${out.message}`;
  return new Map((out as readonly (readonly CellOut[])[]).map(([label, value]) => [String(label), value ?? ""]));
};

const rowsOf = (id: string, ...raw: readonly unknown[]): ReadonlyMap<string, CellOut> => {
  const out = run(id, ...raw);
  if (typeof out === "string") throw new Error(out);
  return out;
};

describe("heat rejection factors", () => {
  test.each(
    cellsIn("heat-rejection.csv").map(
      (row) => [row["compressor"] ?? "", row["evaporating_C"], row["condensing_C"], row] as const,
    ),
  )("the rejection factor of %s at %s/%s °C is as published", (compressor, _, __, row) => {
    const [te, tc] = [numberIn(row, "evaporating_C") + 273.15, numberIn(row, "condensing_C") + 273.15];
    const found = rejectionFactor(compressor as Compressor, te, tc, "evaporating");
    expect(Math.abs(found - numberIn(row, "factor"))).toBeLessThanOrEqual(numberIn(row, "tolerance") + 1e-9);
  });

  const kinds = fc.constantFrom<Compressor>("open", "suction-cooled hermetic");
  const evaporating = fc.double({ min: 238.2, max: 283.1, noNaN: true });
  const condensing = fc.double({ min: 303.2, max: 333.1, noNaN: true });

  test("the factors rise with the condensing temperature, fall with the evaporating one, and stay above 1", () => {
    fc.assert(
      fc.property(kinds, evaporating, condensing, (kind, te, tc) => {
        const here = rejectionFactor(kind, te, tc, "evaporating");
        expect(here).toBeGreaterThan(1);
        if (tc < 332) expect(rejectionFactor(kind, te, tc + 1, "evaporating")).toBeGreaterThan(here);
        if (te < 282) expect(rejectionFactor(kind, te + 1, tc, "evaporating")).toBeLessThan(here);
      }),
    );
  });

  test("temperatures beyond the table are refused", () => {
    expect(() => rejectionFactor("open", 236, 310, "low evaporating")).toThrow(/low evaporating: .* runs from/);
    expect(() => rejectionFactor("open", 270, 340, "low evaporating")).toThrow(/condensing: /);
  });
});

describe("a tank", () => {
  test("shares the load between recovered heat and main heater", () => {
    const rows = rowsOf("SINK.TANK", 200, 58, 140, 99);
    expect(Number(rows.get("preheated")) + Number(rows.get("remaining"))).toBeCloseTo(Number(rows.get("load")), 6);
    expect(rows.get("share")).toBeCloseTo(0.5, 9);
    expect(Number(rows.get("mean rate")) * 24).toBeCloseTo(Number(rows.get("preheated")), 6);
  });

  test("needs no more than its load where the preheat is hotter than the hot water", () => {
    expect(rowsOf("SINK.TANK", 200, 58, 120, 140).get("remaining")).toBe(0);
  });

  test("a tank that warms nothing is refused", () => {
    expect(run("SINK.TANK", 200, 60, 120, 58)).toMatch(
      /#VALUE! preheat: must be above the cold water's 60 °F, got 58 °F/,
    );
    expect(run("SINK.TANK", 200, 90, 80, 95)).toMatch(/#VALUE! hot: must be above/);
  });
});

describe("space heat", () => {
  const coil: SpaceInputs = {
    emitter: "air coil",
    recoveredHeat: 50_000,
    heatNeeded: 40_000,
    supplyWater: 311,
    waterFlow: 8e-4,
    room: 294,
    airFlow: 1.4,
    effectiveness: 0.6,
    floorArea: 120,
    floorResistance: 0.1,
  };

  test("space heat never exceeds what is available, needed, or taken, and balances on both sides of the coil", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1000, max: 90_000, noNaN: true }),
        fc.double({ min: 1000, max: 90_000, noNaN: true }),
        fc.double({ min: 300, max: 330, noNaN: true }),
        fc.constantFrom("air coil", "floor loop"),
        (recoveredHeat, heatNeeded, supplyWater, emitter) => {
          const x = { ...coil, recoveredHeat, heatNeeded, supplyWater, emitter } as SpaceInputs;
          const found = spaceHeat(x);
          expect(found.heatToSpace).toBeLessThanOrEqual(Math.min(recoveredHeat, heatNeeded, found.emitterCapacity));
          expect(found.leavingWater).toBeLessThan(supplyWater);
          if (found.supplyAir !== undefined) {
            expect((found.supplyAir - x.room) * 1.204 * 1006 * 1.4).toBeCloseTo(found.heatToSpace, 6);
            expect(found.supplyAir).toBeLessThan(supplyWater);
          }
          if (found.floorSurface !== undefined) {
            expect(found.floorSurface).toBeGreaterThan(x.room);
            expect(8.92 * 120 * (found.floorSurface - x.room) ** 1.1).toBeCloseTo(found.heatToSpace, 5);
          }
        },
      ),
    );
  });

  test("a missing input of the emitter is refused by name", () => {
    expect(() => spaceHeat({ ...coil, airFlow: undefined })).toThrow(/air flow: is missing/);
    expect(() => spaceHeat({ ...coil, emitter: "floor loop", floorArea: undefined })).toThrow(/floor area: is missing/);
    expect(() => spaceHeat({ ...coil, supplyWater: 290 })).toThrow(/supply water: must be above the room/);
  });
});

describe("a rack", () => {
  const rack: RackInputs = {
    compressor: "suction-cooled hermetic",
    mediumLoad: 45_000,
    mediumEvaporating: 266,
    lowLoad: 18_000,
    lowEvaporating: 244,
    condensing: 308.15,
    reclaim: "full condensing",
    desuperheatingShare: 0.2,
    refrigerant: undefined,
    efficiency: 0.65,
    heldCondensing: 316.15,
  };

  test("rejects its loads and its compressors' power, no more", () => {
    const { heat } = rackHeat(rack);
    expect(heat.heatRejected).toBeCloseTo(63_000 + heat.compressorPower, 6);
    expect(heat.desuperheating + heat.condensing).toBeCloseTo(heat.heatRejected, 6);
    expect(rackHeat({ ...rack, reclaim: "desuperheating" }).heat.heatToBeHad).toBeCloseTo(0.2 * heat.heatRejected, 6);
  });

  test("a rack at a raised condensing temperature rejects just the extra power more, which costs as much as it yields", () => {
    const { held } = rackHeat(rack);
    expect(held?.extraPower).toBeGreaterThan(0);
    expect(held?.extraHeat).toBeCloseTo(held?.extraPower ?? 0, 6);
    expect((held?.extraPowerMost ?? 0) / (held?.extraPowerLeast ?? 1)).toBeCloseTo(4, 9);
  });

  test("a rack may lack one load, and is refused without any", () => {
    expect(
      rowsOf("SINK.RACK", [
        ["medium load", 100_000],
        ["condensing", 95],
      ]).get("low factor"),
    ).toBe("");
    expect(
      run("SINK.RACK", [
        ["condensing", 95],
        ["reclaim", "full condensing"],
      ]),
    ).toMatch(/medium load: no load; give/);
    expect(
      run("SINK.RACK", [
        ["low load", 1000],
        ["condensing", 100],
        ["held condensing", 95],
      ]),
    ).toMatch(/held condensing: must be at least the condensing temperature of 100 °F, got 95 °F/);
  });
});
