/**
 * The air conditioner through a year: its load and what it does outdoors by the hour, and on the pool by the water.
 * Outdoors it follows the published curve of the outdoor temperature. On the pool the outdoor coil takes no part, so a curve
 * over the water's temperature is all there is: exact balances of compressor, evaporator and exchanger, joined monotonely.
 */
import { RATED_WET_BULB, atOutdoor } from "../../aircon/models/atOutdoor";
import { pull } from "../../exchanger/balanceEquations";
import { machineOf, runningAt, type Machine as Compressor } from "../../exchanger/models/machine";
import { waterRate } from "../../exchanger/models/zones";
import { mend, outside } from "../../kernel/fault";
import { cubicAt, monotoneCubic, type MonotoneCubic } from "../../numeric/monotoneCubic";
import { told } from "../../numeric/told";
import { refrigerant } from "../../refrigerant/models/refrigerant";
import type { Weather } from "./surface";

/** The machine on water that takes all its heat. */
export interface OnWater {
  /** Net cooling and power of the machine without its outdoor fan, W, by the water's temperature, K. */
  readonly cooling: (water: number) => number;
  readonly power: (water: number) => number;
  /** The same as numbers for `readCurve`. */
  readonly table: Float64Array;
  /** The balances it is made of: water's temperature and condensing temperature, K. */
  readonly water: readonly number[];
  readonly condensing: readonly number[];
}

/** Places in the machine's record of an hour, W: load; net cooling and power on the outdoor coil. */
export const MACHINE_RECORD = { load: 0, cooling: 1, power: 2 } as const;
export const MACHINE_WIDTH = 3;

