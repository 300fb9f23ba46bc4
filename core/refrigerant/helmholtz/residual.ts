import type { GaussianTerm, NonAnalyticTerm, PowerTerm } from "../data/fluidData";
import { addGaussians, addNonAnalytic } from "./nearCritical";
import type { Residual } from "./residualArrays";

/** Terms of a residual Helmholtz energy, as published. */
export interface ResidualTerms {
  readonly powers: readonly PowerTerm[];
  readonly gaussians: readonly GaussianTerm[];
  readonly nonAnalytic: readonly NonAnalyticTerm[];
}

/** Lays out the terms of a residual Helmholtz energy. */
export function compileResidual(terms: ResidualTerms): Residual {
  const powers = [...terms.powers].sort((a, b) => Number((a[4] ?? 0) > 0) - Number((b[4] ?? 0) > 0));
  const exponents = [...new Set(powers.map((term) => term[1]))];
  const ls = [...new Set(powers.map((term) => term[3]))].sort((a, b) => a - b);
  const degree = ls.map((l) => Math.max(...powers.filter((term) => term[3] === l).map((term) => term[2])));
  const first: number[] = [];
  let size = 0;
  for (const d of degree) {
    first.push(size);
    size += d + 1;
  }
  const plain = powers.filter((term) => (term[4] ?? 0) === 0).length;
  return {
    exponents: Float64Array.from(exponents),
    powersOfTau: new Float64Array(exponents.length),
    n: Float64Array.from(powers, (term) => term[0]),
    nT: Float64Array.from(powers, (term) => term[0] * term[1]),
    nTT: Float64Array.from(powers, (term) => term[0] * term[1] * (term[1] - 1)),
    exponentOf: Int32Array.from(powers, (term) => exponents.indexOf(term[1])),
    slotOf: Int32Array.from(powers, (term) => first[ls.indexOf(term[3])]! + term[2]),
    m: Float64Array.from(powers.slice(plain), (term) => term[4] ?? 0),
    plain,
    l: Int32Array.from(ls),
    first: Int32Array.from(first),
    degree: Int32Array.from(degree),
    slots: new Float64Array(size),
    slotsT: new Float64Array(size),
    slotsTT: new Float64Array(size),
    gaussians: Float64Array.from(terms.gaussians.flat()),
    nonAnalytic: Float64Array.from(terms.nonAnalytic.flat()),
    shape: new Float64Array(6),
    tau: Float64Array.of(-1),
    out: new Float64Array(6),
  };
}

/** Refills the slots for a reduced inverse temperature; does nothing if they already belong to it. */
export function setIsotherm(r: Residual, tau: number): void {
  if (r.tau[0] === tau) return;
  const { exponents, powersOfTau, n, nT, nTT, exponentOf, slotOf, slots, slotsT, slotsTT, m, plain } = r;
  const logTau = Math.log(tau);
  for (let i = 0; i < exponents.length; i++) powersOfTau[i] = Math.exp(exponents[i]! * logTau);
  slots.fill(0);
  slotsT.fill(0);
  slotsTT.fill(0);
  for (let i = 0; i < plain; i++) {
    const power = powersOfTau[exponentOf[i]!]!;
    const slot = slotOf[i]!;
    slots[slot]! += n[i]! * power;
    slotsT[slot]! += nT[i]! * power;
    slotsTT[slot]! += nTT[i]! * power;
  }
  for (let i = plain; i < n.length; i++) {
    const e = exponentOf[i]!;
    const slot = slotOf[i]!;
    const power = m[i - plain]!;
    const tauM = Math.exp(power * logTau);
    const c = n[i]! * powersOfTau[e]! * Math.exp(-tauM);
    const k = exponents[e]! - power * tauM;
    slots[slot]! += c;
    slotsT[slot]! += k * c;
    slotsTT[slot]! += (k * (k - 1) - power * power * tauM) * c;
  }
  r.tau[0] = tau;
}

/** alpha and its first two delta derivatives (times delta, delta^2) on the present isotherm, into out[0..2]. */
export function residualOnIsotherm(r: Residual, delta: number): void {
  analyticAlong(r, delta);
  if (r.gaussians.length > 0) addGaussians(r, delta, false);
  if (r.nonAnalytic.length > 0) addNonAnalytic(r, delta, false);
}

/** The power and exponential terms of `alongIsotherm`. */
function analyticAlong(r: Residual, delta: number): void {
  const { l, first, degree, slots, out } = r;
  let a0 = 0;
  let a1 = 0;
  let a2 = 0;
  for (let b = 0; b < l.length; b++) {
    const start = first[b]!;
    let s = 0;
    let s1 = 0;
    let s2 = 0;
    for (let i = start + degree[b]!; i >= start; i--) {
      s2 = s2 * delta + s1;
      s1 = s1 * delta + s;
      s = s * delta + slots[i]!;
    }
    s1 *= delta;
    s2 *= 2 * delta * delta;
    const power = l[b]!;
    if (power === 0) {
      a0 += s;
      a1 += s1;
      a2 += s2;
      continue;
    }
    let x = delta;
    for (let k = 1; k < power; k++) x *= delta;
    const e = Math.exp(-x);
    const lx = power * x;
    a0 += e * s;
    a1 += e * (s1 - lx * s);
    a2 += e * (s2 - 2 * lx * s1 + (lx * lx - (power - 1) * lx) * s);
  }
  out[0] = a0;
  out[1] = a1;
  out[2] = a2;
}

/** alpha and all first and second derivatives (made dimensionless by delta and tau) on the present isotherm, into out. */
export function residualAt(r: Residual, delta: number): void {
  analyticAt(r, delta);
  if (r.gaussians.length > 0) addGaussians(r, delta, true);
  if (r.nonAnalytic.length > 0) addNonAnalytic(r, delta, true);
}

/** The power and exponential terms of `residualAt`: all six sums in one walk through the slots. */
function analyticAt(r: Residual, delta: number): void {
  const { l, first, degree, slots, slotsT, slotsTT, out } = r;
  out.fill(0);
  for (let b = 0; b < l.length; b++) {
    const start = first[b]!;
    let s = 0;
    let s1 = 0;
    let s2 = 0;
    let t = 0;
    let t1 = 0;
    let tt = 0;
    for (let i = start + degree[b]!; i >= start; i--) {
      s2 = s2 * delta + s1;
      s1 = s1 * delta + s;
      s = s * delta + slots[i]!;
      t1 = t1 * delta + t;
      t = t * delta + slotsT[i]!;
      tt = tt * delta + slotsTT[i]!;
    }
    s1 *= delta;
    s2 *= 2 * delta * delta;
    t1 *= delta;
    const power = l[b]!;
    let x = power === 0 ? 0 : delta;
    for (let k = 1; k < power; k++) x *= delta;
    const e = Math.exp(-x);
    const lx = power * x;
    out[0]! += e * s;
    out[1]! += e * (s1 - lx * s);
    out[2]! += e * (s2 - 2 * lx * s1 + (lx * lx - (power - 1) * lx) * s);
    out[3]! += e * t;
    out[4]! += e * (t1 - lx * t);
    out[5]! += e * tt;
  }
}
