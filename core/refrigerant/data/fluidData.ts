import type { SourceKey } from "../../kernel/reference";

/** One term n tau^t delta^d exp(-delta^l) exp(-tau^m) of a residual Helmholtz energy; a factor is absent where its l or m is 0. */
export type PowerTerm = readonly [n: number, t: number, d: number, l: number, m?: number];

/** One term n tau^t delta^d exp(-eta (delta - epsilon)^2 - beta (tau - gamma)^2). */
export type GaussianTerm = readonly [
  n: number,
  t: number,
  d: number,
  eta: number,
  epsilon: number,
  beta: number,
  gamma: number,
];

/**
 * One term n Delta^b delta psi with Delta = theta^2 + B ((delta-1)^2)^a, theta = (1-tau) + A ((delta-1)^2)^(1/(2 beta)),
 * psi = exp(-C (delta-1)^2 - D (tau-1)^2).
 */
export type NonAnalyticTerm = readonly [
  n: number,
  a: number,
  b: number,
  beta: number,
  A: number,
  B: number,
  C: number,
  D: number,
];

/** Ideal-gas part ln delta + a1 + a2 tau + log ln tau + sum n tau^t + sum n ln(1 - exp(-t tau)); rows n, t. */
export interface IdealData {
  readonly a1: number;
  readonly a2: number;
  readonly log: number;
  readonly powers: readonly (readonly [n: number, t: number])[];
  readonly einstein: readonly (readonly [n: number, t: number])[];
}

/** A pure fluid's published equation of state. Temperatures K, densities mol/m3, pressures Pa, molar mass kg/mol, gas constant J/(mol K). */
export interface FluidData {
  readonly name: string;
  readonly formula: string;
  /** Where the equation of state is published. */
  readonly source: SourceKey;
  /** The equation's expected uncertainty, from its authors' summary (from memory, papers not consulted). */
  readonly uncertainty: string;
  readonly molarMass: number;
  readonly gasConstant: number;
  readonly acentric: number;
  readonly reducing: { readonly temperature: number; readonly density: number };
  readonly critical: { readonly temperature: number; readonly pressure: number; readonly density: number };
  /** Where the equation was fitted: triple point, highest temperature, highest pressure. */
  readonly range: { readonly triple: number; readonly hottest: number; readonly pressure: number };
  readonly ideal: IdealData;
  readonly powers: readonly PowerTerm[];
  readonly gaussians?: readonly GaussianTerm[];
  readonly nonAnalytic?: readonly NonAnalyticTerm[];
}

/** Binary parameters of the multi-fluid mixture model and the pair's departure function. */
export interface PairData {
  readonly first: string;
  readonly second: string;
  readonly betaT: number;
  readonly gammaT: number;
  readonly betaV: number;
  readonly gammaV: number;
  readonly factor: number;
  readonly departure: readonly PowerTerm[];
  readonly source: SourceKey;
}

/** A blend by its parts' mass fractions. */
export interface BlendData {
  readonly name: string;
  readonly parts: readonly (readonly [fluid: string, massFraction: number])[];
}
