/** A step of what nears its end exponentially: heat that falls in a straight line over the temperature. */

const THIRD = 1 / 3;
const SIXTH = 1 / 6;

/**
 * (1 − (1 − e^−z)/z)/z for z = slope × time ÷ capacity: a step's mean lies above its start by heat × time ÷ capacity × this, its
 * end by heat × time ÷ capacity × (1 − z × this).
 */
export const meanPart = (z: number): number =>
  z < 0.2 ? 0.5 * (1 - z * THIRD * (1 - z * 0.25 * (1 - z * 0.2 * (1 - z * SIXTH)))) : (1 + Math.expm1(-z) / z) / z;
