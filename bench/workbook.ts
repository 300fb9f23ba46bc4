/**
 * What the commands over a large workbook cost: 20 sheets of 5,000 formulas, one in ten with a call of ours. For each
 * command the processor time and that of the longest task, during which the page can't answer. Opening, scanning, mending and saving
 * run in the preview's sheet engine, mending also in the stand-in for Excel.
 * Run: npm run bench workbook (after a build). Target: 5 s, tasks of 200 ms.
 */
import { excelWorkbook } from "../src/workbook/excel/excelWorkbook";
import { excelHost, install, sheetNamed, WEB } from "../test/excelHost";
import { keyOf } from "../test/excelHost/model/workbook";
import { filesHere } from "../test/preview/files";
import { loadFunctions } from "../src/preview/host/loadFunctions";
import { previewWorkbook } from "../src/preview/host/previewWorkbook";
import { emptySheet } from "../src/preview/file/bookData";
import { formulaTexts } from "../src/preview/file/formulaTexts";
import { workbookFile } from "../src/preview/file/workbookFile";
import { startHeadless } from "../src/preview/univer/start";
import { panelEngine } from "../src/taskpane/engine";
import { sessionLog } from "../src/workbook/callLog";
import { makeCopy } from "../src/workbook/copy/handOver";
import { surveyBook } from "../src/workbook/copy/survey";
import { findDamage } from "../src/workbook/mend/damage";
import { mendKnowledge } from "../src/workbook/mend/knowledge";
import { mendCells } from "../src/workbook/mend/mend";
import { listHidden, newWorkbook, packageBytes } from "../src/workbook/package";
import type { Workbook } from "../src/workbook/port";
import { scanner } from "../src/workbook/scan/scan";
import { FORMULA_COUNT, largeSheets, ROWS, sheetName, SHEETS } from "./largeBook";
import { costOf } from "./taskTimes";

const FOLDER = process.argv[2] ?? "dist";
const engine = panelEngine(sessionLog());
const knowledge = mendKnowledge(engine.catalogue);
const COLUMNS = [44, 10, 18] as const;

function row(...texts: readonly string[]): void {
  console.log(
    texts.map((text, at) => (at === 0 ? text.padEnd(COLUMNS[0]) : text.padStart(COLUMNS[at] ?? 12))).join(""),
  );
}

/** Runs a step and prints its row. */
async function timed<T>(what: string, step: () => Promise<T>): Promise<T> {
  const { result, processor, longest } = await costOf(step);
  row(what, processor.toFixed(2), longest.toFixed(0));
  return result;
}

async function handOver(bytes: Uint8Array): Promise<void> {
  const survey = await timed("hand over: survey", () => surveyBook(bytes, engine));
  if (survey === undefined) throw new Error("the workbook has no call of ours");
  const { pack, proposed, stored } = survey;
  await timed("hand over: list of what is hidden", () => listHidden(pack, stored.facts, proposed, {}, stored.frames));
  const facts = { project: "Fernhill Hall (invented)", file: "large.xlsx", date: "2026-11-26" };
  await timed("hand over: copy", () =>
    makeCopy(survey, { choice: { sheets: survey.proposed }, others: "live", facts }, engine),
  );
}

/** A tenth of all formulas lost their functions. */
const BROKEN = FORMULA_COUNT / 10;
const lost = (at: number): string => `=_xldudf_WARMBACK_PIPE_VELOCITY(A${at + 1},"2 in")`;

async function mend(book: Workbook, where: string): Promise<void> {
  const { damaged } = await timed(`mend in ${where}: list`, () => findDamage(book, knowledge));
  const outcomes = await timed(`mend in ${where}: ${damaged.length} cells`, () => mendCells(book, engine, damaged));
  if (outcomes.length !== BROKEN) throw new Error(`${outcomes.length} cells were mended, not ${BROKEN}`);
}

async function mendInExcel(): Promise<void> {
  const excel = excelHost(WEB, ["Loop"]);
  const restore = install(excel);
  const { cells } = sheetNamed(excel.host.book, "Loop");
  for (let at = 0; at < BROKEN; at++) {
    cells.set(keyOf(at, 0), { formula: "", value: 20 + (at % 97) });
    // No two of them can be written together.
    cells.set(keyOf(at, 1 + (at % 2)), { formula: lost(at), value: "#NAME?", error: true });
  }
  await mend(excelWorkbook(), "the stand-in for Excel");
  restore();
}

async function inThePage(bytes: Uint8Array): Promise<void> {
  const functions = loadFunctions(FOLDER);
  const sheets = startHeadless(functions, { sheets: [emptySheet("Sheet1")], names: [] });
  await sheets.whenCalculated();
  const book = previewWorkbook(sheets);
  const file = workbookFile(sheets, formulaTexts(functions.namespace, functions.metadata), filesHere());
  const report = await timed("open", () => file.open(bytes));
  if (report.differing.length > 0) throw new Error(`${report.differing.length} cells differ from the file`);
  await timed("scan", () => scanner(book, engine).scan());
  await timed("save unchanged", () => file.save());
  await book.write([{ sheet: sheetName(0), row: 0, column: 0, content: 50 }]);
  await timed("save with one changed input", () => file.save());
  const inputs = Array.from({ length: SHEETS * ROWS }, (_, at) => ({
    sheet: sheetName(at % SHEETS),
    row: Math.floor(at / SHEETS),
    column: 0,
    content: 21.5 + (at % 89),
  }));
  await timed(`write ${inputs.length} inputs, calculate all`, () => book.write(inputs));
  await timed(`save ${FORMULA_COUNT} new results`, () => file.save());
  await book.write(
    Array.from({ length: BROKEN }, (_, at) => ({
      sheet: sheetName(0),
      row: at >> 1,
      column: 12 + (at % 2),
      content: lost(at >> 1),
    })),
  );
  await mend(book, "the page");
  sheets.dispose();
}

async function main(): Promise<void> {
  row(`${FORMULA_COUNT.toLocaleString("en")} formulas on 20 sheets`, "CPU s", "longest task ms");
  const bytes = await packageBytes(await newWorkbook(largeSheets(engine)));
  const only = process.argv[3] ?? "";
  if ("hand over".includes(only)) await handOver(bytes);
  if ("excel".includes(only)) await mendInExcel();
  if ("page".includes(only)) await inThePage(bytes);
}

void main();
