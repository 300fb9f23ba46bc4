/** A published check compares what it names of a result with what print gives, within what the source claims. */
import { describe, expect, test } from "vitest";
import { quantity } from "../../core/kernel/define/argument";
import { cellFunction, type CellFunction, type Check } from "../../core/kernel/define/cellFunction";
import {
  listResult,
  quantityResult,
  rowResult,
  tableResult,
  wordResult,
  type ResultShape,
} from "../../core/kernel/define/result";
import { runCheck } from "../../core/kernel/explain/check";
import { notAvailable } from "../../core/kernel/values/fault";

const answering = (returns: ResultShape, answer: unknown): CellFunction =>
  cellFunction({
    id: "SAMPLE.ANSWER",
    topic: "sample",
    summary: "Answers what it was made to.",
    args: { value: quantity("number", "a value").default(0) },
    returns,
    cautions: [],
    checks: [],
    compute: ({ value }) => {
      if (value > 9) throw notAvailable("value: too much");
      return answer as never;
    },
  });

const run = (definition: CellFunction, expected: Check["expected"], tolerance?: Check["tolerance"], value = 0) => {
  const check: Check = {
    inputs: { value },
    expected,
    source: "identity",
    ...(tolerance !== undefined && { tolerance }),
  };
  const found = runCheck(definition, check, [definition]);
  for (const each of found) expect([each.id, each.check]).toEqual(["SAMPLE.ANSWER", check]);
  return found.map(({ what, expected: wanted, got, agrees }) => [what, wanted, got, agrees]);
};

const number = answering(quantityResult("number", "a number"), 100);
const absent = (what: string) =>
  expect.objectContaining({ code: "#N/A", message: `no ${what} in the result` }) as unknown;

describe("A single value", () => {
  test.each<[number, Check["tolerance"], boolean]>([
    [100, undefined, true],
    [100.001, undefined, false],
    [98, 2, true],
    [102, 2, true],
    [97.9, 2, false],
    [102.1, 2, false],
    [98, "2 %", false],
    [98.1, "2 %", true],
    [102, "2 %", true],
    [102.1, "2 %", false],
  ])("of 100 agrees with %d within %s: %s", (expected, tolerance, agrees) =>
    expect(run(number, expected, tolerance)).toEqual([["", expected, 100, agrees]]),
  );

  test("below zero has a share of its size for a tolerance", () => {
    const negative = answering(quantityResult("number", "a number"), -100);
    expect(run(negative, -99, "2 %")).toEqual([["", -99, -100, true]]);
    expect(run(negative, -97, "2 %")).toEqual([["", -97, -100, false]]);
  });

  test("agrees where it misses by rounding of the last digit alone", () => {
    const sum = answering(quantityResult("number", "a number"), 0.1 + 0.2);
    expect(run(sum, 0.3)).toEqual([["", 0.3, 0.1 + 0.2, true]]);
    expect(run(sum, 0.3 + 1e-11)).toEqual([["", 0.3 + 1e-11, 0.1 + 0.2, false]]);
    expect(run(answering(quantityResult("number", "a number"), 1e6 + 1e-7), 1e6)[0]?.[3]).toBe(true);
    expect(run(answering(quantityResult("number", "a number"), 10.3), 10, 0.3)).toEqual([["", 10, 10.3, true]]);
  });

  test("that is a word is equal or isn't, whatever the tolerance", () => {
    const word = answering(wordResult("a word"), "wet");
    expect(run(word, "wet")).toEqual([["", "wet", "wet", true]]);
    expect(run(word, "dry", 9)).toEqual([["", "dry", "wet", false]]);
    expect(run(word, 5, 1e9)).toEqual([["", 5, "wet", false]]);
    expect(run(answering(wordResult("a word"), "5"), 5)).toEqual([["", 5, "5", false]]);
    expect(run(number, "100", 1e9)).toEqual([["", "100", 100, false]]);
  });

  test("that is an error is compared by its code, if the check expects an error", () => {
    const fault = expect.objectContaining({ code: "#N/A", message: "value: too much" }) as unknown;
    expect(run(number, "#N/A", undefined, 10)).toEqual([["", "#N/A", fault, true]]);
    expect(run(number, "#VALUE!", undefined, 10)).toEqual([["", "#VALUE!", fault, false]]);
    expect(run(number, 100, 1e9, 10)).toEqual([["", 100, fault, false]]);
    expect(run(number, "N/A", undefined, 10)).toEqual([["", "N/A", fault, false]]);
  });
});

