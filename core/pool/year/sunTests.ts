/** Tests of the sun: clearness, its season and the air's, and its clock. */
import { checkMonthlySun, extraterrestrialOfMonth } from "../../air/extraterrestrial";
import { HOURS_OF_DAY, MONTHS } from "../../numeric/calendar";
import { mean, standardDeviation, sum } from "../../numeric/series";
import type { Climate } from "./climate";
import { sunExplanation } from "./sunCheck";
import type { Test } from "./finding";

/** Below this latitude the sun above the air hardly changes through the year; below the next the rains rule it. */
export const TROPIC = 12;
const OUTER_TROPIC = 25;

function correlation(a: readonly number[], b: readonly number[]): number {
  const [ma, mb] = [mean(a), mean(b)];
  const spread = standardDeviation(a) * standardDeviation(b);
  return spread === 0 ? 0 : mean(a.map((each, i) => (each - ma) * ((b[i] ?? 0) - mb))) / spread;
}

export const CLEARNESS = "clearness of the sun";

export function seasonTests(climate: Climate, latitude: number, sun: readonly number[], air: readonly number[]) {
  const outside = MONTHS.map((_, month) => extraterrestrialOfMonth(latitude, month));
  const before = outside.map((_, month) => outside[(month + 11) % 12] ?? 0);
  const far = Math.abs(latitude) >= OUTER_TROPIC;
  const seasons = { kind: "number", fine: [far ? 0.9 : 0, 1], possible: [far ? 0 : -1, 1] } as const;
  return [
    {
      ...seasons,
      check: "season of the sun",
      values: [correlation(sun, outside)],
      meaning: `months out of order, or the wrong hemisphere: ${sunExplanation(climate, latitude, sun, checkMonthlySun(latitude, sun))}`,
    },
    {
      ...seasons,
      check: "season of the air",
      values: [correlation(air, before)],
      meaning: "air and sun of different places, months out of order, or the wrong hemisphere",
    },
  ];
}

/** Clearness of the months, their sun in J/m² a day. */
export function clearnessTest(climate: Climate, latitude: number, sun: readonly number[]): Test {
  const check = checkMonthlySun(latitude, sun);
  return {
    check: CLEARNESS,
    kind: "number",
    values: check.clearness,
    fine: [0.28, 0.73],
    possible: [0.1, 0.85],
    meaning: sunExplanation(climate, latitude, sun, check),
  };
}

/** The hour about which the day's sun is balanced, mean over the year's days with sun. */
export function centreOfSun(sun: Float64Array): number {
  const days = Array.from({ length: 365 }, (_, day) => sun.subarray(HOURS_OF_DAY * day, HOURS_OF_DAY * (day + 1)));
  const centres = days.flatMap((hours) => {
    const total = sum(hours);
    return total > 0 ? [hours.reduce((moment, each, hour) => moment + each * (hour + 0.5), 0) / total] : [];
  });
  return centres.length > 0 ? mean(centres) : Number.NaN;
}
