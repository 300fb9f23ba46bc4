/** The functions script: all cell functions and the core's run-time door in one classic script, built in one pass. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { build as esbuild, type Metafile, type Plugin } from "esbuild";
import { minify } from "terser";
import { ROOT } from "./root";
import { stripHelpTexts } from "./stripHelpTexts";

/** Supported by the oldest browsers that Excel uses for add-ins (WebKit of Safari 14, Edge). */
export const TARGET = "es2020";

const withoutHelpTexts: Plugin = {
  name: "without help texts",
  setup: (it) =>
    it.onLoad({ filter: /[\\/]core[\\/].*\.ts$/ }, ({ path }) => ({
      contents: stripHelpTexts(readFileSync(path, "utf8")),
      loader: "ts",
    })),
};

export interface FunctionsBundle {
  readonly text: string;
  /** What the script is made of, file by file. */
  readonly parts: Metafile;
}

/**
 * @param build names the build
 * @throws Error with the bundler's messages
 */
export async function functionsBundle(build: string): Promise<FunctionsBundle> {
  const { outputFiles, metafile } = await esbuild({
    entryPoints: [join(ROOT, "src/functions/register.ts")],
    absWorkingDir: ROOT,
    bundle: true,
    minify: true,
    format: "iife",
    target: TARGET,
    legalComments: "none",
    define: { BUILD_HASH: JSON.stringify(build) },
    write: false,
    metafile: true,
    logLevel: "silent",
    plugins: [withoutHelpTexts],
  });
  // What loads before the first cell is minified a second time: this saves another 2 % of it.
  const { code = "" } = await minify(outputFiles[0]?.text ?? "", { ecma: 2020, compress: { passes: 2 } });
  return { text: code, parts: metafile };
}

export const functionsScript = async (build: string): Promise<string> => (await functionsBundle(build)).text;
