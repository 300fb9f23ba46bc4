/**
 * Rules for the names of cell functions, beyond those that the metadata's own tools check. Sources: Microsoft Learn, "Custom
 * functions naming and localization" and "Excel functions (alphabetical)"; the list is from memory of the latter.
 */

const LEAST = 3;
const MOST = 64;

const LEGAL = /^[A-Z][A-Z0-9]*(\.[A-Z0-9]+)*$/;

/** `A1` to `XFD1048576`, and `R1C1`. */
const ADDRESS = /^([A-Z]{1,3}[0-9]{1,7}|R[0-9]*C[0-9]*)$/;

const AFTER_DOT: Readonly<Record<string, string>> = {
  BETA: "DIST INV",
  BINOM: "DIST DIST.RANGE INV",
  CEILING: "MATH PRECISE",
  CHISQ: "DIST DIST.RT INV INV.RT TEST",
  CONFIDENCE: "NORM T",
  COVARIANCE: "P S",
  ERF: "PRECISE",
  ERFC: "PRECISE",
  ERROR: "TYPE",
  EXPON: "DIST",
  F: "DIST DIST.RT INV INV.RT TEST",
  FLOOR: "MATH PRECISE",
  FORECAST: "ETS ETS.CONFINT ETS.SEASONALITY ETS.STAT LINEAR",
  GAMMA: "DIST INV",
  GAMMALN: "PRECISE",
  HYPGEOM: "DIST",
  ISO: "CEILING",
  LINE: "PRINT",
  LOGNORM: "DIST INV",
  MODE: "MULT SNGL",
  NEGBINOM: "DIST",
  NETWORKDAYS: "INTL",
  NORM: "DIST INV S.DIST S.INV",
  PERCENTILE: "EXC INC",
  PERCENTRANK: "EXC INC",
  POISSON: "DIST",
  QUARTILE: "EXC INC",
  RANK: "AVG EQ",
  SKEW: "P",
  STDEV: "P S",
  T: "DIST DIST.2T DIST.RT INV INV.2T TEST",
  VAR: "P S",
  WEIBULL: "DIST",
  WORKDAY: "INTL",
  Z: "TEST",
};

/** Excel's own functions and macro commands with a dot in their names, as all of ours have. */
const BUILT_IN: ReadonlySet<string> = new Set(
  Object.entries(AFTER_DOT).flatMap(([first, rest]) => rest.split(" ").map((last) => `${first}.${last}`)),
);

const faultsOf = (id: string): readonly string[] => [
  ...(LEGAL.test(id) ? [] : ["capitals and digits, parted by single periods, after a capital"]),
  ...(id.includes(".") ? [] : ["a topic, a period and a name"]),
  ...(id.length < LEAST || id.length > MOST ? [`${String(LEAST)} to ${String(MOST)} characters`] : []),
  ...(ADDRESS.test(id) ? ["no cell's address"] : []),
  ...(BUILT_IN.has(id) ? ["no function or command of Excel's own"] : []),
];

/** What is wrong with a set of ids, which files store with underscores for periods. Empty if nothing is wrong. */
export const nameFaults = (ids: readonly string[]): readonly string[] => {
  const stored = ids.map((id) => id.toUpperCase().replaceAll(".", "_"));
  const twice = ids.filter((_, place) => stored.indexOf(stored[place] ?? "") !== place);
  return [
    ...ids.flatMap((id) => faultsOf(id).map((rule) => `${id}: must be ${rule}`)),
    ...twice.map((id) => `${id}: another function is stored under the same name`),
  ];
};
