import { idealAt } from "../helmholtz/ideal";
import type { Fluid } from "../refrigerant";

/** Ratio of the heat capacities cp/cv of the ideal gas at a temperature in K. */
export function idealHeatRatio(fluid: Fluid, temperature: number): number {
  const { ideal } = fluid.substance;
  idealAt(ideal, temperature);
  return 1 - 1 / (ideal.out[2] ?? 0);
}
