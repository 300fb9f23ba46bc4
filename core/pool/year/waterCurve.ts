/**
 * The air conditioner on water that takes all its heat. The outdoor coil takes no part there, so a curve over the water's
 * temperature is all there is: exact balances of compressor, evaporator and exchanger, joined monotonely.
 */
import { RATED_WET_BULB } from "../../cycle/machine/outdoorRating";
import type { Rating } from "../../aircon/machine/stage";
import { effectiveConductance } from "../../exchanger/balance/equations";
import type { CoolingMachine as Compressor } from "../../exchanger/balance/compressor";
import { machineOf, machineState } from "../../exchanger/balance/machine";
import { waterRate } from "../../exchanger/zones/zones";
import { valueError, notAvailable } from "../../kernel/values/fault";
import { cubicAt, monotoneCubic, type MonotoneCubic } from "../../numeric/monotoneCubic";
import { quantityMark } from "../../kernel/values/quantityMark";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { FREEZING } from "../equations";

/** The machine at evenly spaced water temperatures, without its outdoor fan. */
export interface WaterCurve {
  /** First temperature, K, and intervals for each kelvin. */
  readonly coldest: number;
  readonly perKelvin: number;
  /** Net cooling and power, W. */
  readonly coolings: Float64Array;
  readonly powers: Float64Array;
  /** The balances that the curve joins: temperatures of the water and of condensing, K. */
  readonly water: readonly number[];
  readonly condensing: readonly number[];
  /** Heat capacity rate of the water, W/K. */
  readonly capacityRate: number;
}

/** An exchanger on water: W/K and m³/s; condensing is held at `leastCondensing` (K) or above. */
export interface WaterExchanger {
  readonly ua: number;
  readonly waterFlow: number;
  readonly leastCondensing: number;
}

/** The labels of an exchanger and of its water's limit, K, for messages. */
export interface ExchangerWords {
  readonly ua: string;
  readonly flow: string;
  readonly limit: string;
  readonly limitIs: number;
}

const VOLUMETRIC_EFFICIENCY = 0.95;
const [LEAST_EFFICIENCY, MOST_EFFICIENCY] = [0.3, 0.95];

/** The compressor whose isentropic efficiency gives the rating's own power. */
export function compressorOf(rating: Rating): Compressor {
  const power = rating.power - rating.outdoorFan - rating.indoorFan;
  const given = {
    fluid: loadRefrigerant(rating.refrigerant),
    cooling: rating.cooling + rating.indoorFan,
    evaporating: rating.evaporating,
    condensing: rating.condensing,
    wetBulb: RATED_WET_BULB,
    superheat: rating.superheat,
    subcooling: rating.subcooling,
    efficiency: 1,
    volumetricEfficiency: VOLUMETRIC_EFFICIENCY,
  };
  const ideal = machineOf(given);
  const efficiency = given.cooling / ideal.rated.cop / power;
  if (!(efficiency >= LEAST_EFFICIENCY && efficiency <= MOST_EFFICIENCY))
    throw valueError(
      `inputs: rated power doesn't fit rated cooling between ${quantityMark("temperature", rating.evaporating)} and ${quantityMark("temperature", rating.condensing)}: the compressor's efficiency would be ${efficiency.toFixed(2)}, expected ${LEAST_EFFICIENCY} to ${MOST_EFFICIENCY}; check cooling, power and both fans`,
    );
  return machineOf({ ...given, efficiency });
}

/** Refuses an exchanger that is too small: condensing would reach so much, K, beyond what may be. */
export const tooSmall = ({ ua, flow, limit, limitIs }: ExchangerWords, reached: number, beyond: string): Error =>
  notAvailable(
    `inputs: with water at ${limit}, ${quantityMark("temperature", limitIs)}, condensing would reach ${quantityMark("temperature", reached)}, ${beyond}: ${ua} or ${flow} is too small for this machine, or ${limit} too high`,
  );

/** Balances on the water, evenly spread over condensing temperature. */
const BALANCES = 13;

/** K: straight lines between the points are within 1e-6 of the curve. */
const SPACING = 0.05;

type Balances = Pick<WaterCurve, "water" | "condensing" | "capacityRate">;

