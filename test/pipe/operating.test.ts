import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { cubicAt, monotoneCubic } from "../../core/numeric/monotoneCubic";
import { boreOf } from "../../core/pipe/straight/bore";
import { PVC_ROUGHNESS, frictionFactor } from "../../core/pipe/straight/friction";
import { operatingPoint, type PumpAndSystem } from "../../core/pipe/network/operating";
import { densityOfWater, viscosityOfWater } from "../../core/water/equations";
import { cellsIn, numberIn, type GoldenCells } from "../golden/rows";

const HOUR = 3600;
const POINTS = 10;
const rows = cellsIn("pumps.csv");

/** Ten points of the row's curve, to where its head ends or to 45 m³/h. */
const curveOf = (row: GoldenCells): PumpAndSystem["pumpCurve"] => {
  const [h, b, c] = ["pump_H0_m", "pump_b_m_per_m3h", "pump_c_m_per_m3h2"].map((each) => numberIn(row, each));
  const end = ((b ?? 0) + Math.sqrt((b ?? 0) ** 2 + 4 * (c ?? 0) * (h ?? 0))) / (2 * (c ?? 1));
  return Array.from({ length: POINTS }, (_, i) => {
    const q = (end * i) / (POINTS - 1);
    return { flow: q / HOUR, head: Math.max(0, (h ?? 0) + (b ?? 0) * q - (c ?? 0) * q * q) };
  });
};

/** Head of the row's system at a flow in m³/h. */
const systemOf = (row: GoldenCells, q: number): number => {
  const fixed = numberIn(row, "static_head_m");
  if (row["kind"] === "quadratic system") return fixed + numberIn(row, "system_k_m_per_m3h2") * q * q;
  const D = boreOf(`${row["pipe_nominal_in"]} in`, "40", "minimum wall");
  const v = q / HOUR / ((Math.PI / 4) * D ** 2);
  const T = numberIn(row, "water_degC") + 273.15;
  const f = frictionFactor((densityOfWater.code({ T }) * v * D) / viscosityOfWater.code({ T }), PVC_ROUGHNESS, D);
  return fixed + (((f * numberIn(row, "pipe_L_m")) / D + numberIn(row, "sum_K")) * v ** 2) / (2 * 9.80665);
};

const VARIANTS = [
  ["one pump", "Q_m3_h", "H_m", 1, "one", 14],
  ["80 % speed", "Q_80pct_speed_m3_h", "H_80pct_speed_m", 0.8, "one", 14],
  ["two in series", "Q_two_series_m3_h", "H_two_series_m", 1, "two in series", 15],
  ["two in parallel", "Q_two_parallel_m3_h", "H_two_parallel_m", 1, "two in parallel", 14],
] as const;

describe("pump and system of another program", () => {
  test.each(VARIANTS)(
    "%s meets its system within 0.5 %% of another program",
    (_, flowColumn, headColumn, speed, pumps, count) => {
      let compared = 0;
      for (const row of rows) {
        if (row[flowColumn] === "") continue;
        const [q, h] = [numberIn(row, flowColumn), numberIn(row, headColumn)];
        // The system is known a little off the answer, so that its curve is tried too.
        const known = 1.05 * q;
        const found = operatingPoint({
          pumpCurve: curveOf(row),
          staticHead: numberIn(row, "static_head_m"),
          knownFlow: known / HOUR,
          knownHead: systemOf(row, known),
          speed,
          pumps,
        });
        expect(Math.abs((found.flow * HOUR) / q - 1), `case ${row["case"]}: flow`).toBeLessThan(0.005);
        expect(Math.abs(found.head / h - 1), `case ${row["case"]}: head`).toBeLessThan(0.005);
        compared++;
      }
      expect(compared).toBe(count);
    },
  );

  test("pump and system never meet where the static head exceeds the pump's head at no flow", () => {
    const none = rows.filter((row) => (row["status"] ?? "").startsWith("none"));
    expect(none).toHaveLength(1);
    for (const row of none)
      expect(() =>
        operatingPoint({
          pumpCurve: curveOf(row),
          staticHead: numberIn(row, "static_head_m"),
          knownFlow: 10 / HOUR,
          knownHead: systemOf(row, 10),
          speed: 1,
          pumps: "one",
        }),
      ).toThrow(/never meet, no water moves/);
  });
});

const definition = lookUp(CATALOGUE, "PIPE.OPERATING");
if (!definition) throw new Error("PIPE.OPERATING is not listed");
const compiled = compile(definition);
const refusal = (...raw: readonly unknown[]): string => {
  const out = evaluate(compiled, raw, CATALOGUE);
  return isFault(out) ? `${out.code} ${out.message}` : "no refusal";
};

