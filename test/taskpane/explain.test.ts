import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, until, usePane } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("The view Explain", { timeout: 30_000 }, () => {
  const pane = usePane(["v = 4 * Q / (pi * D^2)"]);
  const shown = (): Promise<string> => pane.text("#view-explain");

  test("follows the selection: arguments with unit and default mark, value, cautions, help page", async () => {
    await pane.open();
    await pane.tab("Explain");
    expect(await shown()).toContain("Select a cell to see how its value comes about.");
    await pane.select("Pool loop", "B7");
    await pane.page.locator("#view-explain .result").waitFor();
    expect(await pane.page.locator("#view-explain .result").textContent()).toMatch(/^11\.5\d* ft$/);
    const argument = (name: string): Promise<string | null> =>
      pane.page
        .locator("#view-explain .argument", { has: pane.page.locator("dt", { hasText: name }) })
        .first()
        .textContent();
    expect(await argument("flow")).toBe("flow90 gpmwater flow");
    expect(await argument("water")).toContain("waterdefault80 °F");
    expect(await pane.page.locator("#view-explain .caution").textContent()).toContain("PIPE-FAST-WATER");
    expect(await pane.page.locator("#view-explain a").getAttribute("href")).toBe("help/PIPE.HEADLOSS.html");
  });

  test("shows the working: equations as MathML where rendered, else as text, with numbers, value and source", async () => {
    await pane.open();
    await pane.tab("Explain");
    await pane.select("Pool loop", "B8");
    await pane.page.locator("#view-explain math").waitFor();
    const step = pane.page.locator("#view-explain .steps > li", { hasText: "Mean velocity" });
    expect(await step.locator("mfrac").count()).toBeGreaterThan(0);
    expect(await step.textContent()).toMatch(/= 4 \* 0\.00567812.*v = 2\.669 m\/s = 8\.757 ft\/s/);
    await pane.select("Pool loop", "B7");
    await pane.page.locator("#view-explain code", { hasText: "Re = rho * v * D / mu" }).waitFor();
  });

  test("shows the whole error, and which argument is meant", async () => {
    await pane.open();
    await pane.tab("Explain");
    await pane.select("Pool loop", "B10");
    await pane.page.locator("#view-explain .fault").first().waitFor();
    expect(await pane.page.locator("#view-explain .fault").allTextContents()).toEqual([
      "#VALUE! length: must be at least 0 ft, got -5 ft",
    ]);
    expect(await shown()).toContain("length-5 ftlength of straight pipe");
    expect(await shown()).not.toContain("Working");
  });

  test("says which argument can't be read and what to do", async () => {
    await pane.open();
    await pane.tab("Explain");
    await pane.select("Pool loop", "B12");
    await pane.page.locator("#view-explain .sentence").waitFor();
    expect(await pane.page.locator("#view-explain .sentence").textContent()).toBe(
      "argument 1 is an expression we can't read: put it in its own cell to see its working",
    );
  });

  test("says when a cell is out of date and recalculates it", async () => {
    await pane.open();
    await pane.page.evaluate(() => globalThis.book.hold("Pool loop", "B13", 3));
    await pane.tab("Explain");
    await pane.select("Pool loop", "B13");
    const button = pane.page.getByRole("button", { name: "Recalculate" });
    await pane.page.locator("#view-explain", { hasText: "Out of date: recalculate. The cell holds 3;" }).waitFor();
    await button.press("Enter");
    await until(async () => !(await shown()).includes("Out of date"));
    expect(await pane.page.evaluate(() => globalThis.book.value("Pool loop", "B13"))).toBeCloseTo(39.34, 1);
    // The button is gone: the focus is on the view's heading, not lost.
    expect(await pane.page.evaluate(() => document.activeElement?.textContent)).toBe("Explain");
    expect(await pane.page.evaluate(() => document.activeElement?.tagName)).toBe("H2");
  });

  test("says what the cell holds where its formula makes more of our call's result, and only there", async () => {
    await pane.open();
    await pane.tab("Explain");
    await pane.select("Pool loop", "B8");
    await until(async () => (await pane.text("#view-explain .where")) === "'Pool loop'!B8");
    const now = await pane.page.evaluate(() => globalThis.book.value("Pool loop", "B8"));
    await pane.page.evaluate((value) => {
      globalThis.book.type("Notes", "A1", '=WARMBACK.PIPE.VELOCITY(90,"2 in")+0');
      globalThis.book.hold("Notes", "A1", value);
    }, now);
    await pane.select("Notes", "A1");
    await until(async () => (await pane.text("#view-explain .where")) === "Notes!A1 holds 8.757");
  });

  test("shows the first rows of a long table and says how many more there are", async () => {
    await pane.open();
    await pane.page.evaluate(async () => {
      globalThis.book.type("Notes", "A1", '=WARMBACK.REFRIG.CHART("R-410A",20,120,2)');
      await globalThis.book.calculate();
    });
    await pane.tab("Explain");
    await pane.select("Notes", "A1");
    await pane.page.locator("#view-explain table").waitFor();
    // 20 to 120 by 2 is 51 rows below the header.
    expect(await pane.page.locator("#view-explain tbody tr").count()).toBe(14);
    expect(await shown()).toContain("37 more rows in the sheet.");
  });

  test("leads from a cell of a table to the formula that spills it", async () => {
    await pane.open();
    await pane.tab("Explain");
    await pane.select("Pool loop", "E5");
    await pane.page.getByRole("button", { name: "Go to 'Pool loop'!D3" }).click();
    expect(await pane.selected()).toEqual({ sheet: "Pool loop", row: 2, column: 3 });
    await until(async () => (await pane.page.locator("#view-explain table:not(.pictures table)").count()) === 1);
  });
});
