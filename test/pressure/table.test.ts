import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault, type Fault } from "../../core/kernel/values/fault";

type Block = Readonly<Record<string, string | number | boolean>>;
type Cell = string | number | Fault;

/** An invented hall: R-410A split machine with a pool coil. */
const FERNHILL: Block = {
  refrigerant: "R-410A",
  "nameplate high": 500,
  "nameplate low": 250,
  "summer dry bulb": 101,
  "leaving water": 95,
  "compressor shell": 320,
  "gas line size": "7/8 in",
  "gas line temperature": 150,
  "liquid line size": "1/2 in",
  "coil stamped": 600,
  "diverting valve": 650,
  "check valve": 650,
  receiver: 550,
};

const compiled = (() => {
  const found = COMPILED.get("PRESSURE.TABLE");
  if (!found) throw new Error("no PRESSURE.TABLE");
  return found;
})();

const rowsOf = (block: Block): readonly (readonly Cell[])[] => {
  const out = evaluate(compiled, [Object.entries(block).map(([label, value]) => [label, value])], CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return out as readonly (readonly Cell[])[];
};

const HEADS = ["part", "rating", "design", "test", "cutOut", "margin", "strengthTest", "note"] as const;
const cell = (block: Block, part: string, column: (typeof HEADS)[number]): Cell => {
  const row = rowsOf(block).find(([name]) => name === part);
  if (!row) throw new Error(`no row ${part}`);
  return row[HEADS.indexOf(column)] ?? "";
};
const codesOf = (block: Block): readonly string[] =>
  explain(compiled, [Object.entries(block).map(([label, value]) => [label, value])], CATALOGUE, {
    steps: false,
  }).cautions.map(({ code }) => code);

const without = (label: string): Block => Object.fromEntries(Object.entries(FERNHILL).filter(([key]) => key !== label));

describe("PRESSURE.TABLE", () => {
  test("begins with the nameplate and ends with the weakest part", () => {
    const parts = rowsOf(FERNHILL).map(([part]) => part);
    expect(parts.slice(1, 3)).toEqual(["nameplate high side", "nameplate low side"]);
    expect(parts.at(-1)).toBe("weakest part");
    expect(rowsOf(FERNHILL).every((row) => row.length === HEADS.length)).toBe(true);
  });

  test("tests at the nameplate's low side as long as it is connected", () => {
    for (const part of ["pool coil", "diverting valve", "compressor shell", "weakest part"])
      expect(cell(FERNHILL, part, "test")).toBeCloseTo(250, 9);
    expect(codesOf(FERNHILL)).toContain("PRESSURE-TEST-LOW");
  });

  test("tests the high side at its own weakest part once it is shut off", () => {
    const shut = { ...FERNHILL, "high side shut off": true };
    // 7/8 in × 0.045 in at 150 °F: 495 psi in a printed sheet.
    expect(Math.abs(Number(cell(shut, "pool coil", "test")) - 495)).toBeLessThan(1);
    expect(cell(shut, "compressor shell", "test")).toBeCloseTo(250, 9);
  });

  test("holds added parts against the nameplate where that is above the rule, and the reverse", () => {
    expect(cell(FERNHILL, "pool coil", "design")).toBeCloseTo(500, 9);
    expect(cell({ ...FERNHILL, "nameplate high": 400 }, "pool coil", "design")).toBeCloseTo(484, 0);
    expect(cell(FERNHILL, "nameplate high side", "design")).toBeCloseTo(484, 0);
  });

  test("names the weakest part by its margin, and warns if it is short", () => {
    expect(cell(FERNHILL, "weakest part", "note")).toMatch(/^added gas line/);
    expect(Number(cell(FERNHILL, "weakest part", "margin"))).toBeLessThan(0);
    expect(codesOf(FERNHILL)).toContain("PRESSURE-WEAKEST");
    const sound = { ...FERNHILL, "gas line size": "5/8 in" };
    expect(Number(cell(sound, "weakest part", "margin"))).toBeGreaterThan(0);
    expect(codesOf(sound)).not.toContain("PRESSURE-WEAKEST");
  });

  test("gives a strength test of 1.1 × design to fit added parts only", () => {
    expect(cell(FERNHILL, "pool coil", "strengthTest")).toBeCloseTo(550, 9);
    expect(cell(FERNHILL, "added gas line", "strengthTest")).toBe("");
    expect(cell(FERNHILL, "nameplate low side", "strengthTest")).toBe("");
    expect(cell(FERNHILL, "compressor shell", "strengthTest")).toBe("");
  });

  test("keeps the cut-out at or below every part and 90 % of a relief setting", () => {
    const highest = Math.min(495.5, 500);
    expect(Number(cell(FERNHILL, "pool coil", "cutOut"))).toBeLessThanOrEqual(highest);
    expect(cell({ ...FERNHILL, "relief setting": 450 }, "pool coil", "cutOut")).toBeCloseTo(405, 9);
    expect(cell(FERNHILL, "nameplate low side", "cutOut")).toBe("");
  });

  test("takes psig and psia as what they say", () => {
    const at = (value: string) => cell({ ...FERNHILL, receiver: value }, "receiver", "rating");
    expect(at("550 psig")).toBeCloseTo(550, 9);
    expect(at("564.696 psia")).toBeCloseTo(550, 3);
  });

  test("lists parts without a rating, and warns", () => {
    const open = without("check valve");
    expect(cell(open, "weakest part", "note")).toContain("not rated: check valve");
    expect(codesOf(open)).toContain("PRESSURE-UNRATED");
    expect(codesOf(FERNHILL)).not.toContain("PRESSURE-UNRATED");
  });

  test("marks a coil without a stamped pressure as an estimate", () => {
    const estimated: Block = {
      ...without("coil stamped"),
      "coil material": "titanium grade 2",
      "coil diameter": 0.625,
      "coil wall": 0.028,
      "coil temperature": 100,
    };
    expect(cell(estimated, "pool coil", "note")).toMatch(/estimate from memory/);
    const hot = cell({ ...estimated, "coil temperature": 300 }, "pool coil", "rating");
    expect(isFault(hot) && hot.code).toBe("#N/A");
    expect(() => rowsOf({ ...estimated, "coil temperature": "" })).toThrow(/coil temperature is needed/);
  });

  test("compares the water side with the pump's dead head", () => {
    // 80 ft × 62.37 lb/ft³ / 144
    const water = { ...FERNHILL, "water shell": 30, "pump dead head": 80 };
    expect(cell(water, "water side of the coil", "design")).toBeCloseTo(34.65, 6);
    expect(cell(water, "water side of the coil", "margin")).toBeCloseTo(-4.65, 6);
  });

  test("always warns of trapped liquid, of both branches and of the order of the tests", () => {
    for (const code of ["PRESSURE-TRAPPED", "PRESSURE-BRANCHES", "PRESSURE-STEPS", "PRESSURE-WATER-SIDE"])
      expect(codesOf(FERNHILL)).toContain(code);
  });
});
