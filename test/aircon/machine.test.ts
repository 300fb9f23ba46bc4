import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { SAMPLE_MAP } from "../../core/cycle/data/sampleMap";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellInput } from "../../core/kernel/values/cellInput";

type Labels = Readonly<Record<string, number | string | boolean>>;
type Rows = readonly (readonly (string | number)[])[];
const call = (id: string, ...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));
const valuesOf = (out: unknown): Record<string, number> => {
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries((out as Rows).map(([label, value]) => [String(label), Number(value)]));
};
const outdoors = (T: number, machine: Labels, stage: string | number = "full") =>
  call("AIRCON.ATOUTDOOR", 48_000, 4, T, null, 0.2, "US", Object.entries(machine), stage);

const two: Labels = { "machine type": "two stage", "low cooling": 34_000, "low power": 2.5, "low outdoor fan": 0.15 };
const variable: Labels = { ...two, "machine type": "variable speed" };
const rows: Labels = {
  "table outdoor": "75; 95; 115 °F",
  "table cooling": "52000; 48000; 43000",
  "table power": "3.1; 4; 5",
};

describe("AIRCON.ATOUTDOOR of a described machine", () => {
  it("gives the rating back at 95 °F in each stage, heat rejected less the fan of that stage", () => {
    expect(valuesOf(outdoors(95, two))).toMatchObject({ cooling: 48_000, power: 4 });
    const low = valuesOf(outdoors(95, two, "low"));
    expect(low["cooling"]).toBeCloseTo(34_000, 6);
    expect(low["rejected"]).toBeCloseTo(34_000 + 3412.141633 * (2.5 - 0.15), 2);
  });

  it("a low stage rated at 82 °F gives that rating back at 82 °F", () => {
    const low = valuesOf(outdoors(82, { ...two, "low rated outdoor": 82 }, "low"));
    expect(low["cooling"]).toBeCloseTo(34_000, 6);
    expect(low["power"]).toBeCloseTo(2.5, 9);
  });

  it("a variable speed rises from least to full, with the COP straight over the load between", () => {
    const at = (share: string | number) => valuesOf(outdoors(85, variable, share));
    const [least, half, most] = [at("low"), at(0.5), at(1)];
    expect(half["cooling"]).toBeCloseTo((least["cooling"]! + most["cooling"]!) / 2, 6);
    expect(half["COP"]).toBeCloseTo((least["COP"]! + most["COP"]!) / 2, 9);
    expect(refusal(outdoors(85, two, 0.5))).toMatch(/a share needs machine type/);
  });

  it("takes the maker's rows, straight between them and refused outside", () => {
    expect(valuesOf(outdoors(85, rows))).toMatchObject({ cooling: 50_000, power: 3.55 });
    expect(refusal(outdoors(70, rows))).toMatch(/#N\/A outdoor: the machine's data hold from 75 °F to 115 °F, got 70/);
    expect(refusal(outdoors(85, { ...rows, "table cooling": "60000; 56000; 50000" }))).toMatch(
      /ratedCooling: must be within 5 %/,
    );
  });

  it("reads a map where the outdoor coil settles, as EXCHANGER.BALANCE does", () => {
    const [flow, power] = [0, 1].map((place) => SAMPLE_MAP.map((line) => line[place]).join("; ")) as [string, string];
    const map = { "map flow": flow, "map power": power, "rated condensing": 120 };
    const found = valuesOf(
      call("AIRCON.ATOUTDOOR", 32_000, 3.1, 85, null, 0.2, "US", Object.entries({ ...map, "indoor fan": 0.3 })),
    );
    const balance = valuesOf(
      call(
        "EXCHANGER.BALANCE",
        Object.entries({
          ...map,
          refrigerant: "R-410A",
          "rated cooling": 32_000,
          "indoor fan": 0.3,
          "outdoor fan": 0.2,
          outdoor: 85,
          UA: 3000,
          "water flow": 20,
          "entering water": 80,
        }),
      ),
    );
    expect(found["cooling"]! / balance["cooling outdoors"]!).toBeCloseTo(1, 4);
    expect(found["power"]! / balance["power outdoors"]!).toBeCloseTo(1, 4);
  });

  it("is as before without a machine, and asks for one where a stage is named", () => {
    expect(refusal(call("AIRCON.ATOUTDOOR", 48_000, 4, 85, null, 0.2, "US", null, "low"))).toMatch(
      /needs the block "machine"/,
    );
  });
});

const MEANS = [67, 69.6, 70.8, 75.4, 79.6, 81.8, 82.6, 82.3, 81.5, 79.4, 74.5, 68.5].map((mean) => [mean]);
const hours = (machine: Labels | null): Record<string, number> => {
  const out = call("AIRCON.HOURS", MEANS, 65, 91, null, "US", machine && Object.entries(machine));
  if (isFault(out)) throw new Error(out.message);
  const table = out as Rows;
  const last = table.at(-1) ?? [];
  return Object.fromEntries((table[0] ?? []).map((head, at) => [String(head).replace(/ \(.*/, ""), Number(last[at])]));
};
const rated: Labels = { "rated cooling": 48_000, "rated power": 4 };

describe("AIRCON.HOURS of a described machine", () => {
  it("leaves the full-load hours as they are", () =>
    expect(hours(rated)["full load hours"]).toBe(hours(null)["full load hours"]));

  it("a single speed without cycling loss and with level capacity runs the full-load hours, within the steps", () => {
    const level = { "table outdoor": "40; 120 °F", "table cooling": "48000; 48000", "table power": "4; 4" };
    const found = hours({ ...level, "cycling loss": 0 });
    expect(found["low stage hours"]).toBe(0);
    expect(found["higher hours"]! / found["full load hours"]!).toBeCloseTo(1, 2);
    expect(found["electricity"]! / (4 * found["full load hours"]!)).toBeCloseTo(1, 2);
  });

  it("two stages run longer on less electricity, a variable speed on less still", () => {
    const [one, staged, any] = [rated, { ...rated, ...two }, { ...rated, ...variable }].map(hours);
    const time = (run: Record<string, number>) => run["low stage hours"]! + run["higher hours"]!;
    expect(time(staged!)).toBeGreaterThan(time(one!));
    expect(staged!["electricity"]).toBeLessThan(one!["electricity"]!);
    expect(any!["electricity"]).toBeLessThan(staged!["electricity"]!);
    expect(staged!["low stage hours"]).toBeGreaterThan(staged!["higher hours"]!);
  });
});
