/** Total equivalent warming by hand, and the printed potentials of blends by each report. */
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { laterWarmingOf, warmingOf } from "../../core/refrigerant/facts";
import { loadRefrigerant } from "../../core/refrigerant/refrigerant";

const answer = (block: Readonly<Record<string, unknown>>): ReadonlyMap<string, unknown> | string => {
  const definition = lookUp(CATALOGUE, "COST.WARMING");
  if (!definition) throw new Error("not listed");
  const out = evaluate(compile(definition), [Object.entries(block), "SI"], CATALOGUE);
  if (isFault(out)) return `${out.code} ${out.message}`;
  return new Map((out as readonly (readonly [string, unknown])[]).map(([label, value]) => [label, value]));
};

const rowsOf = (block: Readonly<Record<string, unknown>>): ReadonlyMap<string, unknown> => {
  const out = answer(block);
  if (typeof out === "string") throw new Error(out);
  return out;
};

const SPLIT = { refrigerant: "R-410A", charge: 4, energy: 3000, "carbon factor": 0.4 };

describe("COST.WARMING", () => {
  // Sums by mass from the component values of each report (Regulation (EU) 2024/573; AR5, AR6 from memory).
  it.each([
    ["R-404A", 3921.6, 3921.6, 3942.8, 4728.0],
    ["R-407A", 2107.0, 2107.0, 1923.4, 2262.2],
    ["R-407C", 1773.85, 1773.85, 1624.2, 1907.9],
    ["R-410A", 2087.5, 2087.5, 1923.5, 2255.5],
    ["R-449A", 1397.1, 1396.2, 1281.7, 1504.5],
    ["R-452B", 698.3, 697.4, 675.6, 778.5],
    ["R-454B", 466.3, 465.2, 466.6, 531.4],
    ["R-507A", 3985.0, 3985.0, 3985.0, 4775.0],
    ["R-513A", 631.4, 629.5, 572.3, 673.5],
  ])("knows the potential of %s by every report", (name, ar4, eu, ar5, ar6) => {
    const fluid = loadRefrigerant(name);
    expect(Math.abs(warmingOf(fluid).potential - ar4)).toBeLessThan(0.06);
    for (const [report, printed] of [
      ["EU 2024/573", eu],
      ["AR5", ar5],
      ["AR6", ar6],
    ] as const)
      expect(Math.abs((laterWarmingOf(fluid, report) ?? 0) - printed), report).toBeLessThan(0.06);
  });

  it("compares with the machine before, and counts heat no longer bought", () => {
    const found = rowsOf({ ...SPLIT, "old charge": 3, "old energy": 3200, "heater carbon": 500 });
    // By hand: 2,088 · 3 · (0.04 · 15 + 0.3) + 3,200 · 15 · 0.4.
    expect(found.get("total before")).toBeCloseTo(2088 * 3 * 0.9 + 19_200, 6);
    expect(found.get("change")).toBeCloseTo(2088 * 0.9 - 1200 - 7500, 6);
    expect(rowsOf(SPLIT).get("change")).toBe("");
  });

  it("refuses a report that lacks the refrigerant, and a loss above the charge", () => {
    expect(answer({ ...SPLIT, refrigerant: "R-290", report: "AR5" })).toMatch(
      /^#N\/A inputs: report: AR5 has no potential of R-290/,
    );
    expect(answer({ ...SPLIT, "leak rate": 1.2 })).toMatch(/leak rate: .*at most.*1.2/);
  });
});
