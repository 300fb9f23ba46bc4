/** 0 °F on the absolute scale, K. */
export const FAHRENHEIT_ZERO = (459.67 * 5) / 9;

/** Standard gravity, m/s². */
export const GRAVITY = 9.80665;
