import { join } from "node:path";
import { text } from "node:stream/consumers";

import { engineThread } from "./engineThread";
import type { Evaluated } from "./evaluate";
import { evaluateFile, evaluateLines } from "./watchedEvaluate";

/**
 * `evaluate`: reads formulas from standard input, one a line, or recalculates the workbook named as an argument, and prints
 * one JSON object a line. It is built beside functions.js and functions.json. Nothing but results goes to standard output.
 */
const main = async (workbook: string | undefined): Promise<void> => {
  const engine = engineThread(join(__dirname, "evaluateWorker.cjs"));
  const print = (results: readonly Evaluated[]): void => {
    process.stdout.write(results.map((result) => `${JSON.stringify(result)}\n`).join(""));
  };
  try {
    if (workbook === undefined) {
      const lines = (await text(process.stdin)).split(/\r?\n/).map((line) => line.trim());
      await evaluateLines(
        engine,
        lines.filter((line) => line !== ""),
        ({ results }) => print(results),
      );
    } else print(await evaluateFile(engine, workbook));
  } finally {
    await engine.end();
  }
};

main(process.argv[2]).catch((thrown: unknown) => {
  process.stderr.write(`evaluate: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
