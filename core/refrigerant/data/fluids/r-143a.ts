import type { FluidData } from "../fluidData";

/** R-143a by the equation of state that `source` cites. */
export const R143A: FluidData = {
  name: "R-143a",
  formula: "CF3CH3",
  source: "lemmonJacobsen2000",
  uncertainty: "density 0.1 %, vapour pressure 0.1 %, heat capacity 0.5 %, speed of sound 0.5 % (vapour 0.02 %)",
  molarMass: 0.08404099999999999,
  gasConstant: 8.314472,
  acentric: 0.261489646224,
  reducing: { temperature: 345.857, density: 5128.45 },
  critical: { temperature: 345.857, pressure: 3761000, density: 5128.45 },
  range: { triple: 161.34, hottest: 650, pressure: 150000000 },
  ideal: {
    a1: 5.903048119431677,
    a2: 7.307250621491637,
    log: -1,
    powers: [[-16.591049152078973, -0.33]],
    einstein: [
      [4.4402, 5.178440800677737],
      [3.7515, 2.379596191489546],
    ],
  },
  powers: [
    [7.7736443, 0.67, 1, 0],
    [-8.70185, 0.833, 1, 0],
    [-0.27779799, 1.7, 1, 0],
    [0.1460922, 1.82, 2, 0],
    [0.0089581616, 0.35, 5, 0],
    [-0.20552116, 3.9, 1, 1],
    [0.10653258, 0.95, 3, 1],
    [0.023270816, 0, 5, 1],
    [-0.013247542, 1.19, 7, 1],
    [-0.04279387, 7.2, 1, 2],
    [0.36221685, 5.9, 2, 2],
    [-0.25671899, 7.65, 2, 2],
    [-0.092326113, 7.5, 3, 2],
    [0.083774837, 7.45, 4, 2],
    [0.017128445, 15.5, 2, 3],
    [-0.01725611, 22, 3, 3],
    [0.0049080492, 19, 5, 3],
  ],
};
