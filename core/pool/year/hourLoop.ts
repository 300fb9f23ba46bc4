/**
 * One pool through the hours of a year. Within a step the losses are a straight line over the temperature, so the step is
 * solved exactly (exponential integration): never unstable, and the heat balance closes to rounding. Sub-steps only where
 * the bend of the losses or a valve that is about to turn would be missed.
 */
import { drive } from "./airConditioner";
import { meanPart } from "./exponential";
import { MACHINE_WIDTH } from "./machine";
import { FIXED, GOING, planOf, type Plan, type PoolRun, type PoolYear, type State } from "./state";
import { HOUR_RECORD, RECORD_WIDTH } from "./surface";
import { tankStep } from "./tank";
import { ALL_LOSSES, ALL_SLOPES, FIGURE, LOSSES, MONTH_OF, emptySums, flush, termsAt } from "./lossesAt";

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
const partOf = meanPart;
const driven = drive;
const stepTank = tankStep;
const width = RECORD_WIDTH;
const machineWidth = MACHINE_WIDTH;
const SUN = HOUR_RECORD.sun;
const {
  T,
  ICE,
  ON_POOL,
  SINCE,
  TANK: IN_TANK,
  SLOPE,
  HEAT,
  TAKEN,
  REJECTED,
  TO_TANK,
  UNMET,
  SHARE,
  TANK_SHARE,
  ELECTRICITY,
  EXTRA,
} = GOING;
const { DRIVES, DT, BACK_UP, ABOVE, WARMTH, DRAWN, TANK_LOST, TANK_MEAN } = GOING;
const { AREA, CAPACITY, FREEZING, STEPS, PUMP_POWER, PUMP_HEAT, MACHINE, RECOVERS, LIMIT, BAND } = FIXED;
const { BACK_UP_SET, BACK_UP_MOST, TANK, TANK_PUMP, EXTRA: GIVEN } = FIXED;
const LOST = ALL_LOSSES;
const SLOPES = ALL_SLOPES;
const { evaporation: EVAPORATION, convection: CONVECTION, radiation: RADIATION, ground: GROUND } = FIGURE;
const { makeUp: MAKE_UP, sun: SUNNY, pumpHeat: PUMPED, backUp: BACKED_UP, warmth: WARM, frozen: FROZEN } = FIGURE;
const { taken: GIVEN_POOL, rejected: GIVEN_OFF, toTank: GIVEN_TANK, electricity: USED, unmet: NOT_MET } = FIGURE;
const { poolTime: POOL_TIME, outdoorTime: OUTDOOR_TIME, tankTime: TANK_TIME, extraPump: PUMP_BEYOND } = FIGURE;
const { drawnHeat: DRAWN_HEAT, tankLoss: TANK_LOSS, tankWarmth: TANK_WARM } = FIGURE;

/** Losses, slope and net heat, W/m², at the start of a step. */
const look = (plan: Plan, hour: number, clock: number): void => {
  const { going, fixed, losses } = plan;
  if (fixed[MACHINE] === 1) driven(plan, hour, clock);
  writeTerms(plan.surface, plan.steady, hour, going[T], losses);
  const pump = fixed[PUMP_HEAT] * ((plan.schedule[clock] ?? 0) + going[EXTRA]);
  const extra = fixed[GIVEN] === 1 ? (plan.extra[hour] ?? 0) : 0;
  going[SLOPE] = losses[SLOPES] ?? 0;
  going[HEAT] =
    (plan.surface[hour * width + SUN] ?? 0) + extra + (going[TAKEN] + pump) / fixed[AREA] - (losses[LOST] ?? 0);
};

/** How many steps an hour needs: one, unless the losses bend within it or the valve would turn in it. */
const stepsFor = ({ going, fixed }: Plan): number => {
  if (fixed[STEPS] > 0) return fixed[STEPS];
  const rise = (going[HEAT] * HOUR) / fixed[CAPACITY];
  const error = (going[SLOPE] * BEND * rise * rise * HOUR) / (6 * fixed[CAPACITY]);
  const bend = error > TOLERANCE ? Math.ceil(Math.sqrt(error / TOLERANCE)) : 1;
  const band = fixed[BAND];
  const over = fixed[RECOVERS] === 1 && going[DRIVES] === 1 ? going[T] + rise - fixed[LIMIT] : 0;
  const turns = over > band / 4 ? Math.ceil((4 * over) / band) : 1;
  return Math.min(MOST_STEPS, Math.max(bend, turns));
};

