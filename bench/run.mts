/** `npm run bench`: runs every benchmark of this folder, one after the other, or those that are named; each prints a table. */
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const TSX = join(HERE, "../node_modules/.bin/tsx");

const wanted = process.argv.slice(2);
const files = readdirSync(HERE)
  .filter((name) => /\.m?ts$/.test(name) && name !== "run.mts")
  .filter((name) => wanted.length === 0 || wanted.includes(name.replace(/\.m?ts$/, "")))
  .sort();

const failed = files.filter((name) => {
  process.stdout.write(`\n── bench/${name}\n`);
  return spawnSync(TSX, [join(HERE, name)], { stdio: "inherit" }).status !== 0;
});
if (failed.length > 0) process.stdout.write(`\nfailed: ${failed.join(", ")}\n`);
process.exitCode = failed.length > 0 || files.length === 0 ? 1 : 0;
