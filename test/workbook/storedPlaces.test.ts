/** A file that is compared, read in a worker and on the page: the same workbook from both. */
import { expect, test } from "vitest";
import { startPanelJobs } from "../../src/taskpane/jobs/panelJobs";
import { jobRunner } from "../../src/taskpane/jobs/runJob";
import { storedWorkbook } from "../../src/workbook/compare/storedWorkbook";
import type { Workbook } from "../../src/workbook/port";
import { workersHere } from "../taskpane/workersHere";
import { fullWithUs } from "./copy/books";

async function allOf(book: Workbook) {
  const sheets = (await book.sheets()).map(({ name }) => name);
  const areas = (await Promise.all(sheets.map((sheet) => book.used(sheet)))).filter((area) => area !== undefined);
  const from = { sheet: "Loop", row: 0, column: 0 };
  const texts = ["Flow", "PriceList", "Gpm", "loop!B2", "Loop!A6#", "No_such"];
  return { sheets, blocks: await book.read(areas), named: await book.resolve(texts.map((text) => ({ text, from }))) };
}

test("a file that is compared reads the same in a worker and on the page", async () => {
  const worker = startPanelJobs(workersHere(jobRunner).start);
  const page = startPanelJobs(() => {
    throw new Error("refused by the page's policy");
  });
  const [there, here] = await Promise.all(
    [worker, page].map(async (jobs) => allOf(storedWorkbook(await jobs.run("stored", { bytes: fullWithUs() })))),
  );
  expect([worker.place(), page.place()]).toEqual(["worker", "page"]);
  expect(there).toEqual(here);
  expect(here?.sheets).toEqual(["Prices", "Loop", "cfg", "Pivot", "Other book"]);
  expect(here?.named.map((area) => area?.sheet)).toEqual([
    "Loop",
    "Prices",
    undefined,
    "Loop",
    expect.anything(),
    undefined,
  ]);
  const loop = here?.blocks.find(({ area }) => area.sheet === "Loop");
  expect(loop?.formulas[39]?.[1]).toBe('=WARMBACK.PIPE.VELOCITY(A40,"2 in")');
  expect(loop?.values[39]?.[0]).toBe(40);
});

test("bytes that a running worker may keep aren't the page's any more", async () => {
  const jobs = startPanelJobs(workersHere(jobRunner).start);
  const [first, second] = [fullWithUs(), fullWithUs()];
  await jobs.run("stored", { bytes: first }, { transfer: [first.buffer] });
  // Until a worker has said that it runs, another place may need them.
  expect(first.length).toBeGreaterThan(0);
  await jobs.run("stored", { bytes: second }, { transfer: [second.buffer] });
  expect(second.length).toBe(0);
});
