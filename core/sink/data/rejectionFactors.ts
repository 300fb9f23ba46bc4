/**
 * Heat rejected per refrigeration, by evaporating and condensing temperature: a published table of the era. The
 * compressor maker's own data override it.
 */

export const COMPRESSORS = ["suction-cooled hermetic", "open"] as const;
export type Compressor = (typeof COMPRESSORS)[number];

/** Condensing temperatures of the columns, °C. */
export const CONDENSING_GRID: readonly number[] = [30, 35, 40, 45, 50, 55, 60];

/** Evaporating temperatures of the rows, °C. */
export const EVAPORATING_GRID: readonly number[] = [-20, -15, -10, -5, 0, 5, 10];

export const FACTORS: Readonly<Record<Compressor, readonly (readonly number[])[]>> = {
  open: [
    [1.24, 1.27, 1.31, 1.35, 1.39, 1.44, 1.49],
    [1.21, 1.24, 1.28, 1.31, 1.35, 1.39, 1.44],
    [1.18, 1.21, 1.24, 1.27, 1.31, 1.35, 1.39],
    [1.15, 1.18, 1.21, 1.24, 1.28, 1.31, 1.35],
    [1.12, 1.15, 1.18, 1.2, 1.24, 1.27, 1.31],
    [1.1, 1.13, 1.15, 1.17, 1.2, 1.24, 1.27],
    [1.08, 1.11, 1.13, 1.15, 1.18, 1.2, 1.24],
  ],
  "suction-cooled hermetic": [
    [1.37, 1.4, 1.45, 1.48, 1.54, 1.6, 1.65],
    [1.32, 1.35, 1.39, 1.43, 1.47, 1.53, 1.58],
    [1.28, 1.31, 1.33, 1.37, 1.42, 1.47, 1.52],
    [1.24, 1.26, 1.29, 1.33, 1.37, 1.41, 1.46],
    [1.2, 1.22, 1.25, 1.28, 1.32, 1.36, 1.41],
    [1.16, 1.19, 1.22, 1.24, 1.27, 1.31, 1.35],
    [1.13, 1.15, 1.18, 1.21, 1.24, 1.26, 1.29],
  ],
};

/** Evaporating temperatures below the table, °C, of which only the 30 °C column was legible, coldest first. */
export const COLDER: readonly number[] = [-35, -30, -25];

/** Factors of those rows at 30 °C condensing. */
export const COLDER_AT_30: Readonly<Record<Compressor, readonly number[]>> = {
  open: [1.37, 1.327, 1.28],
  "suction-cooled hermetic": [1.56, 1.49, 1.43],
};
