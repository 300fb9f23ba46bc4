/** Units in the trade's spellings, with spaces, dots and cases as they come. */
import { describe, expect, test } from "vitest";
import type { KindName } from "../../core/kernel/values/quantity";
import { readQuantityText } from "../../core/kernel/values/quantityText";

const read = (text: string, kind: KindName): unknown => {
  const out = readQuantityText(text, kind, "US");
  return typeof out === "string" ? out : out.value;
};

/** Factors of NIST SP 811: a foot of 0.3048 m, 1 ftH2O of 2989.067 Pa and 1 inHg of 3386.389 Pa (39.2 °F and 32 °F), 1 mH2O of 9806.65 Pa. */
const [TON, FT_WATER, IN_MERCURY] = [3516.8528421, 2989.06692, 3386.388640341];

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
