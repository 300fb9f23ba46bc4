/**
 * `npm run -s evaluate`: formulas from standard input, or the workbook named as an argument, in the sheet engine; one JSON
 * object a line. Builds if needed, then runs the built evaluator.
 */
import { spawn } from "node:child_process";
import { join } from "node:path";
import { ensureBuilt } from "./ensureBuilt.mjs";

const run = (folder: string, args: readonly string[]): Promise<number> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(folder, "evaluate.cjs"), ...args], { stdio: "inherit" });
    child.on("error", reject);
    child.on("exit", (code) => resolve(code ?? 1));
  });

try {
  process.exitCode = await run(await ensureBuilt(), process.argv.slice(2));
} catch (thrown) {
  process.stderr.write(`evaluate: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
}
