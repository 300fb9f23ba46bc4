import type { Fluid } from "../refrigerant";
import { isPure, loadRefrigerant } from "../refrigerant";
import { refrigerantSaturationPressure } from "../saturation/saturation";
import { curveDensity } from "../saturation/saturationCurve";
import { transportOf } from "./viscosity";

/** The parachor hardly changes with temperature; closer to the critical point than this it would be 0/0. */
const PARACHOR_END = 0.97;

/** Surface tension of a pure fluid's own correlation, N/m, at K. */
function pureTension(name: string, temperature: number): number {
  const { critical, rows } = transportOf(name).surfaceTension;
  const x = Math.max(0, 1 - temperature / critical);
  return rows.reduce((sum, [a, n]) => sum + a * x ** n, 0);
}

/** Parachor of a pure fluid, sigma^(1/4) / (liquid less vapour density), in N^(1/4) m^(11/4) / mol. */
function parachor(fluid: Fluid, temperature: number): number {
  const T = Math.min(temperature, PARACHOR_END * fluid.critical.temperature);
  const difference = curveDensity(fluid.bubble, "liquid", T) - curveDensity(fluid.dew, "vapour", T);
  return pureTension(fluid.name, T) ** 0.25 / difference;
}

/**
 * Surface tension at a temperature (K) on the bubble line, N/m. Pure fluids: their published correlation. Blends: parachors
 * mixed by mole (C. F. Weinaug, D. L. Katz (1943) Ind. Eng. Chem. 35:239-246), both phases taken at the blend's composition.
 *
 * @throws a fault beyond the ends of the saturation line
 */
export function surfaceTension(fluid: Fluid, temperature: number): number {
  refrigerantSaturationPressure(fluid, temperature, "bubble");
  if (isPure(fluid)) return pureTension(fluid.name, temperature);
  const mixed = fluid.components.reduce(
    (sum, { fluid: data, moleFraction }) => sum + moleFraction * parachor(loadRefrigerant(data.name), temperature),
    0,
  );
  const difference = curveDensity(fluid.bubble, "liquid", temperature) - curveDensity(fluid.dew, "vapour", temperature);
  return (mixed * difference) ** 4;
}
