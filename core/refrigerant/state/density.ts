import { clamp } from "../../numeric/series";
import type { PressureSlot, Substance } from "../helmholtz/substance";
import { pressureAt } from "../helmholtz/substance";
import type { Fluid } from "../refrigerant";
import { curveDensity, curvePressure } from "../saturation/saturationCurve";

/** Densest state searched, over the reducing density. */
const DENSEST = 4;

/**
 * Molar density (mol/m3) at a temperature (K) and a pressure (Pa), by Newton on ln(density) between two bounds that
 * close in: a step that leaves them, or a falling pressure, is replaced by halving.
 */
export function densityInBracket(
  s: Substance,
  temperature: number,
  pressure: number,
  start: number,
  low: number,
  high: number,
): number {
  const at: PressureSlot = { pressure: 0, byDensity: 0 };
  let density = start;
  let last = 0;
  for (let pass = 0; pass < 100; pass++) {
    pressureAt(s, temperature, density, at);
    const miss = pressure - at.pressure;
    if (miss > 0) low = density;
    else high = density;
    const step = miss / (density * at.byDensity);
    // Newton squares its error: the step after this one would be about step^3 / last^2.
    const converged =
      Math.abs(step) < 1e-9 || (Math.abs(step) < 1e-3 && Math.abs(step * step * step) < 1e-13 * last * last);
    if (converged && at.byDensity > 0) return density * Math.exp(step);
    last = step;
    const next = density * Math.exp(clamp(step, -0.7, 0.7));
    const halved = !(at.byDensity > 0) || !(next > low) || !(next < high);
    density = halved ? (high > 4 * low ? Math.sqrt(low * high) : (low + high) / 2) : next;
    if (high - low < 1e-15 * high) return density;
  }
  return density;
}

/**
 * Density of a known phase from a start near it, mol/m3. Where a saturation line exists it bounds the search: inside
 * the dome an equation of state may have further roots.
 */
export function densityOf(
  fluid: Fluid,
  phase: "liquid" | "vapour" | "supercritical",
  temperature: number,
  pressure: number,
  start: number,
): number {
  const s = fluid.substance;
  const ideal = pressure / (s.gasConstant * temperature);
  const below = temperature <= fluid.warmestSaturated;
  if (phase === "vapour") {
    const high = below ? curveDensity(fluid.dew, "vapour", temperature) * 1.001 : DENSEST * s.reducing.density;
    return densityInBracket(s, temperature, pressure, Math.min(start, high), 0.3 * ideal, high);
  }
  const low = below ? curveDensity(fluid.bubble, "liquid", temperature) * 0.999 : 0.3 * ideal;
  return densityInBracket(s, temperature, pressure, Math.max(start, low), low, DENSEST * s.reducing.density);
}

/** Density of the vapour below the dew pressure, mol/m3; started from the compressibility of the saturated vapour. */
export function vapourDensity(fluid: Fluid, temperature: number, pressure: number): number {
  const s = fluid.substance;
  const ideal = pressure / (s.gasConstant * temperature);
  const T = Math.min(temperature, fluid.warmestSaturated);
  const saturated = curveDensity(fluid.dew, "vapour", T);
  const dewPressure = curvePressure(fluid.dew, T);
  const below = 1 - dewPressure / (saturated * s.gasConstant * T);
  if (T === temperature) {
    const start = ideal / (1 - (below * pressure) / dewPressure);
    return densityInBracket(s, temperature, pressure, Math.min(start, saturated), ideal * 0.3, saturated * 1.001);
  }
  // Above the line the second virial coefficient, hence 1 - Z, falls about with the cube of temperature.
  const share = Math.min(0.6, (below * pressure * T ** 3) / (dewPressure * temperature ** 3));
  return densityInBracket(s, temperature, pressure, ideal / (1 - share), ideal * 0.3, DENSEST * s.reducing.density);
}

/** Density of the liquid above the bubble pressure, or of any state above the critical pressure, mol/m3. */
export function denseDensity(fluid: Fluid, temperature: number, pressure: number): number {
  const s = fluid.substance;
  const densest = DENSEST * s.reducing.density;
  if (temperature <= fluid.warmestSaturated) {
    const saturated = curveDensity(fluid.bubble, "liquid", temperature);
    return densityInBracket(s, temperature, pressure, saturated, saturated * 0.999, densest);
  }
  const ideal = pressure / (s.gasConstant * temperature);
  return densityInBracket(
    s,
    temperature,
    pressure,
    Math.min(2.5 * ideal, 2 * s.reducing.density),
    ideal * 0.3,
    densest,
  );
}
