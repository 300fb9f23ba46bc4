/** Global set-up of the tests in a browser: starts one Chromium, which all of them share, and bundles the panel once. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { panelScripts } from "../taskpane/bundle";
import { HAS_CHROMIUM } from "./chromium";
import { CHROMIUM, FLAGS } from "./chromiumProgram";

declare module "vitest" {
  interface ProvidedContext {
    /** The folder of the panel's scripts. */
    panelScripts: string;
  }
}

export async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  if (!HAS_CHROMIUM) {
    console.warn("NOT RUN: tests in a browser (apt-get install chromium)");
    return undefined;
  }
  const [server, scripts] = await Promise.all([
    chromium.launchServer({ executablePath: CHROMIUM, args: FLAGS }),
    panelScripts(),
  ]);
  const folder = mkdtempSync(join(tmpdir(), "warmback-panel-"));
  for (const [name, text] of Object.entries(scripts)) writeFileSync(join(folder, name), text);
  project.provide("chromium", server.wsEndpoint());
  project.provide("panelScripts", folder);
  return async () => {
    await server.close();
    rmSync(folder, { recursive: true });
  };
}
