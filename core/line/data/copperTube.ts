/**
 * Refrigeration copper tube by nominal (true) outside diameter, inches: ASTM B280.
 * Annealed coils to 1-1/8 in: table 1, as opened (bore areas 0.0284, 0.0483, 0.0760, 0.149, 0.242, 0.363, 0.484,
 * 0.825 in²); 1-3/8 and 1-5/8 in from a gas systems firm's pressure sheet for B280 tube.
 * Drawn straight lengths: the same sheet; 1/4 in (0.025) and 2-5/8 in from memory; 5/16 in isn't listed.
 */
export interface CopperTube {
  readonly size: string;
  /** in */
  readonly outside: number;
  /** Wall of annealed coils, in; undefined where the size isn't coiled. */
  readonly coil: number | undefined;
  /** Wall of drawn straight lengths, in; undefined where they aren't listed. */
  readonly straight: number | undefined;
}

export const COPPER_TUBE: readonly CopperTube[] = [
  { size: "1/4 in", outside: 0.25, coil: 0.03, straight: 0.025 },
  { size: "5/16 in", outside: 0.3125, coil: 0.032, straight: undefined },
  { size: "3/8 in", outside: 0.375, coil: 0.032, straight: 0.03 },
  { size: "1/2 in", outside: 0.5, coil: 0.032, straight: 0.035 },
  { size: "5/8 in", outside: 0.625, coil: 0.035, straight: 0.04 },
  { size: "3/4 in", outside: 0.75, coil: 0.035, straight: 0.042 },
  { size: "7/8 in", outside: 0.875, coil: 0.045, straight: 0.045 },
  { size: "1-1/8 in", outside: 1.125, coil: 0.05, straight: 0.05 },
  { size: "1-3/8 in", outside: 1.375, coil: 0.055, straight: 0.055 },
  { size: "1-5/8 in", outside: 1.625, coil: 0.06, straight: 0.06 },
  { size: "2-1/8 in", outside: 2.125, coil: undefined, straight: 0.07 },
  { size: "2-5/8 in", outside: 2.625, coil: undefined, straight: 0.08 },
];
