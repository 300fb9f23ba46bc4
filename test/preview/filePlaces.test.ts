/** Opening and saving in a worker and on the page: the same bytes from both, progress, Cancel, and a worker that breaks off. */
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import type { FileJobs } from "../../src/preview/file/jobs/fileJob";
import { fileRunner } from "../../src/preview/file/jobs/fileRunner";
import { startFileJobs } from "../../src/preview/file/jobs/pageFileJobs";
import { workbookFile } from "../../src/preview/file/workbookFile";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { parseCells } from "../../src/workbook/reader/reference";
import { workersHere } from "../taskpane/workersHere";
import { fullBook } from "../workbook/package/fullBook";
import { plainBook, zipOf } from "../workbook/package/zipParts";
import { CANCELLED } from "../../src/workbook/timeSlices";
import { filesHere } from "./files";
import { fixtureSet, newBook } from "./support";

const texts = formulaTexts("WARMBACK", fixtureSet().metadata);
const at = (sheet: string, address: string) => ({ sheet, ...parseCells(address)! });

let book: SheetBook;
beforeEach(() => {
  book = newBook();
});
afterEach(() => book.dispose());

async function put(sheet: string, cells: Readonly<Record<string, string | number | null>>): Promise<void> {
  book.write(Object.entries(cells).map(([address, content]) => ({ ...at(sheet, address), content })));
  await book.whenCalculated();
}

const inWorker = () => {
  const { start, started } = workersHere(fileRunner);
  return { jobs: startFileJobs(start), started };
};
const onPage = (): FileJobs =>
  startFileJobs(() => {
    throw new Error("refused by the page's policy");
  });

const CIRCLE = `<sheetData><row r="1"><c r="A1"><f>B1/2+1</f><v>2</v></c><c r="B1"><f>A1</f><v>2</v></c><c r="C1"><f>A1*3</f><v>6</v></c><c r="D1"><v>4</v></c></row></sheetData>`;

/** Changes of the page to an opened file, by a title. */
const CHANGES: readonly (readonly [string, Uint8Array, () => Promise<void>])[] = [
  ["nothing", zipOf(fullBook()), async () => undefined],
  ["a value that others follow from", zipOf(fullBook()), () => put("Loop", { B2: 123 })],
  [
    "a formula, a text and an emptied cell",
    zipOf(fullBook()),
    () => put("Loop", { G9: "=1+2", G10: "ä\n'x", B2: null }),
  ],
  [
    "a cell beside a circle",
    zipOf(plainBook({ S: CIRCLE }, { book: '<calcPr iterate="1"/>' })),
    () => put("S", { D1: 5 }),
  ],
  [
    "a sheet that was added",
    zipOf(plainBook({ S: CIRCLE })),
    async () => {
      const cells = [{ row: 2, column: 1, value: 3, formula: "=1+2", format: "0.0", look: { bold: true } }];
      book.addSheet({ ...emptySheet("More"), cells }, []);
      await book.whenCalculated();
    },
  ],
];

test.each(CHANGES)("saves the same bytes from a worker and from the page after %s", async (_, original, change) => {
  const saved = async (jobs: FileJobs) => {
    const file = workbookFile(book, texts, jobs);
    await file.open(original);
    await change();
    const made = await file.save();
    return { ...made, bytes: Buffer.from(made.bytes).toString("latin1"), place: jobs.place() };
  };
  const here = { ...(await saved(filesHere())), place: undefined };
  expect({ ...(await saved(inWorker().jobs)) }).toEqual({ ...here, place: "worker" });
  expect({ ...(await saved(onPage())) }).toEqual({ ...here, place: "page" });
});

test("saves the same bytes of a workbook of the page's own from a worker and from the page", async () => {
  await put("Sheet1", { A1: 7, A2: "=A1*2", B1: "ä" });
  const [here, there, page] = await Promise.all(
    [filesHere(), inWorker().jobs, onPage()].map((jobs) => workbookFile(book, texts, jobs).savedBytes()),
  );
  expect(Buffer.from(there ?? []).equals(Buffer.from(here ?? []))).toBe(true);
  expect(Buffer.from(page ?? []).equals(Buffer.from(here ?? []))).toBe(true);
});

describe("A worker on the page's file", () => {
  const ending = () => {
    const controller = new AbortController();
    const said: string[] = [];
    return {
      said,
      signal: controller.signal,
      onProgress: ({ text }: { readonly text: string }) => {
        said.push(text);
        controller.abort();
      },
    };
  };

  test("ends with a cancelled opening, and the workbook stays", async () => {
    const { jobs, started } = inWorker();
    const file = workbookFile(book, texts, jobs);
    await put("Sheet1", { A1: 7 });
    const work = ending();
    await expect(file.open(zipOf(fullBook()), work)).rejects.toBe(CANCELLED);
    expect(work.said).toEqual([expect.stringMatching(/^reading the file, \d+ %$/)]);
    expect(started.map(({ ended }) => ended)).toEqual([true]);
    expect(book.sheets().map(({ name }) => name)).toEqual(["Sheet1"]);
  });

  test("ends with a cancelled saving; the next one reads the file again in a new worker", async () => {
    const { jobs, started } = inWorker();
    const file = workbookFile(book, texts, jobs);
    await file.open(zipOf(fullBook()));
    await put("Loop", { B2: 123 });
    const bytes = await file.savedBytes();
    const work = ending();
    await expect(file.save(work)).rejects.toBe(CANCELLED);
    expect(work.said).toEqual([expect.stringMatching(/^writing the file, \d+ %$/)]);
    expect(file.isEdited()).toBe(true);
    expect(Buffer.from(await file.savedBytes()).equals(Buffer.from(bytes))).toBe(true);
    expect(started.map(({ ended }) => ended)).toEqual([true, false]);
  });

  test("fails its job with a sentence where it breaks off, and the next job gets a new one", async () => {
    const { jobs, started } = inWorker();
    const file = workbookFile(book, texts, jobs);
    await file.open(zipOf(fullBook()));
    const saving = file.save({ onProgress: () => started[0]?.crash() });
    await expect(saving).rejects.toThrow(/^The browser stopped the work on the file.*Try again\.$/);
    expect((await file.save()).sentences).toEqual([]);
    expect(started).toHaveLength(2);
  });

  test("refuses a file with the sentence that the page gives", async () => {
    const bytes = zipOf({ "a.txt": "no workbook" });
    const message = "This zip holds no Excel workbook.";
    for (const jobs of [inWorker().jobs, onPage()])
      await expect(workbookFile(book, texts, jobs).open(bytes)).rejects.toThrow(message);
  });
});
