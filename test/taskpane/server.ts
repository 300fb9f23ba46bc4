/** Serves the panel with the published headers. */
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "mathjs";
import temml from "temml";
import { inject } from "vitest";
import { headersFor } from "../../manifest/headers";
import { changesText } from "../../scripts/changes";
import { printedEquations, symbolsByForm } from "../../scripts/help/forms";
import { BUILD } from "../../src/functions/buildHash";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** A script that the set-up of the run has bundled. */
const bundled = (name: string): string => readFileSync(join(inject("panelScripts"), name), "utf8");

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
    "page.js": bundled("page.js"),
    "taskpane.js": bundled("taskpane.js"),
    // Each script here holds a core of its own; the worker only looks at the build.
    "functions.js": `globalThis.warmback = { build: ${JSON.stringify(BUILD)}, notes: true };`,
    "notes.js": "",
    "worker.js": bundled("worker.js"),
    "mathml.json": mathml(forms),
    "changes.json": changesText(),
    "symbols.json": JSON.stringify(symbolsByForm(await printedEquations(here("../../core")))),
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
