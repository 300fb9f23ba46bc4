import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellInput, CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";

const definition = compile(lookUp(CATALOGUE, "EXCHANGER.COMMISSION")!);
const call = (id: string, ...raw: readonly CellInput[]): CellMatrix => {
  const out = evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return out as CellMatrix;
};
const rowIn = (table: CellMatrix, name: string) => table.find(([label]) => label === name) ?? [];
const listed = (table: CellMatrix, name: string): number => Number(rowIn(table, name)[1]);

type Readings = Readonly<Record<string, number>>;
const blockOf = (entries: Readings | Readonly<Record<string, number | string>>): CellMatrix => Object.entries(entries);
const PLAN = { refrigerant: "R-410A", "rated cooling": 90000, UA: 5000, "rated power": 8, "planned flow": 40 };
const AT = { "water flow": 40, "entering water": 82, outdoor: 95 };

const balance = call(
  "EXCHANGER.BALANCE",
  blockOf({
    refrigerant: "R-410A",
    "rated cooling": 90000,
    UA: 5000,
    "rated power": 8,
    ...{ "water flow": 40, "entering water": 82 },
  }),
);
/** What the model itself would read. */
const FITTING: Readings = {
  ...AT,
  "leaving water": listed(balance, "leaving water"),
  "pool condensing": listed(balance, "condensing"),
  "pool evaporating": listed(balance, "evaporating"),
  "pool power": listed(balance, "power"),
  "pool superheat": 10,
  "pool subcooling": 10,
  "outdoor condensing": 115,
  "outdoor evaporating": 45,
  "outdoor power": 8,
  "outdoor superheat": 10,
  "outdoor subcooling": 10,
};
const test1 = (readings: Readings, plan: Readonly<Record<string, number | string>> = PLAN): CellMatrix =>
  call("EXCHANGER.COMMISSION", blockOf(plan), blockOf(readings));
const meaning = (changes: Readings): string => String(rowIn(test1({ ...FITTING, ...changes }), "pattern")[7]);

