/** The year of a pool that repeats itself, whatever it began with. */
import { HOURLY, type PoolRun, type PoolYear, type State } from "./state";
import { emptyYear, runPool } from "./hourLoop";
import { allSums } from "./lossesAt";

const HOUR = 3600;

/** The same arrays for another run. */
const cleared = (year: PoolYear): PoolYear => {
  allSums(year.sums).fill(0);
  for (const name of HOURLY) year[name].fill(0);
  year.lowest.fill(Number.MAX_VALUE);
  year.highest.fill(0);
  return year;
};

/** Of the year's end, run before the first year so that it begins near where it will end, h. */
const LEAD = 24 * 30;
const MOST_YEARS = 8;
/** Ends and begins within this, K. */
const REPEATS = 0.002;

/** The year that repeats itself: its end is its beginning. */
export const repeatingYear = (run: PoolRun, guess: number): PoolYear => {
  const hours = run.surface.weather.hours;
  const begin: State = {
    temperature: guess,
    ice: 0,
    onPool: false,
    since: HOUR,
    tank: run.surface.weather.mains[0] ?? guess,
  };
  const room = emptyYear(hours, begin);
  let start = runPool(run, begin, hours - LEAD, hours, room).end;
  for (let pass = 1; ; pass++) {
    const year = runPool(run, start, 0, hours, cleared(room));
    const tank = run.tank ? Math.abs(year.end.tank - start.tank) : 0;
    const ice = Math.abs(year.end.ice - start.ice) / run.capacity;
    const off = Math.abs(year.end.temperature - start.temperature) + ice + tank;
    if (off < REPEATS || pass === MOST_YEARS) return year;
    start = year.end;
  }
};
