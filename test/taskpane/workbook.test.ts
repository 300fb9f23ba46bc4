import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, until, usePane } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("The view Workbook", { timeout: 30_000 }, () => {
  const pane = usePane();
  const outcomes = (): Promise<string> => pane.text("#view-workbook");

  test("makes a hand-over copy by keyboard alone and announces it in a live region", async () => {
    await pane.open();
    await pane.page.getByRole("tab", { name: "Cautions" }).focus();
    for (const key of ["End", "Tab", "Enter"]) await pane.page.keyboard.press(key);
    const told = pane.page.locator("#view-workbook [role=status]", { hasText: "Made the file Copy.xlsx" });
    await told.waitFor();
    expect(await told.textContent()).toBe(
      "Made the file Copy.xlsx: 10 formulas became values, 10 of them call these functions. Your own sheets are as they were." +
        "1 cell is out of date: recalculate under Cautions and make the copy again.",
    );
    const handed = await pane.page.evaluate(() => globalThis.book.handed);
    expect(handed[0]?.sheets.map(({ sheet }) => sheet)).toEqual(["Pool loop", "Refrigerant"]);
    expect(handed[0]?.record.name).toBe("Record");
    expect(await pane.page.evaluate(() => globalThis.book.formula("Pool loop", "B7"))).toMatch(/^=WARMBACK/);
  });

  test("says that there is nothing to hand over where no cell uses us", async () => {
    await pane.open("?empty");
    await pane.tab("Workbook");
    await pane.page.getByRole("button", { name: "Make a hand-over copy" }).click();
    await until(async () => (await outcomes()).includes("No cell of this workbook uses these functions."));
    expect(await pane.page.evaluate(() => globalThis.book.handed)).toEqual([]);
  });

  test("mends lost calls, says how many and leads to them", async () => {
    await pane.open();
    await pane.tab("Workbook");
    await pane.page.evaluate(() => {
      globalThis.book.type("Notes", "B2", '=[2]!_xldudf_WARMBACK_PIPE_VELOCITY(90,"2 in")');
      globalThis.book.hold("Notes", "B2", { code: "#NAME?" });
    });
    await pane.page.getByRole("button", { name: "Mend formulas" }).click();
    await pane.page.locator("#view-workbook [role=status]", { hasText: "1 formula mended." }).waitFor();
    expect(await pane.page.evaluate(() => globalThis.book.formula("Notes", "B2"))).toBe(
      '=WARMBACK.PIPE.VELOCITY(90,"2 in")',
    );
    await pane.page.getByRole("button", { name: "Go to Notes!B2" }).click();
    expect(await pane.selected()).toEqual({ sheet: "Notes", row: 1, column: 1 });
    await pane.page.getByRole("button", { name: "Mend formulas" }).click();
    await until(async () => (await outcomes()).includes("No formula needs mending."));
  });

  test("computes every published value again, the slow functions' too", async () => {
    await pane.open();
    await pane.tab("Workbook");
    await pane.page.getByRole("button", { name: "Run the checks" }).click();
    const told = pane.page.locator("#view-workbook [role=status]", { hasText: "published values agree." });
    await told.waitFor({ timeout: 60_000 });
    const [, agree = "", all = ""] = /(\d+) of (\d+) published values/.exec((await told.textContent()) ?? "") ?? [];
    expect(Number(all)).toBeGreaterThan(300);
    expect(agree).toBe(all);
  }, 90_000);
});
