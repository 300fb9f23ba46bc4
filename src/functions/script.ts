/** The functions script: all cell functions in one classic script, made in one pass, and behind them what the panel shares. */
import { readFileSync } from "node:fs";
import { build, type Plugin } from "esbuild";
import { leanSource } from "./leanSource";
import { ROOT, sharedModules } from "./shared";

/** The oldest browsers that Excel shows add-ins in (WebKit of Safari 14, Edge) know this much. */
export const TARGET = "es2020";

const entry = (): string => {
  const shared = sharedModules();
  const imports = shared.map((id, place) => `import * as m${place} from "./${id}";`);
  const names = shared.map((id, place) => `${JSON.stringify(id)}: m${place}`);
  return `import "./src/functions/register";
${imports.join("\n")}
globalThis.warmback.modules = { ${names.join(", ")} };`;
};

const lean: Plugin = {
  name: "lean sources",
  setup: (it) =>
    it.onLoad({ filter: /[\\/]core[\\/].*\.ts$/ }, ({ path }) => ({
      contents: leanSource(readFileSync(path, "utf8")),
      loader: "ts",
    })),
};

/** @throws Error with what the bundler found wrong */
export const functionsScript = async (): Promise<string> => {
  const { outputFiles } = await build({
    stdin: { contents: entry(), resolveDir: ROOT, loader: "ts", sourcefile: "functions.ts" },
    absWorkingDir: ROOT,
    bundle: true,
    minify: true,
    format: "iife",
    target: TARGET,
    legalComments: "none",
    write: false,
    logLevel: "silent",
    plugins: [lean],
  });
  return outputFiles[0]?.text ?? "";
};
