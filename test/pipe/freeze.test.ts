import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn } from "../golden/rows";

const definition = lookUp(CATALOGUE, "PIPE.FREEZE");
if (!definition) throw new Error("no PIPE.FREEZE");
const compiled = compile(definition);

function frost(block: Readonly<Record<string, number | string>>): ReadonlyMap<string, number> {
  const out = evaluate(compiled, [Object.entries(block)], CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as readonly [string, number][]).map(([label, value]) => [label, value]));
}

describe("PIPE.FREEZE", () => {
  // Printed to 7 digits; dimensions are rounded to 1e-6 m.
  test.each(cellsIn("freezing.csv").map((row, i) => [i + 1, row] as const))(
    "row %d agrees with another program to 3e-5",
    (_, row) => {
      const found = frost({
        size: `${wordIn(row, "nominal_in")} in`,
        start: numberIn(row, "start_degF"),
        air: numberIn(row, "air_degF"),
        wind: numberIn(row, "wind_mph"),
        insulation: `${numberIn(row, "insulation_mm")} mm`,
        "insulation conductivity": "0.036 W/(m·K)",
        emissivity: numberIn(row, "emissivity"),
        "water share": numberIn(row, "water_share"),
        metal: `${numberIn(row, "extra_J_mK")} g/m`,
        "metal heat capacity": "1 kJ/(kg·K)",
      });
      const near = (label: string, column: string): void => {
        if (wordIn(row, column) === "") return;
        const wanted = numberIn(row, column);
        expect(Math.abs((found.get(label) ?? 0) - wanted), label).toBeLessThan(3e-5 * wanted);
      };
      near("until freezing", "hours_to_32F");
      near("by insulation alone", "hours_to_32F_insulation_only");
      near("then tenth ice", "hours_more_10pct_ice");
      near("then all ice", "hours_more_all_ice");
    },
  );

  test("takes longer from warmer water, in milder air, in a larger pipe, and less in wind", () => {
    const hours = (more: Readonly<Record<string, number | string>>) =>
      frost({ size: "2 in", start: 45, air: 15, ...more }).get("until freezing") ?? 0;
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 30, noNaN: true }), (by) => {
        expect(hours({ start: 45 + by })).toBeGreaterThan(hours({}));
        expect(hours({ air: 15 - by })).toBeLessThan(hours({}));
        expect(hours({ wind: by })).toBeLessThan(hours({}));
        expect(hours({ size: "3 in" })).toBeGreaterThan(hours({}));
      }),
      { numRuns: 25 },
    );
  });

  test("gives a trickle whose heat from 40 to 34 °F is what the length loses", () => {
    // 1 gpm from 40 down to 34 °F carries 3,000 BTU/h: the flow times that is the loss at a mean temperature.
    const flow = frost({ size: "2 in", start: 40, air: 20, length: 200 }).get("trickle") ?? 0;
    const loss = (water: number): number => {
      const id = lookUp(CATALOGUE, "PIPE.HEATLOSS");
      if (!id) throw new Error("no PIPE.HEATLOSS");
      const block = Object.entries({ size: "2 in", water, air: 20, length: 200 });
      const out = evaluate(compile(id), [block], CATALOGUE);
      if (isFault(out)) throw new Error(out.message);
      return Number((out as readonly [string, number][])[0]?.[1]);
    };
    expect(flow * 3000).toBeLessThan(loss(40) * 1.01);
    expect(flow * 3000).toBeGreaterThan(loss(34) * 0.99);
  });

  test("refuses both or neither of size and outside diameter", () => {
    expect(() => frost({ air: 20 })).toThrow(/size/);
    expect(() => frost({ size: "2 in", "outside diameter": 2, wall: 0.1, air: 20 })).toThrow(/size/);
    expect(() => frost({ "outside diameter": 2, wall: 1, air: 20 })).toThrow(/half/);
  });
});
