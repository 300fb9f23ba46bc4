/** The input block of the pool's year. */
import {
  block,
  choice,
  quantity,
  several,
  sheet,
  yesNo,
  type KindByChoice,
  type ValueOf,
} from "../../kernel/define/argument";
import { AIR_TEMPERATURE, ALTITUDE, HEAT_RATE, POOL_WATER, WATER_FLOW } from "../../kernel/define/glossary";
import { si, us, type KindName } from "../../kernel/values/quantity";
import { SOURCE_NAMES, sourceNamed } from "../../cost/data/heatSources";
import { CONDENSING_TEMPERATURE, EVAPORATING_TEMPERATURE } from "../../cycle/args";
import { STAGE_ENTRIES } from "../../cycle/machine/inputs";
import { CONDUCTANCE } from "../../exchanger/args";
import { REFRIGERANT } from "../../refrigerant/args";
import { ACTIVITY, COEFFICIENT, SHELTER, SURFACE, WATER_DEPTH, WIND_AT_WATER } from "../args";
import { MOST_CLIMATE_CELLS } from "./climate";
import { COVER_KINDS } from "../data/covers";
import { PAD } from "./padInputs";

const degF = (value: number): number => us("temperature", value);

const share = (about: string) => quantity("fraction", about, { from: 0, to: 1 });

/** A water volume lost or gained in a day. */
const daily = (about: string) =>
  quantity("pool volume", `${about}, a day`, { from: 0, to: us("pool volume", 1e7) }).default(0);

const month = (about: string) => quantity("count", about, { from: 1, to: 12, whole: true });

/** The relations that know the wind: an outdoor year takes no indoor one. */
export const OUTDOOR_METHODS = ["Smith-Lof-Jones", "Carrier", "McMillan"] as const;

export const BACK_UP_SOURCES = ["none", ...SOURCE_NAMES] as const;

const priceBy = (source: string): KindByChoice => ({
  choice: source,
  kinds: Object.fromEntries(SOURCE_NAMES.map((name): [string, KindName] => [name, sourceNamed(name).price])),
});

const efficiency = () =>
  quantity("number", "heat on energy bought; left out: typical of the source", { above: 0, to: 60 }).optional();

const power = (about: string) => quantity("electric power", about, { from: 0, usual: [0, si("electric power", 20)] });

const POOL = {
  poolArea: SURFACE,
  waterDepth: WATER_DEPTH.describedAs("mean depth of the water").default(us("depth", 5)),
  setPoint: POOL_WATER.describedAs("wanted temperature of the pool").default(degF(82)),
  seasonStart: month("first month of the season, 1 to 12").default(1),
  seasonEnd: month("last month of the season, 1 to 12").default(12),
  latitude: quantity("number", "latitude in degrees, south negative", { from: -66, to: 66 }).optional(),
  altitude: ALTITUDE.default(0),
  shelter: SHELTER.default("suburban"),
  windAtWater: WIND_AT_WATER.describedAs("wind at the water all year; replaces wind at 10 m and shelter").optional(),
  hiddenSky: share("share of the sky hidden by trees and buildings").default(0),
  lossMethod: choice("PoolLossMethod", ["parts", "surface rule"], "how the surface's loss is found").default("parts"),
  surfaceCoefficient: COEFFICIENT,
  evaporationMethod: choice("OutdoorEvaporation", OUTDOOR_METHODS, "relation of evaporation").default(
    "Smith-Lof-Jones",
  ),
  activity: ACTIVITY,
  convectionMethod: choice(
    "PoolConvection",
    ["by evaporation", "by wind"],
    "convection from the evaporation's film (Bowen), or 3.1 + 4.1 v",
  ).default("by evaporation"),
  sunShare: share("share of the sun that an open pool absorbs").default(0.8),
  shading: share("share of the sun shaded").default(0),
  groundCoefficient: quantity("film coefficient", "loss through walls and floor; 0 in dry soil", {
    from: 0,
    to: us("film coefficient", 20),
  }).default(0),
  groundTemperature: AIR_TEMPERATURE.describedAs("temperature of the ground; left out: the year's mean air").optional(),
  mainsTemperature: several(
    "temperature",
    "mains water: one value or 12 parted by ;, before a climate column",
    [1, 12],
    {
      from: degF(32),
      to: degF(120),
    },
  ).optional(),
  splash: daily("water splashed out"),
  backwash: daily("water of filter backwash"),
  leak: daily("water leaked"),
  rain: quantity("rain depth", "rain on the pool, a day", { from: 0, to: us("rain depth", 40) }).default(0),
  cover: choice("PoolCover", COVER_KINDS, "cover of the pool").default("none"),
  coverHours: quantity("time", "time covered, a day, about midnight; left out: 12 h with a cover", {
    from: 0,
    to: us("time", 24),
  }).optional(),
  coveredShare: share("share of the surface under the cover").default(1),
  coverConvectionCut: share("cut of convection under the cover").default(0),
  coverRadiationCut: share("cut of radiation under the cover").default(0),
} as const;

const PUMP = {
  pumpPower: power("electric power of the pool pump").default(0),
  pumpHeatShare: share("share of the pump's power that warms the water").default(0.5),
  pumpStart: quantity("number", "clock hour at which the pump starts", { from: 0, below: 24 }).default(8),
  pumpHours: quantity("time", "time the pump runs, a day", { from: 0, to: us("time", 24) }).default(us("time", 8)),
  pumpOnCall: yesNo("whether the air conditioner may start the pump outside its hours").default(true),
} as const;

