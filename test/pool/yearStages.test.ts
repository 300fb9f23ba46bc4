import { describe, expect, it } from "vitest";
import { airconFunctions } from "../../core/aircon";
import { SAMPLE_MAP } from "../../core/cycle/data/sampleMap";
import { catalogueOf, lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellInput } from "../../core/kernel/values/cellInput";
import { noteFunctions } from "../../core/note";
import { poolFunctions } from "../../core/pool";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import type { Machine } from "../../core/pool/year/machine";
import { emptyPartLoad, meetLoad } from "../../core/pool/year/partLoad";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

const CATALOGUE = catalogueOf(poolFunctions, airconFunctions, noteFunctions);

type Labels = Readonly<Record<string, number | string | boolean>>;
type Rows = readonly (readonly (string | number)[])[];
const call = (id: string, ...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
const year = (inputs: Labels) => call("POOL.YEAR", Object.entries(inputs), MIAMI_MONTHS, "SI");
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

/** The year's last row by column. */
function totalOf(out: unknown): Record<string, number> {
  if (isFault(out)) throw new Error(out.message);
  const rows = out as Rows;
  const last = rows.at(-1) ?? [];
  return Object.fromEntries((rows[0] ?? []).map((head, at) => [String(head).replace(/ \(.*/, ""), Number(last[at])]));
}

/** A golden machine at the eight bins of the standard, as eight hours. */
function atBins(row: GoldenCells): Machine {
  const bins = [67, 72, 77, 82, 87, 92, 97, 102];
  const value = (column: string) => numberIn(row, column);
  const line = (a: number, b: number, from: number, to: number) =>
    Float64Array.from(bins, (T) => a + ((b - a) * (T - from)) / (to - from));
  const share = (low: number, low82: number, full82: number, full: number, mid: number) => {
    const [a, b] = [low + ((low82 - low) * 20) / 15, full82 + ((full - full82) * 5) / 13];
    return (mid - a) / (b - a);
  };
  const variable = wordIn(row, "type") === "variable-speed";
  const lockout = wordIn(row, "lockout_F") === "" ? undefined : value("lockout_F");
  const none = { outdoorFan: 0, poolCurve: undefined, tankCurve: undefined };
  return {
    ...none,
    load: Float64Array.from(bins, (T) => (((T - 65) / 30) * value("qA") * value("V")) / 1.1),
    designLoad: value("qA"),
    outdoorCooling: line(value("qB"), value("qA"), 82, 95),
    outdoorPower: line(value("PB"), value("PA"), 82, 95),
    cyclingLoss: value("Cd_low"),
    covers: [0, 400],
    low: {
      ...none,
      outdoorCooling: line(value("q_low_67"), value("q_low_82"), 67, 82),
      outdoorPower: line(value("P_low_67"), value("P_low_82"), 67, 82),
    },
    variable,
    middle: variable
      ? [
          share(value("q_low_67"), value("q_low_82"), value("qB"), value("qA"), value("q_int_87")),
          share(value("P_low_67"), value("P_low_82"), value("PB"), value("PA"), value("P_int_87")),
        ]
      : undefined,
    locked: lockout === undefined ? undefined : Uint8Array.from(bins, (T) => (T >= lockout ? 1 : 0)),
  };
}

const BIN_HOURS = [0.214, 0.231, 0.216, 0.161, 0.104, 0.052, 0.018, 0.004];

const [flow, power] = [0, 1].map((place) => SAMPLE_MAP.map((line) => line[place]).join("; ")) as [string, string];

const pool: Labels = {
  "pool area": 42,
  "water depth": 1.4,
  "set point": 27,
  latitude: 25.82,
  "exchanger UA": 2000,
  "design load": 9,
  "indoor fan": 0.3,
  "outdoor fan": 0.2,
};
const single: Labels = { ...pool, "rated cooling": 13.92, "rated power": 3.83 };
const two: Labels = {
  ...single,
  "machine type": "two stage",
  "low cooling": 9.82,
  "low power": 2.41,
  "low outdoor fan": 0.12,
  "low indoor fan": 0.18,
};
const variable: Labels = { ...two, "machine type": "variable speed", "low cooling": 4.5, "low power": 0.9 };

describe("part load of the year's machine", () => {
  it("repeats the seasonal ratings of another program bin by bin: two stages, lockout, variable speed", () => {
    const rows = cellsIn("staged-seer.csv").filter(
      (row) => wordIn(row, "type") !== "single" && wordIn(row, "method") !== "2008",
    );
    // The year has one cycling loss for both stages.
    const alike = rows.filter((row) => wordIn(row, "Cd_full") === "" || row["Cd_full"] === row["Cd_low"]);
    expect(alike.length).toBeGreaterThan(80);
    for (const row of alike) {
      const machine = atBins(row);
      const into = emptyPartLoad();
      let [cooling, electricity] = [0, 0];
      BIN_HOURS.forEach((hours, bin) => {
        meetLoad(machine, machine.load[bin] ?? 0, bin, "outdoors", 300, into);
        cooling += hours * into.met;
        electricity += hours * into.electricity;
        expect(into.rejected).toBeCloseTo(into.met + into.electricity, 6);
      });
      expect(Math.abs(cooling / electricity / numberIn(row, "SEER") - 1), JSON.stringify(row)).toBeLessThan(1e-6);
    }
  });
});

describe("POOL.YEAR by stages", () => {
  it("takes less electricity and rejects less by two stages, and less still by variable speed", () => {
    const [one, staged, any] = [single, two, variable].map((inputs) => totalOf(year(inputs)));
    for (const side of ["electricity without", "electricity with", "heat rejected"]) {
      expect(staged![side], side).toBeLessThan(one![side]!);
      expect(any![side], side).toBeLessThan(staged![side]!);
    }
    expect(staged!["heat taken"]).toBeLessThan(one!["heat taken"]!);
    expect(any!["heat taken"]).toBeLessThan(staged!["heat taken"]!);
  });

  it("says that a single-speed rating is one, and warns of inverter and communicating boards", () => {
    const cautions = (inputs: Labels) =>
      JSON.stringify(call("NOTE.CAUTIONS", "POOL.YEAR", Object.entries(inputs), MIAMI_MONTHS, "SI"));
    expect(cautions(single)).toMatch(/A single-speed machine/);
    expect(cautions(two)).not.toMatch(/A single-speed machine|its board drives/);
    expect(cautions(variable)).toMatch(/inverter.*written consent/);
    expect(cautions({ ...single, communicating: true })).toMatch(/A communicating machine.*written consent/);
  });

  it("a low stage that is locked out everywhere runs at full capacity alone", () => {
    const locked = totalOf(year({ ...two, lockout: 5 }));
    expect(locked["heat taken"]).toBeGreaterThan(totalOf(year(two))["heat taken"] ?? 0);
    const other = totalOf(year({ ...two, lockout: 5, "low cooling": 8, "low power": 2 }));
    expect(other).toEqual(locked);
  });

  it("an intermediate speed better than the straight line saves electricity, a worse one costs it", () => {
    const electricity = (more: Labels) => totalOf(year({ ...variable, ...more }))["electricity without"]!;
    const plain = electricity({});
    expect(electricity({ "intermediate cooling": 9.5, "intermediate power": 1.6 })).toBeLessThan(plain);
    expect(electricity({ "intermediate cooling": 9.5, "intermediate power": 2.3 })).toBeGreaterThan(plain);
    expect(refusal(year({ ...variable, "intermediate cooling": 20, "intermediate power": 2 }))).toMatch(
      /must be between those of least and full/,
    );
  });

  it("the maker's rows that repeat the published curve give nearly the same year", () => {
    const outdoor = [65, 75, 85, 95, 105, 115];
    const at = (T: number, label: string) =>
      Number((call("AIRCON.ATOUTDOOR", 47_497, 3.83, T) as Rows).find(([name]) => name === label)?.[1]);
    const rows: Labels = {
      "table outdoor": `${outdoor.join("; ")} °F`,
      "table cooling": `${outdoor.map((T) => at(T, "cooling").toFixed(1)).join("; ")} BTU/h`,
      "table power": outdoor.map((T) => at(T, "power").toFixed(5)).join("; "),
    };
    const [by, rated] = [totalOf(year({ ...pool, ...rows })), totalOf(year(single))];
    expect(by["heat taken"]! / rated["heat taken"]!).toBeCloseTo(1, 1);
    expect(refusal(year({ ...single, ...rows }))).toMatch(/give one of rated cooling/);
    expect(refusal(year({ ...pool, ...rows, "table power": "3; 4" }))).toMatch(/as many values as table outdoor/);
  });

  it("works a map on the pool, in the units that it names or those of the call", () => {
    const map = { "map flow": flow, "map power": power, "map units": "US", refrigerant: "R-410A" };
    const mapped = totalOf(year({ ...pool, "design load": 6, ...map, "rated cooling": 9.4 }));
    const byMap = totalOf(year({ ...pool, "design load": 6, ...map }));
    expect(mapped["heat taken"]).toBeGreaterThan(0);
    expect(mapped["heat taken"]! / byMap["heat taken"]!).toBeCloseTo(1, 1);
    expect(isFault(year({ ...pool, ...map, "map units": "SI" }))).toBe(true);
  });

  it("refuses stages that don't go together by the label's name", () => {
    expect(refusal(year({ ...single, "machine type": "two stage" }))).toMatch(/two stage needs low cooling/);
    expect(refusal(year({ ...two, "machine type": "single speed" }))).toMatch(/low stage entries need "two stage"/);
    expect(refusal(year({ ...two, "low cooling": 20 }))).toMatch(/must be below rated cooling/);
    expect(refusal(year({ ...two, "low power": "" }))).toMatch(/"low power" is missing/);
  });
});
