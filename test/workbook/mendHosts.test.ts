/** Mending through both hosts: the preview's sheet engine and the stand-in for Excel. */
import { afterAll, beforeAll, describe, expect, inject, it, test, vi } from "vitest";
import { CATALOGUE, evaluate, COMPILED } from "../../core";
import { outcomeOf } from "../../src/functions/outcome";
import { emptySheet } from "../../src/preview/file/bookData";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { startHeadless } from "../../src/preview/univer/start";
import { sessionLog } from "../../src/workbook/callLog";
import { findDamage } from "../../src/workbook/mend/damage";
import { mendKnowledge } from "../../src/workbook/mend/knowledge";
import { mendCells } from "../../src/workbook/mend/mend";
import type { Engine } from "../../src/workbook/reader/prepare";
import { CANCELLED } from "../../src/workbook/timeSlices";
import { formatAt, sheetNamed, type, WEB } from "../excelHost";
import { keyOf } from "../excelHost/model/workbook";
import { DAMAGED, SOUND } from "./mendCorpus";
import { onExcel } from "./onExcel";

const KNOWLEDGE = mendKnowledge(CATALOGUE);

const ENGINE: Engine = {
  known: KNOWLEDGE.known,
  log: sessionLog(),
  call(id, args) {
    const compiled = COMPILED.get(id);
    return compiled ? outcomeOf(evaluate(compiled, args, CATALOGUE)) : { code: "#NAME?" };
  },
};

/** Those that a cell can hold as a formula: the others are texts in every host. */
const FORMULAS = DAMAGED.filter(({ now }) => now.startsWith("="));

describe("In the preview's sheet engine, mending", () => {
  let sheets: SheetBook;
  beforeAll(async () => {
    sheets = startHeadless(loadFunctions(inject("build")), {
      sheets: [emptySheet("Loop"), emptySheet("Sound")],
      names: [],
    });
    await sheets.whenCalculated();
  });
  afterAll(() => sheets.dispose());

  test("writes every damaged formula of the corpus as it is meant and no sound one", { timeout: 60_000 }, async () => {
    const book = previewWorkbook(sheets);
    await book.write([
      ...FORMULAS.map(({ now }, row) => ({ sheet: "Loop", row, column: 12, content: now })),
      ...SOUND.map((content, row) => ({ sheet: "Sound", row, column: 12, content })),
    ]);
    const before = sheets.read({ sheet: "Sound", row: 0, column: 12, rows: SOUND.length, columns: 1 }).formulas;
    const { damaged } = await findDamage(book, KNOWLEDGE);
    const came = await mendCells(book, ENGINE, damaged);
    const after = sheets.read({ sheet: "Loop", row: 0, column: 12, rows: FORMULAS.length, columns: 1 }).formulas;
    const letters = (text: string | undefined): string => (text ?? "").replace(/\s/g, "");
    expect(after.map(([text]) => letters(text))).toEqual(FORMULAS.map(({ now, meant }) => letters(meant ?? now)));
    const held = sheets.read({ sheet: "Sound", row: 0, column: 12, rows: SOUND.length, columns: 1 }).formulas;
    // A call that the engine doesn't know for its @ loses it; nothing else changes.
    expect(held.map(([text]) => text?.replace("@WARMBACK", "WARMBACK"))).toEqual(
      before.map(([text]) => text?.replace("@WARMBACK", "WARMBACK")),
    );
    const speed = came.filter(({ formula }) => formula === '=WARMBACK.PIPE.VELOCITY(40,"2 in")');
    expect(speed.length).toBeGreaterThan(20);
    for (const { outcome: one } of speed) expect("value" in one && one.value).toBeCloseTo(3.892, 2);
  });
});

