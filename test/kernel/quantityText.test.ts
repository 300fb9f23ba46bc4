import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { KindName } from "../../core/kernel/quantity";
import { readQuantityText } from "../../core/kernel/quantityText";

const F = (value: number): number => ((value + 459.67) * 5) / 9;

describe("quantity texts", () => {
  test.each<[string, KindName, number]>([
    ["105 degF", "temperature", F(105)],
    ["105°F", "temperature", F(105)],
    ["105 F", "temperature", F(105)],
    ["40.5 °C", "temperature", 313.65],
    ["40 C", "temperature", 313.15],
    ["-40 degC", "temperature", 233.15],
    ["300 K", "temperature", 300],
    ["10 degF", "temperature difference", 50 / 9],
    ["10 °F", "temperature difference", 50 / 9],
    ["10 °C", "temperature difference", 10],
    ["10 K", "temperature difference", 10],
    ["12 m", "length", 12],
    ["1 1/2 in", "diameter", 0.0381],
    ["1-1/2 in", "diameter", 0.0381],
    ["1/2 in", "diameter", 0.0127],
    ['2"', "diameter", 0.0508],
    ["1,5 m", "length", 1.5],
    ["60%", "relative humidity", 0.6],
    ["60 %", "relative humidity", 0.6],
    ["90 kBtu/h", "heat rate", 26376.396315],
    ["90 MBH", "heat rate", 26376.396315],
    ["90000 Btu/h", "heat rate", 26376.396315],
    ["7.5 tons", "heat rate", 26376.396315],
    ["26.4 kW", "heat rate", 26400],
    ["500 micron", "vacuum", 66.66118],
    ["40 gpm", "water flow", 0.002523607856],
    ["40 gal/min", "water flow", 0.002523607856],
    ["2 L/s", "water flow", 0.002],
    ["5 mph", "wind speed", 2.2352],
    ["12 ft of water", "pressure drop", 35868.803],
    ["30 inHg", "pressure", 101591.659],
    ["9 bar", "pressure", 900000],
    ["2 therm", "heat", 211011170.524],
    ["1.2 $/therm", "price of gas", 1.2 / 105505585.262],
    ["0.12 $/kWh", "price of electricity", 0.12 / 3.6e6],
    ["3 $/gal", "price of liquid fuel", 3 / 0.003785411784],
    ["12 BTU/(W·h)", "cooling rating", 3.51685284],
    ["1.5 cP", "viscosity", 0.0015],
    ["3%", "yearly rate", 0.03],
    ["$1500", "money", 1500],
    ["1500 EUR", "money", 1500],
    ["10 years", "years", 10],
    ["9 g/kg", "humidity ratio", 0.009],
  ])("%s as %s is %d in base units", (text, kind, value) => {
    const read = readQuantityText(text, kind, "US");
    if (typeof read === "string") throw new Error(read);
    expect(read.value / value).toBeCloseTo(1, 6);
  });

  test.each<[string, number, "gauge" | "absolute"]>([
    ["120 psig", 120 * 6894.757293, "gauge"],
    ["134.7 psia", 134.7 * 6894.757293, "absolute"],
    ["10 bar(g)", 1e6, "gauge"],
    ["900 kPa abs", 9e5, "absolute"],
  ])("%s keeps how it was read", (text, value, basis) => {
    const read = readQuantityText(text, "pressure", "US");
    if (typeof read === "string") throw new Error(read);
    expect(read.value / value).toBeCloseTo(1, 6);
    expect(read.basis).toBe(basis);
  });

  test.each<[string, KindName, RegExp]>([
    ["1,500 ft", "length", /thousands/],
    ["1'500 ft", "length", /thousands/],
    ["5 W", "length", /not a unit of length/],
    ["5 furble", "length", /can't read the unit/],
    ["n/a", "length", /expected a number/],
    ["NaN", "length", /expected a number/],
    ["", "length", /expected a number/],
    ["2026-01-31", "length", /can't read|not a unit/],
    ["5 m", "relative humidity", /takes no unit/],
    ["3 candela", "money", /not a unit of money/],
    ["10 m", "years", /not a unit of years/],
    ["5 psi", "temperature", /not a unit of temperature/],
    ["5 $", "price of gas", /expected a price/],
  ])("%s as %s is refused: %s", (text, kind, why) => {
    const read = readQuantityText(text, kind, "US");
    expect(read).toMatch(why);
  });

  test("any text is read or refused, never thrown on", () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.constantFrom<KindName>("length", "temperature", "pressure", "price of gas"),
        (text, kind) => {
          const read = readQuantityText(text, kind, "SI");
          expect(typeof read === "string" || typeof read.value === "number").toBe(true);
        },
      ),
    );
  });
});
