/** Copies from the sheet engine with the built functions: of what Save would write, and from the command line. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { emptySheet } from "../../../src/preview/file/bookData";
import { formulaTexts } from "../../../src/preview/file/formulaTexts";
import { listForHandOver, writeHandOver } from "../../../src/preview/file/handOverFile";
import { writeXlsx } from "../../../src/preview/file/xlsx";
import { loadFunctions } from "../../../src/preview/host/loadFunctions";
import { previewWorkbook } from "../../../src/preview/host/previewWorkbook";
import { startHeadless } from "../../../src/preview/univer/start";
import { makeCopy } from "../../../src/workbook/copy/handOver";
import type { CellWrite } from "../../../src/workbook/port";
import { parseCells } from "../../../src/workbook/reader/reference";
import { isCellFault } from "../../../src/workbook/port";
import { bytesOf, engine, FACTS, formula, fullWithUs, linesOf, readSheets, sheet, surveyOf, VELOCITY } from "./books";

const SHEET = "Fernhill Hall";

const CELLS: Readonly<Record<string, string | number>> = {
  A1: "Fernhill Hall (invented): pool loop",
  B3: 90,
  B4: "2 in",
  B5: 100,
  B7: "=WARMBACK.PIPE.HEADLOSS(B3,B4,B5)",
  B8: "=B7*2",
  B9: "=B3+B5",
  B10: '=IFERROR(WARMBACK.PIPE.VELOCITY(B3,B4,"40"),"none")',
  B11: '=WARMBACK.PIPE.HEADLOSS(B3,"2 in",-5)',
  D3: '=WARMBACK.CYCLE.STATES("R-410A",45,105)',
};

describe("A copy of a workbook of the sheet engine", { timeout: 60_000 }, () => {
  const set = loadFunctions(inject("build"));
  const texts = formulaTexts(set.namespace, set.metadata);
  const book = startHeadless(set, { sheets: [emptySheet(SHEET)], names: [] });
  const delivered: { bytes: Uint8Array; name: string }[] = [];
  const workbook = previewWorkbook(book, {
    name: () => "loop.xlsx",
    savedBytes: async () => new Uint8Array(await writeXlsx(book.data(), texts)),
    deliver: async (bytes, name) => {
      delivered.push({ bytes, name });
      return `the file ${name}`;
    },
  });
  beforeAll(async () => {
    await workbook.write(
      Object.entries(CELLS).map(([at, content]): CellWrite => {
        const { row = 0, column = 0 } = parseCells(at) ?? {};
        return { sheet: SHEET, row, column, content };
      }),
    );
  });
  afterAll(() => book.dispose());

  test("holds the values that the cells have, whole tables too, and the live workbook stays", async () => {
    const survey = await surveyOf(await workbook.documentBytes());
    expect(survey.differing).toEqual([]);
    const copy = await makeCopy(survey, { choice: { sheets: survey.proposed }, others: "live", facts: FACTS }, engine);
    const copied = (await readSheets(copy.bytes)).get(SHEET)!;
    const area = { sheet: SHEET, row: 0, column: 0, rows: 12, columns: 12 };
    const [live] = await workbook.read([area]);
    for (const [row, line] of (live?.values ?? []).entries())
      for (const [column, value] of line.entries()) {
        const cell = copied.cells.find((one) => one.row === row && one.column === column);
        const plain = isCellFault(value) ? { code: value.code } : value;
        expect(cell?.value ?? "", `${row},${column}`).toEqual(plain ?? "");
      }
    expect(copied.cells.filter((cell) => cell.formula !== undefined).map(({ row, column }) => [row, column])).toEqual([
      [8, 1],
    ]);
    expect(copy.summary).toMatchObject({ ours: 4, dependent: 1, live: 1 });
    expect(live?.formulas[6]?.[1]).toBe("=WARMBACK.PIPE.HEADLOSS(B3,B4,B5)");
    const record = linesOf((await readSheets(copy.bytes)).get("Record")!);
    expect(record.find(([cell]) => cell === "'Fernhill Hall'!D3")?.[4]).toMatch(/^table in D3:J10$/);
  });

  test("is delivered as a file", async () => {
    expect(await workbook.documentName()).toBe("loop.xlsx");
    expect(await workbook.deliverCopy(Uint8Array.from([1]), "x.xlsx")).toBe("The copy is the file x.xlsx.");
    expect(delivered.at(-1)?.name).toBe("x.xlsx");
  });
});

describe("hand-over on the command line", { timeout: 90_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), "hand-over-"));
  const at = (name: string): string => join(folder, name);
  const write = (from: string, to: string, options?: Parameters<typeof writeHandOver>[3]) =>
    writeHandOver(inject("build"), from, to, { date: "2026-11-26", ...options });
  const written = (name: string): Uint8Array => new Uint8Array(readFileSync(at(name)));
  beforeAll(() => writeFileSync(at("full.xlsx"), fullWithUs()));
  afterAll(() => rmSync(folder, { recursive: true }));

  test("copies a starter sheet that the engine has worked out first", async () => {
    await write("recovery-sizing", at("starter.xlsx"), { project: "Fernhill Hall" });
    const sheets = await readSheets(written("starter.xlsx"));
    expect([...sheets.keys()]).toEqual(["Recovery sizing", "Read me", "Record", "For the supplier"]);
    expect(sheets.get("Recovery sizing")?.value("B2")).toMatch(/^OK$|^LOOK/);
    const formulas = [...sheets.values()].flatMap(({ cells }) => cells.filter((cell) => cell.formula !== undefined));
    expect(formulas.filter((cell) => /warmback/i.test(JSON.stringify(cell.formula)))).toEqual([]);
  });

  test("hands over the file's own bytes: sheets and hidden things as the options say", async () => {
    const { hidden, survey } = await listForHandOver(inject("build"), at("full.xlsx"), { sheets: ["Loop"] });
    expect(survey.proposed).toEqual(["Loop", "cfg"]);
    expect(hidden.map(({ id }) => id)).toContain("comments:Loop");
    const told = await write(at("full.xlsx"), at("copy.xlsx"), {
      sheets: ["Loop"],
      keep: ["comments:Loop"],
      drop: ["rows:Loop:24-24"],
      freezeOthers: true,
      project: "Fernhill Hall (invented)",
    });
    expect(told).toContain("Prices is kept: a validation on Loop needs it.");
    expect(told).toContain("1 cell shows an error in this copy, 1 on the same sheets of the original.");
    const text = Buffer.from(written("copy.xlsx")).toString("latin1");
    expect(text).toContain("comments1.xml");
    const sheets = await readSheets(written("copy.xlsx"));
    expect([...sheets.keys()]).toEqual(["Prices", "Loop", "Read me", "Record", "For the supplier"]);
    expect([...sheets.values()].flatMap(({ cells }) => cells.filter((cell) => cell.formula !== undefined))).toEqual([]);
  });

  test("refuses to write over its source, by whatever path", async () => {
    const before = written("full.xlsx");
    for (const to of ["full.xlsx", "./full.xlsx", "../" + folder.split("/").at(-1)! + "/full.xlsx"])
      await expect(write(at("full.xlsx"), `${folder}/${to}`), to).rejects.toThrow("is the workbook itself");
    expect(written("full.xlsx")).toEqual(before);
  });

  test("asks for --anyway where cells differ or have no value, and names them", async () => {
    const rows = [
      [40, formula('_xldudf_WARMBACK_PIPE_VELOCITY(A1,"2 in")', 99)],
      [40, formula('_xldudf_WARMBACK_PIPE_VELOCITY(A2,"2 in")')],
    ];
    writeFileSync(at("doubt.xlsx"), await bytesOf([sheet("Loop", rows)]));
    await expect(write(at("doubt.xlsx"), at("out.xlsx"))).rejects.toThrow(
      /1 cells have a formula but no stored value .*: Loop!B2; 2 cells hold another value .*: Loop!B1, Loop!B2\. --anyway/,
    );
    await write(at("doubt.xlsx"), at("out.xlsx"), { anyway: true });
    expect((await readSheets(written("out.xlsx"))).get("Loop")?.value("B1")).toBe(99);
    await write(at("doubt.xlsx"), at("out.xlsx"), { recalculate: true });
    expect((await readSheets(written("out.xlsx"))).get("Loop")?.value("B1")).toBeCloseTo(VELOCITY, 12);
  });

  test("refuses a hidden thing that there isn't, and a workbook without these functions", async () => {
    await expect(write(at("full.xlsx"), at("x.xlsx"), { keep: ["comments:Nowhere"] })).rejects.toThrow(
      "nothing hidden is called comments:Nowhere",
    );
    writeFileSync(at("plain.xlsx"), await bytesOf([sheet("S", [[1]])]));
    await expect(write(at("plain.xlsx"), at("x.xlsx"))).rejects.toThrow(
      "no cell of this workbook uses these functions",
    );
  });
});
