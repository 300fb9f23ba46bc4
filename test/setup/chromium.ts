/** The Chromium that a run of tests shares. */
import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";
import { inject } from "vitest";
import { CHROMIUM } from "./chromiumProgram";

declare module "vitest" {
  interface ProvidedContext {
    /** The address of the run's browser; absent where there is none. */
    chromium: string;
  }
}

/** Whether tests can run in a browser. In CI none may be skipped: there they fail where it is missing. */
export const HAS_CHROMIUM = existsSync(CHROMIUM) || process.env["CI"] === "true";

/** Connects to the run's browser. Closing the connection closes the pages opened through it, not the browser. */
export function connectBrowser(): Promise<Browser> {
  return chromium.connect(inject("chromium"));
}
