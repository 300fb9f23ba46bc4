/** The form of a call, and examples as raw arguments and formulas. */
import { describe, expect, test } from "vitest";
import { choice, quantity, repeat, text, type Args } from "../../core/kernel/define/argument";
import { cellFunction, type CellFunction, type Example, type ExampleArgs } from "../../core/kernel/define/cellFunction";
import { wordResult } from "../../core/kernel/define/result";
import { exampleArgs, formulaOf, rawByPlace, rawOfExample, signatureOf } from "../../core/kernel/explain/describe";
import { doubling, tooLong } from "./sample";

const scale = choice("Scale", ["none", "half"], "a scale");
const length = quantity("length", "a length");

const withArgs = (args: Args, more: Partial<CellFunction> = {}): CellFunction => ({
  ...cellFunction({
    id: "SAMPLE.TEXTS",
    topic: "sample",
    summary: "Nothing.",
    args,
    returns: wordResult("a word"),
    cautions: [],
    checks: [],
    compute: () => "",
  }),
  ...more,
});

test("a call's form has brackets about what may be left out, and dots behind what may come again", () => {
  expect(signatureOf(withArgs({ length, scale: scale.default("none"), name: text("a name").optional() }))).toBe(
    "WARMBACK.SAMPLE.TEXTS(length, [scale], [name], [units])",
  );
  expect(signatureOf(withArgs({ scale, rest: repeat("the rest") }))).toBe("WARMBACK.SAMPLE.TEXTS(scale, rest…)");
});

describe("An example", () => {
  test.each<[string, Example, unknown]>([
    ["that is one value is passed as it is", 3, 3],
    [
      "that is a matrix is filled up to its longest row",
      [[1], [2, 3], []],
      [
        [1, null],
        [2, 3],
        [null, null],
      ],
    ],
    [
      "of labels is a range of labels and values",
      { poolArea: 500, windAt10m: "5 mph" },
      [
        ["pool area", 500],
        ["wind at 10 m", "5 mph"],
      ],
    ],
    [
      "of named columns is a range with a header, blank where a row has no value",
      [{ waterFlow: 1 }, { waterFlow: 2, head: 3 }],
      [
        ["water flow", "head"],
        [1, null],
        [2, 3],
      ],
    ],
  ])("%s", (_, example, raw) => expect(rawOfExample(example)).toEqual(raw));

  const definition = withArgs({ length, scale: scale.default("none"), rest: repeat("the rest") });

  test("has its arguments in their places, blanks between them and none at the end", () => {
    const plain = withArgs({ length, scale: scale.default("none"), name: text("a name").optional() });
    expect(rawByPlace(plain, { units: "SI", length: 3 })).toEqual([3, null, null, "SI"]);
    expect(rawByPlace(plain, { length: 3 })).toEqual([3]);
    expect(rawByPlace(plain, { scale: "half" })).toEqual([null, "half"]);
    expect(rawByPlace(plain, {})).toEqual([]);
  });

  test("has what may come again one behind the other", () => {
    expect(
      rawByPlace(definition, {
        length: 3,
        rest: [
          [1, 2],
          [3, "x"],
        ],
      }),
    ).toEqual([3, null, 1, 2, 3, "x"]);
    expect(rawByPlace(definition, { length: 3 })).toEqual([3]);
  });

  test.each<[string, Parameters<typeof formulaOf>[1]]>([
    ["=WARMBACK.SAMPLE.TEXTS()", []],
    ['=WARMBACK.SAMPLE.TEXTS(3,,"half",TRUE,-0.5)', [3, null, "half", true, -0.5]],
    ['=WARMBACK.SAMPLE.TEXTS("3/8"" pipe, 2""")', ['3/8" pipe, 2"']],
    [
      '=WARMBACK.SAMPLE.TEXTS({1,"a";"",FALSE},2)',
      [
        [
          [1, "a"],
          [null, false],
        ],
        2,
      ],
    ],
    ['=WARMBACK.SAMPLE.TEXTS("")', [""]],
  ])("is the formula %s", (formula, raw) => expect(formulaOf(definition, raw)).toBe(formula));

  test("of a function is its own, else that of its first check with a value, else of a caution", () => {
    const failing = { inputs: { length: 1 }, expected: "#N/A", source: "identity" } as const;
    const valued = { inputs: { length: 2 }, expected: "half", source: "identity" } as const;
    const cautions = [{ rule: tooLong as never, raisedBy: { length: 400 } }];
    const of = (more: Partial<CellFunction>): ExampleArgs | undefined => exampleArgs(withArgs({ length }, more));
    expect(of({ example: { length: 3 }, checks: [valued], cautions })).toEqual({ length: 3 });
    expect(of({ checks: [failing, valued], cautions })).toEqual({ length: 2 });
    expect(of({ checks: [{ ...valued, expected: 5 }] })).toEqual({ length: 2 });
    expect(of({ checks: [failing], cautions })).toEqual({ length: 400 });
    expect(of({ checks: [failing] })).toBeUndefined();
  });

  test("of a function that needs nothing is a call without arguments", () => {
    expect(exampleArgs(withArgs({ length: length.optional(), scale: scale.default("none") }))).toEqual({});
    expect(exampleArgs(withArgs({ rest: repeat("the rest") }))).toEqual({});
    expect(exampleArgs(withArgs({ length, rest: repeat("the rest") }))).toBeUndefined();
    expect(exampleArgs(doubling)).toEqual({ length: 2 });
  });
});
