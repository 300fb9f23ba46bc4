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

  test("compares two sheets of the workbook", async () => {
    await pane.open();
    await pane.page.evaluate(async () => {
      globalThis.book.type("Notes", "A3", "Flow");
      globalThis.book.type("Notes", "B3", 50);
      globalThis.book.type("Refrigerant", "A3", "Flow");
      globalThis.book.type("Refrigerant", "B3", 40);
      await globalThis.book.calculate();
    });
    await pane.tab("Workbook");
    await until(async () => (await pane.page.locator("#compare-before option").count()) > 3);
    await pane.page.getByLabel("Before").selectOption({ label: "This workbook: Refrigerant" });
    await pane.page.getByLabel("After").selectOption({ label: "This workbook: Notes" });
    await pane.page.getByRole("button", { name: "Compare", exact: true }).click();
    await until(async () => (await view()).includes("1 cell compared: 1 input and 0 results differ"));
    expect(await view()).toContain("40 → 50 (+10, +25%)");
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBeLessThanOrEqual(0);
  });

  test("compares the cells with this edition, and names what the change log doesn't explain", async () => {
    await pane.open();
    await pane.page.evaluate(() => globalThis.book.hold("Pool loop", "B8", 3.1));
    await pane.tab("Workbook");
    await pane.page.getByRole("button", { name: "Check this workbook" }).click();
    await until(async () => (await view()).includes("stored 3.1, now 8.75"));
    expect(await view()).toContain("No sheet says which edition made it.");
    expect(await pane.violations()).toEqual([]);
  });

  test("lists who uses the functions, failures first, filtered, at most 24 at once", async () => {
    await pane.open();
    await pane.page.evaluate(async () => {
      for (let row = 1; row <= 40; row++)
        globalThis.book.type("Notes", `F${String(row)}`, '=WARMBACK.PIPE.BORE("2 in")');
      await globalThis.book.calculate();
    });
    await pane.tab("Workbook");
    await pane.page.getByRole("button", { name: "List the cells" }).click();
    const items = pane.page.locator("section[aria-labelledby=uses-title] li");
    await until(async () => (await items.count()) === 25);
    expect(await items.first().textContent()).toContain("#VALUE!");
    await pane.page.getByLabel("Filter by function").fill("bore notes");
    await until(async () => (await view()).includes("40 uses, 0 fail"));
    expect(await items.count()).toBe(25);
    await pane.page.getByRole("button", { name: "Show 16 more" }).click();
    expect(await items.count()).toBe(40);
    if (process.env["SHOTS"] !== undefined) {
      await pane.page.getByLabel("Filter by function").fill("loop");
      await pane.page.screenshot({ path: `${process.env["SHOTS"]}/workbook.png`, fullPage: true });
    }
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBeLessThanOrEqual(0);
  });
});
