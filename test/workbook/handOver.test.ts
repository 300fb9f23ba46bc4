/** The hand-over copy on the sheet engine with the built functions, and on grids in memory. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import ExcelJS from "exceljs";
import { emptySheet, type BookData } from "../../src/preview/file/bookData";
import { writeHandOver } from "../../src/preview/file/handOverFile";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { startHeadless } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import { panelEngine } from "../../src/taskpane/engine";
import { handOver, RECORD_COLUMNS, type HandOver } from "../../src/workbook/copy/handOver";
import { sessionLog } from "../../src/workbook/callLog";
import type { Area, CellWrite } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";
import { dependentCells } from "../../src/workbook/copy/dependents";
import { WORK_CANCELLED } from "../../src/workbook/timeSlices";
import { fakePort } from "./fakeWorkbook";

const engine = panelEngine(sessionLog());

const f = (formula: string, value: number | string = 1) => ({ formula, value });

describe("The cells that a copy takes values of", () => {
  const taken = async (cells: Parameters<typeof fakePort>[0], meanings: Readonly<Record<string, string>> = {}) => {
    const { book, meanings: known } = fakePort(cells);
    for (const [text, meaning] of Object.entries(meanings)) known.set(text, meaning);
    return (await dependentCells(book)).map(
      ({ address: { sheet, row, column } }) => `${sheet}!${String.fromCharCode(65 + column)}${String(row + 1)}`,
    );
  };

  test("a copy takes values of our cells and all that rely on them, over any number of steps and sheets", async () => {
    expect(
      await taken({
        Loop: { A1: f("=WARMBACK.POOL.AREA(B1)"), A2: f("=A1*2"), A3: f("=SUM(B1:B9)"), A4: f("=B1"), B1: 3 },
        Sum: { A1: f("=MAX(Loop!A2:A9)+1"), A2: f("=IF(A1>0,1,2)"), A3: f("=Loop!B1") },
      }),
    ).toEqual(["Loop!A1", "Loop!A2", "Sum!A1", "Sum!A2"]);
  });

  test("a copy takes values of cells that rely on a part of a spill of ours", async () => {
    const cells = { S: { A1: f("=WARMBACK.POOL.AREA(1)"), A2: 5, A3: 6, C1: f("=A3*2"), C2: f("=A4") } };
    expect(await taken(cells, { "A1#": "S!A1:A3" })).toEqual(["S!A1", "S!C1"]);
  });

  test("a copy takes values of cells whose references are unknown, but of none where nobody uses us", async () => {
    const unsure = { B1: f('=INDIRECT("A1")'), B2: f("=Rate*2"), B3: f("=OFFSET(A9,1,1)"), B4: f("=A9:INDEX(A:A,3)") };
    expect(await taken({ S: { A1: f("=WARMBACK.POOL.AREA(1)"), ...unsure, B5: f("=A8+1") } })).toEqual([
      "S!A1",
      "S!B1",
      "S!B2",
      "S!B3",
      "S!B4",
    ]);
    expect(await taken({ S: unsure })).toEqual([]);
  });

  test("a copy keeps formulas with a name of LET or of other cells", async () => {
    const cells = { S: { A1: f("=WARMBACK.POOL.AREA(1)"), B1: f("=LET(x,A8,x*2)"), B2: f("=Rate*2"), B3: f("=Area") } };
    expect(await taken(cells, { Rate: "S!C1", Area: "S!A1" })).toEqual(["S!A1", "S!B3"]);
  });
});

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

describe("A copy made on the sheet engine", { timeout: 60_000 }, () => {
  const book = startHeadless(loadFunctions(inject("build")), { sheets: [emptySheet(SHEET)], names: [] });
  const given: BookData[] = [];
  const workbook = previewWorkbook(book, async (data) => {
    given.push(data);
    return "Copy.xlsx";
  });
  let copy: HandOver;
  beforeAll(async () => {
    await workbook.write(
      Object.entries(CELLS).map(([at, content]): CellWrite => {
        const { row = 0, column = 0 } = parseCells(at) ?? {};
        return { sheet: SHEET, row, column, content };
      }),
    );
    const made = await handOver(workbook, engine);
    if (made === undefined) throw new Error("no copy");
    copy = made;
  });
  afterAll(() => book.dispose());
  const record = (row: number): readonly unknown[] =>
    RECORD_COLUMNS.map((_, at) => copy.record.cells[`${String.fromCharCode(65 + at)}${String(row)}`]?.content ?? "");

  test("a copy holds the values that the formulas have, at full precision, and whole tables", async () => {
    const [head] = copy.sheets;
    expect(copy.sheets).toHaveLength(1);
    expect(head?.title).toBe("Fernhill Hall values");
    const [{ values } = { values: [] }] = await workbook.read([
      { sheet: SHEET, row: 6, column: 1, rows: 1, columns: 1 },
    ]);
    const single = head?.areas.find(({ row, column }) => row === 6 && column === 1);
    expect(single?.values).toEqual(values);
    const table = head?.areas.find(({ row, column }) => row === 2 && column === 3);
    expect(table?.values).toHaveLength(8);
    expect(table?.values[0]).toHaveLength(7);
    expect(copy).toMatchObject({ cells: 5, ours: 4, stale: 0 });
  });

  test("a copy has a record with formula, inputs with units, value, unit, method, sources and edition", () => {
    const rows = Array.from({ length: 9 }, (_, at) => record(at + 4));
    const line = rows.find(([cell]) => cell === "'Fernhill Hall'!B7");
    expect(line?.[1]).toBe("=WARMBACK.PIPE.HEADLOSS(B3,B4,B5)");
    expect(line?.[2]).toContain("flow: 90 gpm\nsize: 2 in\nlength: 100 ft\nby default: ");
    expect(line?.[2]).toContain("water: 80 °F");
    expect(line?.[3]).toBeCloseTo(11.5, 1);
    expect(line?.[4]).toBe("ft");
    expect(line?.[5]).toMatch(/^PIPE.HEADLOSS: Friction head/);
    expect(line?.[6]).toContain("ASTM D1785");
    expect(line?.[7]).toMatch(/^Warning: /);
    expect(copy.record.cells["A2"]?.content).toContain(engine.edition);
    expect(record(3)).toEqual(RECORD_COLUMNS.map(([heading]) => heading));
    expect(copy.record.print.titleRows).toBe("1:3");
  });

  test("the record lists a call inside a formula, a refusal, a table and what relies on ours", () => {
    const rows = Array.from({ length: 12 }, (_, at) => record(at + 4));
    const line = (cell: string) => rows.find(([place]) => place === `'Fernhill Hall'!${cell}`);
    expect(line("B10")?.[2]).toMatch(/gives 8\.\d+ ft\/s$/);
    expect(line("B10")?.[4]).toBe("as on its sheet");
    expect(line("B11")?.[3]).toBe("#VALUE! length: must be at least 0 ft, got -5 ft");
    expect(line("D3")?.[3]).toMatch(/^table in D3:/);
    expect(line("B8")).toEqual([
      "'Fernhill Hall'!B8",
      "=B7*2",
      "",
      expect.any(Number),
      "as on its sheet",
      "relies on the cells above",
      "",
      "",
    ]);
    expect(line("B9")).toBeUndefined();
  });

  test("the record refers to the cell that has the same call before", async () => {
    await workbook.write([{ sheet: SHEET, row: 20, column: 0, content: '=WARMBACK.PIPE.HEADLOSS(90,"2 in",100)' }]);
    const again = await handOver(workbook, engine);
    const cells = Object.values(again?.record.cells ?? {}).map(({ content }) => content);
    expect(cells.filter((content) => content === "as 'Fernhill Hall'!B7")).toHaveLength(3);
    await workbook.write([{ sheet: SHEET, row: 20, column: 0, content: null }]);
  });

  test("no copy is made where it was cancelled while the host was read, at whatever step", async () => {
    const steps: string[] = [];
    const ended = async (at: number): Promise<void> => {
      const ending = new AbortController();
      let asked = 0;
      const after = <T>(name: string, answer: T): T => {
        if (++asked === at) ending.abort();
        if (at > 99) steps.push(name);
        return answer;
      };
      const host = {
        ...workbook,
        sheets: async () => after("sheets", await workbook.sheets()),
        read: async (areas: readonly Area[]) => after("read", await workbook.read(areas)),
      };
      const made = handOver(host, engine, { signal: ending.signal });
      if (at > 99) expect(await made).toEqual(copy);
      else await expect(made, String(at)).rejects.toBe(WORK_CANCELLED);
    };
    await ended(100);
    expect(steps).toEqual(["sheets", "read", "read", "sheets", "read"]);
    for (const at of steps.keys()) await ended(at + 1);
  });

  test("a copy is a workbook of its own: values and what relies on them, other formulas, record; the live one stays", async () => {
    expect(await workbook.handOver(copy)).toBe("the file Copy.xlsx");
    const [sheet, last] = given[0]?.sheets ?? [];
    const cell = (at: string) => {
      const area = parseCells(at);
      return sheet?.cells.find(({ row, column }) => row === area?.row && column === area.column);
    };
    expect(cell("B7")?.formula).toBeUndefined();
    expect(cell("B8")).toMatchObject({ value: expect.any(Number) as number });
    expect(cell("B8")?.formula).toBeUndefined();
    expect(cell("B9")?.formula).toBe("=B3+B5");
    expect(cell("E5")?.value).toEqual(expect.anything());
    expect(sheet?.cells.some(({ formula }) => formula?.includes("WARMBACK"))).toBe(false);
    expect(last?.name).toBe("Record");
    expect(last?.cells.some(({ formula }) => formula !== undefined)).toBe(false);
    const [live] = await workbook.read([{ sheet: SHEET, row: 6, column: 1, rows: 2, columns: 1 }]);
    expect(live?.formulas).toEqual([["=WARMBACK.PIPE.HEADLOSS(B3,B4,B5)"], ["=B7*2"]]);
  });
});

describe("A starter sheet's copy as a file", { timeout: 60_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), "hand-over-"));
  const file = join(folder, "copy.xlsx");
  afterAll(() => rmSync(folder, { recursive: true }));

  test("a starter sheet's copy as a file keeps styles, formats, widths and print set-up and holds no call of ours", async () => {
    await writeHandOver(inject("build"), "recovery-sizing", file);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(file);
    const [sheet, record] = book.worksheets;
    const formulas: string[] = [];
    for (const each of book.worksheets)
      each.eachRow((row) => row.eachCell(({ formula }) => void (formula && formulas.push(formula))));
    expect(formulas.filter((text) => /warmback/i.test(text))).toEqual([]);
    expect(sheet?.name).toBe("Recovery sizing");
    expect(sheet?.pageSetup).toMatchObject({
      fitToPage: true,
      fitToWidth: 1,
      printTitlesRow: expect.stringContaining("1:") as string,
    });
    expect(sheet?.getColumn(1).width).toBeGreaterThan(20);
    expect(record?.pageSetup).toMatchObject({ orientation: "landscape", fitToPage: true, printTitlesRow: "1:3" });
    expect(sheet?.getRow(2).getCell(2).value).toMatch(/^OK$|^LOOK/);
    expect(sheet?.getRow(2).getCell(2).font.bold).toBe(true);
  });
});
