import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, until, usePane } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("The view Cautions", { timeout: 30_000 }, () => {
  const pane = usePane();
  test("cautions are sorted by severity, the gravest first, each a word beside a shape", async () => {
    await pane.open();
    expect(await pane.page.locator("#view-cautions h4.level .severity").allTextContents()).toEqual([
      "Danger",
      "Warning",
      "Notice",
    ]);
    expect(await pane.page.locator("#view-cautions h4.level .severity svg").count()).toBe(3);
    const warning = pane.page.locator("#view-cautions .card.severity-warning", { hasText: "PIPE-FAST-WATER" });
    expect(await warning.getByRole("button", { name: "Go to 'Pool loop'!B7" }).count()).toBe(1);
  });

  test("a caution leads to the cell that raises it, by click and by Enter", async () => {
    await pane.open();
    await pane.page.getByRole("button", { name: "Go to Refrigerant!A1" }).first().click();
    expect(await pane.selected()).toEqual({ sheet: "Refrigerant", row: 0, column: 0 });
    await pane.page.getByRole("button", { name: "Go to 'Pool loop'!B9" }).first().press("Enter");
    expect(await pane.selected()).toEqual({ sheet: "Pool loop", row: 8, column: 1 });
  });

  test("the view counts the cells and shows those that fail with their whole text", async () => {
    await pane.open();
    expect(await pane.page.locator("#view-cautions > .view > div > .quiet").first().textContent()).toBe(
      "10 cells use these functions, 1 fails.",
    );
    const failing = pane.page.locator("section", { hasText: "Cells that fail" });
    expect(await failing.textContent()).toContain("#VALUE!length: must be at least 0 ft, got -5 ft");
    expect(await pane.page.locator("section", { hasText: "Not checked" }).textContent()).toMatch(/Pool loopB12$/);
  });

  test("a sheet is named once before its cells; the buttons' names are whole", async () => {
    await pane.open();
    const note = pane.page.locator("#view-cautions .notes > li", { hasText: "PIPE.HEADLOSS" }).first();
    const sheet = note.locator("ul.plain > li").first();
    expect(await sheet.locator(".sheet-name").textContent()).toBe("Pool loop");
    const [first] = await sheet.getByRole("button").all();
    expect(await first?.textContent()).toMatch(/^B\d+$/);
    expect(await first?.getAttribute("aria-label")).toBe(`Go to 'Pool loop'!${(await first?.textContent()) ?? ""}`);
  });

  test("only the changed sheet is read again, 300 ms after the last of several changes", async () => {
    await pane.open();
    await pane.page.evaluate(async () => {
      globalThis.book.asked.used.length = 0;
      globalThis.book.type("Pool loop", "B3", 20);
      await globalThis.book.calculate();
      for (let at = 0; at < 3; at++) {
        globalThis.book.changed("Pool loop");
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    });
    expect(await pane.page.evaluate(() => globalThis.book.asked.used)).toEqual([]);
    await until(async () => (await pane.page.getByRole("button", { name: "Go to 'Pool loop'!B7" }).count()) === 0);
    expect(await pane.page.evaluate(() => globalThis.book.asked.used)).toEqual(["Pool loop"]);
  });

  test("a scan waits while another view shows and is caught up when the view shows again", async () => {
    await pane.open();
    await pane.tab("Find");
    await pane.page.evaluate(() => {
      globalThis.book.asked.used.length = 0;
      globalThis.book.changed("Refrigerant");
    });
    await pane.page.waitForTimeout(500);
    expect(await pane.page.evaluate(() => globalThis.book.asked.used)).toEqual([]);
    await pane.tab("Cautions");
    await until(async () => pane.page.evaluate(() => globalThis.book.asked.used.join() === "Refrigerant"));
  });

  test("the focus stays on the same cell's button when cautions are drawn again", async () => {
    await pane.open();
    const button = pane.page.getByRole("button", { name: "Go to 'Pool loop'!B9" }).first();
    await button.focus();
    await pane.page.evaluate(async () => {
      globalThis.book.type("Pool loop", "B3", 20);
      await globalThis.book.calculate();
      globalThis.book.changed("Pool loop");
    });
    await until(async () => (await pane.page.getByRole("button", { name: "Go to 'Pool loop'!B7" }).count()) === 0);
    expect(await pane.page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe(
      "Go to 'Pool loop'!B9",
    );
  });

  test("buttons of an earlier scan leave the memory", async () => {
    await pane.open();
    const scanAgain = async (): Promise<void> => {
      await pane.page.evaluate(async () => {
        const list = document.querySelector("#view-cautions h3");
        globalThis.book.changed("Pool loop");
        while (list?.isConnected === true) await new Promise((resolve) => setTimeout(resolve, 10));
      });
    };
    const session = await pane.page.context().newCDPSession(pane.page);
    const buttons = await pane.page.evaluateHandle(() =>
      [...document.querySelectorAll("#view-cautions fluent-button")].map((button) => new WeakRef(button)),
    );
    expect(await buttons.evaluate((all) => all.length)).toBeGreaterThan(0);
    await scanAgain();
    // What a task has looked at stays until it ends.
    await pane.page.waitForTimeout(0);
    await session.send("HeapProfiler.collectGarbage");
    expect(await buttons.evaluate((all) => all.filter((button) => button.deref() !== undefined).length)).toBe(0);
  });

  test("a workbook without our functions is offered the starter sheets", async () => {
    await pane.open("?empty");
    expect(await pane.page.locator("#view-cautions").textContent()).toContain(
      "No cell of this workbook uses these functions yet.",
    );
    await pane.page.getByRole("button", { name: "Insert sheet: Recovery sizing" }).first().click();
    expect(await pane.page.evaluate(() => globalThis.book.inserted)).toEqual(["sample"]);
    expect(await pane.page.locator(".status").textContent()).toBe("Inserted as the sheet “Recovery sizing”.");
  });
});
