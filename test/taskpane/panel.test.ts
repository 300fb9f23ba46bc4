/** The panel in a browser, over a workbook in memory, served with the published headers. */
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { chromium, type Browser, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { servePanel, type Served } from "./server";

const CHROMIUM = "/usr/bin/chromium";
const FLAGS =
  "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync";
const here = existsSync(CHROMIUM);
if (!here && process.env["CI"] === "true") throw new Error(`${CHROMIUM} is missing: apt-get install chromium`);
if (!here) console.warn("NOT RUN: the panel in a browser (apt-get install chromium)");

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RENDERED = "v = 4 * Q / (pi * D^2)";

let browser: Browser;
let served: Served;
let page: Page;
let complaints: string[] = [];

type Mode = NonNullable<Parameters<Browser["newPage"]>[0]>;

async function open(query = "", mode: Mode = {}): Promise<void> {
  page = await browser.newPage({ viewport: { width: 320, height: 700 }, ...mode });
  page.setDefaultTimeout(5000);
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(served.address + query);
  await page.locator("#view-cautions h3, #view-cautions .quiet").first().waitFor();
}

const tab = async (name: "Cautions" | "Explain" | "Find"): Promise<void> => page.getByRole("tab", { name }).click();
const select = async (sheet: string, cell: string): Promise<void> =>
  page.evaluate(([to, at]) => globalThis.book.click(to ?? "", at ?? ""), [sheet, cell]);
const selected = async (): Promise<unknown> => page.evaluate(() => globalThis.book.selected);

/** The rules that axe finds broken, with the place of each. */
async function violations(): Promise<readonly string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const found = await axe.run();
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
}

const tooWide = async (): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Waits until a function of the page answers true. */
const until = async (what: () => Promise<boolean>): Promise<void> => {
  await expect.poll(what, { timeout: 5000 }).toBe(true);
};

