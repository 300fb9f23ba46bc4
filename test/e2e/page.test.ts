/** The page around the sheet: by keyboard alone, over a reload, with a dropped file, in small windows. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { strFromU8, unzipSync } from "fflate";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from "vitest";
import { serve } from "../../scripts/serve";
import type { Served } from "../../scripts/serve";
import { STARTER_SHEETS } from "../../src/sheets";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";
import { said, started } from "./driver";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** In which area of the page the focus is. */
const areaOf = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const { activeElement } = document;
    const areas = ["top", "message", "sheet", "side"];
    return areas.find((id) => document.getElementById(id)?.contains(activeElement)) ?? "none";
  });

const press = async (page: Page, key: string, times: number): Promise<void> => {
  for (let time = 0; time < times; time += 1) await page.keyboard.press(key);
};

const goTo = async (page: Page, area: string): Promise<void> => {
  for (let step = 0; step < 4 && (await areaOf(page)) !== area; step += 1) await page.keyboard.press("F6");
  expect(await areaOf(page)).toBe(area);
};

/** Types into "Water before warm-up", the first input of the sizing sheet that has limits of its own. */
const typeTemperature = async (page: Page, text: string): Promise<void> => {
  await page.evaluate(() =>
    globalThis.warmbackPreview?.workbook.select({ sheet: "Recovery sizing", row: 30, column: 1 }),
  );
  await said(page, /^B31 /);
  await goTo(page, "sheet");
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowUp");
};

const kept = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open("warmback", 1);
        opening.onsuccess = () => {
          const open = opening.result;
          const count = open.transaction("workbooks").objectStore("workbooks").count();
          count.onsuccess = () => {
            open.close();
            resolve(count.result);
          };
        };
      }),
  );

