/** All bundles of the add-in. Read by src/functions/build.mts, since parts of it are TypeScript. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { EsbuildPlugin } from "esbuild-loader";
import type { Configuration } from "webpack";
import { derivedPlugin, productionHost } from "./src/functions/derived";
import preview from "./src/preview/webpack.mjs";

const root = fileURLToPath(new URL(".", import.meta.url));

/** The oldest browsers that Excel shows add-ins in (WebKit of Safari 14, Edge) know this much. */
const TARGET = "es2020";

const pane = join(root, "src/taskpane/index.ts");

/** The cell functions, and the panel on top of them: one catalogue, one log, one memory. */
const addIn: Configuration = {
  name: "add-in",
  mode: "production",
  target: ["web", TARGET],
  context: root,
  entry: {
    functions: { import: "./src/functions/register.ts" },
    ...(existsSync(pane) && { taskpane: { import: pane, dependOn: "functions" } }),
  },
  output: {
    path: join(root, "dist"),
    filename: "[name].js",
    chunkFilename: "[name].[contenthash].js",
    // Pages lie at the root of the build; "auto" would ask for a document, which a runtime of functions alone lacks.
    publicPath: "",
    globalObject: "globalThis",
    uniqueName: "warmback",
  },
  resolve: { extensions: [".ts", ".js"] },
  module: {
    rules: [{ test: /\.ts$/, loader: "esbuild-loader", options: { target: TARGET } }],
  },
  optimization: { minimizer: [new EsbuildPlugin({ target: TARGET })] },
  plugins: [derivedPlugin(productionHost())],
  devtool: false,
  performance: false,
};

/**
 * The panel's worker: one file with core and catalogue of its own. Built by itself, since modules that two entries of one
 * build share are joined less tightly, and the functions' script should stay small.
 */
const worker: Configuration = {
  name: "worker",
  mode: "production",
  target: ["webworker", TARGET],
  context: root,
  entry: { worker: "./src/taskpane/runs/worker.ts" },
  output: { path: join(root, "dist"), filename: "[name].js", publicPath: "" },
  resolve: { extensions: [".ts", ".js"] },
  module: { rules: [{ test: /\.ts$/, loader: "esbuild-loader", options: { target: TARGET } }] },
  optimization: { minimizer: [new EsbuildPlugin({ target: TARGET })] },
  devtool: false,
  performance: false,
};

/** Everything that is built, in any order. */
export const configurations: readonly Configuration[] = [addIn, worker, ...preview];
