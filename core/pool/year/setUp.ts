/** From the input block of the year to its models. */
import { mend } from "../../kernel/fault";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { us } from "../../kernel/quantity";
import { told } from "../../numeric/told";
import { POOL_DENSITY, POOL_HEAT_CAPACITY } from "../equations";
import type { YearInputs } from "./inputs";
import { checkActivity } from "../evaporation/evaporation";
import {
  coolingAtDesign,
  compressorOf,
  onWaterCurve,
  tooSmall,
  yearMachine,
  type Machine,
  type ExchangerWords,
  type OnWater,
  type Rating,
  type Sides,
  type WaterExchanger,
} from "./machine";
import type { PoolRun, Pump } from "./state";
import type { Weather, YearPool } from "./surface";
import { totalOf } from "./lossesAt";
import { scheduleOf } from "./schedule";
import { checkTank, needed } from "./tankSetUp";
import type { Site } from "./weather";

export type { YearInputs };

const DAY = 86_400;
const SUPERHEAT = us("temperature difference", 10);
const SUBCOOLING = us("temperature difference", 10);
const USUAL_RISE = us("temperature difference", 10);
const LEAST_SPAN = us("temperature difference", 5);

/** Refuses entries that don't go together. */
export const checkYearInputs = (inputs: YearInputs): void => {
  checkActivity(inputs.evaporationMethod, inputs.activity);
  if (inputs.lossMethod === "surface rule" && inputs.cover !== "none")
    throw mend('inputs: cover: the surface rule knows no cover: use loss method "parts"');
  if (inputs.ratedCooling !== undefined && inputs.ratedPower === undefined)
    throw mend('inputs: the label "rated power" is missing or blank: it is needed with rated cooling');
  if (inputs.ratedCooling === undefined && inputs.exchangerUA !== undefined)
    throw mend('inputs: the label "rated cooling" is missing or blank: an exchanger needs an air conditioner');
  if (inputs.secondSink !== "none") checkTank(inputs);
  const span = inputs.designOutdoor - inputs.balanceOutdoor;
  if (span < LEAST_SPAN - 1e-9)
    throw mend(
      `inputs: design outdoor must lie at least ${told("temperature difference", LEAST_SPAN)} above balance outdoor, got ${told("temperature", inputs.designOutdoor)} over ${told("temperature", inputs.balanceOutdoor)}`,
    );
  if (inputs.backUpSource !== "none" && inputs.highLimit < inputs.setPoint)
    throw mend(
      `inputs: high limit must be at least the set point, ${told("temperature", inputs.setPoint)}, got ${told("temperature", inputs.highLimit)}`,
    );
};

export const siteOf = (inputs: YearInputs): Site => ({
  latitude: inputs.latitude === undefined ? undefined : (inputs.latitude * Math.PI) / 180,
  altitude: inputs.altitude,
  shelter: inputs.shelter,
  windAtWater: inputs.windAtWater,
  mains: inputs.mainsTemperature,
});

const meanOf = (values: Float64Array): number => totalOf(values) / values.length;

export const yearPoolOf = (inputs: YearInputs, weather: Weather): YearPool => {
  const perArea = POOL_DENSITY / DAY / inputs.poolArea;
  const rain = (inputs.rain * POOL_DENSITY) / DAY;
  const coverHours = inputs.coverHours ?? DAY / 2;
  return {
    surface: {
      method: inputs.evaporationMethod,
      activity: inputs.activity,
      convection: inputs.convectionMethod,
      hiddenSky: inputs.hiddenSky,
    },
    area: inputs.poolArea,
    depth: inputs.waterDepth,
    rule: inputs.lossMethod === "surface rule" ? inputs.surfaceCoefficient : undefined,
    cover: {
      kind: inputs.cover,
      hours: coverHours / 3600,
      covered: inputs.coveredShare,
      convectionCut: inputs.coverConvectionCut,
      radiationCut: inputs.coverRadiationCut,
    },
    ground: {
      coefficient: inputs.groundCoefficient,
      temperature: inputs.groundTemperature ?? meanOf(weather.air),
    },
    water: { drawn: (inputs.splash + inputs.backwash + inputs.leak) * perArea - rain, rain },
    sunShare: inputs.sunShare,
    shading: inputs.shading,
  };
};

export const pumpOf = (inputs: YearInputs): Pump => ({
  schedule: scheduleOf(inputs.pumpStart, inputs.pumpHours / 3600),
  power: inputs.pumpPower,
  heat: inputs.pumpPower * inputs.pumpHeatShare,
});

