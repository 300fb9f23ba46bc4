/** The main job in a browser: the sizing sheet worked out, an input changed, the panel beside it, a file saved and opened. */
import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test, vi } from "vitest";
import { serve } from "../../scripts/serve";
import type { Served } from "../../scripts/serve";
import type { CellValue } from "../../src/workbook/port";
import { cellsText, parseCells } from "../../src/workbook/reader/reference";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";
import { openPage, saved } from "./browser";
import type { Watched } from "./browser";

const SHEET = "Recovery sizing";
const AREA = { sheet: SHEET, row: 0, column: 0, rows: 240, columns: 5 };

type Block = { readonly formulas: readonly (readonly string[])[]; readonly values: readonly (readonly CellValue[])[] };

const readSheet = (page: Page, sheet = SHEET): Promise<Block> =>
  page.evaluate(
    async (area) => {
      const [block] = (await globalThis.warmbackPreview?.workbook.read([area])) ?? [];
      if (block === undefined) throw new Error("nothing was read");
      return { formulas: block.formulas, values: block.values };
    },
    { ...AREA, sheet },
  );

/** The address of the value beside a label in the first column. */
const beside = ({ values }: Block, label: string): string => {
  const row = values.findIndex(([first]) => first === label);
  if (row < 0) throw new Error(`the sheet has no line "${label}"`);
  return cellsText({ row, column: 1, rows: 1, columns: 1 });
};

const select = async (page: Page, address: string): Promise<void> => {
  const { row = 0, column = 0 } = parseCells(address) ?? {};
  await page.evaluate((cell) => globalThis.warmbackPreview?.workbook.select(cell), { sheet: SHEET, row, column });
  await page.locator("#message strong", { hasText: new RegExp(`^${address}$`) }).waitFor();
};

const type = async (page: Page, address: string, text: string): Promise<void> => {
  await select(page, address);
  await page.locator("canvas").first().focus();
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
};

/** Tries again until nothing is thrown. */
const eventually = <T>(check: () => Promise<T>, timeout = 20_000): Promise<T> =>
  vi.waitFor(check, { timeout, interval: 100 });

const faultsIn = ({ values }: Block): readonly CellValue[] =>
  values.flat().filter((value) => typeof value === "object" && value !== null);

const ready = async (page: Page): Promise<void> => {
  // A small window begins with the panel folded.
  await page.locator("[role=tab]", { hasText: "Cautions" }).waitFor({ state: "attached" });
  await eventually(async () => {
    const { formulas, values } = await readSheet(page);
    const waiting = formulas.flatMap((line, row) =>
      line.filter((text, at) => text !== "" && values[row]?.[at] === null),
    );
    expect(waiting).toEqual([]);
    expect(formulas.flat().filter((formula) => formula.includes("WARMBACK.")).length).toBeGreaterThan(10);
  }, 60_000);
};

const numbers = ({ values }: Block): readonly (number | undefined)[] =>
  values.flat().map((value) => (typeof value === "number" ? value : undefined));

