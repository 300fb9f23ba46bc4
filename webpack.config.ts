/** All bundles of the add-in. Read by src/functions/build.mts, since parts of it are TypeScript. */
import { join } from "node:path";
import { EsbuildPlugin } from "esbuild-loader";
import webpack, { type Configuration } from "webpack";
import { CATALOGUE } from "./src/functions/compiled";
import { derivedPlugin, productionHost } from "./src/functions/derived";
import { finderTextsOf } from "./src/functions/leanSource";
import { TARGET } from "./src/functions/script";
import { ROOT, sharedModule, sharedModules } from "./src/functions/shared";
import preview from "./src/preview/webpack.mjs";

const script = {
  mode: "production",
  target: ["web", TARGET],
  context: ROOT,
  resolve: { extensions: [".ts", ".js"] },
  module: {
    rules: [{ test: /\.ts$/, loader: "esbuild-loader", options: { target: TARGET } }],
  },
  optimization: { minimizer: [new EsbuildPlugin({ target: TARGET })] },
  devtool: false,
  performance: false,
} as const satisfies Configuration;

const output = (uniqueName: string): NonNullable<Configuration["output"]> => ({
  path: join(ROOT, "dist"),
  filename: "[name].js",
  chunkFilename: "[name].[contenthash].js",
  // Pages lie at the root of the build; "auto" would ask for a document, which a runtime of functions alone lacks.
  publicPath: "",
  globalObject: "globalThis",
  uniqueName,
});

const shared = new Set(sharedModules());

/** What the functions script lays out is taken from there: one catalogue, one memory. */
const fromFunctions: NonNullable<Configuration["externals"]> = ({ context = "", request = "" }, decide) => {
  const id = sharedModule(context, request);
  if (id === undefined) decide();
  else if (shared.has(id)) decide(undefined, `var warmback.modules[${JSON.stringify(id)}]`);
  else decide(new Error(`${id}: is asked for in a way that src/functions/shared.ts doesn't find`));
};

/**
 * The panel, on top of the functions script, and all that is derived from the catalogue, that script among it. It is made
 * apart in one pass: a bundle that shares its modules with another can't be drawn together.
 */
const addIn: Configuration = {
  ...script,
  name: "add-in",
  entry: { taskpane: [join(ROOT, "src/functions/putBack.ts"), join(ROOT, "src/taskpane/index.ts")] },
  output: output("warmback"),
  externals: [fromFunctions],
  plugins: [
    new webpack.DefinePlugin({ FINDER_TEXTS: JSON.stringify(finderTextsOf(CATALOGUE)) }),
    derivedPlugin(productionHost()),
  ],
};

/** The panel's worker: a core of its own. */
const worker: Configuration = {
  ...script,
  name: "worker",
  target: ["webworker", TARGET],
  entry: { worker: join(ROOT, "src/taskpane/runs/worker.ts") },
  output: output("warmbackWorker"),
};

/** Everything that is built, in any order. */
export const configurations: readonly Configuration[] = [addIn, worker, ...preview];
