import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { EsbuildPlugin } from "esbuild-loader";
import webpack from "webpack";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../..");
const dist = join(root, "dist");

const typescript = { test: /\.ts$/, loader: "esbuild-loader", options: { target: "es2022" } };

/** Adds files to a build under the names that they have there. */
const withFiles = (files) => ({
  apply: (compiler) => {
    compiler.hooks.thisCompilation.tap("files", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: "files", stage }, () => {
        for (const [name, source] of Object.entries(files)) {
          compilation.fileDependencies.add(join(here, source));
          compilation.emitAsset(name, new webpack.sources.RawSource(readFileSync(join(here, source))));
        }
      });
    });
  },
});

/** The page: its first script, which stands in for Excel's runtime, and the sheet engine with all around it. */
const page = {
  name: "preview",
  mode: "production",
  target: ["web", "es2022"],
  context: root,
  entry: { shim: join(here, "shim-page.ts"), preview: join(here, "page.ts") },
  output: {
    path: dist,
    filename: "[name].js",
    chunkFilename: "preview-[name].[contenthash].js",
    publicPath: "",
    uniqueName: "warmbackPreview",
  },
  resolve: { extensions: [".ts", ".js"] },
  module: { rules: [typescript, { test: /\.css$/, use: ["style-loader", "css-loader"] }] },
  optimization: { minimizer: [new EsbuildPlugin({ target: "es2022" })] },
  plugins: [
    withFiles({ "index.html": "preview.html", "preview.css": "preview.css" }),
    // Hyphenation patterns of 70 languages; the engine asks for English only.
    new webpack.IgnorePlugin({
      resourceRegExp: /^\.\/(?!en-gb)[a-z0-9-]+-[\w-]{8}\.js$/,
      contextRegExp: /engine-render/,
    }),
  ],
  devtool: false,
  performance: false,
};

/** The headless evaluator: one CommonJS file for Node; it reads functions.js and functions.json beside it. */
const evaluate = {
  name: "evaluate",
  mode: "production",
  target: "node20",
  context: root,
  entry: { evaluate: join(here, "evaluate-main.ts") },
  output: { path: dist, filename: "[name].cjs" },
  resolve: { extensions: [".ts", ".js"] },
  module: { rules: [typescript] },
  node: { __dirname: false },
  // Bundling the sheet engine for Node would take ten times as long and gain nothing: it is required from node_modules.
  externals: [
    ({ request }, decide) => (/^(@univerjs\/|exceljs$)/.test(request) ? decide(null, `commonjs ${request}`) : decide()),
  ],
  optimization: { minimize: false },
  devtool: false,
  performance: false,
};

export default [page, evaluate];
