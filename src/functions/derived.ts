/** The files that are derived from the catalogue and from templates, as assets of the add-in's build. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import webpack, { type Compiler } from "webpack";
import { helpPage, PAGES, VARIANTS } from "../../manifest/manifest";
import { CATALOGUE } from "./compiled";
import { printedForms } from "./help/forms";
import { helpPages } from "./help/pages";
import { mathmlFor } from "./help/tex";
import { metadataOf } from "./metadata";
import { functionsScript } from "./script";
import { ROOT } from "./shared";

/** Path inside the build → content. */
export type Files = Readonly<Record<string, string>>;

/** The host that help addresses lead to: the environment's WARMBACK_HOST, else the manifest's. */
export const productionHost = (): string =>
  (process.env["WARMBACK_HOST"] ?? VARIANTS.production.host).replace(/\/+$/, "");

const metadataFile = (host: string): string =>
  `${JSON.stringify(
    metadataOf(CATALOGUE, (id) => `${host}/${helpPage(id)}`),
    null,
    1,
  )}\n`;

/** Printed form → MathML, for the panel. */
const mathmlFile = async (): Promise<string> => {
  const forms = await printedForms(join(ROOT, "core"));
  return JSON.stringify(Object.fromEntries(forms.map((form) => [form, mathmlFor(form)])));
};

/** Microsoft's runtime must come from its own address; it may not be copied. */
const OFFICE = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const SCRIPTS = "<!-- scripts -->";

/** The panel's page as Excel loads it: plain scripts in order, none deferred. */
const paneFiles = (): Files => {
  const read = (name: string): string => readFileSync(join(ROOT, "src/taskpane", name), "utf8");
  const template = read("taskpane.html");
  if (!template.includes(SCRIPTS)) throw new Error(`taskpane.html: has no place for scripts (${SCRIPTS})`);
  const scripts = [OFFICE, PAGES.functions, "taskpane.js"].map((source) => `<script src="${source}"></script>`);
  return { [PAGES.pane]: template.replace(SCRIPTS, scripts.join("\n    ")), "taskpane.css": read("taskpane.css") };
};

export const derivedFiles = async (host: string): Promise<Files> => ({
  [PAGES.functions]: await functionsScript(),
  [PAGES.metadata]: metadataFile(host),
  "mathml.json": await mathmlFile(),
  ...helpPages(),
  ...paneFiles(),
});

/** A webpack plugin that adds them to a build's assets. */
export const derivedPlugin = (host: string): { apply(compiler: Compiler): void } => ({
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("derived", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: "derived", stage }, async () => {
        for (const [path, content] of Object.entries(await derivedFiles(host)))
          compilation.emitAsset(path, new webpack.sources.RawSource(content));
      });
    });
  },
});
