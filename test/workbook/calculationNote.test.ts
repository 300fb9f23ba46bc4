import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, test } from "vitest";
import { printedEquations, symbolsByForm } from "../../scripts/help/forms";
import { noteCalculation, type NoteCalculation, type NoteHead } from "../../src/taskpane/note/calculation";
import { noteSheet } from "../../src/taskpane/note/noteSheets";
import { noteText } from "../../src/taskpane/note/noteText";
import type { SymbolTable } from "../../src/taskpane/note/symbols";
import { readMarked } from "../../src/workbook/check/markedCells";
import { cellAt, sheetNamed, WEB } from "../excelHost";
import { at } from "./fakeWorkbook";
import { onExcel } from "./onExcel";
import { ENGINE, onPreview, type OnPreview } from "./previewEngine";

const HEAD: NoteHead = {
  project: "Fernhill Hall (invented)",
  by: "AB",
  checked: "",
  approved: "",
  revision: "0",
  date: "2026-03-02",
  edition: ENGINE.edition,
};

let on: OnPreview;
let head: NoteCalculation;
let inSI: NoteCalculation;
let states: NoteCalculation;

beforeAll(async () => {
  const printed = await printedEquations(join(import.meta.dirname, "../../core"));
  const table = symbolsByForm(printed) as SymbolTable;
  on = await onPreview("Pool loop");
  await on.put("Pool loop", {
    A7: "Head lost",
    B7: '=WARMBACK.PIPE.HEADLOSS(90,"2 in",100)',
    A8: "In SI",
    B8: '=WARMBACK.PIPE.VELOCITY(9,"2 in",,"SI")',
    A9: "States",
    B9: '=WARMBACK.CYCLE.STATES("R-410A",45,105)',
  });
  const cells = await readMarked(on.book, ENGINE, [
    at("Pool loop", "B7"),
    at("Pool loop", "B8"),
    at("Pool loop", "B9"),
  ]);
  const made = cells.map((cell) => {
    const [call] = cell.reading.calls;
    const values = call?.args.flatMap((one) => ("value" in one ? [one.value] : [])) ?? [];
    const explained = ENGINE.explain(call?.id ?? "", values);
    const one = explained && noteCalculation(cell, call?.id ?? "", explained, table);
    if (one === undefined) throw new Error("no calculation");
    return one;
  });
  [head, inSI, states] = made as [NoteCalculation, NoteCalculation, NoteCalculation];
});
afterAll(() => on.sheets.dispose());

describe("A calculation note", () => {
  test("names inputs in the user's units with SI beside, and which are defaults", () => {
    expect(head.inputs.find(({ name }) => name === "flow")).toMatchObject({
      value: "90 gpm",
      inSI: "20.44 m³/h",
      given: true,
    });
    expect(head.inputs.find(({ name }) => name === "schedule")).toMatchObject({ value: "40", given: false });
  });

  test("lists each equation's symbols with value, SI value and meaning", () => {
    const velocity = head.steps.find(({ title }) => title === "Mean velocity");
    expect(velocity).toMatchObject({
      form: "v = 4 * Q / (pi * D^2)",
      value: "v = 8.757 ft/s",
      source: expect.any(String) as string,
    });
    expect(velocity?.symbols).toEqual([
      { name: "Q", description: "water flow", value: "90 gpm", inSI: "20.44 m³/h" },
      { name: "D", description: "bore", value: "2.049 in", inSI: "52.04 mm" },
    ]);
    // 90 gpm through 2.049 in by hand: 0.4085 × 90 / 2.049² = 8.757 ft/s; in SI 2.669 m/s.
    expect(velocity?.inSI).toMatch(/^2\.669\d* m\/s$/);
  });

  test("puts the user's own quantities into equations that hold in any units, with SI base units below", () => {
    const velocity = head.steps.find(({ title }) => title === "Mean velocity");
    expect(velocity?.numbers).toBe("= 4 * (90 gpm) / (pi * (2.049 in)^2)");
    expect(velocity?.baseNumbers).toMatch(/^= 4 \* 0\.00567\d* \/ \(pi \* 0\.0520\d*\^2\)$/);
    expect(noteText([head], HEAD)).toContain("= 4 * (90 gpm) / (pi * (2.049 in)^2)");
    const loss = head.steps.find(({ form }) => /\bg\b/.test(form));
    expect(loss?.numbers).toContain("(32.174 ft/s²)");
  });

  test("leaves an equation in SI base units whose own numbers have units", () => {
    const all = [head, inSI, states].flatMap(({ steps }) => steps).filter(({ form }) => form !== "");
    expect(all.some(({ numbers }) => numbers === "")).toBe(true);
    for (const { numbers } of all) expect(numbers).not.toMatch(/°[FC]\)/);
  });

  test("has a source for every equation and describes every symbol", () => {
    for (const { form, symbols, source, baseNumbers } of [head, inSI, states].flatMap(({ steps }) => steps)) {
      if (form === "") continue;
      expect(source, form).not.toBe("");
      expect(symbols.length, form).toBeGreaterThan(0);
      expect(baseNumbers, form).not.toBe("");
    }
  });

  test("gives the result in both systems, and in SI alone for a call in SI", () => {
    expect(head.result).toEqual([[expect.stringMatching(/^\d+\.\d+ ft$/)]]);
    expect(head.resultInSI).toMatch(/^\d+\.\d+ m$/);
    expect(inSI.resultInSI).toBe("");
    expect(inSI.inputs.every((one) => one.inSI === "")).toBe(true);
  });

  test("repeats the cautions that the call raises, and a table's rows", () => {
    expect(head.cautions.map(({ code }) => code)).toContain("PIPE-FAST-WATER");
    expect(states.result.length).toBeGreaterThan(4);
  });

  test("as text holds all of it", () => {
    const text = noteText([head, inSI], HEAD);
    for (const part of [
      "Project: Fernhill Hall (invented)",
      "Sheet 2 of 2",
      "v = 4 * Q / (pi * D^2)",
      "Q = 90 gpm (20.44 m³/h), water flow",
      "no digital signature",
    ])
      expect(text).toContain(part);
  });

  test("as sheets has one for each calculation; the first one's head fills the others", async () => {
    const first = await on.book.insert(noteSheet(head, HEAD, { at: 1, of: 2, first: undefined }));
    const second = await on.book.insert(noteSheet(inSI, HEAD, { at: 2, of: 2, first }));
    await on.put(first, { B4: "CD" });
    expect(on.block(second, "A1:E5").values.map((row) => [row[1], row[4]])).toEqual([
      [null, null],
      ["Fernhill Hall (invented)", "2 of 2"],
      ["AB", "0"],
      ["CD", "2026-03-02"],
      ["", ENGINE.edition],
    ]);
    const data = on.sheets.data().sheets.find(({ name }) => name === second);
    expect(data?.print).toMatchObject({ titleRows: "1:7", landscape: true });
  });
});

describe("In the stand-in for Excel, a note's sheet", () => {
  const excel = onExcel(WEB, "Pool loop");

  it("holds equations as texts, never as formulas", async () => {
    const name = await excel.book.insert(noteSheet(head, HEAD, { at: 1, of: 1, first: undefined }));
    const { cells } = sheetNamed(excel.host.book, name);
    expect([...cells.values()].filter(({ formula }) => formula !== "")).toEqual([]);
    expect([...cells.values()].map(({ value }) => value)).toContain("v = 4 * Q / (pi * D^2)");
    expect(cellAt(sheetNamed(excel.host.book, name), "B2")?.value).toBe("Fernhill Hall (invented)");
  });
});
