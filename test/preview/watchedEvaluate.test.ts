/** The evaluator as built, with its worker thread: one answer for every formula, whatever it does to the sheet engine. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { engineThread, THREAD_LIMITS } from "../../src/preview/cli/engineThread";
import type { EngineThread } from "../../src/preview/cli/engineThread";
import type { Evaluated } from "../../src/preview/cli/evaluate";
import { evaluateFile, evaluateLines } from "../../src/preview/cli/watchedEvaluate";
import { emptySheet } from "../../src/preview/file/bookData";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { writeXlsx } from "../../src/preview/file/xlsx";
import { plainBook, zipOf } from "../workbook/package/zipParts";

const worker = () => join(inject("build"), "evaluateWorker.cjs");

/** Two seconds, so that what overruns ends soon. */
const SHORT = { ...THREAD_LIMITS, formulaMs: 2_000 };

/** Work that no argument's limit stops: half a million turns that count to 1,000 each. */
const ENDLESS = "=SUM(MAKEARRAY(700,700,LAMBDA(r,c,SUM(SEQUENCE(1000)))))";
const OVERRUN = `#CALC!: not worked out within 2 s of processor time, the limit of one formula`;

let engine: EngineThread;
beforeAll(() => {
  engine = engineThread(worker(), SHORT);
});
afterAll(() => engine.end());

const answers = async (lines: readonly string[]): Promise<readonly Evaluated[]> => {
  const found: Evaluated[] = [];
  await evaluateLines(engine, lines, ({ results }) => void found.push(...results));
  return found;
};

const shown = ({ value, error }: Evaluated): unknown =>
  error === undefined ? value : `${error.code}: ${error.message}`;

describe("A formula that ended the run before", () => {
  test.each([
    ["3,500 terms", `=${new Array(3_500).fill("1").join("+")}`, 3500],
    ["4,000 signs", `=${"-".repeat(4_000)}1`, 1],
    ["4,000 brackets", `=${"(".repeat(4_000)}1${")".repeat(4_000)}`, 1],
    ["1,300 calls in each other", `=${"ABS(".repeat(1_300)}1${")".repeat(1_300)}`, 1],
    [
      "a picture",
      '=IMAGE("https://example.com/a.png")',
      "#CALC!: IMAGE: gives a picture, which no value can stand for",
    ],
  ])("%s: it has an answer, and so has the next", async (_what, formula, value) => {
    expect((await answers([formula, "=2+2"])).map(shown)).toEqual([value, 4]);
  });
});

describe("A formula that overruns its time", () => {
  test("ends with a message that names the limit; the others around it have their answers, in order", async () => {
    const before = engine.starts();
    expect((await answers(["=1+1", ENDLESS, "=1+2", ENDLESS, "=1+3"])).map(shown)).toEqual([2, OVERRUN, 3, OVERRUN, 4]);
    expect(engine.starts() - before).toBeLessThanOrEqual(2);
  });

  test("in a workbook is an error that dependent cells pass on", async () => {
    const folder = mkdtempSync(join(tmpdir(), "evaluate-"));
    const path = join(folder, "book.xlsx");
    const cell = (row: number, formula: string) => ({ row, column: 0, value: null, formula });
    const cells = [cell(0, "=1+1"), cell(1, ENDLESS), cell(2, "=A2+1"), cell(3, "=A1+1")];
    const texts = formulaTexts("WARMBACK", { functions: [] });
    try {
      const bytes = await writeXlsx({ sheets: [{ ...emptySheet("S"), cells }], names: [] }, texts);
      writeFileSync(path, new Uint8Array(bytes));
      const { results } = await evaluateFile(engine, path);
      expect(results.map(({ address }) => address)).toEqual(["S!A1", "S!A2", "S!A3", "S!A4"]);
      expect(results.map(({ value, error }) => error?.code ?? value)).toEqual([2, "#CALC!", "#CALC!", 3]);
      expect(results[1]?.error?.message).toMatch(/within 2 s/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

test("The program prints one line for each formula and ends well, with an overrun among them", () => {
  const input = ["=1+1", '=IMAGE("a")', "=BESSELI(1E+308,1E+308)", "=[", "=2+2"].join("\n");
  const { stdout, status } = spawnSync(process.execPath, [join(inject("build"), "evaluate.cjs")], {
    input,
    encoding: "utf8",
  });
  const lines = stdout.trim().split("\n");
  expect(status).toBe(0);
  expect(lines.map((line) => (JSON.parse(line) as Evaluated).formula)).toEqual(input.split("\n"));
});

describe("A workbook given to the program", () => {
  const run = (cells: string, ...more: string[]) => {
    const folder = mkdtempSync(join(tmpdir(), "evaluate-"));
    try {
      const path = join(folder, "book.xlsx");
      writeFileSync(path, zipOf(plainBook({ S: `<sheetData><row r="1">${cells}</row></sheetData>` })));
      const program = join(inject("build"), "evaluate.cjs");
      const { stdout, stderr, status } = spawnSync(process.execPath, [program, path, ...more], { encoding: "utf8" });
      const lines = stdout.trim().split("\n");
      return { results: lines.map((line) => JSON.parse(line) as Evaluated), stderr, status };
    } finally {
      rmSync(folder, { recursive: true });
    }
  };
  const KEPT = '<c r="B1"><f>[1]Prices!B4</f><v>19</v></c><c r="C1"><f>B1*A1</f><v>38</v></c>';

  test("has stored results marked, and ends well where all cells agree with the file", () => {
    const { results, stderr, status } = run(`<c r="A1"><f>1+1</f><v>2</v></c>${KEPT}`, "--strict");
    expect(results).toEqual([
      { address: "S!A1", formula: "=1+1", value: 2, cautions: [] },
      { address: "S!B1", formula: "=[1]Prices!B4", value: 19, stored: true, cautions: [] },
      { address: "S!C1", formula: "=B1*A1", value: 38, cautions: [] },
    ]);
    expect(stderr).toBe("can't be read here: references to other workbooks; stored results: S!B1\n");
    expect(status).toBe(0);
  });

  test("ends with 3 under --strict where a cell differs by more than 1e-9 of its size, and names it", () => {
    const cells = '<c r="A1"><f>1/3</f><v>0.33333333334</v></c><c r="B1"><f>1+1</f><v>2.000001</v></c>';
    const { stderr, status } = run(cells, "--strict");
    expect(stderr).toBe("1 cell differs from what the file last showed: S!B1 (file 2.000001, here 2)\n");
    expect(status).toBe(3);
    expect(run(cells).status).toBe(0);
  });

  test("isn't held to a value that changes at every calculation", () => {
    const { stderr, status } = run('<c r="A1"><f>TODAY()</f><v>40000</v></c>', "--strict");
    expect(stderr).toBe("at every calculation another value, which isn't compared: S!A1\n");
    expect(status).toBe(0);
  });
});
