import type { IdealData } from "../data/fluidData";

/**
 * An ideal-gas Helmholtz energy in temperature itself, so that blends merge their components' terms:
 * alpha0 - ln(rho) = k0 + k1 / T - log ln T + sum n T^-t + sum n ln(1 - exp(-theta / T)).
 */
export interface Ideal {
  readonly k0: number;
  readonly k1: number;
  readonly log: number;
  readonly powers: Float64Array;
  readonly einstein: Float64Array;
  /** alpha0 - ln(rho), tau alpha0_tau, tau^2 alpha0_tautau, and the temperature they belong to. */
  readonly out: Float64Array;
}

/** One component's published ideal part with its reducing point and its share in the sum. */
export interface IdealPart {
  readonly ideal: IdealData;
  readonly reducing: { readonly temperature: number; readonly density: number };
  readonly share: number;
  /** Added to the part's alpha0: the ideal entropy of mixing, ln x. */
  readonly mixing: number;
}

/**
 * Merges ideal parts. `zero` shifts enthalpy and entropy: it is subtracted, in K (h0 / R) and dimensionless (s0 / R).
 */
export function compileIdeal(parts: readonly IdealPart[], zero: { enthalpy: number; entropy: number }): Ideal {
  let k0 = zero.entropy;
  let k1 = -zero.enthalpy;
  let log = 0;
  const powers: number[] = [];
  const einstein: number[] = [];
  for (const { ideal, reducing, share, mixing } of parts) {
    const T = reducing.temperature;
    k0 += share * (ideal.a1 + ideal.log * Math.log(T) - Math.log(reducing.density) + mixing);
    k1 += share * ideal.a2 * T;
    log += share * ideal.log;
    for (const [n, t] of ideal.powers) powers.push(share * n * T ** t, t);
    for (const [n, t] of ideal.einstein) einstein.push(share * n, t * T);
  }
  return {
    k0,
    k1,
    log,
    powers: Float64Array.from(powers),
    einstein: Float64Array.from(einstein),
    out: Float64Array.of(0, 0, 0, -1),
  };
}

/** The ideal part at a temperature in K, into out[0..2]. */
export function idealAt(ideal: Ideal, temperature: number): void {
  const { powers, einstein, out, log } = ideal;
  if (out[3] === temperature) return;
  const logT = Math.log(temperature);
  let a = ideal.k0 + ideal.k1 / temperature - log * logT;
  let at = ideal.k1 / temperature + log;
  let att = -log;
  for (let i = 0; i < powers.length; i += 2) {
    const t = powers[i + 1]!;
    const c = powers[i]! * Math.exp(-t * logT);
    a += c;
    at += t * c;
    att += t * (t - 1) * c;
  }
  for (let i = 0; i < einstein.length; i += 2) {
    const n = einstein[i]!;
    const x = einstein[i + 1]! / temperature;
    const e = Math.exp(-x);
    const q = x / (1 - e);
    a += n * Math.log(1 - e);
    at += n * q * e;
    att -= n * q * q * e;
  }
  out[0] = a;
  out[1] = at;
  out[2] = att;
  out[3] = temperature;
}
