/** The panel over a host whose every answer is a round trip. */
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { HAS_CHROMIUM, until, usePane, type Odd } from "./browser";
import { YEAR_CELLS } from "./yearCells";

/** The worker's script never comes: whatever is asked of it is waited for. */
const SILENT: Odd = {
  before: async (page: Page) => {
    await page.route("**/worker.js?v=*", () => undefined);
  },
};

/** The page's time goes on as usual, and can be let pass at once: all its timers then come in their order. */
const OWN_TIME: Odd = { before: (page: Page) => page.clock.install() };

/** A box over work that waits for the host is shown after 3 s. */
const BOX_AFTER = 3000;

describe.skipIf(!HAS_CHROMIUM)("Over a slow host", { timeout: 60_000 }, () => {
  const pane = usePane();
  const explain = "#view-explain";
  const cautions = "#view-cautions";

  /** Lets each answer of the host take so many milliseconds. */
  const slow = (delay: number): Promise<void> =>
    pane.page.evaluate((wait) => {
      const host = globalThis as unknown as { delay: number | undefined };
      const book = globalThis.book.workbook as unknown as Record<string, (...asked: unknown[]) => Promise<unknown>>;
      const begun = host.delay !== undefined;
      host.delay = wait;
      for (const name of begun ? [] : ["read", "sheets", "used", "selection", "resolve", "documentBytes"]) {
        const quick = book[name];
        book[name] = async (...asked) => {
          await new Promise((done) => setTimeout(done, host.delay));
          return quick?.(...asked);
        };
      }
    }, delay);
  const open = async (query = "?session", odd: Odd = {}): Promise<void> => {
    await pane.open(query, {}, odd);
    await pane.page.evaluate(() => globalThis.book.calculate());
    await pane.tab("Explain");
  };
  const changed = (sheet: string): Promise<void> => pane.page.evaluate((name) => globalThis.book.changed(name), sheet);
  const button = (name: RegExp) => pane.page.getByRole("button", { name });
  const focused = (): Promise<string> =>
    pane.page.evaluate(() => {
      const active = document.activeElement;
      return active?.getAttribute("data-key") ?? active?.textContent ?? "";
    });
  const spoken = (): Promise<string> => pane.text(".unseen[role=status]");
  /** What can be seen of going work, and what is spoken, noted as it changes until it is asked for. */
  const watch = (view: string) =>
    pane.page.evaluateHandle((where) => {
      const seen: string[] = [];
      const look = (): void => {
        const box = document.querySelector(`${where} .going .progress:not([hidden]), ${where} .call .progress`);
        if (box !== null) seen.push(`box: ${box.textContent ?? ""}`);
        seen.push(`said: ${document.querySelector(".unseen[role=status]")?.textContent ?? ""}`);
        seen.push(
          `focus: ${document.activeElement?.getAttribute("data-key") ?? document.activeElement?.tagName ?? ""}`,
        );
      };
      new MutationObserver(look).observe(document.body, { subtree: true, childList: true, attributes: true });
      return seen;
    }, view);

  test("a change leaves the selected cell's content, the focus and the live region alone while the host reads", async () => {
    await open();
    await pane.select("Pool loop", "B7");
    await pane.page.locator(`${explain} .result`).waitFor();
    await pane.page.locator(`${explain} summary`).first().focus();
    const before = [await focused(), await spoken()];
    await slow(150);
    const seen = await watch(explain);
    await pane.page.evaluate(async () => {
      globalThis.book.type("Pool loop", "B3", 45);
      await globalThis.book.calculate();
      globalThis.book.changed("Pool loop");
    });
    await until(async () => (await pane.text(explain)).includes("flow45 gpm"));
    expect(new Set(await seen.jsonValue())).toEqual(new Set([`said: ${before[1] ?? ""}`, `focus: ${before[0] ?? ""}`]));
  });

  test("a read that was overtaken shows and says nothing, however late its answer", async () => {
    await open("?session", OWN_TIME);
    await slow(600_000);
    const seen = await watch(explain);
    await pane.select("Pool loop", "B7");
    await pane.page.clock.runFor(200);
    await slow(0);
    await pane.select("Notes", "B1");
    await until(async () => (await pane.text(explain)).includes("Notes!B1 holds no formula."));
    await pane.page.clock.runFor(4000);
    expect(await pane.text(explain)).toContain("Notes!B1 holds no formula.");
    expect((await seen.jsonValue()).filter((each) => each.includes("Working out"))).toEqual([]);
  });

  test("a heavy call that is computed again shows its box above the content, and takes no focus", async () => {
    await open("?empty", SILENT);
    await pane.page.evaluate((cells) => {
      globalThis.book.type("Pool loop", "B7", '=WARMBACK.PIPE.HEADLOSS(90,"2 in",100)');
      for (const [at, content] of cells) globalThis.book.type("Pool loop", at, content);
    }, YEAR_CELLS);
    await pane.select("Pool loop", "B7");
    await pane.page.locator(`${explain} .result`).waitFor();
    await pane.page.locator(`${explain} summary`).first().focus();
    const before = await focused();
    await pane.page.evaluate(() => {
      globalThis.book.type(
        "Pool loop",
        "B7",
        '=WARMBACK.PIPE.HEADLOSS(90,"2 in",100)+INDEX(WARMBACK.POOL.YEAR(G1:H7,J1:O13),2,2)',
      );
      globalThis.book.changed("Pool loop");
    });
    await button(/^Cancel: Working out what the cell gives$/).waitFor();
    expect(await pane.page.locator(`${explain} .result`).count()).toBe(1);
    expect(await focused()).toBe(before);
    // Another cell's content doesn't stand under the box for long.
    await pane.page.evaluate((cells) => {
      for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
    }, YEAR_CELLS);
    await pane.select("Notes", "A80");
    await until(async () => (await pane.page.locator(`${explain} .where`).textContent()) === "Notes!A80");
    expect(await pane.page.locator(`${explain} .result`).count()).toBe(0);
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBe(0);
  });

  test("Cancel ends the waiting for a host that doesn't answer, and what was there stays", async () => {
    await open("?session", OWN_TIME);
    await pane.select("Pool loop", "B7");
    await pane.page.locator(`${explain} .result`).waitFor();
    await slow(600_000);
    await changed("Pool loop");
    await pane.page.clock.runFor(BOX_AFTER);
    await button(/^Cancel: Working out what the cell gives$/).press("Enter");
    await until(async () => (await pane.text(explain)).includes("Cancelled. The cell keeps what it holds."));
    expect(await spoken()).toBe("Cancelled: the cell keeps what it holds.");
    expect(await pane.page.locator(`${explain} .result`).count()).toBe(1);
    expect(await focused()).toBe("reading");
    await slow(0);
    await pane.page.keyboard.press("Enter");
    await until(async () => !(await pane.text(explain)).includes("Cancelled"));
    expect(await pane.page.locator(`${explain} .result`).count()).toBe(1);
    await until(async () => (await spoken()).startsWith("'Pool loop'!B7: "));
  });

  test("a scan after a change moves nothing and says nothing while the host reads", async () => {
    await open();
    await pane.tab("Cautions");
    const before = await spoken();
    await slow(150);
    const seen = await watch(cautions);
    await pane.page.evaluate(async () => {
      globalThis.book.type("Pool loop", "B3", 91);
      await globalThis.book.calculate();
      globalThis.book.changed("Pool loop");
    });
    await until(async () => (await pane.text(cautions)).includes("at 8.854 ft/s"));
    expect((await seen.jsonValue()).filter((each) => !each.startsWith("focus") && each !== `said: ${before}`)).toEqual(
      [],
    );
  });

  test("Cancel ends a scan while the host reads, and that is read out", async () => {
    await open("?session", OWN_TIME);
    await pane.tab("Cautions");
    await slow(600_000);
    await changed("Pool loop");
    await pane.page.clock.runFor(BOX_AFTER);
    await button(/^Cancel: Reading the workbook$/).press("Enter");
    await until(async () => (await pane.text(cautions)).includes("Cancelled. Not every cell was checked."));
    expect(await spoken()).toBe("Cancelled: not every cell was checked.");
    expect(await pane.page.locator(`${cautions} .severity`).count()).toBeGreaterThan(0);
    await slow(0);
    await button(/^Scan again$/).press("Enter");
    await until(async () => (await spoken()).includes("cells use these functions"));
    expect(await pane.text(cautions)).not.toContain("Cancelled");
  });

  test("a hand-over copy that was cancelled while the host reads isn't made; one that fails says why", async () => {
    await open("?session", OWN_TIME);
    await pane.tab("Workbook");
    await slow(600);
    await button(/^Make a hand-over copy$/).click();
    await button(/^Cancel: Looking through the workbook$/).click();
    await until(async () => (await pane.text("#view-workbook")).includes("Cancelled: nothing was changed."));
    await slow(0);
    await pane.page.clock.runFor(1000);
    expect(await pane.page.evaluate(() => globalThis.book.delivered.length)).toBe(0);
    await pane.page.evaluate(() => {
      Object.assign(globalThis.book.workbook, { deliverCopy: () => Promise.reject(new Error("the disk is full")) });
    });
    await button(/^Make a hand-over copy$/).click();
    await button(/^Make the copy/).click();
    await until(async () => (await pane.text("#view-workbook")).includes("Nothing was changed: the disk is full."));
  });

  test("a log's sheet that is cancelled is called cancelled only when the host has taken it away", async () => {
    await open();
    await pane.tab("Workbook");
    await pane.page.evaluate(() => {
      const insert: typeof globalThis.book.workbook.insert = (_, { signal } = {}) =>
        new Promise((_done, fail) => {
          document.body.dataset["inserting"] = "yes";
          signal?.addEventListener("abort", () =>
            // The page's script has an error of its own for this.
            addEventListener("taken-away", () => fail(Object.assign(new Error("ended"), { name: "AbortError" }))),
          );
        });
      Object.assign(globalThis.book.workbook, { insert });
    });
    const hours = Array.from({ length: 48 }, (_, hour) => {
      const time = new Date(Date.UTC(2026, 5, 1, hour)).toISOString().slice(0, 16).replace("T", " ");
      return `${time},${(26 + hour / 100).toFixed(2)}`;
    });
    await pane.page.locator('input[type="file"][accept*="epw"]').setInputFiles({
      name: "Log.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(["time,water temperature (°C)", ...hours].join("\n")),
    });
    await pane.page.locator("body[data-inserting]").waitFor();
    await button(/^Cancel: Reading Log\.csv$/).click();
    await pane.page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
    expect(await pane.text("#view-workbook")).not.toMatch(/Cancelled|Nothing was changed/);
    await pane.page.evaluate(() => void dispatchEvent(new Event("taken-away")));
    await until(async () => (await pane.text("#view-workbook")).includes("Cancelled: nothing was changed."));
  });
});
