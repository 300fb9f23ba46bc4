import type { Residual } from "./residual";

// A factor exp(-x) beyond this exponent is below the rounding of the sum it is added to.
const NEGLIGIBLE = 80;

/**
 * Adds the Gaussian terms on the present isotherm: to out[0..2], or with `thermal` to out[3..5].
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
    if (thermal) {
      const byTau = t - 2 * beta * tau * v;
      out[3]! += value * byTau;
      out[4]! += value * byTau * byDelta;
      out[5]! += value * (byTau * byTau - t - 2 * beta * tau * tau);
    } else {
      out[0]! += value;
      out[1]! += value * byDelta;
      out[2]! += value * (byDelta * byDelta - d - 2 * eta * delta * delta);
    }
  }
}

/**
 * Adds the non-analytic terms n Delta^b delta psi to all of out (they are few, and only act near the critical point).
 * Derivatives after R. Span, W. Wagner (1996) J. Phys. Chem. Ref. Data 25:1509-1596, Table 32.
 */
export function addNonAnalytic(r: Residual, delta: number): void {
  const { nonAnalytic: c } = r;
  const tau = r.tau[0]!;
  // The derivatives hold delta - 1 in a denominator; at 1 itself the limit is taken from beside it.
  const u = Math.abs(delta - 1) < 1e-9 ? 1e-9 : delta - 1;
  const v = tau - 1;
  for (let i = 0; i < c.length; i += 8) {
    const exponent = -c[i + 6]! * u * u - c[i + 7]! * v * v;
    if (exponent > -NEGLIGIBLE) addOne(r.out, c, i, u, v, Math.exp(exponent));
  }
}

function addOne(out: Float64Array, c: Float64Array, i: number, u: number, v: number, psi: number): void {
  const [n, a, b, beta] = [c[i]!, c[i + 1]!, c[i + 2]!, c[i + 3]!];
  const [A, B, C, D] = [c[i + 4]!, c[i + 5]!, c[i + 6]!, c[i + 7]!];
  const delta = 1 + u;
  const tau = 1 + v;
  const u2 = u * u;
  const k = 1 / (2 * beta);
  const root = Math.pow(u2, k);
  const theta = -v + A * root;
  const power = B * Math.pow(u2, a);
  const Delta = theta * theta + power;
  const g = A * root * (1 / beta);
  const slope = (2 * theta * g + 2 * a * power) / u;
  const bend = slope / u + (4 * a * (a - 1) * power + 2 * g * g + 4 * A * theta * (1 / beta) * (k - 1) * root) / u2;
  const Db = Math.pow(Delta, b);
  const D1 = (b * Db) / Delta;
  const D2 = ((b - 1) * D1) / Delta;
  const dD = D1 * slope;
  const ddD = D1 * bend + D2 * slope * slope;
  const tD = -2 * theta * D1;
  const ttD = 2 * D1 + 4 * theta * theta * D2;
  const dtD = (-2 * g * D1) / u - 2 * theta * D2 * slope;
  const pd = -2 * C * u;
  const pt = -2 * D * v;
  const pdd = 4 * C * C * u2 - 2 * C;
  const ptt = 4 * D * D * v * v - 2 * D;
  const f = n * psi;
  out[0]! += f * Db * delta;
  out[1]! += f * delta * (Db * (1 + delta * pd) + dD * delta);
  out[2]! += f * delta * delta * (Db * (2 * pd + delta * pdd) + 2 * dD * (1 + delta * pd) + ddD * delta);
  out[3]! += f * delta * tau * (tD + Db * pt);
  out[4]! += f * delta * tau * (Db * pt * (1 + delta * pd) + delta * dD * pt + tD * (1 + delta * pd) + dtD * delta);
  out[5]! += f * delta * tau * tau * (ttD + 2 * tD * pt + Db * ptt);
}
