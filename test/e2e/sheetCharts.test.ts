/** The charts of a sheet in the page: over their cells, scrolling with them, drawn again on change. */
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test, vi } from "vitest";
import { serve, type Served } from "../../scripts/serve";
import { recoverySizing } from "../../src/sheets/recoverySizing";
import { parseCells } from "../../src/workbook/reader/reference";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";
import { openPage } from "./browser";

const [HEAT] = recoverySizing.charts ?? [];
const PLACE = parseCells(HEAT?.place ?? "") ?? { row: 0, column: 0 };

const select = (page: Page, row: number, column = 0): Promise<void> =>
  page.evaluate((cell) => globalThis.warmbackPreview?.workbook.select(cell), { sheet: "Recovery sizing", row, column });

const eventually = <T>(check: () => Promise<T>): Promise<T> => vi.waitFor(check, { timeout: 30_000, interval: 200 });

describe.skipIf(!HAS_CHROMIUM)("The charts of a sheet in the page", { timeout: 120_000 }, () => {
  let served: Served;
  let browser: Browser;
  let page: Page;
  let faults: readonly string[];
  beforeAll(async () => {
    served = await serve({ folder: inject("build"), port: 0, open: false });
    browser = await connectBrowser();
    ({ page, faults } = await openPage(browser, served.address));
    await page.getByRole("tab", { name: "Cautions" }).waitFor();
  }, 120_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  const chart = () => page.getByRole("img", { name: /^Heat that the pool asks for in each month/ });
  const shot = async (name: string): Promise<void> => {
    const folder = process.env["SHOTS"];
    if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}.png` });
  };

  /** Where the figure is once it lies still. */
  const still = async (figure: Locator): Promise<{ readonly x: number; readonly y: number } | null> => {
    for (let last = await figure.boundingBox(); ;) {
      await page.waitForTimeout(1_000);
      const now = await figure.boundingBox();
      if (now?.y === last?.y) return now;
      last = now;
    }
  };

  test("lie over the cells kept free for them, and scroll with them", async () => {
    await select(page, PLACE.row + 17);
    await chart().waitFor();
    const figure = page.locator(".sheet-charts figure").first();
    const bars = await eventually(async () => {
      const paths = await chart().locator("rect").count();
      expect(paths).toBeGreaterThanOrEqual(36);
      return paths;
    });
    expect(bars).toBeGreaterThanOrEqual(36);
    await shot("sheet");
    const before = await still(figure);
    await page.mouse.move(400, 500);
    await page.mouse.wheel(0, 100);
    await eventually(async () => {
      const after = await figure.boundingBox();
      expect((before?.y ?? 0) - (after?.y ?? 0)).toBeGreaterThan(20);
      expect(after?.x).toBeCloseTo(before?.x ?? 0, 0);
    });
    await shot("sheet-scrolled");
  });

  test("are drawn again when an input changes, and are gone from another sheet", async () => {
    await select(page, PLACE.row + 17);
    await chart().waitFor();
    const drawing = (): Promise<string> => chart().evaluate((svg) => svg.outerHTML);
    const before = await eventually(drawing);
    const season = Object.entries(recoverySizing.cells).find(([, { content }]) => content === "Season start");
    const row = parseCells(season?.[0] ?? "A1")?.row ?? 0;
    await page.evaluate((cell) => globalThis.warmbackPreview?.workbook.write([cell]), {
      sheet: "Recovery sizing",
      row,
      column: 1,
      content: 6,
    });
    await eventually(async () => {
      expect(await drawing()).not.toBe(before);
    });
    await page.evaluate(() => globalThis.warmbackPreview?.workbook.select({ sheet: "Project", row: 0, column: 0 }));
    await eventually(async () => {
      expect(await page.locator(".sheet-charts").isVisible()).toBe(false);
    });
    expect(faults).toEqual([]);
  });
});