describe("EXCHANGER.COMMISSION", () => {
  test("expects what EXCHANGER.BALANCE and AIRCON.ATOUTDOOR give at the readings", () => {
    const found = test1({ ...AT, outdoor: 88, "water flow": 33, "entering water": 79 });
    const there = call(
      "EXCHANGER.BALANCE",
      blockOf({
        refrigerant: "R-410A",
        "rated cooling": 90000,
        UA: 5000,
        "rated power": 8,
        "water flow": 33,
        "entering water": 79,
        outdoor: 88,
      }),
    );
    const curves = call("AIRCON.ATOUTDOOR", 90000, 8, 88);
    expect(rowIn(found, "pool: condensing")[2]).toBeCloseTo(listed(there, "condensing"), 9);
    expect(rowIn(found, "pool: heat into the water")[2]).toBeCloseTo(listed(there, "heat into pool"), 4);
    expect(rowIn(found, "outdoor: condensing")[2]).toBeCloseTo(listed(there, "condensing outdoors"), 9);
    expect(rowIn(found, "outdoor: power")[2]).toBeCloseTo(listed(curves, "power"), 9);
    expect(rowIn(found, "outdoor: power")[7]).toBe("AIRCON.ATOUTDOOR");
    expect(rowIn(found, "pool: condensing")[6]).toBe("not measured");
  });

  test("takes a hot-gas drop on the pool as EXCHANGER.BALANCE does, and none as before", () => {
    const found = test1(AT, { ...PLAN, "hot gas drop": 15 });
    const machine = { refrigerant: "R-410A", "rated cooling": 90000, UA: 5000, "rated power": 8 };
    const there = call("EXCHANGER.BALANCE", blockOf({ ...machine, ...AT }), "US", 15);
    expect(rowIn(found, "pool: power")[2]).toBeCloseTo(listed(there, "power"), 9);
    expect(rowIn(found, "pool: condensing")[2]).toBeCloseTo(listed(there, "condensing"), 9);
    expect(listed(there, "power")).toBeGreaterThan(listed(balance, "power"));
    const plain = test1(AT);
    expect(rowIn(found, "outdoor: condensing")).toEqual(rowIn(plain, "outdoor: condensing"));
    expect(test1(AT, { ...PLAN, "hot gas drop": 0 })).toEqual(plain);
  });

  test("agrees with readings that the model itself would give", () => {
    const found = test1(FITTING);
    const verdicts = found.slice(1, -2).map((row) => row[6]);
    expect(new Set(verdicts)).toEqual(new Set(["agrees"]));
    expect(rowIn(found, "pattern").slice(6)).toEqual(["agrees", "within the errors"]);
    // Water properties at its mean here, at its entering temperature in the balance.
    expect(Math.abs(Number(rowIn(found, "pool: UA")[1]) / 5000 - 1)).toBeLessThan(0.001);
  });

  test("falls back on the balance for power outdoors where the curves don't hold", () => {
    expect(rowIn(test1({ ...AT, outdoor: 60 }), "outdoor: power")[7]).toBe("EXCHANGER.BALANCE");
    const without = Object.fromEntries(Object.entries(PLAN).filter(([label]) => label !== "rated power"));
    expect(rowIn(test1(AT, without), "outdoor: power")[7]).toBe("EXCHANGER.BALANCE");
  });

  test.each([
    ["a fouled exchanger", { "pool condensing": 118, "leaving water": 87.2 }, "fouling or scale"],
    ["non-condensables by the pressure at rest", { "pool condensing": 118, "outdoor condensing": 125, "rest saturation": 85, "rest temperature": 78 }, "non-condensables: at rest"],
    ["overcharge or non-condensables", { "pool condensing": 118, "outdoor condensing": 125, "pool subcooling": 18, "outdoor subcooling": 18 }, "overcharge or non-condensables"],
    ["too little charge", { "pool subcooling": 2, "outdoor subcooling": 1, "pool superheat": 25, "outdoor superheat": 25, "pool evaporating": 36 }, "charge short"],
    ["a restriction", { "pool superheat": 25, "outdoor superheat": 25 }, "restriction"],
    ["different charge in the two condensers", { "pool subcooling": 18, "outdoor subcooling": 9 }, "different charge"],
    ["too little water", { "water flow": 30, "leaving water": 89.8 }, "water flow below plan"],
    ["a wrong flow meter", { "leaving water": 90 }, "flow meter or water sensors"],
    ["a dirty outdoor coil", { "outdoor condensing": 125 }, "condensing high outdoors only"],
    ["too little indoor air", { "pool evaporating": 36, "outdoor evaporating": 37 }, "indoor airflow"],
    ["liquid at the compressor", { "pool superheat": 0 }, "superheat low"],
  ])("names %s", (_, changes, words) => expect(meaning(changes as unknown as Readings)).toContain(words)); // prettier-ignore

  test("lets pass what the stated errors explain", () => {
    const near = { ...FITTING, "pool condensing": listed(balance, "condensing") + 6 };
    expect(rowIn(test1(near), "pool: condensing")[6]).toBe("high");
    expect(rowIn(test1(near, { ...PLAN, "temperature error": 6 }), "pool: condensing")[6]).toBe("agrees");
  });

  test("gives the same rows in SI", () => {
    const si = evaluate(
      definition,
      [blockOf(PLAN).map(inSI), blockOf(FITTING).map(inSI), "SI"],
      CATALOGUE,
    ) as CellMatrix;
    const us = test1(FITTING);
    expect(si.map((row) => row[6])).toEqual(us.map((row) => row[6]));
    const condensing = Number(rowIn(us, "pool: condensing")[2]);
    expect(rowIn(si, "pool: condensing")[2]).toBeCloseTo((condensing - 32) / 1.8, 6);
    expect(rowIn(si, "pool: rise of the water").slice(5, 6)).toEqual(["K"]);
  });

  test("warns of readings that differ, and not of those that agree", () => {
    const codes = (readings: Readings) =>
      explain(definition, [blockOf(PLAN), blockOf(readings)], CATALOGUE, { steps: false }).cautions.map(
        ({ code }) => code,
      );
    expect(codes({ ...FITTING, "pool condensing": 125 })).toContain("EXCHANGER-COMMISSION-DIFFERS");
    expect(codes(FITTING)).not.toContain("EXCHANGER-COMMISSION-DIFFERS");
  });

  test("refuses neither UA nor coil", () => {
    const none = Object.fromEntries(Object.entries(PLAN).filter(([label]) => label !== "UA"));
    const out = evaluate(definition, [blockOf(none), blockOf(AT)], CATALOGUE);
    expect(isFault(out) && out.message).toContain("give one of UA and the coil's geometry");
  });
});

/** The trade's units written beside each value: the call's system then doesn't matter. */
function inSI([label = "", value = ""]: readonly CellInput[]): CellMatrix[number] {
  const units: Readonly<Record<string, string>> = {
    "rated cooling": "BTU/h",
    UA: "BTU/(h·°F)",
    "rated power": "kW",
    "planned flow": "gpm",
    "water flow": "gpm",
  };
  const name = String(label);
  if (name === "refrigerant") return [name, value as string];
  if (name.endsWith("power")) return [name, value as number, "kW"];
  return [name, value as number, units[name] ?? "°F"];
}
