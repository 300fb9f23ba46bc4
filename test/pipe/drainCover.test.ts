import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";

const definition = lookUp(CATALOGUE, "PIPE.DRAINCOVER");

type Block = Readonly<Record<string, string | number>>;

function cover(block: Block) {
  if (!definition) throw new Error("no PIPE.DRAINCOVER");
  const out = evaluate(compile(definition), [Object.entries(block)], CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  const codes = explain(compile(definition), [Object.entries(block)], CATALOGUE).cautions.map(({ code }) => code);
  return { rows: new Map((out as [string, number | string][]).map(([label, value]) => [label, value])), codes };
}

describe("PIPE.DRAINCOVER", () => {
  test("asks each of two covers to carry the whole flow, each of three half of it", () => {
    expect(cover({ flow: 60, covers: 2 }).rows.get("flow one blocked")).toBeCloseTo(60, 9);
    expect(cover({ flow: 60, covers: 3 }).rows.get("flow one blocked")).toBeCloseTo(30, 9);
    const { rows } = cover({ flow: 90, covers: 4, "cover rating": 36 });
    expect(rows.get("flow per cover")).toBeCloseTo(22.5, 9);
    expect(rows.get("rating margin")).toBeCloseTo(0.2, 9);
  });

  test("names a single drain and has no flow with it blocked", () => {
    const { rows, codes } = cover({ flow: 60, covers: 1, "cover rating": 100 });
    expect(rows.get("flow one blocked")).toBe("");
    expect(rows.get("finding")).toMatch(/^single drain/);
    expect(codes).toContain("PIPE-DRAIN-COVER");
  });

  test("raises danger where the flow passes what is marked, and only there", () => {
    const over = cover({ flow: 60, covers: 2, "cover rating": 59 });
    expect(over.rows.get("finding")).toBe("above the rating of a cover");
    expect(over.codes).toContain("PIPE-COVER-RATING");
    const within = cover({ flow: 60, covers: 2, "cover rating": 60 });
    expect(within.rows.get("finding")).toBe("within the rating of a cover");
    expect(within.codes).not.toContain("PIPE-COVER-RATING");
    expect(cover({ flow: 60, covers: 2 }).rows.get("finding")).toBe("no rating given");
  });

  // 0.4085 Q/d² (printed identity) with the average bore of 2.049 in: 30.8 gpm run at 3 ft/s.
  test("runs a 2 in branch at 3 ft/s with 30.8 gpm, as printed", () => {
    const { rows, codes } = cover({ flow: 30.8, covers: 2, "branch size": "2 in", "suction size": "2 in" });
    expect(rows.get("branch velocity")).toBeCloseTo(3, 2);
    expect(rows.get("trunk velocity")).toBeCloseTo(3, 2);
    expect(codes).not.toContain("PIPE-LOOP-FAST-SUCTION");
    expect(cover({ flow: 60, covers: 2, "branch size": "1-1/2 in" }).codes).toContain("PIPE-LOOP-FAST-SUCTION");
  });
});

describe("the exchanger's row of PIPE.LOOP", () => {
  const codes = (head: number | string): readonly string[] => {
    const loop = lookUp(CATALOGUE, "PIPE.LOOP");
    if (!loop) throw new Error("no PIPE.LOOP");
    const items = [
      ["pipe", "2 in", 60, null, null],
      ["heat exchanger", null, 1, head, 40],
    ];
    return explain(compile(loop), [items, 40], CATALOGUE).cautions.map(({ code }) => code);
  };

  // 0.0006 psi is what EXCHANGER.COIL gave as the drop of the water along its bundle.
  test("is questioned where it is less than the ports alone would lose", () => {
    expect(codes("0.0014 ft")).toContain("PIPE-LOOP-EXCHANGER-LOSS");
    expect(codes(1)).not.toContain("PIPE-LOOP-EXCHANGER-LOSS");
  });
});