const MACHINE = {
  ratedCooling: HEAT_RATE.describedAs("net cooling at the rating; left out: no air conditioner").optional(),
  ratedPower: quantity("electric power", "power of the whole machine at the rating", { above: 0 }).optional(),
  outdoorFan: power("power of the outdoor fan, off on the pool").default(0),
  indoorFan: power("power of the indoor fan").default(0),
  refrigerant: REFRIGERANT.default("R-410A"),
  ratedEvaporating: EVAPORATING_TEMPERATURE.describedAs("evaporating dew temperature at the rating").default(degF(45)),
  ratedCondensing: CONDENSING_TEMPERATURE.describedAs("condensing dew temperature at the rating").default(degF(115)),
  indoorWetBulb: quantity("temperature", "wet bulb of the air that enters the indoor coil", {
    from: degF(57),
    to: degF(72),
  }).default(degF(67)),
  balanceOutdoor: AIR_TEMPERATURE.describedAs("outdoor temperature below which nothing is cooled").default(degF(65)),
  designOutdoor: AIR_TEMPERATURE.describedAs("outdoor temperature of the design load").default(degF(95)),
  designLoad: HEAT_RATE.describedAs("load at design; left out: the machine's cooling there").optional(),
  solarAperture: quantity("area", "sun let in: load over sun on a level surface", { from: 0 }).default(0),
  cyclingLoss: quantity("fraction", "loss of starting and stopping (degradation coefficient)", {
    from: 0,
    to: 0.5,
  }).default(0.25),
} as const;

export const RECOVERY = {
  exchangerUA: CONDUCTANCE.describedAs("conductance of the pool exchanger; left out: no recovery").optional(),
  waterFlow: WATER_FLOW.describedAs("water through the exchanger; left out: rise of 10 °F at the rating").optional(),
  leastCondensing: CONDENSING_TEMPERATURE.describedAs("least condensing temperature, held by cutting the flow").default(
    degF(80),
  ),
  highLimit: POOL_WATER.describedAs("pool temperature at which the heat goes outdoors").default(degF(88)),
  deadBand: quantity("temperature difference", "fall below the limit before the pool takes heat again", {
    from: us("temperature difference", 0.1),
    to: us("temperature difference", 20),
  }).default(us("temperature difference", 1)),
  leastTime: quantity("minutes", "least time between two turns of the valve", {
    from: 0,
    to: us("minutes", 240),
  }).default(us("minutes", 10)),
} as const;

const MONEY = {
  backUpSource: choice("BackUpSource", BACK_UP_SOURCES, "back-up heater that holds the set point").default("none"),
  backUpCapacity: HEAT_RATE.describedAs("heat of the back-up heater; left out: as much as it takes").optional(),
  backUpEfficiency: efficiency(),
  backUpPrice: quantity(priceBy("backUpSource"), "price of what the back-up heater uses, by its selling unit", {
    from: 0,
  }).optional(),
  electricityPrice: quantity("price of electricity", "price of electricity", { from: 0 }).optional(),
} as const;

export const SECOND_SINKS = ["none", "preheat tank"] as const;
export const SINK_ORDERS = ["pool first", "tank first"] as const;

export const SECOND_SINK = {
  secondSink: choice("SecondSink", SECOND_SINKS, "what else takes the machine's heat").default("none"),
  sinkOrder: choice("SinkOrder", SINK_ORDERS, "which of pool and tank is served first").default("pool first"),
  hotWaterDraw: quantity("daily draw", "hot water drawn in a day", { above: 0 }).optional(),
  hotWater: quantity("temperature", "hot water behind the main heater", { from: degF(60), to: degF(200) }).default(
    degF(140),
  ),
  drawStart: quantity("number", "clock hour at which drawing begins", { from: 0, below: 24 }).default(6),
  drawHours: quantity("time", "time in which it is drawn, a day", {
    from: us("time", 1),
    to: us("time", 24),
  }).default(us("time", 16)),
  tankVolume: quantity("daily draw", "water in the preheat tank", { above: 0, to: us("daily draw", 1e5) }).optional(),
  tankUA: CONDUCTANCE.describedAs("conductance of the tank's exchanger (double wall)").optional(),
  tankFlow: WATER_FLOW.describedAs("water through it; left out: rise of 10 °F at the rating").optional(),
  tankLimit: quantity("temperature", "tank temperature at which it takes no more heat", {
    from: degF(50),
    to: degF(150),
  }).default(degF(110)),
  tankLoss: quantity("heat conductance", "loss of the tank for each degree; left out: by R-12.5", {
    from: 0,
  }).optional(),
  tankSurroundings: quantity("temperature", "air around the tank, indoors", {
    from: degF(32),
    to: degF(130),
  }).default(degF(70)),
  tankPumpPower: power("electric power of the tank's circulating pump").default(0),
  hotWaterSource: choice("BackUpSource", BACK_UP_SOURCES, "main heater of the hot water").default("none"),
  hotWaterEfficiency: efficiency(),
  hotWaterPrice: quantity(priceBy("hotWaterSource"), "price of what the main heater uses, by its selling unit", {
    from: 0,
  }).optional(),
} as const;

export const YEAR_ENTRIES = {
  ...POOL,
  ...PUMP,
  ...MACHINE,
  ...RECOVERY,
  ...MONEY,
  ...SECOND_SINK,
  ...PAD,
  ...STAGE_ENTRIES,
} as const;

export const YEAR_INPUTS = block(YEAR_ENTRIES, "block of labels, values and units; NOTE.INPUTS spills the empty one");

export type YearInputs = ValueOf<typeof YEAR_INPUTS>;

export const CLIMATE = sheet(
  "12 rows (months) or 8,760 rows (hours) of weather, below a header row",
  MOST_CLIMATE_CELLS,
);
