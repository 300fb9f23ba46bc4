import { readFile } from "node:fs/promises";
import { parentPort, workerData } from "node:worker_threads";

import { emptySheet } from "../file/bookData";
import { formulaTexts } from "../file/formulaTexts";
import { keepCircles } from "../file/circles";
import type { BookData } from "../file/bookData";
import { openedBook, type OpenedBook } from "../file/openedBook";
import type { ShownValue } from "../file/differences";
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { differencesIn, settingSentences, unreadKinds } from "../file/openingReport";
import { loadFunctions } from "../host/loadFunctions";
import type { SheetBook } from "../host/sheetBook";
import { evaluateFormulas, evaluateWorkbook, formulaCells } from "./evaluate";
import type { Evaluated, OnPlace, SkippedFormula } from "./evaluate";
import { literalCalls } from "./literalCalls";
import { NO_PLACE } from "./messages";
import type { Reply, Request, Slowest, WorkerSettings } from "./messages";

/** The thread with the sheet engine. It writes into shared memory which formula it works on; the main thread watches that. */

/** The main thread watches each formula; a calculation as a whole may take a day. */
const PATIENCE = 86_400;
/** The stack of this thread is 64 MB: enough for every formula that Excel takes. */
const MOST_OPERATORS = 10_000;

interface Tracker {
  readonly on: (place: number | undefined) => void;
  /** Reports progress at no formula in particular. */
  readonly step: () => void;
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
    step: () => void Atomics.add(progress, 0, 1),
    reset: () => {
      slowest = { place: NO_PLACE, ms: 0 };
    },
    slowest: () => slowest,
  };
};

const shownIn = (result: Evaluated | undefined): ShownValue => {
  const { value, error } = result ?? {};
  if (error !== undefined) return error.code;
  if (!Array.isArray(value)) return (value ?? null) as ShownValue;
  return (value as Exclude<Evaluated["value"], string | number | boolean | null | undefined>).map((line) =>
    line.map((cell) => (typeof cell === "object" && cell !== null ? cell.code : cell)),
  );
};

const start = (): void => {
  // The engine writes its own remarks with console.log and the like.
  for (const method of ["log", "info", "debug", "warn"] as const) console[method] = () => undefined;
  const { progress } = workerData as WorkerSettings;
  const tracker = trackPlaces(new Int32Array(progress));
  let placeOf: (sheet: number, row: number, column: number) => number | undefined = () => undefined;
  const set = loadFunctions(__dirname);
  const literal = literalCalls(set);
  let started: Promise<SheetBook> | undefined;
  /** The sheet engine is loaded when the first formula needs it: constants in our functions don't. */
  const book = (): Promise<SheetBook> =>
    (started ??= import(/* webpackMode: "eager" */ "../univer/start").then(({ startHeadless }) =>
      startHeadless(
        set,
        { sheets: [emptySheet("Sheet1")], names: [] },
        {
          // The engine's key of a sheet ends in the sheet's number.
          onFormula: (sheetId, row, column) =>
            tracker.on(placeOf(Number(sheetId.slice(sheetId.lastIndexOf("-") + 1)), row, column)),
          onFormulaEnd: () => tracker.on(undefined),
          mostOperators: MOST_OPERATORS,
          patience: PATIENCE,
        },
      ),
    ));
  let opened: { readonly path: string; readonly file: OpenedBook } | undefined;
  const fileAt = async (path: string): Promise<OpenedBook> => {
    if (opened?.path !== path) {
      const bytes = new Uint8Array(await readFile(path));
      const progress = { onProgress: tracker.step, slices: { turn: async () => tracker.step() } };
      opened = { path, file: await openedBook(bytes, formulaTexts(set.namespace, set.metadata), progress) };
    }
    return opened.file;
  };
  const calculate = async (data: BookData, skipped: readonly SkippedFormula[]): Promise<readonly Evaluated[]> => {
    const sheets = new Map(data.sheets.map(({ name }, place) => [name, place]));
    const places = new Map(
      formulaCells(data).map(({ sheet, row, column }, place) => [`${sheets.get(sheet)}!${row}:${column}`, place]),
    );
    placeOf = (sheet, row, column) => places.get(`${sheet}!${row}:${column}`);
    return evaluateWorkbook(await book(), data, set.warmback, skipped, tracker.on);
  };
  const workbook = async ({ path, skipped }: Request & { kind: "workbook" }): Promise<Reply> => {
    const file = await fileAt(path);
    let { data } = file;
    let results = await calculate(data, skipped);
    if (file.facts.calculation.iterate) {
      const circular = new Set(results.flatMap(({ address, error }) => (error?.code === "#CYCLE!" ? [address] : [])));
      data = keepCircles(data, (sheet, cell) => circular.has(addressText({ ...cell, sheet })));
      if (circular.size > 0) results = await calculate(data, skipped);
    }
    const byAddress = new Map(results.map((result) => [result.address, result] as const));
    const shown = (cell: Address): ShownValue => shownIn(byAddress.get(addressText(cell)));
    const found = await differencesIn({ data, known: file.known }, shown);
    const report = { unread: unreadKinds(data), ...found, settings: settingSentences(file.facts) };
    return { kind: "workbook", results, report };
  };
  const formulas = async (lines: readonly string[]): Promise<readonly Evaluated[]> => {
    const results = lines.map((line, place) => {
      tracker.on(place);
      return literal(line);
    });
    tracker.on(undefined);
    const rest = lines.flatMap((_, place) => (results[place] === undefined ? [place] : []));
    if (rest.length === 0) return results.filter((one) => one !== undefined);
    const onPlace: OnPlace = (place) => tracker.on(place === undefined ? undefined : rest[place]);
    placeOf = (sheet) => rest[sheet];
    const others = rest.map((place) => lines[place] ?? "");
    const found = await evaluateFormulas(await book(), others, set.warmback, onPlace);
    const byPlace = new Map(rest.map((place, at) => [place, found[at]]));
    return results.flatMap((one, place) => one ?? byPlace.get(place) ?? []);
  };
  const work = async (request: Request): Promise<Reply> => {
    tracker.reset();
    if (request.kind === "workbook") return workbook(request);
    return { kind: "results", results: await formulas(request.lines), slowest: tracker.slowest() };
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
