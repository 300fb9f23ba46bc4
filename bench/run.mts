/**
 * `npm run bench`: runs every benchmark of this folder, one after the other, or those that are named; each prints a table.
 * With `--docs` the tables go to docs/speed.md too, with machine and date.
 */
import { spawnSync } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { cpus, loadavg, totalmem } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const TSX = join(HERE, "../node_modules/.bin/tsx");
const PAGE = join(HERE, "../docs/speed.md");

const wanted = process.argv.slice(2).filter((name) => name !== "--docs");
const intoDocs = process.argv.includes("--docs");
const files = readdirSync(HERE)
  .filter((name) => /\.m?ts$/.test(name) && name !== "run.mts" && name !== "budget.ts")
  .filter((name) => wanted.length === 0 || wanted.includes(name.replace(/\.m?ts$/, "")))
  .sort();

const machine = (): string => {
  const [first] = cpus();
  const load = loadavg()[0] ?? 0;
  return `${String(cpus().length)} × ${first?.model.trim() ?? "unknown processor"}, ${(totalmem() / 1e9).toFixed(0)} GB, Node ${process.version}, ${new Date().toISOString().slice(0, 10)}; load ${load.toFixed(1)} when it began: times of a busy machine are upper bounds`;
};

const about = machine();
const tables: string[] = [];
const failed = files.filter((name) => {
  process.stdout.write(`\n── bench/${name}\n`);
  const { status, stdout } = spawnSync(TSX, [join(HERE, name)], {
    stdio: ["inherit", "pipe", "inherit"],
    encoding: "utf8",
  });
  process.stdout.write(stdout);
  tables.push(`## ${name.replace(/\.m?ts$/, "")}\n\n\`\`\`text\n${stdout.trim()}\n\`\`\`\n`);
  return status !== 0;
});

if (intoDocs) {
  const head = "Made by `npm run bench -- --docs`. Nothing here was measured elsewhere or at another time.";
  writeFileSync(PAGE, `# Speed\n\n${head}\n\n${about}.\n\n${tables.join("\n")}`);
}
if (failed.length > 0) process.stdout.write(`\nfailed: ${failed.join(", ")}\n`);
process.exitCode = failed.length > 0 || files.length === 0 ? 1 : 0;