describe("A list", () => {
  const list = answering(
    listResult("a list", { waterFlow: quantityResult("number", "flow"), note: wordResult("a note") }),
    {
      waterFlow: 3,
      note: "fine",
    },
  );

  test("is compared row by row, whose labels have no case and spacing", () =>
    expect(run(list, { "Water Flow": 3, note: "poor" })).toEqual([
      ["Water Flow", 3, 3, true],
      ["note", "poor", "fine", false],
    ]));

  test("may have rows that are called row and value", () => {
    const singles = { row: quantityResult("number", "x"), value: quantityResult("number", "y") };
    expect(run(answering(listResult("a list", singles), { row: 3, value: 4 }), { row: 3, value: 4 })).toEqual([
      ["row", 3, 3, true],
      ["value", 4, 4, true],
    ]);
  });

  test("without such a row disagrees", () =>
    expect(run(list, { head: 3 })).toEqual([["head", 3, absent("row head"), false]]));

  test("has no columns but the value's", () =>
    expect(run(list, { row: "note", column: "value", value: "fine" })).toEqual([
      ["note, value", "fine", absent("column value in row note"), false],
    ]));
});

describe("A table", () => {
  const table = answering(
    tableResult("a table", {
      temperature: quantityResult("number", "t"),
      airFlow: quantityResult("irradiance", "flow"),
      head: quantityResult("length", "head"),
    }),
    [
      { temperature: 0.1 + 0.2, airFlow: 1, head: 0.3048 },
      { temperature: 2e6, airFlow: 2, head: 3.048 },
      { temperature: 2e6 + 1, airFlow: 3, head: 30.48 },
    ],
  );
  const at = (row: string | number, column: string, value: number) => run(table, { row, column, value }, 1e-9);

  test("is compared at a row and a column, which is named without its unit", () => {
    expect(at(0.3, "head", 1)).toEqual([["0.3, head", 1, 1, true]]);
    expect(at(2e6, "HEAD", 10)).toEqual([["2000000, HEAD", 10, 10, true]]);
    expect(at(2e6 + 1, "head (ft)", 100)).toEqual([["2000001, head (ft)", 100, 100, true]]);
    expect(at(2e6 + 1, "head (m)", 99)).toEqual([["2000001, head (m)", 99, 100, false]]);
    expect(at(0.3, "head(ft)", 1)[0]?.[3]).toBe(true);
    expect(at(0.3, "temperature", 0.3)[0]?.[3]).toBe(true);
    expect(at(0.3, "air flow", 0.3169983306)[0]?.[3]).toBe(true);
    expect(at(0.3, "Air flow (BTU/(h·ft²))", 0.3169983306)).toEqual([
      ["0.3, Air flow (BTU/(h·ft²))", 0.3169983306, expect.closeTo(0.3169983306, 9), true],
    ]);
  });

  test("names a row by its number to within rounding, or by the number's text", () => {
    expect(at(2e6 + 0.001, "head", 10)[0]?.[3]).toBe(true);
    expect(at(2e6 + 0.01, "head", 10)[0]?.[2]).toEqual(absent("column head in row 2000000.01"));
    expect(at(-2e6, "head", 10)[0]?.[3]).toBe(false);
    expect(at("2000001", "head", 100)[0]?.[3]).toBe(true);
    expect(at(0.3 + 2e-9, "head", 1)[0]?.[3]).toBe(false);
  });

  test("without such a column disagrees", () =>
    expect(at(0.3, "depth", 1)).toEqual([["0.3, depth", 1, absent("column depth in row 0.3"), false]]));

  test("without rows has none of its head's name", () => {
    const empty = answering(tableResult("a table", { size: quantityResult("number", "x"), head: wordResult("y") }), []);
    expect(run(empty, { size: 3 })).toEqual([["size", 3, absent("row size"), false]]);
  });

  test("is compared by its first column's words too", () => {
    const words = answering(
      tableResult("a table", { what: wordResult("what"), size: quantityResult("number", "size") }),
      [{ what: "Elbow 90", size: 5 }],
    );
    expect(run(words, { row: "elbow-90", column: "size", value: 5 })).toEqual([["elbow-90, size", 5, 5, true]]);
    expect(run(words, { "elbow 90": 5 })).toEqual([["elbow 90", 5, 5, true]]);
  });
});

describe("A row", () => {
  const cells = answering(
    rowResult("a row", { airFlow: quantityResult("number", "flow"), note: wordResult("a note") }),
    { airFlow: 3, note: "fine" },
  );

  test("is compared cell by cell, by the cells' names", () =>
    expect(run(cells, { "air flow": 3, Note: "fine" })).toEqual([
      ["air flow", 3, 3, true],
      ["Note", "fine", "fine", true],
    ]));

  test("without such a cell disagrees", () =>
    expect(run(cells, { head: 3 })).toEqual([["head", 3, absent("cell head"), false]]));
});

test("a row of a single value is none", () => {
  expect(run(number, { head: 3 })).toEqual([["head", 3, absent("table"), false]]);
  expect(run(number, { row: 1, column: "head", value: 3 })).toEqual([["1, head", 3, absent("table"), false]]);
});
