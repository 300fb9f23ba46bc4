import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { sheetEngineAlias } from "./src/preview/packages.mjs";
import { SlowFirst } from "./test/setup/slowFirst.mjs";

const root = fileURLToPath(new URL(".", import.meta.url)).replace(/\/$/, "");

const alias = sheetEngineAlias(root);

const IN_BROWSER = [
  "test/e2e/**/*.test.ts",
  "test/functions/helpLayout.test.ts",
  "test/taskpane/{cautions,checking,explain,find,longWork,networkScheme,panel,pictures,reading,scheme,slowHost,study,workbook}.test.ts",
];

const HOSTS = "test/{functions,manifest,preview,sheets,taskpane,workbook}/**/*.test.ts";

/**
 * Two workers, each of which loads a module once for all its files: no test may leave anything behind in a module or a
 * global. Where one can't help it, its file goes to a project with `isolate: true`.
 */
const BUILD = "test/setup/build.ts";

const project = (name: string, include: string[], rest: object = {}) => ({
  resolve: { alias },
  // Beside the checkout's own builds: checkouts may share their node_modules.
  cacheDir: ".cache/vite",
  test: {
    name,
    include,
    isolate: false,
    globalSetup: [BUILD],
    maxWorkers: 2,
    // Half a minute: two cores that other work shares start slowly.
    testTimeout: 30_000,
    hookTimeout: 120_000,
    // mathjs is 1,100 files; as one it loads in a fifth of the time.
    deps: { optimizer: { ssr: { enabled: true, include: ["mathjs"] } } },
    ...rest,
  },
});

export default defineConfig({
  test: {
    sequence: { sequencer: SlowFirst },
    experimental: { fsModuleCache: true, fsModuleCachePath: ".cache/modules" },
    projects: [
      project("browser", IN_BROWSER, { globalSetup: [BUILD, "test/setup/browser.ts"] }),
      project("core", ["test/**/*.test.ts"], { exclude: [HOSTS, "test/whole/**", "test/e2e/**"], pool: "threads" }),
      project("hosts", [HOSTS], { exclude: IN_BROWSER }),
      project("whole", ["test/whole/**/*.test.ts"], { pool: "threads" }),
    ],
  },
});
