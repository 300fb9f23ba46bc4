import * as mathjs from "mathjs";
import { describe, expect, test } from "vitest";
import { numberUnits } from "../../core/kernel/numberUnits";

const PAIRS = [
  ["degF", "K"],
  ["degC", "K"],
  ["degR", "K"],
  ["psi", "Pa"],
  ["BTU/h", "W"],
  ["BTU/(lbm degF)", "J/(kg K)"],
  ["gal/minute", "m^3/s"],
  ["lbf/ft", "N/m"],
  ["kWh", "J"],
  ["mmHg", "Pa"],
  ["inch", "m"],
  ["acre", "m^2"],
  ["lbm/ft^3", "kg/m^3"],
  ["h ft^2 degF/BTU", "m^2 K/W"],
] as const;

describe("units on plain numbers", () => {
  test.each(PAIRS)("plain numbers in %s read as mathjs reads them with all its number types", (from, to) => {
    const units = numberUnits([]);
    for (const value of [-40, 0, 1, 105.25, 1e6])
      expect(units.unit(value, from).toNumber(to)).toBe(mathjs.unit(value, from).toNumber(to));
  });

  test("a further unit is defined by known ones", () =>
    expect(
      numberUnits([["dozenMetres", "12 m"]])
        .unit(2, "dozenMetres")
        .toNumber("m"),
    ).toBe(24));

  test("an unknown word and another dimension are refused", () => {
    const units = numberUnits([]);
    expect(() => units.unit(1, "furlongs")).toThrow();
    expect(() => units.unit(1, "kg").toNumber("m")).toThrow();
  });
});
