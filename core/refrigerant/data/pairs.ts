import type { PairData, PowerTerm } from "./fluidData";

// Departure functions: rows n, t, d, l of n tau^t delta^d exp(-delta^l).
const R32_R125: readonly PowerTerm[] = [
  [-0.0072955, 4.5, 2, 1],
  [0.078035, 0.57, 5, 1],
  [0.61007, 1.9, 1, 2],
  [0.64246, 1.2, 3, 2],
  [0.014965, 0.5, 9, 2],
  [-0.34049, 2.6, 2, 3],
  [0.085658, 11.4, 3, 3],
  [-0.064429, 4.5, 6, 3],
];
const R32_R1234YF: readonly PowerTerm[] = [
  [0.449487, 2.538296, 1, 1],
  [-0.099708, 3.208604, 2, 1],
  [0.098897, 0.456509, 3, 1],
];
const R32_R134A: readonly PowerTerm[] = [
  [0.22909, 1.9, 1, 1],
  [0.094074, 0.25, 3, 1],
  [0.00039876, 0.07, 8, 1],
  [0.021113, 2, 1, 2],
];
const GENERAL_HFC: readonly PowerTerm[] = [
  [-0.013073, 7.4, 1, 1],
  [0.018259, 0.35, 3, 1],
  [8.1299e-6, 10, 11, 2],
  [0.0078496, 5.3, 2, 3],
];
const R1234YF_R134A: readonly PowerTerm[] = [
  [0.0519, 2.477314, 1, 1],
  [-0.011472, 0.070541, 2, 2],
];
const R125_R1234YF: readonly PowerTerm[] = [[-0.032013, 0.00803, 1, 1]];

/**
 * Binary parameters of the multi-fluid mixture model; beta and gamma are for the order (first, second).
 * The 2004 pairs were published as xi (K) and zeta (m3/mol): gammaT = (Ti + Tj + xi) / (2 sqrt(Ti Tj)),
 * gammaV = 4 (vi + vj + zeta) / (vi^(1/3) + vj^(1/3))^3.
 */
export const PAIRS: readonly PairData[] = [
  {
    first: "R-32",
    second: "R-125",
    betaT: 1,
    gammaT: 1.0420900819859578,
    betaV: 1,
    gammaV: 1.00509341280861,
    factor: 1,
    departure: R32_R125,
    source: "lemmonJacobsen2004",
  },
  {
    first: "R-32",
    second: "R-1234yf",
    betaT: 1.011011,
    gammaT: 0.966965,
    betaV: 1.007852,
    gammaV: 1.037663,
    factor: 1,
    departure: R32_R1234YF,
    source: "bell2023",
  },
  {
    first: "R-32",
    second: "R-134a",
    betaT: 1,
    gammaT: 1.0114075810415268,
    betaV: 1,
    gammaV: 1.013720725881553,
    factor: 1,
    departure: R32_R134A,
    source: "lemmonJacobsen2004",
  },
  {
    first: "R-125",
    second: "R-134a",
    betaT: 1,
    gammaT: 1.000599138705133,
    betaV: 1,
    gammaV: 0.999297721470804,
    factor: 1,
    departure: GENERAL_HFC,
    source: "lemmonJacobsen2004",
  },
  {
    first: "R-1234yf",
    second: "R-134a",
    betaT: 1.000026,
    gammaT: 0.987057,
    betaV: 1.000272,
    gammaV: 1.003747,
    factor: 1,
    departure: R1234YF_R134A,
    source: "bell2022",
  },
  {
    first: "R-125",
    second: "R-1234yf",
    betaT: 0.999969,
    gammaT: 0.998028,
    betaV: 0.998226,
    gammaV: 1.006068,
    factor: 1,
    departure: R125_R1234YF,
    source: "bell2023",
  },
  {
    first: "R-125",
    second: "R-143a",
    betaT: 1,
    gammaT: 1.0081512857406922,
    betaV: 1,
    gammaV: 0.99931321302345,
    factor: 1.1697,
    departure: GENERAL_HFC,
    source: "lemmonJacobsen2004",
  },
  {
    first: "R-134a",
    second: "R-143a",
    betaT: 1,
    gammaT: 1.0040046507006735,
    betaV: 1,
    gammaV: 1.001634906079269,
    factor: 0.5557,
    departure: GENERAL_HFC,
    source: "lemmonJacobsen2004",
  },
];
