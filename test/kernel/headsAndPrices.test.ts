/** What is written around the units of heads, prices, ratings, weights and valves. */
import { describe, expect, test } from "vitest";
import type { KindName } from "../../core/kernel/values/quantity";
import { readQuantityText } from "../../core/kernel/values/quantityText";

const read = (text: string, kind: KindName): unknown => {
  const out = readQuantityText(text, kind, "US");
  return typeof out === "string" ? out : out.value;
};

describe("A head", () => {
  test.each([
    ["36 ft of  head", 10.9728],
    ["36 feet  head", 10.9728],
    ["36 FT HEAD", 10.9728],
    ["10 m of head", 10],
    ["10 m H2O", 10],
    ["10 m of water", 10],
  ])("%s is %d m", (text, value) => expect(read(text, "head")).toBeCloseTo(value, 9));

  test.each(["36 head ft", "36 head of ft", "36 H2O ft", "36 ft header", "36 ft of", "36 ft of water of head x"])(
    "%s is refused: the words belong behind the unit",
    (text) => expect(read(text, "head")).toMatch(/^can't read the unit/),
  );
});

describe("The text in front of a price's slash", () => {
  const THERM = 105_505_585.262;

  test.each([
    "1.2 dollars/therm",
    "1.2 US$/therm",
    "1.2 money / therm",
    "1.2 €/  therm",
    "1.2/therm",
    "1.2 abcdefgh/therm",
  ])("may be a short word or sign: %s", (text) =>
    expect((read(text, "price of gas") as number) * THERM).toBeCloseTo(1.2, 9),
  );

  test.each([
    "1.2 abcdefghi/therm",
    "1.2 US $/therm",
    "1.2 a $/therm",
    "1.2 x9/therm",
    "1.2 for a therm",
    "1.2 $ therm/",
  ])("is refused where it is longer, several words or holds a digit: %s", (text) =>
    expect(read(text, "price of gas")).toBe('expected a price such as "money/therm"'),
  );

  test("has nothing but a unit behind it", () =>
    expect(read("1.2 $//therm", "price of gas")).toBe('can\'t read the unit "/therm"'));
});

// Kv = Cv / 1.1561 by IEC 60534 as rounded for gas; of water by its density at 60 °F, 0.8647 to four digits.
test.each([
  ["1.1561 cv", "gas flow coefficient", 1],
  ["1.1561 CV", "gas flow coefficient", 1],
  ["2 kv", "gas flow coefficient", 2],
  ["2 KV", "flow coefficient", 2],
] as const)("%s of a valve is read in any case", (text, kind, value) => expect(read(text, kind)).toBeCloseTo(value, 9));

test.each(["70 %rh", "70 % RH", "70%RH", "70 PCT"])("%s is a relative humidity", (text) =>
  expect(read(text, "relative humidity")).toBeCloseTo(0.7, 12),
);

describe("A cooling rating", () => {
  test.each(["3.5 W/ W", "3.5 W /W", "3.5 W/W", "3.5 w/w"])("may have spaces about its slash: %s", (text) =>
    expect(read(text, "cooling rating")).toBe(3.5),
  );

  test("has nothing behind its unit", () =>
    expect(read("12 BTU/(W h) rated", "cooling rating")).toBe('"BTU/(W h) rated" is not a unit of cooling rating'));
});

describe("Pounds with ounces", () => {
  test.each([
    ["12 lb 4 oz", 12.25],
    ["8lbs 14.25oz", 8.890625],
    ["8 lb  4 oz", 8.25],
  ])("%s are %d lb", (text, pounds) => expect(read(text, "mass")).toBeCloseTo(pounds * 0.45359237, 12));

  test.each(["about 8 lb 4 oz", "8 lb 4 oz or so", "8lb4oz"])("have nothing around them: %s", (text) =>
    expect(typeof read(text, "mass")).toBe("string"),
  );
});