/** The curve's points between the coldest and the warmest of the balances. */
export function evenlySpaced(
  cooling: MonotoneCubic,
  power: MonotoneCubic,
  balances: Balances,
  warmest: number,
): WaterCurve {
  const { water } = balances;
  const low = water[0] ?? FREEZING;
  const high = water.at(-1) ?? warmest;
  const intervals = Math.max(1, Math.ceil((high - low) / SPACING));
  const step = (high - low) / intervals;
  const coolings = new Float64Array(intervals + 1);
  const powers = new Float64Array(intervals + 1);
  for (let i = 0; i <= intervals; i++) {
    coolings[i] = cubicAt(cooling, low + i * step);
    powers[i] = cubicAt(power, low + i * step);
  }
  return { coldest: low, perKelvin: 1 / step, coolings, powers, ...balances };
}

/**
 * Finds each balance by its condensing temperature: the heat rejected there needs the water so much colder. Below the water
 * at which condensing would fall under its least, the flow is cut so that it holds.
 */
export function onWaterCurve(
  compressor: Compressor,
  exchanger: WaterExchanger,
  rating: Rating,
  warmest: number,
  named: ExchangerWords,
  balances = BALANCES,
): WaterCurve {
  const C = waterRate(exchanger.waterFlow, 300);
  const conductance = effectiveConductance.code({ C, UA: exchanger.ua });
  let guess = rating.evaporating;
  const balanceAt = (condensing: number) => {
    const running = machineState(compressor, condensing, rating.wetBulb, guess);
    guess = running.evaporating;
    return { ...running, water: running.meanCondensing - running.rejected / conductance };
  };
  const first = balanceAt(Math.max(exchanger.leastCondensing, rating.evaporating + 5));
  const rise = first.condensing - first.water;
  const last = warmest + 1.05 * rise + 1;
  if (last > compressor.rating.fluid.warmestSaturated - 1) throw tooSmall(named, last, `beyond ${rating.refrigerant}`);
  const span = Math.max(2, last - first.condensing);
  const found = [
    first,
    ...Array.from({ length: balances - 1 }, (_, i) => balanceAt(first.condensing + (span * (i + 1)) / (balances - 1))),
  ];
  const water = found.map((each) => each.water);
  const condensing = found.map((each) => each.condensing);
  const curve = (of: (running: (typeof found)[number]) => number): MonotoneCubic => monotoneCubic(water, found.map(of));
  const cooling = curve((running) => running.cooling - rating.indoorFan);
  const power = curve((running) => running.power + rating.indoorFan);
  return evenlySpaced(cooling, power, { water, condensing, capacityRate: C }, warmest);
}

/** A value between the curve's points; beyond the curve its ends hold. */
function valueAt(values: Float64Array, { coldest, perKelvin }: WaterCurve, water: number): number {
  const last = values.length - 2;
  const x = (water - coldest) * perKelvin;
  const held = x > 0 ? x : 0;
  const i = held < last ? Math.floor(held) : last;
  const t = held - i < 1 ? held - i : 1;
  return (1 - t) * (values[i] ?? 0) + t * (values[i + 1] ?? 0);
}

/** Net cooling at a water temperature (K), W. */
export const coolingAt = (curve: WaterCurve, water: number): number => valueAt(curve.coolings, curve, water);

/** Condensing dew temperature at a water temperature, K; held at its least below the curve. */
export function condensingAt({ water, condensing }: WaterCurve, T: number): number {
  const above = water.findIndex((each) => each > T);
  const i = above < 0 ? water.length - 1 : Math.max(1, above);
  const [low = 0, high = 1, from = 0, to = 0] = [water[i - 1], water[i], condensing[i - 1], condensing[i]];
  return from + (to - from) * Math.max(0, (T - low) / (high - low));
}

/** Temperature of the water that leaves the exchanger at full flow, K. */
export function leavingWaterAt(curve: WaterCurve, T: number): number {
  return T + (coolingAt(curve, T) + powerAt(curve, T)) / curve.capacityRate;
}

/** Power at a water temperature (K), W. */
export const powerAt = (curve: WaterCurve, water: number): number => valueAt(curve.powers, curve, water);
