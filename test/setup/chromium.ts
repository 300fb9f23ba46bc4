/** Debian's Chromium: where it lies, how it is started, and the one that a run of tests shares. */
import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";
import { inject } from "vitest";

declare module "vitest" {
  interface ProvidedContext {
    /** The address of the run's browser; absent where there is none. */
    chromium: string;
  }
}

export const CHROMIUM = process.env["WARMBACK_CHROMIUM"] ?? "/usr/bin/chromium";

/** Whether tests can run in a browser. Where none may be skipped, a missing browser is an error. */
export const HAS_CHROMIUM = existsSync(CHROMIUM);
if (!HAS_CHROMIUM && process.env["CI"] === "true") throw new Error(`${CHROMIUM} is missing: apt-get install chromium`);

export const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Connects to the run's browser. Closing the connection closes the pages opened through it, not the browser. */
export function connectBrowser(): Promise<Browser> {
  return chromium.connect(inject("chromium"));
}
