/**
 * One pool through the hours of a year. Within a step the losses are a straight line over the temperature, so the step is
 * solved exactly (exponential integration): never unstable, and the heat balance closes to rounding. Sub-steps only where
 * the bend of the losses or a valve that is about to turn would be missed.
 */
import { drive } from "./yearDrive";
import { meanPart } from "./yearExponential";
import { MACHINE_WIDTH } from "./yearMachine";
import { FIXED, GOING, planOf, type Plan, type PoolRun, type PoolYear, type State } from "./yearPlan";
import { HOUR_RECORD, RECORD_WIDTH } from "./yearSurface";
import { tankStep } from "./yearTank";
import { LOSSES, MONTH_OF, PLACE_OF, emptySums, sumOf, termsAt } from "./yearTerms";

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
const partOf = meanPart;
const driven = drive;
const stepTank = tankStep;
const width = RECORD_WIDTH;
const machineWidth = MACHINE_WIDTH;
const SUN = HOUR_RECORD.sun;
const { T, ICE, SINCE, SLOPE, HEAT, TAKEN, REJECTED, TO_TANK, UNMET, SHARE, TANK_SHARE, ELECTRICITY, EXTRA } = GOING;
const { DRIVES, DT, BACK_UP, ABOVE, WARMTH, DRAWN, TANK_LOST, TANK_MEAN } = GOING;
const { AREA, CAPACITY, FREEZING, STEPS, PUMP_POWER, PUMP_HEAT, MACHINE, RECOVERS, LIMIT, BAND } = FIXED;
const { BACK_UP_SET, BACK_UP_MOST, TANK, TANK_PUMP, EXTRA: GIVEN } = FIXED;
const SUM = PLACE_OF;

const at = (of: Float64Array, place: number): number => of[place] ?? 0;

const add = (to: Float64Array, place: number, value: number): void => {
  to[place] = (to[place] ?? 0) + value;
};

/** Losses, slope and net heat, W/m², at the start of a step. */
const look = (plan: Plan, hour: number, clock: number): void => {
  const { going, fixed, losses } = plan;
  if (fixed[MACHINE] === 1) driven(plan, hour, clock);
  writeTerms(plan.surface, plan.steady, hour, at(going, T), losses);
  const pump = at(fixed, PUMP_HEAT) * (at(plan.schedule, clock) + at(going, EXTRA));
  const extra = fixed[GIVEN] === 1 ? at(plan.extra, hour) : 0;
  going[SLOPE] = summed(losses, COUNT);
  going[HEAT] =
    at(plan.surface, hour * width + SUN) + extra + (at(going, TAKEN) + pump) / at(fixed, AREA) - summed(losses, 0);
};

/** How many steps an hour needs: one, unless the losses bend within it or the valve would turn in it. */
const stepsFor = ({ going, fixed }: Plan): number => {
  if (at(fixed, STEPS) > 0) return at(fixed, STEPS);
  const rise = (at(going, HEAT) * HOUR) / at(fixed, CAPACITY);
  const error = (at(going, SLOPE) * BEND * rise * rise * HOUR) / (6 * at(fixed, CAPACITY));
  const bend = error > TOLERANCE ? Math.ceil(Math.sqrt(error / TOLERANCE)) : 1;
  const band = at(fixed, BAND);
  const over = fixed[RECOVERS] === 1 && going[DRIVES] === 1 ? at(going, T) + rise - at(fixed, LIMIT) : 0;
  const turns = over > band / 4 ? Math.ceil((4 * over) / band) : 1;
  return Math.min(MOST_STEPS, Math.max(bend, turns));
};

/** The tank's part of a step; what it takes before the pool is taken from the pool's heat. */
const divide = (plan: Plan, hour: number): void => {
  const { going, fixed } = plan;
  const first = fixed[TANK] === 2;
  const side = going[DRIVES] === 1 && at(going, SHARE) > 0;
  const load = first || !side ? at(plan.machine, hour * machineWidth) : 0;
  const before = at(going, TAKEN) + at(fixed, PUMP_HEAT) * at(going, EXTRA);
  stepTank(plan, hour, load);
  const after = at(going, TAKEN) + at(fixed, PUMP_HEAT) * at(going, EXTRA);
  if (after !== before) going[HEAT] = at(going, HEAT) + (after - before) / at(fixed, AREA);
};

/** Ends a step at the temperature that its heat leads to, with ice formed before water is colder than 0 °C. */
const settle = ({ going, fixed }: Plan, reached: number): void => {
  const freezing = at(fixed, FREEZING);
  if (at(going, ICE) <= 0 && reached >= freezing) {
    going[T] = reached;
    return;
  }
  const ice = at(going, ICE) - (reached - freezing) * at(fixed, CAPACITY);
  going[T] = ice < 0 ? freezing - ice / at(fixed, CAPACITY) : freezing;
  going[ICE] = ice < 0 ? 0 : ice;
};

const backUpFor = ({ fixed, months }: Plan, month: number, reached: number, gain: number): number => {
  const set = at(fixed, BACK_UP_SET);
  if (months[month] !== 1 || reached >= set) return 0;
  return Math.min(at(fixed, BACK_UP_MOST), (set - reached) / gain);
};

