/** Help pages in a browser: they fit windows and paper. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Frame, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { helpPages } from "../../scripts/help/pages";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";

const WINDOWS = [360, 720, 1000] as const;
const PAPER = 720;
const FRAME = "frame.html";

describe.skipIf(!HAS_CHROMIUM)("Help pages in a browser", () => {
  let browser: Browser;
  let page: Page;
  let folder = "";
  const pages = Object.entries(helpPages());
  const names = pages.flatMap(([name]) => (name.endsWith(".html") ? [name] : []));
  const addressOf = (name: string): string => pathToFileURL(join(folder, name)).href;
  const open = (name: string): Promise<unknown> => page.goto(addressOf(name));
  /** Opens a page in the frame: a frame is loaded and made wider in a tenth of the time that a window takes. */
  const openInFrame = async (name: string): Promise<Frame> => {
    await page.evaluate(
      (address) =>
        new Promise<void>((done) => {
          const frame = document.querySelector("iframe");
          if (frame === null) throw new Error("no frame");
          frame.onload = () => done();
          frame.src = address;
        }),
      addressOf(name),
    );
    const frame = page.frame("shown");
    if (frame?.url() !== addressOf(name)) throw new Error(`the frame doesn't show ${name}`);
    return frame;
  };
  const tooWide = async (frame: Frame, width: number): Promise<number> => {
    await page.evaluate((pixels) => {
      const box = document.querySelector("iframe");
      if (box !== null) box.style.width = `${String(pixels)}px`;
      return box?.offsetWidth;
    }, width);
    const [wide, shown] = await frame.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
    expect(shown).toBe(width);
    return (wide ?? NaN) - width;
  };

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "help-"));
    for (const [name, text] of pages) {
      mkdirSync(join(folder, dirname(name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    writeFileSync(join(folder, FRAME), '<iframe name="shown" style="border: 0; height: 800px"></iframe>');
    browser = await connectBrowser();
    page = await browser.newPage();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  test("no help page scrolls sideways in a narrow, a middle or a wide window, with every fold open", async () => {
    const wide: string[] = [];
    await open(FRAME);
    for (const name of names) {
      const frame = await openInFrame(name);
      await frame.evaluate(() => document.querySelectorAll("details").forEach((each) => (each.open = true)));
      for (const width of WINDOWS) if ((await tooWide(frame, width)) > 0) wide.push(`${name} at ${String(width)} px`);
    }
    expect(names).toHaveLength(151);
    expect(wide).toEqual([]);
  }, 60_000);

  test("no help page is cut off on paper, where a folded working stays folded", async () => {
    await page.emulateMedia({ media: "print" });
    const wide: string[] = [];
    const unfolded: string[] = [];
    await open(FRAME);
    for (const name of names) {
      const frame = await openInFrame(name);
      expect(await frame.evaluate(() => matchMedia("print").matches)).toBe(true);
      if ((await tooWide(frame, PAPER)) > 0) wide.push(name);
      const shown = await frame.evaluate(() =>
        [...document.querySelectorAll("details.working table")].map((each) => each.checkVisibility()),
      );
      if (shown.includes(true)) unfolded.push(name);
    }
    await page.emulateMedia({ media: null });
    expect(wide).toEqual([]);
    expect(unfolded).toEqual([]);
  }, 60_000);

  test("EXCHANGER.COIL, the longest help page, prints on fewer than 8 pages of either paper", async () => {
    await open("help/EXCHANGER.COIL.html");
    for (const format of ["Letter", "A4"]) {
      const pdf = await page.pdf({ format, preferCSSPageSize: false });
      const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? [];
      expect(pages.length).toBeGreaterThan(2);
      expect(pages.length, format).toBeLessThan(8);
    }
  });

  test("a fraction within a fraction keeps its size", async () => {
    await open("help/EXCHANGER.COIL.html");
    const sizes = await page.evaluate(() =>
      [...document.querySelectorAll(".equation .math mfrac > *")].map((part) => {
        const whole = part.parentElement;
        return whole === null
          ? 1
          : parseFloat(getComputedStyle(part).fontSize) / parseFloat(getComputedStyle(whole).fontSize);
      }),
    );
    expect(sizes.length).toBeGreaterThan(20);
    expect(Math.min(...sizes)).toBeGreaterThan(0.99);
  });

  test("a printed fraction keeps clear of the texts above and below it", async () => {
    await page.emulateMedia({ media: "print" });
    await open("help/EXCHANGER.COIL.html");
    const gaps = await page.evaluate(() =>
      [...document.querySelectorAll(".equation .math:not(.long)")].flatMap((math) => {
        const box = math.getBoundingClientRect();
        return [...math.querySelectorAll("mfrac")].map((fraction) => {
          const { top, bottom } = fraction.getBoundingClientRect();
          return Math.min(top - box.top, box.bottom - bottom);
        });
      }),
    );
    await page.emulateMedia({ media: null });
    expect(gaps.length).toBeGreaterThan(20);
    expect(Math.min(...gaps)).toBeGreaterThan(1);
  });

  test("the index finds functions, starter sheets and the panel by words, without a request", async () => {
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await open("help/index.html");
    const loaded = asked.length;
    const found = async (words: string): Promise<string> => {
      await page.fill("#search-words", words);
      return page.locator("#search-found").innerText();
    };
    expect(await found("head loss")).toContain("PIPE.HEADLOSS");
    expect(await found("cut-out")).toContain("Starter sheet: Commissioning");
    expect(await found("panel")).toContain("The panel");
    expect(await found("zzqx")).toBe("");
    expect(await page.locator("#search-count").innerText()).toBe("No page has all of these words.");
    expect(asked.length).toBe(loaded);
  });

  test("the keyboard reaches and scrolls a table that is wider than its window", async () => {
    await open("help/AIRCON.HOURS.html");
    await page.setViewportSize({ width: 200, height: 800 });
    const box = page.locator(".scroll").first();
    await box.focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => box.evaluate((each) => each.scrollLeft)).toBeGreaterThan(0);
    expect(await box.getAttribute("aria-label")).toContain("What it shows");
  });
});
