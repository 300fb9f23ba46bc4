import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn } from "../golden/rows";

const definition = lookUp(CATALOGUE, "PIPE.SPEEDS");
if (!definition) throw new Error("no PIPE.SPEEDS");
const compiled = compile(definition);

function table(args: readonly unknown[]): readonly (readonly (string | number)[])[] {
  const out = evaluate(compiled, args, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return (out as readonly (readonly (string | number)[])[]).slice(1);
}
const rows = cellsIn("pump-speeds.csv");
const curve = (H0: number, c: number) => [[null, null, H0, 0, c]];
const system = (Hs: number, loss: number, at: number) => [
  ["loss", "known flow", "static head"],
  [loss, at, Hs],
];

describe("a pump at several speeds, as solved in closed form", () => {
  // Printed to 7 digits; density of water differs by 3e-6.
  test.each(rows.map((row, i) => [i + 1, row] as const))("row %d agrees in flow, head and shaft power", (_, row) => {
    const [speed, flow] = [numberIn(row, "speed"), numberIn(row, "flow_m3_h")];
    const efficiency = Math.max(numberIn(row, "eta_pump"), 1e-3);
    const [line] = table([
      curve(numberIn(row, "pump_H0_m"), numberIn(row, "pump_c_m_per_m3h2")),
      system(numberIn(row, "static_head_m"), numberIn(row, "known_loss_m"), numberIn(row, "known_flow_m3_h")),
      [[speed, 10]],
      flow > 0 ? efficiency : null,
      null,
      null,
      "SI",
    ]);
    expect(Math.abs(Number(line?.[1]) - flow)).toBeLessThan(2e-6 * Math.max(flow, 1));
    expect(Number(line?.[2])).toBeCloseTo(numberIn(row, "head_m"), 4);
    if (flow > 0) {
      const watts = numberIn(row, "shaft_W_speed_corrected");
      expect(Math.abs(Number(line?.[3]) * 1000 - watts)).toBeLessThan(2e-5 * watts);
      expect(Number(line?.[5])).toBeCloseTo(watts / 100, 3);
    }
  });
});

describe("PIPE.SPEEDS", () => {
  const run = (speed: number, Hs: number) =>
    Number(table([curve(20, 0.0306), system(Hs, 8, 14), [[speed, 1]], null, null, null, "SI"])[0]?.[1]);

  test("follows the affinity laws without static head, and less than them with it", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 1, noNaN: true }), (speed) => {
        expect(run(speed, 0)).toBeCloseTo(speed * run(1, 0), 7);
        expect(run(speed, 1)).toBeLessThanOrEqual(speed * run(1, 1) + 1e-9);
      }),
    );
  });

  test("finds the least speed that gives the least flow", () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 15, noNaN: true }), (flow) => {
        const [line] = table([curve(20, 0.0306), system(1, 8, 14), [[1, 1, null, flow]], null, null, null, "SI"]);
        expect(run(Number(line?.[8]), 1)).toBeCloseTo(flow, 7);
      }),
      { numRuns: 25 },
    );
  });

  test("runs on the rows of a network, and asks for its one pump", () => {
    const net = [
      ["pool", "s", "suction", "2 in", null, 40, "5.5"],
      ["s", "d", "pool pump"],
      ["d", "pool", "return", "2 in", null, 60, "9"],
    ];
    const lines = table([
      curve(66, 0.0052),
      net,
      [
        [1, 8],
        [0.5, 4],
      ],
      0.5,
      0.2,
      20000,
      "US",
    ]);
    const [full, half, total] = lines;
    expect(Number(full?.[1])).toBeGreaterThan(2 * Number(half?.[1]) * 0.95);
    expect(Number(total?.[6])).toBeCloseTo(0.2 * (Number(full?.[5]) + Number(half?.[5])), 9);
    expect(Number(full?.[7]) * Number(full?.[1]) * 60).toBeCloseTo(20000, 4);
    const out = evaluate(compiled, [curve(66, 0.0052), net.filter((_, i) => i !== 1), [[1, 8]]], CATALOGUE);
    expect(isFault(out) && out.message).toMatch(/needs one row with "pump" in its element, got 0/);
  });
});
