/** The built panel in Excel's page: it opens beside the scripts of its own build, and says what is wrong beside others. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page, Route } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from "vitest";
import { serve, type Served } from "../../scripts/serve";
import { connectBrowser, HAS_CHROMIUM } from "../setup/chromium";

const OFFICE = "https://appsforoffice.microsoft.com/**";

/** As much of office.js as the panel needs to see that no workbook is beside it. */
const NO_WORKBOOK = `globalThis.Office = { onReady: async () => ({ host: null }), context: {} };`;

/** As much of the runtime of cell functions as this page needs to call them. */
const WITH_FUNCTIONS = `globalThis.cells = new Map();
globalThis.CustomFunctions = {
  associate: (id, call) => cells.set(id, call),
  Error: class extends Error { constructor(code, message) { super(message); this.code = code; } },
  ErrorCode: {},
};`;

const script =
  (body: string) =>
  (route: Route): Promise<void> =>
    route.fulfill({ contentType: "text/javascript", body });

const missing = (route: Route): Promise<void> => route.fulfill({ status: 404, body: "" });

describe.skipIf(!HAS_CHROMIUM)("The scripts of one build", { timeout: 60_000 }, () => {
  let served: Served;
  let browser: Browser;
  let page: Page;

  const built = (name: string): string => readFileSync(join(inject("build"), name), "utf8");
  const older = (name: string): string => {
    const [, build = ""] = /functions\.js\?v=([0-9a-f]+)/.exec(built("taskpane.html")) ?? [];
    const text = built(name).replaceAll(build, "0123456789ab");
    expect(text).not.toBe(built(name));
    return text;
  };

  /** Opens a page of the build with some files replaced, by the beginning of their address. */
  const open = async (at: string, files: Readonly<Record<string, (route: Route) => Promise<void>>>): Promise<void> => {
    page = await browser.newPage();
    await page.route(OFFICE, script(NO_WORKBOOK));
    for (const [name, answer] of Object.entries(files))
      await page.route(name.includes("*") ? name : `${served.address}${name}*`, answer);
    await page.goto(`${served.address}${at}`);
  };
  const shows = (text: RegExp, part = "#panel"): Promise<void> =>
    page.locator(part).filter({ hasText: text }).waitFor({ timeout: 20_000 });

  beforeAll(async () => {
    served = await serve({ folder: inject("build"), port: 0, open: false });
    browser = await connectBrowser();
  }, 60_000);
  afterEach(() => page.close());
  afterAll(async () => {
    await browser.close();
    await served.close();
  });

  test("meet without a word about it", async () => {
    await open("taskpane.html", {});
    await shows(/^This panel works beside a workbook/);
  });

  test.each([
    ["an older functions.js", { "functions.js": () => script(older("functions.js")) }, /an old copy/],
    ["an older panel", { "taskpane.js": () => script(older("taskpane.js")) }, /an old copy/],
    ["a functions.js from before builds had names", { "functions.js": () => script("warmback={}") }, /build unknown/],
    ["no functions.js", { "functions.js": () => missing }, /^functions\.js didn't load/],
    ["an older notes.js", { "notes.js": () => script(older("notes.js")) }, /^notes\.js didn't load/],
    ["no notes.js", { "notes.js": () => missing }, /^notes\.js didn't load/],
    ["no office.js", { [OFFICE]: () => missing }, /^office\.js didn't load/],
  ])("are told apart: the panel beside %s says so", async (_, files, text) => {
    await open("taskpane.html", Object.fromEntries(Object.entries(files).map(([name, make]) => [name, make()])));
    await shows(text);
    expect(await page.getByRole("alert").count()).toBe(1);
  });

  test("answer cells without the notes; a call of a function about functions says that they are missing, and fetches them later", async () => {
    await open("taskpane.html", { "notes.js": missing, [OFFICE]: script(`${NO_WORKBOOK}${WITH_FUNCTIONS}`) });
    await shows(/^notes\.js didn't load/);
    expect(await page.evaluate(`cells.get("PIPE.BORE")("2 in")`)).toBe(2.049);
    const asked = `Promise.resolve(cells.get("NOTE.SOURCES")("PIPE.BORE")).then((rows) => rows[1][0], (error) => error.message)`;
    expect(await page.evaluate(asked)).toMatch(/^notes\.js didn't load, and there are no cautions/);
    await page.unroute(`${served.address}notes.js*`);
    expect(await page.evaluate(asked)).toBe("ASTM D1785");
    expect(await page.evaluate("warmback.notes && warmback.core.CATALOGUE[0].checks.length > 0")).toBe(true);
  });

  test("leave the preview's sheet unopened where functions.js is missing, and say so", async () => {
    await open("", { "functions.js": missing });
    await shows(/functions\.js didn't load/, "#status");
    await shows(/^The panel needs the sheet\.$|functions\.js didn't load/);
  });

  test.each([
    ["an older one", (route: Route) => route.fulfill({ json: { functions: [] } }), /of another build/],
    ["none", missing, /functions\.json is missing/],
  ])("work beside functions.json, and the panel says where the server has %s", async (_, answer, text) => {
    let asked = 0;
    // The preview's page asks first and needs the true one.
    await open("", { "functions.json": (route) => ((asked += 1) === 1 ? route.continue() : answer(route)) });
    await page.getByRole("alert").filter({ hasText: text }).waitFor({ timeout: 30_000 });
    expect(await page.locator("#panel").getByRole("tab", { name: "Find" }).isEnabled()).toBe(true);
  });

  test("are loaded by the worker too, which works the published values", async () => {
    const asked = new Set<string>();
    await open("", {});
    page.on("request", (request) => {
      const { pathname, search } = new URL(request.url());
      if (/^\/(worker|functions)\.js$/.test(pathname)) asked.add(pathname + search);
    });
    await page.getByRole("tab", { name: "Workbook" }).click();
    await page.getByRole("button", { name: "Run the checks" }).click();
    const told = page.locator("#panel").getByText(/^\d+ of \d+ published values agree\.$/);
    await told.waitFor({ timeout: 50_000 });
    const [agree, all] = ((await told.textContent()) ?? "").match(/\d+/g) ?? [];
    expect(agree).toBe(all);
    expect(page.workers()).toHaveLength(1);
    expect([...asked].join(" ")).toMatch(/^\/worker\.js\?v=([0-9a-f]{12}) \/functions\.js\?v=\1$/);
  });
});
