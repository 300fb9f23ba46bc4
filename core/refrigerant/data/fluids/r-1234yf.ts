import type { FluidData } from "../fluidData";

/** R-1234yf by the equation of state that `source` cites. */
export const R1234YF: FluidData = {
  name: "R-1234yf",
  formula: "CF3CF=CH2",
  source: "lemmonAkasaka2022",
  uncertainty: "density 0.1 %, vapour pressure 0.1 %, heat capacity 2 %, speed of sound 0.1 % (liquid)",
  molarMass: 0.1140416,
  gasConstant: 8.314462618,
  acentric: 0.276,
  reducing: { temperature: 367.85, density: 4180 },
  critical: { temperature: 367.85, pressure: 3384400, density: 4180 },
  range: { triple: 121.6, hottest: 410, pressure: 100000000 },
  ideal: {
    a1: -12.081525543189,
    a2: 8.52896238365,
    log: 3,
    powers: [],
    einstein: [
      [8.65, 1.3918716868288703],
      [9.75, 4.268044039690091],
      [2.11, 12.233247247519369],
    ],
  },
  powers: [
    [0.0340387, 1, 4, 0],
    [1.912859, 0.222, 1, 0],
    [-2.1984719881617, 0.61, 1, 0],
    [-0.8147645305033, 1.122, 2, 0],
    [0.2288282, 0.5, 3, 0],
    [-1.65436, 2.14, 1, 2],
    [-1.446628, 2.284, 3, 2],
    [0.5961722, 1.05, 2, 1],
    [-0.6148209, 2.33, 2, 2],
    [-0.0180069, 0.778, 7, 1],
  ],
  gaussians: [
    [0.2845275, 1, 1, 28.1, 0.96, 1016, 1.061],
    [-0.3050809, 2, 1, 28, 0.96, 1000, 1.062],
    [2.198935, 1.236, 1, 1.307, 0.853, 1.16, 1.3],
    [-0.4270329, 1.6, 1, 1.96, 1.15, 1.2, 1.04],
    [-0.4015581, 1.85, 1, 1.25, 1.3, 1.26, 1],
    [0.1179587, 0.7, 1, 1, 1.5, 1.6, 1.14],
    [-0.3141002, 1.75, 1, 2.2, 0.762, 0.87, 1.1],
  ],
};
