/** A pool and a machine of round numbers, whose hours can be worked by hand. */
import type { Climate } from "../../core/pool/year/climate";
import type { Machine } from "../../core/pool/year/machine";
import type { PoolRun, Recovery, Tank } from "../../core/pool/year/run";
import type { State } from "../../core/pool/year/state";
import { yearSurface, type YearSurface } from "../../core/pool/year/surface";
import type { WaterCurve } from "../../core/pool/year/waterCurve";
import { bareRun, openPool, steady, type SteadyWeather } from "./yearPools";

export const HOURS = 8760;
export const allYear = (value: number): Float64Array => new Float64Array(HOURS).fill(value);

/** No sun; air and ground at 290 K, mains at 285 K. */
const STILL: SteadyWeather = {
  air: 290,
  vapour: 1000,
  dewPoint: 280,
  wind: 0,
  sun: 0,
  cloud: 0,
  pressure: 101_325,
  mains: 285,
};

/** Loses `U` W/m² for each kelvin above the air, and nothing else. */
export const ruledSurface = (U: number, weather: Partial<SteadyWeather> = {}): YearSurface =>
  yearSurface(openPool({}, U), steady({ ...STILL, ...weather }));

/** A curve with the same cooling and power at every water temperature, W. */
export const flatCurve = (cooling: number, power: number): WaterCurve => ({
  coldest: 270,
  perKelvin: 1,
  coolings: Float64Array.of(cooling, cooling),
  powers: Float64Array.of(power, power),
  water: [270, 271],
  condensing: [300, 301],
  capacityRate: 1000,
});

/** Serves 40 kW by running half of the time: 50 kW of heat on the pool, 45 kW on its outdoor coil, 60 kW on the tank. */
export const machineOf = (load: Float64Array = allYear(40_000), more: Partial<Machine> = {}): Machine => ({
  load,
  designLoad: 40_000,
  outdoorCooling: allYear(80_000),
  outdoorPower: allYear(20_000),
  outdoorFan: 10_000,
  poolCurve: flatCurve(80_000, 20_000),
  tankCurve: undefined,
  cyclingLoss: 0,
  covers: [250, 330],
  low: undefined,
  variable: false,
  middle: undefined,
  locked: undefined,
  ...more,
});

export const recoveryOf = (more: Partial<Recovery> = {}): Recovery => ({
  limit: 300,
  band: 2,
  leastTime: 0,
  onCall: true,
  lost: 0,
  ...more,
});

export const tankOf = (more: Partial<Tank> = {}): Tank => ({
  order: "pool first",
  capacity: 3.6e8,
  loss: 0,
  around: 290,
  limit: 330,
  draw: new Float64Array(24),
  pump: 0,
  ...more,
});

/** 100 m² of water; 50 kW warm it by 0.5 K an hour. One step an hour. */
export const runOf = (more: Partial<PoolRun> = {}): PoolRun => ({
  ...bareRun(ruledSurface(0)),
  capacity: 3.6e6,
  machine: machineOf(),
  recovery: recoveryOf(),
  steps: 1,
  ...more,
});

export const from = (temperature: number, more: Partial<State> = {}): State => ({
  temperature,
  ice: 0,
  onPool: false,
  since: 3600,
  tank: 300,
  ...more,
});

/** Months in which nothing is unlikely near the equator. */
export const PLAIN_MONTHS: Climate = {
  monthly: true,
  columns: {
    air: new Float64Array(12).fill(290),
    swing: new Float64Array(12).fill(9),
    humidity: new Float64Array(12).fill(0.6),
    windAt10m: new Float64Array(12).fill(3),
    sun: new Float64Array(12).fill(1.5e7),
  },
};
