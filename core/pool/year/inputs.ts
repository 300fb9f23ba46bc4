/** The input block of the pool's year. */
import { block, choice, quantity, several, sheet, yesNo, type KindByChoice, type ValueOf } from "../../kernel/argument";
import { AIR_TEMPERATURE, ALTITUDE, HEAT_RATE, POOL_WATER, WATER_FLOW } from "../../kernel/glossary";
import { si, us, type KindName } from "../../kernel/quantity";
import { SOURCE_NAMES, sourceNamed } from "../../cost/data/heatSources";
import { CONDENSING, EVAPORATING } from "../../cycle/args";
import { CONDUCTANCE } from "../../exchanger/args";
import { REFRIGERANT } from "../../refrigerant/args";
import { ACTIVITY, COEFFICIENT, SHELTER, SURFACE, WATER_DEPTH, WIND_AT_WATER } from "../args";
import { MOST_CLIMATE_CELLS } from "./climate";
import { COVER_KINDS } from "../data/covers";

const degF = (value: number): number => us("temperature", value);

const share = (about: string) => quantity("fraction", about, { from: 0, to: 1 });

/** A water volume lost or gained in a day. */
const daily = (about: string) =>
  quantity("pool volume", `${about}, a day`, { from: 0, to: us("pool volume", 1e7) }).otherwise(0);

const month = (about: string) => quantity("count", about, { from: 1, to: 12, whole: true });

/** The relations that know the wind: an outdoor year takes no indoor one. */
export const OUTDOOR_METHODS = ["Smith-Lof-Jones", "Carrier", "McMillan"] as const;

export const BACK_UP_SOURCES = ["none", ...SOURCE_NAMES] as const;

const priceBy = (source: string): KindByChoice => ({
  choice: source,
  kinds: Object.fromEntries(SOURCE_NAMES.map((name): [string, KindName] => [name, sourceNamed(name).price])),
});

const efficiency = () =>
  quantity("number", "heat on energy bought; left out: typical of the source", { above: 0, to: 60 }).optionally();

const power = (about: string) => quantity("electric power", about, { from: 0, usual: [0, si("electric power", 20)] });

const POOL = {
  poolArea: SURFACE,
  waterDepth: WATER_DEPTH.saying("mean depth of the water").otherwise(us("depth", 5)),
  setPoint: POOL_WATER.saying("wanted temperature of the pool").otherwise(degF(82)),
  seasonStart: month("first month of the season, 1 to 12").otherwise(1),
  seasonEnd: month("last month of the season, 1 to 12").otherwise(12),
  latitude: quantity("number", "latitude in degrees, south negative", { from: -66, to: 66 }).optionally(),
  altitude: ALTITUDE.otherwise(0),
  shelter: SHELTER.otherwise("suburban"),
  windAtWater: WIND_AT_WATER.saying("wind at the water all year; replaces wind at 10 m and shelter").optionally(),
  hiddenSky: share("share of the sky hidden by trees and buildings").otherwise(0),
  lossMethod: choice("PoolLossMethod", ["parts", "surface rule"], "how the surface's loss is found").otherwise("parts"),
  surfaceCoefficient: COEFFICIENT,
  evaporationMethod: choice("OutdoorEvaporation", OUTDOOR_METHODS, "relation of evaporation").otherwise(
    "Smith-Lof-Jones",
  ),
  activity: ACTIVITY,
  convectionMethod: choice(
    "PoolConvection",
    ["by evaporation", "by wind"],
    "convection from the evaporation's film (Bowen), or 3.1 + 4.1 v",
  ).otherwise("by evaporation"),
  sunShare: share("share of the sun that an open pool absorbs").otherwise(0.8),
  shading: share("share of the sun shaded").otherwise(0),
  groundCoefficient: quantity("film coefficient", "loss through walls and floor; 0 in dry soil", {
    from: 0,
    to: us("film coefficient", 20),
  }).otherwise(0),
  groundTemperature: AIR_TEMPERATURE.saying("temperature of the ground; left out: the year's mean air").optionally(),
  mainsTemperature: several(
    "temperature",
    "mains water: one value or 12 parted by ;, before a climate column",
    [1, 12],
    {
      from: degF(32),
      to: degF(120),
    },
  ).optionally(),
  splash: daily("water splashed out"),
  backwash: daily("water of filter backwash"),
  leak: daily("water leaked"),
  rain: quantity("rain depth", "rain on the pool, a day", { from: 0, to: us("rain depth", 40) }).otherwise(0),
  cover: choice("PoolCover", COVER_KINDS, "cover of the pool").otherwise("none"),
  coverHours: quantity("time", "time covered, a day, about midnight; left out: 12 h with a cover", {
    from: 0,
    to: us("time", 24),
  }).optionally(),
  coveredShare: share("share of the surface under the cover").otherwise(1),
  coverConvectionCut: share("cut of convection under the cover").otherwise(0),
  coverRadiationCut: share("cut of radiation under the cover").otherwise(0),
} as const;

const PUMP = {
  pumpPower: power("electric power of the pool pump").otherwise(0),
  pumpHeatShare: share("share of the pump's power that warms the water").otherwise(0.5),
  pumpStart: quantity("number", "clock hour at which the pump starts", { from: 0, below: 24 }).otherwise(8),
  pumpHours: quantity("time", "time the pump runs, a day", { from: 0, to: us("time", 24) }).otherwise(us("time", 8)),
  pumpOnCall: yesNo("whether the air conditioner may start the pump outside its hours").otherwise(true),
} as const;

