/**
 * One pool through the hours of a year. Within a step the losses are a straight line over the temperature, so the step is
 * solved exactly (exponential integration): never unstable, and the heat balance closes to rounding. Sub-steps only where
 * the bend of the losses or a valve that is about to turn would be missed.
 */
import type { Machine } from "./yearMachine";
import { LOSSES, MONTH_OF, emptySums, sumOf, terms, termsAt, type Figure, type Sums } from "./yearTerms";
import type { YearSurface } from "./yearSurface";

/** How the machine's heat is let into the pool. */
export interface Recovery {
  /** The pool gets no more heat above this, K, and again this far below, K. */
  readonly limit: number;
  readonly band: number;
  /** Least time between two turns of the valve, s. */
  readonly leastTime: number;
  /** Whether the machine may start the pump outside its hours. */
  readonly onCall: boolean;
}

export interface Pump {
  /** Part of each hour of the day in which the pump runs by its schedule. */
  readonly schedule: Float64Array;
  /** W, and what of it warms the water, W. */
  readonly power: number;
  readonly heat: number;
}

export interface PoolRun {
  readonly surface: YearSurface;
  /** m²; J/(m²·K) */
  readonly area: number;
  readonly capacity: number;
  readonly pump: Pump;
  readonly machine: Machine | undefined;
  readonly recovery: Recovery | undefined;
  /** Back-up heat that keeps the pool from falling below `set` (K), at most `most` (W/m²), by month. */
  readonly backUp: { readonly set: number; readonly most: number; readonly months: readonly boolean[] } | undefined;
  /** Heat from elsewhere, W/m² by hour. */
  readonly extra?: Float64Array;
  /** At 273.15 K ice forms; lower, the water is let go on cooling, for comparison with reckonings that know no ice. */
  readonly freezing: number;
  /** Steps in an hour, 1 if not told. */
  readonly steps?: number;
}

export interface PoolYear {
  readonly sums: Sums;
  /** By hour: mean temperature, K; heats and electricity, W. */
  readonly temperature: Float64Array;
  readonly taken: Float64Array;
  readonly outdoors: Float64Array;
  readonly backUp: Float64Array;
  readonly electricity: Float64Array;
  /** K by month, at the ends of steps. */
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
  readonly start: State;
  readonly end: State;
  /** Steps beyond one an hour. */
  readonly subSteps: number;
}

/** What a pool carries from hour to hour. */
export interface State {
  readonly temperature: number;
  /** Heat to melt what has frozen, J/m². */
  readonly ice: number;
  readonly onPool: boolean;
  /** Since the valve turned, s. */
  readonly since: number;
}

const HOUR = 3600;
const MOST_STEPS = 12;
/** Error of a step's end that is let pass, K. */
const TOLERANCE = 0.001;
/** The loss's second derivative is at most about this share of the first, 1/K: vapour pressure bends so. */
const BEND = 0.07;

interface Going {
  T: number;
  ice: number;
  onPool: boolean;
  since: number;
  subSteps: number;
}

/** Room for one step's answers. */
interface Scratch {
  readonly at: Float64Array;
  slope: number;
  heat: number;
  taken: number;
  rejected: number;
  share: number;
  onPool: boolean;
  electricity: number;
  unmet: number;
  extra: number;
}

/** The share of the hour that the machine runs for a load, with the loss of starting and stopping. */
const runShare = (machine: Machine, load: number, cooling: number): number => {
  if (load >= cooling) return 1;
  const part = load / cooling;
  return part / (1 - machine.cyclingLoss * (1 - part));
};

