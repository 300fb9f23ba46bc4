import type { Substance } from "../helmholtz/substance";
import { residualAt, setIsotherm } from "../helmholtz/residual";

/** The reference fluid's state that corresponds to a fluid's: K, mol/m3. */
export interface ConformalState {
  readonly temperature: number;
  readonly density: number;
  /** Temperature ratio f = T / T0 and density ratio h = rho0 / rho */
  readonly f: number;
  readonly h: number;
}

/** Residual Helmholtz energy, compressibility less one, and their derivatives by ln(rho) and ln(T). */
function residualsOf(s: Substance, temperature: number, density: number) {
  setIsotherm(s.residual, s.reducing.temperature / temperature);
  residualAt(s.residual, density / s.reducing.density);
  const o = s.residual.out;
  return { a: o[0]!, z: o[1]!, aRho: o[1]!, zRho: o[1]! + o[2]!, aT: -o[3]!, zT: -o[4]! };
}

/** Below this residual Helmholtz energy both conditions coincide, so the plain scaling is kept. */
const DILUTE = 1e-4;

/**
 * The state of a reference fluid with the same residual Helmholtz energy and compressibility (extended corresponding
 * states; M. L. Huber, A. Laesecke, R. A. Perkins (2003) Ind. Eng. Chem. Res. 42:3163-3178). Starts from the critical
 * points' ratios and keeps them where the gas is too dilute to decide, or where Newton strays too far.
 *
 * @param temperature K
 * @param density mol/m3
 */
export function conformalState(
  fluid: Substance,
  reference: Substance,
  temperature: number,
  density: number,
): ConformalState {
  const plainT = (temperature * reference.reducing.temperature) / fluid.reducing.temperature;
  const plainRho = (density * reference.reducing.density) / fluid.reducing.density;
  const { a, z } = residualsOf(fluid, temperature, density);
  const state = (T: number, rho: number) => ({ temperature: T, density: rho, f: temperature / T, h: rho / density });
  if (Math.abs(a) < DILUTE) return state(plainT, plainRho);
  let [T, rho] = [plainT, plainRho];
  let last = 0;
  for (let pass = 0; pass < 40; pass++) {
    const r = residualsOf(reference, T, rho);
    const determinant = r.aT * r.zRho - r.aRho * r.zT;
    const stepT = ((r.a - a) * r.zRho - r.aRho * (r.z - z)) / determinant;
    const stepRho = (r.aT * (r.z - z) - r.zT * (r.a - a)) / determinant;
    if (!Number.isFinite(stepT + stepRho)) break;
    const scale = Math.min(1, 0.1 / Math.max(Math.abs(stepT), Math.abs(stepRho)));
    T *= Math.exp(-scale * stepT);
    rho *= Math.exp(-scale * stepRho);
    if (Math.abs(Math.log(T / plainT)) > 0.7 || Math.abs(Math.log(rho / plainRho)) > 1.1) break;
    // Newton squares its error: the step after this one would be about step^3 / last^2.
    const step = Math.abs(stepT) + Math.abs(stepRho);
    if (step < 1e-9 || (step < 1e-3 && step ** 3 < 1e-13 * last * last)) return state(T, rho);
    last = step;
  }
  return state(plainT, plainRho);
}
