/** Cautions of a call: which facts a rule reads and when it applies, in which order they come, and zeros that may be blanks. */
import { describe, expect, test } from "vitest";
import { block, choice, quantity, yesNo, type ArgData } from "../../core/kernel/define/argument";
import { caution, type Caution, type RequiredFacts } from "../../core/kernel/define/caution";
import { listResult, quantityResult, rowResult, tableResult, wordResult } from "../../core/kernel/define/result";
import { notAvailable } from "../../core/kernel/values/fault";
import { raisedBy, telling, type Made } from "./ruledFunction";

/** What a rule that needs these facts reads of them; undefined if it doesn't apply. */
const read = (needs: RequiredFacts, given: Made, ...raw: readonly unknown[]): unknown => {
  const [raised] = raisedBy({ ...given, rules: [telling(needs)] }, ...raw).filter(({ code }) => code === "TELLS");
  if (raised === undefined) return undefined;
  const facts = JSON.parse(raised.text) as Readonly<Record<string, unknown>>;
  return Object.keys(needs).map((need) => facts[need]);
};

const length = quantity("length", "a length");

describe("A rule", () => {
  test("reads arguments, a block's labels and what the calculation recorded, in base units", () => {
    const inputs = block(
      { depth: quantity("depth", "the depth"), cover: choice("C", ["none"], "c").default("none") },
      "a block",
    );
    const given = { args: { length, inputs }, facts: { doubled: 5 } };
    const needs = { length: "length", depth: "depth", cover: "word", doubled: "length" } as const;
    expect(read(needs, given, 10, [["depth", "2 m"]])).toEqual([3.048, 2, "none", 5]);
  });

  test("reads a single result as the answer, and results of lists and rows by their names", () => {
    const singles = { size: quantityResult("length", "a size"), note: wordResult("a note") };
    const answer = { size: 3, note: "fine" };
    expect(read({ answer: "length" }, { returns: quantityResult("length", "a size"), answer: 3 })).toEqual([3]);
    expect(read({ answer: "word" }, { returns: wordResult("a word"), answer: "fine" })).toEqual(["fine"]);
    expect(read({ size: "length", note: "word" }, { returns: listResult("a list", singles), answer })).toEqual([
      3,
      "fine",
    ]);
    expect(read({ size: "length", note: "word" }, { returns: rowResult("a row", singles), answer })).toEqual([
      3,
      "fine",
    ]);
    expect(read({ size: "length" }, { returns: tableResult("a table", singles), answer: [answer] })).toBeUndefined();
    expect(read({ answer: "length" }, { returns: tableResult("a table", singles), answer: [answer] })).toBeUndefined();
  });

  test("reads what was recorded before a result and an argument of the same name", () => {
    const returns = listResult("a list", { length: quantityResult("length", "a size") });
    expect(
      read({ length: "length" }, { args: { length }, returns, answer: { length: 3 }, facts: { length: 5 } }, 1),
    ).toEqual([5]);
    expect(read({ length: "length" }, { args: { length }, returns, answer: { length: 3 } }, 1)).toEqual([3]);
  });

  test.each<[string, unknown]>([
    ["missing", undefined],
    ["an empty text", ""],
    ["a fault", notAvailable("no value")],
    ["no number", Number.NaN],
    ["beyond any number", Number.POSITIVE_INFINITY],
  ])("doesn't apply where a fact is %s", (_, fact) =>
    expect(read({ known: "length", fact: "length" }, { facts: { known: 1, fact } })).toBeUndefined(),
  );

  test("applies to 0, false and words", () =>
    expect(read({ a: "length", b: "yes/no", c: "word" }, { facts: { a: 0, b: false, c: "none" } })).toEqual([
      0,
      false,
      "none",
    ]));

  test("raises a caution when its condition holds, with numbers of four digits in the call's units", () => {
    const rule: Caution<never> = caution({
      code: "LONG",
      severity: "Warning",
      standing: true,
      source: "identity",
      description: "Longer than 100 m.",
      needs: { length: "length" },
      when: (facts) => facts.length > 100,
      message: (facts, show) => `${show(facts.length, "length")} is long`,
    });
    expect(raisedBy({ args: { length }, rules: [rule] }, 300)).toEqual([]);
    expect(raisedBy({ args: { length }, rules: [rule] }, 1234.56)).toEqual([
      { code: "LONG", severity: "Warning", text: "1235 ft is long", standing: true },
    ]);
    expect(raisedBy({ args: { length }, rules: [{ ...rule, standing: undefined } as never] }, 123.456, "SI")).toEqual([
      { code: "LONG", severity: "Warning", text: "123.5 m is long" },
    ]);
    expect(raisedBy({ rules: [telling({})] })[0]).not.toHaveProperty("standing");
  });

  test("comes after those of graver degree, and in its own place among its equals", () => {
    const rules = [
      telling({}, "Notice", "N"),
      telling({}, "Caution", "C1"),
      telling({}, "Danger", "D"),
      telling({}, "Caution", "C2"),
      telling({}, "Warning", "W"),
    ];
    expect(raisedBy({ rules }).map(({ code }) => code)).toEqual(["D", "W", "C1", "C2", "N"]);
  });
});

