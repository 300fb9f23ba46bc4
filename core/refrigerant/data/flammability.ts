/**
 * Safety classes (ASHRAE Standard 34) and lower flammability limits, kg/m³. Where sources differ, `lower` is the lower one
 * published and `others` says the rest. From IEC 60335-2-40:2018 annex BB and ASHRAE Standard 34; R-454B also UL listing data.
 */
export interface Flammability {
  readonly name: string;
  readonly safetyClass: "A1" | "A2L" | "A3";
  /** kg/m³; undefined for class 1. */
  readonly lower?: number;
  readonly others?: string;
}

export const FLAMMABILITY: readonly Flammability[] = [
  { name: "R-22", safetyClass: "A1" },
  { name: "R-32", safetyClass: "A2L", lower: 0.306, others: "0.307 kg/m³ in IEC 60335-2-40" },
  { name: "R-134a", safetyClass: "A1" },
  { name: "R-290", safetyClass: "A3", lower: 0.038, others: "from memory" },
  { name: "R-600a", safetyClass: "A3", lower: 0.043, others: "from memory" },
  { name: "R-744", safetyClass: "A1" },
  { name: "R-1234yf", safetyClass: "A2L", lower: 0.289, others: "from memory" },
  { name: "R-1234ze(E)", safetyClass: "A2L", lower: 0.303, others: "from memory" },
  { name: "R-404A", safetyClass: "A1" },
  { name: "R-407C", safetyClass: "A1" },
  { name: "R-410A", safetyClass: "A1" },
  { name: "R-452B", safetyClass: "A2L", lower: 0.309, others: "from memory; 0.311 kg/m³ also printed" },
  { name: "R-454B", safetyClass: "A2L", lower: 0.296, others: "0.353 kg/m³ by ASHRAE 34, worst case of formulation" },
  { name: "R-507A", safetyClass: "A1" },
  { name: "R-513A", safetyClass: "A1" },
];
