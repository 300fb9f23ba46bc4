/** Drives the page: waits until it has started, goes to a cell, reads what the line above the grid says. */
import type { Page } from "playwright-core";

export const said = (page: Page, text: string | RegExp): Promise<void> =>
  page.locator("#said", { hasText: text }).waitFor();

/** The sheet is there, calculated and drawn, and files can be saved. */
export async function started(page: Page): Promise<void> {
  await said(page, /^A1 /);
  await page.locator("#save:enabled").waitFor();
  await page.locator("#sheet:not([aria-busy])").waitFor();
}

/** Selects a cell; rows and columns count from 0. */
export async function goToCell(page: Page, sheet: string, row: number, column: number): Promise<void> {
  await page.evaluate((cell) => globalThis.warmbackPreview?.workbook.select(cell), { sheet, row, column });
}

/** The row of the first formula in the column of values that calls a function. */
export async function rowOfCall(page: Page, sheet: string, call: string): Promise<number> {
  const row = await page.evaluate(
    async ({ name, text }) => {
      const area = { sheet: name, row: 0, column: 1, rows: 300, columns: 1 };
      const [block] = (await globalThis.warmbackPreview?.workbook.read([area])) ?? [];
      return block?.formulas.findIndex(([formula = ""]) => formula.includes(text)) ?? -1;
    },
    { name: sheet, text: call },
  );
  if (row < 0) throw new Error(`${sheet} has no formula with ${call}`);
  return row;
}
