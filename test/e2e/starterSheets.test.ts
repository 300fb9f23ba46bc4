/** Starter sheets in the page: one inserted with the sheet that it takes values from, and rows that fold. */
import { readFile, writeFile, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test, vi } from "vitest";
import { serve, type Served } from "../../scripts/serve";
import { poolLoop } from "../../src/sheets/poolLoop";
import { newWorkbook, packageBytes } from "../../src/workbook/package";
import type { CellValue } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";
import { openPage, saved } from "./browser";

const SHEET = "Pool loop";
const ROWS = Number(/\d+$/.exec(poolLoop.print.area)?.[0]);

interface Read {
  readonly formulas: readonly (readonly string[])[];
  readonly values: readonly (readonly CellValue[])[];
}

const eventually = <T>(check: () => Promise<T>): Promise<T> => vi.waitFor(check, { timeout: 40_000, interval: 200 });

const sheetsOf = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => ((await globalThis.warmbackPreview?.workbook.sheets()) ?? []).map(({ name }) => name));

const readLoop = (page: Page): Promise<Read> =>
  page.evaluate(
    async (area) => {
      const [block] = (await globalThis.warmbackPreview?.workbook.read([area])) ?? [];
      if (block === undefined) throw new Error("nothing was read");
      return { formulas: block.formulas, values: block.values };
    },
    { sheet: SHEET, row: 0, column: 0, rows: ROWS, columns: 8 },
  );

const rowOf = (label: string): number =>
  parseCells(Object.entries(poolLoop.cells).find(([, { content }]) => content === label)?.[0] ?? "")?.row ?? -1;

describe.skipIf(!HAS_CHROMIUM)("Starter sheets in the page", { timeout: 120_000 }, () => {
  let served: Served;
  let browser: Browser;
  let page: Page;
  let faults: readonly string[];
  let folder: string;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "warmback-starters-"));
    const file = join(folder, "Notes.xlsx");
    const cells = [{ row: 0, column: 0, value: "Notes" }];
    await writeFile(file, await packageBytes(await newWorkbook([{ name: "Notes", cells }])));
    served = await serve({ folder: inject("build"), port: 0, open: false });
    browser = await connectBrowser();
    ({ page, faults } = await openPage(browser, served.address));
    await page.locator("#open:enabled").waitFor();
    await page.locator("#file").setInputFiles(file);
    await eventually(async () => expect(await sheetsOf(page)).toEqual(["Notes"]));
  }, 120_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
    await rm(folder, { recursive: true });
  });

  const shot = async (name: string): Promise<void> => {
    const shots = process.env["SHOTS"];
    if (shots !== undefined) await page.screenshot({ path: `${shots}/${name}.png` });
  };
  const select = (label: string): Promise<void> =>
    page.evaluate((cell) => globalThis.warmbackPreview?.workbook.select(cell), {
      sheet: SHEET,
      row: rowOf(label),
      column: 0,
    });
  const line = () => page.getByRole("group", { name: "Rows that fold", exact: true }).getByRole("button");

  test("a sheet inserted with the sheet Project takes its values from there, with no error", async () => {
    await page.getByRole("tab", { name: "Find" }).click();
    await page.getByRole("button", { name: `Insert with Project: ${SHEET}` }).click();
    await eventually(async () => expect(await sheetsOf(page)).toEqual(["Notes", "Project", SHEET]));
    const { formulas, values } = await eventually(async () => {
      const read = await readLoop(page);
      const waiting = read.formulas.flatMap((row, at) =>
        row.filter((text, on) => text !== "" && read.values[at]?.[on] === null),
      );
      expect(waiting).toEqual([]);
      return read;
    });
    await shot("inserted-with-project");
    expect(formulas.flat().filter((text) => /^=IF\(LEN\(Project/.test(text)).length).toBeGreaterThan(5);
    expect(values.flat().filter((value) => typeof value === "object" && value !== null)).toEqual([]);
    expect(values[rowOf("Electricity")]?.[3]).toBe("$/kWh");
    const left = page.getByRole("button", { name: /^Insert with Project/ });
    await eventually(async () => expect(await left.count()).toBe(0));
  });

  test("the sign of money is set once, on the sheet Project", async () => {
    const where = await page.evaluate(async () => {
      const [area] = (await globalThis.warmbackPreview?.workbook.resolve([
        { text: "ProjectCurrency", from: { sheet: "Project", row: 0, column: 0 } },
      ])) ?? [undefined];
      return area;
    });
    expect(where).toMatchObject({ sheet: "Project" });
    await page.evaluate(
      (cell) => globalThis.warmbackPreview?.workbook.write([{ ...cell, content: "€" }]),
      where as { sheet: string; row: number; column: number },
    );
    await eventually(async () => {
      const { values } = await readLoop(page);
      expect(values[rowOf("Electricity")]?.[3]).toBe("€/kWh");
      expect(values[rowOf("Cost of that in a year")]?.[3]).toBe("€");
    });
  });

  test("a part folds from the line above the grid by keys alone, and its heading stays", async () => {
    await select("Calculation");
    await eventually(async () => expect(await line().allTextContents()).toEqual(["Fold all", "Fold Calculation"]));
    await page.locator("canvas").first().focus();
    await page.keyboard.press("Shift+F6");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await eventually(async () => expect(await line().allTextContents()).toEqual(["Fold all", "Unfold Calculation"]));
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Unfold Calculation");
    await shot("folded");
    await page.keyboard.press("Enter");
    await eventually(async () => expect(await line().allTextContents()).toEqual(["Fold all", "Fold Calculation"]));
  });

  test("the buttons beside the rows reach the foot of a window that grows", async () => {
    await page.setViewportSize({ width: 1280, height: 2400 });
    const reach = () => page.locator(".sheet-folds").evaluate((layer) => layer.getBoundingClientRect().bottom);
    await eventually(async () => expect(await reach()).toBeGreaterThan(2300));
    await page.setViewportSize({ width: 1280, height: 800 });
    await eventually(async () => expect(await reach()).toBeLessThan(801));
  });

  test("all parts fold at once, and a saved file holds them folded", async () => {
    await line().first().click();
    await eventually(async () => expect(await line().first().textContent()).toBe("Unfold all"));
    await shot("all-folded");
    const [download] = await Promise.all([page.waitForEvent("download"), page.locator("#save").click()]);
    const parts = unzipSync(await readFile(await saved(download)));
    const sheets = Object.entries(parts).flatMap(([path, bytes]) =>
      /worksheets\/[^/]+\.xml$/.test(path) ? [strFromU8(bytes)] : [],
    );
    const loop = sheets.find((text) => text.includes('collapsed="1"'));
    expect(loop).toContain('<outlinePr summaryBelow="0"/>');
    const hidden = [...(loop ?? "").matchAll(/<row r="(\d+)"[^>]* hidden="1" outlineLevel="[12]"/g)].map(([, row]) =>
      Number(row),
    );
    expect(hidden).toContain(rowOf("Pool and pump") + 1);
    expect(hidden).not.toContain(rowOf("Calculation") + 1);
    expect(faults).toEqual([]);
  });
});
