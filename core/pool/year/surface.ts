/**
 * What a pool's losses need of the weather of a year: a handful of numbers for each hour and square metre of water.
 * The relations are those of the steady losses; the hour loop evaluates them once an hour here, not once a step.
 */
import { latentHeatOfWater } from "../../water/models/latentHeat";
import { coverOf, type CoverKind } from "../data/covers";
import { POOL_SPECIFIC_HEAT } from "../equations";
import { bowenFilm, groundArea, skyEmissivity, skyRadiation, windFilm } from "../losses/equations";
import { transferCoefficient } from "../evaporation/evaporation";
import type { Surface } from "../losses/surface";
import { HOURS_OF_DAY } from "./calendar";
import type { Weather } from "./weather";

/** What the pool is, besides its weather; shares and cuts 0 to 1. */
export interface YearPool {
  readonly surface: Surface;
  /** m², m */
  readonly area: number;
  readonly depth: number;
  /** W/(m²·K) of the surface rule, where that replaces evaporation, convection and radiation. */
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
 * A pool's surface through the year, per square metre of water: evaporation = film × (ps(T) − vapour), convection = air film ×
 * (T − air), radiation = emission × T⁴ − sky. Arrays are by hour.
 */
export interface YearSurface {
  readonly weather: Weather;
  /** Of the weather: air and mains water, K; vapour pressure of the air, Pa. */
  readonly air: Float64Array;
  readonly mains: Float64Array;
  readonly vapour: Float64Array;
  /** W/(m²·Pa); W/(m²·K) */
  readonly evaporationFilm: Float64Array;
  readonly airFilm: Float64Array;
  /** Factor of T⁴, W/(m²·K⁴); what sky and surroundings radiate to the pool, W/m². */
  readonly emission: Float64Array;
  readonly sky: Float64Array;
  /** Sun absorbed, W/m². */
  readonly sun: Float64Array;
  /** Loss to the ground, W/(m²·K) by water surface; K */
  readonly ground: number;
  readonly groundTemperature: number;
  /** Splash, backwash and leak less rain, and rain, each kg/(s·m²). */
  readonly drawn: number;
  readonly rain: number;
  /** Latent heat as a straight line over the temperature, J/kg and J/(kg·K): within 0.02 % between 0 and 45 °C. */
  readonly latentHeatAt0K: number;
  readonly latentHeatSlope: number;
}

/** Share of an hour of the day (0 to 23) in which a cover lies that is on for `hours` about midnight. */
const coveredPart = (hour: number, hours: number): number => {
  const half = hours / 2;
  const evening = Math.min(1, Math.max(0, hour + 1 - (HOURS_OF_DAY - half)));
  const morning = Math.min(1, Math.max(0, half - hour));
  return Math.min(1, evening + morning);
};

/** No outdoor relation of evaporation reads the water: K, Pa. */
const ANY_WATER = 298.15;
const ANY_PRESSURE = 3169;

/** Evaporation film at a wind, W/(m²·Pa): the outdoor relations are c(v)/Y, so c(v) is the relation at Y = 1. */
const filmAt = (pool: YearPool, weather: Weather, hour: number): number =>
  pool.surface.activity *
  transferCoefficient(
    pool.surface.method,
    {
      area: pool.area,
      water: ANY_WATER,
      air: weather.air[hour] ?? 0,
      vapourPressure: weather.vapour[hour] ?? 0,
      wind: weather.wind[hour] ?? 0,
      pressure: weather.pressure[hour] ?? 0,
    },
    ANY_PRESSURE,
    1,
  );

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
  Float64Array.from({ length: HOURS_OF_DAY }, (_, hour) =>
    cover.kind === "none" ? 0 : coveredPart(hour, cover.hours) * cover.covered,
  );

const absorbedSun = (pool: YearPool, weather: Weather, covered: Float64Array): Float64Array => {
  const off = Math.min(coverOf(pool.cover.kind).sun, pool.sunShare);
  const absorbed = new Float64Array(weather.hours);
  for (let hour = 0; hour < weather.hours; hour++)
    absorbed[hour] =
      (weather.sun[hour] ?? 0) * (pool.sunShare - (covered[hour % HOURS_OF_DAY] ?? 0) * off) * (1 - pool.shading);
  return absorbed;
};

/** Emissivity of water times the Stefan–Boltzmann constant: the relation with a sky that gives nothing. */
const EMISSION = skyRadiation.code({ A: 1, Tw: 1, Ta: 0, f: 0, es: 0 });

type Parts = Pick<YearSurface, "evaporationFilm" | "airFilm" | "emission" | "sky">;

/** By the surface rule: its coefficient acts between water and air, in place of evaporation and radiation. */
const partsByRule = (rule: number, hours: number): Parts => ({
  evaporationFilm: new Float64Array(hours),
  airFilm: new Float64Array(hours).fill(rule),
  emission: new Float64Array(hours),
  sky: new Float64Array(hours),
});

/** Films and radiation. Reckons the sky anew when dew point or cloud change, the films when the day's wind or pressure do. */
function partsOf(pool: YearPool, weather: Weather, covered: Float64Array): Parts {
  const { hours, air, dewPoint, cloud, wind, pressure } = weather;
  const { cover } = pool;
  const cut = coverOf(cover.kind).evaporation;
  const parts = partsByRule(0, hours);
  const films = new Float64Array(HOURS_OF_DAY);
  const airFilms = new Float64Array(HOURS_OF_DAY);
  let sky = 0;
  for (let hour = 0; hour < hours; hour++) {
    const clock = hour % HOURS_OF_DAY;
    const dayBefore = hour - HOURS_OF_DAY;
    if (dayBefore < 0 || wind[hour] !== wind[dayBefore] || pressure[hour] !== pressure[dayBefore]) {
      const film = filmAt(pool, weather, hour);
      films[clock] = film;
      airFilms[clock] = airFilmAt(pool, weather, hour, film);
    }
    if (hour === 0 || dewPoint[hour] !== dewPoint[hour - 1] || cloud[hour] !== cloud[hour - 1])
      sky = skyAt(pool, weather, hour);
    const on = covered[clock] ?? 0;
    const open = 1 - on * cover.radiationCut;
    const Ta = air[hour] ?? 0;
    parts.evaporationFilm[hour] = (films[clock] ?? 0) * (1 - on * cut);
    parts.airFilm[hour] = (airFilms[clock] ?? 0) * (1 - on * cover.convectionCut);
    parts.emission[hour] = open * EMISSION;
    parts.sky[hour] = open * sky * Ta * Ta * Ta * Ta;
  }
  return parts;
}

/** What the losses of a pool need, hour by hour, in a year's weather. */
export function yearSurface(pool: YearPool, weather: Weather): YearSurface {
  const covered = coveredOfDay(pool);
  const { evaporationFilm, airFilm, emission, sky } =
    pool.rule === undefined ? partsOf(pool, weather, covered) : partsByRule(pool.rule, weather.hours);
  const [latentHeatAt0K, latentHeatSlope] = latentLine();
  const { air, mains, vapour } = weather;
  return {
    weather,
    air,
    mains,
    vapour,
    evaporationFilm,
    airFilm,
    emission,
    sky,
    sun: absorbedSun(pool, weather, covered),
    ground: (pool.ground.coefficient * groundArea.code({ A: pool.area, d: pool.depth })) / pool.area,
    groundTemperature: pool.ground.temperature,
    drawn: pool.water.drawn,
    rain: pool.water.rain,
    latentHeatAt0K,
    latentHeatSlope,
  };
}

/** J/(kg·K), of the water that replaces what was lost. */
export const MAKE_UP_HEAT = POOL_SPECIFIC_HEAT;
