import type { FluidData } from "../fluidData";

/** R-1234ze(E) by the equation of state that `source` cites. */
export const R1234ZEE: FluidData = {
  name: "R-1234ze(E)",
  formula: "trans-CF3CH=CHF",
  source: "tholLemmon2016",
  uncertainty: "density 0.1 %, vapour pressure 0.1 %, heat capacity 2 %, speed of sound 0.1 %",
  molarMass: 0.1140415928,
  gasConstant: 8.314472,
  acentric: 0.31312241846,
  reducing: { temperature: 382.513, density: 4290 },
  critical: { temperature: 382.52, pressure: 3635376.34913, density: 4290 },
  range: { triple: 168.62, hottest: 420, pressure: 15000000 },
  ideal: {
    a1: -12.5586602313194,
    a2: 8.79132625741231,
    log: 3,
    powers: [],
    einstein: [
      [9.3575, 1.34113088966911],
      [10.717, 5.15538034001459],
    ],
  },
  powers: [
    [0.03982797, 1, 4, 0],
    [1.812227, 0.223, 1, 0],
    [-2.537512, 0.755, 1, 0],
    [-0.5333254, 1.24, 2, 0],
    [0.1677031, 0.44, 3, 0],
    [-1.323801, 2, 1, 2],
    [-0.6694654, 2.2, 3, 2],
    [0.8072718, 1.2, 2, 1],
    [-0.7740229, 1.5, 2, 2],
    [-0.01843846, 0.9, 7, 1],
  ],
  gaussians: [
    [1.407916, 1.33, 1, 1, 0.728, 1.21, 0.943],
    [-0.4237082, 1.75, 1, 1.61, 0.87, 1.37, 0.642],
    [-0.2270068, 2.11, 3, 1.24, 0.855, 0.98, 0.59],
    [-0.805213, 1, 3, 9.34, 0.79, 171, 1.2],
    [0.00994318, 1.5, 2, 5.78, 1.3, 47.4, 1.33],
    [-0.008798793, 1, 1, 3.08, 0.71, 15.4, 0.64],
  ],
};
