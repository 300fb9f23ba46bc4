/** The air conditioner through a year: its load and what it does outdoors by the hour, and on water by the water's temperature. */
import type { Stage } from "../../aircon/machine/stage";
import type { WaterCurve } from "./waterCurve";
import type { Weather } from "./weather";

/** A stage through the year. */
export interface LowStage {
  /** Net cooling and power on the outdoor coil by hour, W. */
  readonly outdoorCooling: Float64Array;
  readonly outdoorPower: Float64Array;
  /** W */
  readonly outdoorFan: number;
  /** On the pool, and on the preheat tank. */
  readonly poolCurve: WaterCurve | undefined;
  readonly tankCurve: WaterCurve | undefined;
}

/** The machine at full capacity, with its low stage or least speed. */
export interface Machine extends LowStage {
  /** Cooling load by hour, and at the design outdoor temperature without the sun let in, W. */
  readonly load: Float64Array;
  readonly designLoad: number;
  /** Loss of starting and stopping: 1 − this × (1 − part load) of the full-load efficiency. */
  readonly cyclingLoss: number;
  /** Outdoor temperatures that its data cover, K. */
  readonly covers: readonly [number, number];
  /** Undefined for a single speed. */
  readonly low: LowStage | undefined;
  /** Any speed between low and full, rather than two stages. */
  readonly variable: boolean;
  /** The intermediate speed: shares of the way from low to full, of cooling and of power. */
  readonly middle: readonly [number, number] | undefined;
  /** 1 in hours in which the low stage is locked out. */
  readonly locked: Uint8Array | undefined;
}

/** The building's load: none at `balance`, `design` W at `designOutdoor`, a straight line between and on. */
export interface Load {
  readonly balance: number;
  readonly designOutdoor: number;
  readonly design: number;
  /** m²: heat of the sun let in, W, over the sun on a level surface, W/m². */
  readonly aperture: number;
}

/** K: points of a curve outdoors lie at most this far apart. */
const CURVE_STEP = 0.25;

interface OutdoorCurve {
  readonly cooling: Float64Array;
  readonly power: Float64Array;
  readonly intervals: number;
}

/** Beyond a stage's data their ends hold, K. */
const withinData = ({ from, to }: Stage, outdoor: number): number => Math.min(to, Math.max(from, outdoor));

function outdoorCurve(stage: Stage): OutdoorCurve {
  const { from, to } = stage;
  const intervals = Math.ceil((to - from) / CURVE_STEP);
  const cooling = new Float64Array(intervals + 1);
  const power = new Float64Array(intervals + 1);
  for (let i = 0; i <= intervals; i++) {
    const running = stage.outdoors(from + ((to - from) * i) / intervals);
    cooling[i] = running.cooling;
    power[i] = running.power;
  }
  return { cooling, power, intervals };
}

/** The stage outdoors by the hour, W. */
function outdoorHours(stage: Stage, weather: Weather): Pick<LowStage, "outdoorCooling" | "outdoorPower"> {
  const { hours } = weather;
  const { cooling, power, intervals } = outdoorCurve(stage);
  const perKelvin = intervals / (stage.to - stage.from);
  const outdoorCooling = new Float64Array(hours);
  const outdoorPower = new Float64Array(hours);
  for (let hour = 0; hour < hours; hour++) {
    const outdoor = weather.air[hour] ?? 0;
    const x = (withinData(stage, outdoor) - stage.from) * perKelvin;
    const i = Math.min(intervals - 1, Math.floor(x));
    const t = x - i;
    outdoorCooling[hour] = (1 - t) * (cooling[i] ?? 0) + t * (cooling[i + 1] ?? 0);
    outdoorPower[hour] = (1 - t) * (power[i] ?? 0) + t * (power[i + 1] ?? 0);
  }
  return { outdoorCooling, outdoorPower };
}

/** The machine's net cooling at the design outdoor temperature, W: the load there unless it is given. */
export const coolingAtDesign = (stage: Stage, designOutdoor: number): number =>
  stage.outdoors(withinData(stage, designOutdoor)).cooling;

/** The machine on water: pool and tank. */
export type WaterCurves = Pick<LowStage, "poolCurve" | "tankCurve">;

/** A stage with its curves on water. */
export interface StageOnWater {
  readonly stage: Stage;
  readonly curves: WaterCurves;
}

const stageThrough = ({ stage, curves }: StageOnWater, weather: Weather): LowStage => ({
  ...outdoorHours(stage, weather),
  outdoorFan: stage.rating.outdoorFan,
  poolCurve: curves.poolCurve,
  tankCurve: curves.tankCurve,
});

/** How a staged machine meets part load. */
export interface Staging {
  readonly low: StageOnWater;
  readonly variable: boolean;
  readonly middle: readonly [number, number] | undefined;
  /** The low stage is locked out from here, K. */
  readonly lockout: number | undefined;
}

export function yearMachine(
  full: StageOnWater,
  staging: Staging | undefined,
  load: Load,
  cyclingLoss: number,
  weather: Weather,
): Machine {
  const { hours } = weather;
  const slope = load.design / (load.designOutdoor - load.balance);
  const loads = new Float64Array(hours);
  for (let hour = 0; hour < hours; hour++)
    loads[hour] = Math.max(
      0,
      slope * ((weather.air[hour] ?? 0) - load.balance) + load.aperture * (weather.sun[hour] ?? 0),
    );
  const { lockout } = staging ?? {};
  return {
    load: loads,
    designLoad: load.design,
    ...stageThrough(full, weather),
    cyclingLoss,
    covers: [full.stage.from, full.stage.to],
    low: staging && stageThrough(staging.low, weather),
    variable: staging?.variable === true,
    middle: staging?.middle,
    locked: lockout === undefined ? undefined : Uint8Array.from(weather.air, (T) => (T >= lockout ? 1 : 0)),
  };
}