/** The tank's part of a step; what it takes before the pool is taken from the pool's heat. */
const divide = (plan: Plan, hour: number): void => {
  const { going, fixed } = plan;
  const first = fixed[TANK] === 2;
  const side = going[DRIVES] === 1 && going[SHARE] > 0;
  const load = first || !side ? (plan.machine[hour * machineWidth] ?? 0) : 0;
  const before = going[TAKEN] + fixed[PUMP_HEAT] * going[EXTRA];
  stepTank(plan, hour, load);
  const after = going[TAKEN] + fixed[PUMP_HEAT] * going[EXTRA];
  if (after !== before) going[HEAT] = going[HEAT] + (after - before) / fixed[AREA];
};

/** Ends a step at the temperature that its heat leads to, with ice formed before water is colder than 0 °C. */
const settle = ({ going, fixed }: Plan, reached: number): void => {
  const freezing = fixed[FREEZING];
  if (going[ICE] <= 0 && reached >= freezing) {
    going[T] = reached;
    return;
  }
  const ice = going[ICE] - (reached - freezing) * fixed[CAPACITY];
  going[T] = ice < 0 ? freezing - ice / fixed[CAPACITY] : freezing;
  going[ICE] = ice < 0 ? 0 : ice;
};

const backUpFor = ({ fixed, months }: Plan, month: number, reached: number, gain: number): number => {
  const set = fixed[BACK_UP_SET];
  if (months[month] !== 1 || reached >= set) return 0;
  return Math.min(fixed[BACK_UP_MOST], (set - reached) / gain);
};

/** Losses of a step at its mean temperature, J/m². */
const addLosses = ({ going, losses, tally }: Plan): void => {
  const dt = going[DT];
  const above = going[ABOVE];
  tally[EVAPORATION] += dt * ((losses[0] ?? 0) + (losses[COUNT] ?? 0) * above);
  tally[CONVECTION] += dt * ((losses[1] ?? 0) + (losses[COUNT + 1] ?? 0) * above);
  tally[RADIATION] += dt * ((losses[2] ?? 0) + (losses[COUNT + 2] ?? 0) * above);
  tally[GROUND] += dt * ((losses[3] ?? 0) + (losses[COUNT + 3] ?? 0) * above);
  tally[MAKE_UP] += dt * ((losses[4] ?? 0) + (losses[COUNT + 4] ?? 0) * above);
};

/** One step from what `look` found. Numbers go by the plan: as arguments and answers each would be a box on the heap. */
const step = (plan: Plan, hour: number, clock: number): void => {
  const { going, fixed, tally, lowest, highest } = plan;
  if (fixed[TANK] > 0) divide(plan, hour);
  const month = monthOf[hour] ?? 0;
  const dt = going[DT];
  const capacity = fixed[CAPACITY];
  const start = going[T];
  const z = (going[SLOPE] * dt) / capacity;
  const mean = partOf(z);
  const frozen = going[ICE] > 0;
  const gain = (dt / capacity) * (frozen ? 1 : 1 - z * mean);
  const alone = start + going[HEAT] * gain - going[ICE] / capacity;
  const backUp = backUpFor(plan, month, alone, gain);
  const heat = going[HEAT] + backUp;
  const above = frozen ? 0 : (heat * dt * mean) / capacity;
  going[BACK_UP] = backUp;
  going[ABOVE] = above;
  addLosses(plan);
  note(plan, hour, clock);
  settle(plan, start + heat * gain);
  going[SINCE] = going[SINCE] + dt;
  const end = going[T];
  if (going[ICE] > 0) tally[FROZEN] += dt;
  if (end < (lowest[month] ?? 0)) lowest[month] = end;
  if (end > (highest[month] ?? 0)) highest[month] = end;
  const warm = start + above;
  going[WARMTH] = going[WARMTH] + dt * Math.max(warm, fixed[FREEZING]);
};

