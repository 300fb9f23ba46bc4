import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellOut } from "../../core/kernel/call/present";
import { us } from "../../core/kernel/values/quantity";
import { FITTINGS } from "../../core/pipe/data/fittings";
import { PVC_PIPE } from "../../core/pipe/data/pvcPipe";
import { suddenContraction } from "../../core/pipe/fitting/equations";
import { fittingLoss } from "../../core/pipe/fitting/fittingLoss";
import { headLossOf } from "../../core/pipe/straight/headLoss";
import { BLANK_CURVE } from "../../core/pipe/network/partCurve";
import { loopLines, type LoopItem } from "../../core/pipe/network/loop";
import { cellsIn, numberIn } from "../golden/rows";

const definition = lookUp(CATALOGUE, "PIPE.LOOP");
if (!definition) throw new Error("PIPE.LOOP is not listed");
const compiled = compile(definition);
const cells = (...raw: readonly unknown[]): readonly (readonly CellOut[])[] => {
  const out = evaluate(compiled, raw, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return out as readonly (readonly CellOut[])[];
};
const refusal = (...raw: readonly unknown[]): string => {
  const out = evaluate(compiled, raw, CATALOGUE);
  return isFault(out) ? `${out.code} ${out.message}` : "no refusal";
};

const LOOP = [
  ["entrance", "2 in", 1, null, null, "suction"],
  ["pipe", "2 in", 30, null, null, "suction"],
  ["filter, dirty", null, 1, 23, 50],
  ["Pipe", "2 in", 90],
  ["elbow 90", "2 in", 8],
  ["valve", "2 in", 1, null, null, null, 90],
];

describe("the word pipe", () => {
  const LENGTH_100 = cells([["pipe", "2 in", 100]], 50);
  test.each(["Pipe", "PiPe", "pipe ", " pipe", "pipe\u00a0", "pipe\n", "PIPE\t"])(
    "%j counts its number as feet, as the plain word does",
    (what) => {
      const lines = cells([[what, "2 in", 100]], 50);
      expect(lines.at(-1)).toEqual(LENGTH_100.at(-1));
    },
  );
});

describe("the loop's head", () => {
  test("a pipe's head is found from its length alone", () => {
    expect(refusal([["pipe", "2 in", 30, null, null, null, 22]], 40)).toMatch(
      /items, pipe: a pipe's loss follows from its length/,
    );
    expect(refusal([["pipe", "2 in", 30, 5, 10]], 40)).toMatch(/in its own row/);
  });

  test("the loop's head is the sum of what the single functions give, suction and return apart", () => {
    const at = { flow: us("water flow", 50), water: us("temperature", 80), schedule: "40" } as const;
    const out = cells(LOOP, 50);
    const column = (row: number): number => Number(out[row]?.[3]) * 0.3048;
    const run = (feet: number) =>
      headLossOf({ ...at, size: "2 in", length: us("length", feet), method: "Darcy-Weisbach", bore: "average" }).head;
    const fit = (fitting: "entrance" | "elbow 90", count: number) =>
      fittingLoss({ ...at, fitting, size: "2 in", count, method: "three-constant", bore: "average" }).head;
    expect(column(1)).toBeCloseTo(fit("entrance", 1), 10);
    expect(column(2)).toBeCloseTo(run(30), 10);
    expect(column(3)).toBeCloseTo(us("head", 23), 10);
    expect(column(4)).toBeCloseTo(run(90), 10);
    expect(column(5)).toBeCloseTo(fit("elbow 90", 8), 10);
    expect(out.slice(-3).map(([what]) => what)).toEqual(["subtotal suction", "subtotal return", "total"]);
    expect(column(7)).toBeCloseTo(column(1) + column(2), 10);
    expect(column(8)).toBeCloseTo(column(3) + column(4) + column(5) + column(6), 10);
    expect(column(9)).toBeCloseTo(column(7) + column(8), 10);
    const curve = Number(out[9]?.[7]);
    expect(curve * 50 ** 2).toBeCloseTo(Number(out[9]?.[3]), 9);
  });

  test("takes a header in any order, with units of its own, and the same loop in SI", () => {
    const header = ["side", "length or count", "what", "size", "loss (m)", "known flow (m³/h)"];
    const out = cells(
      [header, ["suction", "10 m", "pipe", "DN50", null, null], [null, null, "heater", null, 3, 10]],
      40,
    );
    const si = cells(
      [
        ["pipe", "DN50", 10, null, null, "suction"],
        ["heater", null, null, 3, 10],
      ],
      40 * 0.2271246,
      "80 °F",
      "40",
      "SI",
    );
    expect(Number(out.at(-1)?.[3]) * 0.3048).toBeCloseTo(Number(si.at(-1)?.[3]), 5);
  });

  test("shows the fastest water of each side beside the sums", () => {
    const out = cells([...LOOP, ["pipe", "1-1/2 in", 5]], 50);
    const velocities = out.map((row) => row[4]);
    expect(velocities.at(-2)).toBe(velocities[7]);
    expect(velocities.at(-3)).toBe(velocities[1]);
  });

  test("takes zeros as blanks, as a host hands empty cells of a range over", () => {
    const withZeros = LOOP.map((row) => Array.from({ length: 7 }, (_, i) => row[i] ?? 0));
    const out = cells([...withZeros, [0, 0, 0, 0, 0, 0, 0]], 50);
    expect(out).toEqual(cells(LOOP, 50));
  });

  test("refuses what it can't compute, and says in which row", () => {
    expect(refusal([["elbw 90", "2 in", 2]], 50)).toMatch(/#VALUE! items, elbw 90: .*nearest: "elbow 90"/);
    expect(refusal([["pipe", "2 in"]], 50)).toMatch(/a pipe needs its length/);
    expect(refusal([["elbow 90", null, 2]], 50)).toMatch(/needs its nominal size/);
    expect(refusal([["heater", null, 1, 8]], 50)).toMatch(/known flow: is blank/);
    expect(refusal([["heater", null, 1, 8, 40, null, 20]], 50)).toMatch(/not both/);
    expect(refusal([["elbow 90", "2 in", 1.5]], 50)).toMatch(/whole number of pieces, got 1.5/);
    expect(refusal([["pipe", "2 in", 10]], 0)).toMatch(/flow: must be above/);
  });

  test("the loop's head rises with the flow, and a component's by its square", () => {
    const item = (what: string, over: Partial<LoopItem>): LoopItem => ({
      what,
      size: undefined,
      lengthOrCount: undefined,
      loss: undefined,
      knownFlow: undefined,
      side: "return",
      flowCoefficient: undefined,
      ...BLANK_CURVE,
      ...over,
    });
    const items = [item("pipe", { size: "2 in", lengthOrCount: 20 }), item("filter", { loss: 3, knownFlow: 0.003 })];
    fc.assert(
      fc.property(
        fc.double({ min: 5e-4, max: 0.01, noNaN: true }),
        fc.double({ min: 1.01, max: 2, noNaN: true }),
        (flow, more) => {
          const [less, greater] = [flow, flow * more].map((each) =>
            loopLines(items, { flow: each, water: 300, schedule: "40" }),
          );
          expect(greater?.at(-1)?.head).toBeGreaterThan(less?.at(-1)?.head ?? 0);
          expect((greater?.[1]?.head ?? 0) / (less?.[1]?.head ?? 1)).toBeCloseTo(more ** 2, 9);
        },
      ),
    );
  });
});

describe("the working of a long loop", () => {
  const noteDefinition = lookUp(CATALOGUE, "NOTE.WORKING");
  if (!noteDefinition) throw new Error("NOTE.WORKING is not listed");
  const note = compile(noteDefinition);
  const working = (...raw: readonly unknown[]): readonly (readonly CellOut[])[] =>
    evaluate(note, ["PIPE.LOOP", ...raw], CATALOGUE) as readonly (readonly CellOut[])[];

  const PARTS = ["pipe", ...FITTINGS.map(({ fitting }) => fitting), "filter, dirty", "balancing valve"];
  /** Sixty rows, every one of another kind or size than the one before; no two fittings alike where `sizes` are many. */
  const sixty = (sizes: readonly string[]): readonly (readonly unknown[])[] =>
    Array.from({ length: 60 }, (_, i) => {
      const what = PARTS[i % PARTS.length] ?? "pipe";
      const size = sizes[(i + Math.floor(i / PARTS.length)) % sizes.length];
      const side = i % 5 === 0 ? "suction" : "return";
      if (what === "filter, dirty") return [what, null, 1, 20, 60, side];
      if (what === "balancing valve") return [what, size, 1, null, null, side, 90];
      return [what, size, what === "pipe" ? 12 : 2, null, null, side];
    });

  test.each([
    ["two sizes", ["2 in", "2-1/2 in"]],
    [
      "every size but the largest",
      PVC_PIPE.filter(({ schedule }) => schedule === "40")
        .map(({ size }) => size)
        .slice(0, -1),
    ],
  ])("a working of sixty mixed rows in %s ends with its result, uncut", (_, sizes) => {
    const told = working(sixty(sizes), 60);
    expect(told.length).toBeLessThanOrEqual(200);
    expect(told.map(([step]) => step)).not.toContain("…");
    expect(told.at(-1)?.[0]).toBe("result");
    expect(told.at(-2)?.[1]).toMatch(/^Suction and return make the total/);
    expect(Math.abs(Number(told.at(-2)?.[3]))).toBeLessThan(1e-9);
  });

  test("has every row's head with its numbers, and the sums", () => {
    const items = sixty(["2 in", "2-1/2 in", "3 in"]);
    const told = working(items, 60);
    const rows = cells(items, 60).slice(1);
    rows.slice(0, 60).forEach((row, place) => {
      const lines = told.filter(([, says]) => String(says).includes(`, row ${place + 1}, ${String(row[0])}`));
      expect(lines.map((line) => line[3])).toContain(Number(Number(row[3]).toPrecision(12)));
      expect(lines.map((line) => String(line[2])).filter((each) => !/\d/.test(each))).toEqual([]);
    });
    for (const row of rows.slice(60)) {
      const sum = told.find(([, says]) => says === `${String(row[0])}, sum`);
      expect(sum?.[3]).toBeCloseTo(Number(row[3]), 9);
    }
  });

  test("can be done by hand: the printed numbers of a fitting give its printed head", () => {
    const told = working([["elbow 90", "2 in", 8]], 50);
    const line = told.find(([, says]) => String(says).startsWith("Head lost in fittings, row 1, elbow 90, 2 in"));
    const numbers = /^(\S+) \* (\S+) \* (\S+)\^2 \/ \(2 \* (\S+)\)$/.exec(String(line?.[2]));
    const [n, K, v, g] = (numbers ?? []).slice(1).map(Number);
    expect(((n ?? 0) * (K ?? 0) * (v ?? 0) ** 2) / (2 * (g ?? 1)) / 0.3048).toBeCloseTo(Number(line?.[3]), 4);
  });
});

describe("reducers", () => {
  const rows = cellsIn("fittings-reducers-tees.csv").filter(
    (row) => row["fitting"] === "contraction, sudden" && (row["method"] ?? "").startsWith("Crane"),
  );
  test("a reducer loses what another program carries from TP-410 for a sudden contraction", () => {
    expect(rows).toHaveLength(6);
    for (const row of rows)
      expect(suddenContraction.code({ D: numberIn(row, "small_ID_mm"), Db: numberIn(row, "large_ID_mm") })).toBeCloseTo(
        numberIn(row, "K"),
        4,
      );
  });
});
