import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

type Labels = Readonly<Record<string, number | string | boolean>>;
const run = (inputs: Labels, units = "US") =>
  evaluate(compile(lookUp(CATALOGUE, "AIRCON.SEASON")!), [Object.entries(inputs), units], CATALOGUE);
const valueOf = (out: unknown, label: string): number | string => {
  if (isFault(out)) throw new Error(out.message);
  const row = (out as readonly (readonly (string | number)[])[]).find(([name]) => name === label);
  return row?.[1] ?? "";
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

/** The block of a golden row. */
function labelsOf(row: GoldenCells): Labels {
  const kW = (column: string) => numberIn(row, column) / 1000;
  const given = (column: string) => wordIn(row, column) !== "";
  return {
    "machine type": { single: "single speed", "two-stage": "two stage", "variable-speed": "variable speed" }[
      wordIn(row, "type")
    ]!,
    "full cooling at 82": numberIn(row, "qB"),
    "full power at 82": kW("PB"),
    ...(given("qA") && {
      "full cooling at 95": numberIn(row, "qA"),
      "full power at 95": kW("PA"),
      "low cooling at 82": numberIn(row, "q_low_82"),
      "low power at 82": kW("P_low_82"),
      "low cooling at 67": numberIn(row, "q_low_67"),
      "low power at 67": kW("P_low_67"),
    }),
    ...(given("q_int_87") && {
      "intermediate cooling at 87": numberIn(row, "q_int_87"),
      "intermediate power at 87": kW("P_int_87"),
    }),
    ...(given("lockout_F") && { lockout: numberIn(row, "lockout_F") }),
    "cycling loss": given("Cd_full") ? numberIn(row, "Cd_full") : numberIn(row, "Cd_low"),
    "low cycling loss": numberIn(row, "Cd_low"),
    "heat pump": numberIn(row, "V") < 1,
    ...(wordIn(row, "method") === "2008" && { edition: "2008" }),
  };
}

describe("AIRCON.SEASON", () => {
  it.each(["single", "two-stage", "variable-speed"])("agrees with another program's ratings of %s machines", (type) => {
    const rows = cellsIn("staged-seer.csv").filter((row) => wordIn(row, "type") === type);
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) {
      const out = run(labelsOf(row));
      const near = (label: string, expected: number, factor = 1) =>
        expect(Math.abs((Number(valueOf(out, label)) * factor) / expected - 1), JSON.stringify(row)).toBeLessThan(1e-6);
      near("seasonal rating", numberIn(row, "SEER"));
      if (wordIn(row, "sum_q_Btu_h") === "") continue;
      near("mean cooling", numberIn(row, "sum_q_Btu_h"));
      near("mean power", numberIn(row, "sum_E_W"), 1000);
    }
  });

  const two: Labels = {
    "machine type": "two stage",
    "full cooling at 95": 36_000,
    "full power at 95": 3,
    "full cooling at 82": 38_500,
    "full power at 82": 2.52,
    "low cooling at 82": 28_000,
    "low power at 82": 1.7,
    "low cooling at 67": 30_200,
    "low power at 67": 1.38,
    "cycling loss": 0.1,
  };

  it("publishes to the nearest 0.05 and says how the bins are met", () => {
    expect(valueOf(run(two), "published rating")).toBeCloseTo(15.6, 9);
    expect(valueOf(run(two), "bins")).toBe("low 67 to 87 °F, between 92 to 97 °F, full 102 °F");
    expect(valueOf(run({ ...two, lockout: 87 }), "bins")).toBe(
      "low 67 to 82 °F, full, cycling 87 to 97 °F, full 102 °F",
    );
  });

  it("gives the same rating in SI, as COP", () => {
    const si = Object.fromEntries(
      Object.entries(two).map(([label, value]) => [
        label,
        label.includes("cooling at") ? Number(value) * 0.000293071070172 : value,
      ]),
    );
    expect(Number(valueOf(run(si, "SI"), "seasonal rating")) * 3.412141633).toBeCloseTo(
      Number(valueOf(run(two), "seasonal rating")),
      6,
    );
  });

  it("names the missing test and refuses tests that cross", () => {
    const lacking = Object.fromEntries(Object.entries(two).filter(([label]) => label !== "low power at 67"));
    expect(refusal(run(lacking))).toMatch(/"low power at 67" is needed for two stage/);
    expect(refusal(run({ ...two, "low cooling at 82": 40_000 }))).toMatch(/must be below those at full/);
    expect(refusal(run({ ...two, "machine type": "variable speed" }))).toMatch(/intermediate cooling at 87/);
    expect(
      refusal(
        run({
          ...two,
          "machine type": "variable speed",
          "intermediate cooling at 87": 60_000,
          "intermediate power at 87": 2,
        }),
      ),
    ).toMatch(/must be between those of least and full/);
  });
});
