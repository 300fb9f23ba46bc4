import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { printedEquations } from "../../scripts/help/forms";
import { HAS_CHROMIUM, until, usePane } from "./browser";

const FORMS = [...(await printedEquations(join(import.meta.dirname, "../../core"))).keys()];

describe.skipIf(!HAS_CHROMIUM)("Check and sign", { timeout: 30_000 }, () => {
  const pane = usePane(FORMS);
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

  test("prints a note of the marked cells with a repeated head and no part cut off", async () => {
    await pane.open();
    await pane.page.evaluate(() => {
      globalThis.print = () => undefined;
    });
    await pane.select("Pool loop", "B7");
    await pane.tab("Workbook");
    await pane.page.getByRole("button", { name: "Mark the selected cell" }).click();
    await pane.select("Pool loop", "D3");
    await pane.page.getByRole("button", { name: "Mark the selected cell" }).click();
    await pane.page.getByText("Head of the note").click();
    await pane.page.getByLabel("Project").fill("Fernhill Hall (invented)");
    expect(await pane.violations()).toEqual([]);
    await pane.page.getByRole("button", { name: "Print the note" }).click();
    await pane.page.locator(".note-paper .note-sheet").nth(1).waitFor({ state: "attached" });
    await pane.page.setViewportSize({ width: 690, height: 980 });
    await pane.page.emulateMedia({ media: "print" });
    expect(await pane.page.locator(".panel").first().isVisible()).toBe(false);
    const heads = await pane.page.locator(".note-sheet > thead").allTextContents();
    expect(heads.map((text) => /Sheet ?(\d of \d)/.exec(text)?.[1])).toEqual(["1 of 2", "2 of 2"]);
    expect(heads[0]).toContain("Fernhill Hall (invented)");
    const cut = await pane.page.evaluate(() =>
      [...document.querySelectorAll(".note-paper td, .note-paper th, .note-equation")]
        .filter((one) => one.scrollWidth > one.clientWidth + 1)
        .map((one) => one.textContent),
    );
    expect(cut).toEqual([]);
    if (process.env["SHOTS"] !== undefined)
      await pane.page.screenshot({ path: `${process.env["SHOTS"]}/note.png`, fullPage: true });
    await pane.page.evaluate(() => dispatchEvent(new Event("afterprint")));
    expect(await pane.page.locator(".note-paper").count()).toBe(0);
  });

  test("inserts a note of the explained cell as sheets and copies it as text", async () => {
    await pane.open();
    await pane.page.evaluate(() => {
      const clipboard = { writeText: async (text: string) => void (document.title = text) };
      Object.defineProperty(navigator, "clipboard", { value: clipboard });
    });
    await pane.select("Pool loop", "B8");
    await pane.tab("Explain");
    await until(async () => (await pane.text("#view-explain")).includes("PIPE.VELOCITY"));
    await pane.page.locator("#view-explain").getByRole("button", { name: "Note as sheets" }).click();
    await until(async () => (await pane.text("#view-explain")).includes("1 sheet inserted"));
    expect(await pane.page.evaluate(() => globalThis.book.inserted)).toEqual(["calculation-note"]);
    await pane.page.locator("#view-explain").getByRole("button", { name: "Copy the note" }).click();
    await until(async () => (await pane.page.title()).includes("v = 4 * Q / (pi * D^2)"));
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBeLessThanOrEqual(0);
  });
});
