/** A large sheet is made in slices, is one undo step, and goes whole when it is cancelled. */
import { describe, expect, onTestFinished, test } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { insertSheet } from "../../src/preview/host/insertSheet";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { packBook, unpackBook } from "../../src/preview/page/packedBook";
import { startHeadless } from "../../src/preview/univer/start";
import type { StarterSheet } from "../../src/sheets/sheet";
import { CANCELLED } from "../../src/workbook/timeSlices";
import { SHEET, placeOf, put, valueAt } from "./support";

const ROWS = 300;

const WEATHER: StarterSheet = {
  id: "recorded",
  name: "Weather",
  summary: "",
  widths: [20, 10],
  cells: Object.fromEntries([
    ["A1", { content: "Rows", style: "Heading 2" }],
    ["C1", { content: `=SUM(WeatherRows)` }],
    ...Array.from({ length: ROWS }, (_, row) => [`A${row + 2}`, { content: row }]),
  ]) as StarterSheet["cells"],
  names: { WeatherRows: `A2:A${ROWS + 1}` },
  frozenRows: 1,
  print: { area: `A1:C${ROWS + 1}`, landscape: false, fitToWidth: true, titleRows: "1:1", footer: "&A" },
};

const SUM = ((ROWS - 1) * ROWS) / 2;

async function startedBook(): Promise<SheetBook> {
  const set = { namespace: "WARMBACK", metadata: { functions: [] }, associated: new Map() };
  const book = startHeadless(set, { sheets: [emptySheet(SHEET)], names: [] });
  onTestFinished(() => book.dispose());
  await book.whenCalculated();
  return book;
}

/** A turn of other tasks after each cell; the given one happens in the given turn. */
function slicesWith(at: number, happens: () => void) {
  let turns = 0;
  const turn = async (): Promise<void> => {
    await Promise.resolve();
    if (++turns === at) happens();
  };
  return { slices: { slice: 0, turn }, turns: () => turns };
}

const sheetsOf = (book: SheetBook): readonly string[] => book.sheets().map(({ name }) => name);

