/** From the input block of the year to its air conditioner. */
import { mend } from "../../kernel/fault";
import { us } from "../../kernel/quantity";
import { told } from "../../numeric/told";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import type { YearInputs } from "./inputs";
import { coolingAtDesign, yearMachine, type Machine, type WaterCurves } from "./machine";
import { needed } from "./tankSetUp";
import {
  compressorOf,
  onWaterCurve,
  tooSmall,
  type ExchangerWords,
  type Rating,
  type WaterCurve,
  type WaterExchanger,
} from "./waterCurve";
import type { Weather } from "./weather";

/** Superheat and subcooling at the rating, and the rise of the exchangers' water, where they aren't given, K. */
const USUAL_DIFFERENCE = us("temperature difference", 10);

/** Comfort machines are cut out by pressure near here. */
const GREATEST_CONDENSING = us("temperature", 155);

function ratingOf(inputs: YearInputs): Rating | undefined {
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
    superheat: USUAL_DIFFERENCE,
    subcooling: USUAL_DIFFERENCE,
  };
}

/** Water that the rated heat would warm by the usual rise, m³/s. */
const usualFlow = (rating: Rating): number =>
  (rating.cooling + rating.power - rating.outdoorFan) /
  (densityOfWater.code({ T: 300 }) * heatCapacityOfWater.code({ T: 300 }) * USUAL_DIFFERENCE);

/** An exchanger, the warmest water that reaches it, K, and its labels. */
interface Exchanger extends WaterExchanger {
  readonly warmest: number;
  readonly named: ExchangerWords;
}

const poolExchanger = (inputs: YearInputs, ua: number, flow: number): Exchanger => ({
  ua,
  waterFlow: inputs.waterFlow ?? flow,
  leastCondensing: inputs.leastCondensing,
  warmest: Math.max(inputs.highLimit, inputs.setPoint) + 1,
  named: { ua: "exchanger UA", flow: "water flow", limit: "high limit", limitIs: inputs.highLimit },
});

const tankExchanger = (inputs: YearInputs, flow: number): Exchanger => ({
  ua: needed(inputs, "tankUA"),
  waterFlow: inputs.tankFlow ?? flow,
  leastCondensing: inputs.leastCondensing,
  warmest: inputs.tankLimit,
  named: { ua: "tank UA", flow: "tank flow", limit: "tank limit", limitIs: inputs.tankLimit },
});

/** The machine on pool and tank; depends on the rating, the exchangers and their limits only. */
function waterCurves(inputs: YearInputs, rating: Rating): WaterCurves {
  const { exchangerUA } = inputs;
  const flow = usualFlow(rating);
  let compressor: ReturnType<typeof compressorOf> | undefined;
  const curveOn = (exchanger: Exchanger): WaterCurve => {
    // Depends on the rating alone: one for pool and tank.
    compressor ??= compressorOf(rating);
    const { warmest, named } = exchanger;
    const curve = onWaterCurve(compressor, exchanger, rating, warmest, named);
    const highest = curve.condensing.at(-1) ?? 0;
    if (highest > GREATEST_CONDENSING)
      throw tooSmall(named, highest, `above ${told("temperature", GREATEST_CONDENSING)}`);
    return curve;
  };
  return {
    poolCurve: exchangerUA === undefined ? undefined : curveOn(poolExchanger(inputs, exchangerUA, flow)),
    tankCurve: inputs.secondSink === "none" ? undefined : curveOn(tankExchanger(inputs, flow)),
  };
}

/** The air conditioner through the year; undefined where none is rated. */
export function setUpMachine(inputs: YearInputs, weather: Weather): Machine | undefined {
  const rating = ratingOf(inputs);
  if (rating === undefined) return undefined;
  const curves = waterCurves(inputs, rating);
  const load = {
    balance: inputs.balanceOutdoor,
    designOutdoor: inputs.designOutdoor,
    design: inputs.designLoad ?? coolingAtDesign(rating, inputs.designOutdoor),
    aperture: inputs.solarAperture,
  };
  return yearMachine(rating, load, inputs.cyclingLoss, weather, curves);
}
