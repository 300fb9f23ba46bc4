/** Which arguments a fault of a calculation is about, with names in front that its models don't know. */
import { describe, expect, test } from "vitest";
import { block, quantity, rows, text, type Args } from "../../core/kernel/define/argument";
import { cellFunction } from "../../core/kernel/define/cellFunction";
import { wordResult } from "../../core/kernel/define/result";
import { namingArguments } from "../../core/kernel/call/culprit";
import { notAvailable, valueError } from "../../core/kernel/values/fault";
import { quantityMark } from "../../core/kernel/values/quantityMark";

const length = quantity("length", "a length");
const ARGS: Args = {
  name: text("a name"),
  waterFlow: length,
  hotIn: length,
  depth: length,
  inputs: block({ windAt10m: length, poolArea: length }, "a block"),
  pumpCurve: rows({ headLost: length }, "rows", { least: 1, most: 3 }),
};
const VALUES = {
  name: "Hall",
  waterFlow: 3,
  hotIn: 300,
  depth: 0,
  inputs: { windAt10m: 7, poolArea: 300.5 },
  pumpCurve: [{ headLost: 11 }],
};

const definition = cellFunction({
  id: "SAMPLE.FAULTS",
  topic: "sample",
  summary: "Fails.",
  args: ARGS,
  returns: wordResult("a word"),
  cautions: [],
  checks: [],
  compute: () => "",
});

const named = (message: string): unknown => namingArguments(notAvailable(message), definition, VALUES);
const K = (value: number): string => quantityMark("temperature", value);

describe("A fault that names an argument", () => {
  test.each([
    "waterFlow: too small",
    "water flow: too small",
    "The Water Flow: too small",
    '"water flow" and what follows: too small',
    "water  flow: too small",
    "water, flow: too small",
    "the depth, of course: too small",
    "inputs, third row: too small",
    "wind at 10 m: too strong",
    "pump curve, row 2: too short",
    "row 2, head lost: too short",
    "balance: hotIn is below what leaves",
    "state: no root for hotIn",
    "SAMPLE.FAULTS: no root",
    "state: SAMPLE.FAULTS has no root",
  ])("stays as it is: %s", (message) => {
    const fault = notAvailable(message);
    expect(namingArguments(fault, definition, VALUES)).toBe(fault);
  });

  test("does so in front of its first colon, unless the name is no word of a sentence", () => {
    expect(named("state: the water flow is small")).toMatchObject({
      message: "SAMPLE.FAULTS: state: the water flow is small",
    });
    expect(named("state: at this depth")).toMatchObject({ message: "SAMPLE.FAULTS: state: at this depth" });
  });

  test("does so in whole words", () => {
    expect(named("depths: too many")).toMatchObject({ message: "SAMPLE.FAULTS: depths: too many" });
    expect(named("water flows: too many")).toMatchObject({ message: "SAMPLE.FAULTS: water flows: too many" });
    expect(named("1/depth: too many")).toMatchObject({ message: "SAMPLE.FAULTS: 1/depth: too many" });
  });
});

describe("A fault that names none", () => {
  test("gets the names of those whose value it quotes, and keeps its code", () => {
    expect(named(`R-22 temperature: must be below ${K(400)}, got ${K(300)}`)).toMatchObject({
      code: "#N/A",
      message: `hotIn: R-22 temperature: must be below ${K(400)}, got ${K(300)}`,
    });
    expect(namingArguments(valueError(`too hot, got ${K(300)}`), definition, VALUES)).toMatchObject({
      code: "#VALUE!",
    });
  });

  test("is about what was given, not about a limit or a value named before", () =>
    expect(named(`state: below ${K(300)}, got ${K(3)}, got ${K(7)}`)).toMatchObject({
      message: `wind at 10 m: state: below ${K(300)}, got ${K(3)}, got ${K(7)}`,
    }));

  test("is about all arguments that have the values", () =>
    expect(named(`state: got ${K(9)}, got ${K(300)} and ${K(300.5)}`)).toMatchObject({
      message: `hotIn and pool area: state: got ${K(9)}, got ${K(300)} and ${K(300.5)}`,
    }));

  test("is about any value that it names if it doesn't say what was given", () =>
    expect(named(`at ${K(300)} there is no liquid`)).toMatchObject({
      message: `hotIn: at ${K(300)} there is no liquid`,
    }));

  test("is about the function where no argument has the value, and where a 0 was given", () => {
    expect(named(`state: got ${K(5)}`)).toMatchObject({ message: `SAMPLE.FAULTS: state: got ${K(5)}` });
    expect(named(`state: has none, got ${K(0)}`)).toMatchObject({
      message: `SAMPLE.FAULTS: state: has none, got ${K(0)}`,
    });
    expect(named("no root")).toMatchObject({ message: "SAMPLE.FAULTS: no root" });
  });

  test("is about the function where its block was left out", () =>
    expect(namingArguments(notAvailable(`state: got ${K(7)}`), definition, { hotIn: 300 })).toMatchObject({
      message: `SAMPLE.FAULTS: state: got ${K(7)}`,
    }));
});

test("what is no fault stays as it is", () => {
  const error = new Error(`state: got ${K(300)}`);
  expect(namingArguments(error, definition, VALUES)).toBe(error);
  expect(namingArguments("no root", definition, VALUES)).toBe("no root");
});
