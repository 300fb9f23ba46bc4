/** Fills the folder that is named as an argument with many files, slowly, and prints what it then finds there. */
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { freshFolder, replaceFolder } from "../../scripts/freshFolder";

const [folder = "", copy = ""] = process.argv.slice(2);
let filled = 0;
await freshFolder(folder, async (into) => {
  filled += 1;
  for (let number = 0; number < 40; number += 1) {
    writeFileSync(join(into, `${String(number)}.txt`), String(number));
    await wait(10);
  }
});
replaceFolder(copy, folder);
const text = (name: string): string => readFileSync(join(folder, name), "utf8");
process.stdout.write(JSON.stringify({ filled, texts: readdirSync(folder).map(text).length }));
