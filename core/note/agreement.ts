/** When a hand calculation and a computed value agree. */
import { quantity } from "../kernel/define/argument";

/** A value may be of any quantity: yearly heat in BTU is the largest. */
export const ANY = { usual: [-1e11, 1e11] } as const;

export const TOLERANCE = quantity("fraction", "difference allowed, as a fraction of the computed value", {
  from: 0,
  to: 1,
}).default(0.02);

/** Whether two values differ by no more than a fraction of the computed one. */
export function agree(byHand: number, computed: number, tolerance: number): boolean {
  return Math.abs(byHand - computed) <= tolerance * Math.abs(computed) * (1 + 1e-12);
}