describe("refusals", () => {
  const curve = [
    [10, 50],
    [40, 40],
    [60, 20],
  ];
  test("a refusal says on which side the curve ends too early", () => {
    expect(refusal(curve, 0, 50, 5)).toMatch(/#N\/A pumpCurve: ends at 60 gpm.*give points at more flow/);
    expect(refusal(curve, 0, 10, 60)).toMatch(/#N\/A pumpCurve: begins at 10 gpm.*give points at less flow/);
  });
  test("a refusal names a curve out of order, and a known head below the static one", () => {
    expect(refusal([...curve, [55, 10]], 0, 50, 5)).toMatch(/#VALUE! pumpCurve: flows must rise.*55 gpm after 60 gpm/);
    expect(refusal(curve, 12, 50, 10)).toMatch(/#VALUE! knownHead: must be above the static head of 12 ft, got 10 ft/);
  });
});

describe("what holds for every pump", () => {
  const cases = fc.record({
    shutOff: fc.double({ min: 8, max: 30, noNaN: true }),
    steep: fc.double({ min: 0.5, max: 4, noNaN: true }),
    system: fc.double({ min: 0.05, max: 4, noNaN: true }),
    speed: fc.double({ min: 0.4, max: 1.3, noNaN: true }),
  });
  const at = (shutOff: number, steep: number, system: number): PumpAndSystem => ({
    pumpCurve: Array.from({ length: 12 }, (_, i) => {
      const q = (Math.sqrt(shutOff / steep) * i) / 11;
      return { flow: q / 1000, head: Math.max(0, shutOff - steep * q * q) };
    }),
    staticHead: 0,
    knownFlow: 0.002,
    knownHead: system * 4,
    speed: 1,
    pumps: "one",
  });

  test("flow goes with speed and head with its square where there is no static head", () => {
    fc.assert(
      fc.property(cases, ({ shutOff, steep, system, speed }) => {
        const x = at(shutOff, steep, system);
        const [full, slow] = [operatingPoint(x), operatingPoint({ ...x, speed })];
        expect(slow.flow / full.flow).toBeCloseTo(speed, 7);
        expect(slow.head / full.head).toBeCloseTo(speed ** 2, 7);
      }),
    );
  });

  test("two pumps in series halve the head of each, two in parallel the flow of each, and both move more water", () => {
    fc.assert(
      fc.property(cases, ({ shutOff, steep, system }) => {
        const x = at(shutOff, steep, system);
        const [one, series, parallel] = (["one", "two in series", "two in parallel"] as const).map((pumps) =>
          operatingPoint({ ...x, pumps }),
        );
        if (!one || !series || !parallel) throw new Error("no answer");
        expect(series.headOfEachPump * 2).toBeCloseTo(series.head, 9);
        expect(parallel.flowOfEachPump * 2).toBeCloseTo(parallel.flow, 12);
        expect(series.flow).toBeGreaterThan(one.flow * (1 - 1e-9));
        expect(parallel.flow).toBeGreaterThan(one.flow * (1 - 1e-9));
      }),
    );
  });

  test("more resistance means less flow", () => {
    fc.assert(
      fc.property(cases, ({ shutOff, steep, system }) => {
        const [tight, wide] = [1.2, 1].map((more) => operatingPoint(at(shutOff, steep, system * more)).flow);
        expect(tight).toBeLessThan(wide ?? 0);
      }),
    );
  });
});

describe("the curve through points", () => {
  const values = fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 2, maxLength: 12 });
  const gaps = fc.array(fc.double({ min: 0.01, max: 5, noNaN: true }), { minLength: 12, maxLength: 12 });

  test("goes through its points and never leaves the range of a span's ends", () => {
    fc.assert(
      fc.property(values, gaps, (ys, widths) => {
        let x = 0;
        const xs = ys.map((_, i) => (x += widths[i] ?? 1));
        const curve = monotoneCubic(xs, ys);
        ys.forEach((y, i) => expect(cubicAt(curve, xs[i] ?? 0)).toBeCloseTo(y, 9));
        for (let i = 1; i < xs.length; i++) {
          const [from, to, low, high] = [xs[i - 1] ?? 0, xs[i] ?? 0, ys[i - 1] ?? 0, ys[i] ?? 0];
          for (const part of [0.1, 0.3, 0.5, 0.7, 0.9]) {
            const y = cubicAt(curve, from + part * (to - from));
            expect(y).toBeGreaterThanOrEqual(Math.min(low, high) - 1e-9);
            expect(y).toBeLessThanOrEqual(Math.max(low, high) + 1e-9);
          }
        }
      }),
    );
  });
});