describe.skipIf(!HAS_CHROMIUM)("The preview in a browser", { timeout: 90_000 }, () => {
  let served: Served;
  let browser: Browser;
  let watched: Watched;
  let page: Page;

  beforeAll(async () => {
    served = await serve({ folder: inject("build"), port: 0, open: false });
    browser = await connectBrowser();
    watched = await openPage(browser, served.address);
    ({ page } = watched);
    await ready(page);
  }, 180_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
  });

  test("shows the sizing sheet worked out, with no error in any cell", async () => {
    expect(faultsIn(await readSheet(page))).toEqual([]);
  });

  test("works out every number that follows from an input that is typed over", async () => {
    const before = await readSheet(page);
    await type(page, beside(before, "Length"), "90");
    await eventually(async () => {
      const after = numbers(await readSheet(page));
      expect(numbers(before).filter((value, at) => value !== after[at]).length).toBeGreaterThan(5);
    });
  });

  test("raises a caution in the panel and above the grid when water runs too fast", async () => {
    const sheet = await readSheet(page);
    const panel = page.locator("#panel");
    expect(await panel.getByText("PIPE-FAST-WATER").count()).toBe(0);
    await type(page, beside(sheet, "Water through the exchanger"), "150");
    await panel.getByText("PIPE-FAST-WATER").first().waitFor();
    await select(page, beside(sheet, "Velocity"));
    await page.locator("#message", { hasText: /caution/ }).waitFor();
  });

  test("offers the words of a list at the cell, and takes the chosen one", async () => {
    const sheet = await readSheet(page);
    const address = beside(sheet, "Cover");
    await select(page, address);
    await page.getByRole("button", { name: `Choices for ${address}` }).click();
    const list = page.getByRole("listbox", { name: `Choices for ${address}` });
    await list.getByRole("option", { name: "bubble" }).click();
    await eventually(async () => expect((await readSheet(page)).values.flat()).toContain("bubble"));
  });

  test("shows the full text of an error above the grid", async () => {
    const sheet = await readSheet(page);
    const flow = beside(sheet, "Water through the exchanger");
    await type(page, flow, "0");
    await select(page, beside(sheet, "Velocity"));
    await page.locator("#message", { hasText: /#VALUE! flow: must be above 0 gpm/ }).waitFor();
    await type(page, flow, "50");
    await eventually(async () => expect(faultsIn(await readSheet(page))).toEqual(faultsIn(sheet)));
  });

  test("explains the selected cell in the panel", async () => {
    await page.getByRole("tab", { name: "Explain" }).click();
    await select(page, beside(await readSheet(page), "Head lost in the added pipe"));
    await page.getByRole("tabpanel").getByText("PIPE.HEADLOSS").first().waitFor();
  });

  test("finds a function and inserts its example at the selected cell", async () => {
    await page.getByRole("tab", { name: "Find" }).click();
    await select(page, "H5");
    await page.locator("#view-find fluent-text-input input").first().fill("head loss");
    await page.locator("#view-find summary", { hasText: "PIPE.HEADLOSS" }).first().click();
    await page.getByRole("button", { name: "Insert at the selected cell: PIPE.HEADLOSS" }).click();
    const inserted = () =>
      page.evaluate(
        async (area) => {
          const [block] = (await globalThis.warmbackPreview?.workbook.read([area])) ?? [];
          return block?.formulas.flat().find((formula) => formula.includes("PIPE.HEADLOSS")) ?? "";
        },
        { sheet: SHEET, row: 4, column: 7, rows: 12, columns: 4 },
      );
    await eventually(async () => expect(await inserted()).toContain("WARMBACK.PIPE.HEADLOSS("));
  });

  test("saves the workbook and opens it again without loss", async () => {
    const before = await readSheet(page);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    const path = await saved(download);
    await type(page, beside(before, "Length"), "10");
    const asked = new Promise<string>((resolve) =>
      page.once("dialog", (dialog) => {
        resolve(dialog.message());
        void dialog.accept();
      }),
    );
    await page.locator("#file").setInputFiles({
      name: "Fernhill Hall.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: await readFile(path),
    });
    expect(await asked).toBe("Workbook.xlsx has changes that aren't saved. Open Fernhill Hall.xlsx and lose them?");
    await page.locator("#status", { hasText: "Fernhill Hall.xlsx is open." }).waitFor();
    await eventually(async () => expect(await readSheet(page)).toEqual(before));
  });

  test("all of the above raised no error of the page and no request to anywhere else", () => {
    expect(watched.faults).toEqual([]);
  });
});

/** How far the engine's bars reach while the page gets ready on a slow machine, where a progress is shown in them. */
async function reachOfBars(page: Page): Promise<number> {
  const processor = await page.context().newCDPSession(page);
  await processor.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await page.evaluate(() => {
    const look = (): void => {
      const bars = document.querySelectorAll("#sheet header:not([class])");
      const reach = [...bars].map((bar) => bar.getBoundingClientRect().right);
      document.body.dataset["reach"] = String(Math.max(Number(document.body.dataset["reach"] ?? 0), ...reach));
      requestAnimationFrame(look);
    };
    look();
  });
  await ready(page);
  await processor.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  return page.evaluate(() => Number(document.body.dataset["reach"]));
}

test.skipIf(!HAS_CHROMIUM)(
  "The page can be used at 320 px, in dark and in forced colours",
  { timeout: 120_000 },
  async () => {
    const served = await serve({ folder: inject("build"), port: 0, open: false });
    const browser = await connectBrowser();
    const look = async ({ page, faults }: Watched, as: string): Promise<void> => {
      const tooWide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(await tooWide(), as).toBeLessThanOrEqual(0);
      const cautions = page.getByRole("tab", { name: "Cautions" });
      if (!(await cautions.isVisible())) await page.getByRole("button", { name: "Panel" }).click();
      await cautions.waitFor();
      expect(await tooWide(), as).toBeLessThanOrEqual(0);
      expect(faults, as).toEqual([]);
    };
    const narrow = await openPage(browser, served.address, { viewport: { width: 320, height: 800 } });
    expect(await reachOfBars(narrow.page)).toBe(320);
    await look(narrow, "narrow");
    await narrow.page.close();
    const coloured = await openPage(browser, served.address, { colorScheme: "dark" });
    await ready(coloured.page);
    await look(coloured, "dark");
    await coloured.page.emulateMedia({ colorScheme: "light", forcedColors: "active" });
    expect(await coloured.page.evaluate(() => matchMedia("(forced-colors: active)").matches)).toBe(true);
    await look(coloured, "forced colours");
    await browser.close();
    await served.close();
  },
);
