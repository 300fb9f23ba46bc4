/** What POOL.COOLINGTEST says of the sky over a night, and of a heater in place. */
import { describe, expect, test } from "vitest";
import { vapourPressureOfAir } from "../../core/air/moistAir";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import type { CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

const run = (id: string, ...raw: readonly unknown[]) => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`no ${id}`);
  return evaluate(compiled, raw, CATALOGUE);
};
const rowOf = (out: unknown, place: number): Readonly<Record<string, string | number>> => {
  if (isFault(out)) throw new Error(out.message);
  const matrix = out as CellMatrix;
  const names = (matrix[0] ?? []).map((head) => String(head).replace(/,? ?[([].*$/, ""));
  return Object.fromEntries((matrix[place] ?? []).map((value, i) => [names[i] ?? "", value as string | number]));
};

const ROWS = cellsIn("cooldown.csv");
const SKY = ROWS.filter((row) => row["kind"] === "sky");
const HEATER = ROWS.filter((row) => row["kind"] === "heat_in_situ");
const inputIn = (row: GoldenCells, name: string): number =>
  Number(new RegExp(`(?:^|; )${name}=([-\\d.]+)`).exec(wordIn(row, "inputs"))?.[1]);

const humidityOf = (air: number, dewPoint: number): number =>
  vapourPressureOfAir(dewPoint + 273.15, 1) / vapourPressureOfAir(air + 273.15, 1);

const skyInputs = (row: GoldenCells): CellMatrix => [
  ["humidity", humidityOf(inputIn(row, "air"), inputIn(row, "dew point"))],
  ["cloud", inputIn(row, "opaque cover")],
];

/** Two readings ten hours apart about a mean, as a coefficient of `U` W/(m²·K) makes them at 1.5 m. */
const nightOf = (water: number, air: number, U: number): CellMatrix => {
  const left = Math.exp((-U * 36_000) / (997 * 4180 * 1.5));
  const start = (2 * (water - air)) / (1 + left);
  return [
    [0, air + start, ""],
    [10, air + start * left, air],
  ];
};

describe("The sky of a cooling test", () => {
  test.each(SKY.map((row) => [`${wordIn(row, "id")} ${wordIn(row, "quantity")}`, row] as const))(
    "agrees with the evaluated %s",
    (_, row) => {
      const [air, water] = [inputIn(row, "air"), inputIn(row, "water")];
      const log = [
        [0, water + 0.05, ""],
        [10, water - 0.05, air],
      ];
      const found = rowOf(run("POOL.COOLINGTEST", log, 50, 1.5, 0.02, skyInputs(row), "SI"), 1);
      const temperature = wordIn(row, "quantity") === "T_sky";
      const got = Number(found[temperature ? "sky temperature" : "sky loss"]);
      // A hundredth of a degree of the sky makes 0.05 W/m².
      expect(Math.abs(got - numberIn(row, "value")), String(got)).toBeLessThan(temperature ? 0.01 : 0.05);
    },
  );

  test.each(
    SKY.filter((row) => wordIn(row, "quantity") === "radiation_loss").map((row) => [wordIn(row, "id"), row] as const),
  )("is that of POOL.LOSSES too: %s", (_, row) => {
    const block = [
      ["pool area", 50],
      ["pool temperature", inputIn(row, "water")],
      ["air temperature", inputIn(row, "air")],
      ["wind at water", 1],
      ...skyInputs(row),
    ];
    const table = run("POOL.LOSSES", block, "SI") as CellMatrix;
    const loss = Number(table.find(([name]) => name === "sky radiation")?.[1]);
    expect(Math.abs((1000 * loss) / 50 - numberIn(row, "value"))).toBeLessThan(0.05);
  });

  test("has every row of the table", () => expect([SKY.length, HEATER.length]).toEqual([5, 1]));

  test("leaves the film of wind and evaporation of a clear night", () => {
    const row = SKY.find((each) => wordIn(each, "quantity") === "radiation_loss");
    if (row === undefined) throw new Error("no such row");
    const U = 25 + numberIn(row, "value") / (26 - 15);
    const log = nightOf(26, 15, U);
    const found = rowOf(run("POOL.COOLINGTEST", log, 50, 1.5, 0.02, skyInputs(row), "SI"), 1);
    expect(Number(found["coefficient"])).toBeCloseTo(36.89, 1);
    expect(Math.abs(Number(found["without sky"]) - 25)).toBeLessThan(0.3);
  });

  test("is blank without humidity, and its radiation under a cover", () => {
    const log = [
      [0, 27, "", true],
      [10, 26.4, 15, true],
    ];
    expect(rowOf(run("POOL.COOLINGTEST", log, 50, 1.5, 0.1, null, "SI"), 2)["sky temperature"]).toBe("");
    const found = rowOf(run("POOL.COOLINGTEST", log, 50, 1.5, 0.1, [["humidity", 0.6]], "SI"), 2);
    expect(found["sky temperature"]).toBeTypeOf("number");
    expect(found["sky loss"]).toBe("");
  });
});

describe("A heater in place", () => {
  /** The noise-free log of 45 W/(m²·K). */
  const series = wordIn(ROWS.find((row) => row["id"] === "log-1") as GoldenCells, "series").split("|");
  const [air, water] = series.map((text) => (text.split(":")[1] ?? "").split(";").map(Number)) as [number[], number[]];
  const log = water.map((each, hour) => [hour, each, air[hour - 1] ?? ""]);
  const labels = (row: GoldenCells): CellMatrix => [
    ["heater rise", Number(/rise=([\d.]+)/.exec(wordIn(row, "inputs"))?.[1])],
    ["heater hours", Number(/K in ([\d.]+) h/.exec(wordIn(row, "inputs"))?.[1])],
    ["heater water", inputIn(row, "mean water")],
    ["heater air", inputIn(row, "air")],
  ];

  test.each(HEATER.map((row) => [wordIn(row, "id"), row] as const))("delivers the evaluated heat of %s", (_, row) => {
    const found = rowOf(run("POOL.COOLINGTEST", log, 50, 1.5, 0.1, labels(row), "SI"), 1);
    expect(Math.abs(Number(found["heater heat"]) / numberIn(row, "value") - 1)).toBeLessThan(1e-5);
    expect(Number(found["heater output"])).toBeCloseTo((50 * Number(found["heater heat"])) / 1000, 9);
    // Two readings of 0.1 K alone: 997 · 4180 · 1.5 / 28,800 · 0.1414.
    expect(Number(found["heater uncertainty"])).toBeGreaterThan(30.7);
  });

  test("is left out where its cells are blank and the host passes 0", () => {
    const zeros = ["rise", "hours", "water", "air"].map((label) => [`heater ${label}`, 0]);
    expect(rowOf(run("POOL.COOLINGTEST", log, 50, 1.5, 0.1, zeros, "SI"), 1)["heater heat"]).toBe("");
  });

  test("needs its four labels together", () => {
    const out = run("POOL.COOLINGTEST", log, 50, 1.5, 0.1, [["heater rise", 0.7]], "SI");
    expect(isFault(out) ? out.message : "").toMatch(/needed together/);
  });
});
