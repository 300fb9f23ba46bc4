/** Generates the build's files that come from the catalogue and from templates. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import webpack, { type Compiler } from "webpack";
import { CATALOGUE } from "../core";
import { functionsBundle, notesBundle } from "./bundle";
import { changesText } from "./changes";
import { printedEquations, symbolsByForm } from "./help/forms";
import { helpPages } from "./help/pages";
import { mathmlFor } from "./help/tex";
import { helpPage, PAGES } from "./manifest/manifest";
import { metadataOf } from "./metadata";
import { nameFaults } from "./names";
import { ROOT } from "./root";
import type { BuildSettings } from "./settings";

/** Path inside the build → content. */
export type Files = Readonly<Record<string, string>>;

/**
 * The text of functions.json.
 * @throws Error for an id that Excel doesn't accept
 */
function metadataText(host: string): string {
  const faults = nameFaults(CATALOGUE.map(({ id }) => id));
  if (faults.length > 0) throw new Error(faults.join("\n"));
  const metadata = metadataOf(CATALOGUE, (id) => `${host}/${helpPage(id)}`);
  return `${JSON.stringify(metadata, null, 1)}\n`;
}

/** SHA-256 of functions.json, by which the panel detects one of another build. */
export const metadataHash = (host: string): string => createHash("sha256").update(metadataText(host)).digest("hex");

/** What the panel fetches about equations: each form as MathML, and what its symbols are. */
async function equationFiles(): Promise<Files> {
  const printed = await printedEquations(join(ROOT, "core"));
  return {
    "mathml.json": JSON.stringify(Object.fromEntries([...printed.keys()].map((form) => [form, mathmlFor(form)]))),
    "symbols.json": JSON.stringify(symbolsByForm(printed)),
  };
}

/** Microsoft's runtime must be loaded from its own address; it may not be copied. */
const OFFICE = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const SCRIPTS = "<!-- scripts -->";

/** The panel's page as Excel loads it: plain scripts in order, none deferred; the build in an address defeats old copies. */
function paneFiles(build: string): Files {
  const read = (name: string): string => readFileSync(join(ROOT, "src/taskpane", name), "utf8");
  const template = read("taskpane.html");
  if (!template.includes(SCRIPTS)) throw new Error(`taskpane.html: has no place for scripts (${SCRIPTS})`);
  const sources = [OFFICE, ...[PAGES.functions, PAGES.notes, "taskpane.js"].map((name) => `${name}?v=${build}`)];
  const scripts = sources.map((source) => `<script src="${source}"></script>`);
  return { [PAGES.pane]: template.replace(SCRIPTS, scripts.join("\n    ")), "taskpane.css": read("taskpane.css") };
}

export const assetFiles = async ({ host, build }: BuildSettings): Promise<Files> => ({
  [PAGES.functions]: (await functionsBundle(build)).text,
  [PAGES.notes]: (await notesBundle(build)).text,
  [PAGES.metadata]: metadataText(host),
  ...(await equationFiles()),
  "changes.json": changesText(),
  ...helpPages(),
  ...paneFiles(build),
});

/** A webpack plugin that adds files to a build. */
export const withFiles = (name: string, files: () => Files | Promise<Files>): { apply(compiler: Compiler): void } => ({
  apply(compiler) {
    compiler.hooks.thisCompilation.tap(name, (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name, stage }, async () => {
        for (const [path, content] of Object.entries(await files()))
          compilation.emitAsset(path, new webpack.sources.RawSource(content), { minimized: true });
      });
    });
  },
});