describe("A sheet of many rows", () => {
  test("is made in slices and is there whole, in one undo step", async () => {
    const book = await startedBook();
    await put(book, { A1: "typed before" });
    let before: readonly string[] = [];
    const rows: number[] = [];
    const { slices, turns } = slicesWith(ROWS, () => (before = sheetsOf(book)));
    const stages: string[] = [];
    const options = {
      onProgress: (done: number) => void rows.push(done),
      onStage: (stage: string) => void stages.push(`${stage} after ${String(rows.at(-1))} rows`),
    };
    expect(await insertSheet(book, WEATHER, options, slices)).toBe("Weather");
    expect(turns()).toBeGreaterThan(2 * ROWS);
    expect(before).toEqual([SHEET]);
    expect(rows.at(-1)).toBe(ROWS + 1);
    expect(stages).toEqual([`calculating after ${String(ROWS + 1)} rows`]);
    expect(rows).toEqual([...rows].sort((a, b) => a - b));
    expect(book.read({ sheet: "Weather", row: 0, column: 2, rows: 1, columns: 1 }).values).toEqual([[SUM]]);
    book.undo();
    expect([sheetsOf(book), book.names()]).toEqual([[SHEET], []]);
    expect(valueAt(book, "A1")).toBe("typed before");
    book.redo();
    expect(sheetsOf(book)).toEqual([SHEET, "Weather"]);
  });

  test("says how many rows are made however few slices they take, and that it is calculated", async () => {
    const book = await startedBook();
    const said: string[] = [];
    const watched: SheetBook = {
      ...book,
      whenCalculated: async () => {
        said.push("waits");
        await book.whenCalculated();
      },
    };
    const onProgress = (done: number, of: number): void => void said.push(`${String(done)} of ${String(of)}`);
    await insertSheet(watched, WEATHER, { onProgress, onStage: (stage) => void said.push(stage) });
    expect(said.slice(-3)).toEqual([`${String(ROWS + 1)} of ${String(ROWS + 1)}`, "calculating", "waits"]);
  });

  test.each([
    ["before its cells are placed", 1],
    ["among its cells", ROWS],
    ["while the engine's cells are made", 2 * ROWS],
  ])("leaves the workbook as it was if it is cancelled %s", async (_, at) => {
    const book = await startedBook();
    await put(book, { A1: "typed before" });
    const data = book.data();
    const ending = new AbortController();
    const { slices } = slicesWith(at, () => ending.abort());
    await expect(insertSheet(book, WEATHER, { signal: ending.signal }, slices)).rejects.toBe(CANCELLED);
    expect(book.data()).toEqual(data);
    book.undo();
    expect(valueAt(book, "A1")).toBeNull();
  });

  test("goes with its names if it is cancelled while it is calculated; what was typed meanwhile stays", async () => {
    const book = await startedBook();
    await put(book, { A1: "typed before" });
    book.select(placeOf("B7"));
    const data = book.data();
    const ending = new AbortController();
    const typed: SheetBook = {
      ...book,
      whenCalculated: () => {
        book.write([{ ...placeOf("A2"), content: "typed meanwhile" }]);
        book.write([{ sheet: "Weather", row: 0, column: 4, content: "typed there" }]);
        ending.abort();
        return book.whenCalculated();
      },
    };
    await expect(insertSheet(typed, WEATHER, { signal: ending.signal })).rejects.toBe(CANCELLED);
    expect([sheetsOf(book), book.names()]).toEqual([[SHEET], []]);
    expect(book.selection()).toEqual({ sheet: SHEET, row: 6, column: 1 });
    expect(valueAt(book, "A2")).toBe("typed meanwhile");
    await book.whenCalculated();
    book.undo();
    expect(book.data()).toEqual(data);
    book.redo();
    book.undo();
    book.undo();
    expect([sheetsOf(book), valueAt(book, "A1")]).toEqual([[SHEET], null]);
  });

  test("keeps what was typed while it was made, as an undo step of its own", async () => {
    const book = await startedBook();
    const { slices } = slicesWith(ROWS, () => book.write([{ ...placeOf("A1"), content: 5 }]));
    await insertSheet(book, WEATHER, {}, slices);
    expect(valueAt(book, "A1")).toBe(5);
    book.undo();
    expect([sheetsOf(book), valueAt(book, "A1")]).toEqual([[SHEET], 5]);
    book.undo();
    expect(valueAt(book, "A1")).toBeNull();
  });

  test("takes another name if its own is given away meanwhile", async () => {
    const book = await startedBook();
    const { slices } = slicesWith(ROWS, () => void book.addSheet(emptySheet("Weather"), []));
    expect(await insertSheet(book, WEATHER, {}, slices)).toBe("Weather 2");
    expect(book.names()).toEqual([{ name: "WeatherRows", refersTo: `'Weather 2'!$A$2:$A$${ROWS + 1}` }]);
    expect(book.read({ sheet: "Weather 2", row: 0, column: 2, rows: 1, columns: 1 }).values).toEqual([[SUM]]);
  });

  test("isn't added to another workbook that was opened meanwhile", async () => {
    const book = await startedBook();
    const { slices } = slicesWith(ROWS, () => book.load({ sheets: [emptySheet("Other")], names: [] }));
    await expect(insertSheet(book, WEATHER, {}, slices)).rejects.toThrow("another workbook was opened meanwhile");
    expect(sheetsOf(book)).toEqual(["Other"]);
  });
});

test("A workbook that is kept as texts comes back with all its cells", async () => {
  const book = await startedBook();
  await insertSheet(book, WEATHER);
  let pauses = 0;
  const pause = (): undefined => void pauses++;
  const data = book.data();
  const pieces = await packBook({ ...data, sheets: [...data.sheets, ...data.sheets] }, pause);
  expect(pieces.length).toBeGreaterThan(2);
  const unpacked = await unpackBook(pieces, pause);
  expect(unpacked).toEqual({ ...data, sheets: [...data.sheets, ...data.sheets] });
  expect(pauses).toBe(2 * (pieces.length - 1));
});
