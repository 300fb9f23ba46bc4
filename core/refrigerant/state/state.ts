import { outOfRange } from "../../kernel/values/fault";
import type { Phase, PhaseState } from "../helmholtz/substance";
import { phaseState } from "../helmholtz/substance";
import { denseDensity, vapourDensity } from "./density";
import type { Fluid } from "../refrigerant";
import { curvePressure } from "../saturation/saturationCurve";
import { markPressure, markTemperature } from "../marks";
import type { TwoPhaseState } from "./twoPhase";
import { twoPhaseState } from "./twoPhase";

/** A state at any pressure and temperature. */
export type RefrigerantState = PhaseState | TwoPhaseState;

/** How near (relative) to a pure fluid's saturation pressure the state counts as on the line. */
const ON_THE_LINE = 1e-8;

/** Lower pressures, Pa, count as a perfect vacuum. */
const LEAST_PRESSURE = 1;

/** @throws where temperature or pressure are outside the range of the equation of state */
export function checkRange(fluid: Fluid, pressure: number, temperature: number): void {
  const { limit, pressure: highest } = fluid.range;
  if (!(temperature >= fluid.coldest && temperature <= limit))
    throw outOfRange({
      quantity: `${fluid.name} temperature`,
      limit: `from ${markTemperature(fluid.coldest)} to ${markTemperature(limit)}`,
      got: markTemperature(temperature),
    });
  if (!(pressure >= LEAST_PRESSURE && pressure <= highest))
    throw outOfRange({
      quantity: `${fluid.name} pressure`,
      limit: `from ${markPressure(LEAST_PRESSURE)} to ${markPressure(highest)}`,
      got: markPressure(pressure),
    });
}

/** The region of a pressure and a temperature. */
type Region = Phase | "glide" | "line" | "critical";

/** The phase, decided from the saturation lines; K and Pa. */
export function regionAt(fluid: Fluid, pressure: number, temperature: number): Region {
  const { critical, warmestSaturated: top } = fluid;
  if (temperature <= top) {
    const bubble = curvePressure(fluid.bubble, temperature);
    if (fluid.bubble === fluid.dew) {
      if (Math.abs(pressure - bubble) < ON_THE_LINE * bubble) return "line";
      return pressure < bubble ? "vapour" : "liquid";
    }
    if (pressure > bubble) return "liquid";
    return pressure < curvePressure(fluid.dew, temperature) ? "vapour" : "glide";
  }
  // Between the end of the fitted lines and the critical point there is a small patch where the phase is undecided.
  const patch = pressure > Math.exp(fluid.dew.highest) && pressure < 1.001 * critical.pressure;
  if (patch && temperature < 1.001 * critical.temperature) return "critical";
  if (pressure <= critical.pressure) return "vapour";
  return temperature < critical.temperature ? "liquid" : "supercritical";
}

/** The single-phase state of a known region. */
export function singlePhase(fluid: Fluid, pressure: number, temperature: number, phase: Phase): PhaseState {
  const density =
    phase === "vapour" ? vapourDensity(fluid, temperature, pressure) : denseDensity(fluid, temperature, pressure);
  return phaseState(fluid.substance, { phase, temperature, density, pressure });
}

/**
 * The state at a pressure (Pa, absolute) and a temperature (K); the saturation lines decide the phase. Inside a blend's
 * glide the state is a mixture of both phases.
 *
 * @throws a fault outside the equation's range, on a pure fluid's saturation line (where pressure and temperature
 * don't fix the state) and in the small patch around the critical point
 */
export function stateAt(fluid: Fluid, pressure: number, temperature: number): RefrigerantState {
  checkRange(fluid, pressure, temperature);
  const region = regionAt(fluid, pressure, temperature);
  if (region === "line" || region === "critical") refuse(fluid, region, pressure, temperature);
  if (region === "glide") return twoPhaseState(fluid, fluid.mixture!, temperature, pressure);
  return singlePhase(fluid, pressure, temperature, region);
}

function refuse(fluid: Fluid, region: "line" | "critical", pressure: number, temperature: number): never {
  const got = `${markPressure(pressure)} at ${markTemperature(temperature)}`;
  if (region === "line")
    throw outOfRange({
      quantity: `${fluid.name} state`,
      limit: "off the saturation line, where pressure and temperature don't fix the phase",
      got,
    });
  const { temperature: T, pressure: p } = fluid.critical;
  throw outOfRange({
    quantity: `${fluid.name} state`,
    limit: `not next to the critical point (${markTemperature(T)}, ${markPressure(p)})`,
    got,
  });
}
