/** What the run of a pool through the hours comes to, and the year of all four pools. */
import type { YearInputs } from "./inputs";
import type { Machine } from "./machine";
import type { State } from "./state";
import { clearSums, emptySums, type Sums } from "./sums";
import type { YearSurface } from "./surface";
import type { Weather } from "./weather";

/** Kept by hour: temperatures of pool and tank, K; heats and electricity, W. */
const HOURLY = ["temperature", "taken", "outdoors", "backUp", "electricity", "toTank", "tank"] as const;
export type Hourly = (typeof HOURLY)[number];

export interface PoolYear extends Readonly<Record<Hourly, Float64Array>> {
  readonly sums: Sums;
  /** K by month, at the ends of steps. */
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
  readonly start: State;
  readonly end: State;
  /** Steps beyond one an hour. */
  readonly subSteps: number;
}

/** The arrays of a year with other ends. Names each field: objects of one shape keep the compiled loop valid. */
export const yearBetween = (
  of: Omit<PoolYear, "start" | "end" | "subSteps">,
  start: State,
  end: State,
  subSteps: number,
) => ({
  temperature: of.temperature,
  taken: of.taken,
  outdoors: of.outdoors,
  backUp: of.backUp,
  electricity: of.electricity,
  toTank: of.toTank,
  tank: of.tank,
  sums: of.sums,
  lowest: of.lowest,
  highest: of.highest,
  start,
  end,
  subSteps,
});

/** Arrays for a year, all 0. */
export function emptyYear(hours: number, start: State): PoolYear {
  const array = (): Float64Array => new Float64Array(hours);
  const arrays = {
    temperature: array(),
    taken: array(),
    outdoors: array(),
    backUp: array(),
    electricity: array(),
    toTank: array(),
    tank: array(),
    sums: emptySums(),
    lowest: new Float64Array(12).fill(Number.MAX_VALUE),
    highest: new Float64Array(12),
  };
  return yearBetween(arrays, start, start, 0);
}

/** The same arrays for another run. */
export function clearYear(year: PoolYear): PoolYear {
  clearSums(year.sums);
  for (const name of HOURLY) year[name].fill(0);
  year.lowest.fill(Number.MAX_VALUE);
  year.highest.fill(0);
  return year;
}

/** A pool without and with the air conditioner's heat. */
export interface Pair {
  readonly without: PoolYear;
  readonly with: PoolYear;
}

/** What a pool kept at exactly one temperature needs. */
export interface Held {
  /** Loss less sun by month, J/m², signed. */
  readonly balance: Float64Array;
  /** Sum over the hours of what is above 0, J/m². */
  readonly hourly: Float64Array;
  readonly losses: Sums;
}

export interface Year {
  readonly inputs: YearInputs;
  readonly weather: Weather;
  readonly surface: YearSurface;
  readonly machine: Machine | undefined;
  /** Whether each month, 0 to 11, lies in the season. */
  readonly season: readonly boolean[];
  /** Left to itself, and held at the set point through the season. */
  readonly free: Pair;
  readonly held: Pair;
  /** Kept at exactly the set point: the month's balance. */
  readonly balance: Held;
}
