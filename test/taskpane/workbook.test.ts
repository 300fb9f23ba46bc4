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

  test("lists damaged formulas, mends the chosen ones and says what each gives", async () => {
    await pane.open();
    await pane.tab("Workbook");
    await pane.page.evaluate(() => {
      globalThis.book.type("Notes", "B2", '=[2]!_xldudf_WARMBACK_PIPE_VELOCITY(90,"2 in")');
      globalThis.book.type("Notes", "B3", '=_xldudf_WARMBACK_PIPE_HEADLOSS(40,"2 in",-5)');
      globalThis.book.type("Notes", "B4", '=_xldudf_WARMBACK_PIPE_SIZES(40,"2 in")');
      globalThis.book.type("Notes", "B5", '=_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")');
      for (const at of ["B2", "B3", "B4", "B5"]) globalThis.book.hold("Notes", at, { code: "#NAME?" });
    });
    await pane.page.getByRole("button", { name: "Look for damaged formulas" }).click();
    await pane.page.locator("#view-workbook h4", { hasText: "3 cells can be mended" }).waitFor();
    expect(await outcomes()).toContain('now =[2]!_xldudf_WARMBACK_PIPE_VELOCITY(90,"2 in")');
    expect(await outcomes()).toContain('meant =WARMBACK.PIPE.VELOCITY(90,"2 in")');
    expect(await outcomes()).toContain("no function WARMBACK.PIPE.SIZES: is WARMBACK.PIPE.SIZE meant?");
    expect(await pane.page.evaluate(() => globalThis.book.written)).toEqual([]);
    await pane.page.getByRole("checkbox", { name: "Mend this cell" }).nth(2).uncheck();
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBeLessThanOrEqual(0);
    await pane.page.getByRole("button", { name: "Mend 2 cells" }).click();
    await until(async () => (await outcomes()).includes("Notes!B2 mended, 8.75"));
    expect(await outcomes()).toContain("Notes!B3 mended, still #VALUE!: length: must be at least 0 ft, got -5 ft");
    expect(await outcomes()).toContain("1 formula mended and calculates. 1 cell still shows an error or stayed.");
    expect(await pane.page.evaluate(() => globalThis.book.formula("Notes", "B5"))).toMatch(/_xldudf_/);
    await pane.page.getByRole("button", { name: "Go to Notes!B2" }).click();
    expect(await pane.selected()).toEqual({ sheet: "Notes", row: 1, column: 1 });
  });

  test("says that no formula needs mending where none does", async () => {
    await pane.open();
    await pane.tab("Workbook");
    await pane.page.getByRole("button", { name: "Look for damaged formulas" }).click();
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
