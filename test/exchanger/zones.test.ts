import { assert, constantFrom, double, pre, property, record } from "fast-check";
import { describe, expect, it } from "vitest";
import { matchStreams, type StreamMatch, type ZonesInput } from "../../core/exchanger/zones/zones";
import { condensingCurve } from "../../core/exchanger/zones/condensingCurve";
import { isFault } from "../../core/kernel/values/fault";
import { loadRefrigerant } from "../../core/refrigerant/refrigerant";
import { stateByEnthalpy } from "../../core/refrigerant/state/stateBy";
import { cellsIn, numberIn } from "../golden/rows";

const NAMES = ["R-22", "R-32", "R-134a", "R-410A", "R-407C", "R-454B"] as const;

const cases = record({
  name: constantFrom(...NAMES),
  direction: constantFrom("counterflow" as const, "parallel" as const),
  condensing: double({ min: 300, max: 328, noNaN: true }),
  approach: double({ min: 1, max: 25, noNaN: true }),
  superheat: double({ min: 0, max: 50, noNaN: true }),
  subcooling: double({ min: 0, max: 8, noNaN: true }),
  heat: double({ min: 2000, max: 60_000, noNaN: true }),
  rise: double({ min: 0.5, max: 15, noNaN: true }),
});

interface Drawn {
  readonly name: string;
  readonly direction: "counterflow" | "parallel";
  readonly condensing: number;
  readonly approach: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly heat: number;
  readonly rise: number;
}

function inputOf(drawn: Drawn): ZonesInput {
  const { name, condensing, approach, superheat, heat, rise, ...rest } = drawn;
  return {
    ...rest,
    fluid: loadRefrigerant(name),
    heat,
    condensing,
    inlet: (dew) => ({ temperature: Math.max(dew, condensing + superheat) }),
    waterFlow: heat / (rise * 4.18e6),
    enteringWater: Math.max(274, condensing - approach - rise),
  };
}

/** Undefined where the curves cross. */
const tried = (input: ZonesInput): StreamMatch | undefined => {
  try {
    return matchStreams(input);
  } catch (fault) {
    if (isFault(fault) && fault.message.startsWith("temperatures cross")) return undefined;
    throw fault;
  }
};

describe("zones of a condensing refrigerant", () => {
  it("the zones close their heat balance to a millionth and never violate the second law, 2,000 random cases", () => {
    assert(
      property(cases, (drawn) => {
        const found = tried(inputOf(drawn));
        pre(found !== undefined);
        const { curve, massFlow, capacityRate, water, zones, total } = found;
        const given = massFlow * (curve.inlet.enthalpy - curve.outlet.enthalpy);
        const taken = capacityRate * (total.waterOut - total.waterIn);
        const parts = Object.values(zones).reduce((sum, zone) => sum + zone.duty, 0);
        for (const heat of [given, taken, parts, total.duty])
          expect(Math.abs(heat / drawn.heat - 1)).toBeLessThan(1e-6);
        const entropy =
          massFlow * (curve.outlet.entropy - curve.inlet.entropy) +
          capacityRate * Math.log(total.waterOut / total.waterIn);
        expect(entropy).toBeGreaterThan(0);
        water.forEach((cold, i) => expect((curve.temperatures[i] ?? 0) - cold).toBeGreaterThan(0));
        expect(total.least.difference).toBeLessThanOrEqual(total.meanDifference);
      }),
      { numRuns: 2000, maxSkipsPerRun: 30 },
    );
  }, 60_000);

  it("colder water needs less conductance", () => {
    assert(
      property(cases, (drawn) => {
        const input = inputOf(drawn);
        const found = tried(input);
        pre(found !== undefined && input.enteringWater > 276);
        const colder = tried({ ...input, enteringWater: input.enteringWater - 2 });
        expect(colder?.total.ua).toBeLessThan(found.total.ua);
      }),
      { numRuns: 150 },
    );
  }, 30_000);

  it("a refusal of crossed curves names a condensing temperature that just works", () => {
    for (const name of NAMES)
      for (const direction of ["counterflow", "parallel"] as const) {
        const input = inputOf({
          name,
          direction,
          condensing: 305,
          approach: 1,
          superheat: 40,
          subcooling: 5,
          heat: 30_000,
          rise: 8,
        });
        let told = "";
        try {
          matchStreams({ ...input, enteringWater: 300 });
        } catch (fault) {
          told = (fault as Error).message;
        }
        const works = Number(/just touch at \u27e6temperature\|([\d.]+)\u27e7/.exec(told)?.[1]);
        expect(told, name).toMatch(/^temperatures cross at the (dew point|refrigerant outlet|bubble point|within)/);
        expect(tried({ ...input, enteringWater: 300, condensing: works + 0.01 })?.total.least.difference).toBeLessThan(
          0.1,
        );
        expect(tried({ ...input, enteringWater: 300, condensing: works - 0.01 })).toBeUndefined();
      }
  });

  it("the condensing curve follows the flash along the glide within 0.01 K", () => {
    for (const name of ["R-407C", "R-454B", "R-452B", "R-404A"]) {
      const fluid = loadRefrigerant(name);
      const curve = condensingCurve(fluid, 312, 0, { temperature: 312 });
      expect(curve.dewAt).toBe(0);
      for (const i of [3, 9, 15, 21]) {
        const exact = stateByEnthalpy(fluid, curve.pressure, curve.enthalpies[i] ?? 0).temperature;
        expect(Math.abs((curve.temperatures[i] ?? 0) - exact), `${name} ${i}`).toBeLessThan(0.01);
      }
    }
  });

  it("the zones share the heat as the published equations of state do", () => {
    const rows = cellsIn("refrigerant-cycle.csv").filter(
      ({ model, Tc_dew_K }) => model === "pure" && Number(Tc_dew_K) < 335,
    );
    const superheated = rows.filter((row) => numberIn(row, "T2_K") >= numberIn(row, "Tc_dew_K") + 0.5);
    expect(superheated).toHaveLength(81);
    for (const row of superheated) {
      const at = (column: string): number => numberIn(row, column);
      const { zones, total } = matchStreams({
        fluid: loadRefrigerant(row.fluid ?? ""),
        massFlow: 0.05,
        inlet: () => ({ temperature: at("T2_K") }),
        condensing: at("Tc_dew_K"),
        subcooling: at("SC_K"),
        waterFlow: 0.01,
        enteringWater: 274,
        direction: "counterflow",
      });
      const share = (duty = 0): number => duty / total.duty;
      expect(share(zones.desuperheating?.duty), row.fluid).toBeCloseTo(at("share_desuper"), 3);
      expect(share(zones.condensing?.duty), row.fluid).toBeCloseTo(at("share_cond"), 3);
      expect(share(zones.subcooling?.duty), row.fluid).toBeCloseTo(at("share_subcool"), 3);
    }
  });
});
