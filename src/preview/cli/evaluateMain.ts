import { readFile } from "node:fs/promises";
import { text } from "node:stream/consumers";

import { emptySheet } from "../file/bookData";
import { evaluateFormulas, evaluateWorkbook } from "./evaluate";
import type { Evaluated } from "./evaluate";
import { formulaTexts } from "../file/formulaTexts";
import { loadFunctions } from "../host/loadFunctions";
import { startHeadless } from "../univer/start";
import { readXlsx } from "../file/xlsx";

/**
 * `evaluate`: reads formulas from standard input, one a line, or recalculates the workbook named as an argument, and prints
 * one JSON object a line. It is built beside functions.js and functions.json. Nothing but results goes to standard output.
 */
const main = async (workbook: string | undefined): Promise<void> => {
  // The engine writes its own remarks with console.log and the like.
  for (const method of ["log", "info", "debug", "warn"] as const) console[method] = () => undefined;
  console.error = (...parts: unknown[]) => void process.stderr.write(`${parts.map(String).join(" ")}\n`);
  const set = loadFunctions(__dirname);
  const book = startHeadless(set, { sheets: [emptySheet("Sheet1")], names: [] });
  const print = (results: readonly Evaluated[]): void => {
    process.stdout.write(results.map((result) => `${JSON.stringify(result)}\n`).join(""));
  };
  if (workbook === undefined) {
    const lines = (await text(process.stdin)).split(/\r?\n/).map((line) => line.trim());
    print(
      await evaluateFormulas(
        book,
        lines.filter((line) => line !== ""),
        set.warmback,
      ),
    );
  } else {
    const bytes = await readFile(workbook);
    const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
    const data = await readXlsx(buffer, formulaTexts(set.namespace, set.metadata));
    print(await evaluateWorkbook(book, data, set.warmback));
  }
  book.dispose();
};

main(process.argv[2]).catch((thrown: unknown) => {
  process.stderr.write(`evaluate: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
