import { clamp } from "../../numeric/series";
import { linearSolve } from "../../numeric/linearSolve";
import {
  GAS_CONSTANT,
  setComposition,
  logFugacities,
  mixtureOnIsotherm,
  mixtureAtComposition,
} from "../helmholtz/mixture";
import type { Mixture } from "../helmholtz/mixture";

/** Two phases of a blend in equilibrium at a given temperature and pressure: mole fractions, molar densities mol/m3. */
export interface FlashResult {
  /** Vapour's share by mole; a little outside 0 to 1 where the point is just outside the dome. */
  readonly vapourShare: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly liquid: number;
  readonly vapour: number;
  /** Largest difference of ln fugacity */
  readonly residual: number;
  readonly passes: number;
}

/** What a flash starts from: ln K of each component and both densities. */
export interface FlashStart {
  readonly logK: ArrayLike<number>;
  readonly liquid: number;
  readonly vapour: number;
}

/** The target, tight so that nearly azeotropic blends get a sharp vapour share; and the residual accepted after the last pass. */
const TOLERANCE = 1e-12;
const ACCEPTED = 1e-9;
const MOST_PASSES = 30;

/** Vapour share by mole from the K values (H. H. Rachford, J. D. Rice (1952) J. Pet. Technol. 4:327-328), by safeguarded Newton. */
export function vapourShare(z: ArrayLike<number>, K: ArrayLike<number>): number {
  let [most, least] = [-Infinity, Infinity];
  for (let i = 0; i < z.length; i++) {
    most = Math.max(most, K[i]!);
    least = Math.min(least, K[i]!);
  }
  let low = 1 / (1 - most);
  let high = 1 / (1 - least);
  let share = clamp(0.5, low, high);
  for (let pass = 0; pass < 100; pass++) {
    let f = 0;
    let slope = 0;
    for (let i = 0; i < z.length; i++) {
      const k = K[i]! - 1;
      const part = k / (1 + share * k);
      f += z[i]! * part;
      slope -= z[i]! * part * part;
    }
    if (f > 0) low = share;
    else high = share;
    const next = share - f / slope;
    const better = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(better - share) < 1e-14) return better;
    share = better;
  }
  return share;
}

/** The molar density of a phase at its pressure; leaves the mixture evaluated at that density. */
function phaseDensity(m: Mixture, x: Float64Array, T: number, pressure: number, start: number): number {
  const RT = GAS_CONSTANT * T;
  let density = start;
  let last = 0;
  setComposition(m, x);
  for (let pass = 0; pass < 20; pass++) {
    mixtureOnIsotherm(m, x, T, density);
    const miss = pressure - density * RT * (1 + m.out[1]!);
    const slope = RT * (1 + 2 * m.out[1]! + m.out[2]!);
    const step = slope > 0 ? miss / (slope * density) : 0.02 * Math.sign(miss);
    density *= 1 + clamp(step, -0.1, 0.1);
    // Newton squares its error: the step after this one would be about step^3 / last^2, after a first one some ten step^2.
    const error = Math.abs(step);
    if (error < 1e-8 || (error < 1e-4 && error ** 3 < 1e-14 * last * last)) break;
    last = step;
  }
  mixtureAtComposition(m, x, T, density);
  return density;
}

/** The working space of a flash, and its present point. */
interface FlashPoint {
  share: number;
  liquid: number;
  vapour: number;
  residual: number;
  readonly logK: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Differences of ln fugacity, liquid less vapour */
  readonly g: Float64Array;
  readonly other: Float64Array;
}

/** Splits the blend by the present K values and compares the fugacities of both phases. */
function evaluateFlash(m: Mixture, temperature: number, pressure: number, at: FlashPoint): void {
  const { logK, x, y, g, other } = at;
  const z = m.parts.moleFractions;
  for (let i = 0; i < z.length; i++) y[i] = Math.exp(logK[i]!);
  at.share = vapourShare(z, y);
  for (let i = 0; i < z.length; i++) {
    x[i] = z[i]! / (1 + at.share * (y[i]! - 1));
    y[i]! *= x[i]!;
  }
  at.liquid = phaseDensity(m, x, temperature, pressure, at.liquid);
  logFugacities(m, x, at.liquid, g);
  at.vapour = phaseDensity(m, y, temperature, pressure, at.vapour);
  logFugacities(m, y, at.vapour, other);
  at.residual = 0;
  for (let i = 0; i < z.length; i++) {
    g[i]! -= other[i]!;
    at.residual = Math.max(at.residual, Math.abs(g[i]!));
  }
}

/**
 * Isothermal two-phase flash: equal fugacities by successive substitution on ln K, sharpened by Broyden's update of the
 * Jacobian (C. G. Broyden (1965) Math. Comput. 19:577-593).
 *
 * @param temperature K
 * @param pressure Pa
 * @returns undefined where 30 passes don't bring the residual under 1e-9
 */
export function isothermalFlash(
  m: Mixture,
  temperature: number,
  pressure: number,
  start: FlashStart,
): FlashResult | undefined {
  const n = m.parts.moleFractions.length;
  const [x, y, g, other] = [new Float64Array(n), new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  const logK = Float64Array.from(start.logK);
  const at: FlashPoint = { share: 0, liquid: start.liquid, vapour: start.vapour, residual: 1, logK, x, y, g, other };
  // d(g) / d(ln K): successive substitution assumes minus one.
  const jacobian = new Float64Array(n * n);
  for (let i = 0; i < n; i++) jacobian[i * n + i] = -1;
  const step = new Float64Array(n);
  let best: FlashResult | undefined;
  for (let passes = 1; passes <= MOST_PASSES; passes++) {
    evaluateFlash(m, temperature, pressure, at);
    const { residual, share, liquid, vapour } = at;
    if (!Number.isFinite(residual) || (best && residual >= best.residual)) break;
    if (residual < ACCEPTED)
      best = { vapourShare: share, x: x.slice(), y: y.slice(), liquid, vapour, residual, passes };
    if (residual < TOLERANCE) break;
    if (passes > 1) broyden(jacobian, step, g);
    for (let i = 0; i < n; i++) step[i] = -g[i]!;
    if (!linearSolve(jacobian.slice(), step)) break;
    for (let i = 0; i < n; i++) logK[i]! += clamp(step[i]!, -0.5, 0.5);
  }
  return best;
}

/** After a full step s the old model predicted g = 0, so all of g is its error. */
function broyden(jacobian: Float64Array, step: Float64Array, g: Float64Array): void {
  const n = g.length;
  let square = 0;
  for (let i = 0; i < n; i++) square += step[i]! * step[i]!;
  if (square === 0) return;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) jacobian[i * n + j]! += (g[i]! * step[j]!) / square;
  }
}