export const ratingOf = (inputs: YearInputs): Rating | undefined => {
  const { ratedCooling, ratedPower } = inputs;
  if (ratedCooling === undefined || ratedPower === undefined) return undefined;
  const fans = inputs.outdoorFan + inputs.indoorFan;
  if (!(fans < ratedPower))
    throw mend(
      `inputs: both fans must take less than rated power, ${told("electric power", ratedPower)}, got ${told("electric power", fans)}`,
    );
  return {
    cooling: ratedCooling,
    power: ratedPower,
    outdoorFan: inputs.outdoorFan,
    indoorFan: inputs.indoorFan,
    refrigerant: inputs.refrigerant,
    evaporating: inputs.ratedEvaporating,
    condensing: inputs.ratedCondensing,
    wetBulb: inputs.indoorWetBulb,
    superheat: SUPERHEAT,
    subcooling: SUBCOOLING,
  };
};

/** Water that the rated heat would warm by the usual rise, m³/s. */
const usualFlow = (rating: Rating): number =>
  (rating.cooling + rating.power - rating.outdoorFan) /
  (densityOfWater.code({ T: 300 }) * heatCapacityOfWater.code({ T: 300 }) * USUAL_RISE);

/** Comfort machines are cut out by pressure near here. */
const GREATEST_CONDENSING = us("temperature", 155);

const onWaterOf = (rating: Rating, exchanger: WaterExchanger, warmest: number, named: ExchangerWords): OnWater => {
  const curve = onWaterCurve(compressorOf(rating), exchanger, rating, warmest, named);
  const highest = curve.condensing.at(-1) ?? 0;
  if (highest > GREATEST_CONDENSING)
    throw tooSmall(named, highest, `above ${told("temperature", GREATEST_CONDENSING)}`);
  return curve;
};

/** The machine on the pool and on the tank; depends on the rating, the exchangers and their limits only. */
export const sidesOf = (inputs: YearInputs): Sides => {
  const rating = ratingOf(inputs);
  if (!rating) return { onPool: undefined, onTank: undefined };
  const { exchangerUA, leastCondensing } = inputs;
  const usual = usualFlow(rating);
  const onPool =
    exchangerUA === undefined
      ? undefined
      : onWaterOf(
          rating,
          { ua: exchangerUA, waterFlow: inputs.waterFlow ?? usual, leastCondensing },
          Math.max(inputs.highLimit, inputs.setPoint) + 1,
          { ua: "exchanger UA", flow: "water flow", limit: "high limit", limitIs: inputs.highLimit },
        );
  if (inputs.secondSink === "none") return { onPool, onTank: undefined };
  const onTank = onWaterOf(
    rating,
    { ua: needed(inputs, "tankUA"), waterFlow: inputs.tankFlow ?? usual, leastCondensing },
    inputs.tankLimit,
    { ua: "tank UA", flow: "tank flow", limit: "tank limit", limitIs: inputs.tankLimit },
  );
  return { onPool, onTank };
};

export const machineThroughYear = (inputs: YearInputs, weather: Weather, sides: Sides): Machine | undefined => {
  const rating = ratingOf(inputs);
  if (!rating) return undefined;
  const load = {
    balance: inputs.balanceOutdoor,
    designOutdoor: inputs.designOutdoor,
    design: inputs.designLoad ?? coolingAtDesign(rating, inputs.designOutdoor),
    aperture: inputs.solarAperture,
  };
  return yearMachine(rating, load, inputs.cyclingLoss, weather, sides);
};

/** Whether each month, 0 to 11, lies in the season, which may run through New Year. */
export const seasonOf = ({ seasonStart, seasonEnd }: YearInputs): readonly boolean[] =>
  Array.from({ length: 12 }, (_, i) => {
    const month = i + 1;
    return seasonStart <= seasonEnd
      ? month >= seasonStart && month <= seasonEnd
      : month >= seasonStart || month <= seasonEnd;
  });

/** J/(m²·K) of the water below a square metre of surface. */
export const capacityOf = ({ waterDepth }: YearInputs): number => POOL_HEAT_CAPACITY * waterDepth;

export const backUpOf = (inputs: YearInputs): NonNullable<PoolRun["backUp"]> => ({
  set: inputs.setPoint,
  most: inputs.backUpCapacity === undefined ? Number.MAX_VALUE : inputs.backUpCapacity / inputs.poolArea,
  months: seasonOf(inputs),
});
