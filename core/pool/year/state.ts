/**
 * A pool's run as arrays of numbers. The loop over the hours reads and writes nothing else: arrays keep one shape from call
 * to call, so that the loop is compiled once and stays compiled, and nothing is allocated in it.
 */
import type { Machine } from "./machine";
import { allSums, emptyTally, terms, type NumbersAt, type Sums, type Tally } from "./lossesAt";
import type { YearSurface } from "./surface";
import type { Tank } from "./tank";

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
  /** Takes heat that the pool doesn't, or before it. */
  readonly tank?: Tank | undefined;
  /** Back-up heat that keeps the pool from falling below `set` (K), at most `most` (W/m²), by month. */
  readonly backUp: { readonly set: number; readonly most: number; readonly months: readonly boolean[] } | undefined;
  /** Heat from elsewhere, W/m² by hour. */
  readonly extra?: Float64Array;
  /** At 273.15 K ice forms; lower, the water is let go on cooling, for comparison with reckonings that know no ice. */
  readonly freezing: number;
  /** Steps in an hour, 1 if not told. */
  readonly steps?: number;
}

/** What a pool carries from hour to hour. */
export interface State {
  readonly temperature: number;
  /** Heat to melt what has frozen, J/m². */
  readonly ice: number;
  readonly onPool: boolean;
  /** Since the valve turned, s. */
  readonly since: number;
  /** Water of the preheat tank, K. */
  readonly tank: number;
}

/** What is kept by hour. */
export const HOURLY = ["temperature", "taken", "outdoors", "backUp", "electricity", "toTank", "tank"] as const;
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

/**
 * Places in the record that goes on from step to step. The state: temperature, K; ice, J/m²; whether the valve is on the pool;
 * since it turned, s; tank, K. Then one step's answers.
 */
export const GOING = {
  T: 0,
  ICE: 1,
  ON_POOL: 2,
  SINCE: 3,
  TANK: 4,
  /** W/(m²·K) and W/m² at the start of the step. */
  SLOPE: 5,
  HEAT: 6,
  /** W: taken by the pool, rejected in all, by the tank; cooling load not met. */
  TAKEN: 7,
  REJECTED: 8,
  TO_TANK: 9,
  UNMET: 10,
  /** Share of the step in which the machine runs on pool or air, and on the tank; W; share beyond the pump's hours. */
  SHARE: 11,
  TANK_SHARE: 12,
  ELECTRICITY: 13,
  EXTRA: 14,
  /** Whether pool or air has the machine. */
  DRIVES: 15,
  /** s; back-up heat, W/m²; mean of the step above its start, K; integral of temperature over the hour, K·s. */
  DT: 16,
  BACK_UP: 17,
  ABOVE: 18,
  WARMTH: 19,
  /** Of the tank: heat drawn and lost, W, and mean of the step, K; then as `yearTank` has them. */
  DRAWN: 20,
  TANK_LOST: 21,
  TANK_MEAN: 22,
  TANK_IDLE: 23,
  TANK_GAIN: 24,
  TANK_MEAN_GAIN: 25,
} as const;
export type Going = NumbersAt<typeof GOING>;

/** Places in the record of what holds through a run. */
export const FIXED = {
  AREA: 0,
  CAPACITY: 1,
  FREEZING: 2,
  STEPS: 3,
  PUMP_POWER: 4,
  PUMP_HEAT: 5,
  /** 1 or 0 */
  MACHINE: 6,
  OUTDOOR_FAN: 7,
  CYCLING_LOSS: 8,
  RECOVERS: 9,
  LIMIT: 10,
  BAND: 11,
  LEAST_TIME: 12,
  ON_CALL: 13,
  /** K; W/m² */
  BACK_UP_SET: 14,
  BACK_UP_MOST: 15,
  /** 0 none, 1 after the pool, 2 before it */
  TANK: 16,
  /** J/K; W/K; K */
  TANK_CAPACITY: 17,
  TANK_LOSS: 18,
  TANK_AROUND: 19,
  TANK_LIMIT: 20,
  TANK_PUMP: 21,
  /** Whether heat comes from elsewhere. */
  EXTRA: 22,
} as const;
export type Fixed = NumbersAt<typeof FIXED>;

