/** A page that notes whatever goes wrong in it. */
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContextOptions, Download, Page } from "playwright-core";

export interface Watched {
  readonly page: Page;
  /** Errors of the console and of scripts, failed requests, and requests to anywhere else than the server. */
  readonly faults: readonly string[];
}

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
  page.on("requestfailed", (request) => faults.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(address))
      faults.push(`outside: ${request.url()}`);
  });
  await page.goto(address);
  return { page, faults };
};

/** Saves a download and gives its path: the browser's own copy may lie on another machine. */
export async function saved(download: Download): Promise<string> {
  const path = join(mkdtempSync(join(tmpdir(), "warmback-download-")), download.suggestedFilename());
  await download.saveAs(path);
  return path;
}
