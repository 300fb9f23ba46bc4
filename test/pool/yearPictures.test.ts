import { describe, expect, test } from "vitest";
import { dayPicture, dayPictures, monthsPicture } from "../../core/picture/year";
import { admitClimate } from "../../core/pool/year/climate";
import type { YearInputs } from "../../core/pool/year/inputs";
import { totalOfYear } from "../../core/pool/year/monthlyTable";
import { yearOf } from "../../core/pool/year/year";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { DEFAULTS } from "./yearPools";

const yearWith = (values: Partial<YearInputs>) =>
  yearOf(
    {
      ...DEFAULTS,
      ...{ poolArea: 100, waterDepth: 1.5, setPoint: 300.15, latitude: 25.82 },
      ...{ ratedCooling: 26_400, ratedPower: 8100, outdoorFan: 600 },
      ...values,
    } as YearInputs,
    admitClimate(MIAMI_MONTHS, "SI"),
  );

const TANK = { secondSink: "preheat tank", hotWaterDraw: 1.5, tankVolume: 1.5, tankUA: 4000 } as const;

describe("the year's pictures with a preheat tank", () => {
  const year = yearWith({ ...TANK, exchangerUA: 5000 });

  test("the year's picture stacks what the tank takes between pool and outdoors, and heads its column", () => {
    const { stacks = [], head } = monthsPicture(year, "SI");
    expect(stacks.map(({ name }) => name)).toEqual([
      "taken by the pool",
      "back-up heat",
      "taken by the tank",
      "sent outdoors",
    ]);
    expect(head).toContain("tank, kWh");
    const tank = stacks[2]?.values.reduce((sum, each) => sum + each, 0) ?? NaN;
    expect(tank).toBeCloseTo(totalOfYear(year).heatToTankHeld / 3.6e6, 6);
    expect(tank).toBeGreaterThan(100);
  });

  test("the picture of a usual day draws the tank's heat and lists its water", () => {
    const { curves, head, rows } = dayPicture(year, 6, "SI");
    expect(curves.map(({ name }) => name)).toContain("taken by the tank");
    expect(head.at(-1)).toBe("tank, °C");
    expect(rows).toHaveLength(24);
    for (const row of rows) expect(row).toHaveLength(head.length);
  });

  test("usual days show where only the tank takes heat, and no tank where there is none", () => {
    expect(dayPictures(yearWith(TANK), "SI")?.options).toHaveLength(12);
    const { stacks = [] } = monthsPicture(yearWith({ exchangerUA: 5000 }), "SI");
    expect(stacks.map(({ name }) => name)).not.toContain("taken by the tank");
    expect(dayPictures(yearWith({}), "SI")).toBeUndefined();
  });
});
