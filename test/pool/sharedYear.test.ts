/** One year for all cells of the same inputs, and no run twice that the inputs don't touch. */
import { describe, expect, test } from "vitest";
import { silent } from "../../core/kernel/define/steps";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { admitClimate } from "../../core/pool/year/climate";
import type { YearInputs } from "../../core/pool/year/inputs";
import { totalOfYear } from "../../core/pool/year/monthlyTable";
import type { PoolYear } from "../../core/pool/year/results";
import { sharedYear } from "../../core/pool/year/sharedYear";
import { spreadOver } from "../../core/pool/year/spread";
import { HELD_LABELS, MONEY_LABELS, RECOVERY_LABELS, untouchedBy } from "../../core/pool/year/touched";
import { yearOf } from "../../core/pool/year/year";
import { DEFAULTS } from "./yearPools";

const BASE = {
  ...DEFAULTS,
  poolArea: 100,
  waterDepth: 1.5,
  setPoint: 300.15,
  latitude: 25.82,
  altitude: 11,
  ratedCooling: 26_400,
  ratedPower: 8100,
  outdoorFan: 600,
  exchangerUA: 5000,
  secondSink: "preheat tank",
  hotWaterDraw: 1.5,
  tankVolume: 1.5,
  tankUA: 3000,
  backUpSource: "natural gas",
  backUpPrice: 1e-8,
  electricityPrice: 4e-8,
} as unknown as YearInputs;

const MIAMI = admitClimate(MIAMI_MONTHS, "SI");

/** Another value of each label that the lists name. */
const OTHER: Readonly<Record<string, unknown>> = {
  backUpEfficiency: 0.9,
  backUpPrice: 2e-8,
  electricityPrice: 5e-8,
  hotWaterSource: "natural gas",
  hotWaterEfficiency: 0.8,
  hotWaterPrice: 1e-8,
  exchangerUA: 4000,
  waterFlow: 0.001,
  leastCondensing: 303,
  highLimit: 303,
  deadBand: 1,
  leastTime: 900,
  pumpOnCall: false,
  secondSink: "none",
  sinkOrder: "tank first",
  hotWaterDraw: 1,
  hotWater: 325,
  drawStart: 8,
  drawHours: 6 * 3600,
  tankVolume: 1,
  tankUA: 2500,
  tankFlow: 0.001,
  tankLimit: 310,
  tankLoss: 5,
  tankSurroundings: 290,
  tankPumpPower: 100,
  backUpCapacity: 8000,
  seasonStart: 4,
  seasonEnd: 10,
  setPoint: 299,
};

const base = yearOf(BASE, MIAMI);
const withOther = (key: string): YearInputs => ({ ...BASE, [key]: OTHER[key] });
const bytes = ({ temperature, taken, backUp, electricity, toTank, sums }: PoolYear) =>
  [temperature, taken, backUp, electricity, toTank, ...Object.values(sums)].map((each) => each.join());

describe("a year that several cells share", () => {
  test("is worked once for equal inputs, and prices work none again", () => {
    const { year } = sharedYear(BASE, MIAMI_MONTHS, "SI");
    const again = sharedYear({ ...BASE, electricityPrice: 9e-8 }, [...MIAMI_MONTHS], "SI");
    expect(again.year.free.with).toBe(year.free.with);
    expect(again.year.inputs.electricityPrice).toBe(9e-8);
    expect(totalOfYear(again.year).moneySaved).not.toBe(totalOfYear(year).moneySaved);
  });

  test("another input or unit system is another year", () => {
    const { year } = sharedYear(BASE, MIAMI_MONTHS, "SI");
    expect(sharedYear({ ...BASE, shading: 0.1 }, MIAMI_MONTHS, "SI").year.free.with).not.toBe(year.free.with);
    expect(bytes(year.free.with)).toEqual(bytes(base.free.with));
  });
});

describe("runs that an input doesn't touch", () => {
  test.each([...MONEY_LABELS, ...RECOVERY_LABELS, ...HELD_LABELS, "setPoint"])(
    "%s leaves the runs as they are that are kept for it",
    (label) => {
      const year = yearOf(withOther(label), MIAMI);
      const { free, held } = untouchedBy(withOther(label), base);
      const kept = [
        [free.without, year.free.without],
        [free.with, year.free.with],
        [held.without, year.held.without],
        [held.with, year.held.with],
      ].filter(([old]) => old !== undefined) as [PoolYear, PoolYear][];
      expect(kept.length).toBeGreaterThan(0);
      for (const [old, made] of kept) expect(bytes(old)).toEqual(bytes(made));
    },
  );

  test("an input that touches all pools keeps none", () =>
    expect(untouchedBy({ ...BASE, shading: 0.1 }, base)).toEqual({ free: {}, held: {} }));

  test("the totals of POOL.SPREAD are those of single years within their repetition", () => {
    const varied = [5000, 3500, 7000].map((exchangerUA) => ({ ...BASE, exchangerUA }));
    const totals = spreadOver(varied, MIAMI_MONTHS, "SI", silent);
    for (const [place, inputs] of varied.entries()) {
      const alone = totalOfYear(yearOf(inputs, MIAMI));
      for (const column of ["backUpWith", "backUpWithout", "heatTaken", "electricityWith"] as const)
        expect((totals[place]?.[column] ?? NaN) / alone[column]).toBeCloseTo(1, 3);
    }
  });
});
