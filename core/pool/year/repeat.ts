/** The year of a pool that repeats itself, whatever it began with. */
import { HOUR, HOURS_OF_DAY } from "../../numeric/calendar";
import { runPool } from "./hourLoop";
import { clearYear, emptyYear, type PoolYear } from "./results";
import type { PoolRun } from "./run";
import type { State } from "./state";

/** Of the year's end, run before the first year so that it begins near where it will end, h. */
const LEAD = HOURS_OF_DAY * 30;
const MOST_YEARS = 8;
/** Ends and begins within this, K. */
const REPEATS = 0.002;

/** How far a year ends from where it began, K. */
const driftOf = ({ start, end }: PoolYear, run: PoolRun): number => {
  const tank = run.tank ? Math.abs(end.tank - start.tank) : 0;
  const ice = Math.abs(end.ice - start.ice) / run.capacity;
  return Math.abs(end.temperature - start.temperature) + ice + tank;
};

/** The year that repeats itself: its end is its beginning. Its arrays may be those of a year that nobody needs any more. */
export function repeatingYear(run: PoolRun, guess: number, used?: PoolYear): PoolYear {
  const { hours, mains } = run.surface.weather;
  const begin: State = { temperature: guess, ice: 0, onPool: false, since: HOUR, tank: mains[0] ?? guess };
  const arrays = used ?? emptyYear(hours, begin);
  let start = runPool(run, begin, hours - LEAD, hours, arrays).end;
  for (let pass = 1; ; pass++) {
    const year = runPool(run, start, 0, hours, clearYear(arrays));
    if (driftOf(year, run) < REPEATS || pass === MOST_YEARS) return year;
    start = year.end;
  }
}
