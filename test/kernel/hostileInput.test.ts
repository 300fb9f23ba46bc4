/** What hosts and people hand over besides what is meant: blanks as 0, misspelt labels, names of every object, long texts. */
import { describe, expect, test } from "vitest";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellFunction } from "../../core/kernel/define/cellFunction";
import { isFault } from "../../core/kernel/values/fault";
import { block, quantity } from "../../core/kernel/define/argument";
import { cellFunction } from "../../core/kernel/define/cellFunction";
import { quantityResult } from "../../core/kernel/define/result";
import { us } from "../../core/kernel/values/quantity";
import { blocks, doubling, heavyOne } from "./sample";

const shown = (definition: CellFunction, ...raw: readonly unknown[]): unknown => {
  const out = evaluate(compile(definition), raw, []);
  return isFault(out) ? `${out.code} ${out.message}` : out;
};

const zeroCaution = (definition: CellFunction, ...raw: readonly unknown[]): string | undefined =>
  explain(compile(definition), raw, []).cautions.find(({ code }) => code === "ZERO-OR-BLANK")?.text;

/** Optional arguments whose limits leave 0 out, and one where 0 can be meant. */
const optional = cellFunction({
  id: "SAMPLE.OPTIONAL",
  topic: "sample",
  summary: "Adds what was given.",
  args: {
    length: quantity("length", "a length", { above: 0 }),
    warm: quantity("temperature", "a temperature", { from: us("temperature", 40) }).default(us("temperature", 80)),
    wide: quantity("length", "a width", { above: 0 }).optional(),
    superheat: quantity("temperature difference", "a superheat", { from: 0 }).default(5),
    discount: quantity("number", "a discount", { from: 0 }).default(0),
  },
  returns: quantityResult("number", "the sum in base units"),
  cautions: [],
  checks: [],
  compute: ({ length, warm, wide, superheat, discount }) => length + warm + (wide ?? 100) + superheat + discount,
});

describe("A 0 that may be a blank cell", () => {
  const omitted = shown(optional, 1);

  test("counts as left out if 0 is outside an optional argument's limits, and the caution says so", () => {
    expect(shown(optional, 1, 0)).toBe(omitted);
    expect(shown(optional, 1, null, 0)).toBe(omitted);
    expect(shown(optional, 1, 0, 0)).toBe(omitted);
    expect(zeroCaution(optional, 1, 0, 0)).toMatch(
      /Taken as left out, since 0 is outside the limits: "warm", "wide"\./,
    );
  });

  test("counts as 0 where 0 can be meant, and the caution names the argument", () => {
    expect(shown(optional, 1, null, null, 0)).toBeCloseTo((omitted as number) - 5, 9);
    expect(zeroCaution(optional, 1, null, null, 0)).toMatch(/Taken as 0: "superheat"\./);
  });

  test("raises nothing where leaving the argument out means 0 as well, or where it was left out", () => {
    expect(zeroCaution(optional, 1, null, null, null, 0)).toBeUndefined();
    expect(zeroCaution(optional, 1, null, null, null, null)).toBeUndefined();
    expect(zeroCaution(optional, 1)).toBeUndefined();
  });

  test("is refused in a required argument", () =>
    expect(shown(optional, 0)).toBe("#VALUE! length: must be above 0 ft, got blank or zero"));

  test("is left out of a block by the same rule", () => {
    const definition = cellFunction({
      ...optional,
      id: "SAMPLE.OPTIONALBLOCK",
      args: { inputs: block(optional.args as never, "the block") },
      compute: ({ inputs }: never) => optional.compute(inputs, undefined as never),
    } as never);
    expect(
      shown(definition, [
        ["length", 1],
        ["warm", 0],
        ["wide", 0],
      ]),
    ).toBe(omitted);
    expect(
      zeroCaution(definition, [
        ["length", 1],
        ["warm", 0],
        ["superheat", 0],
      ]),
    ).toMatch(/Taken as 0: "superheat"\. Taken as left out, since 0 is outside the limits: "warm"\./);
  });
});

describe("A label that a block doesn't know", () => {
  const AREA = ["pool area", 500] as const;

  test.each([["pool aera"], ["wind at 10 n"], ["cuver"], ["waterr temperature"]])(
    "%s with a 0 is refused with the nearest, since its 0 would be lost",
    (label) => expect(shown(blocks, [AREA, [label, 0]])).toMatch(/#VALUE! inputs: no label ".*" here; the nearest is/),
  );

  test("is a heading beside a 0 where it resembles none, and the caution names it", () => {
    expect(shown(blocks, [["The machine", 0], AREA])).toEqual(shown(blocks, [AREA]));
    expect(zeroCaution(blocks, [["The machine", 0], AREA])).toMatch(/Taken as a heading: "The machine"\./);
    expect(zeroCaution(blocks, [[0, 0], AREA])).toBeUndefined();
  });

  test("is a heading beside a blank, without a caution", () => {
    expect(shown(blocks, [["pool aera", null], AREA])).toEqual(shown(blocks, [AREA]));
    expect(zeroCaution(blocks, [["The machine", null], AREA])).toBeUndefined();
  });
});

describe("Names that every object has", () => {
  const NAMES = ["constructor", "toString", "valueOf", "hasOwnProperty", "__proto__"];

  test.each(NAMES)("%s is no TRUE, no word and no unit", (name) => {
    expect(shown(doubling, 2, "once", 0, name)).toMatch(/#VALUE! shown: expected TRUE or FALSE, got "/);
    expect(shown(doubling, 2, name)).toMatch(/#VALUE! scale: expected "once" or "twice", got "/);
    expect(shown(doubling, `2 ${name}`)).toMatch(/#VALUE! length: expected length in ft, got "2 /);
    expect(shown(optional, 1, null, null, `5 ${name}`)).toMatch(/#VALUE! superheat: expected temperature difference/);
  });

  test.each(NAMES)("%s is no label of a block", (name) =>
    expect(
      shown(blocks, [
        ["pool area", 500],
        [name, 3],
      ]),
    ).toMatch(/no label "/),
  );
});

describe("Texts", () => {
  const LONG = `${"1".repeat(300)} ft`;

  test("over 255 characters are refused before anything reads them, quoted in 60", () => {
    const message = shown(doubling, LONG) as string;
    expect(message).toMatch(/^#VALUE! length: a text may have at most 255 characters, got 303: "1{59}…"$/);
    expect(shown(blocks, [["pool area", LONG]])).toMatch(/inputs: a text may have at most 255 characters/);
  });

  test.each([
    ["spaces in a fraction", `1${" ".repeat(250)}x`],
    ["feet and spaces", `3'${" ".repeat(250)}x`],
    ["many commas", "1,".repeat(127)],
  ])("of %s up to that length are refused in words", (_, text) =>
    expect(shown(doubling, text)).toMatch(/^#VALUE! length: expected length in ft, got "/),
  );
});

describe("The memory of heavy functions", () => {
  test("takes arrays of one dimension and ragged rows without breaking", () => {
    let runs = 0;
    const definition = compile(heavyOne(() => (runs += 1)));
    const hostile: readonly (readonly unknown[])[] = [
      [1, [1, 2, 3]],
      [1, [[1], undefined, [2]]],
      [1, [[], [1, 2]]],
      [1, [null]],
    ];
    for (const raw of hostile) {
      const first = evaluate(definition, raw, []);
      expect(evaluate(definition, raw, [])).toBe(first);
      expect(isFault(first) && /TypeError|undefined/.test(first.message)).toBe(false);
    }
    expect(runs).toBeLessThanOrEqual(hostile.length);
  });
});
