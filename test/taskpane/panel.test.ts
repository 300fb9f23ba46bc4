import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, inEachMode, usePane } from "./browser";

describe.skipIf(!HAS_CHROMIUM)("The panel", { timeout: 30_000 }, () => {
  const pane = usePane();

  test("the tabs are one stop for the Tab key; arrows, Home and End move between them", async () => {
    await pane.open();
    const chosen = (): Promise<string | null> => pane.page.locator("[role=tab][aria-selected=true]").textContent();
    expect(await pane.page.locator("[role=tab][tabindex='0']").count()).toBe(1);
    await pane.page.getByRole("tab", { name: "Cautions" }).focus();
    for (const [key, name] of [
      ["ArrowRight", "Explain"],
      ["End", "Workbook"],
      ["ArrowRight", "Cautions"],
      ["ArrowLeft", "Workbook"],
      ["Home", "Cautions"],
    ] as const) {
      await pane.page.keyboard.press(key);
      expect(await chosen()).toBe(name);
      expect(await pane.page.evaluate(() => document.activeElement?.textContent)).toBe(name);
    }
  });

  const check = (): Promise<void> =>
    inEachMode(pane, async (mode) => {
      expect(await pane.violations(), mode).toEqual([]);
      expect(await pane.tooWide(), mode).toBe(0);
    });

  test("breaks no rule of accessibility and fits 320 px in every view, light, dark and in forced colours", async () => {
    await pane.open();
    await check();
    await pane.tab("Explain");
    await check();
    for (const cell of ["B7", "B10", "B12", "D3"]) {
      await pane.select("Pool loop", cell);
      await pane.page.locator("#view-explain .where", { hasText: cell }).waitFor();
      await check();
    }
    await pane.tab("Find");
    for (const name of ["PIPE.HEADLOSS", "REFRIG.LIST", "NOTE.WORKING"])
      await pane.page.locator("#view-find summary", { hasText: name }).click();
    await check();
    await pane.page.locator("fluent-text-input input").fill("zebra");
    await pane.page.locator("#view-find", { hasText: "No function or sheet matches" }).waitFor();
    await check();
    await pane.tab("Workbook");
    await check();
    await pane.page.evaluate(() => globalThis.book.type("Notes", "A1", "=_xldudf_WARMBACK_PIPE_VELOCITY(90,0)"));
    const steps = [
      ["Make a hand-over copy", /Make the copy/],
      ["Cancel: make no copy", /Make a hand-over copy/],
      ["Look for damaged formulas", /can be mended/],
      ["Mend 1 cell", /mended, |not mended: /],
    ] as const;
    for (const [name, said] of steps) {
      await pane.page.getByRole("button", { name }).click();
      await pane.page.locator("#view-workbook", { hasText: said }).waitFor();
      // Of a control under the pointer axe takes the colour that forced colours replace.
      await pane.page.mouse.move(0, 0);
      await check();
    }
  }, 90_000);

  test("breaks no rule of accessibility in an empty workbook, light, dark and in forced colours", async () => {
    await pane.open("?empty");
    await check();
  });
});
