import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { us } from "../../core/kernel/values/quantity";
import { compressorOf, coolingAt, onWaterCurve, powerAt } from "../../core/pool/year/waterCurve";
import type { Rating } from "../../core/aircon/machine/stage";

const definition = lookUp(CATALOGUE, "EXCHANGER.BALANCE");
const degF = (value: number): number => us("temperature", value);

const block = {
  refrigerant: "R-454B",
  "rated cooling": 48_000,
  UA: 4500,
  "water flow": 40,
  "entering water": 82,
  "outdoor fan": 0.25,
};

/** Rows of EXCHANGER.BALANCE, or the message of its fault. */
function balance(change: Readonly<Record<string, string | number>>) {
  if (!definition) throw new Error("no EXCHANGER.BALANCE");
  const out = evaluate(compile(definition), [Object.entries({ ...block, ...change })], CATALOGUE);
  if (isFault(out)) return out.message;
  return new Map((out as [string, number][]).map(([label, value]) => [label, value]));
}

function row(change: Readonly<Record<string, string | number>>, label: string): number {
  const rows = balance(change);
  if (typeof rows === "string") throw new Error(rows);
  return rows.get(label) ?? Number.NaN;
}

describe("rated power in EXCHANGER.BALANCE", () => {
  const power = { "rated power": "4.17 kW", "indoor fan": "0.4 kW" };

  it("draws on the outdoor coil at its rating just that power, and cools just as rated", () => {
    const rated = { ...power, outdoor: 95 };
    expect(row(rated, "power outdoors")).toBeCloseTo(4.17, 5);
    expect(row(rated, "cooling outdoors") / 48_000).toBeCloseTo(1, 6);
    expect(row({ outdoor: 95 }, "power outdoors")).toBeLessThan(4);
  });

  it("draws on the pool what POOL.YEAR's curve draws there", () => {
    const rating: Rating = {
      cooling: us("heat rate", 48_000),
      power: 4170,
      outdoorFan: 250,
      indoorFan: 400,
      refrigerant: "R-454B",
      evaporating: degF(45),
      condensing: degF(115),
      wetBulb: degF(67),
      superheat: us("temperature difference", 10),
      subcooling: us("temperature difference", 10),
    };
    const exchanger = { ua: us("heat conductance", 4500), waterFlow: us("water flow", 40), leastCondensing: degF(80) };
    const words = { ua: "", flow: "", limit: "", limitIs: degF(100) };
    const curve = onWaterCurve(compressorOf(rating), exchanger, rating, degF(100), words);
    for (const water of [76, 82, 88]) {
      const change = { ...power, "entering water": water };
      expect(Math.abs((row(change, "power") * 1000) / powerAt(curve, degF(water)) - 1)).toBeLessThan(1e-3);
      expect(Math.abs(us("heat rate", row(change, "cooling")) / coolingAt(curve, degF(water)) - 1)).toBeLessThan(1e-3);
    }
  });

  it("is refused beside an efficiency, below the fans, or where it doesn't fit the cooling", () => {
    expect(balance({ "rated power": 4, efficiency: 0.7 })).toMatch(/one of rated power and efficiency/);
    expect(balance({ "rated power": 0.2 })).toMatch(/both fans must take less than rated power, 0.2 kW, got 0.25 kW/);
    expect(balance({ "rated power": 40 })).toMatch(/efficiency would be 0\.\d+, expected 0.3 to 0.95/);
  });
});

describe("EXCHANGER.BALANCE on a cold day", () => {
  it("holds the outdoor coil at the least condensing temperature of the machine", () => {
    expect(row({ outdoor: 35 }, "condensing outdoors")).toBeCloseTo(80, 9);
    expect(row({ outdoor: 35, "least condensing": 70 }, "condensing outdoors")).toBeCloseTo(70, 9);
    expect(row({ outdoor: 35 }, "COPOutdoors")).toBeLessThan(12);
  });
});

describe("heat lost on the way in EXCHANGER.BALANCE", () => {
  it("comes off the heat into the pool, the line's off the leaving water too, and nothing else changes", () => {
    const lossy = { "line loss": 3000, "pipe loss": 500 };
    expect(row(lossy, "heat into pool")).toBeCloseTo(row({}, "heat into pool") - 3500, 6);
    const share = (row(lossy, "leaving water") - 82) / (row({}, "leaving water") - 82);
    expect(share).toBeCloseTo(1 - 3000 / row({}, "heat into pool"), 9);
    for (const label of ["condensing", "cooling", "power", "COP", "UA"]) expect(row(lossy, label)).toBe(row({}, label));
  });

  it("is refused where nothing would reach the pool", () => {
    expect(balance({ "line loss": 1e6 })).toMatch(/below the heat rejected/);
  });
});
