/** The tests that mutation testing runs: those of the core, without a build. MUTATION_TESTS names fewer, with spaces between. */
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("../..", import.meta.url));
const FILES = "test/{numeric,kernel,pool,exchanger,water,pipe}/**/*.test.ts";

export default defineConfig({
  root,
  cacheDir: ".cache/vite-mutation",
  test: {
    include: (process.env["MUTATION_TESTS"] ?? FILES).split(" "),
    testTimeout: 60_000,
    pool: "threads",
    // Each mutant gets a fresh worker, in which all test files share what they load.
    isolate: false,
    // mathjs is 1,100 files; as one it loads in a fifth of the time.
    deps: { optimizer: { ssr: { enabled: true, include: ["mathjs"] } } },
  },
});
