import fc from "fast-check";
import { create, createUnitDependencies, unitDependencies } from "mathjs";
import { describe, expect, test } from "vitest";
import { KINDS, fromBase, show, showNumber, toBase, us, type KindName } from "../../core/kernel/values/quantity";
import { readQuantityText } from "../../core/kernel/values/quantityText";

const math = create({ ...unitDependencies, ...createUnitDependencies });
math.createUnit("gpm", "1 gal/minute");
// By the atmosphere of 760 mm: mathjs rounds its own mmHg to 133.322 Pa.
math.createUnit("micronHg", `${1 / 760_000} atm`);

/** Our unit texts as mathjs spells them. Temperatures by their scale; money and plain numbers have no unit there. */
const BY_MATH: Readonly<Record<string, string>> = {
  "BTU/h": "BTU/h",
  kW: "kW",
  kWh: "kW h",
  BTU: "BTU",
  psi: "psi",
  kPa: "kPa",
  lb: "lb",
  "lb/h": "lb/h",
  "kg/h": "kg/h",
  "lb/min": "lb/minute",
  "kg/s": "kg/s",
  "lb/ft³": "lb/ft^3",
  "BTU/lb": "BTU/lb",
  "kJ/kg": "kJ/kg",
  gpm: "gpm",
  "m³/h": "m^3/h",
  ft: "ft",
  in: "in",
  mm: "mm",
  "ft²": "ft^2",
  gal: "gal",
  "ft³": "ft^3",
  L: "l",
  "ft/s": "ft/s",
  mph: "mi/h",
  "lbf/ft": "lbf/ft",
  "mN/m": "mN/m",
  "BTU/(ft²·day)": "BTU/ft^2",
  "kWh/(m²·day)": "kW h/m^2",
  "BTU/(h·ft²)": "BTU/(h ft^2)",
  "W/m²": "W/m^2",
  h: "h",
  min: "minute",
  s: "s",
  day: "day",
  "oz/ft": "oz/ft",
  "g/m": "g/m",
  "mPa·s": "mPa s",
  "°F": "degR",
  "°C": "K",
  K: "K",
  kg: "kg",
  "lb/(h·ft²)": "lb/(h ft^2)",
  "kg/(m²·s)": "kg/(m^2 s)",
  "1/°F": "1/degR",
  "1/K": "1/K",
  "kg/m³": "kg/m^3",
  "BTU/(lb·°F)": "BTU/(lb degR)",
  "kJ/(kg·K)": "kJ/(kg K)",
  "BTU/(h·ft·°F)": "BTU/(h ft degR)",
  "W/(m·K)": "W/(m K)",
  "BTU/(h·ft²·°F)": "BTU/(h ft^2 degR)",
  "W/(m²·K)": "W/(m^2 K)",
  "BTU/(h·°F)": "BTU/(h degR)",
  "W/K": "W/K",
  "h·ft²·°F/BTU": "h ft^2 degR/BTU",
  "m²·K/W": "m^2 K/W",
  cfm: "ft^3/minute",
  "ft/gpm²": "ft/gpm^2",
  "ft/gpm": "ft minute/gal",
  "m/(m³/h)": "m h/m^3",
  "m/(m³/h)²": "m h^2/m^6",
  "m/s": "m/s",
  m: "m",
  "m²": "m^2",
  "m³": "m^3",
  cP: "mPa s",
  micron: "micronHg",
  Pa: "Pa",
  ohm: "ohm",
};

const kinds = Object.entries(KINDS) as [KindName, (typeof KINDS)[KindName]][];

describe("units", () => {
  test.each(kinds)("the factors of %s agree with mathjs where it knows the unit", (_, kind) => {
    for (const unit of [kind.US, kind.SI]) {
      const spelled = BY_MATH[unit.text];
      if (spelled === undefined || kind.base === "") continue;
      expect(math.unit(3, spelled).toNumber(kind.base.replace("1/K", "K^-1")) / (3 * unit.factor)).toBeCloseTo(1, 9);
    }
  });

  test("mathjs knows every printed unit but those of money, shares, ratios and valves", () => {
    const unknown = kinds.flatMap(([name, kind]) =>
      [kind.US, kind.SI].some(({ text }) => BY_MATH[text] === undefined || kind.base === "") ? [name] : [],
    );
    expect(unknown).toEqual([
      "cooling rating",
      "humidity ratio",
      "flow coefficient",
      "gas flow coefficient",
      "distance",
      "years",
      "fraction",
      "relative humidity",
      "COP",
      "number",
      "count",
      "money",
      "yearly rate",
      "price of gas",
      "price of liquid fuel",
      "price of electricity",
      "price of wood",
    ]);
  });

  test("temperatures cross by scale and zero point as mathjs says", () => {
    for (const value of [-40, 0, 32, 80, 212]) {
      expect(toBase(value, KINDS.temperature.US)).toBeCloseTo(math.unit(value, "degF").toNumber("K"), 9);
      expect(toBase(value, KINDS.temperature.SI)).toBeCloseTo(math.unit(value, "degC").toNumber("K"), 9);
    }
  });

  test.each(kinds)("what is printed in units of %s is read back to the same value", (name, kind) => {
    for (const system of ["US", "SI"] as const)
      for (const value of [0.25, 3, 1234.5]) {
        const read = readQuantityText(`${value} ${kind[system].text}`.trim(), name, system);
        if (typeof read === "string") throw new Error(read);
        expect(read.value / toBase(value, kind[system])).toBeCloseTo(1, 12);
      }
  });

  test("a value goes out and comes back unchanged in every kind and system", () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.double({ min: -1e6, max: 1e6, noNaN: true }), ([, kind], value) => {
        for (const unit of [kind.US, kind.SI])
          expect(Math.abs(fromBase(toBase(value, unit), unit) - value)).toBeLessThanOrEqual(
            1e-9 * (1 + Math.abs(value)),
          );
      }),
    );
  });
});

describe("numbers in messages", () => {
  test.each([
    [0, "0"],
    [2.5, "2.5"],
    [1e-7, "1e-7"],
    [123456.7, "123457"],
    [0.000123456, "0.000123456"],
    [-40, "-40"],
    [100, "100"],
    [6.02e23, "6.02e+23"],
  ])("%d is shown as %s", (value, text) => expect(showNumber(value)).toBe(text));

  test("a value is shown with its unit in either system", () => {
    expect(show(299.81666666666666, "temperature", "US")).toBe("80 °F");
    expect(show(0.0508, "diameter", "SI")).toBe("50.8 mm");
    expect(show(us("temperature", 32), "temperature", "SI")).toBe("0 °C");
    expect(show(0.6, "relative humidity", "US")).toBe("0.6");
  });
});
