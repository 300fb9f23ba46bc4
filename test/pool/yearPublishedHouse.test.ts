/** The year beside a field test and a published model of a house's pool; bands are wide, as pool and machine aren't told. */
import { describe, expect, test } from "vitest";
import { us } from "../../core/kernel/quantity";
import { totalOfYear } from "../../core/pool/year/monthlyTable";
import { cellsIn, numberIn } from "../golden/rows";
import { yearAt } from "./publishedYear";

describe("a house's pool as the heat sink of its air conditioner, in a hot dry climate", () => {
  // Assumed: 450 ft² of water, 5 ft deep; 3.5 tons of net cooling at EER 10.5; load met at 95 °F; exchanger of 2.5 kW/K.
  const cooling = us("heat rate", 42_000);
  const HOUSE = {
    poolArea: us("area", 450),
    waterDepth: us("depth", 5),
    ratedCooling: cooling,
    ratedPower: (cooling * 3.412) / 10.5,
    outdoorFan: 250,
    indoorFan: 450,
    exchangerUA: 2500,
  };
  // Neither source's summary tells the size of pool or machine, the hours or the limit: all of this is assumed.
  const found = yearAt("phoenix-az", HOUSE);
  const total = totalOfYear(found);
  const published = (source: string, what: string): number => {
    const row = cellsIn("pool-field-and-model.csv").find((each) => each["source"] === source && each["what"] === what);
    if (row === undefined) throw new Error(`no ${what} of ${source}`);
    return numberIn(row, "expected");
  };
  const changeOf = (after: number, before: number): number => 100 * (after / before - 1);

  test("the air conditioner cools with 5 to 40 % less energy, beside the field test's 13 and the modelled 30", () => {
    const change = changeOf(total.electricityWith, total.electricityWithout);
    expect(change).toBeLessThan(Math.min(-5, published("ET22SWE0052", "cooling energy") / 2));
    expect(change).toBeGreaterThan(Math.max(-40, published("Woolley", "cooling energy")));
  });

  test("saves more than the 500 kWh a year that the field test's simulations give a home in a warmer climate", () => {
    const saved = (total.electricityWithout - total.electricityWith) / 3.6e6;
    expect(saved).toBeGreaterThan(published("ET22SWE0052", "cooling energy saved a year, over"));
    expect(saved).toBeLessThan(2500);
  });

  test("warms the pool by 0.5 to 6 °F in the year's mean, within a factor of 3 of the field test's 2.3", () => {
    const rise = 1.8 * (Number(total.poolWith) - Number(total.poolWithout));
    const field = published("ET22SWE0052", "mean pool temperature");
    expect(rise).toBeGreaterThan(Math.max(0.5, field / 3));
    expect(rise).toBeLessThan(Math.min(6, field * 3));
  });

  test("the saving of power above 95 °F outdoors lies between half of the field test's figure and the modelled peak's 40 %", () => {
    const { without, with: recovered } = found.free;
    const hot = us("temperature", 95);
    /** Over the hours in which all the heat goes to the pool. */
    const change = (of: (air: number) => boolean): number => {
      let [before, after] = [0, 0];
      found.weather.air.forEach((air, hour) => {
        if (!of(air) || (recovered.taken[hour] ?? 0) === 0 || (recovered.outdoors[hour] ?? 0) > 0) return;
        before += without.electricity[hour] ?? 0;
        after += recovered.electricity[hour] ?? 0;
      });
      return changeOf(after, before);
    };
    const above = change((air) => air > hot);
    // An efficiency so much greater is a power so much less for the same cooling.
    const field = changeOf(1, 1 + published("ET22SWE0052", "efficiency above 95 F outdoors") / 100);
    expect(above).toBeLessThan(field / 2);
    expect(above).toBeGreaterThan(published("Woolley", "peak cooling power"));
    expect(above).toBeLessThan(change((air) => air <= hot));
  });
});
