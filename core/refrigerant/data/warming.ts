/**
 * 100-year warming potentials of single substances. IPCC Fourth Assessment Report (AR4), table 2.14; values missing there from
 * Regulation (EU) No 517/2014, annexes II and IV. From memory; blends follow by mass and agree with their printed values.
 */
export interface Warming {
  readonly name: string;
  readonly potential: number;
  readonly report: "AR4" | "EU 517/2014";
}

export const WARMING: readonly Warming[] = [
  { name: "R-22", potential: 1810, report: "AR4" },
  { name: "R-32", potential: 675, report: "AR4" },
  { name: "R-125", potential: 3500, report: "AR4" },
  { name: "R-134a", potential: 1430, report: "AR4" },
  { name: "R-143a", potential: 4470, report: "AR4" },
  { name: "R-290", potential: 3, report: "EU 517/2014" },
  { name: "R-600a", potential: 3, report: "EU 517/2014" },
  { name: "R-744", potential: 1, report: "AR4" },
  { name: "R-1234yf", potential: 4, report: "EU 517/2014" },
  { name: "R-1234ze(E)", potential: 7, report: "EU 517/2014" },
];

/** Later tables: the Annex of Regulation (EU) 2024/573 (for single HFCs as AR4), and the IPCC's fifth and sixth reports. */
export const LATER_REPORTS = ["EU 2024/573", "AR5", "AR6"] as const;
export type LaterReport = (typeof LATER_REPORTS)[number];

/**
 * By substance, in the order of `LATER_REPORTS`; undefined where not at hand. AR5 prints "below 1" for R-1234yf and
 * R-1234ze(E): the regulation's figures fill in. From memory but for the regulation's HFCs.
 */
export const LATER_WARMING: Readonly<Record<string, readonly (number | undefined)[]>> = {
  "R-22": [1810, 1760, 1960],
  "R-32": [675, 677, 771],
  "R-125": [3500, 3170, 3740],
  "R-134a": [1430, 1300, 1530],
  "R-143a": [4470, 4800, 5810],
  "R-290": [0.02, undefined, 0.02],
  "R-744": [1, 1, 1],
  "R-1234yf": [0.501, 0.501, 0.501],
  "R-1234ze(E)": [1.37, 1.37, 1.37],
};
