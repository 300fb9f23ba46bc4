/** A condensing refrigerant matched to water along its enthalpy: zones, mean differences, pinch. */
import { sumOf } from "../../numeric/series";
import { notAvailable } from "../../kernel/values/fault";
import { bracketedRoot } from "../../numeric/root";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { Fluid } from "../../refrigerant/refrigerant";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import type { Direction } from "../args";
import { logMeanDifference } from "../surface/equations";
import { condensingCurve, type CondensingCurve, type Inlet } from "./condensingCurve";

export interface ZonesInput {
  readonly fluid: Fluid;
  /** One of the two: W, kg/s. */
  readonly heat?: number | undefined;
  readonly massFlow?: number | undefined;
  /** The gas as it enters, at a condensing temperature: a cycle's discharge moves with it. */
  readonly inlet: (condensing: number) => Inlet;
  /** Dew temperature, K. */
  readonly condensing: number;
  /** K */
  readonly subcooling: number;
  /** m³/s */
  readonly waterFlow: number;
  /** K */
  readonly enteringWater: number;
  readonly direction: Direction;
}

export const ZONE_NAMES = ["desuperheating", "condensing", "subcooling"] as const;
export type ZoneName = (typeof ZONE_NAMES)[number];

/** A zone, or all of them: W, K, W/K. "In" and "out" as each stream passes. */
export interface Zone {
  readonly duty: number;
  readonly refrigerantIn: number;
  readonly refrigerantOut: number;
  readonly waterIn: number;
  readonly waterOut: number;
  readonly meanDifference: number;
  readonly ua: number;
  readonly least: Pinch;
}

export interface Pinch {
  /** K */
  readonly difference: number;
  readonly place: string;
}

export interface StreamMatch {
  readonly curve: CondensingCurve;
  /** kg/s */
  readonly massFlow: number;
  /** Capacity rate of the water, W/K. */
  readonly capacityRate: number;
  /** Water at each point of the curve, K. */
  readonly water: Float64Array;
  readonly zones: Readonly<Partial<Record<ZoneName, Zone>>>;
  readonly total: Zone;
}

/** Capacity rate at the entering temperature, W/K. */
export const waterRate = (flow: number, T: number): number =>
  flow * densityOfWater.code({ T }) * heatCapacityOfWater.code({ T });

const at = (values: Float64Array, i: number): number => values[i] ?? Number.NaN;

/** The name of a point's place in the trade. */
const placeOf = ({ dewAt, bubbleAt, enthalpies }: CondensingCurve, i: number): string => {
  if (i === dewAt) return "dew point";
  if (i === bubbleAt) return "bubble point";
  if (i === 0) return "refrigerant inlet";
  if (i === enthalpies.length - 1) return "refrigerant outlet";
  if (i < dewAt) return "within desuperheating";
  return i < bubbleAt ? "within condensing" : "within subcooling";
};

interface Streams {
  readonly curve: CondensingCurve;
  readonly massFlow: number;
  readonly capacityRate: number;
  readonly water: Float64Array;
}

/** Water temperature at each point of the curve. */
const besideWater = (input: ZonesInput, condensing: number): Streams => {
  const curve = condensingCurve(input.fluid, condensing, input.subcooling, input.inlet(condensing));
  const { enthalpies: h } = curve;
  const last = h.length - 1;
  const massFlow = input.massFlow ?? (input.heat ?? 0) / (at(h, 0) - at(h, last));
  const capacityRate = waterRate(input.waterFlow, input.enteringWater);
  const start = input.direction === "counterflow" ? at(h, last) : at(h, 0);
  const water = h.map((each) => input.enteringWater + (massFlow * Math.abs(each - start)) / capacityRate);
  return { curve, massFlow, capacityRate, water };
};

/** The least difference between two points of the curve. */
const leastOf = ({ curve, water }: Streams, from: number, to: number): Pinch => {
  let least = from;
  const difference = (i: number): number => at(curve.temperatures, i) - at(water, i);
  for (let i = from + 1; i <= to; i++) if (difference(i) < difference(least)) least = i;
  return { difference: difference(least), place: placeOf(curve, least) };
};

