/**
 * Safety classes (ASHRAE Standard 34) and lower flammability limits, kg/m³. Where sources differ, `lower` is the lower one
 * published and `other` the other one. From IEC 60335-2-40:2018 annex BB and ASHRAE Standard 34; R-454B also UL listing data.
 */
export interface Flammability {
  readonly name: string;
  readonly safetyClass: "A1" | "A2L" | "A3";
  /** kg/m³; undefined for class 1. */
  readonly lower?: number;
  readonly fromMemory?: true;
  /** Another limit published, kg/m³, and where. */
  readonly other?: { readonly limit: number; readonly where: string };
}

export const FLAMMABILITY: readonly Flammability[] = [
  { name: "R-22", safetyClass: "A1" },
  { name: "R-32", safetyClass: "A2L", lower: 0.306, other: { limit: 0.307, where: "in IEC 60335-2-40" } },
  { name: "R-134a", safetyClass: "A1" },
  { name: "R-290", safetyClass: "A3", lower: 0.038, fromMemory: true },
  { name: "R-600a", safetyClass: "A3", lower: 0.043, fromMemory: true },
  { name: "R-744", safetyClass: "A1" },
  { name: "R-1234yf", safetyClass: "A2L", lower: 0.289, fromMemory: true },
  { name: "R-1234ze(E)", safetyClass: "A2L", lower: 0.303, fromMemory: true },
  { name: "R-404A", safetyClass: "A1" },
  { name: "R-407A", safetyClass: "A1" },
  { name: "R-407C", safetyClass: "A1" },
  { name: "R-410A", safetyClass: "A1" },
  { name: "R-449A", safetyClass: "A1" },
  {
    name: "R-452B",
    safetyClass: "A2L",
    lower: 0.309,
    fromMemory: true,
    other: { limit: 0.311, where: "also printed" },
  },
  {
    name: "R-454B",
    safetyClass: "A2L",
    lower: 0.296,
    other: { limit: 0.353, where: "by ASHRAE 34, worst case of formulation" },
  },
  { name: "R-507A", safetyClass: "A1" },
  { name: "R-513A", safetyClass: "A1" },
];
