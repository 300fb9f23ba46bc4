/** The panel's long work in a browser: in a worker, on the page where there is none, and ended. */
import type { Page, Worker } from "playwright-core";
import { describe, expect, test } from "vitest";
import { BUILD } from "../../src/functions/buildHash";
import { HAS_CHROMIUM, until, usePane, type Odd } from "./browser";
import { YEAR_CELLS } from "./yearCells";

const SCRIPT = "**/worker.js?v=*";

/** Holds the worker's script back until it is let go. */
const held = (): { readonly odd: Odd; release(): void } => {
  let release = (): void => undefined;
  const gate = new Promise<void>((done) => {
    release = done;
  });
  const before = async (page: Page): Promise<void> => {
    await page.route(SCRIPT, async (route) => {
      await gate;
      // A worker that was ended meanwhile asks for nothing any more.
      await route.continue().catch(() => undefined);
    });
  };
  return { odd: { before }, release };
};

const MISSING: Odd = {
  before: async (page) => {
    await page.route(SCRIPT, (route) => route.fulfill({ status: 404 }));
  },
  expected: /404/,
};

/** A worker that starts and breaks off at whatever it is asked. */
const BREAKING: Odd = {
  before: async (page) => {
    const body = `postMessage({ ready: ${JSON.stringify(BUILD)} }); onmessage = () => { throw new Error("broken"); };`;
    await page.route(SCRIPT, (route) => route.fulfill({ contentType: "text/javascript", body }));
  },
  expected: /broken/,
};

const UNKNOWN: Odd = {
  before: async (page) => {
    await page.addInitScript("delete globalThis.Worker");
  },
};

const FORBIDDEN: Odd = {
  before: async (page) => {
    await page.route("**/taskpane.html*", async (route) => {
      const answer = await route.fetch();
      const policy = answer.headers()["content-security-policy"] ?? "";
      const stricter = policy.replace("worker-src 'self'", "worker-src 'none'");
      expect(stricter).not.toBe(policy);
      await route.fulfill({ response: answer, headers: { ...answer.headers(), "content-security-policy": stricter } });
    });
  },
  expected: /Content Security Policy|worker/i,
};

