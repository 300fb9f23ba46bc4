/** Losses of a square metre of water in one hour at one temperature, with their slopes over it; and sums by month. */
import { DAYS } from "../../aircon/models/fullLoadHours";
import { vapourPressureAt, vapourSlopeAt } from "./vapourTable";
import { MAKE_UP_HEAT, type YearSurface } from "./yearSurface";

/** Places in the record of a state: loss in W/m², its slope in W/(m²·K) five places on. */
export const EVAPORATION = 0;
export const CONVECTION = 1;
export const RADIATION = 2;
export const GROUND = 3;
export const MAKE_UP = 4;
export const LOSSES = 5;

// Bound here once: read from another module they would be asked for a million times a year.
const pressureAt = vapourPressureAt;
const slopeAt = vapourSlopeAt;
const makeUpHeat = MAKE_UP_HEAT;

/** Room for the five losses and their slopes. */
export const terms = (): Float64Array => new Float64Array(2 * LOSSES);

/** Writes the losses at T (K) in an hour, and their slopes. */
export const termsAt = (of: YearSurface, hour: number, T: number, into: Float64Array): void => {
  const { weather } = of;
  const film = of.film[hour] ?? 0;
  const airFilm = of.airFilm[hour] ?? 0;
  const glow = of.glow[hour] ?? 0;
  const air = weather.air[hour] ?? 0;
  const evaporation = film * (pressureAt(T) - (weather.vapour[hour] ?? 0));
  const steeper = film * slopeAt(T);
  const latent = of.latent0 + of.latentSlope * T;
  const drawn = evaporation / latent + of.drawn;
  const colder = T - (weather.mains[hour] ?? 0);
  const made = drawn > 0 ? drawn : 0;
  into[EVAPORATION] = evaporation;
  into[CONVECTION] = airFilm * (T - air);
  into[RADIATION] = glow * T * T * T * T - (of.sky[hour] ?? 0);
  into[GROUND] = of.ground * (T - of.groundTemperature);
  into[MAKE_UP] = makeUpHeat * (made * colder + of.rain * (T - air));
  into[LOSSES + EVAPORATION] = steeper;
  into[LOSSES + CONVECTION] = airFilm;
  into[LOSSES + RADIATION] = 4 * glow * T * T * T;
  into[LOSSES + GROUND] = of.ground;
  into[LOSSES + MAKE_UP] = makeUpHeat * (made + (drawn > 0 ? (steeper / latent) * colder : 0) + of.rain);
};

export const sumOf = (of: Float64Array, from: number): number =>
  (of[from] ?? 0) + (of[from + 1] ?? 0) + (of[from + 2] ?? 0) + (of[from + 3] ?? 0) + (of[from + 4] ?? 0);

export const HOURS = 8760;

/** The month, 0 to 11, of each hour of a year that is no leap year. */
export const MONTH_OF: Uint8Array = Uint8Array.from(
  DAYS.flatMap((days, month) => Array.from({ length: 24 * days }, () => month)),
);

/** What is summed up by month: heats in J/m², machine figures in J, times in s. */
export const FIGURES = [
  "evaporation",
  "convection",
  "radiation",
  "ground",
  "makeUp",
  "sun",
  "pumpHeat",
  "taken",
  "backUp",
  "warmth",
  "rejected",
  "poolTime",
  "outdoorTime",
  "electricity",
  "extraPump",
  "unmet",
  "frozen",
] as const;

export type Figure = (typeof FIGURES)[number];
export type Sums = Readonly<Record<Figure, Float64Array>>;

export const emptySums = (): Sums =>
  Object.fromEntries(FIGURES.map((figure) => [figure, new Float64Array(12)])) as unknown as Sums;

export const totalOf = (months: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < months.length; i++) sum += months[i] ?? 0;
  return sum;
};

export interface Held {
  /** Loss less sun by month, J/m², signed. */
  readonly balance: Float64Array;
  /** Sum over the hours of what is above 0, J/m². */
  readonly hourly: Float64Array;
  readonly losses: Sums;
}

/** What a pool kept at exactly one temperature would need: cooled too where the sun is more than the loss. */
export const heldExactly = (of: YearSurface, T: number): Held => {
  const balance = new Float64Array(12);
  const hourly = new Float64Array(12);
  const losses = emptySums();
  const at = terms();
  const add = (to: Float64Array, month: number, value: number): void => {
    to[month] = (to[month] ?? 0) + 3600 * value;
  };
  for (let hour = 0; hour < of.weather.hours; hour++) {
    const month = MONTH_OF[hour] ?? 0;
    termsAt(of, hour, T, at);
    const sun = of.sun[hour] ?? 0;
    const net = sumOf(at, 0) - sun;
    add(balance, month, net);
    add(hourly, month, Math.max(0, net));
    add(losses.evaporation, month, at[EVAPORATION] ?? 0);
    add(losses.convection, month, at[CONVECTION] ?? 0);
    add(losses.radiation, month, at[RADIATION] ?? 0);
    add(losses.ground, month, at[GROUND] ?? 0);
    add(losses.makeUp, month, at[MAKE_UP] ?? 0);
    add(losses.sun, month, sun);
  }
  return { balance, hourly, losses };
};
