import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { admitScalar } from "../../core/kernel/call/admit";
import { several } from "../../core/kernel/define/argument";
import type { KindName } from "../../core/kernel/values/quantity";
import { readQuantityText } from "../../core/kernel/values/quantityText";

const F = (value: number): number => ((value + 459.67) * 5) / 9;

/** As people write them: text, kind, base value. Factors of NIST SP 811; gas by US EIA, 1,037 BTU a cubic foot. */
const AS_WRITTEN: readonly (readonly [string, KindName, number])[] = [
  ["45 GPM", "water flow", 0.00283905884],
  ["45 Gpm", "water flow", 0.00283905884],
  ["45 US gpm", "water flow", 0.00283905884],
  ["45 gal per minute", "water flow", 0.00283905884],
  ["2700 gph", "water flow", 0.00283905884],
  ["120 LPM", "water flow", 0.002],
  ["2 lps", "water flow", 0.002],
  ["400 CFM", "air flow", 0.18877892],
  ["300 PSI", "pressure", 2068427.18795],
  ["300 kpa", "pressure", 300000],
  ["3 Bar", "pressure", 300000],
  ["4 KW", "electric power", 4000],
  ["4 kw", "electric power", 4000],
  ["4 HP", "electric power", 2982.79948],
  ["4 bhp", "electric power", 2982.79948],
  ["3 MPH", "wind speed", 1.34112],
  ["3 knots", "wind speed", 1.54333333],
  ["3 kt", "wind speed", 1.54333333],
  ["264 fpm", "wind speed", 1.34112],
  ["365 ft2", "area", 33.9096096],
  ["365 FT2", "area", 33.9096096],
  ["365 SF", "area", 33.9096096],
  ["365 sq. ft.", "area", 33.9096096],
  ["365 square feet", "area", 33.9096096],
  ["365 sqft", "area", 33.9096096],
  ["34 sqm", "area", 34],
  ["10 ft3", "vessel volume", 0.28316846592],
  ["10 CF", "vessel volume", 0.28316846592],
  ["10 cu. ft.", "vessel volume", 0.28316846592],
  ["60 LF", "length", 18.288],
  ["60 linear ft", "length", 18.288],
  ["60 metres", "length", 60],
  ["13000 gals", "pool volume", 49.210353192],
  ["13000 GAL", "pool volume", 49.210353192],
  ["13000 US gal", "pool volume", 49.210353192],
  ["13000 gal (US)", "pool volume", 49.210353192],
  ["4 TR", "heat rate", 14067.411368],
  ["4-ton", "heat rate", 14067.411368],
  ["4 tons of refrigeration", "heat rate", 14067.411368],
  ["48 MBtuh", "heat rate", 14067.411368],
  ["48000 BTU per hour", "heat rate", 14067.411368],
  ["78 MMBtu", "heat", 82294356502.4],
  ["78 mmbtu", "heat", 82294356502.4],
  ["78 million BTU", "heat", 82294356502.4],
  ["780 therms", "heat", 82294356502.4],
  ["10 Mcf", "heat", 10940929191.9],
  ["10 KWH", "heat", 36e6],
  ["14 $/Mcf", "price of gas", 14 / 1094092919.19],
  ["14 $/MMBtu", "price of gas", 14 / 1055055852.62],
  ["15 psi", "head", 10.5564312],
  ["36 ft head", "head", 10.9728],
  ["36 ft of head", "head", 10.9728],
  ["36 ftH2O", "head", 10.9728],
  ["36 ft wc", "head", 10.9728],
  ["8 lb 4 oz", "mass", 3.7421370525],
  ["70 percent", "relative humidity", 0.7],
  ["70% RH", "relative humidity", 0.7],
];

