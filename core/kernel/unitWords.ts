/** Translates units as people write them into the spelling that the unit reader knows. */

/** Trade units besides the table's: a number of units that the reader knows. A cubic foot of natural gas: 1,037 BTU (US EIA, 2019); columns of water: NIST SP 811, conventional. */
export const TRADE: readonly (readonly [name: string, number: number, unit: string])[] = [
  ["gpm", 1, "gal/minute"],
  ["gph", 1, "gal/h"],
  ["lpm", 1, "L/minute"],
  ["lps", 1, "L/s"],
  ["cfm", 1, "ft^3/minute"],
  ["mph", 1, "mi/h"],
  ["kph", 1, "km/h"],
  ["cmh", 1, "m^3/h"],
  ["fpm", 1, "ft/minute"],
  ["knot", 1852, "m/h"],
  ["kBTU", 1000, "BTU"],
  ["MBH", 1000, "BTU/h"],
  ["therm", 100000, "BTU"],
  ["Mcf", 1037000, "BTU"],
  ["ccf", 103700, "BTU"],
  ["tonRefrigeration", 12000, "BTU/h"],
  ["inHg", 3386.388640341, "Pa"],
  ["ftH2O", 2989.06692, "Pa"],
  ["inH2O", 249.08891, "Pa"],
  ["mH2O", 9806.65, "Pa"],
  ["cP", 0.001, "Pa s"],
  ["micron", 0.13332236842105263, "Pa"],
  ["cord", 128, "ft^3"],
  // In water, whose litre weighs a kilogram.
  ["ppm", 0.001, "kg/m^3"],
];

/** Groups of spellings: the reader's own first, then others for it. Case doesn't matter. */
const SPELLINGS =
  "gpm usgpm|gph|lpm|lps|cfm|cmh|mph|kph|fpm|knot knots kn kt kts|psi|Pa|kPa|bar|inHg|W|kW|kWh|hp bhp|BTU|kBTU|MMBTU|BTU/h btuh|kBTU/h kbtuh|MBH mbtuh|therm therms thm|Mcf|ccf|tonRefrigeration ton tons tr rt|gal gals gallon gallons|L liter liters litre litres|ft feet foot lf|ft^2 sf|ft^3 cf|m meter meters metre metres|in inch inches|h hr hrs hour hours|minute minutes|cord|cP";

const WORDS: ReadonlyMap<string, string> = new Map(
  SPELLINGS.split("|").flatMap((group) => {
    const spellings = group.split(" ");
    return spellings.map((each) => [each.toLowerCase(), spellings[0] ?? ""] as const);
  }),
);

const DEGREE = /(?:°|º|\bdeg(?:rees?)?\b)\s*([FCK])\b|\b(?:fahrenheit)\b|\b(?:celsius)\b/giu;
/** "hr°F" */
const BEFORE_DEGREE = /(?<=[a-z\d])(?=[°º])/gi;
/** F and C behind another unit are degrees: no kind has a charge or a capacitance. */
const BARE_SCALE = /(?<=[\s*/(-])[fc]\b/gi;
/** "kW-h", "ft2-F": the trade's sign of multiplication. */
const HYPHEN = /(?<=[a-z\d)])-(?=[a-z(])/gi;
const WATER_COLUMN = /\b(?:(ft|feet|foot)|(in|inch|inches)|m)\s*(?:of\s+)?(?:water|wc|wg|h2o)\b/gi;
const POWER = /\b(?:(sq|square)|cu|cubic)\s*(?=(?:ft|feet|foot|in|inch|inches|m|met(?:er|re)s?|yd)\b)([a-z]+)/gi;

/** Replaces trade spellings by those that the unit reader knows. */
export function spelled(text: string): string {
  return text
    .replace(/[\u2212\u2013]/g, "-")
    .replace(/²/g, "^2")
    .replace(/³/g, "^3")
    .replace(/[·⋅]/g, " ")
    .replace(/(?<=[a-z])\./gi, "")
    .replace(/\bUS\s+(?=g)|\s*\(US\)|\blinear\s+/gi, "")
    .replace(/\s+per\s+/gi, "/")
    .replace(BEFORE_DEGREE, " ")
    .replace(DEGREE, (whole, letter?: string) => {
      const scale = (letter ?? whole).charAt(0).toUpperCase();
      return scale === "K" ? "K" : scale === "F" ? "degF" : "degC";
    })
    .replace(/\bdeg([fc])\b/gi, (_, letter: string) => `deg${letter.toUpperCase()}`)
    .replace(BARE_SCALE, (letter) => `deg${letter.toUpperCase()}`)
    .replace(HYPHEN, " ")
    .replace(/\b(tons?)\s+of\s+refrigeration/gi, "$1")
    .replace(/\bmillion\s+btus?\b/gi, "MMBTU")
    .replace(/\bgal\/min\b/gi, "gpm")
    .replace(/\bin\s+hg\b/gi, "inHg")
    .replace(WATER_COLUMN, (_, feet?: string, inches?: string) => `${feet ? "ft" : inches ? "in" : "m"}H2O`)
    .replace(/\bmicrons?\b|\b(?:milli|m)torr\b/gi, "micron")
    .replace(/[Ω\u2126]/g, "ohm")
    .replace(POWER, (_, square: string | undefined, unit: string) => `${unit}^${square === undefined ? 3 : 2}`)
    .replace(/\b(ft|in|m)([23])(?=\b|K\b)/gi, "$1^$2")
    .replace(/\blb[fs]?\s*\/\s*in\^2/gi, "psi")
    .replace(/(?<=\d|\s|^)'$/, "ft")
    .replace(/(?<=\d|\s|^)"$/, "in")
    .replace(/[a-z]+/gi, (word) => WORDS.get(word.toLowerCase()) ?? word)
    .trim();
}
