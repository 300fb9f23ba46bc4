/** The functions script, with all cell functions and the core's run-time door, and the notes script: classic scripts. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { build as esbuild, type Metafile, type Plugin } from "esbuild";
import { minify } from "terser";
import { ROOT } from "./root";
import { keepNoteParts, stripHelpTexts } from "./stripHelpTexts";

/** Supported by the oldest browsers that Excel uses for add-ins (WebKit of Safari 14, Edge). */
export const TARGET = "es2020";

const IN_CORE = /[\\/]core[\\/].*\.ts$/;

/** A bundler's plugin that changes the core's sources. */
const coreThrough = (change: (source: string) => string): Plugin => ({
  name: "core's sources",
  setup: (it) => {
    it.onLoad({ filter: IN_CORE }, ({ path }) => ({
      contents: change(readFileSync(path, "utf8")),
      loader: "ts",
    }));
    // No module of the core does anything but declare: one that nothing is used of is left out.
    it.onResolve({ filter: /^\./ }, ({ path, resolveDir }) => {
      const found = [`${join(resolveDir, path)}.ts`, join(resolveDir, path, "index.ts")].find((each) =>
        existsSync(each),
      );
      return found === undefined || !IN_CORE.test(found) ? undefined : { path: found, sideEffects: false };
    });
  },
});

export interface ScriptBundle {
  readonly text: string;
  /** What the script is made of, file by file. */
  readonly parts: Metafile;
}

interface Script {
  readonly entry: string;
  readonly change: (source: string) => string;
}

async function bundled({ entry, change }: Script, build: string): Promise<ScriptBundle> {
  const { outputFiles, metafile } = await esbuild({
    entryPoints: [join(ROOT, entry)],
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
    plugins: [coreThrough(change)],
  });
  return { text: outputFiles[0]?.text ?? "", parts: metafile };
}

/** What loads before the first cell is minified a second time: this saves another 2 % of it. */
async function smallest(script: Promise<ScriptBundle>): Promise<ScriptBundle> {
  const { text, parts } = await script;
  const { code = "" } = await minify(text, { ecma: 2020, compress: { passes: 2 } });
  return { text: code, parts };
}

/**
 * The functions script as its parts are measured: before the second minifying, which takes most of the time.
 * @param build names the build
 * @throws Error with the bundler's messages
 */
export const measuredFunctions = (build: string): Promise<ScriptBundle> =>
  bundled({ entry: "src/functions/register.ts", change: stripHelpTexts }, build);

/** The functions script, smallest. */
export const functionsBundle = (build: string): Promise<ScriptBundle> => smallest(measuredFunctions(build));

/** The notes script, which loads after it: cautions, checks, examples and citations. */
export const notesBundle = (build: string): Promise<ScriptBundle> =>
  smallest(bundled({ entry: "src/functions/addNotes.ts", change: keepNoteParts }, build));
