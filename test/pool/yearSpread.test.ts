/** Years that differ in one input, and the year that cells share, beside single years. */
import { describe, expect, test } from "vitest";
import { recorder, silent, type Step } from "../../core/kernel/define/steps";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { admitClimate } from "../../core/pool/year/climate";
import type { YearInputs } from "../../core/pool/year/inputs";
import { totalOfYear } from "../../core/pool/year/monthlyTable";
import { sharedYear, withMapUnits } from "../../core/pool/year/sharedYear";
import { spreadOver } from "../../core/pool/year/spread";
import { yearOf } from "../../core/pool/year/year";
import { DEFAULTS } from "./yearPools";

const MIAMI = admitClimate(MIAMI_MONTHS, "SI");

/** A pool that loses by a rule, and a machine that serves 20 kW. */
const inputs = (more: Partial<YearInputs> = {}): YearInputs =>
  ({
    ...DEFAULTS,
    ...{ poolArea: 100, waterDepth: 1.5, setPoint: 300.15, altitude: 0, latitude: 25.82 },
    ...{ lossMethod: "surface rule", surfaceCoefficient: 60 },
    ...{ ratedCooling: 26_400, ratedPower: 8100, outdoorFan: 600, designLoad: 20_000, exchangerUA: 5000 },
    ...more,
  }) as YearInputs;

/** A compressor that moves 400 kg/h with 5 kW whatever the pressures; read as lb/h it moves less than half. */
const MAP = {
  mapFlow: [400, ...Array<number>(9).fill(0)],
  mapPower: [5000, ...Array<number>(9).fill(0)],
  ratedCooling: undefined,
  ratedPower: undefined,
};

const parts = { lossMethod: "parts" } as const;

describe("totals of years that differ in one input", () => {
  test.each<[string, readonly Partial<YearInputs>[]]>([
    ["the exchanger", [{ exchangerUA: 5000 }, { exchangerUA: 2000 }, { exchangerUA: 9000 }]],
    ["the wind", [parts, { ...parts, windAtWater: 3 }, { ...parts, windAtWater: 0.2 }]],
    ["the latitude", [parts, { ...parts, latitude: 24 }]],
    ["the depth", [{ waterDepth: 1 }, { waterDepth: 2 }]],
    [
      "a map without units",
      [
        { ...MAP, exchangerUA: 5000 },
        { ...MAP, exchangerUA: 2000 },
      ],
    ],
  ])("are those of single years: %s", (_what, varied) => {
    const blocks = varied.map(inputs);
    const totals = spreadOver(blocks, MIAMI_MONTHS, "SI", silent);
    expect(totals).toHaveLength(varied.length);
    for (const [place, block] of blocks.entries()) {
      const alone = totalOfYear(yearOf(withMapUnits(block, "SI"), MIAMI));
      for (const column of ["heatTaken", "electricityWith", "lossWithout"] as const)
        expect((totals[place]?.[column] ?? NaN) / alone[column]).toBeCloseTo(1, 3);
    }
    const heats = totals.map(({ heatTaken, lossWithout }) => `${heatTaken} ${lossWithout}`);
    expect(new Set(heats).size).toBe(varied.length);
  });

  test("show the working of the first year under its place", () => {
    const { trace, steps } = recorder();
    spreadOver(
      [5000, 2000].map((exchangerUA) => inputs({ exchangerUA })),
      MIAMI_MONTHS,
      "SI",
      trace,
    );
    expect(steps.map((step: Step) => (step.type === "group" ? step.title : step.type))).toEqual(["Value 1"]);
  });
});

describe("the year that cells share", () => {
  test("is another in another climate and another unit system", () => {
    const { year } = sharedYear(inputs(), MIAMI_MONTHS, "SI");
    const [head = [], first = [], ...rest] = MIAMI_MONTHS;
    const warmer = [head, [20, ...first.slice(1)], ...rest];
    expect(sharedYear(inputs(), warmer, "SI").year.weather.air[12]).not.toBe(year.weather.air[12]);
    expect(sharedYear(inputs(), MIAMI_MONTHS, "US").year.free.with).not.toBe(year.free.with);
    expect(sharedYear(inputs(), MIAMI_MONTHS, "SI").climate.monthly).toBe(true);
  });

  test("shows its hours where the working is recorded, even where it was made before", () => {
    sharedYear(inputs(), MIAMI_MONTHS, "SI");
    const { trace, steps } = recorder();
    sharedYear(inputs(), MIAMI_MONTHS, "SI", trace);
    expect(steps.flatMap((step) => (step.type === "group" ? [step.title] : []))).toEqual([
      "Weather",
      "Pool",
      "Air conditioner",
    ]);
  });

  test("is refused in weather that no place has", () => {
    const impossible = MIAMI_MONTHS.map((row, at) =>
      at === 0 ? row : row.map((cell, place) => (place === 3 ? 30 : cell)),
    );
    expect(() => sharedYear(inputs(), impossible, "SI")).toThrow(
      expect.objectContaining({ message: expect.stringMatching(/^climate, .*wind.*: must be as some place has it/) }),
    );
  });

  test("reads a map in its own units, else in those of the call; without a map nothing is added", () => {
    const map = { ...MAP, mapUnits: undefined } as Partial<YearInputs>;
    expect(withMapUnits(inputs(map), "SI").mapUnits).toBe("SI");
    expect(withMapUnits(inputs(map), "US").mapUnits).toBe("US");
    expect(withMapUnits(inputs({ ...map, mapUnits: "US" }), "SI").mapUnits).toBe("US");
    const plain = inputs();
    expect(withMapUnits(plain, "SI")).toBe(plain);
    expect(sharedYear(inputs(map), MIAMI_MONTHS, "SI").year.inputs.mapUnits).toBe("SI");
  });
});
