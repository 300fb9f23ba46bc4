/** What the readings of one sensor show of it: values that stick, jumps, coarse steps, a unit that changed. */
import type { Quantity } from "./hours";
import { momentText, spanText, type LogClock } from "./logClock";

/** A column of readings. */
export interface LoggedSensor {
  readonly head: string;
  readonly quantity: Quantity | "water" | undefined;
  /** In the unit of its head, row by row of the file; NaN where there is none. */
  readonly values: readonly number[];
  /** Its smallest steps, in that unit, count as they were written. */
  readonly decimals: number;
}

/** A reading that doesn't change for so long sticks, where its steps are fine, minutes. */
const STUCK = 6 * 60;
/** Steps that are fine for a temperature, K. */
const FINE_STEP = 0.11;
/** Changes from one reading to the next that no water and no air makes within an hour, K. */
const JUMP = { water: 4, air: 12 } as const;
/** Steps of a sensor above which a night's cooling drowns in them, K. */
const COARSE = 0.25;

interface Reading {
  readonly at: number;
  readonly value: number;
}

const readingsOf = ({ values }: LoggedSensor, { order }: LogClock): readonly Reading[] =>
  order.flatMap(({ row, at }) => {
    const value = values[row] ?? Number.NaN;
    return Number.isNaN(value) ? [] : [{ at, value }];
  });

function smallestStep(readings: readonly Reading[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < readings.length; i++) {
    const step = Math.abs((readings[i]?.value ?? 0) - (readings[i - 1]?.value ?? 0));
    if (step > 1e-6) least = Math.min(least, step);
  }
  return least;
}

function longestRun(readings: readonly Reading[]): { readonly from: number; readonly length: number } {
  let longest = { from: 0, length: 0 };
  let start = readings[0];
  for (const one of readings) {
    if (start === undefined || Math.abs(one.value - start.value) > 1e-9) start = one;
    if (one.at - start.at > longest.length) longest = { from: start.at, length: one.at - start.at };
  }
  return longest;
}

function jumpsOf(readings: readonly Reading[], most: number, interval: number) {
  const jumps: { readonly at: number; readonly by: number }[] = [];
  for (let i = 1; i < readings.length; i++) {
    const [a, b] = [readings[i - 1], readings[i]];
    if (a === undefined || b === undefined || b.at - a.at > Math.max(60, interval)) continue;
    if (Math.abs(b.value - a.value) > most) jumps.push({ at: b.at, by: b.value - a.value });
  }
  return jumps;
}

/** A jump after which the readings are those of before in the other scale: × 1.8 + 32 or back. */
function isOtherScale(readings: readonly Reading[], at: number): boolean {
  const place = readings.findIndex((one) => one.at === at);
  const mean = (some: readonly Reading[]): number => some.reduce((sum, { value }) => sum + value, 0) / some.length;
  const [before, after] = [
    mean(readings.slice(Math.max(0, place - 24), place)),
    mean(readings.slice(place, place + 24)),
  ];
  return Math.abs(before * 1.8 + 32 - after) < 8 || Math.abs(after * 1.8 + 32 - before) < 8;
}

/** One sentence for each thing that is odd. */
export function sensorFaults(sensor: LoggedSensor, clock: LogClock): readonly string[] {
  const { head, quantity } = sensor;
  const readings = readingsOf(sensor, clock);
  if (readings.length === 0) return [`${head}: no reading`];
  const missing = clock.order.length - readings.length;
  const faults = missing > 0 ? [`${head}: ${missing} of ${clock.order.length} readings are missing: left blank`] : [];
  if (quantity !== "water" && quantity !== "air") return faults;
  const step = smallestStep(readings);
  const run = longestRun(readings);
  if (step < FINE_STEP && run.length > STUCK)
    faults.push(
      `${head}: the same reading for ${spanText(run.length)} from ${momentText(run.from)}: a sensor that sticks?`,
    );
  if (Number.isFinite(step) && step > COARSE)
    faults.push(`${head}: steps of ${step.toFixed(2)} K: small changes don't show`);
  const jumps = jumpsOf(readings, JUMP[quantity], clock.interval);
  const [largest] = [...jumps].sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
  if (largest !== undefined) {
    const cause = isOtherScale(readings, largest.at)
      ? "°F and °C mixed in one column"
      : "a sensor that was moved, or a fault";
    faults.push(
      `${head}: ${jumps.length} ${jumps.length === 1 ? "jump" : "jumps"} of more than ${JUMP[quantity]} K between two readings, the largest ${largest.by.toFixed(1)} K at ${momentText(largest.at)}: ${cause}?`,
    );
  }
  return faults;
}
