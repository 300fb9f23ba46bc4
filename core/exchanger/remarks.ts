/** What arrangements mean, for help pages. */
export const ARRANGEMENT_REMARKS: readonly string[] = [
  "Transfer units and capacity ratio stand on the smaller capacity rate (flow times heat capacity).",
  "Crossflow mixed hot or mixed cold: the hot stream is taken as that of the smaller capacity rate, as refrigerant gas beside pool water. Where the cold stream is the smaller one, name the other of the two.",
  "Shell and tube: one shell, an even number of tube passes. Condensing: the hot stream keeps its temperature, capacity ratio 0.",
];
