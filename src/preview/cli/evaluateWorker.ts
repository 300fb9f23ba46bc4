import { readFile } from "node:fs/promises";
import { parentPort, workerData } from "node:worker_threads";

import { emptySheet } from "../file/bookData";
import { formulaTexts } from "../file/formulaTexts";
import { readXlsx } from "../file/xlsx";
import { loadFunctions } from "../host/loadFunctions";
import { startHeadless } from "../univer/start";
import { evaluateFormulas, evaluateWorkbook, formulaCells } from "./evaluate";
import { NO_PLACE } from "./messages";
import type { Reply, Request, Slowest, WorkerSettings } from "./messages";

/** The thread with the sheet engine. It writes into shared memory which formula it works on; the main thread watches that. */

/** The main thread watches each formula; a calculation as a whole may take a day. */
const PATIENCE_MS = 86_400_000;
/** The stack of this thread is 64 MB: enough for every formula that Excel takes. */
const MOST_OPERATORS = 10_000;

interface Tracker {
  readonly on: (place: number | undefined) => void;
  reset(): void;
  slowest(): Slowest;
}

const trackPlaces = (progress: Int32Array): Tracker => {
  let current = NO_PLACE;
  let began = performance.now();
  let slowest: Slowest = { place: NO_PLACE, ms: 0 };
  return {
    on: (place = NO_PLACE) => {
      if (place === current) return;
      const now = performance.now();
      if (current !== NO_PLACE && now - began > slowest.ms) slowest = { place: current, ms: now - began };
      [current, began] = [place, now];
      Atomics.store(progress, 1, place);
      Atomics.add(progress, 0, 1);
    },
    reset: () => {
      slowest = { place: NO_PLACE, ms: 0 };
    },
    slowest: () => slowest,
  };
};

const start = (): void => {
  // The engine writes its own remarks with console.log and the like.
  for (const method of ["log", "info", "debug", "warn"] as const) console[method] = () => undefined;
  const { progress } = workerData as WorkerSettings;
  const tracker = trackPlaces(new Int32Array(progress));
  let placeOf: (sheet: number, row: number, column: number) => number | undefined = () => undefined;
  const set = loadFunctions(__dirname);
  const book = startHeadless(
    set,
    { sheets: [emptySheet("Sheet1")], names: [] },
    {
      // The engine's key of a sheet ends in the sheet's number.
      onFormula: (sheetId, row, column) =>
        tracker.on(placeOf(Number(sheetId.slice(sheetId.lastIndexOf("-") + 1)), row, column)),
      mostOperators: MOST_OPERATORS,
      patienceMs: PATIENCE_MS,
    },
  );
  const work = async (request: Request): Promise<Reply> => {
    tracker.reset();
    if (request.kind === "read") {
      const bytes = await readFile(request.path);
      const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
      return { kind: "book", data: await readXlsx(buffer, formulaTexts(set.namespace, set.metadata)) };
    }
    if (request.kind === "formulas") {
      placeOf = (sheet) => sheet;
      const results = await evaluateFormulas(book, request.lines, set.warmback, tracker.on);
      return { kind: "results", results, slowest: tracker.slowest() };
    }
    const { data, skipped } = request;
    const sheets = new Map(data.sheets.map(({ name }, place) => [name, place]));
    const places = new Map(
      formulaCells(data).map(({ sheet, row, column }, place) => [`${sheets.get(sheet)}!${row}:${column}`, place]),
    );
    placeOf = (sheet, row, column) => places.get(`${sheet}!${row}:${column}`);
    const results = await evaluateWorkbook(book, data, set.warmback, skipped, tracker.on);
    return { kind: "results", results, slowest: tracker.slowest() };
  };
  const answer = (reply: Reply): void => parentPort?.postMessage(reply);
  parentPort?.on("message", (request: Request) => {
    work(request).then(answer, (thrown: unknown) => {
      tracker.on(undefined);
      answer({ kind: "failed", message: thrown instanceof Error ? thrown.message : String(thrown) });
    });
  });
  answer({ kind: "ready" });
};

start();
