/** What a heater in place delivers, by a cooling test of the same pool. Strict SI. */
import type { Trace } from "../../kernel/define/steps";
import { quantity } from "../../kernel/define/argument";
import { POOL_WATER, AIR_TEMPERATURE } from "../../kernel/define/glossary";
import { valueError } from "../../kernel/values/fault";
import { si } from "../../kernel/values/quantity";
import { WATER_CAPACITY, heatInPlace } from "./coolingFit";
import type { CoolingErrors, CoolingResult } from "./coolingTest";

export const HEATER_ENTRIES = {
  heaterRise: quantity("temperature difference", "rise of the water in hours with the heater on, no sun", {
    from: si("temperature difference", -20),
    to: si("temperature difference", 20),
  }).optional(),
  heaterHours: quantity("time", "those hours", { above: 0, to: si("time", 200) }).optional(),
  heaterWater: POOL_WATER.describedAs("mean water of those hours").optional(),
  heaterAir: AIR_TEMPERATURE.describedAs("mean air of those hours").optional(),
} as const;

interface HeaterInputs {
  readonly heaterRise: number | undefined;
  readonly heaterHours: number | undefined;
  readonly heaterWater: number | undefined;
  readonly heaterAir: number | undefined;
}

/** Heat of the heater by surface, W/m², and its standard uncertainty; undefined without the four labels. */
export function heaterOf(
  { coefficient: U, uncertainty: u }: CoolingResult,
  depth: number,
  errors: CoolingErrors,
  { heaterRise: dT, heaterHours: t, heaterWater: Tm, heaterAir: Ta }: HeaterInputs,
  trace: Trace,
) {
  // Some hosts pass a blank as 0: hours of 0 count as left out, and so does a rise beside them.
  if (t === undefined && (dT ?? 0) === 0) return undefined;
  if (dT === undefined || t === undefined || Tm === undefined || Ta === undefined)
    throw valueError("inputs: heater rise, heater hours, heater water and heater air are needed together");
  const C = WATER_CAPACITY * depth;
  const heat = trace.step(heatInPlace, { C, dT, t, U, Tm, Ta });
  // An error of the depth is one of the storage and of the coefficient alike: of all of the heat.
  const withoutDepth = Math.sqrt(Math.max(0, u ** 2 - (U * errors.depth) ** 2));
  return {
    heat,
    uncertainty: Math.hypot(
      (Math.SQRT2 * C * errors.sensor) / t,
      heat * errors.depth,
      withoutDepth * (Tm - Ta),
      U * errors.air,
    ),
  };
}
