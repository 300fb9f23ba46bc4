/** The scripts of the panel's test page, bundled as classic scripts. */
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { CATALOGUE } from "../../core";
import { finderTextsOf } from "../../core/help";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const ENTRIES: Readonly<Record<string, string>> = {
  "page.js": "page/main.ts",
  "taskpane.js": "../../src/taskpane/index.ts",
  "worker.js": "../../src/taskpane/runs/worker.ts",
};

/** One classic script; the starter sheets are a sample. */
async function bundle(entry: string): Promise<string> {
  const sample = here("page/sheets.ts");
  const { outputFiles } = await build({
    entryPoints: [here(entry)],
    bundle: true,
    format: "iife",
    minify: true,
    write: false,
    logLevel: "silent",
    define: { FINDER_TEXTS: JSON.stringify(finderTextsOf(CATALOGUE)) },
    plugins: [
      { name: "sample sheets", setup: (it) => it.onResolve({ filter: /^\.\.\/sheets$/ }, () => ({ path: sample })) },
    ],
  });
  return outputFiles[0]?.text ?? "";
}

/** File name → text. */
export async function panelScripts(): Promise<Readonly<Record<string, string>>> {
  const bundled = Object.entries(ENTRIES).map(async ([name, entry]) => [name, await bundle(entry)] as const);
  return Object.fromEntries(await Promise.all(bundled));
}
