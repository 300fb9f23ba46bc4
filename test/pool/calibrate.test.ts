import { beforeAll, describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { rawOfExample } from "../../core/kernel/explain/describe";
import { explain } from "../../core/kernel/explain/explain";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellMatrix } from "../../core/kernel/values/cellInput";
import { boundedFit } from "../../core/numeric/boundedFit";
import { cellsIn, numberIn } from "../golden/rows";

const HEAD = ["air (°C)", "dew point (°C)", "wind at 10 m (m/s)", "sun (W/m²)", "cloud", "pressure (Pa)"];
const FIELDS = ["air_degC", "dewpoint_degC", "wind_m_s", "global_horizontal_W_m2", "cloud_tenths", "pressure_Pa"];
const hourly = (city: string): CellMatrix => [
  HEAD,
  ...cellsIn(`weather-${city}.csv`).map((row) => FIELDS.map((field) => numberIn(row, field))),
];

const run = (id: string, ...raw: readonly unknown[]) => evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
const call = (id: string, ...raw: readonly unknown[]): CellMatrix => {
  const out = run(id, ...raw);
  if (isFault(out)) throw new Error(out.message);
  return out as CellMatrix;
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));
const block = (more: Readonly<Record<string, string | number>> = {}): CellMatrix =>
  rawOfExample({ poolArea: 100, waterDepth: 1.5, setPoint: 27, latitude: 41.98, shelter: 0.3, ...more }) as CellMatrix;
const valueIn = (table: CellMatrix, row: string, column = 1): number | string =>
  table.find(([name]) => name === row)?.[column] as number | string;

const CHICAGO = hourly("chicago-il");
/** 1 July. */
const JULY = 24 * 181;

/** Hours of a pool of the year as a logger with steps of 0.1 K would have them, in the middle of the hour. */
const logOf = (table: CellMatrix, column: string, from: number, days: number): CellMatrix => {
  const at = (table[0] ?? []).findIndex((head) => String(head).startsWith(column));
  return Array.from({ length: 24 * days }, (_, place) => {
    const line = table[1 + from + place] ?? [];
    return [from + place + 0.5, Math.round(Number(line[at]) * 10) / 10, Number(line[1])];
  });
};

