/** From the input block to the state that the losses are reckoned in. */
import { dewPointOfAir, vapourPressureOfAir } from "../../air/models/moistAir";
import type { ValueOf } from "../../kernel/argument";
import { mend } from "../../kernel/fault";
import { standardAtmosphere } from "../../kernel/pressureBasis";
import { silent, type Trace } from "../../kernel/steps";
import { POOL_DENSITY } from "../equations";
import type { LOSS_INPUTS } from "./inputs";
import { checkActivity } from "../evaporation/evaporation";
import type { PoolState } from "./losses";
import { windAtWaterBy } from "./wind";

export type LossInputs = ValueOf<typeof LOSS_INPUTS>;

const DAY = 86_400;

/** Refuses entries that don't go together. */
export const checkLossInputs = (inputs: LossInputs): void => {
  if (inputs.lossMethod === "surface rule") {
    if (inputs.cover !== "none")
      throw mend(
        'cover: the surface rule knows no cover, got a cover: use loss method "parts", or a smaller coefficient',
      );
    return;
  }
  checkActivity(inputs.evaporationMethod, inputs.activity);
  if (inputs.windAtWater === undefined && inputs.windAt10m === undefined)
    throw mend('inputs: one of the labels "wind at water" and "wind at 10 m" is needed, both are missing or blank');
};

const windOf = (inputs: LossInputs, trace: Trace): number => {
  if (inputs.windAtWater !== undefined) return inputs.windAtWater;
  return inputs.windAt10m === undefined ? 0 : windAtWaterBy(inputs.windAt10m, inputs.shelter, trace);
};

const weatherOf = (inputs: LossInputs, trace: Trace): PoolState["weather"] => {
  const { airTemperature: air, humidity } = inputs;
  const byParts = inputs.lossMethod === "parts";
  return {
    area: inputs.poolArea,
    water: inputs.poolTemperature,
    air,
    vapourPressure: byParts ? vapourPressureOfAir(air, humidity, trace) : 0,
    dewPoint: byParts ? dewPointOfAir(air, humidity, trace) : air,
    wind: windOf(inputs, byParts ? trace : silent),
    cloud: inputs.cloud,
    pressure: byParts ? trace.step(standardAtmosphere, { z: inputs.altitude }) : standardAtmosphere.code({ z: 0 }),
  };
};

/** kg/s of a volume a day. */
const massFlow = (volume: number): number => (volume * POOL_DENSITY) / DAY;

export const poolStateOf = (inputs: LossInputs, trace: Trace = silent): PoolState => ({
  weather: weatherOf(inputs, trace),
  surface: {
    method: inputs.evaporationMethod,
    activity: inputs.activity,
    convection: inputs.convectionMethod,
    hiddenSky: inputs.hiddenSky,
  },
  cover: {
    kind: inputs.cover,
    time: inputs.coverHours / DAY,
    sunTime: inputs.coverSunShare,
    covered: inputs.coveredShare,
    convectionCut: inputs.coverConvectionCut,
    radiationCut: inputs.coverRadiationCut,
  },
  ground: {
    coefficient: inputs.groundCoefficient,
    temperature: inputs.groundTemperature,
    depth: inputs.waterDepth,
  },
  water: {
    splash: massFlow(inputs.splash),
    backwash: massFlow(inputs.backwash),
    leak: massFlow(inputs.leak),
    rain: massFlow(inputs.rain * inputs.poolArea),
    mains: inputs.mainsTemperature,
  },
  sun: { daily: inputs.sunOnWater, absorbed: inputs.sunShare, shaded: inputs.shading },
});
