/** A browser for the end-to-end tests: Debian's Chromium, and a page that notes whatever goes wrong in it. */
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";
import type { Browser, BrowserContextOptions, Page, Request } from "playwright-core";

const CHROMIUM = process.env["CHROMIUM"] ?? "/usr/bin/chromium";

/** Whether the tests can run here; on a build machine a missing browser is a failure, not a reason to skip. */
export const hasBrowser = existsSync(CHROMIUM) || process.env["CI"] === "true";

if (!hasBrowser) console.warn("NOT RUN: end-to-end (apt-get install chromium)");

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: CHROMIUM, args: FLAGS });

export interface Watched {
  readonly page: Page;
  /** Errors of the console and of scripts, failed requests, and requests to anywhere else than the server. */
  readonly faults: readonly string[];
}

/** A worker that is ended while it starts leaves a request that the browser gives up. */
const isEndedWorkers = (request: Request): boolean =>
  /\/(worker|functions)\.js\?v=/.test(request.url()) && request.failure()?.errorText === "net::ERR_ABORTED";

export const openPage = async (
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<Watched> => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, ...options });
  const faults: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(`console: ${message.text()}`);
  });
  page.on("pageerror", (error) => faults.push(`script: ${error.message}`));
  page.on("requestfailed", (request) => {
    if (!isEndedWorkers(request)) faults.push(`failed: ${request.url()}`);
  });
  page.on("request", (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(address))
      faults.push(`outside: ${request.url()}`);
  });
  await page.goto(address);
  return { page, faults };
};
