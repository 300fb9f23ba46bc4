import fc from "fast-check";
import { create, createUnitDependencies, unitDependencies, type Unit } from "mathjs";
import { describe, expect, test } from "vitest";
import { TRADE } from "../../core/kernel/unitWords";
import { sameDimension, unitReader } from "../../core/kernel/values/unitText";

// mathjs is the other program: it reads the same unit texts by its own tables.
const math = create({ ...unitDependencies, ...createUnitDependencies });
for (const [name, number, unit] of TRADE) math.createUnit(name, `${number} ${unit}`);

interface MathUnit {
  readonly dimensions: readonly number[];
  readonly prefixes: Readonly<Record<string, unknown>>;
}

const MATH_UNITS = (math as unknown as { readonly Unit: { readonly UNITS: Readonly<Record<string, MathUnit>> } }).Unit
  .UNITS;

/** Places of kg, m, s, A and K among mathjs's dimensions; it has light, substance, angle and bits besides. */
const PLACES = [0, 1, 2, 3, 4];
const BASES = ["kg", "m", "s", "A", "K"];

/** Reactive power is an imaginary number of watts there. */
const LEFT_OUT = ["VAR"];

const names = Object.keys(MATH_UNITS).filter(
  (name) =>
    !LEFT_OUT.includes(name) &&
    MATH_UNITS[name]?.dimensions.every((each, place) => each === 0 || place < PLACES.length),
);

const reader = unitReader(TRADE);

interface Read {
  readonly value: number;
  readonly dimension: readonly number[];
}

const here = (value: number, text: string): Read | undefined => {
  const read = reader.read(value, text);
  return read && { value: read.value + read.shift, dimension: read.dimension };
};

const byMath = (value: number, text: string): Read | undefined => {
  let unit: Unit;
  try {
    unit = math.unit(value, text);
  } catch {
    return undefined;
  }
  const dimension = PLACES.map((place) => (unit as unknown as MathUnit).dimensions[place] ?? 0);
  const base = BASES.map((each, place) => `${each}^${dimension[place] ?? 0}`).join(" ");
  const temperature = dimension.every((each, place) => each === (place === 4 ? 1 : 0));
  return { value: unit.toNumber(temperature ? "K" : base), dimension };
};

const expectSame = (value: number, text: string): void => {
  const [ours, theirs] = [here(value, text), byMath(value, text)];
  if (!theirs) return void expect(ours, text).toBeUndefined();
  if (!ours) throw new Error(`"${text}" is not read`);
  expect(sameDimension(ours.dimension, theirs.dimension), text).toBe(true);
  if (Number.isFinite(theirs.value))
    expect(Math.abs(ours.value - theirs.value), text).toBeLessThanOrEqual(1e-13 * Math.abs(theirs.value));
};

describe("unit texts", () => {
  test("every unit of mass, length, time, current and temperature has the size that mathjs gives it", () => {
    expect(names.length).toBeGreaterThan(200);
    for (const name of names) for (const value of [-40, 0, 1, 105.25]) expectSame(value, name);
  });

  test("every prefix is read before the units that take it and before no others", () => {
    const prefixes = [...new Set(names.flatMap((name) => Object.keys(MATH_UNITS[name]?.prefixes ?? {})))];
    expect(prefixes.length).toBeGreaterThan(48);
    for (const name of names) for (const prefix of prefixes) expectSame(3, prefix + name);
  });

  const word = fc.constantFrom("m", "ft", "kg", "lbm", "h", "s", "BTU", "kW", "degF", "gal", "psi", "gpm", "MBH", "A");
  const power = fc.constantFrom("", "", "^2", "^-1", " ^ 3", "^0.5", "^-1.5", "^+2", "^2e0");
  const mark = fc.constantFrom(" ", "*", "/", " * ", " / ", "  ");
  const factor = fc.tuple(word, power).map((parts) => parts.join(""));
  const { text } = fc.letrec<{ readonly text: string }>((tie) => ({
    text: fc.oneof(
      { depthSize: "small" },
      factor,
      fc.tuple(tie("text"), mark, tie("text")).map((parts) => parts.join("")),
      tie("text").map((inner) => `(${inner})`),
    ),
  }));

  test("products, quotients, powers and brackets are read as mathjs reads them", () =>
    fc.assert(
      fc.property(text, fc.double({ min: 0.01, max: 1000, noNaN: true }), (each, value) => expectSame(value, each)),
      { seed: 11, numRuns: 3000 },
    ));

  test("what mathjs can't read is refused", () =>
    fc.assert(
      fc.property(
        fc.array(fc.oneof(word, fc.constantFrom("(", ")", "*", "/", "^", "^2", " ", "2", "-", ".", "e3", "\n", "°")), {
          maxLength: 7,
        }),
        (parts) => {
          const text = parts.join("");
          // A number before the units is the quantity's own; it is cut off before a unit is read.
          fc.pre(!/^[ \t]*[+-]?\.?\d/.test(text));
          expectSame(2, text);
        },
      ),
      { seed: 11, numRuns: 5000 },
    ));

  test.each<[string, number, readonly number[]]>([
    ["1/K", 3, [0, 0, 0, 0, -1]],
    ["1/degF", 5.4, [0, 0, 0, 0, -1]],
    ["1/h", 3 / 3600, [0, 0, -1, 0, 0]],
    ["1/s^2", 3, [0, 0, -2, 0, 0]],
    ["1/(m s)", 3, [0, -1, -1, 0, 0]],
    ["1/(m/s)", 3, [0, -1, 1, 0, 0]],
    ["1/m/s", 3, [0, -1, -1, 0, 0]],
    ["1/m s", 3, [0, -1, 1, 0, 0]],
  ])("3 of %s are %d in base units", (text, value, dimension) => {
    const found = reader.read(3, text);
    expect(found?.value).toBeCloseTo(value, 12);
    expect(found?.shift).toBe(0);
    expect(found && sameDimension(found.dimension, dimension)).toBe(true);
  });

  test.each(["1/", "1", "2/K", "1 /K", "11/K", "1//K", "1/1/K", "K/1", "K 1/s", "-1/K", "1/K)", "1/(K"])(
    "a number in a unit is refused but for a leading 1/: %s",
    (text) => expect(reader.read(3, text)).toBeUndefined(),
  );

  test("reactive power is refused", () => expect(reader.read(5, "VAR")).toBeUndefined());

  test("a further unit that names an unknown one is refused", () =>
    expect(() => unitReader([["score", 20, "furlong"]])).toThrow(/score: can't read the unit "furlong"/));

  test("an inherited name is no unit", () => {
    for (const text of ["constructor", "toString", "__proto__", "k__proto__"])
      expect(reader.read(1, text)).toBeUndefined();
  });
});
