/** The built panel beside the preview's sheet: a hand-over copy saved as a file, a picture loaded when it is first shown. */
import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import ExcelJS from "exceljs";
import { afterAll, beforeAll, describe, expect, inject, test, vi } from "vitest";
import { serve, type Served } from "../../scripts/serve";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";
import { openPage, saved, type Watched } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("The panel in the preview", { timeout: 90_000 }, () => {
  let served: Served;
  let browser: Browser;
  let watched: Watched;
  let page: Page;

  beforeAll(async () => {
    served = await serve({ folder: inject("build"), port: 0, open: false });
    browser = await connectBrowser();
    watched = await openPage(browser, served.address, { acceptDownloads: true });
    ({ page } = watched);
    await page.getByRole("tab", { name: "Workbook" }).waitFor();
    // The first sheet is worked out when its master check stands in the second row.
    await vi.waitFor(
      async () => {
        const value = await page.evaluate(async () => {
          const area = { sheet: "Recovery sizing", row: 1, column: 1, rows: 1, columns: 1 };
          return (await globalThis.warmbackPreview?.workbook.read([area]))?.[0]?.values[0]?.[0];
        });
        expect(value).toMatch(/^OK$|^LOOK/);
      },
      { timeout: 60_000, interval: 300 },
    );
  }, 240_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
  });

  test("saves a hand-over copy: values, record, no call of ours", async () => {
    await page.getByRole("tab", { name: "Workbook" }).click();
    await page.getByRole("button", { name: "Make a hand-over copy" }).click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: /^Make the copy/ }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("Workbook hand-over copy.xlsx");
    await page.getByRole("status").filter({ hasText: "The copy is the file Workbook hand-over copy.xlsx." }).waitFor();
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(await saved(download));
    expect(book.worksheets.map(({ name }) => name)).toEqual([
      "Recovery sizing",
      "Project",
      "Read me",
      "Record",
      "For the supplier",
    ]);
    const ours: string[] = [];
    for (const sheet of book.worksheets)
      sheet.eachRow((row) =>
        row.eachCell(({ formula, address }) => void (/warmback/i.test(formula ?? "") && ours.push(address))),
      );
    expect(ours).toEqual([]);
    expect(String(book.getWorksheet("Record")?.getCell("C5").value)).toMatch(/^=WARMBACK\./);
  });

  test("loads the pictures' script when a cycle is explained, and the page's policy refuses nothing", async () => {
    await page.evaluate(async () => {
      const at = { sheet: "Recovery sizing", row: 3, column: 7 };
      const content = '=WARMBACK.CYCLE.STATES("R-410A",45,105)';
      await globalThis.warmbackPreview?.workbook.write([{ ...at, content }]);
      await globalThis.warmbackPreview?.workbook.select(at);
    });
    await page.getByRole("tab", { name: "Explain" }).click();
    await page.getByRole("img", { name: /^Pressure against enthalpy of R-410A/ }).waitFor();
    // It was worked out in the worker, under the page's own policy; the page's files have their own.
    const workers = page.workers().map((worker) => new URL(worker.url()).pathname);
    expect(workers.filter((path) => path !== "/files.js")).toEqual(["/worker.js"]);
    expect(watched.faults).toEqual([]);
  });

  test("saves a picture as a PNG", async () => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as picture: Pressure against enthalpy" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("CYCLE.STATES Pressure against enthalpy.png");
    const bytes = await readFile(await saved(download));
    expect(bytes.toString("latin1", 1, 4)).toBe("PNG");
    expect(bytes.readUInt32BE(16)).toBe(1040);
    await page
      .getByRole("status")
      .filter({ hasText: "Saved as the file CYCLE.STATES Pressure against enthalpy.png." })
      .waitFor();
    expect(watched.faults).toEqual([]);
  });
});
