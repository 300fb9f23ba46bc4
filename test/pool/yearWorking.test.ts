/** What a year shows of its hours, and which of its runs an input touches. */
import { describe, expect, test } from "vitest";
import { recorder, type Step } from "../../core/kernel/define/steps";
import type { YearInputs } from "../../core/pool/year/inputs";
import { emptyYear, type PoolYear, type Year } from "../../core/pool/year/results";
import { emptySums } from "../../core/pool/year/sums";
import { runLabels, untouchedBy } from "../../core/pool/year/touched";
import { traceYear } from "../../core/pool/year/working";
import { allYear, flatCurve, from, HOURS, machineOf, ruledSurface } from "./yearHandMade";
import { DEFAULTS } from "./yearPools";

const INPUTS = { ...DEFAULTS, poolArea: 50, setPoint: 300, evaporationMethod: "Carrier" } as unknown as YearInputs;
const pool = (subSteps: number): PoolYear => ({ ...emptyYear(HOURS, from(290)), temperature: allYear(290), subSteps });
const yearOf = (machine: Year["machine"]): Year => {
  const surface = ruledSurface(0, { sun: 100 });
  return {
    inputs: INPUTS,
    weather: surface.weather,
    surface,
    machine,
    season: Array<boolean>(12).fill(true),
    free: { without: pool(1), with: pool(20) },
    held: { without: pool(300), with: pool(4000) },
    balance: { balance: new Float64Array(12), hourly: new Float64Array(12), losses: emptySums() },
  };
};

/** Titles of groups and of the series in them, and remarks. */
const shown = (steps: readonly Step[]): readonly unknown[] =>
  steps.map((step) => {
    if (step.type === "group") return [step.title, ...shown(step.steps)];
    if (step.type === "series") return `${step.title}: ${step.kind}, ${step.of}, ${step.total}`;
    return step.type === "remark" ? step.text : step.type;
  });
const workingOf = (year: Year): readonly unknown[] => {
  const { trace, steps } = recorder();
  traceYear(year, trace);
  return shown(steps);
};

describe("the working of a year", () => {
  const WEATHER = [
    "Weather",
    "Air: temperature, hours, mean",
    "Sun on a level surface: irradiance, hours, mean",
    "Sun absorbed: irradiance, hours, mean",
  ];
  const POOL = [
    "Pool",
    "Left to itself, without recovery: temperature, hours, mean",
    "Left to itself, with recovery: temperature, hours, mean",
    "Back-up heat without recovery: heat rate, hours, mean",
    "Back-up heat with recovery: heat rate, hours, mean",
  ];
  const MACHINE = [
    "Air conditioner",
    "Cooling load: heat rate, hours, mean",
    "Heat to the pool: heat rate, hours, mean",
    "Heat outdoors: heat rate, hours, mean",
  ];
  const TANK = [
    "Preheat tank",
    "Heat to the tank: heat rate, hours, mean",
    "Water in the tank: temperature, hours, mean",
  ];

  test("shows weather and pool, the machine and the tank where there is one, and how the hours were solved", () => {
    const [remark] = workingOf(yearOf(undefined)).slice(-1);
    expect(workingOf(yearOf(undefined))).toEqual([WEATHER, POOL, remark]);
    expect(workingOf(yearOf(machineOf()))).toEqual([WEATHER, POOL, MACHINE, remark]);
    const tankCurve = flatCurve(1, 1);
    expect(workingOf(yearOf(machineOf(undefined, { tankCurve })))).toEqual([WEATHER, POOL, MACHINE, TANK, remark]);
    expect(remark).toMatch(/^Each hour is one step, .*; 4020 further steps .* Carrier for evaporation\.$/);
  });
});

describe("an input touches", () => {
  const year = yearOf(machineOf());
  /** The runs that another input leaves as they are. */
  const kept = (change: Partial<YearInputs>): readonly string[] => {
    const { free, held } = untouchedBy({ ...INPUTS, ...change }, year);
    expect(free.without ?? year.free.without).toBe(year.free.without);
    expect(held.with ?? year.held.with).toBe(year.held.with);
    return [...Object.keys(free).map((each) => `free ${each}`), ...Object.keys(held).map((each) => `held ${each}`)];
  };

  test.each<[string, Partial<YearInputs>, readonly string[]]>([
    ["nothing where it is the same", {}, ["free without", "free with", "held without", "held with"]],
    ["no run where it is a price", { electricityPrice: 1 }, ["free without", "free with", "held without", "held with"]],
    ["the held pools where it is the heater's capacity", { backUpCapacity: 5 }, ["free without", "free with"]],
    ["the held pools where it is the season", { seasonStart: 5 }, ["free without", "free with"]],
    ["the pools with recovery where it is the exchanger", { exchangerUA: 5 }, ["free without", "held without"]],
    ["the pools with recovery where it is the tank", { tankVolume: 5 }, ["free without", "held without"]],
    ["the pools with recovery where it is a loss on the way", { lineLoss: 5 }, ["free without", "held without"]],
    ["all but the free pool without recovery where it is the set point", { setPoint: 301 }, ["free without"]],
    ["every run where it is the pool", { poolArea: 51 }, []],
  ])("%s", (_, change, runs) => {
    expect(kept(change)).toEqual(runs);
  });

  test("its labels but those of money", () => {
    const labels = runLabels(INPUTS).map(([key]) => key);
    expect(labels).toContain("poolArea");
    expect(labels).not.toContain("hotWaterPrice");
    expect(runLabels({ ...INPUTS, electricityPrice: 2 })).toEqual(runLabels(INPUTS));
    expect(runLabels({ ...INPUTS, poolArea: 2 })).not.toEqual(runLabels(INPUTS));
  });
});
