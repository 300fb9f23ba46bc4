/** The air conditioner through a year: its load and what it does outdoors by the hour, and on water by the water's temperature. */
import { performanceAtOutdoor } from "../../aircon/outdoorRating";
import type { WaterCurve, Rating } from "./waterCurve";
import type { Weather } from "./weather";

export interface Machine {
  /** Cooling load by hour, and at the design outdoor temperature without the sun let in, W. */
  readonly load: Float64Array;
  readonly designLoad: number;
  /** Net cooling and power on the outdoor coil by hour, W. */
  readonly outdoorCooling: Float64Array;
  readonly outdoorPower: Float64Array;
  /** W */
  readonly outdoorFan: number;
  /** Loss of starting and stopping: 1 − this × (1 − part load) of the full-load efficiency. */
  readonly cyclingLoss: number;
  /** The machine on the pool, and on the preheat tank. */
  readonly poolCurve: WaterCurve | undefined;
  readonly tankCurve: WaterCurve | undefined;
}

/** The share of a step that the machine runs for a load, with the loss of starting and stopping. */
export function runShareFor(load: number, cooling: number, cyclingLoss: number): number {
  if (load >= cooling) return 1;
  const part = load / cooling;
  return part / (1 - cyclingLoss * (1 - part));
}

/** The building's load: none at `balance`, `design` W at `designOutdoor`, a straight line between and on. */
export interface Load {
  readonly balance: number;
  readonly designOutdoor: number;
  readonly design: number;
  /** m²: heat of the sun let in, W, over the sun on a level surface, W/m². */
  readonly aperture: number;
}

/** Outdoor temperatures of the published curve, K; beyond them its ends hold. */
export const [CURVE_FROM, CURVE_TO] = [291.483, 319.261];
const CURVE_STEP = 0.25;

const withinCurve = (outdoor: number): number => Math.min(CURVE_TO, Math.max(CURVE_FROM, outdoor));

type OutdoorCurve = Readonly<Record<"cooling" | "power", Float64Array>>;

function outdoorCurve(rating: Rating): OutdoorCurve {
  const points = Math.ceil((CURVE_TO - CURVE_FROM) / CURVE_STEP) + 1;
  const cooling = new Float64Array(points);
  const power = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    const running = performanceAtOutdoor(rating, Math.min(CURVE_TO, CURVE_FROM + i * CURVE_STEP), rating.wetBulb);
    cooling[i] = running.cooling;
    power[i] = running.power;
  }
  return { cooling, power };
}

/** The machine's net cooling at the design outdoor temperature, W: the load there unless it is given. */
export const coolingAtDesign = (rating: Rating, designOutdoor: number): number =>
  performanceAtOutdoor(rating, withinCurve(designOutdoor), rating.wetBulb).cooling;

/** The machine on water: pool and tank. */
export type WaterCurves = Pick<Machine, "poolCurve" | "tankCurve">;

export function yearMachine(
  rating: Rating,
  load: Load,
  cyclingLoss: number,
  weather: Weather,
  { poolCurve, tankCurve }: WaterCurves,
): Machine {
  const { hours } = weather;
  const curve = outdoorCurve(rating);
  const slope = load.design / (load.designOutdoor - load.balance);
  const loads = new Float64Array(hours);
  const outdoorCooling = new Float64Array(hours);
  const outdoorPower = new Float64Array(hours);
  for (let hour = 0; hour < hours; hour++) {
    const outdoor = weather.air[hour] ?? 0;
    loads[hour] = Math.max(0, slope * (outdoor - load.balance) + load.aperture * (weather.sun[hour] ?? 0));
    const x = (withinCurve(outdoor) - CURVE_FROM) / CURVE_STEP;
    const i = Math.min(curve.cooling.length - 2, Math.floor(x));
    const t = x - i;
    outdoorCooling[hour] = (1 - t) * (curve.cooling[i] ?? 0) + t * (curve.cooling[i + 1] ?? 0);
    outdoorPower[hour] = (1 - t) * (curve.power[i] ?? 0) + t * (curve.power[i + 1] ?? 0);
  }
  const { outdoorFan } = rating;
  return {
    load: loads,
    designLoad: load.design,
    outdoorCooling,
    outdoorPower,
    outdoorFan,
    cyclingLoss,
    poolCurve,
    tankCurve,
  };
}
