import { assert, double, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellInput, CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

const definition = compile(lookUp(CATALOGUE, "POOL.COOLINGTEST")!);
const run = (...raw: readonly CellInput[]) => evaluate(definition, raw, CATALOGUE);
type Line = Readonly<Record<string, string | number>>;
const tableOf = (out: unknown): { readonly open: Line; readonly covered: Line } => {
  if (isFault(out)) throw new Error(out.message);
  const [header = [], ...lines] = out as CellMatrix;
  const names = header.map((head) => String(head).replace(/,? ?[([].*$/, ""));
  const [open, covered] = lines.map((line) => Object.fromEntries(line.map((value, i) => [names[i], value])));
  return { open: open as Line, covered: covered as Line };
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

const ROWS = cellsIn("cooldown.csv");
const of = (kind: string): readonly GoldenCells[] => ROWS.filter((row) => row["kind"] === kind);
const inputIn = (row: GoldenCells, name: string): number =>
  Number(new RegExp(`${name}=([-\\d.]+)`).exec(wordIn(row, "inputs"))?.[1]);

const twoPoint = (row: GoldenCells): CellMatrix => [
  [0, inputIn(row, "start"), ""],
  [inputIn(row, "hours"), inputIn(row, "end"), inputIn(row, "air \\(mean, constant\\)")],
];
const series = (text: string): readonly number[] => (text.split(":")[1] ?? "").split(";").map(Number);
const logOf = (row: GoldenCells): CellMatrix => {
  const [air = "", water = ""] = wordIn(row, "series").split("|");
  const airs = series(air);
  return series(water).map((each, hour) => [hour, each, airs[hour - 1] ?? ""]);
};

const COLUMNS: Readonly<Record<string, string>> = {
  U: "coefficient",
  U_US: "coefficient",
  time_constant: "time constant",
  loss_mean: "mean loss",
  T_start: "start",
  RMSE: "scatter",
};
const PER_US = 5.678263;

function compare(row: GoldenCells, log: CellMatrix, fitted: boolean): void {
  const column = COLUMNS[wordIn(row, "quantity")];
  if (column === undefined) return;
  const heat = inputIn(row, "known heat input");
  const rows = Number.isFinite(heat) ? log.map((line) => [...line, false, 0, heat / 1000]) : log;
  const { open } = tableOf(run(rows, 1, inputIn(row, "mean depth"), 0.1, null, "SI"));
  const scale = row["quantity"] === "U_US" ? PER_US : 1;
  const value = numberIn(row, "value") * scale;
  const tolerance = row["quantity"] === "T_start" ? 0.01 : (fitted ? 1e-4 : 1e-5) * value;
  expect(Math.abs(Number(open[column]) - value), `${open[column]} ${value}`).toBeLessThan(tolerance);
  const error = Number(row["standard_uncertainty"]);
  if (!(error > 0)) return;
  const found = Number(open[fitted ? "fit error" : "uncertainty"]);
  expect(Math.abs(found / (error * scale) - 1), `${found} ${error * scale}`).toBeLessThan(0.004);
}

describe("POOL.COOLINGTEST", () => {
  const title = (row: GoldenCells) => [`${wordIn(row, "id")} ${wordIn(row, "quantity")}`, row] as const;

  test.each(of("two_point").map(title))("agrees with the evaluated night %s", (_, row) =>
    compare(row, twoPoint(row), false),
  );

  test.each(of("log_fit").map(title))("agrees with the evaluated log %s", (_, row) => compare(row, logOf(row), true));

  test("has every night and log of the table", () =>
    expect([of("two_point").length, of("log_fit").length]).toEqual([32, 17]));

  const open = [
    [0, 27, "", false],
    [10, 25.6, 15, false],
  ];
  const covered = [
    [20, 26.9, "", true],
    [30, 26.4, 15.2, true],
  ];
  test("sets the covered night beside the open one", () => {
    const found = tableOf(run([...open, ...covered], 50, 1.5, 0.1, null, "SI"));
    expect(Number(found.covered["share of open"])).toBeCloseTo(0.3520688, 5);
    expect(Number(found.covered["share uncertainty"])).toBeCloseTo(0.109, 3);
  });

  test("gives back the coefficient that a log was made with, whatever the cover, sun and gaps", () =>
    assert(
      property(
        double({ min: 2, max: 80, noNaN: true }),
        double({ min: 0.8, max: 3, noNaN: true }),
        double({ min: 5, max: 20, noNaN: true }),
        (U, depth, air) => {
          const log: CellMatrix = [0, 1].flatMap((night) => {
            let water = 28 - night;
            return Array.from({ length: 9 }, (_, hour) => {
              const heat = 300 * 0.8 + 100;
              const ends = air + heat / U;
              if (hour > 0) water = ends + (water - ends) * Math.exp((-U * 3600) / (997 * 4180 * depth));
              return [46_000 + night + hour / 24, water, air, false, 300, 100 * 0.05];
            });
          });
          const found = tableOf(run(log, 50, depth, 0.1, null, "SI"));
          expect(Number(found.open["coefficient"]) / U).toBeCloseTo(1, 4);
          expect(found.covered["finding"]).toBe("not tested");
        },
      ),
      { numRuns: 40 },
    ));

  const weather = [
    ["humidity", 0.6],
    ["wind at water", 1.5],
    ["cover", "foam"],
  ];
  test("shows the coefficient of POOL.LOSSES at the means of the hours", () => {
    const found = tableOf(run([...open, ...covered], 50, 1.5, 0.1, weather, "SI"));
    const losses = evaluate(
      compile(lookUp(CATALOGUE, "POOL.LOSSES")!),
      [
        [
          ["pool area", 50],
          ["pool temperature", 26.3],
          ["air temperature", 15],
          ["humidity", 0.6],
          ["wind at water", 1.5],
          ["water depth", 1.5],
        ],
        "SI",
      ],
      CATALOGUE,
    ) as CellMatrix;
    const net = Number(losses.find(([name]) => name === "net")?.[1]);
    expect(Number(found.open["by relations"])).toBeCloseTo((net * 1000) / (50 * 11.3), 6);
    expect(Number(found.covered["by relations"])).toBeLessThan(Number(found.open["by relations"]));
  });

  test("says that a fall below four sensor errors finds nothing", () => {
    const log = [
      [0, 26, ""],
      [8, 25.9, 20],
    ];
    expect(tableOf(run(log, 50, 1, 0.1, null, "SI")).open["finding"]).toBe("no finding");
    expect(tableOf(run(log, 50, 1, 0.02, null, "SI")).open["finding"]).toBe("found");
    const cautions = explain(definition, [log, 50, 1, 0.1, null, "SI"], CATALOGUE, { steps: false }).cautions;
    expect(cautions.map(({ code }) => code)).toContain("POOL-COOLING-NO-FINDING");
  });

  test("finds nothing where the water warms above the air without heat", () => {
    const log = [
      [0, 26, ""],
      [8, 27, 15],
    ];
    expect(tableOf(run(log, 50, 1, 0.1, null, "SI")).open["finding"]).toBe("no finding");
  });

  test.each([
    ["a time that runs back", [[5, 27], [4, 26, 15]], "row 2, time: must be later"], // prettier-ignore
    ["a row without air", [[0, 27], [4, 26]], "row 2, air: is blank"], // prettier-ignore
    ["air as warm as the water", [[0, 27], [4, 26.9, 27]], "nothing to find a loss by"], // prettier-ignore
    ["single rows", [[0, 27, "", false], [4, 26, 15, true]], "no two rows in a row"], // prettier-ignore
  ] as const)("refuses %s", (_, log, message) =>
    expect(refusal(run(log, 50, 1.5, 0.1, null, "SI"))).toContain(message),
  );
});
