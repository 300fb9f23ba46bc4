import type { Residual } from "./residualArrays";

// A factor exp(-x) beyond this exponent is below the rounding of the sum it is added to.
const NEGLIGIBLE = 50;

/**
 * Adds the Gaussian terms on the present isotherm: to out[0..2], with `thermal` to all of out.
 * Each is n tau^t delta^d exp(-eta (delta - epsilon)^2 - beta (tau - gamma)^2).
 */
export function addGaussians(r: Residual, delta: number, thermal: boolean): void {
  const { gaussians: g, out } = r;
  const tau = r.tau[0]!;
  const logDelta = Math.log(delta);
  const logTau = Math.log(tau);
  for (let i = 0; i < g.length; i += 7) {
    const eta = g[i + 3]!;
    const u = delta - g[i + 4]!;
    const beta = g[i + 5]!;
    const v = tau - g[i + 6]!;
    const exponent = -eta * u * u - beta * v * v;
    if (exponent < -NEGLIGIBLE) continue;
    const t = g[i + 1]!;
    const d = g[i + 2]!;
    const value = g[i]! * Math.exp(exponent + t * logTau + d * logDelta);
    const byDelta = d - 2 * eta * delta * u;
    out[0]! += value;
    out[1]! += value * byDelta;
    out[2]! += value * (byDelta * byDelta - d - 2 * eta * delta * delta);
    if (!thermal) continue;
    const byTau = t - 2 * beta * tau * v;
    out[3]! += value * byTau;
    out[4]! += value * byTau * byDelta;
    out[5]! += value * (byTau * byTau - t - 2 * beta * tau * tau);
  }
}

/**
 * Adds the non-analytic terms n Delta^b delta psi to out[0..2], with `thermal` to all of out (they are few, and only act
 * near the critical point). Derivatives after R. Span, W. Wagner (1996) J. Phys. Chem. Ref. Data 25:1509-1596, Table 32.
 */
export function addNonAnalytic(r: Residual, delta: number, thermal: boolean): void {
  const { nonAnalytic: c, shape } = r;
  const v = r.tau[0]! - 1;
  // The derivatives divide by delta - 1; at delta = 1 a neighbouring point gives the limit.
  const u = Math.abs(delta - 1) < 1e-9 ? 1e-9 : delta - 1;
  for (let i = 0; i < c.length; i += TERM) {
    // Terms often differ from the one before in n and b only: Delta and psi are then the same.
    if (i === 0 || !sameShape(c, i)) setShape(c, i, u, v, shape);
    if (shape[0] !== 0) addTerm(r, c[i]!, c[i + 2]!, c[i + 6]!, c[i + 7]!, u, v, thermal);
  }
}

/** Numbers in a term: n, a, b, beta, A, B, C, D. */
const TERM = 8;

function sameShape(c: Float64Array, i: number): boolean {
  for (let k = 1; k < TERM; k++) if (k !== 2 && c[i + k] !== c[i + k - TERM]) return false;
  return true;
}

/** psi (0 where negligible), theta, Delta, its first and second delta derivative, g = u d(theta)/d(delta). */
function setShape(c: Float64Array, i: number, u: number, v: number, shape: Float64Array): void {
  const u2 = u * u;
  const exponent = -c[i + 6]! * u2 - c[i + 7]! * v * v;
  shape[0] = 0;
  if (exponent < -NEGLIGIBLE) return;
  const a = c[i + 1]!;
  const inverse = 1 / c[i + 3]!;
  const log = Math.log(u2);
  const root = c[i + 4]! * Math.exp((inverse / 2) * log);
  const theta = root - v;
  const power = c[i + 5]! * Math.exp(a * log);
  const g = root * inverse;
  const slope = (2 * theta * g + 2 * a * power) / u;
  shape[0] = Math.exp(exponent);
  shape[1] = theta;
  shape[2] = theta * theta + power;
  shape[3] = slope;
  shape[4] = slope / u + (4 * a * (a - 1) * power + 2 * g * g + 4 * theta * g * (inverse / 2 - 1)) / u2;
  shape[5] = g;
}

/** Adds one term of the present shape. */
function addTerm(
  { out, shape }: Residual,
  n: number,
  b: number,
  C: number,
  D: number,
  u: number,
  v: number,
  thermal: boolean,
): void {
  const theta = shape[1]!;
  const Delta = shape[2]!;
  const slope = shape[3]!;
  const delta = 1 + u;
  const Db = Math.exp(b * Math.log(Delta));
  const D1 = (b * Db) / Delta;
  const D2 = ((b - 1) * D1) / Delta;
  const dD = D1 * slope;
  const pd = -2 * C * u;
  const pdd = pd * pd - 2 * C;
  const f = n * shape[0]! * delta;
  const first = 1 + delta * pd;
  out[0]! += f * Db;
  out[1]! += f * (Db * first + dD * delta);
  out[2]! += f * delta * (Db * (2 * pd + delta * pdd) + 2 * dD * first + (D1 * shape[4]! + D2 * slope * slope) * delta);
  if (!thermal) return;
  const tau = 1 + v;
  const tD = -2 * theta * D1;
  const dtD = (-2 * shape[5]! * D1) / u - 2 * theta * D2 * slope;
  const ttD = 2 * D1 + 4 * theta * theta * D2;
  const pt = -2 * D * v;
  const ptt = pt * pt - 2 * D;
  out[3]! += f * tau * (tD + Db * pt);
  out[4]! += f * tau * (Db * pt * first + delta * dD * pt + tD * first + dtD * delta);
  out[5]! += f * tau * tau * (ttD + 2 * tD * pt + Db * ptt);
}
