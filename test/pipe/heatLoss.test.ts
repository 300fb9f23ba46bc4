import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

function lost(
  id: string,
  block: readonly (readonly [string, string | number])[],
): ReadonlyMap<string, string | number> {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  const out = evaluate(compile(definition), [block, "SI"], CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as readonly [string, string | number][]).map(([label, value]) => [label, value]));
}

const given = (row: GoldenCells, column: string): boolean => row[column] !== "";

function rowLoss(row: GoldenCells): ReadonlyMap<string, string | number> {
  const fluid = `${numberIn(row, "fluid_degF")} °F`;
  const common = [
    ["air", `${numberIn(row, "air_or_ground_degF")} °F`],
    ...(given(row, "wind_mph") ? [["wind", `${numberIn(row, "wind_mph")} mph`] as const] : []),
    ...(given(row, "emissivity") ? [["emissivity", numberIn(row, "emissivity")] as const] : []),
    ["insulation", numberIn(row, "insulation_mm")],
    ...(given(row, "k_insulation_W_mK")
      ? [["insulation conductivity", numberIn(row, "k_insulation_W_mK")] as const]
      : []),
    ["length", 1],
  ] as readonly (readonly [string, string | number])[];
  if (wordIn(row, "kind").startsWith("hot-gas"))
    return lost("LINE.HEATLOSS", [["outside diameter", numberIn(row, "OD_mm")], ["gas", fluid], ...common]);
  const size = wordIn(row, "pipe").replace(/ PVC.*/, "");
  const buried = given(row, "depth_to_centre_mm")
    ? ([
        ["depth", numberIn(row, "depth_to_centre_mm") / 1000],
        ["ground", numberIn(row, "k_ground_W_mK")],
      ] as const)
    : [];
  return lost("PIPE.HEATLOSS", [["size", size], ["water", fluid], ...common, ...buried]);
}

describe("heat lost from pipes", () => {
  // Printed to 7 digits; dimensions are rounded to 1e-6 m.
  test.each(cellsIn("pipe-heat-loss.csv").map((row, i) => [i + 1, row] as const))(
    "row %d agrees with another program",
    (_, row) => {
      const found = rowLoss(row);
      const wanted = numberIn(row, "loss_W_m");
      expect(Math.abs(Number(found.get("loss")) * 1000 - wanted)).toBeLessThan(1e-5 * Math.abs(wanted));
      if (given(row, "surface_degF"))
        expect(Number(found.get("surface")) * 1.8 + 32).toBeCloseTo(numberIn(row, "surface_degF"), 3);
    },
  );

  test("is less with more insulation and more with more wind, and cools 40 gpm by 0.053 °F over 100 ft", () => {
    const at = (more: readonly (readonly [string, string | number])[]) =>
      Number(lost("PIPE.HEATLOSS", [["size", "2 in"], ["water", 32], ["air", 10], ...more]).get("loss"));
    expect(at([["insulation", 25]])).toBeLessThan(at([["insulation", 13]]));
    expect(at([["wind", 5]])).toBeGreaterThan(at([["wind", 1]]));
    expect(at([["wind", 1]])).toBeGreaterThan(at([]));
    const long = lost("PIPE.HEATLOSS", [
      ["size", "2 in"],
      ["water", "90 °F"],
      ["air", "50 °F"],
      ["insulation", 13],
      ["insulation conductivity", 0.036],
      ["length", "100 ft"],
      ["flow", "40 gpm"],
    ]);
    expect(90 - (Number(long.get("leaving water")) * 1.8 + 32)).toBeCloseTo(0.053, 3);
  });
});
