/** Sun on a level surface above the air: the upper bound of any pyranometer reading. Strict SI, angles in radians. */
import { equation, symbol } from "../kernel/define/equation";
import { silent, type Trace } from "../kernel/define/steps";
import { DAYS } from "../numeric/calendar";

const DEGREE = Math.PI / 180;

const G = symbol("number", "angle of the year, radians", 0, 6.283185307179586);

export const spencerDeclination = equation({
  name: "Declination of the sun (Spencer)",
  form: "dec = 0.006918 - 0.399912 * cos(G) + 0.070257 * sin(G) - 0.006758 * cos(2 * G) + 0.000907 * sin(2 * G) - 0.002697 * cos(3 * G) + 0.00148 * sin(3 * G)",
  kind: "number",
  symbols: { G },
  source: "spencer1971",
  code: (x) =>
    0.006918 -
    0.399912 * Math.cos(x.G) +
    0.070257 * Math.sin(x.G) -
    0.006758 * Math.cos(2 * x.G) +
    0.000907 * Math.sin(2 * x.G) -
    0.002697 * Math.cos(3 * x.G) +
    0.00148 * Math.sin(3 * x.G),
});

export const spencerDistance = equation({
  name: "Sun's distance: mean over own, squared (Spencer)",
  form: "E = 1.00011 + 0.034221 * cos(G) + 0.00128 * sin(G) + 0.000719 * cos(2 * G) + 0.000077 * sin(2 * G)",
  kind: "number",
  symbols: { G },
  source: "spencer1971",
  code: (x) =>
    1.00011 +
    0.034221 * Math.cos(x.G) +
    0.00128 * Math.sin(x.G) +
    0.000719 * Math.cos(2 * x.G) +
    0.000077 * Math.sin(2 * x.G),
});

export const sunAboveAir = equation({
  name: "Sun above the air in a day",
  form: "H = 86400 / pi * 1361 * E * (cos(lat) * cos(dec) * sin(ws) + ws * sin(lat) * sin(dec))",
  kind: "daily sun",
  symbols: {
    E: symbol("number", "distance factor", 0.96, 1.04),
    lat: symbol("number", "latitude, radians", -1.1, 1.1),
    dec: symbol("number", "declination, radians", -0.41, 0.41),
    ws: symbol("number", "hour angle of sunset, radians", 0.9, 2.2),
  },
  source: "duffieBeckman2013",
  code: (x) =>
    (86_400 / Math.PI) *
    1361 *
    x.E *
    (Math.cos(x.lat) * Math.cos(x.dec) * Math.sin(x.ws) + x.ws * Math.sin(x.lat) * Math.sin(x.dec)),
});

export const yearAngle = equation({
  name: "Angle of the year",
  form: "G = 2 * pi * (n - 1) / 365",
  kind: "number",
  symbols: { n: symbol("count", "day of the year", 1, 365) },
  source: "spencer1971",
  code: (x) => (2 * Math.PI * (x.n - 1)) / 365,
});

export const sunsetAngle = equation({
  name: "Hour angle of sunset",
  form: "ws = acos(max(-1, min(1, -tan(lat) * tan(dec))))",
  kind: "number",
  symbols: {
    lat: symbol("number", "latitude, radians", -1.5, 1.5),
    dec: symbol("number", "declination, radians", -0.41, 0.41),
  },
  source: "duffieBeckman2013",
  code: (x) => Math.acos(Math.max(-1, Math.min(1, -Math.tan(x.lat) * Math.tan(x.dec)))),
});

/** J/m² of a day (1 to 365) at a latitude in degrees. */
export function extraterrestrialOfDay(latitude: number, day: number, trace: Trace = silent): number {
  const lat = latitude * DEGREE;
  const G = trace.step(yearAngle, { n: day });
  const dec = trace.step(spencerDeclination, { G });
  const ws = trace.step(sunsetAngle, { lat, dec });
  return trace.step(sunAboveAir, { E: trace.step(spencerDistance, { G }), lat, dec, ws });
}

/** Mean of the days of a month (0 to 11), J/m² a day. */
export function extraterrestrialOfMonth(latitude: number, month: number): number {
  const before = DAYS.slice(0, month).reduce((sum, days) => sum + days, 0);
  const days = DAYS[month] ?? 0;
  let sum = 0;
  for (let day = 1; day <= days; day++) sum += extraterrestrialOfDay(latitude, before + day);
  return sum / days;
}

/** Twelve months of sun compared with the sun above the air at their latitude. */
export interface SunCheck {
  /** Clearness by month; infinite in a polar night with sun. */
  readonly clearness: readonly number[];
  /** Months (0 to 11) with more sun than there is above the air: impossible. */
  readonly above: readonly number[];
  /** Months outside 0.2 to 0.8 but not above 1: unlikely (Duffie and Beckman, chapter 2). */
  readonly unlikely: readonly number[];
  /** Whether the same sun would be likely in all months at the opposite latitude. */
  readonly otherHemisphere: boolean;
}

const [LEAST_CLEARNESS, MOST_CLEARNESS] = [0.2, 0.8];

/** Below this, J/m² a day, the sun hardly rises and its clearness means nothing. */
const HARDLY_ANY = 1e6;

function clearnessOf(latitude: number, daily: readonly number[]): readonly number[] {
  return daily.map((sun, month) => {
    const outside = extraterrestrialOfMonth(latitude, month);
    return outside > HARDLY_ANY ? sun / outside : sun > HARDLY_ANY ? Number.POSITIVE_INFINITY : Number.NaN;
  });
}

/** @param daily mean sun of the twelve months, J/m² a day */
export function checkMonthlySun(latitude: number, daily: readonly number[]): SunCheck {
  const clearness = clearnessOf(latitude, daily);
  const isUnlikely = (K: number): boolean => K <= 1 && (K < LEAST_CLEARNESS || K > MOST_CLEARNESS);
  const months = (are: (K: number) => boolean): readonly number[] =>
    clearness.flatMap((K, month) => (are(K) ? [month] : []));
  const [above, unlikely] = [months((K) => K > 1), months(isUnlikely)];
  const otherHemisphere =
    above.length + unlikely.length > 0 &&
    clearnessOf(-latitude, daily).every((K) => !(K < LEAST_CLEARNESS || K > MOST_CLEARNESS));
  return { clearness, above, unlikely, otherHemisphere };
}
