/** A log of a cooling pool as runs, and its coefficients open and covered. Strict SI. */
import { silent, type Trace } from "../../kernel/define/steps";
import { valueError } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import { mean, sum, sumOf } from "../../numeric/series";
import {
  WATER_CAPACITY,
  combinedUncertainty,
  fitCooling,
  traceCooling,
  type CoolingRun,
  type CoolingStep,
} from "./coolingFit";

export interface CoolingReading {
  /** s from any start, or days of the sheet's calendar given as hours. */
  readonly time: number;
  readonly water: number;
  readonly air?: number | undefined;
  readonly covered: boolean;
  /** W/m² */
  readonly sun: number;
  readonly heat: number;
}

export interface CoolingErrors {
  /** Standard errors: a water reading and the air, K; the depth, share. */
  readonly sensor: number;
  readonly air: number;
  readonly depth: number;
}

const HOUR = 3600;
/** Numbers from this on are dates: days since 1900. */
const FIRST_DATE = 20_000 * HOUR;
/** A step longer than this many usual ones is a gap: a new run begins. */
const GAP = 2.5;

const refuse = (place: number, column: string, rule: string) => valueError(`log, row ${place + 1}, ${column}: ${rule}`);

/** Time since the reading before, s. */
function stepTimes(log: readonly CoolingReading[]): readonly number[] {
  const scale = (log[0]?.time ?? 0) >= FIRST_DATE ? 24 : 1;
  return log.slice(1).map(({ time }, i) => {
    const step = (time - (log[i]?.time ?? 0)) * scale;
    if (!(step > 0)) throw refuse(i + 1, "time", "must be later than the row before");
    return step;
  });
}

interface StateRun extends CoolingRun {
  readonly covered: boolean;
}

/** Rows without a gap and in one state of the cover. */
export function coolingRuns(log: readonly CoolingReading[], area: number, absorbed: number): readonly StateRun[] {
  const times = stepTimes(log);
  const usual = [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
  const runs: { covered: boolean; water: number[]; steps: CoolingStep[] }[] = [];
  log.forEach((row, i) => {
    const time = times[i - 1];
    const before = runs.at(-1);
    if (time === undefined || before === undefined || time > GAP * usual || before.covered !== row.covered) {
      runs.push({ covered: row.covered, water: [row.water], steps: [] });
      return;
    }
    if (row.air === undefined) throw refuse(i, "air", "is blank: it is needed from the second row on");
    before.water.push(row.water);
    before.steps.push({ time, air: row.air, heat: row.heat / area + absorbed * row.sun });
  });
  return runs.filter(({ steps }) => steps.length > 0);
}

/** Times a reading's error that the water must fall to show anything. */
const LEAST_FALL = 4;

/** What the runs of one state of the cover show. */
export function coolingResult(
  runs: readonly CoolingRun[],
  depth: number,
  errors: CoolingErrors,
  trace: Trace = silent,
) {
  const capacity = WATER_CAPACITY * depth;
  const fit = fitCooling(runs, capacity);
  traceCooling(runs, capacity, fit, trace);
  const steps = runs.flatMap((run) => run.steps);
  const time = sumOf(steps, (step) => step.time);
  const falls = runs.map((_, i) => (fit.starts[i] ?? 0) - (fit.ends[i] ?? 0));
  const fall = Math.max(...falls.map(Math.abs));
  const heat = sumOf(steps, (step) => step.heat * step.time) / time;
  const water = runs.flatMap((run) => run.water);
  const U = fit.coefficient;
  const s = Math.max(errors.sensor, fit.scatter ?? 0);
  return {
    coefficient: U,
    uncertainty: trace.step(combinedUncertainty, {
      s,
      g: fit.perReading,
      ua: errors.air,
      ga: fit.perAir,
      U,
      ud: errors.depth,
    }),
    fitError: fit.scatter === undefined ? undefined : fit.scatter * fit.perReading,
    error: fit.scatter === undefined ? undefined : fit.error,
    start: fit.starts[0] ?? 0,
    timeConstant: capacity / U,
    loss: (capacity * sum(falls)) / time + heat,
    time,
    readings: water.length,
    meanWater: mean(water),
    meanAir: sumOf(steps, (step) => step.air * step.time) / time,
    fall,
    found: fall >= LEAST_FALL * errors.sensor && !fit.atBound,
  };
}

export type CoolingResult = ReturnType<typeof coolingResult>;

/** Refuses a log in which neither state of the cover has two readings in a row, or whose air is as warm as the water. */
export function checkCooling(runs: readonly CoolingRun[]): void {
  if (runs.length === 0)
    throw valueError("log: no two rows in a row in one state of the cover: at least two are needed");
  const apart = runs.flatMap(({ water, steps }) => steps.map(({ air }, i) => (water[i] ?? 0) - air));
  const [most, least] = [Math.max(...apart), Math.min(...apart)];
  if (most - Math.min(0, least) < 1)
    throw valueError(
      `log: water and air are within ${quantityMark("temperature difference", Math.max(Math.abs(most), Math.abs(least)))} of each other: nothing to find a loss by`,
    );
}
