import { HOUR, HOURS_OF_DAY } from "../../numeric/calendar";

/** Part of each clock hour between a start and an end some hours later, through midnight. */
export const scheduleOf = (start: number, hours: number): Float64Array =>
  Float64Array.from({ length: HOURS_OF_DAY }, (_, hour) => {
    const overlap = (from: number): number => Math.max(0, Math.min(hour + 1, from + hours) - Math.max(hour, from));
    return Math.min(1, overlap(start) + overlap(start - HOURS_OF_DAY));
  });

/** Mean power of each clock hour, W, of a pump that runs through its speeds one after the other; times in hours, energies in J. */
export function powerByHour(start: number, hours: readonly number[], energies: readonly number[]): Float64Array {
  const mean = new Float64Array(HOURS_OF_DAY);
  let at = start;
  hours.forEach((time, i) => {
    const power = (energies[i] ?? 0) / (time * HOUR);
    scheduleOf(at % HOURS_OF_DAY, time).forEach((part, hour) => {
      mean[hour] = (mean[hour] ?? 0) + part * power;
    });
    at += time;
  });
  return mean;
}
