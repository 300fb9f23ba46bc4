/** The files that are derived from the catalogue, as assets of the functions build. */
import type { Compiler } from "webpack";
import webpack from "webpack";
import { CATALOGUE } from "../../core/catalogue";
import { helpPage, VARIANTS } from "../../manifest/manifest";
import { metadataOf } from "./metadata";

/** Path inside the build → content. */
export type Files = Readonly<Record<string, string>>;

/** The host that help addresses lead to: the environment's WARMBACK_HOST, else the manifest's. */
export const productionHost = (): string =>
  (process.env["WARMBACK_HOST"] ?? VARIANTS.production.host).replace(/\/+$/, "");

export const derivedFiles = (host: string): Files => ({
  "functions.json": `${JSON.stringify(
    metadataOf(CATALOGUE, (id) => `${host}/${helpPage(id)}`),
    null,
    1,
  )}\n`,
});

/** A webpack plugin that adds them to a build's assets. */
export const derivedPlugin = (host: string): { apply(compiler: Compiler): void } => ({
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("derived", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: "derived", stage }, () => {
        for (const [path, content] of Object.entries(derivedFiles(host)))
          compilation.emitAsset(path, new webpack.sources.RawSource(content));
      });
    });
  },
});
