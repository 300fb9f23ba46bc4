/** A fault of a calculation says which arguments it is about. */
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED, evaluate, explain, isFault } from "../../core";

const refusal = (id: string, ...raw: readonly unknown[]): string => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`no function ${id}`);
  const out = evaluate(compiled, raw, CATALOGUE);
  const told = explain(compiled, raw, CATALOGUE).out;
  if (!isFault(out) || !isFault(told)) throw new Error(`${id} gave a value`);
  expect(told.message).toBe(out.message);
  return `${out.code} ${out.message}`;
};

describe("A property outside its range", () => {
  test.each([
    ["CYCLE.COP", ["R-32", 20, 255]],
    ["CYCLE.DISCHARGE", ["R-32", 20, 255]],
    ["CYCLE.FACTOR", ["R-22", 45, 255]],
    ["CYCLE.SPLIT", ["R-22", 45, 255]],
    ["LINE.DROP", ["R-410A", "suction", "1-5/8 in", 30, 60_000, 45, 255]],
  ] as const)("of %s is told by the argument condensing", (id, raw) =>
    expect(refusal(id, ...raw)).toMatch(
      /^#N\/A condensing: R-\w+ saturation temperature: must be below the critical temperature, [\d.]+ °F, got 255 °F$/,
    ),
  );

  test("is told by an argument of another name", () =>
    expect(refusal("AIRCON.GAIN", "R-22", 45, 255, 105)).toMatch(
      /^#N\/A condensingOutdoors: R-22 saturation temperature: must be below/,
    ));

  test("is told by the label of a block", () =>
    expect(
      refusal("EXCHANGER.ZONES", [
        ["refrigerant", "R-410A"],
        ["heat rejected", 112_000],
        ["condensing", 240],
        ["evaporating", 45],
        ["water flow", 40],
        ["entering water", 82],
      ]),
    ).toMatch(/^#N\/A condensing: R-410A saturation temperature: must be below/));

  test("is told by both arguments where it is about two", () =>
    expect(refusal("REFRIG.STATE", "R-22", 245.3126486, -20, "absolute", "SI")).toMatch(
      /^#N\/A pressure and temperature: R-22 state: must be off the saturation line/,
    ));

  test("is told by the last temperature of a chart, whose rows begin below it", () =>
    expect(refusal("REFRIG.CHART", "R-22", 40, 350, 5)).toMatch(
      /^#N\/A to: R-22 saturation temperature: must be below the critical temperature, .*, got 350 °F$/,
    ));

  test("is told by the function where no argument has that value", () =>
    expect(refusal("CYCLE.MASSFLOW", 90_000, "R-32", 20, 130, null, null, 1e-80)).toMatch(
      /^#N\/A CYCLE\.MASSFLOW: R-32 enthalpy \(IIR zero\)/,
    ));

  test("stays as it is where it names an argument", () =>
    expect(refusal("LINE.TARGETSUPERHEAT", 58, 95)).toMatch(/^#N\/A indoorWetBulb and outdoorDryBulb: the target is/));
});

describe("A number without size", () => {
  test("of rows is told in words", () =>
    expect(refusal("REFRIG.CHART", "R-22", 40, 50, 5e-324)).toBe(
      "#VALUE! step: must give at most 500 rows, got infinity",
    ));

  test("is no text", () =>
    expect(refusal("NOTE.INPUTS", Number.POSITIVE_INFINITY)).toBe("#VALUE! function: expected a text, got infinity"));
});

test("a long text beyond the last argument is told by function and place", () =>
  expect(refusal("PIPE.BORE", "2 in", null, null, null, "1".repeat(300))).toMatch(
    /^#VALUE! PIPE\.BORE, fifth argument: a text may have at most 255 characters, got 300/,
  ));
