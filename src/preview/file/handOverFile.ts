import { readFile, stat, writeFile } from "node:fs/promises";
import { basename } from "node:path";
import { STARTER_SHEETS } from "../../sheets";
import { panelEngine } from "../../taskpane/engine";
import { sessionLog } from "../../workbook/callLog";
import { makeCopy, type FinishedCopy } from "../../workbook/copy/handOver";
import { errorSentence, someCells } from "../../workbook/copy/readMe";
import { surveyBook, type Survey } from "../../workbook/copy/survey";
import { listHidden, type HiddenItem } from "../../workbook/package";
import type { Address } from "../../workbook/port";
import { loadFunctions } from "../host/loadFunctions";
import { startHeadless } from "../univer/start";
import type { BookData } from "./bookData";
import { formulaTexts, type FormulaTexts } from "./formulaTexts";
import { starterData } from "./starterBook";
import { readXlsx, writeXlsx } from "./xlsx";

/** Hand-over copies from the command line, by the code of the panel. */

export interface HandOverOptions {
  /** The sheets to hand over; those with our functions and what they refer to, where none is named. */
  readonly sheets?: readonly string[];
  /** Ids of hidden items to keep, or to drop, against their default. */
  readonly keep?: readonly string[];
  readonly drop?: readonly string[];
  /** All formulas become values. */
  readonly freezeOthers?: boolean;
  readonly project?: string;
  /** 2026-11-26; today where missing. */
  readonly date?: string;
  /** Works a file out in the sheet engine first; else the values that it holds are handed over. */
  readonly recalculate?: boolean;
  /** Makes the copy in spite of cells that differ or can't be read. */
  readonly anyway?: boolean;
}

const dataOf = async (from: string, texts: FormulaTexts): Promise<BookData> => {
  const starter = STARTER_SHEETS.find(({ id }) => id === from);
  if (starter === undefined) {
    const bytes = await readFile(from);
    return readXlsx(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength), texts);
  }
  const { sheet, names } = starterData(starter, starter.name, new Set());
  return { sheets: [sheet], names };
};

/** The workbook as a file, worked out in the sheet engine. */
const calculated = async (functions: string, from: string): Promise<Uint8Array> => {
  const set = loadFunctions(functions);
  const texts = formulaTexts(set.namespace, set.metadata);
  const book = startHeadless(set, await dataOf(from, texts));
  try {
    await book.whenCalculated();
    return new Uint8Array(await writeXlsx(book.data(), texts));
  } finally {
    book.dispose();
  }
};

const isStarter = (from: string): boolean => STARTER_SHEETS.some(({ id }) => id === from);

const isSameFile = async (from: string, to: string): Promise<boolean> => {
  const [source, target] = await Promise.all([from, to].map((path) => stat(path).catch(() => undefined)));
  return source !== undefined && target !== undefined && source.ino === target.ino && source.dev === target.dev;
};

const refuseDoubtful = ({ differing, unreadable, cells }: Survey): void => {
  const without = cells.filter(({ value }) => value === null).map(({ address }) => address);
  const said = (those: readonly Address[], what: string): readonly string[] =>
    those.length === 0 ? [] : [`${those.length} ${what}: ${someCells(those)}`];
  const doubts = [
    ...said(without, "cells have a formula but no stored value (--recalculate works them out)"),
    ...said(differing, "cells hold another value than their formula gives"),
    ...said(unreadable, "cells hold a formula that can't be read in full"),
  ];
  if (doubts.length > 0) throw new Error(`${doubts.join("; ")}. --anyway makes the copy all the same`);
};

const NO_USE = "no cell of this workbook uses these functions";

const surveyed = async (functions: string, from: string, recalculate: boolean): Promise<Survey> => {
  const bytes =
    recalculate || isStarter(from) ? await calculated(functions, from) : new Uint8Array(await readFile(from));
  const survey = await surveyBook(bytes, panelEngine(sessionLog()));
  if (survey === undefined) throw new Error(NO_USE);
  return survey;
};

/** What can be chosen: sheets, and what is hidden. */
export const listForHandOver = async (
  functions: string,
  from: string,
  { sheets, recalculate = false }: HandOverOptions = {},
): Promise<{ readonly survey: Survey; readonly hidden: readonly HiddenItem[] }> => {
  const survey = await surveyed(functions, from, recalculate);
  const { facts, frames } = survey.stored;
  return { survey, hidden: await listHidden(survey.pack, facts, sheets ?? survey.proposed, {}, frames) };
};

const unknownId = (ids: readonly string[], hidden: readonly HiddenItem[]): string | undefined =>
  ids.find((id) => !hidden.some((item) => item.id === id));

const sentenceOf = ({ summary, report, added }: FinishedCopy, to: string): string => {
  const { ours, dependent, cutOff, othersFrozen } = summary;
  const kept = report.sheets.flatMap(({ name, reasons }) =>
    reasons.length === 0 ? [] : [`${name} is kept: ${reasons.join(", ")}.`],
  );
  return [
    `Written: ${to}, with the sheets ${[...summary.sheets, ...added].join(", ")}.`,
    ...kept,
    `${ours + dependent + othersFrozen} formulas became values, ${ours} of them with calls; ${cutOff} more since they referred to something left out.`,
    errorSentence(summary),
    ...report.sentences,
  ].join("\n");
};

/**
 * Writes the hand-over copy of a workbook.
 * @param functions folder of functions.js and functions.json
 * @param from a file, or a starter sheet's id
 * @param to the file to write: never the source
 * @returns sentences on what was written
 */
export const writeHandOver = async (
  functions: string,
  from: string,
  to: string,
  options: HandOverOptions = {},
): Promise<string> => {
  if (!isStarter(from) && (await isSameFile(from, to)))
    throw new Error(`${to} is the workbook itself: give the copy another name`);
  const { survey, hidden } = await listForHandOver(functions, from, options);
  const { keep = [], drop = [], project = "", date = new Date().toISOString().slice(0, 10) } = options;
  const unknown = unknownId([...keep, ...drop], hidden);
  if (unknown !== undefined) throw new Error(`nothing hidden is called ${unknown}: --list shows what there is`);
  if (options.anyway !== true) refuseDoubtful(survey);
  const copy = await makeCopy(
    survey,
    {
      choice: { sheets: options.sheets ?? survey.proposed, keep: new Set(keep), drop: new Set(drop) },
      others: options.freezeOthers === true ? "frozen" : "live",
      facts: { project, file: isStarter(from) ? "" : basename(from), date },
    },
    panelEngine(sessionLog()),
  );
  await writeFile(to, copy.bytes);
  return sentenceOf(copy, to);
};