/** Decides the valve, and what the machine gives to pool and air at water temperature T. */
const drive = (run: PoolRun, hour: number, going: Going, to: Scratch): void => {
  const { machine, recovery, pump } = run;
  to.taken = to.rejected = to.share = to.electricity = to.unmet = to.extra = 0;
  to.onPool = false;
  const load = machine === undefined ? 0 : (machine.load[hour] ?? 0);
  if (machine === undefined || load <= 0) return;
  if (recovery !== undefined) {
    const wants = going.onPool ? going.T < recovery.limit : going.T < recovery.limit - recovery.band;
    const running = recovery.onCall || (pump.schedule[hour % 24] ?? 0) >= 1;
    const next = wants && running;
    if (next !== going.onPool && (going.since >= recovery.leastTime || !running)) {
      going.onPool = next;
      going.since = 0;
    }
    to.onPool = going.onPool;
  }
  const side = to.onPool ? machine.onPool : undefined;
  const cooling = side ? side.cooling(going.T) : (machine.outdoorCooling[hour] ?? 0);
  const power = side ? side.power(going.T) : (machine.outdoorPower[hour] ?? 0);
  const share = runShare(machine, load, cooling);
  const met = Math.min(load, cooling);
  to.share = share;
  to.unmet = load - met;
  to.electricity = share * power;
  to.rejected = met + share * (power - (to.onPool ? 0 : machine.outdoorFan));
  to.taken = to.onPool ? to.rejected : 0;
  to.extra = to.onPool ? share * (1 - (pump.schedule[hour % 24] ?? 0)) : 0;
};

/** Losses, slope and net heat, W/m², at the start of a step. */
const look = (run: PoolRun, hour: number, going: Going, to: Scratch): void => {
  drive(run, hour, going, to);
  termsAt(run.surface, hour, going.T, to.at);
  to.slope = sumOf(to.at, LOSSES);
  const pump = run.pump.heat * ((run.pump.schedule[hour % 24] ?? 0) + to.extra);
  const gains = (run.surface.sun[hour] ?? 0) + (run.extra?.[hour] ?? 0) + (to.taken + pump) / run.area;
  to.heat = gains - sumOf(to.at, 0);
};

/** (1 − (1 − e^−z)/z)/z: what a step's mean takes of heat × time ÷ capacity. */
const meanPart = (z: number): number =>
  z < 0.2 ? 0.5 * (1 - (z / 3) * (1 - (z / 4) * (1 - (z / 5) * (1 - z / 6)))) : (1 + Math.expm1(-z) / z) / z;

/** How many steps an hour needs: one, unless the losses bend within it or the valve would turn in it. */
const stepsFor = (run: PoolRun, going: Going, at: Scratch): number => {
  if (run.steps !== undefined) return run.steps;
  const rise = (at.heat * HOUR) / run.capacity;
  const error = (at.slope * BEND * rise * rise * HOUR) / (6 * run.capacity);
  const bend = error > TOLERANCE ? Math.ceil(Math.sqrt(error / TOLERANCE)) : 1;
  const over = at.onPool && run.recovery ? going.T + rise - run.recovery.limit : 0;
  const turns = run.recovery && over > run.recovery.band / 4 ? Math.ceil((4 * over) / run.recovery.band) : 1;
  return Math.min(MOST_STEPS, Math.max(bend, turns));
};

/** Ends a step at the temperature that its heat leads to, with ice formed before water is colder than 0 °C. */
const settle = (run: PoolRun, going: Going, reached: number): void => {
  const { freezing, capacity } = run;
  if (going.ice > 0 || reached < freezing) {
    going.ice -= (reached - freezing) * capacity;
    going.T = going.ice < 0 ? freezing - going.ice / capacity : freezing;
    if (going.ice < 0) going.ice = 0;
  } else going.T = reached;
};

const backUpFor = (run: PoolRun, month: number, reached: number, gain: number): number => {
  const { backUp } = run;
  if (backUp?.months[month] !== true || reached >= backUp.set) return 0;
  return Math.min(backUp.most, (backUp.set - reached) / gain);
};

const add = (to: Float64Array, month: number, value: number): void => {
  to[month] = (to[month] ?? 0) + value;
};

const LOSS_FIGURES: readonly Figure[] = ["evaporation", "convection", "radiation", "ground", "makeUp"];

