/** The random calls of cell functions in full: 5,000 lists of arguments each, 500 of those that take long. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { ROOT } from "../../scripts/root";

/** Runs them in a process of their own, which prints counts and slowest calls, and answers whether all held. */
export function verifyFunctions(): boolean {
  const command = [join(ROOT, "node_modules/vitest/vitest.mjs"), "run", "test/fuzz/functions.test.ts"];
  const env = { ...process.env, VERIFY_FULL: "1" };
  return spawnSync(process.execPath, command, { cwd: ROOT, env, stdio: "inherit" }).status === 0;
}
