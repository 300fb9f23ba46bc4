import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, until, usePane } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("The view Find", { timeout: 30_000 }, () => {
  const pane = usePane();
  test("finds by words and inserts the example at the selected cell, by keyboard alone", async () => {
    await pane.open();
    await pane.select("Notes", "C4");
    await pane.page.getByRole("tab", { name: "Cautions" }).focus();
    for (const key of ["End", "ArrowLeft"]) await pane.page.keyboard.press(key);
    await pane.page.keyboard.press("Tab");
    // As one entry: results of its first letters would make room for those of all while Tab goes on.
    await pane.page.keyboard.insertText("friction in pipes");
    await pane.page.locator("#view-find .results > h3").waitFor();
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Enter");
    const insert = pane.page.getByRole("button", { name: "Insert at the selected cell: PIPE.HEADLOSS" });
    await insert.waitFor();
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Enter");
    await until(
      async () => (await pane.page.locator(".status").textContent()) === "Inserted PIPE.HEADLOSS at Notes!C4.",
    );
    expect(await pane.page.evaluate(() => globalThis.book.formula("Notes", "C4"))).toMatch(
      /^=WARMBACK\.PIPE\.HEADLOSS\(40,"2 in",100/,
    );
  });

  test("never writes over what a cell holds", async () => {
    await pane.open();
    await pane.select("Pool loop", "B3");
    await pane.tab("Find");
    await pane.page.locator("#view-find summary", { hasText: "PIPE.BORE" }).click();
    await pane.page.getByRole("button", { name: "Insert at the selected cell: PIPE.BORE" }).click();
    await until(
      async () => (await pane.page.locator(".status").textContent()) === "B3 is not empty: select an empty cell.",
    );
    expect(await pane.page.evaluate(() => globalThis.book.written)).toEqual([]);
  });

  test("asks for a cell where none is selected", async () => {
    await pane.open();
    await pane.tab("Find");
    await pane.page.locator("#view-find summary", { hasText: "PIPE.BORE" }).click();
    await pane.page.getByRole("button", { name: "Insert at the selected cell: PIPE.BORE" }).click();
    await until(async () => (await pane.page.locator(".status").textContent()) === "Select a cell first.");
  });

  test("says what to try where nothing is found", async () => {
    await pane.open();
    await pane.tab("Find");
    await pane.page.locator("fluent-text-input input").fill("zebra");
    await pane.page.locator("#view-find", { hasText: "No function or sheet matches “zebra”." }).waitFor();
  });
});
