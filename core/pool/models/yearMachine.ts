/**
 * The air conditioner through a year: its load and what it does outdoors by the hour, and on the pool by the water.
 * Outdoors it follows the published curve of the outdoor temperature. On the pool the outdoor coil takes no part, so a curve
 * over the water's temperature is all there is: exact balances of compressor, evaporator and exchanger, joined monotonely.
 */
import { RATED_OUTDOOR, RATED_WET_BULB, atOutdoor } from "../../aircon/models/atOutdoor";
import { pull } from "../../exchanger/balanceEquations";
import { machineOf, runningAt, type Machine as Compressor } from "../../exchanger/models/machine";
import { waterRate } from "../../exchanger/models/zones";
import { mend, outside } from "../../kernel/fault";
import { cubicAt, monotoneCubic, type MonotoneCubic } from "../../numeric/monotoneCubic";
import { told } from "../../numeric/told";
import { refrigerant } from "../../refrigerant/models/refrigerant";
import type { Weather } from "./yearSurface";

export interface OnPool {
  /** Net cooling and power of the machine without its outdoor fan, W, by the pool's temperature, K. */
  readonly cooling: (water: number) => number;
  readonly power: (water: number) => number;
  /** The balances it is made of: pool temperature and condensing temperature, K; net cooling and power, W. */
  readonly water: readonly number[];
  readonly condensing: readonly number[];
}

export interface Machine {
  /** By hour, W. */
  readonly load: Float64Array;
  readonly outdoorCooling: Float64Array;
  readonly outdoorPower: Float64Array;
  /** W */
  readonly outdoorFan: number;
  /** Loss of starting and stopping: 1 − this × (1 − part load) of the full-load efficiency. */
  readonly cyclingLoss: number;
  readonly onPool: OnPool | undefined;
}

/** The machine at its rating: net cooling and power of all of it with its fans, W; dew temperatures, K. */
export interface Rating {
  readonly cooling: number;
  readonly power: number;
  readonly outdoorFan: number;
  readonly indoorFan: number;
  readonly refrigerant: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly wetBulb: number;
  readonly superheat: number;
  readonly subcooling: number;
}

const VOLUMETRIC = 0.95;
const [LEAST_EFFICIENCY, MOST_EFFICIENCY] = [0.3, 0.95];

/** The compressor whose isentropic efficiency gives the rating's own power. */
export const compressorOf = (rating: Rating): Compressor => {
  const fluid = refrigerant(rating.refrigerant);
  const power = rating.power - rating.outdoorFan - rating.indoorFan;
  const given = {
    fluid,
    cooling: rating.cooling + rating.indoorFan,
    evaporating: rating.evaporating,
    condensing: rating.condensing,
    wetBulb: RATED_WET_BULB,
    superheat: rating.superheat,
    subcooling: rating.subcooling,
    efficiency: 1,
    volumetricEfficiency: VOLUMETRIC,
  };
  const ideal = machineOf(given);
  const efficiency = (given.cooling / ideal.rated.cop / power) * 1;
  if (!(efficiency >= LEAST_EFFICIENCY && efficiency <= MOST_EFFICIENCY))
    throw mend(
      `inputs: rated power doesn't fit rated cooling between ${told("temperature", rating.evaporating)} and ${told("temperature", rating.condensing)}: the compressor's efficiency would be ${efficiency.toFixed(2)}, expected ${LEAST_EFFICIENCY} to ${MOST_EFFICIENCY}; check cooling, power and both fans`,
    );
  return machineOf({ ...given, efficiency });
};

/** An exchanger on the pool's water: W/K and m³/s; condensing is held at `leastCondensing` (K) or above. */
export interface PoolExchanger {
  readonly ua: number;
  readonly waterFlow: number;
  readonly leastCondensing: number;
}

// Bound here once: read from another module it would be asked for many thousand times a year.
const readCubic = cubicAt;

/** Balances on the pool side, evenly spread over condensing temperature. */
const BALANCES = 13;

/** Span of pool temperatures that the curve must cover, K. */
const COLDEST_POOL = 273.15;

/**
 * Each balance is found by its condensing temperature: the heat rejected there needs the water so much colder. Below the
 * water at which condensing would fall under its least, the flow is cut so that it holds.
 */
