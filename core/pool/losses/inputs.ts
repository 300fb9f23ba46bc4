/** The input block of the pool's losses. */
import { block, choice, quantity } from "../../kernel/define/argument";
import { AIR_TEMPERATURE, ALTITUDE, HUMIDITY, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { ACTIVITY, COEFFICIENT, METHOD, SHELTER, SURFACE, WATER, WATER_DEPTH, WIND_AT_WATER } from "../args";
import { COVER_KINDS } from "../data/covers";

const share = (about: string) => quantity("fraction", about, { from: 0, to: 1 });

/** A water volume lost or gained in a day. */
const daily = (about: string) =>
  quantity("pool volume", `${about}, a day`, { from: 0, to: us("pool volume", 1e7) }).default(0);

const airTemperatureOf = (args: Readonly<Record<string, unknown>>): number => args["airTemperature"] as number;

const HALF_DAY = us("time", 12);
const DAY = us("time", 24);

const LOSS_ENTRIES = {
  poolArea: SURFACE,
  poolTemperature: WATER,
  airTemperature: AIR_TEMPERATURE,
  humidity: HUMIDITY,
  windAtWater: WIND_AT_WATER.describedAs("wind at the water; replaces wind at 10 m and shelter").optional(),
  windAt10m: quantity("wind speed", "wind of a weather station, at 10 m", {
    from: 0,
    to: us("wind speed", 150),
  }).optional(),
  shelter: SHELTER.default("suburban"),
  cloud: quantity("number", "opaque cloud, tenths of the sky", { from: 0, to: 10 }).default(0),
  hiddenSky: share("share of the sky hidden by trees and buildings").default(0),
  altitude: ALTITUDE.default(0),
  lossMethod: choice("PoolLossMethod", ["parts", "surface rule"], "how the surface's loss is found").default("parts"),
  surfaceCoefficient: COEFFICIENT,
  evaporationMethod: METHOD,
  activity: ACTIVITY,
  convectionMethod: choice(
    "PoolConvection",
    ["by evaporation", "by wind"],
    "convection from the evaporation's film (Bowen), or 3.1 + 4.1 v",
  ).default("by evaporation"),
  sunOnWater: quantity("daily sun", "sun on a level surface in a day", {
    from: 0,
    to: us("daily sun", 4000),
  }).default(0),
  sunShare: share("share of the sun that an open pool absorbs").default(0.8),
  shading: share("share of the sun shaded").default(0),
  waterDepth: WATER_DEPTH.describedAs("mean depth of the water").default(us("depth", 5)),
  groundCoefficient: quantity("film coefficient", "loss through walls and floor; 0 in dry soil", {
    from: 0,
    to: us("film coefficient", 20),
  }).default(0),
  groundTemperature: AIR_TEMPERATURE.describedAs("temperature of the ground").default({
    words: "as air temperature",
    from: airTemperatureOf,
  }),
  mainsTemperature: WATER_TEMPERATURE.describedAs("temperature of the make-up water").default({
    words: "as air temperature, from 32 °F up",
    from: (args) => Math.max(airTemperatureOf(args), us("temperature", 32)),
  }),
  splash: daily("water splashed out"),
  backwash: daily("water of filter backwash"),
  leak: daily("water leaked"),
  rain: quantity("rain depth", "rain on the pool, a day", { from: 0, to: us("rain depth", 40) }).default(0),
  cover: choice("PoolCover", COVER_KINDS, "cover of the pool").default("none"),
  coverHours: quantity("time", "time covered, a day", { from: 0, to: DAY }).default({
    words: "12 h with a cover, else 0",
    from: (args) => (args["cover"] === "none" ? 0 : HALF_DAY),
  }),
  coveredShare: share("share of the surface under the cover").default(1),
  coverSunShare: share("share of the day's sun that falls on the cover").default({
    words: "night covered first: hours over 12, of 12",
    from: (args) => Math.max(0, (args["coverHours"] as number) - HALF_DAY) / HALF_DAY,
  }),
  coverConvectionCut: share("cut of convection under the cover").default(0),
  coverRadiationCut: share("cut of radiation under the cover").default(0),
} as const;

export const LOSS_INPUTS = block(LOSS_ENTRIES, "block of labels, values and units; NOTE.INPUTS spills the empty one");

/** What the losses of a night need besides the pool and its log; without humidity and wind they aren't reckoned. */
export const NIGHT_ENTRIES = {
  humidity: HUMIDITY.optional(),
  windAtWater: LOSS_ENTRIES.windAtWater,
  windAt10m: LOSS_ENTRIES.windAt10m,
  shelter: LOSS_ENTRIES.shelter,
  cloud: LOSS_ENTRIES.cloud,
  hiddenSky: LOSS_ENTRIES.hiddenSky,
  altitude: LOSS_ENTRIES.altitude,
  evaporationMethod: METHOD,
  activity: ACTIVITY,
  convectionMethod: LOSS_ENTRIES.convectionMethod,
  sunShare: LOSS_ENTRIES.sunShare,
  cover: LOSS_ENTRIES.cover.describedAs("cover of the covered rows"),
  coveredShare: LOSS_ENTRIES.coveredShare,
  coverConvectionCut: LOSS_ENTRIES.coverConvectionCut,
  coverRadiationCut: LOSS_ENTRIES.coverRadiationCut,
} as const;
