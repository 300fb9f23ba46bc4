/** Tables of PVC pipework: derating, hanger spacing, solvent cement. As printed in plastics manuals; each table names its source. */

/** Share of the 73 °F pressure rating left at a water temperature, °F. Machinery's Handbook 31 table 14; other sheets print 0.51 at 110 and 0.31 at 130 °F, one 0.90 at 80 °F. */
export const DERATING: readonly (readonly [number, number])[] = [
  [73, 1],
  [80, 0.88],
  [90, 0.75],
  [100, 0.62],
  [110, 0.5],
  [120, 0.4],
  [130, 0.3],
  [140, 0.22],
];

/** Temperatures of the hanger table, °F. */
export const SUPPORT_TEMPERATURES: readonly number[] = [60, 80, 100, 120, 140];

export interface SupportRow {
  readonly size: string;
  readonly schedule: "40" | "80";
  /** ft, at the temperatures above */
  readonly spacing: readonly number[];
}

/** Hanger spacing of PVC pipe filled with water, ft; hanger spacing table of plastics manuals. Codes may require less. */
export const SUPPORT: readonly SupportRow[] = [
  { size: "1 in", schedule: "40", spacing: [5.5, 5, 4.5, 3, 2.5] },
  { size: "1-1/2 in", schedule: "40", spacing: [6, 5.5, 5, 3.5, 3] },
  { size: "2 in", schedule: "40", spacing: [6, 5.5, 5, 3.5, 3] },
  { size: "2-1/2 in", schedule: "40", spacing: [7, 6.5, 6, 4, 3.5] },
  { size: "3 in", schedule: "40", spacing: [7, 7, 6, 4, 3.5] },
  { size: "4 in", schedule: "40", spacing: [7.5, 7, 6.5, 4.5, 4] },
  { size: "1 in", schedule: "80", spacing: [6, 5.5, 5, 3.5, 3] },
  { size: "1-1/2 in", schedule: "80", spacing: [6.5, 6, 5.5, 3.5, 3.5] },
  { size: "2 in", schedule: "80", spacing: [7, 6.5, 6, 4, 3.5] },
  // At 80 °F the source prints 7.5 again, probably a misprint: this uses the smaller pipe's value, on the safe side.
  { size: "2-1/2 in", schedule: "80", spacing: [7.5, 6.5, 6.5, 4.5, 4] },
  { size: "3 in", schedule: "80", spacing: [8, 7.5, 7, 4.5, 4] },
  { size: "4 in", schedule: "80", spacing: [9, 8.5, 7.5, 5, 4.5] },
];

export interface CementBand {
  /** Largest size of the band, in. */
  readonly to: number;
  /** Set and cure by air band (60–100, 40–60, 0–40 °F), h. */
  readonly set: readonly [number, number, number];
  /** Cure to 180 psi, humidity to 60 %, h. */
  readonly cure: readonly [number, number, number];
  /** Cure above 180 psi, h; undefined where none is printed. */
  readonly cureHigh?: readonly [number, number, number];
  /** Highest test pressure of the last row, psi. */
  readonly highest: number;
}

/** Set and cure of PVC solvent cement by pipe size, after ASTM D2855 practice; the cement's label governs. */
export const CEMENT_BANDS: readonly CementBand[] = [
  { to: 1.25, set: [0.25, 1, 3], cure: [1, 2, 8], cureHigh: [6, 12, 48], highest: 370 },
  { to: 3, set: [0.5, 2, 6], cure: [2, 4, 16], cureHigh: [12, 24, 96], highest: 315 },
  { to: 8, set: [1, 4, 12], cure: [6, 12, 48], cureHigh: [24, 48, 192], highest: 315 },
];

/** Joints that a US quart of cement makes, by size; the same table. A quart of primer serves twice as many. */
export const JOINTS_PER_QUART: readonly (readonly [string, number])[] = [
  ["1/2 in", 300],
  ["3/4 in", 200],
  ["1 in", 125],
  ["1-1/2 in", 90],
  ["2 in", 60],
  ["3 in", 40],
  ["4 in", 30],
  ["6 in", 10],
  ["8 in", 5],
];
