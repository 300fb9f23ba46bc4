/** An hour of the machine: where the valve sends its heat, and what it gives there. */
import { MACHINE_RECORD, MACHINE_WIDTH, readCurve, runShare } from "./machine";
import { FIXED, GOING, type Going, type Plan } from "./state";

// Bound here once: read from another module they would be asked for many thousand times a year.
const read = readCurve;
const shareFor = runShare;
const width = MACHINE_WIDTH;
const { cooling: OUTDOOR_COOLING, power: OUTDOOR_POWER } = MACHINE_RECORD;
const { T, ON_POOL, SINCE, TAKEN, REJECTED, UNMET, SHARE, ELECTRICITY, EXTRA, DRIVES } = GOING;
const { RECOVERS, LIMIT, BAND, LEAST_TIME, ON_CALL, OUTDOOR_FAN, CYCLING_LOSS } = FIXED;

/** Turns the valve where it must and may; whether the machine is on the pool. */
const turn = ({ going, fixed }: Plan, schedule: number): boolean => {
  const on = going[ON_POOL] === 1;
  const wants = going[T] < fixed[LIMIT] - (on ? 0 : fixed[BAND]);
  const running = fixed[ON_CALL] === 1 || schedule >= 1;
  const next = wants && running;
  if (next === on || (running && going[SINCE] < fixed[LEAST_TIME])) return on;
  going[ON_POOL] = next ? 1 : 0;
  going[SINCE] = 0;
  return next;
};

const stand = (going: Going): void => {
  going[TAKEN] = 0;
  going[REJECTED] = 0;
  going[UNMET] = 0;
  going[SHARE] = 0;
  going[ELECTRICITY] = 0;
  going[EXTRA] = 0;
  going[DRIVES] = 0;
};

/** Decides the valve, and what the machine gives to pool or air at the water's temperature. */
export const drive = (plan: Plan, hour: number, clock: number): void => {
  const { going, fixed, machine } = plan;
  const load = machine[hour * width] ?? 0;
  if (load <= 0) {
    if (going[REJECTED] !== 0) stand(going);
    return;
  }
  const schedule = plan.schedule[clock] ?? 0;
  const side = fixed[RECOVERS] === 1 && turn(plan, schedule);
  const cooling = side ? read(plan.onPool, 0, going[T]) : (machine[hour * width + OUTDOOR_COOLING] ?? 0);
  const power = side ? read(plan.onPool, 1, going[T]) : (machine[hour * width + OUTDOOR_POWER] ?? 0);
  const share = shareFor(load, cooling, fixed[CYCLING_LOSS]);
  const met = load < cooling ? load : cooling;
  const rejected = met + share * (power - (side ? 0 : fixed[OUTDOOR_FAN]));
  going[DRIVES] = side ? 1 : 0;
  going[SHARE] = share;
  going[UNMET] = load - met;
  going[ELECTRICITY] = share * power;
  going[REJECTED] = rejected;
  going[TAKEN] = side ? rejected : 0;
  going[EXTRA] = side ? share * (1 - schedule) : 0;
};