describe.skipIf(!HAS_CHROMIUM)("Long work of the panel", { timeout: 60_000 }, () => {
  const pane = usePane();
  const explain = "#view-explain";

  const open = async (query: string, odd: Odd = {}): Promise<void> => {
    await pane.open(query, {}, odd);
    await pane.page.evaluate(async (cells) => {
      for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
      await globalThis.book.calculate();
    }, YEAR_CELLS);
    await pane.tab("Explain");
    await pane.select("Notes", "A80");
  };
  const shown = async (): Promise<string> => {
    await pane.page.locator(`${explain} .picture svg`).nth(2).waitFor({ timeout: 30_000 });
    // The time that the work has taken is no result.
    return (await pane.page.locator(`${explain} .call`).innerHTML()).replace(/\d+ s</g, "");
  };
  const workers = (): readonly Worker[] => pane.page.workers();
  const names = (): readonly string[] => workers().map((worker) => new URL(worker.url()).pathname);
  const button = (name: RegExp) => pane.page.getByRole("button", { name });
  const focused = (): Promise<string | null> => pane.page.evaluate(() => document.activeElement?.textContent ?? null);

  test("long work runs in a worker, and shows what the page computes by itself", async () => {
    await open("?empty");
    const inWorker = await shown();
    expect(names()).toEqual(["/worker.js"]);
    await pane.page.close();
    await open("?empty", MISSING);
    expect(await shown()).toBe(inWorker);
    expect(names()).toEqual([]);
  });

  test.each([
    ["knows no workers", UNKNOWN],
    ["forbids workers", FORBIDDEN],
  ])("long work runs on the page where the host %s", async (_, odd) => {
    await open("?empty", odd);
    expect(await shown()).toContain("taken by the pool");
    expect(names()).toEqual([]);
  });

  test.each(["light", "dark"] as const)(
    "long work shows its progress; Cancel by keyboard leaves a clear state to start it from, %s",
    async (colorScheme) => {
      const { odd, release } = held();
      await pane.open("?empty&session", { colorScheme }, odd);
      await pane.page.evaluate(async (cells) => {
        for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
        await globalThis.book.calculate();
      }, YEAR_CELLS);
      await pane.tab("Explain");
      await pane.select("Notes", "A80");
      const cancel = button(/^Cancel: Working out POOL\.YEAR$/);
      await cancel.waitFor();
      expect(await pane.page.getByRole("progressbar", { name: "Working out POOL.YEAR" }).count()).toBe(1);
      expect(await pane.text(".unseen[role=status]")).toBe("Working out POOL.YEAR…");
      // The arguments can be read meanwhile.
      expect(await pane.text(explain)).toContain("inputs7 rows × 2 columns");
      expect(await pane.violations()).toEqual([]);
      expect(await pane.tooWide()).toBe(0);
      await cancel.focus();
      await pane.page.keyboard.press("Enter");
      await until(async () => (await pane.text(explain)).includes("Cancelled. The cell keeps what it holds."));
      expect(await pane.text(".unseen[role=status]")).toBe("Cancelled: POOL.YEAR.");
      expect(await focused()).toBe("Work it out");
      expect(await cancel.count()).toBe(0);
      expect(await pane.violations()).toEqual([]);
      release();
      await pane.page.keyboard.press("Enter");
      expect(await shown()).toContain("sent outdoors");
      // The button is gone: the focus isn't lost with it.
      expect(await focused()).toBe("Explain");
    },
  );

  test("long work can be cancelled before the cell's value is known", async () => {
    const { odd, release } = held();
    await open("?empty", odd);
    await button(/^Cancel: Working out what the cell gives$/).click();
    await until(async () => (await pane.text(explain)).includes("Cancelled."));
    release();
    await button(/^Work it out$/).click();
    expect(await shown()).toContain("taken by the pool");
  });

  test("a read that waits for a heavy call shows its box long before one that waits for the host", async () => {
    const { odd, release } = held();
    await pane.open("?empty", {}, odd);
    const counts = await pane.page.evaluateHandle(() => {
      const seen: string[] = [];
      const view = document.querySelector("#view-explain") ?? document;
      new MutationObserver(() => {
        const count = view.querySelector(".going .running .count");
        if (seen.length === 0 && count !== null) seen.push(count.textContent ?? "");
      }).observe(view, { subtree: true, childList: true });
      return seen;
    });
    await pane.page.evaluate(async (cells) => {
      for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
      await globalThis.book.calculate();
    }, YEAR_CELLS);
    await pane.tab("Explain");
    await pane.select("Notes", "A80");
    await button(/^Cancel: Working out what the cell gives$/).waitFor();
    release();
    expect((await counts.jsonValue())[0]).toMatch(/^(?:1 s)?$/);
  });

  test("selecting another cell or view cancels long work", async () => {
    const { odd, release } = held();
    await open("?empty&session", odd);
    await button(/^Cancel/).waitFor();
    await pane.select("Notes", "B1");
    await until(async () => (await pane.text(explain)).includes("Notes!B1 holds no formula."));
    await pane.select("Notes", "A80");
    await button(/^Cancel/).waitFor();
    await pane.tab("Find");
    release();
    await pane.tab("Explain");
    expect(await shown()).toContain("taken by the pool");
  });

  test("a result is kept: the same call shows at once when it is selected again", async () => {
    await open("?empty");
    await shown();
    const before = workers();
    await pane.select("Notes", "B1");
    await until(async () => (await pane.text(explain)).includes("Notes!B1 holds no formula."));
    await pane.page.route(SCRIPT, (route) => route.abort());
    await pane.select("Notes", "A80");
    await shown();
    expect(workers()).toEqual(before);
  });

  test("the published checks count functions done, are cancelled with their worker and start in a new one", async () => {
    await pane.open("?empty");
    await pane.tab("Workbook");
    const checks = pane.page.locator("section", { has: pane.page.locator("#checks-title") });
    // Presses Cancel as soon as the first function is done: a person might be too late for so quick a machine.
    const stages = await pane.page.evaluateHandle(() => {
      const seen: { text: string; value: number }[] = [];
      const look = new MutationObserver(() => {
        const box = document.querySelector("#view-workbook .progress");
        const text = box?.querySelector(".quiet")?.textContent ?? "";
        if (!/^[1-9]/.test(text)) return;
        seen.push({ text, value: box?.querySelector("progress")?.value ?? 0 });
        look.disconnect();
        box?.querySelector("fluent-button")?.dispatchEvent(new MouseEvent("click"));
      });
      look.observe(document.querySelector("#view-workbook") ?? document, {
        subtree: true,
        childList: true,
        attributes: true,
      });
      return seen;
    });
    await button(/^Run the checks$/).click();
    await checks.locator("[role=status]", { hasText: "Cancelled: not every value was compared." }).waitFor();
    const [stage] = await stages.jsonValue();
    expect(stage?.text).toMatch(/^[1-9]\d* of \d+ functions$/);
    expect(stage?.value).toBeGreaterThan(0);
    await until(async () => workers().length === 0);
    await button(/^Run the checks$/).click();
    await checks
      .locator("[role=status]", { hasText: /^(\d+) of \1 published values agree\.$/ })
      .waitFor({ timeout: 30_000 });
    expect(names()).toEqual(["/worker.js"]);
    expect(await checks.getByRole("progressbar").count()).toBe(0);
  });

  test("a hand-over copy can be cancelled, and nothing is handed over then", async () => {
    const { odd, release } = held();
    await open("?empty", odd);
    await pane.tab("Workbook");
    await button(/^Make a hand-over copy$/).click();
    await button(/^Cancel: Looking through the workbook$/).click();
    await until(async () => (await pane.text("#view-workbook")).includes("Cancelled: nothing was changed."));
    expect(await pane.page.evaluate(() => globalThis.book.delivered.length)).toBe(0);
    release();
    await button(/^Make a hand-over copy$/).click();
    await button(/^Make the copy$/).click();
    await until(async () => (await pane.text("#view-workbook")).includes("1 formula became a value"));
    expect(await pane.page.evaluate(() => globalThis.book.delivered.length)).toBe(1);
  });

  test("a scan counts cells done and can be cancelled; earlier notes stay until it starts again", async () => {
    const { odd, release } = held();
    await open("?empty", odd);
    await pane.tab("Cautions");
    await pane.page.evaluate(() => globalThis.book.changed("Notes"));
    const cancel = button(/^Cancel: Reading the workbook$/);
    await cancel.waitFor();
    expect(await pane.text("#view-cautions .progress")).toContain("0 of 1 cell");
    expect(await pane.violations()).toEqual([]);
    await cancel.focus();
    await pane.page.keyboard.press("Enter");
    await until(async () => (await pane.text("#view-cautions")).includes("Cancelled. Not every cell was checked."));
    expect(await pane.text("#view-cautions")).toContain("No cell of this workbook uses these functions yet.");
    expect(await focused()).toBe("Scan again");
    release();
    await pane.page.keyboard.press("Enter");
    await pane.page
      .locator("#view-cautions .code", { hasText: "POOL-ESTIMATE" })
      .waitFor({ state: "attached", timeout: 30_000 });
    expect(await pane.text("#view-cautions")).not.toContain("Cancelled");
  });

  test("a call that breaks off leaves a scan its other cells, and is scanned again on request", async () => {
    await open("?empty", BREAKING);
    await pane.page.evaluate(() => {
      globalThis.book.type("Notes", "A90", '=WARMBACK.PIPE.HEADLOSS(90,"2 in",100)');
      globalThis.book.changed("Notes");
    });
    await pane.tab("Cautions");
    const left = pane.page.locator("#view-cautions section", { hasText: "Not worked out" });
    await left.getByRole("button", { name: "Go to Notes!A80" }).waitFor();
    expect(await pane.page.locator("#view-cautions .code").allTextContents()).toEqual(["PIPE-FAST-WATER"]);
    expect(await pane.text(".unseen[role=status]")).toMatch(/1 cell could not be worked out\.$/);
    expect(await pane.violations()).toEqual([]);
    await pane.page.unroute(SCRIPT);
    await button(/^Scan again$/).press("Enter");
    await pane.page
      .locator("#view-cautions .code", { hasText: "POOL-ESTIMATE" })
      .waitFor({ state: "attached", timeout: 30_000 });
    expect(await left.count()).toBe(0);
  });

  test("the worker raises the cautions of heavy calls as the page by itself does", async () => {
    const cautions = async (odd: Odd): Promise<string> => {
      await open("?empty", odd);
      await shown();
      await pane.tab("Cautions");
      await pane.page.evaluate(() => globalThis.book.changed("Notes"));
      await pane.page.locator("#view-cautions .severity").first().waitFor({ timeout: 30_000 });
      return pane.text("#view-cautions");
    };
    const inWorker = await cautions({});
    expect(inWorker).toContain("POOL.YEAR");
    await pane.page.close();
    expect(await cautions(MISSING)).toBe(inWorker);
  });
});