/** Losses of a step at its mean temperature, J/m². */
const addLosses = ({ going, losses, sums }: Plan, month: number): void => {
  const dt = at(going, DT);
  const above = at(going, ABOVE);
  add(sums, SUM.evaporation + month, dt * (at(losses, 0) + at(losses, COUNT) * above));
  add(sums, SUM.convection + month, dt * (at(losses, 1) + at(losses, COUNT + 1) * above));
  add(sums, SUM.radiation + month, dt * (at(losses, 2) + at(losses, COUNT + 2) * above));
  add(sums, SUM.ground + month, dt * (at(losses, 3) + at(losses, COUNT + 3) * above));
  add(sums, SUM.makeUp + month, dt * (at(losses, 4) + at(losses, COUNT + 4) * above));
};

/** One step from what `look` found. Numbers go by the plan: as arguments and answers each would be a box on the heap. */
const step = (plan: Plan, hour: number, clock: number): void => {
  const { going, fixed, sums, lowest, highest } = plan;
  if (at(fixed, TANK) > 0) divide(plan, hour);
  const month = monthOf[hour] ?? 0;
  const dt = at(going, DT);
  const capacity = at(fixed, CAPACITY);
  const start = at(going, T);
  const z = (at(going, SLOPE) * dt) / capacity;
  const mean = partOf(z);
  const frozen = at(going, ICE) > 0;
  const gain = (dt / capacity) * (frozen ? 1 : 1 - z * mean);
  const alone = start + at(going, HEAT) * gain - at(going, ICE) / capacity;
  const backUp = backUpFor(plan, month, alone, gain);
  const heat = at(going, HEAT) + backUp;
  const above = frozen ? 0 : (heat * dt * mean) / capacity;
  going[BACK_UP] = backUp;
  going[ABOVE] = above;
  addLosses(plan, month);
  note(plan, hour, clock, month);
  settle(plan, start + heat * gain);
  going[SINCE] = at(going, SINCE) + dt;
  const end = at(going, T);
  if (at(going, ICE) > 0) add(sums, SUM.frozen + month, dt);
  if (end < at(lowest, month)) lowest[month] = end;
  if (end > at(highest, month)) highest[month] = end;
  const warm = start + above;
  going[WARMTH] = at(going, WARMTH) + dt * Math.max(warm, at(fixed, FREEZING));
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
  const { going, sums } = plan;
  let subSteps = 0;
  for (let hour = from; hour < to; hour++) {
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
    const month = monthOf[hour] ?? 0;
    const warmth = at(going, WARMTH);
    plan.temperature[hour] = warmth / HOUR;
    add(sums, SUM.warmth + month, warmth);
    add(sums, SUM.sun + month, HOUR * at(plan.surface, hour * width + SUN));
  }
  const [temperature = 0, ice = 0, onPool, since = 0, tank = 0] = going;
  return yearFrom(into, start, { temperature, ice, onPool: onPool === 1, since, tank }, subSteps);
};

/** Sums what the machine, the pump, the tank and the back-up heater did in a step. */
const note = (plan: Plan, hour: number, clock: number, month: number): void => {
  const { going, fixed, sums } = plan;
  const dt = at(going, DT);
  const part = dt / HOUR;
  const backUp = at(going, BACK_UP);
  const pump = at(fixed, PUMP_HEAT) * (at(plan.schedule, clock) + at(going, EXTRA));
  if (pump > 0) add(sums, SUM.pumpHeat + month, (dt * pump) / at(fixed, AREA));
  if (backUp > 0) {
    add(sums, SUM.backUp + month, dt * backUp);
    add(plan.backUp, hour, part * backUp * at(fixed, AREA));
  }
  if (at(fixed, TANK) > 0) noteTank(plan, hour, month);
  if (at(going, REJECTED) === 0) return;
  const taken = at(going, TAKEN);
  const rejected = at(going, REJECTED);
  const electricity = at(going, ELECTRICITY);
  add(sums, SUM.taken + month, (dt * taken) / at(fixed, AREA));
  add(sums, SUM.rejected + month, dt * rejected);
  add(sums, (going[DRIVES] === 1 ? SUM.poolTime : SUM.outdoorTime) + month, dt * at(going, SHARE));
  add(sums, SUM.electricity + month, dt * electricity);
  add(sums, SUM.extraPump + month, dt * at(fixed, PUMP_POWER) * at(going, EXTRA));
  add(sums, SUM.unmet + month, dt * at(going, UNMET));
  add(plan.taken, hour, part * taken);
  add(plan.outdoors, hour, part * (rejected - taken - at(going, TO_TANK)));
  add(plan.electricity, hour, part * electricity);
};

const noteTank = (plan: Plan, hour: number, month: number): void => {
  const { going, fixed, sums } = plan;
  const dt = at(going, DT);
  const part = dt / HOUR;
  const share = at(going, TANK_SHARE);
  add(sums, SUM.toTank + month, dt * at(going, TO_TANK));
  add(sums, SUM.tankTime + month, dt * share);
  add(sums, SUM.extraPump + month, dt * share * at(fixed, TANK_PUMP));
  add(sums, SUM.drawnHeat + month, dt * at(going, DRAWN));
  add(sums, SUM.tankLoss + month, dt * at(going, TANK_LOST));
  add(sums, SUM.tankWarmth + month, dt * at(going, TANK_MEAN));
  add(plan.toTank, hour, part * at(going, TO_TANK));
  add(plan.tank, hour, part * at(going, TANK_MEAN));
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