export interface Machine {
  /** Cooling load by hour, W. */
  readonly load: Float64Array;
  /** The record of all hours. */
  readonly hours: Float64Array;
  /** W */
  readonly outdoorFan: number;
  /** Loss of starting and stopping: 1 − this × (1 − part load) of the full-load efficiency. */
  readonly cyclingLoss: number;
  readonly onPool: OnWater | undefined;
  readonly onTank: OnWater | undefined;
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

/** An exchanger on water: W/K and m³/s; condensing is held at `leastCondensing` (K) or above. */
export interface WaterExchanger {
  readonly ua: number;
  readonly waterFlow: number;
  readonly leastCondensing: number;
}

/** Balances on the water, evenly spread over condensing temperature. */
const BALANCES = 13;

/** Span of water temperatures that the curve must cover, K. */
const COLDEST_WATER = 273.15;

/** First temperature and intervals per kelvin; then cooling and power by turns. */
const TABLE_HEAD = 2;
/** K: straight lines between are within 1e-6 of the curve. */
const TABLE_STEP = 0.05;

const tableOf = (cooling: MonotoneCubic, power: MonotoneCubic, low: number, high: number): Float64Array => {
  const intervals = Math.max(1, Math.ceil((high - low) / TABLE_STEP));
  const step = (high - low) / intervals;
  const table = new Float64Array(TABLE_HEAD + 2 * (intervals + 1));
  table[0] = low;
  table[1] = 1 / step;
  for (let i = 0; i <= intervals; i++) {
    table[TABLE_HEAD + 2 * i] = cubicAt(cooling, low + i * step);
    table[TABLE_HEAD + 2 * i + 1] = cubicAt(power, low + i * step);
  }
  return table;
};

/** Cooling (`of` 0) or power (1), W, at a water temperature, K; beyond the table its ends hold. */
export const readCurve = (table: Float64Array, of: 0 | 1, water: number): number => {
  const last = (table.length - TABLE_HEAD) / 2 - 2;
  const x = (water - (table[0] ?? 0)) * (table[1] ?? 0);
  const held = x > 0 ? x : 0;
  const i = held < last ? Math.floor(held) : last;
  const t = held - i < 1 ? held - i : 1;
  const at = TABLE_HEAD + 2 * i + of;
  return (1 - t) * (table[at] ?? 0) + t * (table[at + 2] ?? 0);
};

/** The labels of an exchanger and of its water's limit, K, for messages. */
export interface ExchangerWords {
  readonly ua: string;
  readonly flow: string;
  readonly limit: string;
  readonly limitIs: number;
}

/** Refuses an exchanger that is too small: condensing would reach so much, K, beyond what may be. */
export const tooSmall = ({ ua, flow, limit, limitIs }: ExchangerWords, reached: number, beyond: string): Error =>
  outside(
    `inputs: with water at ${limit}, ${told("temperature", limitIs)}, condensing would reach ${told("temperature", reached)}, ${beyond}: ${ua} or ${flow} is too small for this machine, or ${limit} too high`,
  );

/**
 * Each balance is found by its condensing temperature: the heat rejected there needs the water so much colder. Below the
 * water at which condensing would fall under its least, the flow is cut so that it holds.
 */
export const onWaterCurve = (
  compressor: Compressor,
  exchanger: WaterExchanger,
  rating: Rating,
  warmest: number,
  named: ExchangerWords,
  balances = BALANCES,
): OnWater => {
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
  if (last > compressor.rating.fluid.warmestSaturated - 1) throw tooSmall(named, last, `beyond ${rating.refrigerant}`);
  const span = Math.max(2, last - first.condensing);
  const found = [
    first,
    ...Array.from({ length: balances - 1 }, (_, i) => at(first.condensing + (span * (i + 1)) / (balances - 1))),
  ];
  const water = found.map((each) => each.water);
  const curve = (of: (running: (typeof found)[number]) => number): MonotoneCubic => monotoneCubic(water, found.map(of));
  const cooling = curve((running) => running.cooling - rating.indoorFan);
  const power = curve((running) => running.power + rating.indoorFan);
  const table = tableOf(cooling, power, water[0] ?? COLDEST_WATER, water.at(-1) ?? warmest);
  return {
    cooling: (T) => readCurve(table, 0, T),
    power: (T) => readCurve(table, 1, T),
    table,
    water,
    condensing: found.map((each) => each.condensing),
  };
};

/** The share of a step that the machine runs for a load, with the loss of starting and stopping. */
export const runShare = (load: number, cooling: number, cyclingLoss: number): number => {
  if (load >= cooling) return 1;
  const part = load / cooling;
  return part / (1 - cyclingLoss * (1 - part));
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

/** What the machine gives its heat to besides the outdoor coil. */
export interface Sides {
  readonly onPool: OnWater | undefined;
  readonly onTank: OnWater | undefined;
}

export const yearMachine = (
  rating: Rating,
  load: Load,
  cyclingLoss: number,
  weather: Weather,
  { onPool, onTank }: Sides,
): Machine => {
  const table = outdoorTable(rating);
  const slope = load.design / (load.designOutdoor - load.balance);
  const loads = new Float64Array(weather.hours);
  const hours = new Float64Array(MACHINE_WIDTH * weather.hours);
  for (let i = 0; i < weather.hours; i++) {
    const T = weather.air[i] ?? 0;
    const wanted = Math.max(0, slope * (T - load.balance) + load.aperture * (weather.sun[i] ?? 0));
    const x = (Math.min(CURVE_TO, Math.max(CURVE_FROM, T)) - CURVE_FROM) / CURVE_STEP;
    const at = Math.min(table.cooling.length - 2, Math.floor(x));
    const t = x - at;
    const record = i * MACHINE_WIDTH;
    loads[i] = wanted;
    hours[record + MACHINE_RECORD.load] = wanted;
    hours[record + MACHINE_RECORD.cooling] = (1 - t) * (table.cooling[at] ?? 0) + t * (table.cooling[at + 1] ?? 0);
    hours[record + MACHINE_RECORD.power] = (1 - t) * (table.power[at] ?? 0) + t * (table.power[at + 1] ?? 0);
  }
  return { load: loads, hours, outdoorFan: rating.outdoorFan, cyclingLoss, onPool, onTank };
};
