/** Losses of a square metre of water in one hour at one temperature, with their slopes over it; and sums by month. */
import { DAYS } from "../../aircon/models/fullLoadHours";
import { vapourPressureAt, vapourSlopeAt } from "./vapourTable";
import { HOUR_RECORD, MAKE_UP_HEAT, RECORD_WIDTH, STEADY_RECORD, type YearSurface } from "./yearSurface";

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
const width = RECORD_WIDTH;
const { film: FILM, vapour: VAPOUR, airFilm: AIR_FILM, air: AIR, glow: GLOW, sky: SKY, mains: MAINS } = HOUR_RECORD;
const { ground: WALLS, groundTemperature: GROUND_AT, drawn: DRAWN, rain: RAIN } = STEADY_RECORD;
const { latent: LATENT, latentSlope: LATENT_SLOPE } = STEADY_RECORD;

/** Room for the five losses and their slopes. */
export const terms = (): Float64Array => new Float64Array(2 * LOSSES);

/** Writes the losses at T (K) in an hour, and their slopes, from the records of a surface. */
export const termsAt = (hours: Float64Array, steady: Float64Array, hour: number, T: number, into: Float64Array) => {
  const at = hour * width;
  const film = hours[at + FILM] ?? 0;
  const airFilm = hours[at + AIR_FILM] ?? 0;
  const glow = hours[at + GLOW] ?? 0;
  const warmer = T - (hours[at + AIR] ?? 0);
  const ground = steady[WALLS] ?? 0;
  const rain = steady[RAIN] ?? 0;
  const evaporation = film * (pressureAt(T) - (hours[at + VAPOUR] ?? 0));
  const steeper = film * slopeAt(T);
  const latent = (steady[LATENT] ?? 0) + (steady[LATENT_SLOPE] ?? 0) * T;
  const drawn = evaporation / latent + (steady[DRAWN] ?? 0);
  const colder = T - (hours[at + MAINS] ?? 0);
  const made = drawn > 0 ? drawn : 0;
  into[EVAPORATION] = evaporation;
  into[CONVECTION] = airFilm * warmer;
  into[RADIATION] = glow * T * T * T * T - (hours[at + SKY] ?? 0);
  into[GROUND] = ground * (T - (steady[GROUND_AT] ?? 0));
  into[MAKE_UP] = makeUpHeat * (made * colder + rain * warmer);
  into[LOSSES + EVAPORATION] = steeper;
  into[LOSSES + CONVECTION] = airFilm;
  into[LOSSES + RADIATION] = 4 * glow * T * T * T;
  into[LOSSES + GROUND] = ground;
  into[LOSSES + MAKE_UP] = makeUpHeat * (made + (drawn > 0 ? (steeper / latent) * colder : 0) + rain);
};

export const sumOf = (of: Float64Array, from: number): number =>
  (of[from] ?? 0) + (of[from + 1] ?? 0) + (of[from + 2] ?? 0) + (of[from + 3] ?? 0) + (of[from + 4] ?? 0);

export const HOURS = 8760;

/** The month, 0 to 11, of each hour of a year that is no leap year. */
export const MONTH_OF: Uint8Array = Uint8Array.from(
  DAYS.flatMap((days, month) => Array.from({ length: 24 * days }, () => month)),
);

/** What is summed up by month: heats in J/m², machine and tank figures in J, times in s, warmth in K·s. */
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
  "toTank",
  "tankTime",
  "drawnHeat",
  "tankLoss",
  "tankWarmth",
] as const;

export type Figure = (typeof FIGURES)[number];
export type Sums = Readonly<Record<Figure, Float64Array>>;

/** Each figure's place among the sums, for `allSums`: figure by figure, twelve months each. */
export const PLACE_OF = Object.fromEntries(FIGURES.map((figure, place) => [figure, 12 * place])) as Readonly<
  Record<Figure, number>
>;

/** All 0; the figures are parts of one array. */
export const emptySums = (): Sums => {
  const all = new Float64Array(12 * FIGURES.length);
  return Object.fromEntries(
    FIGURES.map((figure, place) => [figure, all.subarray(12 * place, 12 * place + 12)]),
  ) as unknown as Sums;
};

/** The one array that the figures are parts of. */
export const allSums = (sums: Sums): Float64Array => new Float64Array(sums.evaporation.buffer);

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
export const heldExactly = ({ weather, hours, steady, sun }: YearSurface, T: number): Held => {
  const balance = new Float64Array(12);
  const hourly = new Float64Array(12);
  const losses = emptySums();
  const at = terms();
  const add = (to: Float64Array, month: number, value: number): void => {
    to[month] = (to[month] ?? 0) + 3600 * value;
  };
  for (let hour = 0; hour < weather.hours; hour++) {
    const month = MONTH_OF[hour] ?? 0;
    termsAt(hours, steady, hour, T, at);
    const net = sumOf(at, 0) - (sun[hour] ?? 0);
    add(balance, month, net);
    add(hourly, month, Math.max(0, net));
    add(losses.evaporation, month, at[EVAPORATION] ?? 0);
    add(losses.convection, month, at[CONVECTION] ?? 0);
    add(losses.radiation, month, at[RADIATION] ?? 0);
    add(losses.ground, month, at[GROUND] ?? 0);
    add(losses.makeUp, month, at[MAKE_UP] ?? 0);
    add(losses.sun, month, sun[hour] ?? 0);
  }
  return { balance, hourly, losses };
};
