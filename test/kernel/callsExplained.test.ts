/** The arguments of an explained call as a reader sees them: label, value, unit, and whether they were given. */
import { describe, expect, test } from "vitest";
import {
  block,
  choice,
  either,
  quantity,
  repeat,
  rows,
  several,
  sheet,
  text,
  yesNo,
  type Args,
} from "../../core/kernel/define/argument";
import { cellFunction, type CellFunction } from "../../core/kernel/define/cellFunction";
import { BASIS } from "../../core/kernel/define/pressureBasis";
import { quantityResult, wordResult, type ResultShape } from "../../core/kernel/define/result";
import { compile } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { us } from "../../core/kernel/values/quantity";

const withArgs = (args: Args, returns: ResultShape = quantityResult("length", "a length")): CellFunction =>
  cellFunction({
    id: "SAMPLE.EXPLAINED",
    topic: "sample",
    summary: "Nothing.",
    args,
    returns,
    cautions: [],
    checks: [],
    compute: () => 1,
  });

const explained = (definition: CellFunction, ...raw: readonly unknown[]) =>
  explain(compile(definition), raw, [definition]);

const argsOf = (args: Args, ...raw: readonly unknown[]) =>
  explained(withArgs(args), ...raw).args.map(({ label, value, unit, given }) => [label, value, unit, given]);

const length = quantity("length", "a length");
const UNITS_LEFT_OUT = ["units", "US", "", false];

describe("An argument of an explained call", () => {
  test.each<[string, Args, readonly unknown[], readonly (readonly unknown[])[]]>([
    ["that is a quantity has its unit", { poolDepth: length }, ["1 m"], [["pool depth", 3.28083989501, "ft", true]]],
    [
      "that took its default says so",
      { length: length.default(us("length", 2)) },
      [null],
      [["length", 2, "ft", false]],
    ],
    ["that was left out is empty", { length: length.optional() }, [null], [["length", "", "", false]]],
    [
      "that holds several has all of them to be read",
      { widths: several("length", "w", [1, 2]) },
      ["12; 10000 ft"],
      [["widths", "12; 10,000", "ft", true]],
    ],
    [
      "that is a number in a word's place has its unit",
      { share: either(choice("S", ["half"], "s"), length, "s") },
      [2],
      [["share", 2, "ft", true]],
    ],
    [
      "that is a word in a quantity's place has none",
      { share: either(choice("S", ["half"], "s"), length, "s") },
      ["half"],
      [["share", "half", "", true]],
    ],
    [
      "that is yes or no is it",
      { length, shown: yesNo("s") },
      [1, false],
      [
        ["length", 1, "ft", true],
        ["shown", false, "", true],
      ],
    ],
    [
      "that is a text is the text",
      { length, name: text("a name") },
      [1, "Hall"],
      [
        ["length", 1, "ft", true],
        ["name", "Hall", "", true],
      ],
    ],
    [
      "by an earlier choice has the unit of its word",
      {
        fuel: choice("F", ["gas", "wood"], "f"),
        price: quantity({ choice: "fuel", kinds: { gas: "price of gas", wood: "price of wood" } }, "p"),
      },
      ["wood", 256],
      [
        ["fuel", "wood", "", true],
        ["price", 256, "money/cord", true],
      ],
    ],
  ])("%s", (_, args, raw, shown) => expect(argsOf(args, ...raw)).toEqual([...shown, UNITS_LEFT_OUT]));

  test("has the kind of its number, and its description", () => {
    const { args } = explained(
      withArgs({ length, more: length.optional(), widths: several("length", "w", [1]) }),
      1,
      null,
      "2",
    );
    expect(args.map(({ kind, description }) => [kind, description])).toEqual([
      ["length", "a length"],
      [undefined, "a length"],
      [undefined, "w"],
      [undefined, "the system of units of plain numbers, US or SI"],
    ]);
  });

  test("that is a block is shown label by label, in the block's units", () => {
    const inputs = block(
      { poolArea: quantity("area", "the surface"), fuel: choice("F", ["gas"], "f").default("gas") },
      "a block",
    );
    expect(argsOf({ inputs }, [["pool area", "100 m2"]], "SI")).toEqual([
      ["pool area", 100, "m²", true],
      ["fuel", "gas", "", false],
      ["units", "SI", "", true],
    ]);
    expect(argsOf({ inputs: inputs.optional() }, null)[0]).toEqual(["inputs", "", "", false]);
  });

  test("that has rows says how many", () => {
    const curve = rows({ flow: quantity("water flow", "flow") }, "a curve", { least: 1, most: 3 });
    expect(argsOf({ pumpCurve: curve }, [[1], [2]])).toEqual([["pump curve", "2 rows", "", true], UNITS_LEFT_OUT]);
    expect(argsOf({ pumpCurve: curve }, 5)[0]).toEqual(["pump curve", "1 row", "", true]);
    expect(argsOf({ pumpCurve: curve.optional() }, null)[0]).toEqual(["pump curve", "", "", false]);
    expect(argsOf({ pumpCurve: curve.default([]) }, null)[0]).toEqual(["pump curve", "0 rows", "", false]);
    expect(
      argsOf({ range: sheet("a range", 9) }, [
        ["a", 1],
        ["b", 2],
      ])[0],
    ).toEqual(["range", "2 rows", "", true]);
  });

  test("that may be repeated says how often it is given", () => {
    const definition = withArgs({ name: text("a name"), furtherArguments: repeat("the rest") }, wordResult("a word"));
    const last = (...raw: readonly unknown[]) => {
      const { args } = explained(definition, "Hall", ...raw);
      expect(args).toHaveLength(2);
      return args[1];
    };
    const more = { label: "further arguments", description: "the rest", unit: "" };
    expect(last(1, null, "x")).toEqual({ ...more, value: "3 arguments", given: true });
    expect(last(1)).toEqual({ ...more, value: "1 argument", given: true });
    expect(last()).toEqual({ ...more, value: "0 arguments", given: false });
  });

  test("that is the system of units is given where it was named", () => {
    const units = (raw: unknown) => argsOf({ length }, 1, raw)[1];
    expect(units("SI")).toEqual(["units", "SI", "", true]);
    expect(units([["us"]])).toEqual(["units", "US", "", true]);
    for (const raw of [null, "", 0, undefined]) expect(units(raw)).toEqual(UNITS_LEFT_OUT);
  });

  test("that is a pressure says what it counts from", () => {
    const pressure = (about: string, reading?: true) => quantity("pressure", about, reading && { reading });
    const args = {
      suction: pressure("a reading on a gauge", true),
      high: pressure("high side, gauge"),
      low: pressure("by gauges"),
      basis: BASIS,
    };
    expect(argsOf(args, 100, 50, 60)).toEqual([
      ["suction, absolute", expect.closeTo(114.69595, 4), "psia", true],
      ["high", 50, "psig", true],
      ["low", 60, "psia", true],
      ["basis", "gauge", "", false],
      UNITS_LEFT_OUT,
    ]);
    expect(argsOf({ suction: args.suction.optional(), basis: BASIS }, null)[0]).toEqual([
      "suction, absolute",
      "",
      "",
      false,
    ]);
    expect(argsOf({ fall: quantity("pressure drop", "over the gauge") }, 3)[0]).toEqual(["fall", 3, "psi", true]);
  });

  test("has what a US reader knows it by besides", () =>
    expect(argsOf({ rated: quantity("heat rate", "rated cooling") }, 90_000)[0]).toEqual([
      "rated",
      90_000,
      "BTU/h (7.5 tons)",
      true,
    ]));
});
