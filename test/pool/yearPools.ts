/** Pools and weather that the tests of the year share. */
import type { Rating } from "../../core/aircon/machine/stage";
import type { ArgData, BlockShape } from "../../core/kernel/define/argument";
import { YEAR_INPUTS } from "../../core/pool/year/inputs";
import type { PoolYear } from "../../core/pool/year/results";
import type { PoolRun } from "../../core/pool/year/run";
import { totalOf } from "../../core/pool/year/sums";
import type { YearPool, YearSurface } from "../../core/pool/year/surface";
import type { Weather } from "../../core/pool/year/weather";
import type { Surface } from "../../core/pool/losses/surface";

/** What the year's input block takes for each label that is left out. */
export const DEFAULTS: Readonly<Record<string, unknown>> = Object.fromEntries(
  Object.entries((YEAR_INPUTS.shape as BlockShape).entries).map(([key, arg]: [string, ArgData]) => [key, arg.fallback]),
);

/** A 7.5-ton machine at its rating. */
export const RATING: Rating = {
  cooling: 26_400,
  power: 8100,
  outdoorFan: 600,
  indoorFan: 500,
  refrigerant: "R-410A",
  evaporating: 280.37,
  condensing: 319.26,
  wetBulb: 292.59,
  superheat: 5.56,
  subcooling: 5.56,
};

/** No cover, ground, make-up or shade; 100 m², 1.5 m deep. */
export const openPool = (surface: Partial<Surface> = {}, rule?: number): YearPool => ({
  surface: { method: "Smith-Lof-Jones", activity: 1, convection: "by evaporation", hiddenSky: 0, ...surface },
  area: 100,
  depth: 1.5,
  rule,
  cover: { kind: "none", hours: 0, covered: 1, convectionCut: 0, radiationCut: 0 },
  ground: { coefficient: 0, temperature: 288 },
  // So much rain-free draw below zero that no make-up water is ever counted.
  water: { drawn: -1, rain: 0 },
  sunShare: 0.8,
  shading: 0,
});

export const bareRun = (surface: YearSurface): PoolRun => ({
  surface,
  area: 100,
  capacity: 6.25e6,
  pump: { schedule: new Float64Array(24), power: 0, heat: 0 },
  machine: undefined,
  recovery: undefined,
  backUp: undefined,
  freezing: 273.15,
});

export interface SteadyWeather {
  readonly air: number;
  readonly vapour: number;
  readonly dewPoint: number;
  readonly wind: number;
  readonly sun: number;
  readonly cloud: number;
  readonly pressure: number;
  readonly mains: number;
}

/** The same hour all year. */
export const steady = (values: SteadyWeather): Weather => {
  const all = (value: number): Float64Array => new Float64Array(8760).fill(value);
  return {
    hours: 8760,
    air: all(values.air),
    vapour: all(values.vapour),
    dewPoint: all(values.dewPoint),
    wind: all(values.wind),
    sun: all(values.sun),
    cloud: all(values.cloud),
    pressure: all(values.pressure),
    mains: all(values.mains),
  };
};

/** Gains less losses less what the water stored, over the sum of all losses: 0 but for rounding. */
export const imbalance = ({ sums, start, end }: PoolYear, capacity: number): number => {
  const { evaporation, convection, radiation, ground, makeUp, sun, pumpHeat, taken, backUp } = sums;
  const lost = [evaporation, convection, radiation, ground, makeUp].reduce((sum, each) => sum + totalOf(each), 0);
  const gained = [sun, pumpHeat, taken, backUp].reduce((sum, each) => sum + totalOf(each), 0);
  const stored = (end.temperature - start.temperature) * capacity - (end.ice - start.ice);
  return (gained - lost - stored) / Math.max(1, Math.abs(gained), Math.abs(lost));
};
