import { outOfRange } from "../../kernel/values/fault";
import type { EnvelopeCurve } from "../equilibrium/blend";
import type { PhaseState } from "../helmholtz/substance";
import { phaseState, pressureAt } from "../helmholtz/substance";
import type { Fluid } from "../refrigerant";
import { curveDensity, curvePressure, curveTemperature } from "./saturationCurve";
import { markPressure, markTemperature } from "../marks";

export type { EnvelopeCurve } from "../equilibrium/blend";

function refuseTemperature(fluid: Fluid, temperature: number): never {
  const { coldest, warmestSaturated, critical } = fluid;
  const quantity = `${fluid.name} saturation temperature`;
  if (temperature > critical.temperature)
    throw outOfRange({
      quantity: quantity,
      limit: `below the critical temperature, ${markTemperature(critical.temperature)}`,
      got: markTemperature(temperature),
    });
  throw outOfRange({
    quantity: quantity,
    limit: `from ${markTemperature(coldest)} to ${markTemperature(warmestSaturated)}`,
    got: markTemperature(temperature),
  });
}

/**
 * Saturation pressure on the bubble or dew curve, Pa.
 *
 * @param temperature K
 * @throws a fault beyond the ends of the curve
 */
export function refrigerantSaturationPressure(fluid: Fluid, temperature: number, curve: EnvelopeCurve): number {
  if (!(temperature >= fluid.coldest && temperature <= fluid.warmestSaturated)) refuseTemperature(fluid, temperature);
  return curvePressure(fluid[curve], temperature);
}

/**
 * Saturation temperature on the bubble or dew curve, K.
 *
 * @param pressure Pa, absolute
 * @throws a fault beyond the ends of the curve
 */
export function saturationTemperature(fluid: Fluid, pressure: number, curve: EnvelopeCurve): number {
  const line = fluid[curve];
  const log = Math.log(pressure);
  // The ends count as inside, even after a pressure was rounded to ten digits.
  if (!(log >= line.lowest - 1e-9 && log <= line.highest + 1e-9)) refusePressure(fluid, pressure, curve);
  return curveTemperature(line, pressure);
}

function refusePressure(fluid: Fluid, pressure: number, curve: EnvelopeCurve): never {
  const [low, high] = [Math.exp(fluid[curve].lowest), Math.exp(fluid[curve].highest)];
  const quantity = `${fluid.name} saturation pressure`;
  if (pressure > fluid.critical.pressure)
    throw outOfRange({
      quantity: quantity,
      limit: `below the critical pressure, ${markPressure(fluid.critical.pressure)}`,
      got: markPressure(pressure),
    });
  throw outOfRange({
    quantity: quantity,
    limit: `from ${markPressure(low)} to ${markPressure(high)}`,
    got: markPressure(pressure),
  });
}

/**
 * The saturated liquid (bubble) or vapour (dew) at a temperature in K.
 * @throws a fault beyond the ends of the curve
 */
export function saturatedState(fluid: Fluid, temperature: number, curve: EnvelopeCurve): PhaseState {
  const pressure = refrigerantSaturationPressure(fluid, temperature, curve);
  return saturatedAt(fluid, temperature, pressure, curve);
}

/** The saturated liquid or vapour at a pressure in Pa. */
export function saturatedStateAtPressure(fluid: Fluid, pressure: number, curve: EnvelopeCurve): PhaseState {
  return saturatedAt(fluid, saturationTemperature(fluid, pressure, curve), pressure, curve);
}

function saturatedAt(fluid: Fluid, temperature: number, pressure: number, curve: EnvelopeCurve): PhaseState {
  const phase = curve === "bubble" ? "liquid" : "vapour";
  const s = fluid.substance;
  const at = { pressure: 0, byDensity: 0 };
  const fitted = curveDensity(fluid[curve], phase, temperature);
  pressureAt(s, temperature, fitted, at);
  // One Newton step sharpens the fitted density; next to the critical point, where pressure hardly depends on
  // density, the fit is better.
  const step = (pressure - at.pressure) / (fitted * at.byDensity);
  const density = Math.abs(step) < 1e-6 ? fitted * (1 + step) : fitted;
  return phaseState(s, { phase, temperature, density, pressure });
}
