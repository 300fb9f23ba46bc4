import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn } from "../golden/rows";

const definition = lookUp(CATALOGUE, "EXCHANGER.FLOWSTOP");
if (!definition) throw new Error("no EXCHANGER.FLOWSTOP");
const compiled = compile(definition);

function stopped(block: Readonly<Record<string, number>>): ReadonlyMap<string, string | number> {
  const out = evaluate(compiled, [Object.entries(block)], CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as readonly [string, string | number][]).map(([label, value]) => [label, value]));
}

describe("EXCHANGER.FLOWSTOP", () => {
  // Printed to 7 digits; a BTU/(lb °F) and a gallon's 8.3171 lb are rounded in their fifth.
  test.each(cellsIn("stopped-flow.csv").map((row, i) => [i + 1, row] as const))("row %d agrees to 2e-5", (_, row) => {
    const found = stopped({
      heat: numberIn(row, "heat_Btu_h"),
      "water volume": numberIn(row, "water_US_gal"),
      metal: numberIn(row, "metal_lb_titanium"),
      "start water": numberIn(row, "start_degF"),
      UA: numberIn(row, "UA_Btu_hF"),
      "cut out": numberIn(row, "cut_out_saturation_degF"),
    });
    const near = (label: string, column: string) => {
      const wanted = numberIn(row, column);
      expect(Math.abs(Number(found.get(label)) - wanted), label).toBeLessThan(2e-5 * wanted);
    };
    near("rate", "rate_degF_min");
    near("condensing at start", "condensing_at_start_degF");
    near("seconds to limit", "seconds_to_140F_water");
    near("seconds to cut out", "seconds_to_cut_out");
    near("water at cut out", "water_at_cut_out_degF");
    expect(found.get("first")).toBe(wordIn(row, "first") === "cut-out" ? "cut-out" : "water at its limit");
  });

  test("takes longer with more water, and half as long with twice the heat", () => {
    const base = { heat: 40_000, "water volume": 2, "start water": 85, UA: 6000 };
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 10, noNaN: true }), (gallons) => {
        const seconds = (more: Readonly<Record<string, number>>) =>
          Number(stopped({ ...base, "water volume": gallons, ...more }).get("seconds to limit"));
        expect(seconds({ "water volume": gallons * 1.1 })).toBeGreaterThan(seconds({}));
        expect(seconds({ heat: 80_000 })).toBeCloseTo(seconds({}) / 2, 9);
      }),
      { numRuns: 25 },
    );
  });

  // Worked by hand: 180 to 140 °F in 90 °F air, titanium of 1.5 mm, film 10 W/(m² K): 29 mm.
  test("needs 29 mm of titanium by conduction alone", () => {
    expect(
      Number(stopped({ heat: 48_000, "water volume": 1.2, "start water": 90, UA: 3000 }).get("stub")) * 25.4,
    ).toBeCloseTo(29, 0);
  });
});