const MACHINE = {
  ratedCooling: HEAT_RATE.saying("net cooling at the rating; left out: no air conditioner").optionally(),
  ratedPower: quantity("electric power", "power of the whole machine at the rating", { above: 0 }).optionally(),
  outdoorFan: power("power of the outdoor fan, off on the pool").otherwise(0),
  indoorFan: power("power of the indoor fan").otherwise(0),
  refrigerant: REFRIGERANT.otherwise("R-410A"),
  ratedEvaporating: EVAPORATING.saying("evaporating dew temperature at the rating").otherwise(degF(45)),
  ratedCondensing: CONDENSING.saying("condensing dew temperature at the rating").otherwise(degF(115)),
  indoorWetBulb: quantity("temperature", "wet bulb of the air that enters the indoor coil", {
    from: degF(57),
    to: degF(72),
  }).otherwise(degF(67)),
  balanceOutdoor: AIR_TEMPERATURE.saying("outdoor temperature below which nothing is cooled").otherwise(degF(65)),
  designOutdoor: AIR_TEMPERATURE.saying("outdoor temperature of the design load").otherwise(degF(95)),
  designLoad: HEAT_RATE.saying("load at design; left out: the machine's cooling there").optionally(),
  solarAperture: quantity("area", "sun let in: load over sun on a level surface", { from: 0 }).otherwise(0),
  cyclingLoss: quantity("fraction", "loss of starting and stopping (degradation coefficient)", {
    from: 0,
    to: 0.5,
  }).otherwise(0.25),
} as const;

const RECOVERY = {
  exchangerUA: CONDUCTANCE.saying("conductance of the pool exchanger; left out: no recovery").optionally(),
  waterFlow: WATER_FLOW.saying("water through the exchanger; left out: rise of 10 °F at the rating").optionally(),
  leastCondensing: CONDENSING.saying("least condensing temperature, held by cutting the flow").otherwise(degF(80)),
  highLimit: POOL_WATER.saying("pool temperature at which the heat goes outdoors").otherwise(degF(88)),
  deadBand: quantity("temperature difference", "fall below the limit before the pool takes heat again", {
    from: us("temperature difference", 0.1),
    to: us("temperature difference", 20),
  }).otherwise(us("temperature difference", 1)),
  leastTime: quantity("minutes", "least time between two turns of the valve", {
    from: 0,
    to: us("minutes", 240),
  }).otherwise(us("minutes", 10)),
} as const;

const MONEY = {
  backUpSource: choice("BackUpSource", BACK_UP_SOURCES, "back-up heater that holds the set point").otherwise("none"),
  backUpCapacity: HEAT_RATE.saying("heat of the back-up heater; left out: as much as it takes").optionally(),
  backUpEfficiency: efficiency(),
  backUpPrice: quantity(priceBy("backUpSource"), "price of what the back-up heater uses, by its selling unit", {
    from: 0,
  }).optionally(),
  electricityPrice: quantity("price of electricity", "price of electricity", { from: 0 }).optionally(),
} as const;

export const SECOND_SINKS = ["none", "preheat tank"] as const;
export const SINK_ORDERS = ["pool first", "tank first"] as const;

const SECOND_SINK = {
  secondSink: choice("SecondSink", SECOND_SINKS, "what else takes the machine's heat").otherwise("none"),
  sinkOrder: choice("SinkOrder", SINK_ORDERS, "which of pool and tank is served first").otherwise("pool first"),
  hotWaterDraw: quantity("daily draw", "hot water drawn in a day", { above: 0 }).optionally(),
  hotWater: quantity("temperature", "hot water behind the main heater", { from: degF(60), to: degF(200) }).otherwise(
    degF(140),
  ),
  drawStart: quantity("number", "clock hour at which drawing begins", { from: 0, below: 24 }).otherwise(6),
  drawHours: quantity("time", "time in which it is drawn, a day", {
    from: us("time", 1),
    to: us("time", 24),
  }).otherwise(us("time", 16)),
  tankVolume: quantity("daily draw", "water in the preheat tank", { above: 0, to: us("daily draw", 1e5) }).optionally(),
  tankUA: CONDUCTANCE.saying("conductance of the tank's exchanger (double wall)").optionally(),
  tankFlow: WATER_FLOW.saying("water through it; left out: rise of 10 °F at the rating").optionally(),
  tankLimit: quantity("temperature", "tank temperature at which it takes no more heat", {
    from: degF(50),
    to: degF(150),
  }).otherwise(degF(110)),
  tankLoss: quantity("heat conductance", "loss of the tank for each degree; left out: by R-12.5", {
    from: 0,
  }).optionally(),
  tankSurroundings: quantity("temperature", "air around the tank, indoors", {
    from: degF(32),
    to: degF(130),
  }).otherwise(degF(70)),
  tankPumpPower: power("electric power of the tank's circulating pump").otherwise(0),
  hotWaterSource: choice("BackUpSource", BACK_UP_SOURCES, "main heater of the hot water").otherwise("none"),
  hotWaterEfficiency: efficiency(),
  hotWaterPrice: quantity(priceBy("hotWaterSource"), "price of what the main heater uses, by its selling unit", {
    from: 0,
  }).optionally(),
} as const;

export const YEAR_ENTRIES = { ...POOL, ...PUMP, ...MACHINE, ...RECOVERY, ...MONEY, ...SECOND_SINK } as const;

export const YEAR_INPUTS = block(YEAR_ENTRIES, "block of labels, values and units; NOTE.INPUTS spills the empty one");

export type YearInputs = ValueOf<typeof YEAR_INPUTS>;

export const CLIMATE = sheet(
  "12 rows (months) or 8,760 rows (hours) of weather, below a header row",
  MOST_CLIMATE_CELLS,
);
