/** Meaning of the arrangements, for help pages. */
export const ARRANGEMENT_REMARKS: readonly string[] = [
  "Transfer units and capacity ratio refer to the smaller capacity rate (flow times heat capacity).",
  "Crossflow mixed hot or mixed cold: the hot stream counts as the one with the smaller capacity rate, as with refrigerant gas and pool water. If the cold stream is the smaller one, choose the other of the two.",
  "Shell and tube: one shell, an even number of tube passes. Condensing: the hot stream keeps its temperature, capacity ratio 0.",
];
