/** Losses of a square metre of water in one hour at one temperature, with their slopes over it; and sums by month. */
import { DAYS } from "../../aircon/models/fullLoadHours";
import { writeVapourAt } from "./vapourTable";
import { HOUR_RECORD, MAKE_UP_HEAT, RECORD_WIDTH, STEADY_RECORD, type YearSurface } from "./surface";

/** Places in the record of a state: loss in W/m², its slope in W/(m²·K) five places on; then the sums of both. */
export const EVAPORATION = 0;
export const CONVECTION = 1;
export const RADIATION = 2;
export const GROUND = 3;
export const MAKE_UP = 4;
export const LOSSES = 5;
export const ALL_LOSSES = 10;
export const ALL_SLOPES = 11;

// Bound here once: read from another module they would be asked for a million times a year.
const vapourAt = writeVapourAt;
const makeUpHeat = MAKE_UP_HEAT;
const width = RECORD_WIDTH;
const { film: FILM, vapour: VAPOUR, airFilm: AIR_FILM, air: AIR, glow: GLOW, sky: SKY, mains: MAINS } = HOUR_RECORD;
const { ground: WALLS, groundTemperature: GROUND_AT, drawn: DRAWN, rain: RAIN } = STEADY_RECORD;
const { latent: LATENT, latentSlope: LATENT_SLOPE } = STEADY_RECORD;

/** Room for the five losses, their slopes and the sums. */
export const terms = (): Float64Array => new Float64Array(2 * LOSSES + 2);

/** Writes the losses at T (K) in an hour, and their slopes, from the records of a surface. */
export const termsAt = (hours: Float64Array, steady: Float64Array, hour: number, T: number, into: Float64Array) => {
  const at = hour * width;
  const film = hours[at + FILM] ?? 0;
  const airFilm = hours[at + AIR_FILM] ?? 0;
  const glow = hours[at + GLOW] ?? 0;
  const warmer = T - (hours[at + AIR] ?? 0);
  const ground = steady[WALLS] ?? 0;
  const rain = steady[RAIN] ?? 0;
  vapourAt(T, into);
  const evaporation = film * ((into[0] ?? 0) - (hours[at + VAPOUR] ?? 0));
  const steeper = film * (into[1] ?? 0);
  const latent = (steady[LATENT] ?? 0) + (steady[LATENT_SLOPE] ?? 0) * T;
  const drawn = evaporation / latent + (steady[DRAWN] ?? 0);
  const colder = T - (hours[at + MAINS] ?? 0);
  const made = drawn > 0 ? drawn : 0;
  const convection = airFilm * warmer;
  const radiation = glow * T * T * T * T - (hours[at + SKY] ?? 0);
  const toGround = ground * (T - (steady[GROUND_AT] ?? 0));
  const makeUp = makeUpHeat * (made * colder + rain * warmer);
  const radiationSlope = 4 * glow * T * T * T;
  const makeUpSlope = makeUpHeat * (made + (drawn > 0 ? (steeper / latent) * colder : 0) + rain);
  into[EVAPORATION] = evaporation;
  into[CONVECTION] = convection;
  into[RADIATION] = radiation;
  into[GROUND] = toGround;
  into[MAKE_UP] = makeUp;
  into[LOSSES + EVAPORATION] = steeper;
  into[LOSSES + CONVECTION] = airFilm;
  into[LOSSES + RADIATION] = radiationSlope;
  into[LOSSES + GROUND] = ground;
  into[LOSSES + MAKE_UP] = makeUpSlope;
  into[ALL_LOSSES] = evaporation + convection + radiation + toGround + makeUp;
  into[ALL_SLOPES] = steeper + airFilm + radiationSlope + ground + makeUpSlope;
};

export const HOURS = 8760;

/** The month, 0 to 11, of each hour of a year that is no leap year. */
export const MONTH_OF: Uint8Array = Uint8Array.from(
  DAYS.flatMap((days, month) => Array.from({ length: 24 * days }, () => month)),
);

/** What is summed up by month: heats in J/m², machine and tank figures in J, times in s, warmth in K·s. */
export const FIGURE = {
  evaporation: 0,
  convection: 1,
  radiation: 2,
  ground: 3,
  makeUp: 4,
  sun: 5,
  pumpHeat: 6,
  taken: 7,
  backUp: 8,
  warmth: 9,
  rejected: 10,
  poolTime: 11,
  outdoorTime: 12,
  electricity: 13,
  extraPump: 14,
  unmet: 15,
  frozen: 16,
  toTank: 17,
  tankTime: 18,
  drawnHeat: 19,
  tankLoss: 20,
  tankWarmth: 21,
} as const;

export type Figure = keyof typeof FIGURE;
export type Sums = Readonly<Record<Figure, Float64Array>>;

const FIGURES = Object.entries(FIGURE);

/** All 0; the figures are parts of one array. */
export const emptySums = (): Sums => {
  const all = new Float64Array(12 * FIGURES.length);
  return Object.fromEntries(
    FIGURES.map(([figure, place]) => [figure, all.subarray(12 * place, 12 * place + 12)]),
  ) as unknown as Sums;
};

/** The one array that the figures are parts of: figure by figure, twelve months each. */
export const allSums = (sums: Sums): Float64Array => new Float64Array(sums.evaporation.buffer);

/** An array of numbers whose places are known: reading one needs no guard. */
export type NumbersAt<Places extends Readonly<Record<string, number>>> = {
  [Place in Places[keyof Places]]: number;
};

/** The figures of one month. */
export type Tally = NumbersAt<typeof FIGURE>;

export const emptyTally = (): Tally => new Float64Array(FIGURES.length) as unknown as Tally;

/** Adds a month's figures to the sums and begins anew. */
export const flush = (tally: Tally, month: number, sums: Float64Array): void => {
  const figures = tally as unknown as Float64Array;
  for (let place = 0; place < figures.length; place++)
    sums[12 * place + month] = (sums[12 * place + month] ?? 0) + (figures[place] ?? 0);
  figures.fill(0);
};

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

const HOUR = 3600;

/** What a pool kept at exactly one temperature would need: cooled too where the sun is more than the loss. */
export const heldExactly = ({ weather, hours, steady, sun }: YearSurface, T: number): Held => {
  const balance = new Float64Array(12);
  const hourly = new Float64Array(12);
  const losses = emptySums();
  const at = terms();
  const { evaporation, convection, radiation, ground, makeUp, sun: suns } = losses;
  for (let hour = 0; hour < weather.hours; hour++) {
    const month = MONTH_OF[hour] ?? 0;
    termsAt(hours, steady, hour, T, at);
    const gained = sun[hour] ?? 0;
    const net = (at[ALL_LOSSES] ?? 0) - gained;
    balance[month] = (balance[month] ?? 0) + HOUR * net;
    if (net > 0) hourly[month] = (hourly[month] ?? 0) + HOUR * net;
    evaporation[month] = (evaporation[month] ?? 0) + HOUR * (at[EVAPORATION] ?? 0);
    convection[month] = (convection[month] ?? 0) + HOUR * (at[CONVECTION] ?? 0);
    radiation[month] = (radiation[month] ?? 0) + HOUR * (at[RADIATION] ?? 0);
    ground[month] = (ground[month] ?? 0) + HOUR * (at[GROUND] ?? 0);
    makeUp[month] = (makeUp[month] ?? 0) + HOUR * (at[MAKE_UP] ?? 0);
    suns[month] = (suns[month] ?? 0) + HOUR * gained;
  }
  return { balance, hourly, losses };
};
