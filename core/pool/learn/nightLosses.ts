/** What the relations of POOL.LOSSES give for the hours of a cooling test, without sun; and what the sky takes of them. */
import { dewPointOfAir } from "../../air/moistAir";
import type { ValuesOf } from "../../kernel/define/argument";
import type { Trace } from "../../kernel/define/steps";
import { skyEmissivity, skyRadiation, skyTemperature } from "../losses/equations";
import type { NIGHT_ENTRIES } from "../losses/inputs";
import { lossesByParts } from "../losses/losses";
import { checkLossInputs, poolStateOf, type LossInputs } from "../losses/poolState";

export type NightInputs = ValuesOf<typeof NIGHT_ENTRIES> & { readonly area: number; readonly depth: number };

interface Means {
  readonly meanWater: number;
  readonly meanAir: number;
}

/** Coefficient against the air, W/(m²·K); undefined without humidity and wind, or without a cover for covered rows. */
export function coefficientByRelations({ meanWater, meanAir }: Means, inputs: NightInputs, covered: boolean) {
  const { humidity, windAtWater, windAt10m, area, depth, ...rest } = inputs;
  if (humidity === undefined || (windAtWater ?? windAt10m) === undefined) return undefined;
  if (covered && rest.cover === "none") return undefined;
  if (Math.abs(meanWater - meanAir) < 0.5) return undefined;
  const all = {
    ...rest,
    humidity,
    windAtWater,
    windAt10m,
    poolArea: area,
    poolTemperature: meanWater,
    airTemperature: meanAir,
    waterDepth: depth,
    lossMethod: "parts",
    surfaceCoefficient: 0,
    sunOnWater: 0,
    shading: 0,
    groundCoefficient: 0,
    groundTemperature: meanAir,
    mainsTemperature: meanAir,
    splash: 0,
    backwash: 0,
    leak: 0,
    rain: 0,
    cover: covered ? rest.cover : "none",
    coverHours: covered ? 86_400 : 0,
    coverSunShare: 0,
  } satisfies LossInputs;
  checkLossInputs(all);
  return lossesByParts(poolStateOf(all)).net / (area * (meanWater - meanAir));
}

/** Sky and radiation of an open surface in the hours of a test: K and W/m²; undefined without humidity. */
export function skyOf({ meanWater: Tw, meanAir: Ta }: Means, inputs: NightInputs, trace: Trace) {
  const { humidity, cloud: N, hiddenSky: f } = inputs;
  if (humidity === undefined) return undefined;
  const es = trace.step(skyEmissivity, { Td: dewPointOfAir(Ta, humidity, trace), N });
  return {
    temperature: trace.step(skyTemperature, { Ta, f, es }),
    loss: trace.step(skyRadiation, { A: 1, Tw, Ta, f, es }),
  };
}
