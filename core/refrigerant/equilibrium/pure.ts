import { clamp } from "../../numeric/series";
import type { Substance } from "../helmholtz/substance";
import { gibbs, pressureAt } from "../helmholtz/substance";

/** Liquid and vapour in equilibrium at one temperature: molar densities mol/m3, pressure Pa. */
export interface PureEquilibrium {
  readonly liquid: number;
  readonly vapour: number;
  readonly pressure: number;
  /** Larger of the relative pressure difference and the difference of Gibbs energy over RT. */
  readonly residual: number;
}

/**
 * Maxwell's condition, equal pressure and Gibbs energy in both phases, by Newton on the logarithms of the densities.
 *
 * @param temperature K
 * @param start densities to start from, mol/m3
 * @returns undefined where the search fails or falls on the trivial answer of two equal phases
 */
export function pureEquilibrium(
  s: Substance,
  temperature: number,
  start: { readonly liquid: number; readonly vapour: number },
): PureEquilibrium | undefined {
  const RT = s.gasConstant * temperature;
  const L = { pressure: 0, byDensity: 0 };
  const V = { pressure: 0, byDensity: 0 };
  let best: PureEquilibrium | undefined;
  let liquid = start.liquid;
  let vapour = start.vapour;
  for (let pass = 0; pass < 60; pass++) {
    pressureAt(s, temperature, liquid, L);
    pressureAt(s, temperature, vapour, V);
    const dg = gibbs(s, temperature, liquid) - gibbs(s, temperature, vapour);
    const dp = L.pressure - V.pressure;
    const residual = Math.max(Math.abs(dp / V.pressure), Math.abs(dg));
    if (best && best.residual < 1e-9 && residual >= best.residual * 0.5) return best;
    if (!best || residual < best.residual) best = { liquid, vapour, pressure: V.pressure, residual };
    // Unknowns are ln(liquid), ln(vapour): dp = rho p' dln(rho), d(g / RT) = p' / RT dln(rho).
    const [a, b] = [liquid * L.byDensity, -vapour * V.byDensity];
    const [c, d] = [L.byDensity / RT, -V.byDensity / RT];
    const determinant = a * d - b * c;
    if (determinant === 0 || !Number.isFinite(determinant)) return undefined;
    const stepL = (dp * d - b * dg) / determinant;
    const stepV = (a * dg - c * dp) / determinant;
    const scale = Math.min(1, 0.1 / Math.max(1e-300, Math.abs(stepL)), 0.5 / Math.max(1e-300, Math.abs(stepV)));
    liquid *= Math.exp(-scale * stepL);
    vapour *= Math.exp(-scale * stepV);
    if (!(liquid > vapour * (1 + 1e-5))) return undefined;
  }
  return best && best.residual < 1e-9 ? best : undefined;
}

/**
 * Start of a search at about 0.7 of the critical temperature: vapour pressure by the acentric factor
 * (K. S. Pitzer et al. (1955) J. Am. Chem. Soc. 77:3433), densities by Newton from the ideal gas and from three times the
 * critical density.
 */
export function firstGuess(
  s: Substance,
  critical: { readonly temperature: number; readonly pressure: number; readonly density: number },
  acentric: number,
  temperature: number,
): { liquid: number; vapour: number } {
  const pressure = critical.pressure * 10 ** ((-7 / 3) * (1 + acentric) * (critical.temperature / temperature - 1));
  return {
    liquid: densityFrom(s, temperature, pressure, 3 * critical.density),
    vapour: densityFrom(s, temperature, pressure, pressure / (s.gasConstant * temperature)),
  };
}

function densityFrom(s: Substance, temperature: number, pressure: number, start: number): number {
  const slot = { pressure: 0, byDensity: 0 };
  let density = start;
  for (let pass = 0; pass < 100; pass++) {
    pressureAt(s, temperature, density, slot);
    const step = (slot.pressure - pressure) / slot.byDensity;
    density -= clamp(step, -0.1 * density, 0.1 * density);
    if (Math.abs(step) < 1e-12 * density) break;
  }
  return density;
}
