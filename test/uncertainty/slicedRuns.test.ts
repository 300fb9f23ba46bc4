/** Runs that end with their slice and go on. */
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { UNFINISHED } from "../../core/kernel/define/slice";
import { exampleArgs, rawByPlace } from "../../core/kernel/explain/describe";
import { uncertainCall } from "../../core/picture/uncertainCall";
import { knownRuns } from "../../core/uncertainty/knownRuns";
import type { ExampleArgs } from "../../core/kernel/define/cellFunction";
import { addRun, likelyValues, noRuns, type UncertainModel } from "../../core/uncertainty/study";

/** The result of a call whose slice is over after every run, and how often it was made. */
function inSlices<T>(call: () => T): { readonly result: T; readonly calls: number } {
  for (let calls = 1; ; calls++)
    try {
      return { result: call(), calls };
    } catch (thrown) {
      if (thrown !== UNFINISHED) throw thrown;
    }
}

/** Calls that no other test makes. */
const CALLS: Readonly<Record<string, ExampleArgs>> = {
  "POOL.UNCERTAINTY": { runs: 16 },
  "NOTE.UNCERTAINTY": {
    function: "COST.OFHEAT",
    ranges: [
      ["price", "rectangular", 1.21, null, 1.83],
      ["efficiency", "rectangular", 0.71, null, 0.86],
    ],
    arguments: [[100_000, "natural gas", "", ""]],
  },
};

/** Its outcome tells what the model itself has been through. */
const remembering = (): UncertainModel => {
  let runs = 0;
  const x = { label: "x", unit: "", likely: 0.5, mean: 0.5, deviation: 0.1, freedom: 9, at: (share: number) => share };
  return { inputs: [x], compute: ([value = 0]) => [value + 10 * runs++] };
};

describe("Runs in slices", () => {
  test("are those of one piece, made by the model that began", () => {
    const wanted = { runs: 8, outcomes: 1 };
    const whole = knownRuns("whole", [], { model: remembering(), ...wanted });
    const sliced = inSlices(() =>
      knownRuns("sliced", [], { model: remembering(), ...wanted, isSliceOver: () => true }),
    );
    expect(sliced.calls).toBe(8);
    expect(sliced.result.found.outcomes).toEqual(whole.found.outcomes);
    expect(whole.found.outcomes[0]).toHaveLength(8);
  });

  test("of other arguments don't go on from those left unfinished", () => {
    const wanted = { runs: 4, outcomes: 1, isSliceOver: () => true };
    expect(() => knownRuns("left", [1], { model: remembering(), ...wanted })).toThrow(UNFINISHED);
    expect(
      knownRuns("left", [2], { model: remembering(), runs: 4, outcomes: 1 }).found.outcomes[0]?.[3],
    ).toBeGreaterThan(30);
  });

  test.each(Object.entries(CALLS))("of %s give the result of one piece", (id, more) => {
    const compiled = COMPILED.get(id);
    if (compiled === undefined) throw new Error(id);
    const args = rawByPlace(compiled.definition, { ...exampleArgs(compiled.definition), ...more });
    const { model, outcomes, cellRuns } = uncertainCall(compiled, args);
    model.compute(likelyValues(model));
    const sliced = inSlices(() => evaluate(compiled, args, CATALOGUE, () => true));
    expect(sliced.calls).toBe(cellRuns().outcomes[0]?.length);
    const own = noRuns(model, outcomes.length);
    for (let run = 0; run < sliced.calls; run++) addRun(model, run, own);
    expect(cellRuns().outcomes).toEqual(own.outcomes);
    expect(evaluate(compiled, args, CATALOGUE)).toEqual(sliced.result);
  });
});
