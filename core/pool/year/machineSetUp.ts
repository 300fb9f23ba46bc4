/** From the input block of the year to its air conditioner. */
import { USUAL_DIFFERENCE, type Rating, type Stage } from "../../aircon/machine/stage";
import { middleOf, stagesOf } from "../../aircon/machine/stages";
import { checkStages } from "../../cycle/machine/description";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import type { YearInputs } from "./inputs";
import { coolingAtDesign, yearMachine, type Machine, type StageOnWater, type WaterCurves } from "./machine";
import { stageOnWater, type Exchanger } from "./stages";
import { needed } from "./tankSetUp";
import { tooSmall, type WaterCurve } from "./waterCurve";
import type { Weather } from "./weather";

/** Comfort machines are cut out by pressure near here. */
const GREATEST_CONDENSING = us("temperature", 155);

/** Water that the rated heat would warm by the usual rise, m³/s. */
const usualFlow = (rating: Rating): number =>
  (rating.cooling + rating.power - rating.outdoorFan) /
  (densityOfWater.code({ T: 300 }) * heatCapacityOfWater.code({ T: 300 }) * USUAL_DIFFERENCE);

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

/** A stage on pool and tank; depends on the rating, the exchangers and their limits only. */
function waterCurves(inputs: YearInputs, stage: Stage, flow: number): WaterCurves {
  const { exchangerUA } = inputs;
  const onWater = stageOnWater(stage);
  const curveOn = (exchanger: Exchanger): WaterCurve => {
    const curve = onWater(exchanger);
    const highest = curve.condensing.at(-1) ?? 0;
    if (highest > GREATEST_CONDENSING)
      throw tooSmall(exchanger.named, highest, `above ${quantityMark("temperature", GREATEST_CONDENSING)}`);
    return curve;
  };
  return {
    poolCurve: exchangerUA === undefined ? undefined : curveOn(poolExchanger(inputs, exchangerUA, flow)),
    tankCurve: inputs.secondSink === "none" ? undefined : curveOn(tankExchanger(inputs, flow)),
  };
}

/** The air conditioner through the year; undefined where none is given. */
export function setUpMachine(inputs: YearInputs, weather: Weather): Machine | undefined {
  checkStages(inputs, inputs.ratedCooling, inputs.ratedPower);
  const stages = stagesOf(inputs);
  if (stages === undefined) return undefined;
  const { full, low } = stages;
  const flow = usualFlow(full.rating);
  const onWater = (stage: Stage): StageOnWater => ({ stage, curves: waterCurves(inputs, stage, flow) });
  const load = {
    balance: inputs.balanceOutdoor,
    designOutdoor: inputs.designOutdoor,
    design: inputs.designLoad ?? coolingAtDesign(full, inputs.designOutdoor),
    aperture: inputs.solarAperture,
  };
  const staging = low && {
    low: onWater(low),
    variable: inputs.machineType === "variable speed",
    middle: middleOf(inputs, full, low),
    lockout: inputs.lockout,
  };
  return yearMachine(onWater(full), staging, load, inputs.cyclingLoss, weather);
}
