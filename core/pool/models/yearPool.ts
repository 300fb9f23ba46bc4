/**
 * One pool through the hours of a year. Within a step the losses are a straight line over the temperature, so the step is
 * solved exactly (exponential integration): never unstable, and the heat balance closes to rounding. Sub-steps only where
 * the bend of the losses or a valve that is about to turn would be missed.
 */
import type { Machine } from "./yearMachine";
import { LOSSES, MONTH_OF, emptySums, sumOf, terms, termsAt, type Sums } from "./yearTerms";
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

// Bound here once: read from another module they would be asked for a million times a year.
const COUNT = LOSSES;
const monthOf = MONTH_OF;
const writeTerms = termsAt;
const summed = sumOf;

/** What goes on from step to step, and one step's answers: places in a record of numbers, so that nothing is allocated. */
const T = 0;
const ICE = 1;
const ON_POOL = 2;
const SINCE = 3;
const SLOPE = 4;
const HEAT = 5;
const TAKEN = 6;
const REJECTED = 7;
const SHARE = 8;
const ELECTRICITY = 9;
const UNMET = 10;
const EXTRA = 11;
/** Whether the step's machine runs on the pool. */
const DRIVES = 12;
const MACHINE_END = 13;
/** Length of a step, s; back-up heat, W/m²; mean of a step above its start, K; integral of temperature over the hour, K·s. */
const DT = 13;
const BACK_UP = 14;
const ABOVE = 15;
const WARMTH = 16;
const PLACES = 17;

type Going = Float64Array;

const at = (of: Float64Array, place: number): number => of[place] ?? 0;

/** The share of the hour that the machine runs for a load, with the loss of starting and stopping. */
const runShare = (machine: Machine, load: number, cooling: number): number => {
  if (load >= cooling) return 1;
  const part = load / cooling;
  return part / (1 - machine.cyclingLoss * (1 - part));
};

/** Turns the valve where it must and may; whether the machine is on the pool. */
const turn = (recovery: Recovery, schedule: number, going: Going): boolean => {
  const on = going[ON_POOL] === 1;
  const wants = at(going, T) < recovery.limit - (on ? 0 : recovery.band);
  const running = recovery.onCall || schedule >= 1;
  const next = wants && running;
  if (next === on || (running && at(going, SINCE) < recovery.leastTime)) return on;
  going[ON_POOL] = next ? 1 : 0;
  going[SINCE] = 0;
  return next;
};

/** Decides the valve, and what the machine gives to pool and air at the water's temperature. */
const drive = (run: PoolRun, hour: number, clock: number, going: Going): void => {
  const { machine, recovery, pump } = run;
  const load = machine === undefined ? 0 : at(machine.load, hour);
  if (machine === undefined || load <= 0) {
    if (going[SHARE] !== 0 || going[UNMET] !== 0) going.fill(0, TAKEN, MACHINE_END);
    return;
  }
  const schedule = at(pump.schedule, clock);
  const side = recovery !== undefined && turn(recovery, schedule, going) ? machine.onPool : undefined;
  const cooling = side ? side.cooling(at(going, T)) : at(machine.outdoorCooling, hour);
  const power = side ? side.power(at(going, T)) : at(machine.outdoorPower, hour);
  const share = runShare(machine, load, cooling);
  const met = load < cooling ? load : cooling;
  const rejected = met + share * (power - (side ? 0 : machine.outdoorFan));
  going[DRIVES] = side ? 1 : 0;
  going[SHARE] = share;
  going[UNMET] = load - met;
  going[ELECTRICITY] = share * power;
  going[REJECTED] = rejected;
  going[TAKEN] = side ? rejected : 0;
  going[EXTRA] = side ? share * (1 - schedule) : 0;
};

