import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { lookalike } from "../../core/kernel/call/nearest";

const run = (id: string, ...raw: readonly unknown[]): unknown => {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  return evaluate(compile(definition), raw, CATALOGUE);
};
const refusal = (out: unknown): string => (isFault(out) ? out.message : JSON.stringify(out));

describe("a word that isn't known", () => {
  test.each([
    ["R410", "R-410A"],
    ["R-454", "R-454B"],
    ["propane", "R-290"],
    ["Freon 22", "R-22"],
    ["CO2", "R-744"],
  ])("%s is answered with the nearest refrigerant, %s", (word, nearest) =>
    expect(refusal(run("REFRIG.PRESSURE", word, 100))).toMatch(
      new RegExp(`got "${word}": the nearest is "${nearest}"$`),
    ),
  );

  test("is answered with what it looks like where a number may be given too", () =>
    expect(refusal(run("POOL.WINDATWATER", 10, "sheltered yard"))).toMatch(/: the nearest is "sheltered"$/));

  test("gets no suggestion where nothing looks like it", () => {
    expect(refusal(run("REFRIG.PRESSURE", "water", 100))).toMatch(/got "water"$/);
    expect(lookalike("rh", ["air", "swing", "sun"])).toBeUndefined();
    expect(lookalike("humdity", ["air", "humidity"])).toBe("humidity");
    expect(lookalike("wnd", ["air", "wind"])).toBe("wind");
  });
});

describe("a label that isn't known", () => {
  const block = (label: string) => run("POOL.LOSSES", [[label, 365]]);

  test("names what it looks like", () => expect(refusal(block("pool aera"))).toMatch(/the nearest is "pool area"$/));

  test("says where the labels are listed where it looks like none", () =>
    expect(refusal(block("xyz"))).toMatch(/no label "xyz" here; NOTE.INPUTS lists them$/));
});

describe("fittings by their trade names", () => {
  test.each([
    ["elbow", "elbow 90"],
    ["ell", "elbow 90"],
    ["90", "elbow 90"],
    ["Sweep elbow", "elbow 90"],
    ["45 ell", "elbow 45"],
    ["check valve", "swing check"],
    ["3-way valve", "three-way valve"],
  ])("%s is the %s in PIPE.FITTING and PIPE.LOOP", (name, fitting) => {
    expect(run("PIPE.FITTING", name, "2 in", 45)).toBe(run("PIPE.FITTING", fitting, "2 in", 45));
    const headOf = (what: string) => (run("PIPE.LOOP", [[what, "2 in", 1]], 45) as (string | number)[][])[1]?.[3];
    expect(headOf(name)).toBe(headOf(fitting));
    expect(headOf(name)).toBeGreaterThan(0);
  });

  test("the hot gas line is a discharge line", () =>
    expect(run("LINE.DROP", "R-410A", "hot gas", "3/4 in", 20, 48_000, 45, 105)).toEqual(
      run("LINE.DROP", "R-410A", "discharge", "3/4 in", 20, 48_000, 45, 105),
    ));
});
