/** The random runs in full, in a process of their own: calls of cell functions, workbooks, and calls over constants. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { ROOT } from "../../scripts/root";

/**
 * 5,000 lists of arguments of each function (500 of those that take long), 400 random workbooks with commands over them, and
 * every check of every function against the sheet engine's answer.
 */
const FILES = ["test/fuzz/functions.test.ts", "test/fuzz/workbooks.test.ts", "test/preview/literalCalls.test.ts"];

/** Runs them, which prints counts and slowest calls, and answers whether all held. */
export function verifyRandomRuns(): boolean {
  const command = [join(ROOT, "node_modules/vitest/vitest.mjs"), "run", ...FILES];
  const env = { ...process.env, VERIFY_FULL: "1" };
  return spawnSync(process.execPath, command, { cwd: ROOT, env, stdio: "inherit" }).status === 0;
}
