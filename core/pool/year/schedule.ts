import { HOURS_OF_DAY } from "./calendar";

/** Part of each clock hour between a start and an end some hours later, through midnight. */
export const scheduleOf = (start: number, hours: number): Float64Array =>
  Float64Array.from({ length: HOURS_OF_DAY }, (_, hour) => {
    const overlap = (from: number): number => Math.max(0, Math.min(hour + 1, from + hours) - Math.max(hour, from));
    return Math.min(1, overlap(start) + overlap(start - HOURS_OF_DAY));
  });
