/** Fills gaps of a year of hours, and says which and how. */
import { HOURS, type Quantity } from "./hours";

/** Longest gap that a straight line bridges, h. */
const SHORT = 6;
/** Days before and behind that a longer gap takes its hours from. */
const REACH = 15;
/** A quantity that lacks more than this share is no record of a year. */
const MOST_MISSING = 0.25;

interface Gap {
  readonly from: number;
  readonly length: number;
}

function gapsOf(values: Float64Array): readonly Gap[] {
  const gaps: Gap[] = [];
  for (let hour = 0; hour < HOURS; hour++) {
    if (!Number.isNaN(values[hour])) continue;
    let end = hour;
    while (end < HOURS && Number.isNaN(values[end])) end++;
    gaps.push({ from: hour, length: end - hour });
    hour = end;
  }
  return gaps;
}

const at = (values: Float64Array, hour: number): number => values[(hour + HOURS) % HOURS] ?? Number.NaN;

/** The mean of the same hour of the nearest days with a value, before and behind. */
function fromOtherDays(values: Float64Array, hour: number): number {
  const nearest = (step: number): number => {
    for (let day = 1; day <= REACH; day++) {
      const value = at(values, hour + step * 24 * day);
      if (!Number.isNaN(value)) return value;
    }
    return Number.NaN;
  };
  const [before, behind] = [nearest(-1), nearest(1)];
  if (Number.isNaN(before)) return behind;
  return Number.isNaN(behind) ? before : (before + behind) / 2;
}

const NAMES: Readonly<Record<Quantity, string>> = {
  air: "air",
  dewPoint: "dew point",
  humidity: "humidity",
  wind: "wind",
  sun: "sun",
  cloud: "cloud",
  pressure: "pressure",
};

export interface Filled {
  /** Undefined where too little is there. */
  readonly values: Float64Array | undefined;
  readonly fault: string | undefined;
}

/** A quantity without gaps; the sun never by straight lines, which would warm its nights. */
export function fillGaps(quantity: Quantity, values: Float64Array): Filled {
  const name = NAMES[quantity];
  const gaps = gapsOf(values);
  const missing = gaps.reduce((total, { length }) => total + length, 0);
  if (missing === 0) return { values, fault: undefined };
  if (missing > MOST_MISSING * HOURS)
    return {
      values: undefined,
      fault: `${name}: ${missing === HOURS ? "no hour has a value" : `${missing} of ${HOURS} hours are missing`}; the column was left out`,
    };
  const result = values.slice();
  const short = (gap: Gap): boolean => gap.length <= SHORT && quantity !== "sun";
  for (const gap of gaps) {
    const [a, b] = [at(values, gap.from - 1), at(values, gap.from + gap.length)];
    const straight = short(gap) && !Number.isNaN(a) && !Number.isNaN(b);
    for (let i = 0; i < gap.length; i++)
      result[gap.from + i] = straight
        ? a + ((b - a) * (i + 1)) / (gap.length + 1)
        : fromOtherDays(values, gap.from + i);
  }
  if (result.some(Number.isNaN))
    return { values: undefined, fault: `${name}: a gap is longer than ${2 * REACH} days; the column was left out` };
  const straight = gaps.filter(short).length;
  const how = [
    ...(straight > 0 ? ["by a straight line"] : []),
    ...(straight < gaps.length ? ["by the same hour of the nearest days before and behind"] : []),
  ].join(", longer ones ");
  const longest = Math.max(...gaps.map(({ length }) => length));
  return {
    values: result,
    fault: `${name}: ${missing} hours missing in ${gaps.length} gaps, the longest ${longest} h; filled ${how}`,
  };
}
