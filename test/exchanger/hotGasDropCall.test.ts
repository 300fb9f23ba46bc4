import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { SAMPLE_MAP } from "../../core/cycle/data/sampleMap";
import { settledHeat } from "../../core/exchanger/balance/equations";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import type { Step } from "../../core/kernel/define/steps";
import { explain } from "../../core/kernel/explain/explain";
import { workingLines } from "../../core/kernel/explain/working";
import type { CellInput } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";

type Labels = Readonly<Record<string, number | string>>;
const call = (id: string, ...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
const balance = (inputs: Labels, drop: CellInput) => call("EXCHANGER.BALANCE", Object.entries(inputs), "US", drop);
const rowsOf = (out: unknown): Record<string, number> => {
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries((out as [string, unknown][]).map(([label, value]) => [label, Number(value)]));
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : "no fault");

const fernhill: Labels = {
  refrigerant: "R-410A",
  "rated cooling": 90_000,
  "water flow": 40,
  "entering water": 82,
  UA: 5000,
};
const [flow, power] = [0, 1].map((place) => SAMPLE_MAP.map((line) => line[place]).join("; ")) as [string, string];
const mapped: Labels = {
  ...fernhill,
  UA: 3000,
  "rated cooling": 32_000,
  "rated condensing": 120,
  "map flow": flow,
  "map power": power,
  superheat: 20,
};
const stages: Labels = {
  ...fernhill,
  "rated power": 7.6,
  "machine type": "two stage",
  "low cooling": 63_000,
  "low power": 5,
};

const without = (inputs: Labels, label: string): Labels =>
  Object.fromEntries(Object.entries(inputs).filter(([each]) => each !== label));
const stepsIn = (steps: readonly Step[]): readonly Step[] =>
  steps.flatMap((step) => (step.type === "group" ? stepsIn(step.steps) : [step]));

describe("hotGasDrop of EXCHANGER.BALANCE", () => {
  it("adds its rows with a drop only", () => {
    const without = balance(fernhill, null);
    expect(balance(fernhill, 0)).toEqual(without);
    expect(balance(fernhill, "")).toEqual(without);
    const [own, plain] = [rowsOf(balance(fernhill, 15)), rowsOf(without)];
    expect(Object.keys(own).slice(Object.keys(plain).length)).toEqual([
      "saturated discharge",
      "discharge pressure absolute",
      "cooling lost",
      "power added",
    ]);
    expect(own["cooling lost"]).toBeCloseTo(plain["cooling"]! - own["cooling"]!, 6);
    expect(own["power added"]).toBeCloseTo(own["power"]! - plain["power"]!, 9);
    expect(own["discharge pressure absolute"]).toBeCloseTo(own["condensing pressure absolute"]! + 15, 6);
    expect(own["condensing outdoors"]).toBe(plain["condensing outdoors"]);
  });

  it("takes every form of the machine", () => {
    const table: Labels = {
      ...fernhill,
      "table outdoor": "85; 95; 105",
      "table cooling": "95000; 90000; 85000",
      "table power": "6.9; 7.6; 8.4",
    };
    for (const form of [{ ...fernhill, "rated power": 7.6 }, mapped, stages, { ...stages, stage: "low" }, table]) {
      const own = rowsOf(balance(form, 15));
      expect(own["cooling lost"]).toBeGreaterThan(0);
      expect(own["power added"]).toBeGreaterThan(0);
    }
  });

  it("reads a map at the compressor's saturated discharge", () => {
    const own = rowsOf(balance(mapped, 15));
    const at = rowsOf(
      call("CYCLE.MAP", SAMPLE_MAP, own["evaporating"]!, own["saturated discharge"]!, 20, 10, "R-410A"),
    );
    expect(own["power"]! / at["power"]!).toBeCloseTo(1, 6);
  });

  it("refuses a drop below zero, as large as the condensing pressure, or beyond the critical pressure, with numbers", () => {
    expect(refusal(balance(fernhill, -1))).toContain("hotGasDrop: must be at least 0 psi");
    expect(refusal(balance(fernhill, 400))).toBe(
      "#VALUE! hotGasDrop: must be below the condensing pressure without it, 371.324 psi absolute, got 400 psi",
    );
    expect(refusal(balance(fernhill, 335))).toContain("with 335 psi on top of about 371.324 psi absolute");
  });

  it("warns from 2 °F of saturation temperature, and of the greatest condensing temperature at the compressor", () => {
    const cautions = (inputs: Labels, drop: number) =>
      JSON.stringify(call("NOTE.CAUTIONS", "EXCHANGER.BALANCE", Object.entries(inputs), "US", drop));
    expect(cautions(fernhill, 9)).not.toContain("worth");
    expect(cautions(fernhill, 15)).toContain("lose 15 psi, worth 2.986 °F");
    const limited = { ...fernhill, "greatest condensing": 110 };
    expect(cautions(limited, 0)).not.toContain("above the limit");
    expect(cautions(limited, 15)).toContain("above the limit of 110 °F");
    expect(rowsOf(balance(limited, 15))["condensing"]).toBeLessThan(110);
  });

  it("shows in its working the pressure before the drop and the heat that closes", () => {
    const coiled: Labels = {
      ...without(fernhill, "UA"),
      "outside diameter": 0.625,
      wall: 0.028,
      tubes: 4,
      "tube length": 60,
      "coil diameter": 10,
      pitch: 1,
      "shell diameter": 12,
      "core diameter": 8,
    };
    for (const form of [fernhill, mapped, coiled]) {
      const { steps } = explain(
        compile(lookUp(CATALOGUE, "EXCHANGER.BALANCE")!),
        [Object.entries(form), "US", 15],
        CATALOGUE,
      );
      const lines = workingLines(steps, "US");
      expect(lines.filter(({ text }) => text.startsWith("Pressure at the compressor"))).toHaveLength(1);
      const closing = stepsIn(steps).filter((step) => step.type === "relation" && step.relation === settledHeat);
      expect(closing).toHaveLength(2);
      for (const step of closing) if (step.type === "relation") expect(step.left / step.right).toBeCloseTo(1, 5);
    }
  });
});
