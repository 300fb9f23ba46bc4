import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellInput } from "../../core/kernel/values/cellInput";
import { SAMPLE_MAP } from "../../core/cycle/data/sampleMap";
import { cellsIn, numberIn, wordIn } from "../golden/rows";

const run = (...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, "CYCLE.MAP")!), raw, CATALOGUE);
const valuesOf = (out: unknown): Record<string, number> => {
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries(
    (out as readonly (readonly (string | number)[])[]).map(([label, value]) => [String(label), Number(value)]),
  );
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

/** Lee et al. 2021, IOP Conf. Ser. Mater. Sci. Eng. 1180 012041, table 5 (CC BY 3.0), °C. */
const LEE = [
  [148.5, 3.518, -5.636, 0.1661, -0.1253, 0.08603, 6.465e-4, -2.105e-3, 1.114e-3, -3.855e-4],
  [520.2, -11.83, -3.596, 0.02135, 0.2093, 0.02781, 7.176e-5, -7.415e-4, -6.77e-4, 1.233e-4],
];
const [US_MAP, LEE_MAP] = [SAMPLE_MAP, LEE as CellInput];

const rows = cellsIn("compressor-map.csv");
const ownOf = (map: string) => rows.filter((row) => wordIn(row, "map").includes(map));

describe("CYCLE.MAP", () => {
  it("agrees with another program's rows of a 3-ton R-410A compressor at three superheats", () => {
    for (const row of ownOf("R-410A")) {
      const found = valuesOf(
        run(
          US_MAP,
          numberIn(row, "suction_dew"),
          numberIn(row, "discharge_dew"),
          numberIn(row, "superheat_F"),
          numberIn(row, "subcooling_F"),
          "R-410A",
        ),
      );
      const share = (label: string, column: string, factor: number, within: number) =>
        expect(
          Math.abs(((found[label] ?? 0) * factor) / numberIn(row, column) - 1),
          `${column} at ${JSON.stringify(row)}`,
        ).toBeLessThan(within);
      share("mass flow", "m_corrected_lb_h", 1, 2e-4);
      share("power", "P_corrected_W", 1000, 2e-4);
      share("cooling", "cooling_Btu_h", 1, 1e-3);
      share("rejected", "rejected_Btu_h", 1, 1e-3);
      expect(Math.abs((found["discharge temperature"] ?? 0) - numberIn(row, "discharge_F"))).toBeLessThan(0.3);
    }
  });

  it("agrees with a published polynomial in SI, flow and power alone", () => {
    for (const row of ownOf("Lee")) {
      const found = valuesOf(
        run(
          LEE_MAP,
          numberIn(row, "suction_dew"),
          numberIn(row, "discharge_dew"),
          null,
          null,
          null,
          null,
          null,
          null,
          "SI",
        ),
      );
      expect(found["power"]! * 1000).toBeCloseTo(numberIn(row, "P_map_W"), 3);
      expect(found["mass flow"]!).toBeCloseTo(numberIn(row, "m_map"), 3);
    }
    expect(ownOf("Lee").length).toBeGreaterThan(0);
  });

  it("reads columns, rows, heads, numbering and power before flow alike", () => {
    const expected = run(US_MAP, 45, 105, 20, 10, "R-410A");
    const [flow, power] = [0, 1].map((place) => SAMPLE_MAP.map((line) => line[place] ?? 0)) as [number[], number[]];
    const shapes: CellInput[] = [
      [flow, power],
      [
        ["mass flow lb/h", ...flow],
        ["power W", ...power],
      ],
      [["", "Power (W)", "Mass flow (lb/h)"], ...flow.map((_, place) => [place + 1, power[place]!, flow[place]!])],
      [["C", "flow", "power"], ...flow.map((value, place) => [`C${place + 1}`, String(value), power[place]!])],
    ];
    for (const shape of shapes) expect(run(shape, 45, 105, 20, 10, "R-410A")).toEqual(expected);
  });

  it("takes a map of constant return gas at 65 °F less the suction temperature", () =>
    expect(run(US_MAP, 45, 105, 20, 10, "R-410A", "return gas 65 °F")).toEqual(run(US_MAP, 45, 105, 20, 10, "R-410A")));

  it("refuses the order of bicubic curve objects by the efficiency that it means", () => {
    const order = [1, 2, 4, 3, 6, 5, 7, 10, 8, 9];
    const mixed = order.map((place) => [...SAMPLE_MAP[place - 1]!]);
    expect(refusal(run(mixed, 45, 105, 20, 10, "R-410A"))).toMatch(/check order, units/);
  });

  it("names what is wrong with a range, an envelope or a missing refrigerant", () => {
    expect(refusal(run([[1, 2]], 45, 105))).toMatch(/expected two columns or rows of ten numbers/);
    expect(refusal(run(US_MAP, 45, 105, 10))).toMatch(/refrigerant: is needed/);
    expect(refusal(run(US_MAP, 45, 75, 20, 10, "R-410A", 20, 80))).toMatch(
      /#N\/A discharge: the envelope begins at 80/,
    );
    expect(refusal(run(US_MAP, 45, 135, 20, 10, "R-410A", 20, 80, 130))).toMatch(/the envelope ends at 130/);
    expect(refusal(run(US_MAP, 45, 45, 20, 10, "R-410A"))).toMatch(/must be above suction/);
  });
});
