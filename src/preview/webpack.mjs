import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../..");

const typescript = { test: /\.ts$/, loader: "esbuild-loader", options: { target: "es2022" } };

/** The headless evaluator: one CommonJS file for Node; it reads functions.js and functions.json beside it. */
const evaluate = {
  name: "evaluate",
  mode: "production",
  target: "node20",
  entry: { evaluate: join(here, "evaluate-main.ts") },
  output: { path: join(root, "dist"), filename: "[name].cjs", chunkFilename: "evaluate-[name].cjs" },
  resolve: { extensions: [".ts", ".js"] },
  module: { rules: [typescript] },
  node: { __dirname: false },
  // Bundling the sheet engine for Node would take ten times as long and gain nothing: it is required from node_modules.
  externals: [
    ({ request }, decide) => (/^(@univerjs\/|exceljs$)/.test(request) ? decide(null, `commonjs ${request}`) : decide()),
  ],
  // The file is read by people who look into a fault, and size costs nothing here.
  optimization: { minimize: false },
  devtool: false,
  performance: false,
};

export default [evaluate];