describe("POOL.CALIBRATE", () => {
  const TRUE = { shelter: 0.18, shading: 0.25 };
  const MACHINE = { ratedCooling: 26.4, ratedPower: 8.1, designLoad: 26, waterFlow: 12, balanceOutdoor: 16 };
  let log: CellMatrix = [];
  let warm: CellMatrix = [];
  beforeAll(() => {
    log = logOf(call("POOL.HOURS", block(TRUE), CHICAGO, 0, "SI"), "pool without", JULY, 21);
    const hours = call(
      "POOL.HOURS",
      block({ ...TRUE, ...MACHINE, exchangerUA: 1200, highLimit: 33 }),
      CHICAGO,
      0,
      "SI",
    );
    warm = logOf(hours, "pool with (", JULY, 21);
  });
  const fit = (labels: CellMatrix, ownLog = log, inputs = block(), climate: CellMatrix = CHICAGO) =>
    call("POOL.CALIBRATE", inputs, climate, ownLog, labels, "SI");

  test("finds wind share and shade of a pool from three weeks of readings to 0.1 K", () => {
    const found = fit([["shelter"], ["shading"]]);
    expect(Math.abs(Number(valueIn(found, "shelter")) - TRUE.shelter)).toBeLessThan(0.02);
    expect(Math.abs(Number(valueIn(found, "shading")) - TRUE.shading)).toBeLessThan(0.03);
    expect(valueIn(found, "root mean square error")).toBeLessThan(0.06);
    expect(valueIn(found, "shelter", 7)).toBe("found");
    expect(valueIn(found, "variation", 7)).toBe("within");
    expect(valueIn(found, "readings")).toBe(504);
  });

  test("finds the exchanger's UA of a pool on its machine", () => {
    const inputs = block({ ...TRUE, ...MACHINE, exchangerUA: 2400, highLimit: 33 });
    const found = fit([["exchanger UA"]], warm, inputs);
    expect(Math.abs(Number(valueIn(found, "exchanger UA")) / 1.2 / 1000 - 1)).toBeLessThan(0.35);
  });

  test("says which labels a short log can't tell apart", () => {
    const found = fit([["shelter"], ["activity"]], log.slice(0, 72));
    const said = [valueIn(found, "shelter", 7), valueIn(found, "activity", 7)].join("; ");
    expect(said).toMatch(/not told apart from|at its bound|says little/);
    const raised = explain(
      compile(lookUp(CATALOGUE, "POOL.CALIBRATE")!),
      [block(), CHICAGO, log.slice(0, 72), [["shelter"], ["activity"]], "SI"],
      CATALOGUE,
      { steps: false },
    ).cautions.map(({ code }) => code);
    expect(raised).toContain("POOL-CALIBRATE-WEAK");
  });

  test("keeps a value at the bound given, and says so", () => {
    const found = fit([["shelter", 0.25, 0.9], ["shading"]]);
    expect(valueIn(found, "shelter")).toBeCloseTo(0.25, 4);
    expect(valueIn(found, "shelter", 7)).toBe("at its bound");
  });

  test("takes the hours of the log alone as its climate", () => {
    const own = [HEAD, ...CHICAGO.slice(1 + JULY, 1 + JULY + 24 * 21)];
    const [part, whole] = [
      fit([["shelter"]], log, block({ shading: 0.25, mainsTemperature: 15 }), own),
      fit([["shelter"]], log, block({ shading: 0.25, mainsTemperature: 15 })),
    ];
    expect(Number(valueIn(part, "shelter")) / Number(valueIn(whole, "shelter"))).toBeCloseTo(1, 2);
  });

  test("reads dates of the sheet as the same hours", () => {
    // 45,292 is 1 January 2024 in the sheet's calendar; July of that year is a day later for the leap day.
    const dated = log.map(([time, ...rest]) => [45_292 + 1 + Number(time) / 24, ...rest]);
    expect(Number(valueIn(fit([["shelter"]], dated), "shelter"))).toBeCloseTo(
      Number(valueIn(fit([["shelter"]]), "shelter")),
      6,
    );
  });

  test("counts the heat of another heater", () => {
    const { shelter, shading } = TRUE;
    const heated = log.map(([time, water, air], place) => [
      time,
      Number(water) + 0.004 * place,
      air,
      0.004 * 1.5 * 100 * 1.163,
    ]);
    const found = fit([["shelter", 0.02, 1]], heated as CellMatrix, block({ shading }));
    expect(Number(valueIn(found, "shelter"))).toBeLessThan(shelter);
    const without = fit([["shelter", 0.02, 1]], heated.map((row) => row.slice(0, 3)) as CellMatrix, block({ shading }));
    expect(Number(valueIn(found, "shelter"))).toBeGreaterThan(Number(valueIn(without, "shelter")));
  });

  test("refuses a typical year: twelve rows, and hours whose air isn't the log's", () => {
    const months = Array.from({ length: 12 }, () => [20, 8, 0.7, 3, 5]);
    expect(refusal(run("POOL.CALIBRATE", block(), months, log, [["shelter"]], "SI"))).toContain(
      "#VALUE! climate: 12 rows",
    );
    const miami = run("POOL.CALIBRATE", block(), hourly("miami-fl"), log, [["shelter"]], "SI");
    expect(refusal(miami)).toMatch(/#VALUE! climate: its air is [\d.]+ K off that of the log/);
  });

  test.each([
    ["a label that isn't there", [["shelte"]], 'the nearest is "shelter"'],
    ["a label of words", [["cover"]], "isn't a number that can be fitted"],
    ["a label twice", [["shelter"], ["Shelter"]], "appears twice"],
    ["a label without effect", [["set point", 20, 30]], "doesn't change the water"],
    ["crossed bounds", [["shelter", 0.5, 0.2]], "the upper bound must be above"],
    ["bounds that the label doesn't take", [["shelter", -1, 0.2]], "must be at least 0"],
  ])("refuses %s", (_, labels, message) => {
    expect(refusal(run("POOL.CALIBRATE", block(), CHICAGO, log.slice(0, 48), labels, "SI"))).toContain(message);
  });
});

describe("least squares within bounds", () => {
  test("finds the minimum inside, and the corner outside", () => {
    const model = ([a = 0, b = 0]: readonly number[]) => [0, 1, 2, 3].map((x) => 4 * a * Math.exp(-2 * b * x));
    const target = [0, 1, 2, 3].map((x) => 4 * 0.6 * Math.exp(-2 * 0.3 * x));
    const { parameters } = boundedFit(model, target, [0.2, 0.8]);
    expect(parameters[0]).toBeCloseTo(0.6, 5);
    expect(parameters[1]).toBeCloseTo(0.3, 5);
    const outside = boundedFit(([a = 0]) => [a, 2 * a], [3, 6], [0.5]);
    expect(outside.parameters[0]).toBe(1);
  });
});