describe.skipIf(!here)("The panel", { timeout: 30_000 }, () => {
  beforeAll(async () => {
    served = await servePanel([RENDERED]);
    browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS.split(" ") });
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    served.close();
  });
  afterEach(async () => {
    await page.close();
    const told = complaints;
    complaints = [];
    // No script error, and nothing that the page's policy had to refuse.
    expect(told).toEqual([]);
  });

  describe("Cautions", () => {
    test("stand by severity, the gravest first, each as a word beside a shape", async () => {
      await open();
      expect(await page.locator("#view-cautions h3 .severity").allTextContents()).toEqual([
        "Danger",
        "Warning",
        "Notice",
      ]);
      expect(await page.locator("#view-cautions h3 .severity svg").count()).toBe(3);
      const warning = page.locator("#view-cautions .card.severity-warning", { hasText: "PIPE-FAST-WATER" });
      expect(await warning.getByRole("button", { name: "Go to 'Pool loop'!B7" }).count()).toBe(1);
    });

    test("lead to the cell that raises them, by click and by Enter", async () => {
      await open();
      await page.getByRole("button", { name: "Go to Refrigerant!A1" }).first().click();
      expect(await selected()).toEqual({ sheet: "Refrigerant", row: 0, column: 0 });
      await page.getByRole("button", { name: "Go to 'Pool loop'!B9" }).first().press("Enter");
      expect(await selected()).toEqual({ sheet: "Pool loop", row: 8, column: 1 });
    });

    test("count the cells and show those that fail with their whole text", async () => {
      await open();
      expect(await page.locator("#view-cautions > .view > div > .quiet").first().textContent()).toBe(
        "10 cells use these functions, 1 fails.",
      );
      const failing = page.locator("section", { hasText: "Cells that fail" });
      expect(await failing.textContent()).toContain("#VALUE!length: must be at least 0 ft, got -5 ft");
      expect(await page.locator("section", { hasText: "Not checked" }).textContent()).toContain("'Pool loop'!B12");
    });

    test("follow an edit: only the changed sheet is read again, 300 ms after the last of several changes", async () => {
      await open();
      await page.evaluate(async () => {
        globalThis.book.asked.used.length = 0;
        globalThis.book.type("Pool loop", "B3", 20);
        await globalThis.book.calculate();
        for (let at = 0; at < 3; at++) {
          globalThis.book.changed("Pool loop");
          await new Promise((resolve) => setTimeout(resolve, 100));
        }
      });
      expect(await page.evaluate(() => globalThis.book.asked.used)).toEqual([]);
      await until(async () => (await page.getByRole("button", { name: "Go to 'Pool loop'!B7" }).count()) === 0);
      expect(await page.evaluate(() => globalThis.book.asked.used)).toEqual(["Pool loop"]);
    });

    test("wait while another view shows and are caught up when they show again", async () => {
      await open();
      await tab("Find");
      await page.evaluate(() => {
        globalThis.book.asked.used.length = 0;
        globalThis.book.changed("Refrigerant");
      });
      await page.waitForTimeout(500);
      expect(await page.evaluate(() => globalThis.book.asked.used)).toEqual([]);
      await tab("Cautions");
      await until(async () => page.evaluate(() => globalThis.book.asked.used.join() === "Refrigerant"));
    });

    test("keep the focus on the same cell's button when they are drawn again", async () => {
      await open();
      const button = page.getByRole("button", { name: "Go to 'Pool loop'!B9" }).first();
      await button.focus();
      await page.evaluate(async () => {
        globalThis.book.type("Pool loop", "B3", 20);
        await globalThis.book.calculate();
        globalThis.book.changed("Pool loop");
      });
      await until(async () => (await page.getByRole("button", { name: "Go to 'Pool loop'!B7" }).count()) === 0);
      expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe(
        "Go to 'Pool loop'!B9",
      );
    });

    test("of a workbook without our functions offer the starter sheets", async () => {
      await open("?empty");
      expect(await page.locator("#view-cautions").textContent()).toContain(
        "No cell of this workbook uses these functions yet.",
      );
      await page.getByRole("button", { name: "Insert sheet: Recovery sizing" }).first().click();
      expect(await page.evaluate(() => globalThis.book.inserted)).toEqual(["sample"]);
      expect(await page.locator(".status").textContent()).toBe("Inserted as the sheet “Recovery sizing”.");
    });
  });

  describe("Explain", () => {
    const shown = textOf("#view-explain");

    test("follows the selection: arguments with unit and default mark, value, cautions, help page", async () => {
      await open();
      await tab("Explain");
      expect(await shown()).toContain("Select a cell to see how its value comes about.");
      await select("Pool loop", "B7");
      await page.locator("#view-explain .result").waitFor();
      expect(await page.locator("#view-explain .result").textContent()).toMatch(/^11\.5\d* ft$/);
      const argument = (name: string): Promise<string | null> =>
        page
          .locator("#view-explain .argument", { has: page.locator("dt", { hasText: name }) })
          .first()
          .textContent();
      expect(await argument("flow")).toBe("flow90 gpmwater flow");
      expect(await argument("water")).toContain("waterdefault80 °F");
      expect(await page.locator("#view-explain .caution").textContent()).toContain("PIPE-FAST-WATER");
      expect(await page.locator("#view-explain a").getAttribute("href")).toBe("help/PIPE.HEADLOSS.html");
    });

    test("shows the working: equations as MathML where rendered, else as text, with numbers, value and source", async () => {
      await open();
      await tab("Explain");
      await select("Pool loop", "B8");
      await page.locator("#view-explain math").waitFor();
      const step = page.locator("#view-explain .steps > li", { hasText: "Mean velocity" });
      expect(await step.locator("mfrac").count()).toBeGreaterThan(0);
      expect(await step.textContent()).toMatch(/= 4 \* 0\.00567812.*v = 2\.66909 m\/s = 8\.75686 ft\/s/);
      await select("Pool loop", "B7");
      await page.locator("#view-explain code", { hasText: "Re = rho * v * D / mu" }).waitFor();
    });

    test("tells the whole error, and which argument is meant", async () => {
      await open();
      await tab("Explain");
      await select("Pool loop", "B10");
      await page.locator("#view-explain .fault").first().waitFor();
      expect(await page.locator("#view-explain .fault").allTextContents()).toEqual([
        "#VALUE! length: must be at least 0 ft, got -5 ft",
      ]);
      expect(await shown()).toContain("length-5 ftlength of straight pipe");
      expect(await shown()).not.toContain("Working");
    });

    test("says which argument can't be read and what to do", async () => {
      await open();
      await tab("Explain");
      await select("Pool loop", "B12");
      await page.locator("#view-explain .sentence").waitFor();
      expect(await page.locator("#view-explain .sentence").textContent()).toBe(
        "argument 1 is an expression we can't read: put it in its own cell to see its working",
      );
    });

    test("says when a cell is out of date and recalculates it", async () => {
      await open();
      await page.evaluate(() => globalThis.book.hold("Pool loop", "B13", 3));
      await tab("Explain");
      await select("Pool loop", "B13");
      const button = page.getByRole("button", { name: "Recalculate" });
      await page.locator("#view-explain", { hasText: "Out of date: recalculate. The cell holds 3;" }).waitFor();
      await button.press("Enter");
      await until(async () => !(await shown()).includes("Out of date"));
      expect(await page.evaluate(() => globalThis.book.value("Pool loop", "B13"))).toBeCloseTo(39.34, 1);
      // The button is gone: the focus is on the view's heading, not lost.
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Explain");
      expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("H2");
    });

    test("shows the first rows of a long table and says how many more there are", async () => {
      await open();
      await page.evaluate(async () => {
        globalThis.book.type("Notes", "A1", '=WARMBACK.REFRIG.CHART("R-410A",20,120,2)');
        await globalThis.book.calculate();
      });
      await tab("Explain");
      await select("Notes", "A1");
      await page.locator("#view-explain table").waitFor();
      // 20 to 120 by 2 is 51 rows below the header.
      expect(await page.locator("#view-explain tbody tr").count()).toBe(14);
      expect(await shown()).toContain("37 more rows in the sheet.");
    });

    test("leads from a cell of a table to the formula that spills it", async () => {
      await open();
      await tab("Explain");
      await select("Pool loop", "E5");
      await page.getByRole("button", { name: "Go to 'Pool loop'!D3" }).click();
      expect(await selected()).toEqual({ sheet: "Pool loop", row: 2, column: 3 });
      await until(async () => (await page.locator("#view-explain table").count()) === 1);
    });
  });

  describe("Find", () => {
    test("finds by words and inserts the example at the selected cell, by keyboard alone", async () => {
      await open();
      await select("Notes", "C4");
      await page.getByRole("tab", { name: "Cautions" }).focus();
      await page.keyboard.press("End");
      await page.keyboard.press("Tab");
      await page.keyboard.type("friction in pipes");
      await page.locator("#view-find .results > h3").waitFor();
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      const insert = page.getByRole("button", { name: "Insert at the selected cell: PIPE.HEADLOSS" });
      await insert.waitFor();
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      await until(async () => (await page.locator(".status").textContent()) === "Inserted PIPE.HEADLOSS at Notes!C4.");
      expect(await page.evaluate(() => globalThis.book.formula("Notes", "C4"))).toMatch(
        /^=WARMBACK\.PIPE\.HEADLOSS\(40,"2 in",100/,
      );
    });

    test("never writes over what a cell holds", async () => {
      await open();
      await select("Pool loop", "B3");
      await tab("Find");
      await page.locator("#view-find summary", { hasText: "PIPE.BORE" }).click();
      await page.getByRole("button", { name: "Insert at the selected cell: PIPE.BORE" }).click();
      await until(
        async () => (await page.locator(".status").textContent()) === "B3 is not empty: select an empty cell.",
      );
      expect(await page.evaluate(() => globalThis.book.written)).toEqual([]);
    });

    test("asks for a cell where none is selected", async () => {
      await open();
      await tab("Find");
      await page.locator("#view-find summary", { hasText: "PIPE.BORE" }).click();
      await page.getByRole("button", { name: "Insert at the selected cell: PIPE.BORE" }).click();
      await until(async () => (await page.locator(".status").textContent()) === "Select a cell first.");
    });

    test("says what to try where nothing is found", async () => {
      await open();
      await tab("Find");
      await page.locator("fluent-text-input input").fill("zebra");
      await page.locator("#view-find", { hasText: "No function meets “zebra”." }).waitFor();
    });
  });

  test("is one stop for the Tab key among its tabs; arrows, Home and End move between them", async () => {
    await open();
    const chosen = (): Promise<string | null> => page.locator("[role=tab][aria-selected=true]").textContent();
    expect(await page.locator("[role=tab][tabindex='0']").count()).toBe(1);
    await page.getByRole("tab", { name: "Cautions" }).focus();
    for (const [key, name] of [
      ["ArrowRight", "Explain"],
      ["End", "Find"],
      ["ArrowRight", "Cautions"],
      ["ArrowLeft", "Find"],
      ["Home", "Cautions"],
    ] as const) {
      await page.keyboard.press(key);
      expect(await chosen()).toBe(name);
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(name);
    }
  });

  const modes: readonly (readonly [string, Mode])[] = [
    ["light", { colorScheme: "light" }],
    ["dark", { colorScheme: "dark" }],
    ["forced colours", { colorScheme: "dark", forcedColors: "active" }],
  ];
  test.each(modes)("breaks no rule of accessibility and fits 320 px in every view, %s", async (_name, mode) => {
    await open("", mode);
    const check = async (): Promise<void> => {
      expect(await violations()).toEqual([]);
      expect(await tooWide()).toBe(0);
    };
    await check();
    await tab("Explain");
    await check();
    for (const cell of ["B7", "B10", "B12", "D3"]) {
      await select("Pool loop", cell);
      await page.locator("#view-explain .where", { hasText: cell }).waitFor();
      await check();
    }
    await tab("Find");
    for (const name of ["PIPE.HEADLOSS", "REFRIG.LIST", "NOTE.WORKING"])
      await page.locator("#view-find summary", { hasText: name }).click();
    await check();
    await page.locator("fluent-text-input input").fill("zebra");
    await page.locator("#view-find", { hasText: "No function meets" }).waitFor();
    await check();
  });

  test.each(modes)("breaks no rule of accessibility in an empty workbook, %s", async (_name, mode) => {
    await open("?empty", mode);
    expect(await violations()).toEqual([]);
    expect(await tooWide()).toBe(0);
  });
});

/** The text of a part of the page. */
function textOf(part: string): () => Promise<string> {
  return async () => (await page.locator(part).textContent()) ?? "";
}
