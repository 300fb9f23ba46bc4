/** The random calls of cell functions in full: 5,000 lists of arguments each, 500 of those that take long. */
import { startVitest } from "vitest/node";

/** Runs them and answers whether all held. */
export async function verifyFunctions(): Promise<boolean> {
  const vitest = await startVitest("test", [], {
    config: false,
    watch: false,
    include: ["test/fuzz/functions.test.ts"],
    env: { VERIFY_FULL: "1" },
    testTimeout: 900_000,
  });
  const failed = vitest.state.getCountOfFailedTests() + vitest.state.getUnhandledErrors().length;
  await vitest.close();
  return failed === 0;
}
