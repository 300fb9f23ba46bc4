/**
 * A pool's losses made ready for the hours of a year: per square metre of water, each hour a handful of numbers, so that a
 * step allocates nothing. The relations are those of the steady losses; here they are read once an hour, not once a step.
 */
import { latentHeatOfWater } from "../../water/models/latentHeat";
import { coverOf, type CoverKind } from "../data/covers";
import { POOL_SPECIFIC_HEAT } from "../equations";
import { bowenFilm, groundArea, skyEmissivity, skyRadiation, windFilm } from "../losses/equations";
import { transferCoefficient } from "../evaporation/evaporation";
import type { Surface } from "../losses/surface";

/** Weather of the hours of a year, each value holding through its hour. */
export interface Weather {
  readonly hours: number;
  /** K */
  readonly air: Float64Array;
  /** Vapour pressure of the air, Pa. */
  readonly vapour: Float64Array;
  /** K */
  readonly dewPoint: Float64Array;
  /** At the water, m/s. */
  readonly wind: Float64Array;
  /** On a level surface, W/m². */
  readonly sun: Float64Array;
  /** Opaque cloud, tenths. */
  readonly cloud: Float64Array;
  /** Pa */
  readonly pressure: Float64Array;
  /** Mains water, K. */
  readonly mains: Float64Array;
}

/** What the pool is, besides its weather; shares and cuts 0 to 1. */
export interface YearPool {
  readonly surface: Surface;
  /** m², m */
  readonly area: number;
  readonly depth: number;
  /** W/(m²·K) of the surface rule where that stands for evaporation, convection and radiation. */
  readonly rule: number | undefined;
  readonly cover: {
    readonly kind: CoverKind;
    /** Of 24, about midnight. */
    readonly hours: number;
    readonly covered: number;
    readonly convectionCut: number;
    readonly radiationCut: number;
  };
  /** W/(m²·K) and K */
  readonly ground: { readonly coefficient: number; readonly temperature: number };
  /** Splash, backwash and leak less rain, and rain, each kg/(s·m²). */
  readonly water: { readonly drawn: number; readonly rain: number };
  readonly sunShare: number;
  readonly shading: number;
}

/**
 * Places in the record of an hour, per square metre of water: evaporation = film × (ps(T) − vapour), convection = air film ×
 * (T − air), radiation = glow × T⁴ − sky. One array of numbers holds all hours: the loop over them reads nothing else.
 */
export const HOUR_RECORD = {
  /** W/(m²·Pa) and Pa */
  film: 0,
  vapour: 1,
  /** W/(m²·K) and K */
  airFilm: 2,
  air: 3,
  /** Factor of T⁴, W/(m²·K⁴); what sky and surroundings give, W/m². */
  glow: 4,
  sky: 5,
  /** Absorbed, W/m². */
  sun: 6,
  /** Mains water, K. */
  mains: 7,
} as const;
export const RECORD_WIDTH = 8;

/** Places in the record of what holds all year. */
export const STEADY_RECORD = {
  /** W/(m²·K), by water surface; K */
  ground: 0,
  groundTemperature: 1,
  /** kg/(s·m²) */
  drawn: 2,
  rain: 3,
  /** Latent heat, J/kg, as a straight line over K: within 0.02 % between 0 and 45 °C. */
  latent: 4,
  latentSlope: 5,
} as const;

export interface YearSurface {
  readonly weather: Weather;
  readonly hours: Float64Array;
  readonly steady: Float64Array;
  /** Absorbed, W/m², by hour. */
  readonly sun: Float64Array;
}

/** Share of an hour of the day (0 to 23) in which a cover lies that is on for `hours` about midnight. */
export const coveredPart = (hour: number, hours: number): number => {
  const half = hours / 2;
  const evening = Math.min(1, Math.max(0, hour + 1 - (24 - half)));
  const morning = Math.min(1, Math.max(0, half - hour));
  return Math.min(1, evening + morning);
};

/** Evaporation film at a wind, W/(m²·Pa): the outdoor relations are c(v)/Y, so c(v) is the relation at Y = 1. */
const filmAt = (pool: YearPool, weather: Weather, hour: number): number =>
  pool.surface.activity *
  transferCoefficient(
    pool.surface.method,
    {
      area: pool.area,
      water: 298.15,
      air: weather.air[hour] ?? 0,
      vapourPressure: weather.vapour[hour] ?? 0,
      wind: weather.wind[hour] ?? 0,
      pressure: weather.pressure[hour] ?? 0,
    },
    vapourAt25,
    1,
  );

/** Read by no outdoor relation; Pa. */
const vapourAt25 = 3169;

const latentLine = (): readonly [number, number] => {
  const [cold, warm] = [278.15, 308.15];
  const slope = (latentHeatOfWater(warm) - latentHeatOfWater(cold)) / (warm - cold);
  return [latentHeatOfWater(cold) - slope * cold, slope];
};

