/**
 * `npx tsx src/preview/cli/handOver.mts in.xlsx out.xlsx`: makes the hand-over copy of a workbook in the sheet engine. A
 * starter sheet's id may replace the input file. Reads dist/functions.js: build first.
 */
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import type * as HandOverFile from "../file/handOverFile";

// The sheet engine's ES modules can't be imported by Node as they are: it is required.
const { writeHandOver } = createRequire(import.meta.url)("./handOverFile.ts") as typeof HandOverFile;

// The engine writes its own remarks with console.log and the like.
for (const method of ["log", "info", "debug", "warn"] as const) console[method] = () => undefined;

try {
  const [from, to] = process.argv.slice(2);
  if (from === undefined || to === undefined)
    throw new Error("give a workbook or a starter sheet's id, and the file to write");
  const written = await writeHandOver(fileURLToPath(new URL("../../dist", import.meta.url)), from, to);
  process.stdout.write(`${written}\n`);
} catch (thrown) {
  process.stderr.write(`hand-over: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
}
