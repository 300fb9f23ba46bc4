/** Everything that webpack bundles: the panel, its worker, the preview page and the evaluator. scripts/makeBuild.mts runs it. */
import { readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { EsbuildPlugin } from "esbuild-loader";
import webpack, { type Configuration } from "webpack";
import { CATALOGUE, NAMESPACE } from "./core";
import { finderTextsOf } from "./core/help";
import { assetFiles, metadataHash, withFiles } from "./scripts/assets";
import { TARGET } from "./scripts/bundle";
import { withPlainFields } from "./scripts/plainFields";
import { ROOT } from "./scripts/root";
import type { BuildSettings } from "./scripts/settings";
import { stillSheet } from "./scripts/stillSheet";
import { recoverySizing } from "./src/sheets/recoverySizing";

const bundle = (name: string, target: string, folder: string) =>
  ({
    name,
    mode: "production",
    context: ROOT,
    resolve: { extensions: [".ts", ".js"] },
    module: { rules: [{ test: /\.ts$/, loader: "esbuild-loader", options: { target } }] },
    optimization: { minimizer: [new EsbuildPlugin({ target })] },
    output: {
      path: folder,
      filename: "[name].js",
      chunkFilename: "[name].[contenthash].js",
      // Pages are at the root of the build; "auto" needs a document, which a functions-only runtime lacks.
      publicPath: "",
      globalObject: "globalThis",
      uniqueName: `warmback ${name}`,
    },
    devtool: false,
    performance: false,
  }) as const satisfies Configuration;

type External = Exclude<NonNullable<Configuration["externals"]>, readonly unknown[]>;

/** The panel, its worker and the page take the core from the functions script: one catalogue, one memo. */
const coreAs =
  (expression: string): External =>
  ({ context = "", request = "" }, decide) => {
    const id = request.startsWith(".") ? relative(ROOT, join(context, request)).split(sep).join("/") : "";
    if (!/^core(\/|$)/.test(id) || /^core\/pictures?(\/|$)/.test(id)) decide();
    else if (/^core(\/index)?$/.test(id)) decide(undefined, `var ${expression}`);
    else decide(new Error(`${id}: the panel takes the core through core/index and core/pictures`));
  };
const coreFromFunctions = coreAs("warmback.core");

/** The panel and everything generated from the catalogue, the functions script included. */
const addIn = (settings: BuildSettings): Configuration => ({
  ...bundle("panel", TARGET, settings.folder),
  target: ["web", TARGET],
  entry: { taskpane: join(ROOT, "src/taskpane/index.ts") },
  externals: [coreFromFunctions],
  plugins: [
    new webpack.DefinePlugin({
      BUILD_HASH: JSON.stringify(settings.build),
      METADATA_HASH: JSON.stringify(metadataHash(settings.host)),
      FINDER_TEXTS: JSON.stringify(finderTextsOf(CATALOGUE)),
      // Otherwise `typeof` would insert the texts a second time.
      "typeof FINDER_TEXTS": JSON.stringify("object"),
    }),
    withFiles("assets", () => assetFiles(settings)),
  ],
});

const worker = ({ folder, build }: BuildSettings): Configuration => ({
  ...bundle("worker", TARGET, folder),
  target: ["webworker", TARGET],
  entry: { worker: join(ROOT, "src/taskpane/jobs/worker.ts") },
  externals: [coreFromFunctions],
  plugins: [new webpack.DefinePlugin({ BUILD_HASH: JSON.stringify(build) })],
});

const PREVIEW = join(ROOT, "src/preview");
const PREVIEW_TARGET = "es2022";

/** The worker of the page's files: of the core it needs nothing but the namespace, and the functions script isn't loaded. */
const filesWorker = ({ folder, build }: BuildSettings): Configuration => ({
  ...bundle("files", PREVIEW_TARGET, folder),
  target: ["webworker", PREVIEW_TARGET],
  entry: { files: join(PREVIEW, "file/jobs/fileWorker.ts") },
  externals: [coreAs(JSON.stringify({ NAMESPACE }))],
  plugins: [new webpack.DefinePlugin({ BUILD_HASH: JSON.stringify(build) })],
});

const previewFile = (name: string): string => readFileSync(join(PREVIEW, name), "utf8");

/** The page: its first script, which replaces Excel's runtime, and the sheet engine with the rest of the page. */
const page = ({ folder, build }: BuildSettings): Configuration => {
  const base = bundle("preview", PREVIEW_TARGET, folder);
  return {
    ...base,
    target: ["web", PREVIEW_TARGET],
    entry: { shim: join(PREVIEW, "page/shim.ts"), preview: join(PREVIEW, "page/index.ts") },
    output: { ...base.output, chunkFilename: "preview-[name].[contenthash].js" },
    module: { rules: [...base.module.rules, { test: /\.css$/, use: ["style-loader", "css-loader"] }] },
    externals: [coreFromFunctions],
    plugins: [
      new webpack.DefinePlugin({ BUILD_HASH: JSON.stringify(build) }),
      withPlainFields(),
      withFiles("page", () => ({
        "index.html": previewFile("page/preview.html").replace("<!-- still -->", stillSheet(recoverySizing)),
        "preview.css": previewFile("page/preview.css"),
      })),
      // Hyphenation patterns of 70 languages; the engine loads English only.
      new webpack.IgnorePlugin({
        resourceRegExp: /^\.\/(?!en-gb)[a-z0-9-]+-[\w-]{8}\.js$/,
        contextRegExp: /engine-render/,
      }),
    ],
  };
};

/** The headless evaluator: the program and its worker thread, which reads functions.js and functions.json beside it. */
const evaluator = ({ folder }: BuildSettings): Configuration => ({
  ...bundle("evaluate", PREVIEW_TARGET, folder),
  target: "node20",
  entry: { evaluate: join(PREVIEW, "cli/evaluateMain.ts"), evaluateWorker: join(PREVIEW, "cli/evaluateWorker.ts") },
  output: { path: folder, filename: "[name].cjs" },
  node: { __dirname: false },
  // Bundling the sheet engine for Node would take ten times as long and gain nothing: it is required from node_modules.
  externals: [
    ({ request = "" }, decide) => (/^@univerjs\//.test(request) ? decide(undefined, `commonjs ${request}`) : decide()),
  ],
  optimization: { minimize: false },
});

/** All bundles of one build, in any order. */
export function configurations(settings: BuildSettings): readonly Configuration[] {
  return [addIn(settings), worker(settings), filesWorker(settings), page(settings), evaluator(settings)];
}
