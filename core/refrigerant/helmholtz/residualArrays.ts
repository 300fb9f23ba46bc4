/** The arrays that a residual Helmholtz energy works on. */

/**
 * A residual Helmholtz energy laid out for speed. On one isotherm all terms with the same delta^d exp(-delta^l)
 * collapse to one coefficient, so a density search costs a few short polynomials: `slots` holds, for each l, the
 * coefficients by power of delta of alpha, tau alpha_tau and tau^2 alpha_tautau. The fluid owns the arrays
 * and refills them when tau changes.
 */
export interface Residual {
  /** Distinct exponents of tau, and their powers at the present tau. */
  readonly exponents: Float64Array;
  readonly powersOfTau: Float64Array;
  /** By term: n, n t, n t (t - 1), the exponent's place, the slot. */
  readonly n: Float64Array;
  readonly nT: Float64Array;
  readonly nTT: Float64Array;
  readonly exponentOf: Int32Array;
  readonly slotOf: Int32Array;
  /** Terms with exp(-tau^m): m by term, for the last of the terms. */
  readonly m: Float64Array;
  readonly plain: number;
  /** By block of equal l: l, first slot, highest power of delta. */
  readonly l: Int32Array;
  readonly first: Int32Array;
  readonly degree: Int32Array;
  readonly slots: Float64Array;
  readonly slotsT: Float64Array;
  readonly slotsTT: Float64Array;
  readonly gaussians: Float64Array;
  readonly nonAnalytic: Float64Array;
  /** Values that non-analytic terms share; see `addNonAnalytic`. */
  readonly shape: Float64Array;
  /** The tau that the slots belong to. */
  readonly tau: Float64Array;
  /** alpha, d alpha_d, d^2 alpha_dd, t alpha_t, d t alpha_dt, t^2 alpha_tt (d = delta, t = tau). */
  readonly out: Float64Array;
}
