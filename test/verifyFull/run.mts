/** Runs the checks that take minutes or an hour: `npm run verify:full`. They are no part of `npm test`. */
import { startVitest } from "vitest/node";
import { verifyMutants } from "./mutation";
import { verifyRandomRuns } from "./randomRuns";

const vitest = await startVitest("test", [], {
  config: false,
  watch: false,
  include: ["test/verifyFull/**/*.full.ts"],
  testTimeout: 900_000,
});
const failed = vitest.state.getCountOfFailedTests() > 0 || vitest.state.getUnhandledErrors().length > 0;
await vitest.close();
const held = [verifyRandomRuns(), verifyMutants()];
process.exitCode = !failed && held.every(Boolean) ? 0 : 1;
