/** Calls with ranges in the panel: pictures beside the cell, and many runs with progress, Cancel and shares. */
import { describe, expect, test } from "vitest";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { HAS_CHROMIUM, usePane } from "./browser";
import { typed, YEAR, type Cells } from "./yearCells";

const RANGES = [
  ["wind at water", "log-normal", 1, "", 3.8],
  ["design load", "triangular", 50000, 75000, 90000],
  ["evaporation factor", "log-normal", 0.84, "", 1.19],
];

const CELLS: Cells = [
  ...typed(YEAR, "GH"),
  ...typed(MIAMI_MONTHS, "JKLMNO"),
  ...typed(RANGES, "QRSTU"),
  ["A1", '=WARMBACK.NOTE.UNCERTAINTY("COST.OFHEAT",W1:AA2,100000,"natural gas")'],
  ["W1", "price"],
  ["X1", "triangular"],
  ["Y1", 1.2],
  ["Z1", 1.4],
  ["AA1", 1.8],
  ["W2", "efficiency"],
  ["X2", "rectangular"],
  ["Y2", 0.7],
  ["AA2", 0.85],
  ["A80", "=WARMBACK.POOL.UNCERTAINTY(G1:H7,J1:O13,Q1:U3,8)"],
];

describe.skipIf(!HAS_CHROMIUM)("Many runs of a call with ranges", { timeout: 120_000 }, () => {
  const pane = usePane();
  const button = (name: RegExp) => pane.page.getByRole("button", { name });

  const shot = async (name: string): Promise<void> => {
    const folder = process.env["SHOTS"];
    if (folder !== undefined) await pane.page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  };

  /** Counts the figures that come in each task from now on. */
  const countFigures = async (): Promise<void> => {
    await pane.page.evaluate(() => {
      const tasks: number[] = [];
      let same = false;
      new MutationObserver((records) => {
        const added = records.flatMap((each) => [...each.addedNodes]).filter((each) => each.nodeName === "FIGURE");
        if (added.length === 0) return;
        if (same) tasks.push((tasks.pop() ?? 0) + added.length);
        else tasks.push(added.length);
        same = true;
        setTimeout(() => (same = false), 0);
      }).observe(document.body, { childList: true, subtree: true });
      Object.assign(globalThis, { figureTasks: tasks });
    });
  };

  const figureTasks = (): Promise<unknown> =>
    pane.page.evaluate(() => (globalThis as unknown as { figureTasks: unknown }).figureTasks);

  const show = async (cell: string, hidden = false): Promise<void> => {
    await pane.open("?empty", { viewport: { width: 340, height: 1800 } });
    // A hidden page calls back for no frame.
    if (hidden) await pane.page.evaluate(() => (globalThis.requestAnimationFrame = () => 0));
    await pane.page.evaluate(async (cells) => {
      for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
      await globalThis.book.calculate();
    }, CELLS);
    await pane.tab("Explain");
    await pane.select("Notes", cell);
    await pane.page.locator(".picture svg").nth(1).waitFor({ timeout: 60_000 });
  };

  test("shows distribution, ranking and, after many runs, the shares", async () => {
    await show("A1");
    expect(await pane.page.locator(".pictures figcaption").allTextContents()).toEqual([
      "How often: cost of the heat",
      "Inputs that rule: cost of the heat",
    ]);
    await shot("note");
    await countFigures();
    await button(/^Run 2,048 times/).click();
    await pane.page
      .getByText("2,048 runs for the distribution and 768 for the shares")
      .first()
      .waitFor({ timeout: 60_000 });
    await pane.page.locator(".picture svg").nth(4).waitFor({ timeout: 20_000 });
    await shot("note-study");
    expect(await figureTasks(), "figures in each task").toEqual([1, 1, 1]);
    expect(await pane.page.locator(".pictures figcaption").allTextContents()).toContain(
      "Shares in the spread: cost of the heat",
    );
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBe(0);
  });

  test("shows years as they are run, and stops when cancelled, in a page that draws no frame", async () => {
    await show("A80", true);
    await shot("pool");
    await button(/^Run 2,048 times/).click();
    await pane.page.getByText(/of 3,072 years/).waitFor({ timeout: 60_000 });
    await button(/^Cancel: Running POOL/).click();
    await pane.page.getByText("Cancelled.").waitFor();
    await button(/^Work it out/).waitFor();
    await shot("pool-cancelled");
  });
});
