/** Traces: what a calculation records of its way to a result. */
import { describe, expect, test } from "vitest";
import { equation, relation, symbol } from "../../core/kernel/define/equation";
import { UNFINISHED } from "../../core/kernel/define/slice";
import { recorder, silent, traceFor, type Trace } from "../../core/kernel/define/steps";

const doubled = equation({
  name: "Twice",
  form: "y = 2 * x",
  kind: "length",
  symbols: { x: symbol("length", "a length", 1, 2) },
  source: "identity",
  code: ({ x }) => 2 * x,
});

const level = relation({
  name: "Balance",
  form: "3 * x = x + 4",
  symbols: { x: symbol("length", "a length", 1, 2) },
  source: "identity",
  left: ({ x }) => 3 * x,
  right: ({ x }) => x + 4,
});

const lookup = { table: "Sizes", row: "2 in", result: "wide", source: "identity" } as const;
const property = { substance: "water", property: "density", inputs: {}, result: "heavy", source: "identity" } as const;
const solution = {
  unknown: "x",
  kind: "length",
  solves: "the balance",
  bracket: [0, 9],
  iterations: 5,
  residual: 0,
  answer: 2,
} as const;

const recordAll = (trace: Trace): void => {
  trace.relation(level, { x: 2 });
  trace.lookup(lookup);
  trace.property(property);
  trace.solution(solution);
  trace.series({ title: "Hours", of: "hours", kind: "time", total: "sum", values: Float64Array.of(1, 2) });
  trace.remark("so it is");
};

describe("The silent trace", () => {
  test("computes and records nothing", () => {
    expect(silent.on).toBe(false);
    expect(silent.step(doubled, { x: 3 })).toBe(6);
    expect(silent.within("a group", () => 7)).toBe(7);
    expect(() => recordAll(silent)).not.toThrow();
  });

  test("is the same for one of several things", () => expect(traceFor("loop 2", silent)).toBe(silent));
});

describe("A recorder", () => {
  test("keeps every step with what it says, in their order", () => {
    const { trace, steps } = recorder();
    expect(trace.on).toBe(true);
    expect(trace.step(doubled, { x: 3 })).toBe(6);
    recordAll(trace);
    expect(steps).toEqual([
      { type: "equation", equation: doubled, x: { x: 3 }, value: 6 },
      { type: "relation", relation: level, x: { x: 2 }, left: 6, right: 6 },
      { type: "lookup", ...lookup },
      { type: "property", ...property },
      { type: "solution", ...solution },
      { type: "series", title: "Hours", of: "hours", kind: "time", total: "sum", values: [1, 2] },
      { type: "remark", text: "so it is" },
    ]);
    expect(steps[0]).not.toHaveProperty("of");
  });

  test("keeps numbers as they were when the step was made", () => {
    const { trace, steps } = recorder();
    const x = { x: 3 };
    const values = [1, 2];
    trace.step(doubled, x);
    trace.relation(level, x);
    trace.series({ title: "Hours", of: "hours", kind: "time", total: "sum", values });
    x.x = 4;
    values[0] = 9;
    expect(steps).toMatchObject([{ x: { x: 3 } }, { x: { x: 3 } }, { values: [1, 2] }]);
  });

  test("says which of several like things equations and relations belong to", () => {
    const { trace, steps } = recorder();
    trace.step(doubled, { x: 3 }, "loop 1");
    const second = traceFor("loop 2", trace);
    expect(second.on).toBe(true);
    expect(second.step(doubled, { x: 4 })).toBe(8);
    second.relation(level, { x: 2 });
    second.remark("so it is");
    expect(steps).toMatchObject([
      { of: "loop 1" },
      { of: "loop 2", value: 8 },
      { of: "loop 2", left: 6 },
      { type: "remark" },
    ]);
  });

  test("puts steps below their title, groups within groups, and leaves empty ones out", () => {
    const { trace, steps } = recorder();
    trace.within("nothing", () => undefined);
    const found = trace.within("outer", () => {
      trace.remark("one");
      return trace.within("inner", () => (trace.remark("two"), 5));
    });
    trace.remark("three");
    expect(found).toBe(5);
    expect(steps).toEqual([
      {
        type: "group",
        title: "outer",
        steps: [
          { type: "remark", text: "one" },
          { type: "group", title: "inner", steps: [{ type: "remark", text: "two" }] },
        ],
      },
      { type: "remark", text: "three" },
    ]);
  });

  test("closes a group that ends with a fault, and keeps what was in it", () => {
    const { trace, steps } = recorder();
    const failing = () =>
      trace.within("outer", () => {
        trace.remark("one");
        throw new Error("no root");
      });
    expect(failing).toThrow("no root");
    trace.remark("two");
    expect(steps).toEqual([
      { type: "group", title: "outer", steps: [{ type: "remark", text: "one" }] },
      { type: "remark", text: "two" },
    ]);
  });
});

test("a calculation whose slice is over throws an error of its own name", () =>
  expect(UNFINISHED).toMatchObject({ message: "unfinished" }));
