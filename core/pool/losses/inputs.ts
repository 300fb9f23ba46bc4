/** The input block of the pool's losses. */
import { block, choice, quantity } from "../../kernel/argument";
import { AIR_TEMPERATURE, ALTITUDE, HUMIDITY, WATER_TEMPERATURE } from "../../kernel/glossary";
import { us } from "../../kernel/quantity";
import { ACTIVITY, COEFFICIENT, METHOD, SHELTER, SURFACE, WATER, WATER_DEPTH, WIND_AT_WATER } from "../args";
import { COVER_KINDS } from "../data/covers";

const share = (about: string) => quantity("fraction", about, { from: 0, to: 1 });

/** A water volume lost or gained in a day. */
const daily = (about: string) =>
  quantity("pool volume", `${about}, a day`, { from: 0, to: us("pool volume", 1e7) }).otherwise(0);

const airTemperatureOf = (args: Readonly<Record<string, unknown>>): number => args["airTemperature"] as number;

const HALF_DAY = us("time", 12);
const DAY = us("time", 24);

export const LOSS_INPUTS = block(
  {
    poolArea: SURFACE,
    poolTemperature: WATER,
    airTemperature: AIR_TEMPERATURE,
    humidity: HUMIDITY,
    windAtWater: WIND_AT_WATER.saying("wind at the water; replaces wind at 10 m and shelter").optionally(),
    windAt10m: quantity("wind speed", "wind of a weather station, at 10 m", {
      from: 0,
      to: us("wind speed", 150),
    }).optionally(),
    shelter: SHELTER.otherwise("suburban"),
    cloud: quantity("number", "opaque cloud, tenths of the sky", { from: 0, to: 10 }).otherwise(0),
    hiddenSky: share("share of the sky hidden by trees and buildings").otherwise(0),
    altitude: ALTITUDE.otherwise(0),
    lossMethod: choice("PoolLossMethod", ["parts", "surface rule"], "how the surface's loss is found").otherwise(
      "parts",
    ),
    surfaceCoefficient: COEFFICIENT,
    evaporationMethod: METHOD,
    activity: ACTIVITY,
    convectionMethod: choice(
      "PoolConvection",
      ["by evaporation", "by wind"],
      "convection from the evaporation's film (Bowen), or 3.1 + 4.1 v",
    ).otherwise("by evaporation"),
    sunOnWater: quantity("daily sun", "sun on a level surface in a day", {
      from: 0,
      to: us("daily sun", 4000),
    }).otherwise(0),
    sunShare: share("share of the sun that an open pool absorbs").otherwise(0.8),
    shading: share("share of the sun shaded").otherwise(0),
    waterDepth: WATER_DEPTH.saying("mean depth of the water").otherwise(us("depth", 5)),
    groundCoefficient: quantity("film coefficient", "loss through walls and floor; 0 in dry soil", {
      from: 0,
      to: us("film coefficient", 20),
    }).otherwise(0),
    groundTemperature: AIR_TEMPERATURE.saying("temperature of the ground").otherwise({
      says: "as air temperature",
      from: airTemperatureOf,
    }),
    mainsTemperature: WATER_TEMPERATURE.saying("temperature of the make-up water").otherwise({
      says: "as air temperature, from 32 °F up",
      from: (args) => Math.max(airTemperatureOf(args), us("temperature", 32)),
    }),
    splash: daily("water splashed out"),
    backwash: daily("water of filter backwash"),
    leak: daily("water leaked"),
    rain: quantity("rain depth", "rain on the pool, a day", { from: 0, to: us("rain depth", 40) }).otherwise(0),
    cover: choice("PoolCover", COVER_KINDS, "cover of the pool").otherwise("none"),
    coverHours: quantity("time", "time covered, a day", { from: 0, to: DAY }).otherwise({
      says: "12 h with a cover, else 0",
      from: (args) => (args["cover"] === "none" ? 0 : HALF_DAY),
    }),
    coveredShare: share("share of the surface under the cover").otherwise(1),
    coverSunShare: share("share of the day's sun that falls on the cover").otherwise({
      says: "night covered first: hours over 12, of 12",
      from: (args) => Math.max(0, (args["coverHours"] as number) - HALF_DAY) / HALF_DAY,
    }),
    coverConvectionCut: share("cut of convection under the cover").otherwise(0),
    coverRadiationCut: share("cut of radiation under the cover").otherwise(0),
  },
  "block of labels, values and units; NOTE.INPUTS spills the empty one",
);
