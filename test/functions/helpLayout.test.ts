/** Help pages in a browser: they fit windows and paper. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { serve, type Served } from "../../scripts/serve";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";

const WINDOWS = [360, 720, 1000] as const;
const PAPER = 720;
const FRAME = "frame.html";

/** By how many pixels a page is wider than it may be, and whether its folds are open where none may be. */
interface Fit {
  readonly name: string;
  readonly inWindows: readonly number[];
  readonly onPaper: number;
  readonly isUnfolded: boolean;
}

/** Runs in the page around the frame: loads a help page into it. A frame is made wider in a tenth of a window's time. */
const loadFrame = (address: string): Promise<void> =>
  new Promise<void>((done) => {
    const frame = document.querySelector("iframe");
    if (frame === null) throw new Error("no frame");
    frame.onload = () => done();
    frame.src = address;
  });

interface Look {
  readonly address: string;
  readonly media: "print" | "screen";
  readonly widths: readonly number[];
}

/** Runs in the page around the frame: what is seen of the help page at each width. */
const lookAt = ({
  address,
  media,
  widths,
}: Look): Pick<Fit, "isUnfolded"> & { readonly tooWide: readonly number[] } => {
  const frame = document.querySelector("iframe");
  const inside = frame?.contentWindow;
  if (!frame || inside?.location.href !== address) throw new Error(`the frame doesn't show ${address}`);
  if (!inside.matchMedia(media).matches) throw new Error(`the frame isn't drawn for ${media}`);
  const { document: page } = inside;
  const workings = [...page.querySelectorAll("details.working table")];
  const isUnfolded = workings.some((each) => each.checkVisibility());
  if (media === "screen") page.querySelectorAll("details").forEach((each) => (each.open = true));
  const tooWide = widths.map((width) => {
    frame.style.width = `${String(width)}px`;
    if (inside.innerWidth !== width) throw new Error(`the frame is ${String(inside.innerWidth)} px wide`);
    return page.documentElement.scrollWidth - width;
  });
  return { tooWide, isUnfolded };
};

describe.skipIf(!HAS_CHROMIUM)("Help pages in a browser", () => {
  let browser: Browser;
  let page: Page;
  let served: Served;
  let names: readonly string[] = [];
  const addressOf = (name: string): string => `${served.address}${name}`;
  const open = (name: string): Promise<unknown> => page.goto(addressOf(name));

  beforeAll(async () => {
    served = await serve({ folder: inject("build"), port: 0, open: false });
    names = readdirSync(join(inject("build"), "help")).flatMap((name) =>
      name.endsWith(".html") ? [`help/${name}`] : [],
    );
    browser = await connectBrowser();
    page = await browser.newPage();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
  });

  describe("each loaded once", () => {
    const fits: Fit[] = [];

    const look = (asked: Look) => page.evaluate(lookAt, asked);
    const fitOf = async (name: string): Promise<Fit> => {
      const address = addressOf(name);
      await page.evaluate(loadFrame, address);
      await page.emulateMedia({ media: "print" });
      const paper = await look({ address, media: "print", widths: [PAPER] });
      await page.emulateMedia({ media: "screen" });
      const windows = await look({ address, media: "screen", widths: WINDOWS });
      const [onPaper = NaN] = paper.tooWide;
      return { name, inWindows: windows.tooWide, onPaper, isUnfolded: paper.isUnfolded };
    };

    beforeAll(async () => {
      await page.route(addressOf(FRAME), (route) =>
        route.fulfill({ contentType: "text/html", body: '<iframe style="border: 0; height: 800px"></iframe>' }),
      );
      await open(FRAME);
      for (const name of names) fits.push(await fitOf(name));
    }, 120_000);
    afterAll(() => page.emulateMedia({ media: null }));

    test("no help page scrolls sideways in a narrow, a middle or a wide window, with every fold open", () => {
      const wide = fits.flatMap(({ name, inWindows }) =>
        WINDOWS.flatMap((width, at) => ((inWindows[at] ?? NaN) <= 0 ? [] : [`${name} at ${String(width)} px`])),
      );
      expect(fits).toHaveLength(151);
      expect(wide).toEqual([]);
    });

    test("no help page is cut off on paper, where a folded working stays folded", () => {
      expect(fits).toHaveLength(151);
      expect(fits.filter(({ onPaper }) => !(onPaper <= 0)).map(({ name }) => name)).toEqual([]);
      expect(fits.filter(({ isUnfolded }) => isUnfolded).map(({ name }) => name)).toEqual([]);
    });
  });

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
