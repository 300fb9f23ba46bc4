/** A single-speed air conditioner away from its rating condition. */
import { us } from "../../kernel/values/quantity";
import { silent, type Trace } from "../../kernel/define/steps";
import {
  capacityCurve,
  coefficientOfPerformance,
  inputCurve,
  rejectedHeat,
  scaledCooling,
  scaledPower,
} from "./equations";

/** Rating condition: 95 °F outdoors, 67 °F indoor wet bulb. */
export const RATED_OUTDOOR = us("temperature", 95);
export const RATED_WET_BULB = us("temperature", 67);

export interface AirConditionerRating {
  /** Net cooling at the rating condition, W. */
  readonly cooling: number;
  /** Power of the whole machine there, W. */
  readonly power: number;
  /** W, whose heat stays outdoors. */
  readonly outdoorFan?: number;
}

export interface OutdoorPerformance {
  /** W */
  readonly cooling: number;
  /** W */
  readonly power: number;
  /** Heat rejected at the condenser, W: cooling and power less the outdoor fan's. */
  readonly rejected: number;
  readonly COP: number;
}

/** Outdoor air and indoor wet bulb in K. The curves don't read 1 at the rating point: each is divided by its value there. */
export const performanceAtOutdoor = (
  rated: AirConditionerRating,
  outdoor: number,
  wetBulb: number,
  trace: Trace = silent,
): OutdoorPerformance => {
  const atRating = { Twb: RATED_WET_BULB, To: RATED_OUTDOOR };
  const { r0, e0 } = trace.within("Curves at the rating condition", () => ({
    r0: trace.step(capacityCurve, atRating),
    e0: trace.step(inputCurve, atRating),
  }));
  const here = { Twb: wetBulb, To: outdoor };
  const r = trace.step(capacityCurve, here);
  const e = trace.step(inputCurve, here);
  const cooling = trace.step(scaledCooling, { Q0: rated.cooling, r, r0 });
  const power = trace.step(scaledPower, { P0: rated.power, r, r0, e, e0 });
  const rejected = trace.step(rejectedHeat, { Q: cooling, P: power, Pf: rated.outdoorFan ?? 0 });
  return { cooling, power, rejected, COP: trace.step(coefficientOfPerformance, { Q: cooling, P: power }) };
};
