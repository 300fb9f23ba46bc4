import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/catalogue";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";
import { REFRIGERANTS } from "../../core/refrigerant/models/refrigerant";

const gain = (...raw: readonly unknown[]): ReadonlyMap<string, number> => {
  const definition = lookUp(CATALOGUE, "AIRCON.GAIN");
  if (!definition) throw new Error("no AIRCON.GAIN");
  const out = evaluate(compile(definition), raw, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as [string, number][]).map(([label, value]) => [label, value]));
};

describe("AIRCON.GAIN", () => {
  // COP and relative capacity at 45 °F evaporating, 10 °F superheat and subcooling, efficiency 0.65, by CoolProp 8.0.0.
  const TABLE: Readonly<Record<string, readonly (readonly [number, number, number])[]>> = {
    "R-22": [
      [90, 6.59, 1.063],
      [105, 4.74, 1],
      [120, 3.61, 0.935],
      [130, 3.07, 0.89],
    ],
    "R-134a": [
      [90, 6.7, 1.076],
      [105, 4.8, 1],
      [120, 3.64, 0.922],
      [130, 3.08, 0.869],
    ],
    "R-32": [
      [90, 6.37, 1.063],
      [105, 4.54, 1],
      [120, 3.42, 0.934],
      [130, 2.89, 0.887],
    ],
  };

  it.each(Object.keys(TABLE))("agrees with another program's cycle table for %s", (name) => {
    const rows = TABLE[name] ?? [];
    for (const [outdoors, copOutdoors, capacityOutdoors] of rows)
      for (const [pool, copPool, capacityPool] of rows) {
        const found = gain(name, 45, outdoors, pool);
        const near = (label: string, wanted: number, within: number) =>
          expect(Math.abs(found.get(label)! - wanted), `${label} ${outdoors} to ${pool}`).toBeLessThan(within);
        near("change of capacity", capacityPool / capacityOutdoors - 1, 0.0013);
        near("change of COP", copPool / copOutdoors - 1, 0.009);
      }
  });

  it("gives no change where both condense alike, and the inverse the other way round", () => {
    for (const name of REFRIGERANTS.filter((each) => each !== "R-744")) {
      const same = gain(name, 45, 105, 105);
      expect(same.get("change of capacity")).toBeCloseTo(0, 12);
      const [there, back] = [gain(name, 45, 115, 100), gain(name, 45, 100, 115)];
      expect((1 + there.get("change of power")!) * (1 + back.get("change of power")!)).toBeCloseTo(1, 9);
      expect(there.get("change of power")).toBeLessThan(0);
      expect(there.get("change of capacity")).toBeGreaterThan(0);
    }
  });
});
