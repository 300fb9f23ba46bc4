/** Relief factors f of C = f D L, lb of air a minute and ft²: UMC table 1113.5, which repeats ASHRAE 15 table 9.7.5. */
export const RELIEF_FACTORS: Readonly<Record<string, number>> = {
  "R-32": 1,
  "R-290": 1,
  "R-600a": 1,
  "R-744": 1,
  "R-22": 1.6,
  "R-134a": 1.6,
  "R-407C": 1.6,
  "R-407A": 2,
  "R-404A": 2.5,
  "R-410A": 2.5,
  "R-507A": 2.5,
};
