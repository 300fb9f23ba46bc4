/** Texts made of arguments: units, descriptions, defaults and limits, and blocks to fill in. */
import { describe, expect, test } from "vitest";
import * as argument from "../../core/kernel/define/argument";
import { argText, blockRows, defaultText, limitsText } from "../../core/kernel/explain/describe";
import { show, us, type System } from "../../core/kernel/values/quantity";

const { block, choice, either, quantity, several, text, yesNo } = argument;

const scale = choice("Scale", ["none", "half"], "a scale");
const length = quantity("length", "a length");
const byFuel = quantity({ choice: "fuel", kinds: { gas: "price of gas", wood: "price of wood" } }, "a price");

describe("An argument's text", () => {
  test.each<[string, argument.ArgData]>([
    ["ft (SI: m): a length", length],
    ["kW: a power", quantity("electric power", "a power")],
    ["a COP", quantity("COP", "a COP")],
    ["a price", byFuel],
    ["in (SI: mm): widths", several("diameter", "widths", [1, 2])],
    ["ft (SI: m): a share", either(scale, length, "a share")],
    ["a scale", scale],
    ["a name", text("a name")],
    ["ft (SI: m): a length [may be left out]", length.optional()],
    ["ft (SI: m): a length [10,000 ft]", length.default(us("length", 10_000))],
    ["a scale [half]", scale.default("half")],
    ["a name [none]", text("a name").default("none")],
    ["whether shown [TRUE]", yesNo("whether shown").default(true)],
    ["whether shown [FALSE]", yesNo("whether shown").default(false)],
    ["ft (SI: m): a share [half]", either(scale, length, "a share").default("half")],
    ["ft (SI: m): a share [3 ft]", either(scale, length, "a share").default(us("length", 3))],
    ["ft (SI: m): a length [as the pipe]", length.default({ words: "as the pipe", from: () => 1 })],
    ["a price [2]", byFuel.default(2)],
    ["a count [0]", quantity("count", "a count").default(0)],
  ])("reads %j", (words, arg) => expect(argText(arg)).toBe(words));

  test("has its default in the system and manner asked for", () => {
    const arg = length.default(us("length", 10_000));
    expect([defaultText(arg), defaultText(arg, "SI"), defaultText(arg, "US", show)]).toEqual([
      "10,000 ft",
      "3048 m",
      "10000 ft",
    ]);
    expect([defaultText(length), defaultText(length.optional())]).toEqual(["", ""]);
    expect(defaultText({ ...arg, presence: "optional" })).toBe("");
    expect(defaultText({ ...length, presence: "default" })).toBe("");
    expect(defaultText(length.default(null as never))).toBe("null");
  });
});

describe("The limits of an argument", () => {
  const ft = (value: number) => us("length", value);

  test.each<[string, argument.ArgData, System]>([
    ["above 0 ft, to 8 ft", quantity("length", "w", { above: 0, to: ft(8) }), "US"],
    ["from 1 ft, below 8 ft", quantity("length", "w", { from: ft(1), below: ft(8) }), "US"],
    ["above 0 m, to 2.438 m", quantity("length", "w", { above: 0, to: ft(8) }), "SI"],
    ["from 1 ft", several("length", "w", [1], { from: ft(1) }), "US"],
    ["any number", length, "US"],
    ["above 0", quantity({ choice: "fuel", kinds: { gas: "price of gas" } }, "w", { above: 0 }), "US"],
    ['"none" or "half"', scale, "US"],
    [`"none" or "half", or to 8 ft`, either(scale, quantity("length", "w", { to: ft(8) }), "w"), "US"],
    [`"none" or "half", or to 2.438 m`, either(scale, quantity("length", "w", { to: ft(8) }), "w"), "SI"],
    ["TRUE or FALSE", yesNo("w"), "US"],
    ["", text("w"), "US"],
    ["", block({ length }, "w"), "US"],
  ])("read %j", (words, arg, system) => expect(limitsText(arg.shape, system)).toBe(words));
});

test("a block to fill in has each label with its default and unit in the system asked for", () => {
  const entries = {
    poolArea: quantity("area", "the surface"),
    waterTemperature: quantity("temperature", "the water").default(us("temperature", 80)),
    shade: either(scale, length, "shade").default(us("length", 10)),
    cover: scale.default("none"),
    rating: quantity("COP", "a rating").default(3),
    price: byFuel.default(2),
    shown: yesNo("whether shown").default(true),
    mean: quantity("temperature", "a mean").default({ words: "as the water", from: () => 1 }),
    wind: quantity("wind speed", "the wind").optional(),
    widths: several("length", "widths", [1, 2]).default([1]),
  };
  const { shape } = block(entries, "a block");
  const lines = (system: System) => blockRows(shape as argument.BlockShape, system);
  expect(lines("US")).toEqual([
    ["pool area", "", "ft²"],
    ["water temperature", 80, "°F"],
    ["shade", 10, "ft"],
    ["cover", "none", ""],
    ["rating", 3, ""],
    ["price", "2", ""],
    ["shown", "TRUE", ""],
    ["mean", "", "°F"],
    ["wind", "", "mph"],
    ["widths", "", ""],
  ]);
  expect(lines("SI").slice(0, 3)).toEqual([
    ["pool area", "", "m²"],
    ["water temperature", 26.6666667, "°C"],
    ["shade", 3.048, "m"],
  ]);
});