/** Radiation that the sky and what hides it give an open pool, for each fourth power of the air's K, W/(m²·K⁴). */
const skyAt = ({ surface }: YearPool, weather: Weather, hour: number): number => {
  const es = skyEmissivity.code({ Td: weather.dewPoint[hour] ?? 0, N: weather.cloud[hour] ?? 0 });
  return -skyRadiation.code({ A: 1, Tw: 0, Ta: 1, f: surface.hiddenSky, es });
};

const airFilmAt = ({ surface }: YearPool, weather: Weather, hour: number, film: number): number =>
  surface.convection === "by wind"
    ? windFilm.code({ v: weather.wind[hour] ?? 0 })
    : bowenFilm.code({ k: film, Y: 1, p: weather.pressure[hour] ?? 0 });

/** Share of the surface that is under the cover, by hour of the day. */
const coveredOfDay = ({ cover }: YearPool): Float64Array =>
  Float64Array.from({ length: 24 }, (_, hour) =>
    cover.kind === "none" ? 0 : coveredPart(hour, cover.hours) * cover.covered,
  );

const absorbedSun = (pool: YearPool, weather: Weather, covered: Float64Array): Float64Array => {
  const off = Math.min(coverOf(pool.cover.kind).sun, pool.sunShare);
  const absorbed = new Float64Array(weather.hours);
  for (let hour = 0; hour < weather.hours; hour++)
    absorbed[hour] = (weather.sun[hour] ?? 0) * (pool.sunShare - (covered[hour % 24] ?? 0) * off) * (1 - pool.shading);
  return absorbed;
};

/** Films and radiation. The sky is asked for anew when dew point or cloud change, the film when the wind does in a day. */
const fillParts = (pool: YearPool, weather: Weather, to: Float64Array, covered: Float64Array): void => {
  const { dewPoint, cloud, wind } = weather;
  const { cover } = pool;
  const cut = coverOf(cover.kind).evaporation;
  const films = new Float64Array(24);
  let sky = 0;
  for (let hour = 0; hour < weather.hours; hour++) {
    const clock = hour % 24;
    const on = covered[clock] ?? 0;
    if (hour < 24 || wind[hour] !== wind[hour - 24]) films[clock] = filmAt(pool, weather, hour);
    if (hour === 0 || dewPoint[hour] !== dewPoint[hour - 1] || cloud[hour] !== cloud[hour - 1])
      sky = skyAt(pool, weather, hour);
    const film = films[clock] ?? 0;
    const air = weather.air[hour] ?? 0;
    const open = 1 - on * cover.radiationCut;
    const at = hour * RECORD_WIDTH;
    to[at + HOUR_RECORD.film] = film * (1 - on * cut);
    to[at + HOUR_RECORD.airFilm] = airFilmAt(pool, weather, hour, film) * (1 - on * cover.convectionCut);
    to[at + HOUR_RECORD.glow] = open * GLOW;
    to[at + HOUR_RECORD.sky] = open * sky * air * air * air * air;
  }
};

/** Emissivity of water times the Stefan–Boltzmann constant: the relation with a sky that gives nothing. */
const GLOW = skyRadiation.code({ A: 1, Tw: 1, Ta: 0, f: 0, es: 0 });

/** The losses of a pool in a year's weather, made ready. */
export const yearSurface = (pool: YearPool, weather: Weather): YearSurface => {
  const covered = coveredOfDay(pool);
  const sun = absorbedSun(pool, weather, covered);
  const hours = new Float64Array(RECORD_WIDTH * weather.hours);
  for (let hour = 0; hour < weather.hours; hour++) {
    const at = hour * RECORD_WIDTH;
    hours[at + HOUR_RECORD.vapour] = weather.vapour[hour] ?? 0;
    hours[at + HOUR_RECORD.airFilm] = pool.rule ?? 0;
    hours[at + HOUR_RECORD.air] = weather.air[hour] ?? 0;
    hours[at + HOUR_RECORD.sun] = sun[hour] ?? 0;
    hours[at + HOUR_RECORD.mains] = weather.mains[hour] ?? 0;
  }
  if (pool.rule === undefined) fillParts(pool, weather, hours, covered);
  const walls = (pool.ground.coefficient * groundArea.code({ A: pool.area, d: pool.depth })) / pool.area;
  const { drawn, rain } = pool.water;
  return {
    weather,
    hours,
    steady: Float64Array.of(walls, pool.ground.temperature, drawn, rain, ...latentLine()),
    sun,
  };
};

/** J/(kg·K), of the water that replaces what was lost. */
export const MAKE_UP_HEAT = POOL_SPECIFIC_HEAT;
