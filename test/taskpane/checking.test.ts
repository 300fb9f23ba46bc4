import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, until, usePane } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("Check and sign", { timeout: 30_000 }, () => {
  const pane = usePane();
  const view = (): Promise<string> => pane.text("#view-workbook");

  test("makes a check table of the marked cells", async () => {
    await pane.open();
    await pane.select("Pool loop", "B7");
    await pane.tab("Explain");
    await pane.page.getByRole("button", { name: "Mark this cell" }).click();
    await pane.tab("Workbook");
    await until(async () => (await view()).includes("1 cell marked:"));
    await pane.select("Pool loop", "B8");
    await pane.page.getByRole("button", { name: "Mark the selected cell" }).click();
    await until(async () => (await view()).includes("2 cells marked:"));
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBeLessThanOrEqual(0);
    await pane.page.getByRole("button", { name: "Make a check table" }).click();
    await until(async () => (await view()).includes("Inserted as the sheet “Check table”."));
    expect(await pane.page.evaluate(() => globalThis.book.inserted)).toEqual(["check-table"]);
    await pane.page.getByRole("button", { name: "Take all out" }).click();
    await until(async () => (await view()).includes("No cell is marked yet."));
  });
});
