import type { Source } from "../../kernel/reference";

export interface WallMaterial {
  readonly material: "titanium" | "cupronickel 90-10" | "stainless 304" | "copper";
  /** W/(m·K) at room temperature. */
  readonly conductivity: number;
  readonly source: Source;
}

/** Tube materials. Titanium: the lowest of the published values (16.0, 17, 21.6). */
export const WALLS: readonly WallMaterial[] = [
  { material: "titanium", conductivity: 16.0, source: "titaniumSheet" },
  { material: "cupronickel 90-10", conductivity: 44.9, source: "corrosionPrinciples" },
  { material: "stainless 304", conductivity: 15.0, source: "corrosionPrinciples" },
  { material: "copper", conductivity: 339, source: "copperTubeConductivity" },
];