/** Losses, slope and net heat, W/m², at the start of a step. */
const look = (run: PoolRun, hour: number, clock: number, going: Going, losses: Float64Array): void => {
  drive(run, hour, clock, going);
  writeTerms(run.surface, hour, at(going, T), losses);
  const pump = run.pump.heat * (at(run.pump.schedule, clock) + at(going, EXTRA));
  const extra = run.extra === undefined ? 0 : at(run.extra, hour);
  going[SLOPE] = summed(losses, COUNT);
  going[HEAT] = at(run.surface.sun, hour) + extra + (at(going, TAKEN) + pump) / run.area - summed(losses, 0);
};

const THIRD = 1 / 3;
const SIXTH = 1 / 6;

/** (1 − (1 − e^−z)/z)/z: what a step's mean takes of heat × time ÷ capacity. */
const meanPart = (z: number): number =>
  z < 0.2 ? 0.5 * (1 - z * THIRD * (1 - z * 0.25 * (1 - z * 0.2 * (1 - z * SIXTH)))) : (1 + Math.expm1(-z) / z) / z;

/** How many steps an hour needs: one, unless the losses bend within it or the valve would turn in it. */
const stepsFor = (run: PoolRun, going: Going): number => {
  if (run.steps !== undefined) return run.steps;
  const rise = (at(going, HEAT) * HOUR) / run.capacity;
  const error = (at(going, SLOPE) * BEND * rise * rise * HOUR) / (6 * run.capacity);
  const bend = error > TOLERANCE ? Math.ceil(Math.sqrt(error / TOLERANCE)) : 1;
  const { recovery } = run;
  const over = recovery !== undefined && going[DRIVES] === 1 ? at(going, T) + rise - recovery.limit : 0;
  const turns = recovery !== undefined && over > recovery.band / 4 ? Math.ceil((4 * over) / recovery.band) : 1;
  return Math.min(MOST_STEPS, Math.max(bend, turns));
};

/** Ends a step at the temperature that its heat leads to, with ice formed before water is colder than 0 °C. */
const settle = (run: PoolRun, going: Going, reached: number): void => {
  const { freezing, capacity } = run;
  if (at(going, ICE) <= 0 && reached >= freezing) {
    going[T] = reached;
    return;
  }
  const ice = at(going, ICE) - (reached - freezing) * capacity;
  going[T] = ice < 0 ? freezing - ice / capacity : freezing;
  going[ICE] = ice < 0 ? 0 : ice;
};

const backUpFor = (run: PoolRun, month: number, reached: number, gain: number): number => {
  const { backUp } = run;
  if (backUp === undefined || reached >= backUp.set || backUp.months[month] !== true) return 0;
  return Math.min(backUp.most, (backUp.set - reached) / gain);
};

const add = (to: Float64Array, place: number, value: number): void => {
  to[place] = (to[place] ?? 0) + value;
};

/** Losses of a step at its mean temperature, J/m². */
const addLosses = (sums: Sums, month: number, losses: Float64Array, going: Going): void => {
  const dt = at(going, DT);
  const above = at(going, ABOVE);
  add(sums.evaporation, month, dt * (at(losses, 0) + at(losses, COUNT) * above));
  add(sums.convection, month, dt * (at(losses, 1) + at(losses, COUNT + 1) * above));
  add(sums.radiation, month, dt * (at(losses, 2) + at(losses, COUNT + 2) * above));
  add(sums.ground, month, dt * (at(losses, 3) + at(losses, COUNT + 3) * above));
  add(sums.makeUp, month, dt * (at(losses, 4) + at(losses, COUNT + 4) * above));
};

