/**
 * Refrigerant concentration limits (RCL) of class 2L, kg/m³. R-32: New York City Mechanical Code, table 1103.1 (77 g/m³,
 * 4.8 lb per 1,000 ft³). The others from memory of ASHRAE 34; R-454B: the lower of two listings (49 and 74 g/m³).
 */
export const CONCENTRATION_LIMITS: Readonly<Record<string, number>> = {
  "R-32": 0.077,
  "R-1234yf": 0.075,
  "R-1234ze(E)": 0.075,
  "R-452B": 0.077,
  "R-454B": 0.049,
};
