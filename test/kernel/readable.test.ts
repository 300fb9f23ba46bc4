/** Units as people read them beside a value: what a pressure counts from, EER, tons and MMBtu. */
import { describe, expect, test } from "vitest";
import type { CellOut } from "../../core/kernel/call/present";
import { listResult, quantityResult, rowResult, tableResult, wordResult } from "../../core/kernel/define/result";
import { basisOf, readableCell, readableCells, readableUnit, resultUnit } from "../../core/kernel/explain/readable";
import { valueError } from "../../core/kernel/values/fault";
import type { KindName, System } from "../../core/kernel/values/quantity";

describe("The unit of a value", () => {
  test.each<[number, KindName, System, string, string]>([
    [3, "length", "US", "", "ft"],
    [3, "length", "SI", "", "m"],
    [3, "count", "US", "", ""],
    [3, "pressure", "US", "", "psia"],
    [3, "pressure", "SI", "", "kPa absolute"],
    [3, "pressure drop", "US", "", "psi"],
    [3.5, "COP", "US", "", "(EER 11.94)"],
    [3.5, "COP", "SI", "", ""],
    [90_000, "heat rate", "US", "cooling of the house", "BTU/h (7.5 tons)"],
    [90_000, "heat rate", "US", "Cooling", "BTU/h (7.5 tons)"],
    [90_000, "heat rate", "SI", "cooling", "kW"],
    [90_000, "heat rate", "US", "heating", "BTU/h"],
    [90_000, "heat rate", "US", "precooling", "BTU/h"],
    [6000, "heat rate", "US", "cooling", "BTU/h (0.5 tons)"],
    [5999, "heat rate", "US", "cooling", "BTU/h"],
    [90_000, "irradiance", "US", "cooling", "BTU/(h·ft²)"],
    [1e7, "heat", "US", "", "BTU (10 MMBtu)"],
    [-2.5e7, "heat", "US", "", "BTU (-25 MMBtu)"],
    [9_999_999, "heat", "US", "", "BTU"],
    [1e7, "heat", "SI", "", "kWh"],
    [1e7, "electric energy", "US", "", "kWh"],
  ])("of %d as %s in %s, %j, is %j", (value, kind, system, description, unit) =>
    expect(readableUnit(value, kind, system, { description })).toBe(unit),
  );

  test("of a pressure says gauge where it is", () => {
    const gauge = (system: System) => readableUnit(3, "pressure", system, { basis: "gauge" });
    expect([gauge("US"), gauge("SI"), readableUnit(3, "pressure", "US")]).toEqual(["psig", "kPa gauge", "psia"]);
  });

  test("of no number has nothing besides", () => {
    expect(readableUnit(undefined, "COP", "US")).toBe("");
    expect(readableUnit("much", "heat", "US")).toBe("BTU");
  });
});

describe("The unit of a result", () => {
  const pressure = (description: string, reading?: true) =>
    quantityResult("pressure", description, reading && { reading });

  test("that is a pressure counts from the basis, or from what its description says", () => {
    expect(resultUnit(pressure("as read", true), 3, "US", "gauge")).toBe("psig");
    expect(resultUnit(pressure("as read, gauge", true), 3, "US", "absolute")).toBe("psia");
    expect(resultUnit(pressure("suction, gauge"), 3, "US", "absolute")).toBe("psig");
    expect(resultUnit(pressure("suction"), 3, "US", "gauge")).toBe("psia");
    expect(resultUnit(pressure("by gauges"), 3, "US", "gauge")).toBe("psia");
  });

  test("that is a word is none, and cooling has its tons", () => {
    expect(resultUnit(wordResult("a word"), "wet", "US", "gauge")).toBe("");
    expect(resultUnit(quantityResult("heat rate", "net cooling"), 12_000, "US", "gauge")).toBe("BTU/h (1 ton)");
  });
});

test("a call counts from gauge unless its argument basis says absolute", () => {
  const basis = (label: string, value: unknown) =>
    basisOf([
      { label: "flow", value: 3 },
      { label, value },
    ]);
  expect([
    basis("basis", "absolute"),
    basis("basis", "gauge"),
    basis("basis", 1524),
    basis("base", "absolute"),
  ]).toEqual(["absolute", "gauge", "gauge", "gauge"]);
  expect(basisOf([])).toBe("gauge");
});

describe("The cells of a result", () => {
  const fault = valueError("flow: is blank");
  const list = listResult("a list", {
    suction: quantityResult("pressure", "suction", { reading: true }),
    cooling: quantityResult("heat rate", "cooling"),
    state: quantityResult("heat rate", "cooling"),
    note: wordResult("a note"),
  });

  test("that are a list have each number's unit as people read it, and all else as it is", () => {
    const cells: readonly (readonly CellOut[])[] = [
      ["suction", 120, "psi"],
      ["cooling", fault, "BTU/h"],
      ["state", "", "BTU/h"],
      ["note", "fine", ""],
      ["more", 12_000, "BTU/h"],
    ];
    expect(readableCells(list, cells, "US", "gauge")).toEqual([["suction", 120, "psig"], ...cells.slice(1)]);
    expect(readableCells(list, [["suction", 120]], "US", "gauge")).toEqual([["suction", 120]]);
    expect(
      readableCells(
        list,
        [
          ["x", 1, ""],
          ["cooling", 12_000, "BTU/h"],
        ],
        "US",
        "gauge",
      )[1],
    ).toEqual(["cooling", 12_000, "BTU/h (1 ton)"]);
  });

  test("that are a table have heads that say what a pressure counts from", () => {
    const table = tableResult("a table", {
      what: wordResult("what"),
      lowSide: quantityResult("pressure", "low side", { reading: true }),
      highSide: quantityResult("pressure", "high side"),
      flow: quantityResult("water flow", "flow"),
      pieces: quantityResult("count", "pieces"),
    });
    const heads = ["what", "low side (psi)", "high side (psi)", "flow (gpm)", "pieces", "more"];
    const body = [["pump", 120, 300, 40, 2, 1]];
    expect(readableCells(table, [heads, ...body], "US", "gauge")).toEqual([
      ["what", "low side (psig)", "high side (psia)", "flow (gpm)", "pieces", "more"],
      ...body,
    ]);
    expect(readableCells(table, [], "US", "gauge")).toEqual([[]]);
  });

  test("that are a row or a single value stay as they are", () => {
    const row = rowResult("a row", { suction: quantityResult("pressure", "suction") });
    expect(readableCells(row, [["suction", 120, "psi"]], "US", "gauge")).toEqual([["suction", 120, "psi"]]);
  });
});

test("a cell's text is its number to be read, its words, or its error with what to do", () => {
  expect([12_345.678, 0.123456, "wet", true, null].map(readableCell)).toEqual(["12,346", "0.1235", "wet", "true", ""]);
  expect(readableCell(valueError("flow: is blank"))).toBe("#VALUE! flow: is blank");
});
