/** Builds once for all tests that look at a build; `inject("build")` is its folder. */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { TestProject } from "vitest/node";
import { ROOT } from "../../scripts/root";

declare module "vitest" {
  interface ProvidedContext {
    /** The folder of the build; "" where no test to be run asks for it. */
    readonly build: string;
  }
}

/** Whether a test, or a helper that it imports, asks for the build. */
const asks = (path: string): boolean => {
  const text = readFileSync(path, "utf8");
  const helpers = [...text.matchAll(/ from "(\.\.?\/[^"]+)"/g)].map(([, name = ""]) =>
    join(dirname(path), `${name}.ts`),
  );
  return [text, ...helpers.filter(existsSync).map((each) => readFileSync(each, "utf8"))].some((each) =>
    each.includes('inject("build")'),
  );
};

/** The build runs by itself: the bundler's parts don't stay in memory. */
const built = (): string => {
  const command = ["--import", "tsx", join(ROOT, "scripts/build.mts"), "--print"];
  return execFileSync(process.execPath, command, { cwd: ROOT, encoding: "utf8" }).trim();
};

/** A run of one topic's tests needn't wait for a build. */
export function setup({ vitest, provide }: TestProject): void {
  provide("build", vitest.state.getPaths().some(asks) ? built() : "");
}
