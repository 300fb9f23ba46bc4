/** A stage of a two-stage or variable-speed machine away from its rating, by published curves. */
import { silent, type Trace } from "../kernel/define/steps";
import { us } from "../kernel/values/quantity";
import { STAGE_CURVES } from "./data/stageCurves";
import { scaledCooling, scaledPower, stageCurve } from "../cycle/machine/equations";
import { RATED_OUTDOOR, RATED_WET_BULB } from "../cycle/machine/outdoorRating";

export type StageCurve = keyof typeof STAGE_CURVES;

/** The variable-speed sets are not monotonic below this wet bulb: its values hold there. */
const LEAST_WET_BULB = us("temperature", 60);

const valueOf = (c: readonly number[], Twb: number, To: number, of: string, trace: Trace): number => {
  const [c1 = 0, c2 = 0, c3 = 0, c4 = 0, c5 = 0, c6 = 0] = c;
  return trace.step(stageCurve, { Twb, To, c1, c2, c3, c4, c5, c6 }, of);
};

/**
 * Net cooling and power of the whole machine outdoors, W; temperatures in K.
 *
 * @param ratedOutdoor outdoor air at which the rated values hold
 */
export function stageAtOutdoor(
  name: StageCurve,
  rated: Readonly<Record<"cooling" | "power", number>>,
  outdoor: number,
  wetBulb: number,
  ratedOutdoor = RATED_OUTDOOR,
  trace: Trace = silent,
): Readonly<Record<"cooling" | "power", number>> {
  const [capacity, input] = STAGE_CURVES[name];
  const bulb = (Twb: number): number => (name.startsWith("variable") ? Math.max(LEAST_WET_BULB, Twb) : Twb);
  const { r0, e0 } = trace.within("Curves at the rating condition", () => ({
    r0: valueOf(capacity, RATED_WET_BULB, ratedOutdoor, "cooling", trace),
    e0: valueOf(input, RATED_WET_BULB, ratedOutdoor, "power per cooling", trace),
  }));
  const r = valueOf(capacity, bulb(wetBulb), outdoor, "cooling", trace);
  const e = valueOf(input, bulb(wetBulb), outdoor, "power per cooling", trace);
  return {
    cooling: trace.step(scaledCooling, { Q0: rated.cooling, r, r0 }),
    power: trace.step(scaledPower, { P0: rated.power, r, r0, e, e0 }),
  };
}
