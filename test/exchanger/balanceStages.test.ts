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
const valuesOf = (out: unknown): Record<string, number> => {
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries((out as Rows).map(([label, value]) => [String(label), Number(value)]));
};
const balance = (inputs: Labels) => call("EXCHANGER.BALANCE", Object.entries(inputs));
const without = (inputs: Labels, label: string): Labels =>
  Object.fromEntries(Object.entries(inputs).filter(([each]) => each !== label));
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

const [flow, power] = [0, 1].map((place) => SAMPLE_MAP.map((line) => line[place]).join("; ")) as [string, string];
const place: Labels = { UA: 3000, "water flow": 20, "entering water": 84, "outdoor fan": 0.2, "indoor fan": 0.3 };
/** A 3-ton machine by its compressor's map: 32,000 BTU/h net at 120 °F condensing. */
const mapped: Labels = {
  ...place,
  refrigerant: "R-410A",
  "rated cooling": 32_000,
  "rated condensing": 120,
  "map flow": flow,
  "map power": power,
  superheat: 20,
};
const two: Labels = {
  ...place,
  refrigerant: "R-454B",
  "rated cooling": 47_500,
  "rated power": 3.83,
  "machine type": "two stage",
  "low cooling": 33_500,
  "low power": 2.41,
  "low outdoor fan": 0.15,
  "low indoor fan": 0.15,
};

describe("EXCHANGER.BALANCE by a map", () => {
  it("condenses where CYCLE.MAP gives the same heat, power and cooling, on pool and outdoor coil", () => {
    const found = valuesOf(balance(mapped));
    for (const [side, fans] of [
      ["", 0.3],
      [" outdoors", 0.5],
    ] as const) {
      const own = valuesOf(
        call("CYCLE.MAP", SAMPLE_MAP, found[`evaporating${side}`]!, found[`condensing${side}`]!, 20, 10, "R-410A"),
      );
      const heat = side === "" ? found["heat into pool"]! : found["heat outdoors"]!;
      expect(own["rejected"]! / heat).toBeCloseTo(1, 6);
      expect((own["cooling"]! - 0.3 * 3412.141633) / found[`cooling${side}`]!).toBeCloseTo(1, 6);
      expect((own["power"]! + fans) / found[`power${side}`]!).toBeCloseTo(1, 6);
    }
  });

  it("reproduces the rated cooling on the outdoor coil at 95 °F, and condensing there", () => {
    const found = valuesOf(balance(mapped));
    expect(found["cooling outdoors"]).toBeCloseTo(32_000, 0);
    expect(found["condensing outdoors"]).toBeCloseTo(120, 3);
  });

  it("settles the coil's geometry on the map too", () => {
    const coil: Labels = {
      "outside diameter": 0.75,
      wall: 0.028,
      tubes: 2,
      "tube length": 24,
      "coil diameter": 10,
      pitch: 1.2,
      "shell diameter": 14,
    };
    const rest = without(mapped, "UA");
    const byCoil = valuesOf(balance({ ...rest, ...coil }));
    const byUA = valuesOf(balance({ ...rest, UA: byCoil["UA"]! }));
    expect(byUA["condensing"]).toBeCloseTo(byCoil["condensing"]!, 4);
    expect(byUA["heat into pool"]! / byCoil["heat into pool"]!).toBeCloseTo(1, 6);
  });

  it("shows the polynomial in its working", () => {
    const lines = JSON.stringify(call("NOTE.WORKING", "EXCHANGER.BALANCE", Object.entries(mapped)));
    expect(lines).toMatch(/Ten-coefficient polynomial/);
    expect(lines).not.toMatch(/Swept volume/);
  });

  it("refuses a map that can't cool so much, half a map, and a rated power beside it", () => {
    expect(refusal(balance({ ...mapped, "rated cooling": 320_000 }))).toMatch(
      /no evaporating temperature gives the rated/,
    );
    expect(refusal(balance({ ...mapped, "map power": "" }))).toMatch(/"map power" is missing/);
    expect(refusal(balance({ ...mapped, "rated power": 3 }))).toMatch(/give one of rated power and map power/);
  });
});

describe("EXCHANGER.BALANCE by stages", () => {
  it("takes the low stage's rating back at 95 °F on the outdoor coil, fans and all", () => {
    const found = valuesOf(balance({ ...two, stage: "low" }));
    expect(found["cooling outdoors"]).toBeCloseTo(33_500, 0);
    expect(found["power outdoors"]).toBeCloseTo(2.41, 4);
  });

  it("condenses cooler and gives less heat at the low stage than at full capacity, with a better COP", () => {
    const [full, low] = [valuesOf(balance(two)), valuesOf(balance({ ...two, stage: "low" }))];
    expect(low["condensing"]).toBeLessThan(full["condensing"]!);
    expect(low["heat into pool"]).toBeLessThan(0.8 * full["heat into pool"]!);
    expect(low["COP"]).toBeGreaterThan(full["COP"]!);
    // Full capacity is the rating without stages, to the last digit.
    const rating = Object.fromEntries(Object.entries(two).filter(([label]) => !/^low |machine/.test(label)));
    expect(balance(two)).toEqual(balance(rating));
  });

  it("runs a variable-speed machine at any share between, rising with it", () => {
    const variable = { ...two, "machine type": "variable speed" };
    const heats = ["low", 0.25, 0.5, 0.75, "full"].map(
      (stage) => valuesOf(balance({ ...variable, stage }))["heat into pool"] ?? 0,
    );
    expect([...heats].sort((a, b) => a - b)).toEqual(heats);
    expect(valuesOf(balance({ ...variable, stage: 1 }))).toEqual(valuesOf(balance(variable)));
    expect(refusal(balance({ ...two, stage: 0.5 }))).toMatch(/a share needs machine type "variable speed"/);
  });

  it("takes the maker's rows as its rating", () => {
    const rest = without(two, "rated power");
    const rows = {
      "table outdoor": "75; 95; 115 °F",
      "table cooling": "51200; 47500; 43000",
      "table power": "3.05; 3.83; 4.8",
    };
    expect(balance({ ...rest, ...rows })).toEqual(balance(two));
    expect(refusal(balance({ ...rest, ...rows, "rated cooling": 60_000 }))).toMatch(/within 5 % of the maker's rows/);
  });

  it("warns where a board drives the machine", () => {
    const cautions = (inputs: Labels) =>
      JSON.stringify(call("NOTE.CAUTIONS", "EXCHANGER.BALANCE", Object.entries(inputs)));
    expect(cautions({ ...two, communicating: true })).toMatch(/written consent/);
    expect(cautions({ ...two, "machine type": "variable speed" })).toMatch(/inverter/);
    expect(cautions(two)).not.toMatch(/board drives/);
  });
});
