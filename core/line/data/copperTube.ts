/**
 * Refrigeration copper tube by nominal (true) outside diameter, inches.
 * To 1-1/8 in: annealed coils, ASTM B280-20 table 1, as opened (bore areas 0.0284, 0.0483, 0.0760, 0.149, 0.242, 0.363,
 * 0.484, 0.825 in²). Above: drawn lengths, ASTM B280 table 2, from memory.
 */
export interface CopperTube {
  readonly size: string;
  /** in */
  readonly outside: number;
  /** in */
  readonly wall: number;
  readonly temper: "annealed" | "drawn";
}

export const COPPER_TUBE: readonly CopperTube[] = [
  { size: "1/4 in", outside: 0.25, wall: 0.03, temper: "annealed" },
  { size: "5/16 in", outside: 0.3125, wall: 0.032, temper: "annealed" },
  { size: "3/8 in", outside: 0.375, wall: 0.032, temper: "annealed" },
  { size: "1/2 in", outside: 0.5, wall: 0.032, temper: "annealed" },
  { size: "5/8 in", outside: 0.625, wall: 0.035, temper: "annealed" },
  { size: "3/4 in", outside: 0.75, wall: 0.035, temper: "annealed" },
  { size: "7/8 in", outside: 0.875, wall: 0.045, temper: "annealed" },
  { size: "1-1/8 in", outside: 1.125, wall: 0.05, temper: "annealed" },
  { size: "1-3/8 in", outside: 1.375, wall: 0.055, temper: "drawn" },
  { size: "1-5/8 in", outside: 1.625, wall: 0.06, temper: "drawn" },
  { size: "2-1/8 in", outside: 2.125, wall: 0.07, temper: "drawn" },
  { size: "2-5/8 in", outside: 2.625, wall: 0.08, temper: "drawn" },
];
