/** The panel in a browser, over a workbook in memory, served with the published headers. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect } from "vitest";
import { connectBrowser } from "../setup/chromium";
import { servePanel, type Served } from "./server";

export { HAS_CHROMIUM } from "../setup/chromium";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const WINDOW = { width: 320, height: 700 };

/** How a page is looked at. */
export interface Mode {
  readonly viewport?: { readonly width: number; readonly height: number };
  readonly colorScheme?: "light" | "dark";
  readonly forcedColors?: "active";
}

/** Colours that a host or its user may choose. */
export const MODES = [
  ["light", { colorScheme: "light", forcedColors: "none" }],
  ["dark", { colorScheme: "dark", forcedColors: "none" }],
  ["forced colours", { colorScheme: "dark", forcedColors: "active" }],
] as const;

/** A page that isn't as usual. */
export interface Odd {
  /** Is done to the page before it is loaded. */
  readonly before?: (page: Page) => Promise<void>;
  /** Complaints that belong to it. */
  readonly expected?: RegExp;
}

export interface Pane {
  /** The page that was opened last. */
  readonly page: Page;
  open(query?: string, mode?: Mode, odd?: Odd): Promise<void>;
  tab(name: "Cautions" | "Explain" | "Find" | "Workbook"): Promise<void>;
  /** Selects a cell as a user does. */
  select(sheet: string, cell: string): Promise<void>;
  selected(): Promise<unknown>;
  /** The text of a part of the page. */
  text(part: string): Promise<string>;
  /** The rules that axe finds broken, with the place of each. */
  violations(): Promise<readonly string[]>;
  /** By how many pixels the page is wider than its window. */
  tooWide(): Promise<number>;
}

async function violations(page: Page): Promise<readonly string[]> {
  // Half a megabyte: once for each page.
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    // Rules that pass aren't listed, and no selector is worked out for a node: what is broken is the same.
    const found = await axe.run({ resultTypes: ["violations"], selectors: false });
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
}

/**
 * Serves the panel to the tests around it. After each test it demands that no script failed and that the page's policy
 * had nothing to refuse.
 * @param forms the equations that are there as MathML
 */
export function usePane(forms: readonly string[] = []): Pane {
  let browser: Browser;
  let context: BrowserContext;
  let served: Served;
  let page: Page;
  let complaints: string[] = [];
  beforeAll(async () => {
    served = await servePanel(forms);
    browser = await connectBrowser();
    context = await browser.newContext({ viewport: WINDOW });
    // Keeps the window open: a window for each page takes longer than the page.
    await context.newPage();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    served.close();
  });
  afterEach(async () => {
    await page.close();
    const told = complaints;
    complaints = [];
    expect(told).toEqual([]);
  });
  return {
    get page() {
      return page;
    },
    async open(query = "", { viewport, ...media } = {}, { before, expected } = {}) {
      page = await context.newPage();
      await page.emulateMedia(media);
      if (viewport !== undefined) await page.setViewportSize(viewport);
      page.setDefaultTimeout(5000);
      page.setDefaultNavigationTimeout(30_000);
      page.on("console", (message) => {
        const bad = message.type() === "error" || message.type() === "warning";
        if (bad && expected?.test(message.text()) !== true) complaints.push(message.text());
      });
      page.on("pageerror", (error) => complaints.push(error.message));
      await before?.(page);
      await page.goto(served.address + query);
      await page.locator("#view-cautions h3, #view-cautions .quiet:not(.progress *)").first().waitFor();
    },
    tab: (name) => page.getByRole("tab", { name }).click(),
    select: (sheet, cell) => page.evaluate(([to, at]) => globalThis.book.click(to ?? "", at ?? ""), [sheet, cell]),
    selected: () => page.evaluate(() => globalThis.book.selected),
    text: async (part) => (await page.locator(part).textContent()) ?? "",
    violations: () => violations(page),
    tooWide: () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  };
}

/** Waits until a question is answered with yes. */
export const until = async (what: () => Promise<boolean>): Promise<void> => {
  await expect.poll(what, { timeout: 5000 }).toBe(true);
};

/** Looks at the open page in light, in dark and in forced colours, in turn. */
export async function inEachMode({ page }: Pane, look: (name: string) => Promise<void>): Promise<void> {
  for (const [name, media] of MODES) {
    await page.emulateMedia(media);
    // A button's ground fades into its new colour: a checker would see one between.
    await page.evaluate(() =>
      Promise.allSettled(
        document.getAnimations().flatMap((each) => (each instanceof CSSTransition ? [each.finished] : [])),
      ),
    );
    await look(name);
  }
}
