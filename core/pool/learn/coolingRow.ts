/** What a night shows in one state of the cover, as a row of the table. */
import { NO_VALUE } from "../../kernel/define/result";
import type { CoolingResult } from "./coolingTest";
import { silent, type Trace } from "../../kernel/define/steps";
import type { heaterOf } from "./heaterInPlace";
import { coefficientByRelations, skyOf, type NightInputs } from "./nightLosses";

const NOTHING = {
  coefficient: NO_VALUE,
  uncertainty: NO_VALUE,
  least: NO_VALUE,
  most: NO_VALUE,
  timeConstant: NO_VALUE,
  meanLoss: NO_VALUE,
  shareOfOpen: NO_VALUE,
  shareUncertainty: NO_VALUE,
  fitError: NO_VALUE,
  scatter: NO_VALUE,
  start: NO_VALUE,
  hours: NO_VALUE,
  readings: NO_VALUE,
  byRelations: NO_VALUE,
  skyTemperature: NO_VALUE,
  skyLoss: NO_VALUE,
  withoutSky: NO_VALUE,
  heaterHeat: NO_VALUE,
  heaterUncertainty: NO_VALUE,
  heaterOutput: NO_VALUE,
} as const;

const besideOf = (by: number | undefined, least: number, most: number): string => {
  if (by === undefined) return "";
  return by < least ? "test loses more" : by > most ? "test loses less" : "agree";
};

/** A row of the table. */
export function coolingRow(
  state: string,
  found: CoolingResult | undefined,
  open: CoolingResult | undefined,
  inputs: NightInputs,
  heater: ReturnType<typeof heaterOf>,
  trace: Trace = silent,
) {
  if (found === undefined) return { state, ...NOTHING, finding: "not tested", beside: "" };
  const { coefficient: U, uncertainty: u } = found;
  const [least, most] = [U - 2 * u, U + 2 * u];
  const share = open !== undefined && state === "covered" ? U / open.coefficient : undefined;
  const covered = state === "covered";
  const by = coefficientByRelations(found, inputs, covered);
  const sky = skyOf(found, inputs, trace);
  const loss = covered ? undefined : sky?.loss;
  return {
    state,
    coefficient: U,
    uncertainty: u,
    least,
    most,
    timeConstant: found.timeConstant,
    meanLoss: found.loss,
    shareOfOpen: share ?? NO_VALUE,
    shareUncertainty:
      share === undefined ? NO_VALUE : share * Math.hypot(u / U, (open?.uncertainty ?? 0) / (open?.coefficient ?? 1)),
    fitError: found.fitError ?? NO_VALUE,
    scatter: found.error ?? NO_VALUE,
    start: found.start,
    hours: found.time,
    readings: found.readings,
    byRelations: by ?? NO_VALUE,
    skyTemperature: sky?.temperature ?? NO_VALUE,
    skyLoss: loss ?? NO_VALUE,
    withoutSky: loss === undefined ? NO_VALUE : U - loss / (found.meanWater - found.meanAir),
    heaterHeat: heater?.heat ?? NO_VALUE,
    heaterUncertainty: heater?.uncertainty ?? NO_VALUE,
    heaterOutput: heater ? heater.heat * inputs.area : NO_VALUE,
    finding: found.found ? "found" : "no finding",
    beside: found.found ? besideOf(by, least, most) : "",
  };
}
