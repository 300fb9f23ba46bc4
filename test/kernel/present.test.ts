/** Results as cells show them: shapes, labels, units, words, and faults of single cells. */
import { describe, expect, test } from "vitest";
import { present } from "../../core/kernel/call/present";
import {
  gridResult,
  listResult,
  quantityResult,
  rowResult,
  tableResult,
  wordResult,
  type ResultShape,
} from "../../core/kernel/define/result";
import { isFault, notAvailable } from "../../core/kernel/values/fault";
import { quantityMark } from "../../core/kernel/values/quantityMark";
import { si, type System } from "../../core/kernel/values/quantity";

const shown = (shape: ResultShape, result: unknown, system: System = "SI", basis?: unknown) =>
  present(shape, result, { system, basis });

const WATER = {
  waterTemperature: quantityResult("temperature", "water"),
  share: quantityResult("fraction", "share"),
  state: wordResult("state"),
};
const VALUES = { waterTemperature: si("temperature", 25), share: 0.5, state: "warm" };

describe("A result", () => {
  test("of one value is that value", () => {
    expect(shown(quantityResult("length", "a length"), 3)).toBe(3);
    expect(shown(quantityResult("length", "a length"), 0.3048, "US")).toBeCloseTo(1, 12);
    expect(shown(wordResult("a word"), 12)).toBe("12");
  });

  test("of a list has label, value and unit", () =>
    expect(shown(listResult("values", WATER), VALUES)).toEqual([
      ["water temperature", 25, "°C"],
      ["share", 0.5, ""],
      ["state", "warm", ""],
    ]));

  test("of a table has heads with units", () =>
    expect(shown(tableResult("rows", WATER), [VALUES, { ...VALUES, share: 1 }])).toEqual([
      ["water temperature (°C)", "share", "state"],
      [25, 0.5, "warm"],
      [25, 1, "warm"],
    ]));

  test("of a row has values alone", () =>
    expect(shown(rowResult("cells", WATER), VALUES)).toEqual([[25, 0.5, "warm"]]));

  test("of a grid is a rectangle of a cell at least", () => {
    expect(shown(gridResult("cells"), [[1], ["a", true, 3], []])).toEqual([
      [1, "", ""],
      ["a", true, 3],
      ["", "", ""],
    ]);
    expect(shown(gridResult("cells"), [[]])).toEqual([[""]]);
  });

  test("of a pressure is shown as the gauge reads it", () => {
    const reading = quantityResult("pressure", "suction", { reading: true });
    expect(shown(reading, 201_325)).toBeCloseTo(100, 9);
    expect(shown(reading, 201_325, "SI", "absolute")).toBeCloseTo(201.325, 9);
  });
});

describe("A value of a list", () => {
  test("may be left out, or the declared word", () => {
    const list = listResult("values", {
      draw: quantityResult("length", "draw", { or: "frozen" }),
      size: quantityResult("length", "size", { optional: true }),
    });
    expect(shown(list, { draw: "frozen", size: undefined })).toEqual([["draw", "frozen", "m"]]);
    expect(shown(list, { draw: "", size: 2 })).toEqual([
      ["draw", "", "m"],
      ["size", 2, "m"],
    ]);
    expect(shown(list, { draw: 0.3048, size: 0.6096 }, "US")).toEqual([
      ["draw", 1, "ft"],
      ["size", 2, "ft"],
    ]);
  });

  test("that is a word is shown as a text, though it looks like a number", () =>
    expect(shown(listResult("values", { size: wordResult("size") }), { size: 40 })).toEqual([["size", "40", ""]]));

  test("that is a fault fails its own cell, with its quantities in the call's units", () => {
    const list = listResult("values", WATER);
    const state = notAvailable(`state: must be below ${quantityMark("temperature", si("temperature", 20))}`);
    const cell = (system: System) => (shown(list, { ...VALUES, state }, system) as unknown[][])[2]?.[1];
    expect(cell("SI")).toMatchObject({ code: "#N/A", message: "state: must be below 20 °C" });
    expect(cell("US")).toMatchObject({ code: "#N/A", message: "state: must be below 68 °F" });
    const plain = notAvailable("state: unknown");
    expect((shown(list, { ...VALUES, state: plain }) as unknown[][])[2]?.[1]).toBe(plain);
  });
});

describe("A number beyond any", () => {
  const message = "these inputs lead beyond any number; check their size and units";

  test("fails a single value", () => {
    const single = () => shown(quantityResult("length", "the way"), Number.POSITIVE_INFINITY);
    expect(single).toThrow(`the way: ${message}`);
  });

  test("fails its own cell of several", () => {
    const [, share] = shown(listResult("values", WATER), { ...VALUES, share: Number.NaN }) as unknown[][];
    expect(isFault(share?.[1])).toBe(true);
    expect(share?.[1]).toMatchObject({ code: "#N/A", message: `share: ${message}` });
  });
});