/** Runs from a state through the hours `from` to `to`, one after the other, adding to `into`. */
export const runPool = (
  run: PoolRun,
  start: State,
  from: number,
  to: number,
  into: PoolYear = emptyYear(to, start),
): PoolYear => {
  const plan = planOf(run, start, into);
  const { going, tally } = plan;
  let subSteps = 0;
  let month = monthOf[from] ?? 0;
  for (let hour = from; hour < to; hour++) {
    if (month !== monthOf[hour]) {
      flush(tally, month, plan.sums);
      month = monthOf[hour] ?? 0;
    }
    const clock = hour % 24;
    look(plan, hour, clock);
    const steps = stepsFor(plan);
    going[DT] = HOUR / steps;
    going[WARMTH] = 0;
    step(plan, hour, clock);
    for (let more = 1; more < steps; more++) {
      look(plan, hour, clock);
      step(plan, hour, clock);
    }
    subSteps += steps - 1;
    plan.temperature[hour] = going[WARMTH] / HOUR;
    tally[WARM] += going[WARMTH];
    tally[SUNNY] += HOUR * (plan.surface[hour * width + SUN] ?? 0);
  }
  flush(tally, month, plan.sums);
  const end: State = {
    temperature: going[T],
    ice: going[ICE],
    onPool: going[ON_POOL] === 1,
    since: going[SINCE],
    tank: going[IN_TANK],
  };
  return yearFrom(into, start, end, subSteps);
};

/** Sums what the machine, the pump, the tank and the back-up heater did in a step. */
const note = (plan: Plan, hour: number, clock: number): void => {
  const { going, fixed, tally, taken, outdoors, electricity } = plan;
  const dt = going[DT];
  const part = dt / HOUR;
  const pump = fixed[PUMP_HEAT] * ((plan.schedule[clock] ?? 0) + going[EXTRA]);
  if (pump > 0) tally[PUMPED] += (dt * pump) / fixed[AREA];
  if (going[BACK_UP] > 0) {
    tally[BACKED_UP] += dt * going[BACK_UP];
    plan.backUp[hour] = (plan.backUp[hour] ?? 0) + part * going[BACK_UP] * fixed[AREA];
  }
  if (fixed[TANK] > 0) noteTank(plan, hour);
  if (going[REJECTED] === 0) return;
  tally[GIVEN_POOL] += (dt * going[TAKEN]) / fixed[AREA];
  tally[GIVEN_OFF] += dt * going[REJECTED];
  tally[going[DRIVES] === 1 ? POOL_TIME : OUTDOOR_TIME] += dt * going[SHARE];
  tally[USED] += dt * going[ELECTRICITY];
  tally[PUMP_BEYOND] += dt * fixed[PUMP_POWER] * going[EXTRA];
  tally[NOT_MET] += dt * going[UNMET];
  taken[hour] = (taken[hour] ?? 0) + part * going[TAKEN];
  outdoors[hour] = (outdoors[hour] ?? 0) + part * (going[REJECTED] - going[TAKEN] - going[TO_TANK]);
  electricity[hour] = (electricity[hour] ?? 0) + part * going[ELECTRICITY];
};

const noteTank = ({ going, fixed, tally, toTank, tank }: Plan, hour: number): void => {
  const dt = going[DT];
  const part = dt / HOUR;
  tally[GIVEN_TANK] += dt * going[TO_TANK];
  tally[TANK_TIME] += dt * going[TANK_SHARE];
  tally[PUMP_BEYOND] += dt * going[TANK_SHARE] * fixed[TANK_PUMP];
  tally[DRAWN_HEAT] += dt * going[DRAWN];
  tally[TANK_LOSS] += dt * going[TANK_LOST];
  tally[TANK_WARM] += dt * going[TANK_MEAN];
  toTank[hour] = (toTank[hour] ?? 0) + part * going[TO_TANK];
  tank[hour] = (tank[hour] ?? 0) + part * going[TANK_MEAN];
};

/** The same arrays with other ends. Each field by name: objects of one shape keep the compiled loop valid. */
const yearFrom = (of: Omit<PoolYear, "start" | "end" | "subSteps">, start: State, end: State, subSteps: number) => ({
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

/** Room for a year, all 0. */
export const emptyYear = (hours: number, start: State): PoolYear => {
  const array = (): Float64Array => new Float64Array(hours);
  const room = {
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
  return yearFrom(room, start, start, 0);
};
