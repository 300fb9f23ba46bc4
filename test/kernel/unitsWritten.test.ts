/** Units of single kinds in texts: shares and words, pressures with their basis, prices, ratings, heads, and marks of numbers. */
import { describe, expect, test } from "vitest";
import type { KindName, System } from "../../core/kernel/values/quantity";
import { readQuantityText } from "../../core/kernel/values/quantityText";

const read = (text: string, kind: KindName, system: System = "US"): unknown => {
  const out = readQuantityText(text, kind, system);
  return typeof out === "string" ? out : out.value;
};
const close = (value: number) => expect.closeTo(value, 12) as number;

describe("A kind without dimension", () => {
  test.each<[string, KindName, number]>([
    ["60%", "fraction", 0.6],
    ["60 pct", "fraction", 0.6],
    ["60 Percent", "number", 0.6],
    ["60 % RH", "relative humidity", 0.6],
    ["0.9 %", "humidity ratio", 0.009],
    ["63 gr/lb", "humidity ratio", 0.009],
    ["0.009 lb/lb", "humidity ratio", 0.009],
    ["0.009 kg/kg", "humidity ratio", 0.009],
    ["9 G/KG", "humidity ratio", 0.009],
    ["3 %/year", "yearly rate", 0.03],
    ["3 % a year", "yearly rate", 0.03],
    ["0.03 1/year", "yearly rate", 0.03],
    ["10 yr", "years", 10],
    ["10 y", "years", 10],
    ["10 a", "years", 10],
    ["10 year", "years", 10],
    ["10 Kv", "flow coefficient", 10],
    ["10 Kv", "gas flow coefficient", 10],
    ["€ 12", "money", 12],
    ["12 €", "money", 12],
    ["15 ¢", "money", 0.15],
    ["¢15", "money", 0.15],
    ["15 cents", "money", 0.15],
  ])("%s is read as %s: %d", (text, kind, value) => expect(read(text, kind)).toEqual(close(value)));

  // Cv = 1.156 Kv by IEC 60534, which rounds the density of water.
  test("of valves may be Cv or Kv", () => {
    expect(read("1.156 cv", "flow coefficient")).toBeCloseTo(1, 2);
    expect(read("1.1561 Cv", "gas flow coefficient", "SI")).toEqual(close(1));
  });

  test.each<[string, KindName, string]>([
    ["5 %", "COP", 'COP takes no unit, got "%"'],
    ["5 m", "number", 'a number takes no unit, got "m"'],
    ["5 pieces", "count", 'count takes no unit, got "pieces"'],
    ["12 dollars", "money", '"dollars" is not a unit of money, such as money'],
    ["3 m", "yearly rate", '"m" is not a unit of yearly rate, such as 1/year'],
    ["3 EUR", "years", '"EUR" is not a unit of years, such as year'],
    ["12 kEUR", "money", '"kEUR" is not a unit of money, such as money'],
    ["12 EUROS", "money", '"EUROS" is not a unit of money, such as money'],
    ["70 percentile", "fraction", 'fraction takes no unit, got "percentile"'],
    ["70 dpct", "fraction", 'fraction takes no unit, got "dpct"'],
    ["70 toString", "fraction", 'fraction takes no unit, got "toString"'],
  ])("%s is refused as %s", (text, kind, why) => expect(read(text, kind)).toBe(why));
});

describe("A pressure", () => {
  test.each<[string, number, "gauge" | "absolute" | undefined]>([
    ["2 bar g", 2e5, "gauge"],
    ["2 bar a", 2e5, "absolute"],
    ["2 bar(abs)", 2e5, "absolute"],
    ["200 kPa gauge", 2e5, "gauge"],
    ["200 kPa absolute", 2e5, "absolute"],
    ["0.2 MPa a", 2e5, "absolute"],
    ["200000 Pa g", 2e5, "gauge"],
    ["2 bar", 2e5, undefined],
  ])("%s has the basis that it names, or none", (text, value, basis) => {
    const out = readQuantityText(text, "pressure", "SI");
    if (typeof out === "string") throw new Error(out);
    expect([out.value, out.basis]).toEqual([expect.closeTo(value, 6), basis]);
  });

  test("is no part of a longer word", () => {
    expect(read("2 kpsig", "pressure")).toBe('can\'t read the unit "kpsig"');
    expect(read("2 psigs", "pressure")).toBe('can\'t read the unit "psigs"');
  });

  test("of a drop has no basis", () => expect(read("2 psig", "pressure drop")).toBe('can\'t read the unit "psig"'));
});