describe("units as people write them", () => {
  test.each(AS_WRITTEN)("%s as %s is %d in base units", (text, kind, value) => {
    const read = readQuantityText(text, kind, "US");
    if (typeof read === "string") throw new Error(read);
    expect(read.value / value).toBeCloseTo(1, 6);
  });

  test.each<[string, KindName]>([
    ["1.2 mPa s", "viscosity"],
    ["1.2 mPa·s", "viscosity"],
    ["1.2 CP", "viscosity"],
  ])("%s as %s keeps milli apart from mega", (text, kind) =>
    expect(readQuantityText(text, kind, "US")).toEqual({ value: expect.closeTo(0.0012, 9) as number }),
  );

  test("a psi is 2.309 ft of water at 60 °F, as the trade's 2.31 has it", () => {
    const read = readQuantityText("1 psi", "head", "US");
    expect(typeof read === "string" ? read : read.value / 0.3048).toBeCloseTo(2.309, 3);
  });

  test("a decimal comma is read in SI and refused in US units, thousands are refused in both", () => {
    expect(readQuantityText("1,5 m", "length", "SI")).toEqual({ value: 1.5 });
    for (const text of ["365,5", "365,5 ft²", "1,5 m"])
      expect(readQuantityText(text, "area", "US")).toMatch(/no decimal mark/);
    for (const system of ["US", "SI"] as const) expect(readQuantityText("1,200", "area", system)).toMatch(/thousands/);
  });

  test.each<[string, KindName]>([
    ["78 MBtu", "heat"],
    ["5 kg", "head"],
    ["4 TR", "head"],
    ["12 x 15 ft", "area"],
  ])("%s as %s is refused", (text, kind) => expect(typeof readQuantityText(text, kind, "US")).toBe("string"));
});

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
    ["10/2 ft", "length", 1.524],
    ["1/2 in", "diameter", 0.0127],
    ['2"', "diameter", 0.0508],
    ['1/2"', "diameter", 0.0127],
    ["½ in", "diameter", 0.0127],
    ["1⁄2 in", "diameter", 0.0127],
    ["1–1/2 ft", "length", 0.4572],
    ["⅓ ft", "length", 0.1016],
    ["1½″", "diameter", 0.0381],
    ["-1 1/2 in", "expansion", -0.0381],
    ["-0 1/2 in", "expansion", -0.0127],
    ["3' 6\"", "length", 1.0668],
    ["3'6\"", "length", 1.0668],
    ["3 ft 6 in", "length", 1.0668],
    ["3ft6in", "head", 1.0668],
    ["3 ft. 6 in.", "depth", 1.0668],
    ["3 feet, 6 inches", "length", 1.0668],
    ["3'-6 1/2\"", "length", 1.0795],
    ["3’ 6½”", "length", 1.0795],
    ["3' 6''", "length", 1.0668],
    ["-1' 6\"", "head", -0.4572],
    ["0' 6\"", "length", 0.1524],
    ["6 ft.", "length", 1.8288],
    ["5'", "length", 1.524],
    ["60%", "relative humidity", 0.6],
    ["60 %", "relative humidity", 0.6],
    ["90 kBtu/h", "heat rate", 26376.396315],
    ["90 MBH", "heat rate", 26376.396315],
    ["90000 Btu/h", "heat rate", 26376.396315],
    ["7.5 tons", "heat rate", 26376.396315],
    ["26.4 kW", "heat rate", 26400],
    ["500 micron", "vacuum", 66.66118],
    ["500 microns", "vacuum", 66.66118],
    ["500 micron", "pressure drop", 66.66118],
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
  ])("%s is read as gauge or absolute, as written", (text, value, basis) => {
    const read = readQuantityText(text, "pressure", "US");
    if (typeof read === "string") throw new Error(read);
    expect(read.value / value).toBeCloseTo(1, 6);
    expect(read.basis).toBe(basis);
  });

  test.each<[string, KindName, RegExp]>([
    ["1,500 ft", "length", /thousands/],
    ["1'500 ft", "length", /thousands/],
    ["1'500\"", "length", /thousands/],
    ["3' 6", "length", /inches behind the feet need their mark, as in 3' 6" or 3 ft 6 in/],
    ["3 ft 6 m", "length", /need their mark/],
    ["3' 14\"", "length", /must be below 12, got 14/],
    ["3.5' 6\"", "length", /feet with inches must be whole, got 3.5/],
    ["3' 6.5.1\"", "length", /can't read the inches in "6.5.1""/],
    ["3' 6\" 2", "length", /need their mark/],
    ["1/0 in", "diameter", /"1\/0" is no fraction/],
    ["5-10/2", "length", /"5-10\/2": a fraction behind a whole number must be below 1/],
    ["5 10/2 ft", "length", /must be below 1/],
    ["1 2/2 in", "diameter", /must be below 1/],
    ["3' 1/0\"", "length", /can't read the inches/],
    ["3' 6\"", "area", /can't read the unit/],
    ["3' 6\"", "temperature", /can't read the unit/],
    ["5 W", "length", /not a unit of length/],
    ["5 furble", "length", /can't read the unit/],
    ["n/a", "length", /expected a number/],
    ["NaN", "length", /expected a number/],
    ["", "length", /expected a number/],
    ["2026-01-31", "length", /a second number follows 2026/],
    ["1.000.000 ft", "length", /a second number/],
    ["3 6 in", "length", /a second number/],
    ["40 50 gpm", "water flow", /a second number follows 40: "50 gpm"/],
    ["1.5.5 kW", "heat rate", /a second number/],
    ["64 70 °F", "temperature", /a second number/],
    ["5 m", "relative humidity", /takes no unit/],
    ["3 candela", "money", /not a unit of money/],
    ["10 m", "years", /not a unit of years/],
    ["5 psi", "temperature", /not a unit of temperature/],
    ["5 $", "price of gas", /expected a price/],
  ])("%s as %s is refused: %s", (text, kind, why) => {
    const read = readQuantityText(text, kind, "US");
    expect(read).toMatch(why);
  });

  test("feet with inches and sixteenths are read in every way of writing them", () => {
    const styles: readonly ((feet: number, inches: string) => string)[] = [
      (feet, inches) => `${feet}' ${inches}"`,
      (feet, inches) => `${feet}'${inches}"`,
      (feet, inches) => `${feet}'-${inches}"`,
      (feet, inches) => `${feet} ft ${inches} in`,
      (feet, inches) => `${feet}′ ${inches}″`,
    ];
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 0, max: 11 }),
        fc.integer({ min: 0, max: 15 }),
        fc.constantFrom(...styles),
        fc.constantFrom<KindName>("length", "head", "diameter", "altitude", "depth"),
        fc.constantFrom("US" as const, "SI" as const),
        (feet, inches, sixteenths, style, kind, system) => {
          const written = sixteenths === 0 ? `${inches}` : `${inches} ${sixteenths}/16`;
          const read = readQuantityText(style(feet, written), kind, system);
          if (typeof read === "string") throw new Error(read);
          expect(read.value).toBeCloseTo((feet * 12 + inches + sixteenths / 16) * 0.0254, 9);
        },
      ),
    );
  });

  test("the last of several lengths gives bare ones before it its feet or inches, never the inches behind its feet", () => {
    const { shape } = several("length", "width", [1, 2], { above: 0 });
    if (shape.type !== "several") throw new Error(shape.type);
    const read = (text: string): unknown =>
      admitScalar(shape, text, "width", { system: "SI", unitsPlace: "", before: {} });
    expect(read("12; 16' 6\"")).toEqual([12 * 0.3048, 16.5 * 0.3048]);
    expect(read("12 ft; 198 in")).toEqual([12 * 0.3048, 198 * 0.0254]);
    expect(read("144; 1 1/2 in")).toEqual([144 * 0.0254, 1.5 * 0.0254]);
  });

  test("any text is read as a finite number or refused with a sentence, never thrown on", () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.constantFrom<KindName>("length", "temperature", "pressure", "price of gas"),
        (text, kind) => {
          const read = readQuantityText(text, kind, "SI");
          if (typeof read === "string") expect(read).toMatch(/\w/);
          else expect(Number.isFinite(read.value)).toBe(true);
        },
      ),
    );
  });
});
