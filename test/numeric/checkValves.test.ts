/** Check valves and pumps that close and open again. Heads in m, flows in m³/s. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solveGrid } from "../../core/numeric/gradientNetwork";
import { grid, pipe, type Pipe } from "./pipes";

describe("check valves", () => {
  const straight = (from: number, to: number, r: number, rest: Partial<Pipe> = {}) =>
    pipe(from, to, r, { power: 1, ...rest });

  test("a valve that closed opens again when what pushed against it closes too", () => {
    // Straight losses, r q. Open, node 1 has (12 / 5 + 7 / 10 + 2 / 10) / 0.4 = 8.25 m, against both valves. With both shut it
    // has 2 m: the valve from 7 m opens, and the node has (7 + 2) / 2 = 4.5 m.
    const plain = [straight(1, 0, 5), straight(2, 1, 10), straight(1, 3, 10)];
    expect(solveGrid(grid(plain, [12, undefined, 7, 2]))?.head[1]).toBeCloseTo(8.25, 9);
    const links = plain.map((each, i) => ({ ...each, oneWay: i < 2 }));
    const found = solveGrid(grid(links, [12, undefined, 7, 2]));
    expect(found?.held).toEqual([true, false, false]);
    expect(found?.head[1]).toBeCloseTo(4.5, 9);
    expect(found?.flow[1]).toBeCloseTo(0.25, 9);
  });

  test("a pump that was held shut starts again by its own lift", () => {
    // As above, with 1 m and a lift of 4 m in place of 7 m: 3 m drive 10 q + 10 q.
    const links = [
      straight(1, 0, 5, { oneWay: true }),
      straight(2, 1, 10, { oneWay: true, lift: 4 }),
      straight(1, 3, 10),
    ];
    const found = solveGrid(grid(links, [12, undefined, 1, 2]));
    expect(found?.held).toEqual([true, false, false]);
    expect(found?.flow[1]).toBeCloseTo(0.15, 9);
    expect(found?.head[1]).toBeCloseTo(3.5, 9);
  });

  test("a valve that closed opens again in a pipe whose loss grows by the square", () => {
    // 7 m to 2 m through two pipes of 100 q²: q = sqrt(5 / 200).
    const links = [pipe(1, 0, 5, { oneWay: true }), pipe(2, 1, 100, { oneWay: true }), pipe(1, 3, 100)];
    const found = solveGrid(grid(links, [12, undefined, 7, 2]));
    expect(found?.held).toEqual([true, false, false]);
    expect(found?.flow[1]).toBeCloseTo(Math.sqrt(5 / 200), 10);
    expect(found?.passes).toBeLessThan(40);
  });

  test("a valve between equal heads isn't held, and plain pipes may flow back", () => {
    expect(solveGrid(grid([straight(0, 1, 10, { oneWay: true })], [5, 5]))?.held).toEqual([false]);
    const back = solveGrid(grid([straight(1, 0, 10)], [5, 3]));
    expect(back?.flow[0]).toBeCloseTo(-0.2, 12);
    expect(back?.held).toEqual([false]);
  });

  test("in any network of straight losses each valve flows forwards or holds against a higher head", () => {
    const NODES = 7;
    const linkOf = fc.record({
      from: fc.nat(NODES - 1),
      to: fc.nat(NODES - 1),
      r: fc.integer({ min: 1, max: 20 }),
      oneWay: fc.boolean(),
    });
    const heads = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 3, maxLength: 3 });
    const demands = fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 4, maxLength: 4 });
    const property = fc.property(
      fc.array(linkOf, { minLength: 6, maxLength: 12 }),
      heads,
      demands,
      (made, fixed, free) => {
        // A plain pipe from each free node to a fixed head keeps every node in the network.
        const tied = [3, 4, 5, 6].map((node) => straight(node, node % 3, 50));
        const links = [
          ...made.filter(({ from, to }) => from !== to).map((each) => straight(each.from, each.to, each.r, each)),
          ...tied,
        ];
        const demand = [0, 0, 0, ...free.map((each) => each / 10)];
        const found = solveGrid(grid(links, [...fixed, ...free.map(() => undefined)], demand));
        if (!found) throw new Error("no state found");
        const balance = demand.map((each) => -each);
        links.forEach(({ from, to, r, oneWay }, i) => {
          const q = found.flow[i] ?? NaN;
          const drop = (found.head[from] ?? NaN) - (found.head[to] ?? NaN);
          balance[from]! -= q;
          balance[to]! += q;
          if (found.held[i]) expect([q, drop < 1e-8]).toEqual([0, true]);
          else expect(Math.abs(drop - r * q)).toBeLessThan(1e-8);
          if (oneWay) expect(q).toBeGreaterThanOrEqual(0);
          else expect(found.held[i]).toBe(false);
        });
        for (const each of balance.slice(3)) expect(Math.abs(each)).toBeLessThan(1e-8);
      },
    );
    fc.assert(property, { seed: 7, numRuns: 300 });
  });
});
