/** Notices about inputs outside what is usual: by an argument's own range, else by what is usual of its kind. */
import { describe, expect, test } from "vitest";
import { block, choice, either, quantity, rows, several, text, type Args } from "../../core/kernel/define/argument";
import type { Caution } from "../../core/kernel/define/caution";
import { BASIS } from "../../core/kernel/define/pressureBasis";
import { us } from "../../core/kernel/values/quantity";
import { raisedBy, telling } from "./ruledFunction";

const length = quantity("length", "a length");
const depth = quantity("depth", "the depth", { usual: [us("depth", 3), us("depth", 10)] });

const notices = (args: Args, ...raw: readonly unknown[]) =>
  raisedBy({ args }, ...raw).map(({ code, severity, text: words }) => {
    expect([code, severity]).toEqual(["UNUSUAL-INPUT", "Notice"]);
    return words;
  });

const notice = (label: string, value: string, usual = "3 ft to 10 ft") =>
  `${label}: ${value} is outside the usual ${usual}; check value and unit.`;

describe("An input outside what is usual", () => {
  test("raises a notice below and above its range, none on its bounds", () => {
    for (const value of [3, 5, 10, "0.9144 m", "3.048 m"]) expect(notices({ poolDepth: depth }, value)).toEqual([]);
    expect(notices({ poolDepth: depth }, 2.99)).toEqual([notice("pool depth", "2.99 ft")]);
    expect(notices({ poolDepth: depth }, 10.01)).toEqual([notice("pool depth", "10.01 ft")]);
    expect(notices({ poolDepth: depth }, 4, "SI")).toEqual([notice("pool depth", "4 m", "0.9144 m to 3.048 m")]);
  });

  test("is raised for several values one by one, for a number in a word's place, and for no word", () => {
    const widths = several("length", "widths", [1, 2], { usual: [us("length", 1), us("length", 2)] });
    expect(notices({ widths }, "5; 6")).toEqual([
      notice("widths", "5 ft", "1 ft to 2 ft"),
      notice("widths", "6 ft", "1 ft to 2 ft"),
    ]);
    const shade = either(choice("S", ["none"], "s"), depth, "shade");
    expect(notices({ shade }, 2)).toEqual([notice("shade", "2 ft")]);
    expect(notices({ shade, name: text("n"), deep: depth.optional() }, "none", "12")).toEqual([]);
  });

  test("is named by the label of a block, and by the column of rows, once for each column", () => {
    const inputs = block({ poolDepth: depth, other: depth.optional() }, "a block");
    expect(notices({ inputs }, [["pool depth", 2]])).toEqual([notice("pool depth", "2 ft")]);
    expect(notices({ inputs: inputs.optional() }, null)).toEqual([]);
    const steps = rows({ stepDepth: depth, back: depth.optional() }, "steps", { least: 1, most: 3 });
    const lines = [
      [5, null],
      [2, 1],
      [1, 30],
    ];
    expect(notices({ poolSteps: steps }, lines)).toEqual([
      notice("pool steps, step depth", "2 ft"),
      notice("pool steps, back", "1 ft"),
    ]);
    expect(notices({ poolSteps: steps.optional() }, null)).toEqual([]);
  });

  test("is raised for a quantity whose kind a word of its own row names", () => {
    const kinds = { deep: "depth", wide: "diameter" } as const;
    const size = quantity({ choice: "what", kinds }, "a size", { usual: [1, 2] });
    const sizes = rows({ what: choice("W", ["deep", "wide"], "what"), size }, "sizes", { least: 1, most: 3 });
    expect(notices({ sizes }, [["wide", 1000]])).toEqual([notice("sizes, size", "1000 in", "39.37 in to 78.74 in")]);
    const inputs = block({ what: choice("W", ["deep", "wide"], "what"), size }, "inputs");
    const lines = [
      ["what", "wide"],
      ["size", 1000],
    ];
    expect(notices({ inputs }, lines)).toEqual([notice("size", "1000 in", "39.37 in to 78.74 in")]);
  });

  test("is raised for a reading as the gauge shows it", () => {
    const bounds = [us("pressure", 50), us("pressure", 150)] as const;
    const pressure = quantity("pressure", "a reading", { reading: true, usual: bounds });
    const of = (...raw: readonly unknown[]) => notices({ pressure, basis: BASIS }, ...raw);
    const raised = (value: string) => [notice("pressure", value, "50 psi to 150 psi")];
    expect(of(145)).toEqual([]);
    expect(of(155)).toEqual(raised("155 psi"));
    expect(of(40)).toEqual(raised("40 psi"));
    expect(of(155, "absolute")).toEqual(raised("155 psi"));
    expect(of(145, "5000 ft")).toEqual([]);
    expect(of("150.0000000005")).toEqual([]);
    expect(of("49.9999999995")).toEqual([]);
    expect(notices({ size: quantity("pressure", "no reading", { usual: bounds }) }, 155)).toHaveLength(1);
  });

  // 10^5 m is 328,084 ft.
  test("is raised by what is usual of its kind where it has no range, no lower than its limits", () => {
    const usualOf = (arg: typeof length, raw: number) =>
      /usual (\S+) ft to (\S+) ft;/.exec(notices({ length: arg }, raw)[0] ?? "")?.slice(1);
    expect(usualOf(length, 1e7)).toEqual(["-328100", "328100"]);
    expect(usualOf(length, -1e7)).toEqual(["-328100", "328100"]);
    expect(usualOf(quantity("length", "s", { above: 0 }), 1e7)).toEqual(["0", "328100"]);
    expect(usualOf(quantity("length", "s", { from: us("length", 2) }), 1e7)).toEqual(["2", "328100"]);
    expect(usualOf(quantity("length", "s", { from: -1e12 }), -1e7)).toEqual(["-328100", "328100"]);
  });

  test("raises none besides a rule of the function's own about it", () => {
    const own = (head: string, code = "UNUSUAL-INPUT"): Caution<never> => ({
      ...telling({}),
      code,
      message: () => `${head}: too deep.`,
    });
    const texts = (rule: Caution<never>) =>
      raisedBy({ args: { poolDepth: depth }, rules: [rule] }, 20).map(({ text: words }) => words);
    expect(texts(own("pool depth"))).toEqual(["pool depth: too deep."]);
    expect(texts(own("depth"))).toEqual(["depth: too deep."]);
    expect(texts(own("width"))).toEqual(["width: too deep.", notice("pool depth", "20 ft")]);
    expect(texts(own("pool depth", "DEEP"))).toHaveLength(2);
  });
});
