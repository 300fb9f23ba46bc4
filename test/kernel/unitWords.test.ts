/** Units in the trade's spellings, with spaces, dots and cases as they come. */
import { describe, expect, test } from "vitest";
import type { KindName } from "../../core/kernel/values/quantity";
import { readQuantityText } from "../../core/kernel/values/quantityText";

const read = (text: string, kind: KindName): unknown => {
  const out = readQuantityText(text, kind, "US");
  return typeof out === "string" ? out : out.value;
};

/** Factors of NIST SP 811: a foot of 0.3048 m, 1 ftH2O of 2989.067 Pa and 1 inHg of 3386.389 Pa (39.2 °F and 32 °F), 1 mH2O of 9806.65 Pa, 1 inH2O of 249.0889 Pa. */
const [TON, FT_WATER, IN_WATER, IN_MERCURY] = [3516.8528421, 2989.06692, 249.08891, 3386.388640341];

test.each<[string, KindName, number]>([
  ["10 kph", "wind speed", 10 / 3.6],
  ["10 mH2O", "pressure drop", 98_066.5],
  ["256 $/cord", "price of wood", 256 / 3.624556363776],
  ["256 $/Cord", "price of wood", 256 / 3.624556363776],
  ["2 yd²", "area", 1.67225472],
  ["1 yd³", "vessel volume", 0.764554857984],
  ["1.2 Pa·s", "viscosity", 1.2],
  ["1.2 Pa⋅s", "viscosity", 1.2],
  ["20 W m^−2 K^–1", "film coefficient", 20],
  ["45 US  gpm", "water flow", 0.00283905884],
  ["13000 gal(US)", "pool volume", 49.210353192],
  ["13000 gal  (US)", "pool volume", 49.210353192],
  ["60 linear  ft", "length", 18.288],
  ["48000 BTU  per  hour", "heat rate", 4 * TON],
  ["105 Fahrenheit", "temperature", 313.7055555556],
  ["40 Celsius", "temperature", 313.15],
  ["105 degree F", "temperature", 313.7055555556],
  ["105 degrees F", "temperature", 313.7055555556],
  ["105 degf", "temperature", 313.7055555556],
  ["40 degc", "temperature", 313.15],
  ["40 º c", "temperature", 313.15],
  ["300 °K", "temperature", 300],
  ["300 deg k", "temperature", 300],
  ["1 ton of refrigeration", "heat rate", TON],
  ["4 tons  of  refrigeration", "heat rate", 4 * TON],
  ["78 million  BTUs", "heat", 82_294_356_502.36],
  ["30 in Hg", "pressure", 30 * IN_MERCURY],
  ["30 in  hg", "pressure", 30 * IN_MERCURY],
  ["12 ftwc", "pressure drop", 12 * FT_WATER],
  ["12 feet  of  water", "pressure drop", 12 * FT_WATER],
  ["12 foot H2O", "pressure drop", 12 * FT_WATER],
  ["10 m of water", "pressure drop", 98_066.5],
  ["10 m  of  water", "pressure drop", 98_066.5],
  ["10 m water", "pressure drop", 98_066.5],
  ["10 mwc", "pressure drop", 98_066.5],
  ["20 ft wg", "pressure drop", 20 * FT_WATER],
  ["0.5 in. w.c.", "pressure drop", 0.5 * IN_WATER],
  ["0.5 inH2O", "pressure drop", 0.5 * IN_WATER],
  ["0.5 inches of water", "pressure drop", 0.5 * IN_WATER],
  ["100 lb/in²", "pressure drop", 689_475.729],
  ["100 lbs / sq in", "pressure drop", 689_475.729],
  ["17 cmh", "water flow", 17 / 3600],
  ["300 ppm", "concentration", 0.3],
  ["10k", "resistance", 10_000],
  ["10 kΩ", "resistance", 10_000],
  ["10 k\u2126", "resistance", 10_000],
  ["500 mTorr", "vacuum", 66.66118421],
  ["500 millitorr", "vacuum", 66.66118421],
  ["500 MICRON", "vacuum", 66.66118421],
  ["500 Microns", "vacuum", 66.66118421],
  ["34 square meter", "area", 34],
  ["34 sq  metres", "area", 34],
  ["2 cubic yd", "vessel volume", 1.529109715968],
  ["34 M2", "area", 34],
  ['8 "', "length", 0.2032],
])("%s as %s is %d in base units", (text, kind, value) =>
  expect((read(text, kind) as number) / value).toBeCloseTo(1, 8),
);