describe("A price", () => {
  test.each<[string, KindName, number]>([
    ["1.2 / therm", "price of gas", 1.2 / 105_505_585.262],
    ["$1.2/therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2 USD / therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2 money/therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2", "price of gas", 1.2 / 105_505_585.262],
    ["256 money/cord", "price of wood", 256 / 3.624556363776],
    ["14 ¢/kWh", "price of electricity", 0.14 / 3.6e6],
    ["¢14/kWh", "price of electricity", 0.14 / 3.6e6],
    ["¢ 14.5 /kWh", "price of electricity", 0.145 / 3.6e6],
    ["14 cents/kWh", "price of electricity", 0.14 / 3.6e6],
    ["14 cent / kWh", "price of electricity", 0.14 / 3.6e6],
    ["14 ct/kWh", "price of electricity", 0.14 / 3.6e6],
    ["14 c/kWh", "price of electricity", 0.14 / 3.6e6],
    ["14 p/kWh", "price of electricity", 0.14 / 3.6e6],
    ["14 Cents/kWh", "price of electricity", 0.14 / 3.6e6],
    ["14 Pence/kWh", "price of electricity", 0.14 / 3.6e6],
    ["1.2 P/kWh", "price of electricity", 1.2 / 3.6e6],
    ["$1.20 per therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2 USD per therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2 $/thm", "price of gas", 1.2 / 105_505_585.262],
    // A hundred cubic feet of natural gas of 1,037 BTU each (US EIA, 2019).
    ["1.2 $/ccf", "price of gas", 1.2 / (103_700 * 1055.05585262)],
    // Whatever ends or begins like cents, or like thousands of a currency, is a currency's own name.
    ["1.2 inc/therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2 kUSDx/therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2 xkUSD/therm", "price of gas", 1.2 / 105_505_585.262],
    ["1.2 US$/therm", "price of gas", 1.2 / 105_505_585.262],
  ])("%s is read as %s", (text, kind, value) => expect((read(text, kind) as number) / value).toBeCloseTo(1, 9));

  test.each<[string, KindName, string]>([
    ["5 m", "price of gas", 'expected a price such as "money/therm"'],
    ["5 $/m", "price of gas", '"m" is not a unit of price of gas'],
    ["5 $/furble", "price of gas", 'can\'t read the unit "furble"'],
    ["14 cents", "price of electricity", 'expected a price such as "money/kWh"'],
    ["1 k$/cord", "price of wood", 'expected a price such as "money/cord"'],
    ["1 MUSD/cord", "price of wood", 'expected a price such as "money/cord"'],
    ["5 $/gal", "price of electricity", '"gal" is not a unit of price of electricity'],
  ])("%s is refused as %s", (text, kind, why) => expect(read(text, kind)).toBe(why));
});