const whole = (streams: Streams): Pinch => leastOf(streams, 0, streams.water.length - 1);

/** The dew temperature at which the streams just touch, K; undefined if they cross at any below the critical point. */
const pinchPoint = (input: ZonesInput): number | undefined => {
  const margin = (T: number): number => whole(besideWater(input, T)).difference;
  const { warmestSaturated } = input.fluid;
  for (let low = input.condensing, width = 4; low < warmestSaturated; width *= 2) {
    const high = Math.min(low + width, warmestSaturated - 0.5);
    if (!(high > low)) return undefined;
    try {
      if (margin(high) > 0) return bracketedRoot(margin, low, high, { tolerance: 1e-4, most: 40 }).x;
    } catch {
      return undefined; // the cycle or the gas leaves its range first
    }
    low = high;
  }
  return undefined;
};

const refuse = (input: ZonesInput, { difference, place }: Pinch): never => {
  const works = pinchPoint(input);
  const advice =
    works === undefined
      ? "no condensing temperature within the refrigerant's range would separate them; use more water or less heat"
      : `they would just touch at ${quantityMark("temperature", works)} condensing; go above it, or use more water`;
  throw notAvailable(
    `temperatures cross at the ${place}: the water would be ${quantityMark("temperature difference", -difference)} warmer than the refrigerant at ${quantityMark("temperature", input.condensing)} condensing; ${advice}`,
  );
};

/** A zone between two points, summed over its slices. */
const zoneBetween = (streams: Streams, from: number, to: number, direction: Direction): Zone => {
  const { curve, massFlow, water } = streams;
  const { enthalpies: h, temperatures: T } = curve;
  let ua = 0;
  for (let i = from; i < to; i++) {
    const dT1 = at(T, i) - at(water, i);
    const dT2 = at(T, i + 1) - at(water, i + 1);
    ua += (massFlow * (at(h, i) - at(h, i + 1))) / logMeanDifference.code({ dT1, dT2 });
  }
  const duty = massFlow * (at(h, from) - at(h, to));
  const [waterIn, waterOut] = direction === "counterflow" ? [to, from] : [from, to];
  return {
    duty,
    refrigerantIn: at(T, from),
    refrigerantOut: at(T, to),
    waterIn: at(water, waterIn),
    waterOut: at(water, waterOut),
    meanDifference: duty / ua,
    ua,
    least: leastOf(streams, from, to),
  };
};

/**
 * Matches both streams. Refuses curves that cross or touch, naming the place and the condensing temperature at which
 * they would just touch.
 */
export const matchStreams = (input: ZonesInput): StreamMatch => {
  const streams = besideWater(input, input.condensing);
  const pinch = whole(streams);
  return pinch.difference > 0 ? zoned(input, streams, pinch) : refuse(input, pinch);
};

/** Matches both streams; undefined where the curves cross or touch. */
export const tryMatchStreams = (input: ZonesInput): StreamMatch | undefined => {
  const streams = besideWater(input, input.condensing);
  const pinch = whole(streams);
  return pinch.difference > 0 ? zoned(input, streams, pinch) : undefined;
};

const zoned = (input: ZonesInput, streams: Streams, pinch: Pinch): StreamMatch => {
  const { dewAt, bubbleAt } = streams.curve;
  const last = streams.water.length - 1;
  const between = (from: number, to: number): Zone | undefined =>
    from === to ? undefined : zoneBetween(streams, from, to, input.direction);
  const desuperheating = between(0, dewAt);
  const condensing = between(dewAt, bubbleAt);
  const subcooling = between(bubbleAt, last);
  const ua = sumOf([desuperheating, condensing, subcooling], (zone) => zone?.ua ?? 0);
  const all = zoneBetween(streams, 0, last, input.direction);
  return {
    ...streams,
    zones: {
      ...(desuperheating && { desuperheating }),
      ...(condensing && { condensing }),
      ...(subcooling && { subcooling }),
    },
    total: { ...all, ua, meanDifference: all.duty / ua, least: pinch },
  };
};
