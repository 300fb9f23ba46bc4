/** Bundles the panel and serves it with the published headers. */
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { parse } from "mathjs";
import temml from "temml";
import { CATALOGUE } from "../../core";
import { finderTextsOf } from "../../core/help";
import { headersFor } from "../../manifest/headers";
import { BUILD } from "../../src/functions/buildHash";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

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

/** The forms that the page shows, as the build renders them. */
const mathml = (forms: readonly string[]): string =>
  JSON.stringify(
    Object.fromEntries(
      forms.map((form) => [
        form,
        temml.renderToString(parse(form.replace(/(?<![<>=!])=(?!=)/, "==")).toTex(), { displayMode: true }),
      ]),
    ),
  );

export interface Served {
  readonly address: string;
  close(): void;
}

/** @param forms the equations that mathml.json holds; others stay text */
export async function servePanel(forms: readonly string[]): Promise<Served> {
  const page = readFileSync(here("../../src/taskpane/taskpane.html"), "utf8");
  const scripts = '<script src="page.js"></script><script src="taskpane.js"></script>';
  const files: Readonly<Record<string, string>> = {
    "taskpane.html": page.replace("<!-- scripts -->", scripts),
    "taskpane.css": readFileSync(here("../../src/taskpane/taskpane.css"), "utf8"),
    "page.js": await bundle("page/main.ts"),
    "taskpane.js": await bundle("../../src/taskpane/index.ts"),
    // Each script here holds a core of its own; the worker only looks at the build.
    "functions.js": `globalThis.warmback = { build: ${JSON.stringify(BUILD)} };`,
    "worker.js": await bundle("../../src/taskpane/runs/worker.ts"),
    "mathml.json": mathml(forms),
  };
  const server: Server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname.slice(1);
    const file = files[path];
    if (file === undefined) response.writeHead(path === "favicon.ico" ? 204 : 404).end();
    else response.writeHead(200, { ...headersFor(path) }).end(file);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${String(port)}/taskpane.html`, close: () => void server.close() };
}