describe("Ratings, heads, differences and weights", () => {
  const BTU = 1055.05585262 / 3600;

  test.each<[string, KindName, number]>([
    ["12 BTU/W h", "cooling rating", 12 * BTU],
    ["12 BTU / (W * h)", "cooling rating", 12 * BTU],
    ["12 Btu/(Wh)", "cooling rating", 12 * BTU],
    ["12 EER", "cooling rating", 12 * BTU],
    ["3.5 COP", "cooling rating", 3.5],
    ["3.5 W / W", "cooling rating", 3.5],
    ["36 feet of head", "head", 10.9728],
    ["10 m", "head", 10],
    ["10 mH2O", "head", 10],
    ["99.9016 kPa", "head", 99_901.6 / (999.016 * 9.80665)],
    ["9 degR", "temperature difference", 5],
    ["9 deg F", "temperature difference", 5],
    ["9 C", "temperature difference", 9],
    ["8 lbs. 4 oz.", "mass", 8.25 * 0.45359237],
    ["12 lb 14.25 oz", "mass", 12.890625 * 0.45359237],
    ["8lb  4oz", "mass", 8.25 * 0.45359237],
    ["9 F", "temperature difference", 5],
    ["3.5 W/W", "cooling rating", 3.5],
  ])("%s is read as %s", (text, kind, value) => expect(read(text, kind)).toEqual(close(value)));

  test.each<[string, KindName, string]>([
    // Of a season: another quantity.
    ["13 SEER", "cooling rating", '"SEER" is not a unit of cooling rating'],
    ["13 EERS", "cooling rating", '"EERS" is not a unit of cooling rating'],
    ["3 COPS", "cooling rating", '"COPS" is not a unit of cooling rating'],
    ["3 kCOP", "cooling rating", '"kCOP" is not a unit of cooling rating'],
    ["13 kEER", "cooling rating", '"kEER" is not a unit of cooling rating'],
    ["12 BTU", "cooling rating", '"BTU" is not a unit of cooling rating'],
    ["5 W", "head", '"W" is not a unit of head'],
    ["5 furble", "head", 'can\'t read the unit "furble"'],
    ["9 m", "temperature difference", '"m" is not a unit of temperature difference'],
    ["3 kW/W", "cooling rating", '"kW/W" is not a unit of cooling rating'],
    ["3 W/Wh", "cooling rating", '"W/Wh" is not a unit of cooling rating'],
    ["12 kBTU/(W h)", "cooling rating", '"kBTU/(W h)" is not a unit of cooling rating'],
    ["8 lb 4 oz", "length", 'can\'t read the unit "lb 4 oz"'],
  ])("%s is refused as %s", (text, kind, why) => expect(read(text, kind)).toBe(why));
});

describe("A number at the beginning of a text", () => {
  test("has no sign of currency but of money and prices", () =>
    expect(read("$ 5 ft", "length")).toBe("expected a number"));

  test("with a comma is refused in US units behind a minus sign too", () =>
    expect(read("-1,5 m", "length")).toMatch(/no decimal mark in US units/));

  test.each<[string, System, number]>([
    ["+2 m", "SI", 2],
    ["−2 m", "SI", -2],
    ["–2 m", "SI", -2],
    [".5 m", "SI", 0.5],
    [",5 m", "SI", 0.5],
    ["-1,5 m", "SI", -1.5],
    ["1e-3 m", "US", 0.001],
    ["2.5E2 m", "US", 250],
    ["+1/2 m", "SI", 0.5],
    ["-1/2 m", "SI", -0.5],
    ["1 - 1/2 m", "SI", 1.5],
    ["10 1/2 m", "SI", 10.5],
    ["1  1/2 m", "SI", 1.5],
    [".25 m", "SI", 0.25],
    ["25e-12 m", "SI", 25e-12],
    ["1 ⅛ m", "SI", 1.125],
    ["¼ m", "SI", 0.25],
    ["¾ m", "SI", 0.75],
    ["⅜ m", "SI", 0.375],
    ["⅝ m", "SI", 0.625],
    ["⅞ m", "SI", 0.875],
    ["⅔ m", "SI", 2 / 3],
  ])("%s in %s is %d", (text, system, value) => expect(read(text, "length", system)).toEqual(close(value)));

  test.each(["about 5 m", "x1/2 m", "about 3' 6\""])("is not one behind a word: %s", (text) =>
    expect(read(text, "length", "SI")).toBe("expected a number"),
  );

  test.each(["1,200 m", "1 200 m", "1'200 m", "-1,234,567 m", "12,345 m"])("%s has thousands apart", (text) =>
    expect(read(text, "length", "SI")).toBe("expected a number without thousands separators"),
  );

  test.each([
    ["1234,567 m", 1234.567],
    ["1,2345 m", 1.2345],
    ["1,25 m", 1.25],
  ])("%s has none: a comma is the decimal mark in SI", (text, value) =>
    expect(read(text, "length", "SI")).toEqual(close(value)),
  );

  test("of feet may be negative with their inches, and is at most 11 and a fraction of them", () => {
    expect(read("-3' 6\"", "length", "SI")).toEqual(close(-1.0668));
    expect(read("+3' 6\"", "length", "SI")).toEqual(close(1.0668));
    expect(read("3 foot 6 inches", "length")).toEqual(close(1.0668));
    expect(read("3' 11 15/16\"", "length")).toEqual(close(47.9375 * 0.0254));
    expect(read("3' 12\"", "length")).toBe("inches behind feet must be below 12, got 12");
    expect(read("3,5' 6\"", "length")).toBe("feet with inches must be whole, got 3,5");
  });
});
