/**
 * The year of a pool: left to itself and held by a back-up heater, each without and with the air conditioner's heat. Four
 * pools in the same weather, hour by hour, each begun so that its year repeats.
 */
import { silent, type Trace } from "../../kernel/steps";
import type { Climate } from "./climate";
import type { PoolRun, PoolYear } from "./state";
import { repeatingYear } from "./repeat";
import { yearSurface, type Weather, type YearSurface } from "./surface";
import { heldExactly, totalOf, type Held } from "./lossesAt";
import {
  backUpOf,
  capacityOf,
  checkYearInputs,
  machineThroughYear,
  pumpOf,
  sidesOf,
  siteOf,
  yearPoolOf,
  type YearInputs,
} from "./setUp";
import type { Machine } from "./machine";
import { tankOf } from "./tankSetUp";
import { weatherOf } from "./weather";

export interface Pair {
  readonly without: PoolYear;
  readonly with: PoolYear;
}

export interface Year {
  readonly inputs: YearInputs;
  readonly weather: Weather;
  readonly surface: YearSurface;
  readonly machine: Machine | undefined;
  /** Left to itself, and held at the set point through the season. */
  readonly free: Pair;
  readonly held: Pair;
  /** Kept at exactly the set point: the month's balance. */
  readonly balance: Held;
}

const FREEZING = 273.15;

/** Ends of an earlier year, to begin near: free without and with, held without and with, K. */
export type Begin = readonly [number, number, number, number];

export const beginOf = ({ free, held }: Year): Begin => [
  free.without.end.temperature,
  free.with.end.temperature,
  held.without.end.temperature,
  held.with.end.temperature,
];

const beginFrom = (inputs: YearInputs, weather: Weather): Begin => {
  const air = Math.max(FREEZING + 1, totalOf(weather.air) / weather.hours);
  return [air, air, inputs.setPoint, inputs.setPoint];
};

/** What takes the machine's heat besides the air. */
type Sinks = Pick<PoolRun, "recovery" | "tank">;
const NO_SINKS: Sinks = { recovery: undefined, tank: undefined };

/** A pool's run without and with recovery, and where each begins, K. */
interface Runs {
  readonly without: PoolRun;
  readonly with: PoolRun;
  readonly begin: readonly [number, number];
}

const pairOf = ({ without, with: recovering, begin }: Runs): Pair => {
  // The run that uses most comes first: compiled for it, the hour loop needs no second compilation.
  const recovers = recovering.recovery !== undefined || recovering.tank !== undefined;
  const found = recovers ? repeatingYear(recovering, begin[1]) : undefined;
  const alone = repeatingYear(without, begin[0]);
  return { without: alone, with: found ?? alone };
};

/** The hours at the pool's place. */
export const weatherAt = (inputs: YearInputs, climate: Climate): Weather => weatherOf(climate, siteOf(inputs));

/** @param begin where the pools begin; else from the air and the set point */
export const yearOf = (inputs: YearInputs, climate: Climate, begin?: Begin, trace: Trace = silent): Year =>
  yearIn(inputs, weatherAt(inputs, climate), begin, trace);

/** The year in weather that is made already. */
export const yearIn = (inputs: YearInputs, weather: Weather, begin?: Begin, trace: Trace = silent): Year => {
  checkYearInputs(inputs);
  const surface = yearSurface(yearPoolOf(inputs, weather), weather);
  const sides = sidesOf(inputs);
  const machine = machineThroughYear(inputs, weather, sides);
  const [capacity, pump] = [capacityOf(inputs), pumpOf(inputs)];
  // One literal for all four runs: objects of one shape keep the compiled hour loop valid.
  const run = (sinks: Sinks, backUp: PoolRun["backUp"]): PoolRun => ({
    surface,
    area: inputs.poolArea,
    capacity,
    pump,
    machine,
    recovery: sinks.recovery,
    tank: sinks.tank,
    backUp,
    freezing: FREEZING,
  });
  const { highLimit: limit, deadBand: band, leastTime, pumpOnCall: onCall } = inputs;
  const recovery = sides.onPool && { limit, band, leastTime, onCall };
  const recovering: Sinks = { recovery, tank: tankOf(inputs) };
  const backUp = backUpOf(inputs);
  const [a, b, c, d] = begin ?? beginFrom(inputs, weather);
  const heldRuns: Runs = { without: run(NO_SINKS, backUp), with: run(recovering, backUp), begin: [c, d] };
  const freeRuns: Runs = { without: run(NO_SINKS, undefined), with: run(recovering, undefined), begin: [a, b] };
  const held = pairOf(heldRuns);
  const free = pairOf(freeRuns);
  const year = { inputs, weather, surface, machine, free, held, balance: heldExactly(surface, inputs.setPoint) };
  if (trace.on) tell(year, trace);
  return year;
};

/** The hours as series: no hour is written out. */
const tell = ({ inputs, weather, surface, machine, free, held }: Year, trace: Trace): void => {
  const series = (title: string, of: string, kind: "temperature" | "irradiance" | "heat rate", values: Float64Array) =>
    trace.series({ title, of, kind, total: "mean", values });
  trace.within("Weather", () => {
    series("Air", "hours", "temperature", weather.air);
    series("Sun on a level surface", "hours", "irradiance", weather.sun);
    series("Sun absorbed", "hours", "irradiance", surface.sun);
  });
  trace.within("Pool", () => {
    series("Left to itself, without recovery", "hours", "temperature", free.without.temperature);
    series("Left to itself, with recovery", "hours", "temperature", free.with.temperature);
    series("Back-up heat without recovery", "hours", "heat rate", held.without.backUp);
    series("Back-up heat with recovery", "hours", "heat rate", held.with.backUp);
  });
  if (machine)
    trace.within("Air conditioner", () => {
      series("Cooling load", "hours", "heat rate", machine.load);
      series("Heat to the pool", "hours", "heat rate", free.with.taken);
      series("Heat outdoors", "hours", "heat rate", free.with.outdoors);
    });
  if (machine?.onTank)
    trace.within("Preheat tank", () => {
      series("Heat to the tank", "hours", "heat rate", free.with.toTank);
      series("Water in the tank", "hours", "temperature", free.with.tank);
    });
  trace.remark(
    `Each hour is one step, solved exactly for losses that are a straight line about the hour's first temperature; ${free.with.subSteps + held.with.subSteps} further steps where that or the valve asked for them. ${inputs.evaporationMethod} for evaporation.`,
  );
};

/** Gains less losses less what the water stored, over the sum of all losses: 0 but for rounding. */
export const imbalance = ({ sums, start, end }: PoolYear, capacity: number): number => {
  const { evaporation, convection, radiation, ground, makeUp, sun, pumpHeat, taken, backUp } = sums;
  const lost = [evaporation, convection, radiation, ground, makeUp].reduce((sum, each) => sum + totalOf(each), 0);
  const gained = [sun, pumpHeat, taken, backUp].reduce((sum, each) => sum + totalOf(each), 0);
  const stored = (end.temperature - start.temperature) * capacity - (end.ice - start.ice);
  return (gained - lost - stored) / Math.max(1, Math.abs(gained), Math.abs(lost));
};