test("In the preview, mending that is cancelled in the middle leaves every formula as it was", async () => {
  const sheets = startHeadless(loadFunctions(inject("build")), {
    sheets: [emptySheet("Loop"), emptySheet("Sound")],
    names: [],
  });
  const book = previewWorkbook(sheets);
  const lost = '=_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")';
  await book.write(Array.from({ length: 1_200 }, (_, row) => ({ sheet: "Loop", row, column: 0, content: lost })));
  const { damaged } = await findDamage(book, KNOWLEDGE);
  const [before, edits] = [sheets.data(), sheets.edits()];
  const ending = new AbortController();
  const onProgress = vi.fn((done: number) => done > 500 && ending.abort());
  const mending = mendCells(book, ENGINE, damaged, { signal: ending.signal, onProgress, slices: { slice: 0 } });
  await expect(mending).rejects.toBe(CANCELLED);
  expect(onProgress.mock.calls).toEqual([
    [500, 1_200],
    [1_000, 1_200],
  ]);
  await sheets.whenCalculated();
  expect(sheets.data()).toEqual(before);
  expect(sheets.edits()).toBe(edits);
  const onWritten = vi.fn();
  const outcomes = await mendCells(book, ENGINE, damaged, { onWritten });
  expect(onWritten).toHaveBeenCalledOnce();
  expect(outcomes.filter(({ outcome }) => "value" in outcome)).toHaveLength(1_200);
  sheets.undo();
  await sheets.whenCalculated();
  expect(sheets.data()).toEqual(before);
  sheets.dispose();
});

describe("In the stand-in for Excel, mending", () => {
  const on = onExcel(WEB, "Loop", "Sound");

  it("lists every damaged formula of the corpus and leaves the sound ones", async () => {
    const cells = (name: string) => sheetNamed(on.host.book, name).cells;
    FORMULAS.forEach(({ now }, row) =>
      cells("Loop").set(keyOf(row, 0), { formula: now, value: "#NAME?", error: true }),
    );
    SOUND.forEach((formula, row) => cells("Sound").set(keyOf(row, 0), { formula, value: 1 }));
    const { damaged, unmendable } = await findDamage(on.book, KNOWLEDGE);
    expect(new Set([...damaged, ...unmendable].map(({ address }) => address.sheet))).toEqual(new Set(["Loop"]));
    expect(damaged).toHaveLength(FORMULAS.filter(({ meant }) => meant !== undefined).length);
    expect(unmendable).toHaveLength(FORMULAS.filter(({ why }) => why !== undefined).length);
    await mendCells(on.book, ENGINE, damaged);
    FORMULAS.forEach(({ now, meant }, row) => expect(cells("Loop").get(keyOf(row, 0))?.formula).toBe(meant ?? now));
    SOUND.forEach((formula, row) => expect(cells("Sound").get(keyOf(row, 0))?.formula).toBe(formula));
  });

  it("makes calls typed as texts formulas in one undo step, under a text format too", async () => {
    const sheet = sheetNamed(on.host.book, "Loop");
    sheet.formats.push({ area: { row: 0, column: 0, rows: 1, columns: 1 }, name: "numberFormat", value: "@" });
    type(on.host, "Loop!A1", '=WARMBACK.PIPE.VELOCITY(40,"2 in")');
    type(on.host, "Loop!A2", '\'=WARMBACK.PIPE.VELOCITY(50,"2 in")');
    const { damaged } = await findDamage(on.book, KNOWLEDGE);
    expect(damaged.map(({ kind }) => kind)).toEqual(["text", "text"]);
    await mendCells(on.book, ENGINE, damaged);
    expect([0, 1].map((row) => sheet.cells.get(keyOf(row, 0))?.formula)).toEqual([
      '=WARMBACK.PIPE.VELOCITY(40,"2 in")',
      '=WARMBACK.PIPE.VELOCITY(50,"2 in")',
    ]);
    expect(formatAt(sheet, "A1", "numberFormat")).toBe("General");
    expect(on.host.undo.steps).toHaveLength(1);
  });

  it("leaves a protected sheet alone", async () => {
    const sheet = sheetNamed(on.host.book, "Loop");
    const lost = '=_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")';
    sheet.cells.set(keyOf(0, 0), { formula: lost, value: "#NAME?", error: true });
    sheet.protection = {};
    const { damaged, unmendable } = await findDamage(on.book, KNOWLEDGE);
    expect(damaged).toEqual([]);
    expect(unmendable[0]?.why).toMatch(/is protected/);
    expect(sheet.cells.get(keyOf(0, 0))?.formula).toBe(lost);
  });
});
