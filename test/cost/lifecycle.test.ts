import { array, assert, double, integer, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellInput, CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

const run = (id: string, ...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

const ROWS = cellsIn("lifecycle.csv");
const input = (row: GoldenCells, name: string): number =>
  Number(new RegExp(`(?:^|; )${name}=(-?[\\d.]+)`).exec(wordIn(row, "inputs"))?.[1]);

describe("COST.FACTOR", () => {
  const KINDS: Readonly<Record<string, string>> = {
    SPV: "SPV",
    UPV: "UPV",
    "UPV*": "UPV*",
    UPV_mid: "UPV mid-year",
    capital_recovery: "capital recovery",
  };
  const rows = ROWS.filter((row) => row["kind"] === "factor" && wordIn(row, "quantity") in KINDS);

  test("agrees with every factor of the evaluated table to seven digits", () => {
    expect(rows.length).toBe(60);
    for (const row of rows) {
      const e = input(row, "e");
      const kind = KINDS[wordIn(row, "quantity")] ?? "";
      const got = run("COST.FACTOR", kind, input(row, "n"), input(row, "d"), Number.isNaN(e) ? 0 : e);
      expect(Math.abs(Number(got) / numberIn(row, "value") - 1), wordIn(row, "id")).toBeLessThan(1e-7);
    }
  });

  test("refuses the recovery of no years and an unknown kind", () => {
    expect(refusal(run("COST.FACTOR", "capital recovery", 0, 0.03))).toContain("#N/A years");
    expect(refusal(run("COST.FACTOR", "XPV", 5, 0.03))).toContain("#VALUE! kind");
  });

  test("is the sum of the single payments", () =>
    assert(
      property(
        integer({ min: 1, max: 60 }),
        double({ min: -0.1, max: 0.4, noNaN: true }),
        double({ min: -0.1, max: 0.2, noNaN: true }),
        (years, discount, rise) => {
          let sum = 0;
          for (let year = 1; year <= years; year++) sum += Number(run("COST.FACTOR", "SPV", year, discount, rise));
          expect(Number(run("COST.FACTOR", "UPV", years, discount, rise)) / sum).toBeCloseTo(1, 8);
        },
      ),
    ));
});

const lifecycle = (inputs: CellMatrix, rows: CellMatrix) => {
  const out = run("COST.LIFECYCLE", inputs, rows);
  if (isFault(out)) throw new Error(out.message);
  const [heads = [], ...lines] = out as CellMatrix;
  const plain = heads.map((head) => String(head).replace(/ \(.*/, ""));
  return Object.fromEntries(
    lines.map((line) => [String(line[0]), Object.fromEntries(plain.map((head, i) => [head, line[i]]))]),
  );
};

const flowsOf = (row: GoldenCells): readonly number[] =>
  (/cash=\[([^\]]*)\]/.exec(wordIn(row, "inputs"))?.[1] ?? "").split(";").map(Number);

/** An alternative to doing nothing whose flows are those given. */
const ofFlows = (flows: readonly number[], discount: number) =>
  lifecycle(
    [
      ["years", flows.length - 1],
      ["discount", discount],
    ],
    [
      ["nothing", "first cost", 0, ""],
      ...flows.map((flow, year) => ["thing", year === 0 ? "first cost" : "once", -flow, year === 0 ? "" : year]),
    ],
  )["thing"] ?? {};

describe("COST.LIFECYCLE", () => {
  const COLUMNS: Readonly<Record<string, string>> = {
    NPV: "net savings",
    IRR_all_real_roots: "internal rate",
    MIRR: "modified rate",
    simple_payback_years: "simple payback",
    discounted_payback_years: "discounted payback",
    year_from_which_cumulative_stays_positive: "positive from",
    annual_value: "annual value",
  };
  const flows = ROWS.filter((row) => row["kind"] === "cash_flow");

  test.each(flows.map((row) => [wordIn(row, "id"), row] as const))("agrees with the evaluated %s", (_, row) => {
    const found = ofFlows(flowsOf(row), input(row, "d"));
    const name = COLUMNS[wordIn(row, "quantity")] ?? "";
    const got = found[name];
    const value = wordIn(row, "value");
    if (value === "never" || value === "none") return expect(got).toBe(value);
    if (value === "at once") return expect(got).toBe(0);
    const sign = name === "annual value" ? -1 : 1;
    expect(Math.abs(sign * Number(got) - Number(value))).toBeLessThanOrEqual(2e-7 * Math.abs(Number(value)));
  });

  test("has a row for each kind of the table", () => expect(flows.length).toBe(68));

  const FALL = -0.005192399538461234;
  const NIST: CellMatrix = [
    ["base", "first cost", 1500, "", ""],
    ["base", "energy", 15_000 * 0.08, "", FALL],
    ["base", "upkeep", 50, "", ""],
    ["base", "replacement", 600, 10, ""],
    ["base", "once", 200, 10, ""],
    ["base", "residual", 450, "", ""],
    ["alt", "first cost", 3000, "", ""],
    ["alt", "energy", 10_250 * 0.08, "", FALL],
    ["alt", "upkeep", 100, "", ""],
    ["alt", "once", 600, 8, ""],
    ["alt", "residual", 750, "", ""],
  ];
  const INPUTS: CellMatrix = [
    ["years", 15],
    ["discount", 0.03],
  ];

  test.each(ROWS.filter((row) => row["kind"] === "nist_example").map((row) => [wordIn(row, "quantity"), row] as const))(
    "agrees with NIST's printed %s",
    (quantity, row) => {
      const found = lifecycle(INPUTS, NIST);
      const [who = "", what = ""] = /^(base|alt)_(.*)_/.exec(quantity)?.slice(1) ?? ["alt", quantity];
      const NAMES: Readonly<Record<string, string>> = {
        initial: "first cost",
        energy: "energy",
        recurring: "upkeep",
        nonrecurring: "once",
        replacement: "replacement",
        residual: "residual",
        annual: "annual value",
        net_savings: "net savings",
        discounted_payback_year: "positive from",
      };
      const got = found[who]?.[quantity.endsWith("payback_year") ? "positive from" : (NAMES[what] ?? "")];
      expect(Math.abs(Number(got) - numberIn(row, "published")), String(got)).toBeLessThanOrEqual(1);
    },
  );

  test.each(ROWS.filter((row) => row["kind"] === "break_even").map((row) => [wordIn(row, "id"), row] as const))(
    "finds the break-even price of %s by the multiple of a price of 1",
    (_, row) => {
      const text = wordIn(row, "inputs");
      const number = (pattern: RegExp): number => Number(pattern.exec(text)?.[1]);
      const therms = number(/heat delivered=(\d+)/) / number(/efficiency=([\d.]+)/);
      const electricity = number(/pump=(-?[\d.]+)/) * number(/electricity=([\d.]+)/);
      const found = lifecycle(
        [
          ["years", number(/; n=(\d+)/)],
          ["discount", number(/; d=([\d.]+)/)],
        ],
        [
          ["heater", "energy", therms, "", number(/gas escalation=([\d.]+)/)],
          ["heater", "upkeep", electricity, "", number(/electricity escalation=([\d.]+)/)],
          ["recovery", "first cost", number(/cost=(\d+)/), "", ""],
          ["recovery", "upkeep", number(/upkeep=([\d.]+)/), "", ""],
        ],
      );
      expect(Math.abs(Number(found["recovery"]?.["energy multiple"]) / numberIn(row, "value") - 1)).toBeLessThan(1e-6);
    },
  );

  test("names the row that lacks its year or passes the years counted, and a base that isn't there", () => {
    expect(refusal(run("COST.LIFECYCLE", INPUTS, [["a", "replacement", 5, ""]]))).toContain(
      "rows, row 1, year: is blank",
    );
    expect(refusal(run("COST.LIFECYCLE", INPUTS, [["a", "once", 5, 16]]))).toContain("at most the years counted, 15");
    expect(refusal(run("COST.LIFECYCLE", [["base", "b"]], [["a", "once", 5, 1]]))).toContain('no alternative "b"');
  });

  test("never pays back where nothing is paid and every year loses", () => {
    expect(ofFlows([0, -5, -5], 0.03)).toMatchObject({ "simple payback": "never", "discounted payback": "never" });
    expect(ofFlows([0, 5, 5], 0.03)).toMatchObject({ "simple payback": 0, "positive from": 0 });
  });

  test("names alternatives that lose and those without a single rate", () => {
    const definition = compile(lookUp(CATALOGUE, "COST.LIFECYCLE")!);
    const rows: CellMatrix = [
      ["a", "upkeep", 0],
      ["b", "upkeep", 5],
    ];
    const codes = explain(definition, [INPUTS, rows], CATALOGUE, { steps: false }).cautions.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(["COST-LOSING", "COST-NO-SINGLE-RATE", "COST-LIFECYCLE-PRICES"]));
  });

  test("saves against itself the negative of what the other saves", () =>
    assert(
      property(array(double({ min: -500, max: 500, noNaN: true }), { minLength: 2, maxLength: 12 }), (costs) => {
        const rows = costs.map((cost, year) => ["b", year === 0 ? "first cost" : "once", cost, year === 0 ? "" : year]);
        const inputs = (base: string): CellMatrix => [
          ["years", 12],
          ["base", base],
        ];
        const a: CellMatrix = [["a", "energy", 10, ""], ...rows];
        const one = lifecycle(inputs("a"), a)["b"]?.["net savings"];
        const other = lifecycle(inputs("b"), a)["a"]?.["net savings"];
        expect(Number(one) + Number(other)).toBeCloseTo(0, 6);
      }),
      { numRuns: 40 },
    ));
});
