/** What an explanation holds besides arguments; and how a call that fails or is refused is explained. */
import { describe, expect, test } from "vitest";
import { block, quantity, yesNo, type Args } from "../../core/kernel/define/argument";
import { cellFunction, type CellFunction } from "../../core/kernel/define/cellFunction";
import { gaugeReading } from "../../core/kernel/define/pressureBasis";
import { quantityResult } from "../../core/kernel/define/result";
import { compile } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault, notAvailable } from "../../core/kernel/values/fault";
import { quantityMark } from "../../core/kernel/values/quantityMark";

const withArgs = (args: Args, compute: CellFunction["compute"] = () => 1): CellFunction =>
  cellFunction({
    id: "SAMPLE.EXPLAINED",
    topic: "sample",
    summary: "Nothing.",
    args,
    returns: quantityResult("length", "a length"),
    cautions: [],
    checks: [],
    compute: compute as never,
  });

const explained = (definition: CellFunction, ...raw: readonly unknown[]) =>
  explain(compile(definition), raw, [definition]);

const length = quantity("length", "a length");

describe("An explanation", () => {
  const doubled = withArgs({ length }, (args, { trace, recordFacts }) => {
    trace.remark("Twice as long.");
    recordFacts({});
    return 2 * (args["length"] as number);
  });

  test("has the function, the system, the answer and the steps", () => {
    const { definition, system, out, steps, cautions } = explained(doubled, 3, "SI");
    expect({ definition, system, out, steps, cautions }).toEqual({
      definition: doubled,
      system: "SI",
      out: 6,
      steps: [{ type: "remark", text: "Twice as long." }],
      cautions: [],
    });
  });

  test("for cautions alone has no arguments and steps", () => {
    const { args, steps, out } = explain(compile(doubled), [3], [doubled], { steps: false });
    expect([args, steps, out]).toEqual([[], [], expect.closeTo(6, 12)]);
  });

  test("of a calculation that fails has its arguments, the steps so far, and the fault in the call's units", () => {
    const failing = withArgs({ length }, ({ length: given }, { step, trace }) => {
      step(gaugeReading, { p: 2, p0: 1 });
      trace.remark("so far");
      throw notAvailable(`length: too long, got ${quantityMark("length", given as number)}`);
    });
    const { args, steps, out, system, cautions } = explained(failing, "300 m", "SI");
    expect(args.map(({ label, value, unit }) => [label, value, unit])).toEqual([
      ["length", 300, "m"],
      ["units", "SI", ""],
    ]);
    expect(steps).toHaveLength(2);
    expect(out).toMatchObject({ code: "#N/A", message: "length: too long, got 300 m" });
    expect([system, cautions]).toEqual(["SI", []]);
  });

  test("of a calculation that breaks says so in a fault", () =>
    expect(
      explained(
        withArgs({ length }, () => {
          throw new Error("no root");
        }),
        1,
      ).out,
    ).toMatchObject({ code: "#N/A", message: "can't be computed for these inputs: no root" }));
});

describe("A refused call", () => {
  const inputs = block({ poolArea: quantity("area", "the surface") }, "the block");
  const refused = (...raw: readonly unknown[]) => {
    const { out, args, steps, cautions, system } = explained(
      withArgs({ poolDepth: length, shown: yesNo("whether"), inputs: inputs.optional() }),
      ...raw,
    );
    expect(isFault(out)).toBe(true);
    expect([steps, cautions, system]).toEqual([[], [], "US"]);
    return args.map(({ label, value, unit, given }) => [label, value, unit, given]);
  };

  test("is explained by what was given, without units, and by what is missing", () => {
    expect(
      refused(
        "much",
        true,
        [
          ["a", 1],
          ["b", 2],
        ],
        "SI",
      ),
    ).toEqual([
      ["pool depth", "much", "", true],
      ["shown", true, "", true],
      ["inputs", "a range of 2 rows × 2 columns", "", true],
      ["units", "SI", "", true],
    ]);
    expect(refused(3, null)).toEqual([
      ["pool depth", 3, "", true],
      ["shown", "", "", false],
      ["inputs", "", "", false],
      ["units", "", "", false],
    ]);
    expect(refused("", { address: "A1" }, 0)[0]).toEqual(["pool depth", "", "", false]);
  });

  test("with a text or a range that is too long is explained without it", () => {
    expect(refused("x".repeat(256), true)[0]).toEqual(["pool depth", "", "", false]);
    expect(refused("x".repeat(256), true)[1]).toEqual(["shown", true, "", true]);
  });

  test("has the descriptions of its arguments", () =>
    expect(explained(withArgs({ poolDepth: length }), "much").args[0]?.description).toBe("a length"));
});
