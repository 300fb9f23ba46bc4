/**
 * Allowable stress of tube, psi by °F, read linearly between. Copper: Copper Tube Handbook, table 3c. Titanium (minimum
 * tensile over 3.5) and annealed copper-nickel from memory: estimates.
 */
export interface StressRow {
  readonly material: string;
  readonly temper: "annealed" | "drawn";
  readonly points: readonly (readonly [fahrenheit: number, psi: number])[];
  readonly fromMemory?: true;
}

const COPPER_TEMPERATURES = [100, 150, 200, 250, 300, 350, 400];
const copper = (temper: StressRow["temper"], stresses: readonly number[]): StressRow => ({
  material: "copper",
  temper,
  points: stresses.map((psi, place) => [COPPER_TEMPERATURES[place] ?? 0, psi]),
});
const estimate = (material: string, points: StressRow["points"]): StressRow => ({
  material,
  temper: "annealed",
  points,
  fromMemory: true,
});

export const STRESSES: readonly StressRow[] = [
  copper("annealed", [6000, 5100, 4900, 4800, 4700, 4000, 3000]),
  copper("drawn", [10300, 10300, 10300, 10300, 10000, 9700, 9400]),
  estimate("titanium grade 1", [
    [100, 10000],
    [200, 8500],
  ]),
  estimate("titanium grade 2", [
    [100, 14300],
    [200, 12000],
  ]),
  estimate("cupronickel 90-10", [[100, 8700]]),
  estimate("cupronickel 70-30", [[100, 12000]]),
];

/**
 * Mill tolerances of copper tube, in: up to a wall or diameter the first number, less wall or more diameter the second.
 * Fitted to a pressure sheet of ASTM B280 tube within 1 psi.
 */
export const LESS_WALL: readonly (readonly [number, number])[] = [
  [0.0345, 0.003],
  [0.0475, 0.004],
  [0.0535, 0.005],
  [0.0625, 0.006],
  [0.0745, 0.007],
];
export const MORE_DIAMETER: readonly (readonly [number, number])[] = [
  [0.625, 0.002],
  [1, 0.0025],
  [1.125, 0.0035],
  [3, 0.003],
];
