/**
 * A preheat tank that takes the machine's heat beside the pool. Its water is mixed; within a step draw, loss and heat hold, so
 * the step is solved exactly and its heats close. The valve to the tank is reckoned as a share of the step: a tank of some
 * hundred gallons fills and empties within the hour.
 */
import { meanPart } from "./exponential";
import { readCurve, runShare } from "./machine";
import { FIXED, GOING, type Plan } from "./state";
import { HOUR_RECORD, RECORD_WIDTH } from "./surface";

export type TankOrder = "pool first" | "tank first";

export interface Tank {
  readonly order: TankOrder;
  /** J/K */
  readonly capacity: number;
  /** W/K to what stands around it, K. */
  readonly loss: number;
  readonly around: number;
  /** It gets no heat above this, K. */
  readonly limit: number;
  /** W/K of the water drawn, by the hour of the day. */
  readonly draw: Float64Array;
  /** Its circulating pump, W, while it takes heat. */
  readonly pump: number;
}

// Bound here once: read from another module they would be asked for many thousand times a year.
const partOf = meanPart;
const read = readCurve;
const shareFor = runShare;
const width = RECORD_WIDTH;
const MAINS = HOUR_RECORD.mains;
const { TANK, TO_TANK, TANK_SHARE, DT, DRAWN, TANK_LOST: LOST, TANK_MEAN } = GOING;
const { TANK_IDLE: IDLE, TANK_GAIN: GAIN, TANK_MEAN_GAIN: MEAN_GAIN } = GOING;
const { SHARE, ELECTRICITY, UNMET, TAKEN, REJECTED, EXTRA } = GOING;
const { TANK_CAPACITY, TANK_LOSS, TANK_AROUND, TANK_LIMIT, CYCLING_LOSS } = FIXED;

/** Net heat at the start without the machine, W, and what each watt through the step makes of its end and its mean, K. */
const readyTank = ({ going, fixed, surface, draw }: Plan, hour: number): void => {
  const drawn = draw[hour % 24] ?? 0;
  const loss = fixed[TANK_LOSS];
  const T = going[TANK];
  const perWatt = going[DT] / fixed[TANK_CAPACITY];
  const z = (drawn + loss) * perWatt;
  const mean = partOf(z);
  going[IDLE] = drawn * ((surface[hour * width + MAINS] ?? 0) - T) + loss * (fixed[TANK_AROUND] - T);
  going[GAIN] = perWatt * (1 - z * mean);
  going[MEAN_GAIN] = perWatt * mean;
};

/** What the machine would give the tank if it ran on it all the step, W, its water at T (K). */
const heatAt = ({ onTank, fixed }: Plan, load: number, T: number): number => {
  const cooling = read(onTank, 0, T);
  return Math.min(load, cooling) + shareFor(load, cooling, fixed[CYCLING_LOSS]) * read(onTank, 1, T);
};

/** Part of the step in which the tank has the machine: all of it, or what brings the tank to its limit. */
const shareOf = (plan: Plan, load: number): number => {
  const { going, fixed } = plan;
  const T = going[TANK];
  const most = Math.max(0, (fixed[TANK_LIMIT] - T) / going[GAIN] - going[IDLE]);
  if (most === 0) return 0;
  const first = Math.min(most, heatAt(plan, load, T));
  going[TANK_MEAN] = T + (going[IDLE] + first) * going[MEAN_GAIN];
  const offered = heatAt(plan, load, going[TANK_MEAN]);
  return Math.min(1, most / offered);
};

/** Gives the tank its part of the step's heat and takes that part from pool or air. */
const give = (plan: Plan, load: number, part: number): void => {
  const { going, fixed, onTank } = plan;
  const T = going[TANK_MEAN];
  const cooling = read(onTank, 0, T);
  const share = shareFor(load, cooling, fixed[CYCLING_LOSS]);
  const met = Math.min(load, cooling);
  const power = read(onTank, 1, T);
  const rest = 1 - part;
  going[SHARE] = rest * going[SHARE];
  going[TAKEN] = rest * going[TAKEN];
  going[EXTRA] = rest * going[EXTRA];
  going[TO_TANK] = part * (met + share * power);
  going[TANK_SHARE] = part * share;
  going[REJECTED] = rest * going[REJECTED] + going[TO_TANK];
  going[ELECTRICITY] = rest * going[ELECTRICITY] + part * share * power;
  going[UNMET] = rest * going[UNMET] + part * (load - met);
};

/** One step of the tank: with the machine where `load` (W) is above 0. */
export const tankStep = (plan: Plan, hour: number, load: number): void => {
  const { going, fixed, surface, draw } = plan;
  readyTank(plan, hour);
  going[TO_TANK] = 0;
  going[TANK_SHARE] = 0;
  const part = load > 0 ? shareOf(plan, load) : 0;
  if (part > 0) give(plan, load, part);
  const heat = going[IDLE] + going[TO_TANK];
  const start = going[TANK];
  const mean = start + heat * going[MEAN_GAIN];
  going[TANK_MEAN] = mean;
  going[DRAWN] = (draw[hour % 24] ?? 0) * (mean - (surface[hour * width + MAINS] ?? 0));
  going[LOST] = fixed[TANK_LOSS] * (mean - fixed[TANK_AROUND]);
  going[TANK] = start + heat * going[GAIN];
};
