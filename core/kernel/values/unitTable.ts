/**
 * Units that a text may use, in SI base units. Sources: NIST Special Publication 811 (2008), appendix B; the US wet
 * measures and the trade's short names as mathjs 15 lists them, with its rounding (an acre of 4046.86 m²). A test compares
 * every name with mathjs.
 */

/** Powers of ten of the prefixes, short and long. */
export const PREFIXES =
  "da deca 1|h hecto 2|k kilo 3|M mega 6|G giga 9|T tera 12|P peta 15|E exa 18|Z zetta 21|Y yotta 24|R ronna 27|Q quetta 30|" +
  "d deci -1|c centi -2|m milli -3|u micro -6|n nano -9|p pico -12|f femto -15|a atto -18|z zepto -21|y yocto -24|r ronto -27|q quecto -30";

/**
 * Exponents of kg, m, s, A and K; then groups "names size prefixes". Prefixes: S short, L long, SL both, 2 and 3 short with
 * their square and cube, MM a million; none where nothing follows the size.
 */
export const NAMED_UNITS: readonly (readonly [dimension: readonly number[], names: string])[] = [
  [
    [0, 1],
    "meter meters 1 L|m 1 S|inch inches in .0254|foot feet ft .3048|yard yards yd .9144|mile miles mi 1609.344|link links li .201168|rod rods 5.0292|rd 5.02921|chain chains ch 20.1168|angstrom angstroms 1e-10|mil .0000254",
  ],
  [
    [0, 2],
    "m2 1 2|sqin .00064516|sqft sqfeet .09290304|sqyd sqyard .83612736|sqmi sqmile sqmiles 2589988.110336|sqrd 25.29295|sqch 404.6873|sqmil 6.4516e-10|acre acres 4046.86|hectare hectares 1e4",
  ],
  [
    [0, 3],
    "m3 1 3|L l lt .001 S|litre litres liter liters .001 L|cuin .000016387064|cuft .028316846592|cuyd .764554857984|teaspoon teaspoons 5e-6|tablespoon tablespoons .000015|drop gtt gtts 5e-8|minim minims 6.1611519921875e-8|fluiddram fluiddrams fldr .0000036966911953125|fluidounce fluidounces floz .0000295735295625|gill gills gi .00011829411825|cc 1e-6|cup cups cp .0002365882365|pint pints pt .000473176473|quart quarts qt .000946352946|gallon gallons gal .003785411784|beerbarrel beerbarrels bbl .117347765304|oilbarrel oilbarrels obl .158987294928|hogshead hogsheads .238480942392",
  ],
  [
    [1],
    "g .001 S|gram grams .001 L|ton tons 907.18474 S|t 1000 S|tonne tonnes 1000 L|grain grains gr .00006479891|dram drams dr .0017718451953125|ounce ounces oz .028349523125|poundmass poundmasses lbm lb lbs .45359237|hundredweight hundredweights cwt 45.359237|stick sticks .115|stone 6.35029318",
  ],
  [
    [0, 0, 1],
    "s 1 S|second seconds sec secs 1 L|min mins minute minutes 60|h hr hrs hour hours 3600|day days 86400|week weeks 604800|month months 2629800|year years 31557600|decade decades 315576e3|century centuries 315576e4|millennium millennia 315576e5",
  ],
  [[0, 0, -1], "hertz 1 L|Hz 1 S"],
  [[0, 0, 0, 1], "A 1 S|ampere amperes amp amps 1 L"],
  [[0, 0, 0, 0, 1], "K 1 S|kelvin 1 L|degC 1 S|celsius 1 L|degF 5/9 S|fahrenheit 5/9 L|degR 5/9 S|rankine 5/9 L"],
  [
    [1, 1, -2],
    "N 1 S|newton 1 L|dyn 1e-5 S|dyne 1e-5 L|lbf poundforce 4.4482216152605|kip kips 4448.2216 L|kgf kilogramforce 9.80665",
  ],
  [
    [1, 2, -2],
    "J 1 S|joule joules 1 L|erg 1e-7 SL|Wh 3600 S|BTU BTUs 1055.05585262 MM|eV 1.602176565e-19 S|electronvolt electronvolts 1.602176565e-19 L",
  ],
  [[1, 2, -3], "W VA 1 S|watt watts 1 L|hp 745.6998715386"],
  [
    [1, -1, -2],
    "Pa 1 S|psi 6894.75729276459|atm 101325|bar 1e5 SL|torr mmHg mmhg 133.322|mmH2O mmh2o 9.80665|cmH2O cmh2o 98.0665",
  ],
  [[0, 0, 1, 1], "coulomb coulombs 1 L|C 1 S|Ah 3600 S"],
  [[-1, -2, 4, 2], "farad farads 1 L|F 1 S"],
  [[1, 2, -3, -1], "volt volts 1 L|V 1 S"],
  [[1, 2, -3, -2], "ohm ohms 1 SL"],
  [[1, 2, -2, -2], "henry 1 L|H 1 S"],
  [[-1, -2, 3, 2], "siemens 1 L|S 1 S"],
  [[1, 2, -2, -1], "weber webers 1 L|Wb 1 S"],
  [[1, 0, -2, -1], "tesla teslas 1 L|T 1 S"],
];

/** Zero points of the shifted scales, in their own degrees. */
export const ZERO_POINTS: Readonly<Record<string, number>> = {
  degC: 273.15,
  celsius: 273.15,
  degF: 459.67,
  fahrenheit: 459.67,
};