export interface Plan extends Readonly<Record<Hourly, Float64Array>> {
  readonly going: Going;
  readonly losses: Float64Array;
  readonly fixed: Readonly<Fixed>;
  readonly surface: Float64Array;
  readonly steady: Float64Array;
  readonly machine: Float64Array;
  readonly onPool: Float64Array;
  readonly onTank: Float64Array;
  readonly schedule: Float64Array;
  /** W/K of the tank's draw, by the hour of the day. */
  readonly draw: Float64Array;
  /** 1 in the months of back-up heat. */
  readonly months: Float64Array;
  readonly extra: Float64Array;
  /** Of the month that runs, and what it is added to. */
  readonly tally: Tally;
  readonly sums: Float64Array;
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
}

const NONE = new Float64Array(8);
const TANK_ORDER = { "pool first": 1, "tank first": 2 } as const;

const numbersFor = (places: Readonly<Record<string, number>>): Float64Array =>
  new Float64Array(Object.keys(places).length);

const goingFrom = ({ temperature, ice, onPool, since, tank }: State): Going => {
  const going = numbersFor(GOING);
  going.set([temperature, ice, onPool ? 1 : 0, since, tank]);
  return going as unknown as Going;
};

const fixedOf = (run: PoolRun): Fixed => {
  const { machine, recovery, backUp, tank, pump } = run;
  const fixed = numbersFor(FIXED) as unknown as Fixed;
  fixed[FIXED.AREA] = run.area;
  fixed[FIXED.CAPACITY] = run.capacity;
  fixed[FIXED.FREEZING] = run.freezing;
  fixed[FIXED.STEPS] = run.steps ?? 0;
  fixed[FIXED.PUMP_POWER] = pump.power;
  fixed[FIXED.PUMP_HEAT] = pump.heat;
  fixed[FIXED.EXTRA] = run.extra ? 1 : 0;
  fixed[FIXED.MACHINE] = machine ? 1 : 0;
  fixed[FIXED.OUTDOOR_FAN] = machine?.outdoorFan ?? 0;
  fixed[FIXED.CYCLING_LOSS] = machine?.cyclingLoss ?? 0;
  fixed[FIXED.RECOVERS] = recovery && machine?.onPool ? 1 : 0;
  fixed[FIXED.LIMIT] = recovery?.limit ?? 0;
  fixed[FIXED.BAND] = recovery?.band ?? 0;
  fixed[FIXED.LEAST_TIME] = recovery?.leastTime ?? 0;
  fixed[FIXED.ON_CALL] = recovery?.onCall ? 1 : 0;
  fixed[FIXED.BACK_UP_SET] = backUp?.set ?? 0;
  fixed[FIXED.BACK_UP_MOST] = backUp?.most ?? 0;
  if (tank && machine?.onTank) {
    fixed[FIXED.TANK] = TANK_ORDER[tank.order];
    fixed[FIXED.TANK_CAPACITY] = tank.capacity;
    fixed[FIXED.TANK_LOSS] = tank.loss;
    fixed[FIXED.TANK_AROUND] = tank.around;
    fixed[FIXED.TANK_LIMIT] = tank.limit;
    fixed[FIXED.TANK_PUMP] = tank.pump;
  }
  return fixed;
};

/** The run as numbers, at a state, its sums going into a year's. */
export const planOf = (run: PoolRun, start: State, into: PoolYear): Plan => {
  const { surface, machine } = run;
  return {
    going: goingFrom(start),
    losses: terms(),
    fixed: fixedOf(run),
    surface: surface.hours,
    steady: surface.steady,
    machine: machine?.hours ?? NONE,
    onPool: machine?.onPool?.table ?? NONE,
    onTank: machine?.onTank?.table ?? NONE,
    schedule: run.pump.schedule,
    draw: run.tank?.draw ?? NONE,
    months: Float64Array.from({ length: 12 }, (_, month) => (run.backUp?.months[month] ? 1 : 0)),
    extra: run.extra ?? NONE,
    temperature: into.temperature,
    taken: into.taken,
    outdoors: into.outdoors,
    backUp: into.backUp,
    electricity: into.electricity,
    toTank: into.toTank,
    tank: into.tank,
    tally: emptyTally(),
    sums: allSums(into.sums),
    lowest: into.lowest,
    highest: into.highest,
  };
};
