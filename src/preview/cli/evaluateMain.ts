import { once } from "node:events";
import { join } from "node:path";

import { engineThread } from "./engineThread";
import { endWithReader } from "./endWithReader";
import type { Evaluated } from "./evaluate";
import { lineGroups } from "./lineGroups";
import { reportLines } from "./reportLines";
import { evaluateFile, evaluateLines } from "./watchedEvaluate";

/**
 * `evaluate`: reads formulas from standard input, one a line, or recalculates the workbook named as an argument, and prints
 * one JSON object a line, as a filter: answers follow the input and nothing is kept. It is built beside functions.js and functions.json. Nothing but results goes to standard output;
 * what can't be read of a workbook, and what differs from what the file last showed, goes to standard error. With --strict
 * the program then ends with 3 where a cell differs.
 */
const DIFFERS = 3;

const main = async (args: readonly string[]): Promise<void> => {
  const strict = args.includes("--strict");
  const [workbook] = args.filter((one) => one !== "--strict");
  const engine = engineThread(join(__dirname, "evaluateWorker.cjs"));
  const print = async (results: readonly Evaluated[]): Promise<void> => {
    const taken = process.stdout.write(results.map((result) => `${JSON.stringify(result)}\n`).join(""));
    if (!taken) await once(process.stdout, "drain");
  };
  try {
    if (workbook === undefined) {
      if (strict) throw new Error("--strict needs a workbook to compare with");
      process.stdin.setEncoding("utf8");
      for await (const lines of lineGroups(process.stdin))
        await evaluateLines(engine, lines, ({ results }) => print(results));
      return;
    }
    const { results, report } = await evaluateFile(engine, workbook);
    await print(results);
    process.stderr.write(
      reportLines(report)
        .map((line) => `${line}\n`)
        .join(""),
    );
    if (strict && report.differing.length > 0) process.exitCode = DIFFERS;
  } finally {
    await engine.end();
  }
};

endWithReader();

main(process.argv.slice(2)).catch((thrown: unknown) => {
  process.stderr.write(`evaluate: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