/** Runs from a state through the hours `from` to `to`; `record` false for warming up. */
export const runPool = (run: PoolRun, start: State, from: number, to: number): PoolYear => {
  const year: PoolYear = emptyYear(to, start);
  const { sums } = year;
  const lossSums = LOSS_FIGURES.map((figure) => sums[figure]);
  const going: Going = { T: start.temperature, ice: start.ice, onPool: start.onPool, since: start.since, subSteps: 0 };
  const now: Scratch = {
    at: terms(),
    slope: 0,
    heat: 0,
    taken: 0,
    rejected: 0,
    share: 0,
    onPool: false,
    electricity: 0,
    unmet: 0,
    extra: 0,
  };
  for (let hour = from; hour < to; hour++) {
    const month = MONTH_OF[hour] ?? 0;
    look(run, hour, going, now);
    const steps = stepsFor(run, going, now);
    going.subSteps += steps - 1;
    const dt = HOUR / steps;
    let warmth = 0;
    for (let step = 0; step < steps; step++) {
      if (step > 0) look(run, hour, going, now);
      const z = (now.slope * dt) / run.capacity;
      const mean = meanPart(z);
      const frozen = going.ice > 0;
      const gain = (dt / run.capacity) * (frozen ? 1 : 1 - z * mean);
      const backUp = backUpFor(run, month, going.T + now.heat * gain - going.ice / run.capacity, gain);
      const heat = now.heat + backUp;
      const above = frozen ? 0 : (heat * dt * mean) / run.capacity;
      for (let place = 0; place < LOSSES; place++)
        add(
          lossSums[place] as Float64Array,
          month,
          dt * ((now.at[place] ?? 0) + (now.at[LOSSES + place] ?? 0) * above),
        );
      warmth += dt * Math.max(going.T + above, run.freezing);
      settle(run, going, going.T + heat * gain);
      going.since += dt;
      note(year, run, now, hour, month, dt, backUp);
      if (going.ice > 0) add(sums.frozen, month, dt);
      if (going.T < (year.lowest[month] ?? 0)) year.lowest[month] = going.T;
      if (going.T > (year.highest[month] ?? 0)) year.highest[month] = going.T;
    }
    year.temperature[hour] = warmth / HOUR;
    add(sums.warmth, month, warmth);
    add(sums.sun, month, HOUR * (run.surface.sun[hour] ?? 0));
  }
  const end = { temperature: going.T, ice: going.ice, onPool: going.onPool, since: going.since };
  return { ...year, end, subSteps: going.subSteps };
};

/** Sums what the machine and the back-up heater did in a step. */
const note = (
  year: PoolYear,
  run: PoolRun,
  now: Scratch,
  hour: number,
  month: number,
  dt: number,
  backUp: number,
): void => {
  const { sums } = year;
  const part = dt / HOUR;
  const pump = (run.pump.schedule[hour % 24] ?? 0) + now.extra;
  add(sums.pumpHeat, month, (dt * run.pump.heat * pump) / run.area);
  if (backUp > 0) {
    add(sums.backUp, month, dt * backUp);
    add(year.backUp, hour, part * backUp * run.area);
  }
  if (now.share === 0) return;
  add(sums.taken, month, (dt * now.taken) / run.area);
  add(sums.rejected, month, dt * now.rejected);
  add(now.onPool ? sums.poolTime : sums.outdoorTime, month, dt * now.share);
  add(sums.electricity, month, dt * now.electricity);
  add(sums.extraPump, month, dt * run.pump.power * now.extra);
  add(sums.unmet, month, dt * now.unmet);
  add(year.taken, hour, part * now.taken);
  add(year.outdoors, hour, part * (now.rejected - now.taken));
  add(year.electricity, hour, part * now.electricity);
};

const emptyYear = (hours: number, start: State): PoolYear => ({
  sums: emptySums(),
  temperature: new Float64Array(hours),
  taken: new Float64Array(hours),
  outdoors: new Float64Array(hours),
  backUp: new Float64Array(hours),
  electricity: new Float64Array(hours),
  lowest: new Float64Array(12).fill(Number.MAX_VALUE),
  highest: new Float64Array(12),
  start,
  end: start,
  subSteps: 0,
});

/** Of the year's end, run before the first year so that it begins near where it will end, h. */
const LEAD = 24 * 45;
const MOST_YEARS = 8;
/** Ends and begins within this, K. */
const REPEATS = 0.002;

/** The year that repeats itself: its end is its beginning. */
export const repeatingYear = (run: PoolRun, guess: number): PoolYear => {
  const hours = run.surface.weather.hours;
  let start: State = { temperature: guess, ice: 0, onPool: false, since: HOUR };
  start = runPool(run, start, hours - LEAD, hours).end;
  for (let pass = 1; ; pass++) {
    const year = runPool(run, start, 0, hours);
    const off = Math.abs(year.end.temperature - start.temperature) + Math.abs(year.end.ice - start.ice) / run.capacity;
    if (off < REPEATS || pass === MOST_YEARS) return year;
    start = year.end;
  }
};
