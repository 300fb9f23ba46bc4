/** Workbooks with calls of ours for tests of copies, made by code (invented: Fernhill Hall). */
import { strFromU8, unzipSync } from "fflate";
import { expect } from "vitest";
import { panelEngine } from "../../../src/taskpane/engine";
import { sessionLog } from "../../../src/workbook/callLog";
import { makeCopy, type CopyPlan, type FinishedCopy } from "../../../src/workbook/copy/handOver";
import { surveyBook, type Survey } from "../../../src/workbook/copy/survey";
import {
  cellContext,
  cellsFromRows,
  newWorkbook,
  openPackage,
  packageBytes,
  readBook,
  readStoredSheet,
  type FileCell,
  type NewName,
  type NewSheet,
  type NewSheetCell,
} from "../../../src/workbook/package";
import { parseCells } from "../../../src/workbook/reader/reference";
import { fullBook } from "../package/fullBook";
import { zipOf } from "../package/zipParts";

export const engine = panelEngine(sessionLog());

/** What a call gives, as a file stores it. */
export function resultOf(id: string, ...args: readonly (string | number)[]): number {
  const outcome = engine.call(id, args);
  if (!("value" in outcome) || typeof outcome.value !== "number") throw new Error(`${id} gives no number`);
  return outcome.value;
}

export const VELOCITY = resultOf("PIPE.VELOCITY", 40, "2 in");

export const formula = (text: string, value: NewSheetCell["value"] = null): NewSheetCell => ({ formula: text, value });

type Rows = Parameters<typeof cellsFromRows>[0];

export const sheet = (name: string, rows: Rows, more: Partial<NewSheet> = {}): NewSheet => ({
  name,
  cells: cellsFromRows(rows),
  ...more,
});

export async function bytesOf(sheets: readonly NewSheet[], names: readonly NewName[] = []): Promise<Uint8Array> {
  return packageBytes(await newWorkbook(sheets, names));
}

/** The workbook with every kind of part, with calls of ours on the sheet Loop. */
export function fullWithUs(): Uint8Array {
  const parts = fullBook();
  const path = "xl/worksheets/sheet2.xml";
  const text = String(parts[path]);
  const dropped = resultOf("PIPE.VELOCITY", 7, "2 in");
  const cells =
    `<row r="40"><c r="A40"><v>40</v></c><c r="B40"><f>_xldudf_WARMBACK_PIPE_VELOCITY(A40,"2 in")</f><v>${VELOCITY}</v></c>` +
    `<c r="C40"><f>B40*2</f><v>${VELOCITY * 2}</v></c></row>` +
    `<row r="41"><c r="B41"><f>_xldudf_WARMBACK_PIPE_VELOCITY(cfg!A1,"2 in")</f><v>${dropped}</v></c>` +
    `<c r="C41"><f>_xldudf_WARMBACK_PIPE_VELOCITY(Secret,"2 in")</f><v>${dropped}</v></c></row>`;
  const changed = text.replace("</sheetData>", `${cells}</sheetData>`);
  expect(changed).not.toBe(text);
  return zipOf({ ...parts, [path]: changed });
}

export async function surveyOf(bytes: Uint8Array): Promise<Survey> {
  const survey = await surveyBook(bytes, engine);
  if (survey === undefined) throw new Error("nothing uses us");
  return survey;
}

export const FACTS = { project: "Fernhill Hall (invented)", file: "bid.xlsx", date: "2026-11-26" };

export async function copyOf(bytes: Uint8Array, plan: Partial<CopyPlan> = {}): Promise<FinishedCopy> {
  const survey = await surveyOf(bytes);
  return makeCopy(survey, { choice: { sheets: survey.proposed }, others: "live", facts: FACTS, ...plan }, engine);
}

export interface ReadSheet {
  readonly cells: readonly FileCell[];
  at(address: string): FileCell | undefined;
  value(address: string): FileCell["value"] | undefined;
  /** All texts, in the file's order. */
  texts(): readonly string[];
}

export async function readSheets(bytes: Uint8Array): Promise<ReadonlyMap<string, ReadSheet>> {
  const pack = await openPackage(bytes);
  const book = await readBook(pack);
  const context = await cellContext(pack, book);
  const found = new Map<string, ReadSheet>();
  for (const { name, kind } of book.sheets) {
    const cells: FileCell[] = [];
    if (kind === "worksheet") await readStoredSheet(pack, book, name, context, (cell) => void cells.push(cell));
    const at = (address: string): FileCell | undefined => {
      const area = parseCells(address);
      return cells.find(({ row, column }) => row === area?.row && column === area.column);
    };
    const texts = () => cells.flatMap(({ value }) => (typeof value === "string" ? [value] : []));
    found.set(name, { cells, at, value: (address) => at(address)?.value, texts });
  }
  return found;
}

/** A sheet's lines as texts and numbers, from A on. */
export function linesOf({ cells }: ReadSheet): readonly (readonly unknown[])[] {
  const rows: unknown[][] = [];
  for (const { row, column, value } of cells) (rows[row] ??= [])[column] = value;
  return rows.map((line) => [...line].map((value) => value ?? ""));
}

export const partTexts = (bytes: Uint8Array): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
