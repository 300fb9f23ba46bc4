import type { FluidData } from "../fluidData";

/** Equation of state: Eric W. Lemmon, Mark O. McLinden, Wolfgang Wagner (2009) J. Chem. Eng. Data 54:3141-3180 doi:10.1021/je900217v. */
export const R290: FluidData = {
  name: "R-290",
  formula: "C3H8",
  source:
    "Eric W. Lemmon, Mark O. McLinden, Wolfgang Wagner (2009) J. Chem. Eng. Data 54:3141-3180 doi:10.1021/je900217v",
  uncertainty: "density 0.03 %, vapour pressure 0.02 % above 180 K, heat capacity 0.5 %, speed of sound 0.03 %",
  molarMass: 0.04409562,
  gasConstant: 8.314472,
  acentric: 0.1521,
  reducing: { temperature: 369.89, density: 5000 },
  critical: { temperature: 369.89, pressure: 4251200, density: 5000 },
  range: { triple: 85.525, hottest: 650, pressure: 1000000000 },
  ideal: {
    a1: -4.970583,
    a2: 4.29352,
    log: 3,
    powers: [],
    einstein: [
      [3.043, 1.062478],
      [5.874, 3.344237],
      [9.337, 5.363757],
      [7.922, 11.762957],
    ],
  },
  powers: [
    [0.042910051, 1, 4, 0],
    [1.7313671, 0.33, 1, 0],
    [-2.4516524, 0.8, 1, 0],
    [0.34157466, 0.43, 2, 0],
    [-0.46047898, 0.9, 2, 0],
    [-0.66847295, 2.46, 1, 1],
    [0.20889705, 2.09, 3, 1],
    [0.19421381, 0.88, 6, 1],
    [-0.22917851, 1.09, 6, 1],
    [-0.60405866, 3.25, 2, 2],
    [0.066680654, 4.62, 3, 2],
  ],
  gaussians: [
    [0.017534618, 0.76, 1, 0.963, 1.283, 2.33, 0.684],
    [0.33874242, 2.5, 1, 1.977, 0.6936, 3.47, 0.829],
    [0.22228777, 2.75, 1, 1.917, 0.788, 3.15, 1.419],
    [-0.23219062, 3.05, 2, 2.307, 0.473, 3.19, 0.817],
    [-0.09220694, 2.55, 2, 2.546, 0.8577, 0.92, 1.5],
    [-0.47575718, 8.4, 4, 3.28, 0.271, 18.8, 1.426],
    [-0.017486824, 6.75, 1, 14.6, 0.948, 547.8, 1.093],
  ],
};