export const onPoolCurve = (
  compressor: Compressor,
  exchanger: PoolExchanger,
  rating: Rating,
  warmest: number,
  balances = BALANCES,
): OnPool => {
  const C = waterRate(exchanger.waterFlow, 300);
  const taken = pull.code({ C, UA: exchanger.ua });
  let guess = rating.evaporating;
  const at = (condensing: number) => {
    const running = runningAt(compressor, condensing, rating.wetBulb, guess);
    guess = running.evaporating;
    return { ...running, water: running.meanCondensing - running.rejected / taken };
  };
  const first = at(Math.max(exchanger.leastCondensing, rating.evaporating + 5));
  const rise = first.condensing - first.water;
  const last = warmest + 1.05 * rise + 1;
  if (last > compressor.rating.fluid.warmestSaturated - 1)
    throw outside(
      `inputs: with water of ${told("temperature", warmest)} condensing would reach ${told("temperature", last)}, beyond ${rating.refrigerant}: exchanger UA or water flow is too small`,
    );
  const span = Math.max(2, last - first.condensing);
  const found = [
    first,
    ...Array.from({ length: balances - 1 }, (_, i) => at(first.condensing + (span * (i + 1)) / (balances - 1))),
  ];
  const water = found.map((each) => each.water);
  const curve = (of: (running: (typeof found)[number]) => number): MonotoneCubic => monotoneCubic(water, found.map(of));
  const cooling = curve((running) => running.cooling - rating.indoorFan);
  const power = curve((running) => running.power + rating.indoorFan);
  const [low, high] = [water[0] ?? COLDEST_POOL, water.at(-1) ?? warmest];
  const within = (T: number): number => (T < low ? low : T > high ? high : T);
  return {
    cooling: (T) => readCubic(cooling, within(T)),
    power: (T) => readCubic(power, within(T)),
    water,
    condensing: found.map((each) => each.condensing),
  };
};

/** The building's load: none at `balance`, `design` W at `designOutdoor`, a straight line between and on. */
export interface Load {
  readonly balance: number;
  readonly designOutdoor: number;
  readonly design: number;
  /** m²: heat of the sun let in, W, over the sun on a level surface, W/m². */
  readonly aperture: number;
}

/** Outdoor temperatures of the published curve, K; beyond them its ends hold. */
const [CURVE_FROM, CURVE_TO] = [291.483, 319.261];
const CURVE_STEP = 0.25;

interface Table {
  readonly cooling: Float64Array;
  readonly power: Float64Array;
}

const outdoorTable = (rating: Rating): Table => {
  const points = Math.ceil((CURVE_TO - CURVE_FROM) / CURVE_STEP) + 1;
  const cooling = new Float64Array(points);
  const power = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    const running = atOutdoor(rating, Math.min(CURVE_TO, CURVE_FROM + i * CURVE_STEP), rating.wetBulb);
    cooling[i] = running.cooling;
    power[i] = running.power;
  }
  return { cooling, power };
};

/** The machine's net cooling at the design outdoor temperature, W: what the load is there unless told. */
export const coolingAtDesign = (rating: Rating, designOutdoor: number): number =>
  atOutdoor(rating, Math.min(CURVE_TO, Math.max(CURVE_FROM, designOutdoor)), rating.wetBulb).cooling;

export const yearMachine = (
  rating: Rating,
  load: Load,
  cyclingLoss: number,
  weather: Weather,
  onPool: OnPool | undefined,
): Machine => {
  const table = outdoorTable(rating);
  const slope = load.design / (load.designOutdoor - load.balance);
  const array = (): Float64Array => new Float64Array(weather.hours);
  const hours = { load: array(), outdoorCooling: array(), outdoorPower: array() };
  for (let i = 0; i < weather.hours; i++) {
    const T = weather.air[i] ?? 0;
    hours.load[i] = Math.max(0, slope * (T - load.balance) + load.aperture * (weather.sun[i] ?? 0));
    const x = (Math.min(CURVE_TO, Math.max(CURVE_FROM, T)) - CURVE_FROM) / CURVE_STEP;
    const at = Math.min(table.cooling.length - 2, Math.floor(x));
    const t = x - at;
    hours.outdoorCooling[i] = (1 - t) * (table.cooling[at] ?? 0) + t * (table.cooling[at + 1] ?? 0);
    hours.outdoorPower[i] = (1 - t) * (table.power[at] ?? 0) + t * (table.power[at + 1] ?? 0);
  }
  return { ...hours, outdoorFan: rating.outdoorFan, cyclingLoss, onPool };
};

export { RATED_OUTDOOR };
