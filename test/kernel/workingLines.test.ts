/** Every kind of step as a line of the working: text, numbers, value, unit and source. */
import { describe, expect, test } from "vitest";
import { equation, relation, symbol } from "../../core/kernel/define/equation";
import { recorder, type Trace } from "../../core/kernel/define/steps";
import { NUMBERS_HEAD, withNumbers, workingLines } from "../../core/kernel/explain/working";
import { cite } from "../../core/kernel/reference";
import { quantityMark } from "../../core/kernel/values/quantityMark";
import { us, type System } from "../../core/kernel/values/quantity";

const source = cite("identity");

const linesOf = (record: (trace: Trace) => void, system: System = "US") => {
  const { trace, steps } = recorder();
  record(trace);
  return workingLines(steps, system);
};

const lengthOf = equation({
  name: "Length",
  form: "L = k * x - y_1",
  kind: "length",
  symbols: { x: symbol("length", "a length", 1, 2), y_1: symbol("length", "another", 1, 2) },
  constants: { k: 2 },
  source: "identity",
  code: ({ x, y_1 }) => 2 * x - y_1,
});

const balance = relation({
  name: "Balance",
  form: "k * x = x + 4",
  symbols: { x: symbol("length", "a length", 1, 2) },
  constants: { k: 3 },
  source: "identity",
  left: ({ x }) => 3 * x,
  right: ({ x }) => x + 4,
});

test("the column of numbers says that they are strict SI", () =>
  expect(NUMBERS_HEAD).toBe("with the numbers in (strict SI where no unit stands)"));

describe("A form with its numbers in", () => {
  test.each([
    ["y = 2 * x + x2", { x: 3, x2: 4 }, "2 * 3 + 4"],
    ["y = x - x", { x: -3 }, "(-3) - (-3)"],
    ["y = exp(x) / pi", { x: 0 }, "exp(0) / pi"],
    ["y=Q_in * 1e-5", { Q_in: 12.3456789 }, "12.3457 * 1e-5"],
    ["x + 1", { x: 2 }, "2 + 1"],
  ] as const)("%s", (form, x, text) => expect(withNumbers(form, x)).toBe(text));
});

describe("A line of the working", () => {
  test("of an equation has its form, its constants and numbers, and its value in the call's units", () => {
    const record = (trace: Trace): unknown => trace.step(lengthOf, { x: 1, y_1: -0.5 });
    expect(linesOf(record)).toEqual([
      {
        number: "1",
        text: "Length: L = k * x - y_1",
        form: "L = k * x - y_1",
        numbers: "2 * 1 - (-0.5)",
        value: 8.20209973753,
        unit: "ft",
        source,
      },
    ]);
    expect(linesOf(record, "SI")[0]).toMatchObject({ value: 2.5, unit: "m" });
  });

  test("of an equation without a finite value says so", () =>
    expect(linesOf((trace) => trace.step(lengthOf, { x: Infinity, y_1: 0 }))[0]).toMatchObject({
      value: "not finite",
      numbers: "2 * infinity - 0",
    }));

  test("of a relation has both sides with their numbers, and what is left between them", () =>
    expect(linesOf((trace) => trace.relation(balance, { x: 2.5 }))).toEqual([
      {
        number: "1",
        text: "Balance: k * x = x + 4",
        form: "k * x = x + 4",
        numbers: "3 * 2.5 = 2.5 + 4",
        value: 1,
        unit: "",
        source,
      },
    ]));

  test("says which of several like things it belongs to", () =>
    expect(
      linesOf((trace) => {
        trace.step(lengthOf, { x: 1, y_1: 0 }, "loop 2");
        trace.relation(balance, { x: 2 }, "loop 3");
      }).map(({ text }) => text),
    ).toEqual(["Length, loop 2: L = k * x - y_1", "Balance, loop 3: k * x = x + 4"]));

  test("of a table has the row, how it was read between rows, and its source", () => {
    const detail = { table: "Sizes", row: "2 in", source: { key: "identity", where: "table 3" } } as const;
    const [plain, between] = linesOf((trace) => {
      trace.lookup({ ...detail, result: { value: 0.0508, kind: "diameter" } });
      trace.lookup({ ...detail, result: "wide", interpolation: "between 1 in and 3 in" });
    });
    expect(plain).toEqual({
      number: "1",
      text: "Sizes: 2 in",
      numbers: "",
      value: 2,
      unit: "in",
      source: `${source}, table 3`,
    });
    expect(between).toMatchObject({ number: "2", numbers: "between 1 in and 3 in", value: "wide", unit: "" });
  });

  test("of a property has its inputs, its uncertainty and its source", () => {
    const detail = { substance: "water", property: "density", result: { value: 1000, kind: "density" } } as const;
    const [plain, doubtful] = linesOf((trace) => {
      trace.property({ ...detail, inputs: {}, source: "identity" });
      trace.property({
        ...detail,
        inputs: { temperature: { value: us("temperature", 80), kind: "temperature" }, state: "liquid" },
        uncertainty: "0.1 %",
        source: "identity",
      });
    }, "SI");
    expect(plain).toEqual({
      number: "1",
      text: "density of water",
      numbers: "",
      value: 1000,
      unit: "kg/m³",
      source,
    });
    expect(doubtful).toMatchObject({ text: "density of water (0.1 %)", numbers: "temperature 26.67 °C, state liquid" });
  });

  test("of a solver has what it solved, the bracket, the passes and what is left", () =>
    expect(
      linesOf((trace) =>
        trace.solution({
          unknown: "temperature",
          kind: "temperature",
          solves: "the balance",
          bracket: [us("temperature", 40), us("temperature", 100)],
          iterations: 5,
          residual: 1.5e-9,
          answer: us("temperature", 80),
        }),
      ),
    ).toEqual([
      {
        number: "1",
        text: "Solved for temperature: the balance",
        numbers: "between 40 °F and 100 °F, 5 passes, residual 1.5e-9",
        value: expect.closeTo(80, 9) as number,
        unit: "°F",
        source: "",
      },
    ]));

  test("of a pressure is absolute", () =>
    expect(
      linesOf(
        (trace) => trace.lookup({ table: "T", row: "r", result: { value: 1e5, kind: "pressure" }, source: "identity" }),
        "SI",
      )[0],
    ).toMatchObject({ value: 100, unit: "kPa absolute" }));

  test("of a sentence has nothing but the sentence, with quantities in the call's units", () => {
    const record = (trace: Trace) => trace.remark(`Warmer than ${quantityMark("temperature", us("temperature", 80))}.`);
    expect(linesOf(record)).toEqual([
      { number: "1", text: "Warmer than 80 °F.", numbers: "", value: "", unit: "", source: "" },
    ]);
    expect(linesOf(record, "SI")[0]?.text).toBe("Warmer than 26.6667 °C.");
  });

  test("of what was read between rows has quantities in the call's units", () =>
    expect(
      linesOf((trace) =>
        trace.lookup({
          table: "T",
          row: "r",
          interpolation: `above ${quantityMark("length", 0.3048)}`,
          result: "x",
          source: "identity",
        }),
      )[0]?.numbers,
    ).toBe("above 1 ft"));
});
