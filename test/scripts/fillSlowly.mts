/**
 * `fillSlowly.mts folder copy name other`: fills a folder, once the process named `other` is filling it too, replaces `copy` by it,
 * and prints what is then found in the folder.
 */
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { freshFolder, replaceFolder } from "../../scripts/freshFolder";

const [folder = "", copy = "", name = "", other = ""] = process.argv.slice(2);
const note = (of: string): string => join(dirname(copy), `${of}.filling`);
let filled = 0;
await freshFolder(folder, async (into) => {
  filled += 1;
  writeFileSync(note(name), "");
  while (!existsSync(note(other))) await wait(5);
  for (let number = 0; number < 40; number += 1) {
    writeFileSync(join(into, `${String(number)}.txt`), String(number));
    await wait(5);
  }
});
replaceFolder(copy, folder);
const texts = readdirSync(folder).map((each) => readFileSync(join(folder, each), "utf8"));
process.stdout.write(JSON.stringify({ filled, texts: texts.length }));
