/**
 * Random workbook files and random commands over them: each ends in a result or a sentence within its time, never in a
 * crash, and what is saved can be opened again. 12 files; 400 with VERIFY_FULL=1. The seed is fixed.
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { workbookFile, type WorkbookFile } from "../../src/preview/file/workbookFile";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { storedFile } from "../../src/workbook/compare/storedSheets";
import { storedWorkbook } from "../../src/workbook/compare/storedWorkbook";
import { surveyBook } from "../../src/workbook/copy/survey";
import { openPackage, readBook } from "../../src/workbook/package";
import type { Workbook } from "../../src/workbook/port";
import { filesHere } from "../preview/files";
import { fixtureSet, newBook } from "../preview/support";
import { SMALL } from "../workbook/contractSheets";
import { panelEngine } from "../../src/taskpane/engine";
import { sessionLog } from "../../src/workbook/callLog";
import { mendAll, scanAll } from "../workbook/largeBooks";
import { type Command, commandLists, workbookBytes } from "./workbookPackages";

const FULL = process.env["VERIFY_FULL"] === "1";
const RUNS = FULL ? 400 : 12;
const SEED = 20_260_611;
/** Processor time, hundreds of times what most need; real time counts other work on the machine too. */
const COMMAND_MS = 20_000;
const LOOK_EVERY_MS = 250;

const processorMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

const KNOWLEDGE = { known: new Set(["PIPE.HEADLOSS"]), isSingle: () => true, mostArguments: () => undefined };
const COPY_ENGINE = panelEngine(sessionLog());
const texts = formulaTexts("WARMBACK", fixtureSet().metadata);

interface Opened {
  readonly sheets: SheetBook;
  readonly book: Workbook;
  readonly file: WorkbookFile;
  readonly bytes: Uint8Array;
}

const RUN: Readonly<Record<Command, (opened: Opened) => Promise<unknown>>> = {
  scan: ({ book }) => scanAll(book),
  mend: ({ book }) => mendAll(book),
  survey: ({ bytes }) => surveyBook(bytes, COPY_ENGINE),
  compare: async ({ bytes }) => storedWorkbook(await storedFile(bytes, KNOWLEDGE)).sheets(),
  edit: async ({ sheets }) => {
    const [first] = sheets.sheets();
    if (first === undefined) return;
    sheets.write([
      { sheet: first.name, row: 0, column: 0, content: 41 },
      { sheet: first.name, row: 4, column: 2, content: "=A1*2" },
    ]);
    await sheets.whenCalculated();
  },
  insert: ({ book }) => book.insert(SMALL),
  save: async ({ file }) => readBook(await openPackage(await file.savedBytes())),
};

/** The outcome in a word; an error of the program itself is thrown on, and so is what overruns. */
async function outcomeOf(what: string, run: () => Promise<unknown>): Promise<"done" | "refused"> {
  const began = processorMs();
  let timer: NodeJS.Timeout | undefined;
  const overrun = new Promise<never>((_, reject) => {
    timer = setInterval(() => {
      if (processorMs() - began > COMMAND_MS)
        reject(new RangeError(`${what}: not done within ${String(COMMAND_MS)} ms of processor time`));
    }, LOOK_EVERY_MS);
  });
  try {
    await Promise.race([run(), overrun]);
    return "done";
  } catch (thrown) {
    const isSentence = thrown instanceof Error && thrown.constructor === Error && /[.:]/.test(thrown.message);
    const isRefused = thrown instanceof Error && "code" in thrown && thrown.message !== "";
    if (!isSentence && !isRefused) throw thrown;
    return "refused";
  } finally {
    clearInterval(timer);
  }
}

const FILES = fc.sample(fc.tuple(workbookBytes, commandLists), { numRuns: RUNS, seed: SEED });

test(
  `${String(RUNS)} random workbooks are opened or refused, and commands over them end well`,
  { timeout: RUNS * 5 * COMMAND_MS },
  async () => {
    const counts = { opened: 0, refused: 0, commands: 0 };
    for (const [at, [bytes, commands]] of FILES.entries()) {
      const sheets = newBook();
      const file = workbookFile(sheets, texts, filesHere());
      const opened = { sheets, book: previewWorkbook(sheets), file, bytes };
      try {
        const outcome = await outcomeOf(`file ${String(at)}, open`, () => file.open(bytes));
        counts[outcome === "done" ? "opened" : "refused"] += 1;
        for (const command of commands) {
          await outcomeOf(`file ${String(at)}, ${command}`, () => RUN[command](opened));
          counts.commands += 1;
        }
      } finally {
        sheets.dispose();
      }
    }
    console.log(`workbooks, seed ${String(SEED)}: ${JSON.stringify(counts)}`);
    // Both kinds must occur, else the files are too tame or too broken to show anything.
    expect(counts.opened).toBeGreaterThan(RUNS / 4);
    expect(counts.refused).toBeGreaterThan(0);
  },
);