/** NIST SP 811, appendix B.8: factors of compound units, and of the units in them. */
test.each<[string, KindName, number]>([
  ...["BTU/(h·ft²·°F)", "BTU/h·ft²·°F", "Btu/hr-ft2-F", "Btu/hr-ft²-°F", "btu/hr-ft2-f", "BTU/hr/ft²/°F"].map(
    (unit): [string, KindName, number] => [`1 ${unit}`, "film coefficient", 5.678263],
  ),
  ["20 W/m²·K", "film coefficient", 20],
  ["20 W/m² K", "film coefficient", 20],
  ["20 W/m2K", "film coefficient", 20],
  ["20 W/m²K", "film coefficient", 20],
  ["20 W/m2-C", "film coefficient", 20],
  ["1 h-ft2-F/BTU", "fouling resistance", 0.1761102],
  ["2e-4 m²-K/W", "fouling resistance", 2e-4],
  ["20 W/mK", "conductivity", 20],
  ["20 W/m-K", "conductivity", 20],
  ["20 W/m·°C", "conductivity", 20],
  ["3 kW-h", "electric energy", 10.8e6],
  ["0.15 $/kW-h", "price of electricity", 0.15 / 3.6e6],
  ["100 BTU/hr-F", "heat conductance", 52.75279],
  ["100 BTU/hr°F", "heat conductance", 52.75279],
  ["2 lbm/ft-hr", "viscosity", 2 * 4.133789e-4],
  ["11 BTU/W-h", "cooling rating", 11 * 0.2930711],
])("%s, as the trade writes products, is read as %s: %d in base units", (text, kind, value) =>
  expect((read(text, kind) as number) / value).toBeCloseTo(1, 6),
);

/** NIST SP 811: 1 BTU/ft² is 11,356.53 J/m². */
test.each<[string, number]>([
  ["4 kWh/(m²·day)", 14.4e6],
  ["4 kWh/m²/day", 14.4e6],
  ["4 kWh/m²-day", 14.4e6],
  ["4 kWh/m2 d", 14.4e6],
  ["4 kWh/m² per day", 14.4e6],
  ["4 kWh/m²", 14.4e6],
  ["14.4 MJ/(m²·day)", 14.4e6],
  ["4000 Wh/m²·d", 14.4e6],
  ["1200 BTU/ft2/day", 1200 * 11_356.53],
])("%s is a day's sun of %d J/m²", (text, value) =>
  expect((read(text, "daily sun") as number) / value).toBeCloseTo(1, 6),
);

describe("A unit in other words", () => {
  test.each<[string, KindName, string]>([
    ["6 m-s", "velocity", '"m s" is not a unit of velocity'],
    ["5 ft-F", "length", '"ft degF" is not a unit of length'],
    ["5 W/m²", "daily sun", '"W/m^2" is not a unit of daily sun'],
    ["5 W/m·K", "film coefficient", '"W/m K" is not a unit of film coefficient'],
    ["5 BTU/(h·ft²)·°F", "film coefficient", '"BTU/(h ft^2) degF" is not a unit of film coefficient'],
    ["5 BTU/h-furble-F", "film coefficient", 'can\'t read the unit "BTU/h furble degF"'],
  ])("that is of another kind, or unknown, is refused: %s as %s", (text, kind, why) =>
    expect(read(text, kind)).toBe(why),
  );
});

describe("A mark of feet or inches", () => {
  test.each(["5 '/s", "5 ft'/s"])("is no part of a longer unit: %s", (text) =>
    expect(read(text, "velocity")).toMatch(/^can't read the unit/),
  );

  test.each(['5 "/s', '5 ft"/s'])("is no part of a longer unit: %s", (text) =>
    expect(read(text, "velocity")).toMatch(/^can't read the unit/),
  );

  test.each(["5 m'", '5 m"'])("is no unit behind another: %s", (text) =>
    expect(read(text, "length")).toMatch(/^can't read the unit/),
  );
});