/** One step from what `look` found. Numbers go by `going`: as arguments and answers each would be a box on the heap. */
const step = (run: PoolRun, year: PoolYear, going: Going, losses: Float64Array, hour: number, clock: number): void => {
  const month = monthOf[hour] ?? 0;
  const dt = at(going, DT);
  const start = at(going, T);
  const z = (at(going, SLOPE) * dt) / run.capacity;
  const mean = meanPart(z);
  const frozen = at(going, ICE) > 0;
  const gain = (dt / run.capacity) * (frozen ? 1 : 1 - z * mean);
  const alone = start + at(going, HEAT) * gain - at(going, ICE) / run.capacity;
  const backUp = backUpFor(run, month, alone, gain);
  const heat = at(going, HEAT) + backUp;
  const above = frozen ? 0 : (heat * dt * mean) / run.capacity;
  going[BACK_UP] = backUp;
  going[ABOVE] = above;
  addLosses(year.sums, month, losses, going);
  note(year, run, going, hour, clock, month);
  settle(run, going, start + heat * gain);
  going[SINCE] = at(going, SINCE) + dt;
  const end = at(going, T);
  if (at(going, ICE) > 0) add(year.sums.frozen, month, dt);
  if (end < at(year.lowest, month)) year.lowest[month] = end;
  if (end > at(year.highest, month)) year.highest[month] = end;
  const warm = start + above;
  going[WARMTH] = at(going, WARMTH) + dt * (warm > run.freezing ? warm : run.freezing);
};

/** Runs from a state through the hours `from` to `to`, one after the other, adding to `into`. */
export const runPool = (
  run: PoolRun,
  start: State,
  from: number,
  to: number,
  into: PoolYear = emptyYear(to, start),
): PoolYear => {
  const year = { ...into, start };
  const going = new Float64Array(PLACES);
  const losses = terms();
  let subSteps = 0;
  going.set([start.temperature, start.ice, start.onPool ? 1 : 0, start.since]);
  for (let hour = from; hour < to; hour++) {
    const clock = hour % 24;
    look(run, hour, clock, going, losses);
    const steps = stepsFor(run, going);
    going[DT] = HOUR / steps;
    going[WARMTH] = 0;
    step(run, year, going, losses, hour, clock);
    for (let more = 1; more < steps; more++) {
      look(run, hour, clock, going, losses);
      step(run, year, going, losses, hour, clock);
    }
    subSteps += steps - 1;
    const month = monthOf[hour] ?? 0;
    const warmth = at(going, WARMTH);
    year.temperature[hour] = warmth / HOUR;
    add(year.sums.warmth, month, warmth);
    add(year.sums.sun, month, HOUR * at(run.surface.sun, hour));
  }
  const [temperature = 0, ice = 0, onPool, since = 0] = going;
  return { ...year, end: { temperature, ice, onPool: onPool === 1, since }, subSteps };
};

/** Sums what the machine, the pump and the back-up heater did in a step. */
const note = (year: PoolYear, run: PoolRun, going: Going, hour: number, clock: number, month: number): void => {
  const { sums } = year;
  const dt = at(going, DT);
  const part = dt / HOUR;
  const backUp = at(going, BACK_UP);
  if (run.pump.heat > 0)
    add(sums.pumpHeat, month, (dt * run.pump.heat * (at(run.pump.schedule, clock) + at(going, EXTRA))) / run.area);
  if (backUp > 0) {
    add(sums.backUp, month, dt * backUp);
    add(year.backUp, hour, part * backUp * run.area);
  }
  const share = at(going, SHARE);
  if (share === 0) return;
  const taken = at(going, TAKEN);
  const rejected = at(going, REJECTED);
  add(sums.taken, month, (dt * taken) / run.area);
  add(sums.rejected, month, dt * rejected);
  add(going[DRIVES] === 1 ? sums.poolTime : sums.outdoorTime, month, dt * share);
  add(sums.electricity, month, dt * at(going, ELECTRICITY));
  add(sums.extraPump, month, dt * run.pump.power * at(going, EXTRA));
  add(sums.unmet, month, dt * at(going, UNMET));
  add(year.taken, hour, part * taken);
  add(year.outdoors, hour, part * (rejected - taken));
  add(year.electricity, hour, part * at(going, ELECTRICITY));
};

/** Room for a year, all 0. */
export const emptyYear = (hours: number, start: State): PoolYear => ({
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
