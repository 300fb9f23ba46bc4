/** Runs the checks that take minutes or an hour: `npm run verify:full`. They are no part of `npm test`. */
import { startVitest } from "vitest/node";
import { ROOT } from "../../scripts/root";
import { sheetEngineAlias } from "../../src/preview/packages.mjs";
import { verifyMutants } from "./mutation";
import { verifyRandomRuns } from "./randomRuns";

const vitest = await startVitest(
  "test",
  [],
  {
    config: false,
    watch: false,
    include: ["test/verifyFull/**/*.full.ts"],
    testTimeout: 900_000,
    globalSetup: ["test/setup/build.ts"],
  },
  { cacheDir: ".cache/vite", resolve: { alias: sheetEngineAlias(ROOT) } },
);
const failed = vitest.state.getCountOfFailedTests() > 0 || vitest.state.getUnhandledErrors().length > 0;
await vitest.close();
const held = [verifyRandomRuns(), verifyMutants()];
process.exitCode = !failed && held.every(Boolean) ? 0 : 1;