describe("A 0 that may be a blank cell", () => {
  const args = {
    length: length.default(1),
    size: quantity("length", "a size", { above: 0 }).default(1),
    inputs: block(
      {
        depth: quantity("depth", "d").optional(),
        area: quantity("area", "an area", { above: 0 }).optional(),
        wind: quantity("wind speed", "w").optional(),
      },
      "a block",
    ).optional(),
  };
  const advice =
    "A blank cell reaches a function as 0 on some hosts: where nothing is meant, leave the argument out or take the line out of the block.";
  const texts = (...raw: readonly unknown[]) =>
    raisedBy({ args }, ...raw).map(({ code, severity, text: words }) => {
      expect([code, severity]).toEqual(["ZERO-OR-BLANK", "Caution"]);
      return words;
    });

  test("raises no caution where there is none", () => expect(texts(1, 2, [["depth", 3]])).toEqual([]));

  test("raises none where 0 is what a blank means, or where a value is needed", () => {
    const of = (arg: ArgData, raw: unknown) =>
      raisedBy({ args: { value: arg } }, raw).map(({ text }) => text.split(".")[0]);
    expect(of(length, 0)).toEqual([]);
    expect(of(length.default(0), 0)).toEqual([]);
    expect(of(yesNo("whether").default(false), 0)).toEqual([]);
    expect(of(choice("C", ["none"], "c").default("none"), 0)).toEqual([]);
    expect(of(yesNo("whether").default(true), 0)).toEqual(['Taken as 0: "value"']);
    expect(of(length.optional(), 0)).toEqual(['Taken as 0: "value"']);
    const line = { value: length, more: length.optional() };
    const both = [
      ["value", 0],
      ["more", 1],
    ];
    expect(of(block(line, "a block"), both)).toEqual([]);
    expect(of(block({ ...line, value: length.default(0) }, "a block"), both)).toEqual([]);
    expect(of(block({ ...line, value: yesNo("whether").default(false) }, "a block"), both)).toEqual([]);
    expect(of(block({ ...line, value: length.default(1) }, "a block"), both)).toEqual(['Taken as 0: "value"']);
  });

  test("is named by how it was read: as 0, as left out, as a heading", () => {
    expect(texts(0)).toEqual([`Taken as 0: "length". ${advice}`]);
    expect(texts(1, 0)).toEqual([`Taken as left out, since 0 is outside the limits: "size". ${advice}`]);
    expect(
      texts(1, 1, [
        ["Of the pool", 0],
        ["depth", 3],
      ]),
    ).toEqual([`Taken as a heading: "Of the pool". ${advice}`]);
    expect(
      texts(0, 0, [
        ["Of the pool", 0],
        ["depth", 0],
        ["area", 0],
        ["wind", 0],
      ]),
    ).toEqual([
      `Taken as 0: "length", "depth", "wind". Taken as left out, since 0 is outside the limits: "size". Taken as a heading: "Of the pool". ${advice}`,
    ]);
  });
});
