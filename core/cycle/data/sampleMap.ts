/**
 * Coefficients of a 3-ton R-410A compressor, printed in public samples (ACHP): mass flow in lb/h and power in W over °F, at
 * 20 °F of superheat.
 */
export const SAMPLE_MAP = [
  [217.3163128, -561.3615705],
  [5.094492028, -15.62601841],
  [-0.593170311, 46.92506685],
  [4.38e-2, -0.217949552],
  [-2.14e-2, 0.435062616],
  [1.04e-2, -0.442400826],
  [7.9e-5, 2.25e-4],
  [-5.73e-5, 2.37e-3],
  [1.79e-4, -3.32e-3],
  [-8.08e-5, 2.5e-3],
] as const;
