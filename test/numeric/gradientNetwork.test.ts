/** Networks whose flows are found by hand: losses of r q² or r q. Heads in m, flows in m³/s. */
import { describe, expect, test } from "vitest";
import { type Grid, solveGrid } from "../../core/numeric/gradientNetwork";
import { grid, pipe, type Pipe } from "./pipes";

describe("the network's flows", () => {
  test("two pipes between the same nodes share the flow by the roots of their losses", () => {
    // 9 m between the ends: sqrt(9 / 100) and sqrt(9 / 400).
    const found = solveGrid(grid([pipe(0, 1, 100), pipe(0, 1, 400)], [19, 10]));
    expect(found?.flow[0]).toBeCloseTo(0.3, 12);
    expect(found?.flow[1]).toBeCloseTo(0.15, 12);
  });

  test("pipes in a row have one flow, and the head between them splits by their losses", () => {
    // r = 100 + 300 over 16 m: q = 0.2; the first takes 4 m.
    const found = solveGrid(grid([pipe(0, 1, 100), pipe(1, 2, 300)], [16, undefined, 0]));
    expect(found?.flow[0]).toBeCloseTo(0.2, 12);
    expect(found?.flow[1]).toBeCloseTo(0.2, 12);
    expect(found?.head[1]).toBeCloseTo(12, 9);
    expect(found?.head[0]).toBe(16);
  });

  test("a node's demand leaves there, and every node stays in balance", () => {
    // Straight losses: 10 q1 = 20 - h, 10 q2 = h, q1 - q2 = 0.4 gives h = 8.
    const links = [pipe(0, 1, 10, { power: 1 }), pipe(1, 2, 10, { power: 1 })];
    const found = solveGrid(grid(links, [20, undefined, 0], [0, 0.4, 0]));
    expect(found?.head[1]).toBeCloseTo(8, 9);
    expect(found?.flow[0]).toBeCloseTo(1.2, 9);
    expect(found?.flow[1]).toBeCloseTo(0.8, 9);
  });

  test("a bridge between equal branches carries nothing, between unequal ones what the heads drive", () => {
    const branch = (r: number) => [pipe(0, 1, 1), pipe(1, 3, r), pipe(0, 2, r), pipe(2, 3, 1), pipe(1, 2, 5)];
    const level = solveGrid(grid(branch(1), [8, undefined, undefined, 0]));
    expect(level?.flow[4]).toBeCloseTo(0, 6);
    expect(level?.flow[0]).toBeCloseTo(2, 7);
    const found = solveGrid(grid(branch(4), [8, undefined, undefined, 0]));
    const [a = 0, b = 0, c = 0, d = 0, e = 0] = found?.flow ?? [];
    expect(a).toBeCloseTo(b + e, 10);
    expect(d).toBeCloseTo(c + e, 10);
    expect((found?.head[1] ?? 0) - (found?.head[2] ?? 0)).toBeCloseTo(5 * e * e, 9);
    expect(e).toBeGreaterThan(0);
  });

  test("a pump lifts, and one with too little head is held shut", () => {
    // 5 m of lift over 3 m of rise leaves 2 m: q = sqrt(2 / 50).
    const pump = (lift: number) => pipe(0, 1, 50, { oneWay: true, lift });
    const found = solveGrid(grid([pump(5)], [0, 3]));
    expect(found?.flow[0]).toBeCloseTo(0.2, 12);
    expect(found?.held).toEqual([false]);
    const weak = solveGrid(grid([pump(2)], [0, 3]));
    expect([...(weak?.flow ?? [])]).toEqual([0]);
    expect(weak?.held).toEqual([true]);
  });

  test("a check valve lets nothing back, and opens again where the heads turn", () => {
    const links = [pipe(0, 1, 100), pipe(1, 2, 100, { oneWay: true }), pipe(1, 3, 100)];
    const back = solveGrid(grid(links, [10, undefined, 12, 0]));
    expect(back?.held).toEqual([false, true, false]);
    expect(back?.flow[1]).toBe(0);
    expect(back?.flow[0]).toBeCloseTo(Math.sqrt(10 / 200), 10);
    const forth = solveGrid(grid(links, [10, undefined, 1, 0]));
    expect(forth?.held).toEqual([false, false, false]);
    expect(forth?.flow[1]).toBeGreaterThan(0);
  });

  test("a node has a head however far from a fixed one, and in whichever order its pipes are listed", () => {
    // 0.1 m³/s through 10 q each: 1 m a pipe.
    const links = [pipe(2, 3, 10, { power: 1 }), pipe(1, 2, 10, { power: 1 }), pipe(0, 1, 10, { power: 1 })];
    const found = solveGrid(grid(links, [10, undefined, undefined, undefined], [0, 0, 0, 0.1]));
    [10, 9, 8, 7].forEach((head, node) => expect(found?.head[node]).toBeCloseTo(head, 9));
  });

  test("what a shut valve cuts off has no head and no flow", () => {
    const found = solveGrid(
      grid([pipe(0, 1, 100), pipe(1, 2, 100, { shut: true }), pipe(2, 3, 100)], [9, 5, undefined, undefined]),
    );
    expect(found?.flow[0]).toBeCloseTo(0.2, 12);
    expect([...(found?.flow ?? [])].slice(1)).toEqual([0, 0]);
    expect([...(found?.head ?? [])].slice(2)).toEqual([Number.NaN, Number.NaN]);
  });

  test("starts from a like network's flows, and takes no more passes for it", () => {
    const links = [pipe(0, 1, 100), pipe(1, 2, 300), pipe(0, 2, 700)];
    const cold = solveGrid(grid(links, [16, undefined, 0]));
    const warm = solveGrid(grid(links, [16, undefined, 0]), cold?.flow);
    cold?.flow.forEach((q, i) => expect(warm?.flow[i]).toBeCloseTo(q, 12));
    expect(warm?.passes).toBeLessThan(cold?.passes ?? 0);
  });

  test("answers undefined where losses have no root", () => {
    const none: Grid<Pipe> = {
      ...grid([pipe(0, 1, 1), pipe(1, 2, 1)], [1, undefined, 0]),
      loss: (_, __, into) => void (into.h = into.g = NaN),
    };
    expect(solveGrid(none)).toBeUndefined();
  });
});
