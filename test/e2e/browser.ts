/** A page that notes whatever goes wrong in it. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContextOptions, Download, Page, Request } from "playwright-core";
import { onTestFinished } from "vitest";

export interface Watched {
  readonly page: Page;
  /** Errors of the console and of scripts, failed requests, and requests to anywhere else than the server. */
  readonly faults: readonly string[];
}

/** A worker that is ended while it starts leaves a request that the browser gives up. */
const isEndedWorkers = (request: Request): boolean =>
  /\/(worker|files|functions|notes)\.js\?v=/.test(request.url()) && request.failure()?.errorText === "net::ERR_ABORTED";

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

/** Saves a download until the test has ended, and gives its path. A browser that is connected to tells none of its own. */
export async function saved(download: Download): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "warmback-download-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return path;
}
