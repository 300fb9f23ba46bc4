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