describe.skipIf(!HAS_CHROMIUM)("The page", { timeout: 90_000 }, () => {
  let served: Served;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  beforeAll(async () => {
    served = await serve({ folder: inject("build"), port: 0, open: false });
    browser = await connectBrowser();
  }, 180_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  const openFresh = async (): Promise<void> => {
    context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    page = await context.newPage();
    await page.goto(served.address);
    await started(page);
  };

  describe("started once", () => {
    beforeAll(openFresh, 60_000);
    afterAll(() => context.close());

    test("shows the sheet's own first rows before any script, where the engine then draws them", async () => {
      const before = await browser.newPage({ javaScriptEnabled: false, viewport: { width: 1280, height: 800 } });
      await before.goto(served.address);
      const still = before.locator(".still");
      for (const text of ["Recovery sizing: an air conditioner's heat into a pool", "A year saves", "Legend"])
        expect(await still.getByText(text, { exact: true }).count(), text).toBe(1);
      expect(await before.locator("#sheet").getAttribute("aria-busy")).toBe("true");
      const row = async (label: string): Promise<number> =>
        (await still.locator("tr", { has: before.locator(`th:text-is("${label}")`) }).boundingBox())?.y ?? 0;
      const drawn = await page.evaluate(() => {
        const canvas = [...document.querySelectorAll("#sheet canvas")].map((each) => each.getBoundingClientRect());
        return Math.max(...canvas.map(({ top, height }) => (height > 100 ? top : 0)));
      });
      // The engine's column heads are 20 pixels high.
      expect(Math.abs((await row("1")) - drawn - 20)).toBeLessThan(3);
      await before.close();
      await page.locator("#sheet:not([aria-busy])").waitFor();
      expect(await page.locator(".still").count()).toBe(0);
    });

    test("breaks no rule of accessibility outside the sheet engine's own parts", async () => {
      await page.getByRole("tab", { name: "Cautions" }).waitFor();
      await page.evaluate(AXE);
      const broken = await page.evaluate(async () => {
        const { axe } = globalThis as unknown as {
          axe: { run(place: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        };
        // What the sheet engine draws is inside #sheet; the region itself is the page's.
        const found = await axe.run({ exclude: [["#sheet > *"]] });
        return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
      });
      expect(broken).toEqual([]);
    });

    test("leaves the focus alone while it starts, and F6 goes round its areas both ways", async () => {
      expect(await areaOf(page)).toBe("none");
      const forth: string[] = [];
      const back: string[] = [];
      for (let step = 0; step < 5; step += 1) {
        await page.keyboard.press("F6");
        forth.push(await areaOf(page));
      }
      for (let step = 0; step < 5; step += 1) {
        await page.keyboard.press("Shift+F6");
        back.push(await areaOf(page));
      }
      expect(forth).toEqual(["top", "message", "sheet", "side", "top"]);
      expect(back).toEqual(["side", "sheet", "message", "top", "side"]);
      expect(await page.getByText("F6 leaves the grid").isVisible()).toBe(true);
    });

    test("says a cell's value with its address, and lists its choices on Alt+Down", async () => {
      await goTo(page, "sheet");
      await press(page, "ArrowDown", 7);
      await page.keyboard.press("ArrowRight");
      await said(page, /^B8 \d+%/);
      await press(page, "ArrowDown", 30);
      await said(page, /^B38 suburban/);
      await page.keyboard.press("Alt+ArrowDown");
      const list = page.getByRole("listbox", { name: "Choices for B38" });
      await list.waitFor();
      const [box, button] = [await list.boundingBox(), await page.locator(".cell-choose").boundingBox()];
      // Below its cell, which ends where the button does, or above it where the window ends.
      const isAt = [button?.y ?? 0, (button?.y ?? 0) + (button?.height ?? 0)].some(
        (edge) => Math.abs(edge - (box?.y ?? 0)) < 3 || Math.abs(edge - (box?.y ?? 0) - (box?.height ?? 0)) < 30,
      );
      expect([isAt, Math.abs((box?.x ?? 0) + (box?.width ?? 0) - (button?.x ?? 0)) < 120]).toEqual([true, true]);
      await page.keyboard.press("Escape");
      expect(await areaOf(page)).toBe("sheet");
      await said(page, /^B38 suburban/);
      await page.keyboard.press("Alt+ArrowDown");
      await page.keyboard.press("ArrowUp");
      await page.keyboard.press("Enter");
      await said(page, /^B38 open/);
      expect(await areaOf(page)).toBe("sheet");
      // By its first letters, and by the pointer.
      await page.keyboard.press("Alt+ArrowDown");
      await page.keyboard.type("shel");
      await page.keyboard.press("Enter");
      await said(page, /^B38 sheltered/);
      await page.locator(".cell-choose").click();
      await page.getByRole("option", { name: "suburban" }).click();
      await said(page, /^B38 suburban/);
    });

    test("marks an entry that breaks its cell's rule until it is put right", async () => {
      await typeTemperature(page, "-5");
      await said(page, /^B31 -5 ✕ Invalid entry\. Expected: 33 to 104 °F/);
      await page.keyboard.type("60");
      await page.keyboard.press("Enter");
      await page.keyboard.press("ArrowUp");
      await said(page, /^B31 60 33 to 104 °F/);
    });

    test("gives a small window to the sheet: no frozen panes, the panel folded; a file keeps the panes", async () => {
      const panes = async (): Promise<readonly string[]> => {
        const bytes = await page.evaluate(async () =>
          Array.from((await globalThis.warmbackPreview?.workbook.documentBytes()) ?? []),
        );
        const parts = Object.entries(unzipSync(Uint8Array.from(bytes)));
        return parts.flatMap(([name, part]) =>
          name.startsWith("xl/worksheets/sheet") ? (/<pane [^>]*>/.exec(strFromU8(part)) ?? []) : [],
        );
      };
      const before = await panes();
      expect(before).not.toEqual([]);
      await page.setViewportSize({ width: 720, height: 450 });
      await page.getByRole("button", { name: "Panel", expanded: false }).waitFor();
      const room = await page.locator("#sheet").boundingBox();
      expect(room?.height).toBeGreaterThan(300);
      expect(await panes()).toEqual(before);
      await page.setViewportSize({ width: 1280, height: 800 });
      await page.getByRole("button", { name: "Panel", expanded: true }).waitFor();
    });

    test("breaks in the sheet engine's own parts just the rules that are listed, with many sheets and more tools too", async () => {
      for (const sheet of STARTER_SHEETS)
        await page.evaluate((starter) => globalThis.warmbackPreview?.workbook.insert(starter), sheet);
      await page.getByRole("button", { name: "Scroll to sheets on the left" }).waitFor();
      await page.evaluate(AXE);
      const broken = (): Promise<readonly string[]> =>
        page.evaluate(async () => {
          const { axe } = globalThis as unknown as {
            axe: { run(): Promise<{ violations: { id: string; nodes: { target: string[] }[] }[] }> };
          };
          const { violations } = await axe.run();
          return violations.flatMap(({ id, nodes }) =>
            nodes.map(({ target: [place = ""] }) => {
              const element = document.querySelector(place);
              const named = element?.querySelector("[aria-label]");
              return `${id}: ${named?.getAttribute("aria-label") ?? element?.outerHTML.slice(0, 160) ?? place}`;
            }),
          );
        });
      const [, section = ""] =
        /## The grid engine's controls\n(.*?)\n## /s.exec(readFileSync("DEVELOPERS.md", "utf8")) ?? [];
      const listed = [...section.matchAll(/^- `([a-z-]+)`: (.+)$/gm)].map(
        ([, rule = "", name = ""]) => `${rule}: ${name}`,
      );
      expect(await broken()).toEqual(listed);
      await page.getByRole("button", { name: "More", exact: true }).click();
      await page.getByRole("dialog", { name: "Tools" }).waitFor();
      expect(await broken()).toEqual(listed);
      for (const name of ["Add sheet", "All sheets", "Zoom in", "Zoom out", "Gridlines", "Bold", "Percent"])
        expect(await page.getByRole("button", { name, exact: true }).count(), name).toBe(1);
    });
  });

  describe("started anew", () => {
    beforeEach(openFresh, 60_000);
    afterEach(() => context.close());

    test("asks before it closes over changes, and gives them back after a reload", async () => {
      await typeTemperature(page, "61.5");
      await expect.poll(() => kept(page), { timeout: 20_000 }).toBe(1);
      const asked: string[] = [];
      page.on("dialog", (dialog) => {
        asked.push(dialog.type());
        void dialog.accept();
      });
      await page.reload();
      expect(asked).toEqual(["beforeunload"]);
      await page.locator("#question", { hasText: /^Restore Workbook\.xlsx of .+\?$/ }).waitFor();
      await started(page);
      await page.getByRole("button", { name: "Restore" }).click();
      await page.locator("#status", { hasText: "Workbook.xlsx is restored" }).waitFor();
      await page.evaluate(() =>
        globalThis.warmbackPreview?.workbook.select({ sheet: "Recovery sizing", row: 30, column: 1 }),
      );
      await said(page, /^B31 61\.5/);
      // Ctrl+S puts it into a file: nothing is kept then.
      const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
      expect(download.suggestedFilename()).toBe("Workbook.xlsx");
      await expect.poll(() => kept(page), { timeout: 20_000 }).toBe(0);
    });

    test("opens a dropped file under its name, and offers the workbook that it replaced", async () => {
      await typeTemperature(page, "62.5");
      page.once("dialog", (dialog) => void dialog.accept());
      await page.evaluate(async () => {
        const bytes = (await globalThis.warmbackPreview?.workbook.documentBytes()) as Uint8Array<ArrayBuffer>;
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([bytes], "Fernhill Hall.xlsx"));
        const sheet = document.getElementById("sheet");
        for (const type of ["dragover", "drop"])
          sheet?.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
      });
      await page.locator("#status", { hasText: "Fernhill Hall.xlsx is open." }).waitFor();
      await page.locator("#question", { hasText: /^Restore Workbook\.xlsx of/ }).waitFor();
      const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
      expect(download.suggestedFilename()).toBe("Fernhill Hall.xlsx");
    });

    test("makes a sheet of a dropped weather file, and shows the panel for it", async () => {
      await page.getByRole("button", { name: "Panel" }).click();
      // The typical year of Chicago (NREL TMY3).
      const year = readFileSync("test/golden/weather-chicago-il.csv", "utf8").split("\n").slice(1);
      const csv = ["Station: Site", "Latitude: 41.98", "Longitude: -87.92", "Time zone: -6", ...year].join("\n");
      await page.evaluate((text) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text], "site.csv"));
        for (const type of ["dragover", "drop"])
          document
            .getElementById("sheet")
            ?.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
      }, csv);
      await page.getByRole("button", { name: "Panel", expanded: true }).waitFor();
      await page.getByText(/twelve monthly rows on the sheet “Weather Site”/).waitFor();
      await said(page, /^A1 Weather: Site/);
    });
  });
});

test.skipIf(!HAS_CHROMIUM)("A script that doesn't come leaves a sentence", { timeout: 90_000 }, async () => {
  const served = await serve({ folder: inject("build"), port: 0, open: false });
  const browser = await connectBrowser();
  for (const [file, sentence] of [
    ["functions.js", /functions\.js didn't load\./],
    ["preview.js", /preview\.js didn't load\./],
    ["preview-sheet.*.js", /The sheet didn't start: /],
    ["taskpane.js?v=*", /The panel didn't start: /],
  ] as const) {
    const page = await browser.newPage();
    await page.route(`**/${file}`, (route) => route.abort());
    await page.goto(served.address);
    await page.locator("#status", { hasText: sentence }).waitFor();
    await page.close();
  }
  await browser.close();
  await served.close();
});
