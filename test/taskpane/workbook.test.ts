import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, until, usePane } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("The view Workbook", { timeout: 30_000 }, () => {
  const pane = usePane();
  const outcomes = (): Promise<string> => pane.text("#view-workbook");

  const button = (name: string | RegExp) => pane.page.getByRole("button", { name });
  const box = (name: string | RegExp) => pane.page.getByRole("checkbox", { name });
  const sheetsDelivered = () =>
    pane.page.evaluate(() => globalThis.book.delivered.map(({ name, bytes }) => ({ name, size: bytes.length })));
  const choose = async (query = "") => {
    await pane.open(query);
    await pane.tab("Workbook");
    await button("Make a hand-over copy").click();
    await pane.page.getByRole("heading", { name: "What to hand over" }).waitFor();
  };

  test("makes a hand-over copy by keyboard alone and announces it in a live region", async () => {
    await pane.open();
    await pane.page.getByRole("tab", { name: "Cautions" }).focus();
    const press = async (...keys: readonly string[]) => {
      for (const key of keys) await pane.page.keyboard.press(key);
    };
    await press("End", "Tab", "Enter");
    const heading = pane.page.getByRole("heading", { name: "What to hand over" });
    await heading.waitFor();
    await until(() => heading.evaluate((node) => node === document.activeElement));
    const focused = () => pane.page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset["key"]);
    for (let steps = 0; steps < 60 && (await focused()) !== "project"; steps++) await press("Tab");
    await pane.page.keyboard.type("Fernhill Hall");
    for (let steps = 0; steps < 60 && (await focused()) !== "make copy"; steps++) await press("Tab");
    expect(await focused()).toBe("make copy");
    await press("Enter");
    const told = pane.page.locator("#view-workbook [role=status]", { hasText: "The copy is the file" });
    await told.waitFor();
    const text = (await told.textContent()) ?? "";
    expect(text).toContain("The copy is the file Pool loop hand-over copy.xlsx.");
    expect(text).toContain("10 formulas became values, 10 of them call these functions.");
    expect(text).toContain(
      "1 cell shows an error in the copy, 1 on the same sheets here. Your own workbook is as it was.",
    );
    expect(text).toContain("Sheets: Pool loop, Refrigerant, Read me, Record, For the supplier.");
    expect((await sheetsDelivered()).map(({ name }) => name)).toEqual(["Pool loop hand-over copy.xlsx"]);
    expect(await pane.page.evaluate(() => globalThis.book.formula("Pool loop", "B7"))).toMatch(/^=WARMBACK/);
  });

  test("says before asking how many cells show an error, differ or can't be read, and leads to them", async () => {
    await choose();
    const text = await outcomes();
    expect(text).toContain("1 cell shows an error, and so will the copy.");
    expect(text).toContain("1 cell has a formula that can't be read in full");
    expect(await button("Make the copy all the same").count()).toBe(1);
    await button("Go to 'Pool loop'!B10").first().click();
    expect(await pane.selected()).toEqual({ sheet: "Pool loop", row: 9, column: 1 });
  });

  test("proposes the sheets with our functions, and refuses a choice of none with a sentence", async () => {
    await choose();
    const ticked = async () => Promise.all(["Pool loop", "Refrigerant", "Notes"].map((name) => box(name).isChecked()));
    expect(await ticked()).toEqual([true, true, false]);
    await box("Pool loop").uncheck();
    await box("Refrigerant").uncheck();
    await until(async () => (await outcomes()).includes("Choose at least one sheet to hand over."));
    await button(/^Make the copy/).click();
    await until(async () =>
      (await outcomes()).includes("Nothing was changed: Choose at least one sheet to hand over."),
    );
    expect(await sheetsDelivered()).toEqual([]);
  });

  test.each([320, 480])("the choices fit a pane of %i px, and a checker finds nothing in them", async (width) => {
    await pane.open("", { viewport: { width, height: 700 } });
    await pane.tab("Workbook");
    await button("Make a hand-over copy").click();
    await pane.page.getByRole("heading", { name: "What to hand over" }).waitFor();
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBe(0);
  });

  test("leaves the workbook alone where the choices are left", async () => {
    await choose();
    await button("Cancel: make no copy").click();
    expect(await pane.page.getByRole("heading", { name: "What to hand over" }).count()).toBe(0);
    expect(await sheetsDelivered()).toEqual([]);
  });

  test("where the host doesn't give its file, takes the saved one, and copies sheets only as the last way", async () => {
    await choose();
    const saved = await pane.page.evaluate(async () => [...(await globalThis.book.workbook.documentBytes())]);
    await pane.page.evaluate(
      () => void (globalThis.book.refusal = "this Excel doesn't give an add-in the workbook's file"),
    );
    await button("Make a hand-over copy").click();
    await until(async () =>
      (await outcomes()).includes("Nothing was changed: this Excel doesn't give an add-in the workbook's file."),
    );
    expect(await outcomes()).toContain("The last way: new sheets of this workbook hold the values.");
    expect(await pane.violations()).toEqual([]);
    await pane.page.getByLabel(/Save the workbook and drop its file here/).setInputFiles({
      name: "Saved.xlsx",
      mimeType: "application/octet-stream",
      buffer: Buffer.from(saved),
    });
    await button(/^Make the copy/).click();
    await until(async () => (await outcomes()).includes("The copy is the file Saved hand-over copy.xlsx."));
    await button("Make a hand-over copy").click();
    await button("Copy the sheets in this workbook").click();
    await until(async () =>
      (await outcomes()).includes("Made the new sheets “Pool loop values”, “Record”: 10 formulas became values"),
    );
    expect(await pane.page.evaluate(() => globalThis.book.copied.length)).toBe(1);
  });

  test("says that there is nothing to hand over where no cell uses us", async () => {
    await pane.open("?empty");
    await pane.tab("Workbook");
    await button("Make a hand-over copy").click();
    await until(async () => (await outcomes()).includes("No cell of this workbook uses these functions."));
    expect(await sheetsDelivered()).toEqual([]);
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
