/**
 * `npm run bench`: runs every benchmark of this folder, one after the other, or those that are named; each prints a table.
 * With `--docs` the tables go to docs/speed.md too, with machine and date.
 */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { cpus, loadavg, totalmem } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { engineAccessors, plainFields } from "../scripts/plainFields";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const TSX = join(HERE, "../node_modules/.bin/tsx");
const PAGE = join(HERE, "../docs/speed.md");

/** Bundled as the page is, with the engine's fields assigned: tsx would add a call to every function. */
async function bundled(name: string): Promise<string> {
  const outfile = join(HERE, "../.cache/bench", name.replace(/\.m?ts$/, ".cjs"));
  const accessors = engineAccessors();
  await build({
    entryPoints: [join(HERE, name)],
    outfile,
    bundle: true,
    platform: "node",
    target: "es2022",
    mainFields: ["module", "main"],
    conditions: ["import"],
    logLevel: "error",
    define: { "import.meta.url": "bundleUrl", "import.meta.dirname": "__dirname" },
    banner: { js: 'const bundleUrl = require("node:url").pathToFileURL(__filename).href;' },
    plugins: [
      {
        name: "plain fields",
        setup: (it) =>
          it.onLoad({ filter: /@univerjs[\\/].*\.js$/ }, ({ path }) => ({
            contents: plainFields(readFileSync(path, "utf8"), accessors),
            loader: "js",
          })),
      },
    ],
  });
  return outfile;
}

/** Benches of the sheet engine. */
const IN_PAGE = ["workbook.ts"];

/** This program, and what benches share. */
const NOT_BENCHES = [
  "run.mts",
  "budget.ts",
  "largeBook.ts",
  "mainThread.ts",
  "mixedBook.ts",
  "mixedPage.ts",
  "mixedSheets.ts",
  "profileShares.ts",
  "taskTimes.ts",
];

const wanted = process.argv.slice(2).filter((name) => name !== "--docs");
const intoDocs = process.argv.includes("--docs");
const files = readdirSync(HERE)
  .filter((name) => /\.m?ts$/.test(name) && !NOT_BENCHES.includes(name))
  .filter((name) => wanted.length === 0 || wanted.includes(name.replace(/\.m?ts$/, "")))
  .sort();

const machine = (): string => {
  const [first] = cpus();
  const load = loadavg()[0] ?? 0;
  return `${String(cpus().length)} × ${first?.model.trim() ?? "unknown processor"}, ${(totalmem() / 1e9).toFixed(0)} GB, Node ${process.version}, ${new Date().toISOString().slice(0, 10)}; load ${load.toFixed(1)} when it began: times of a busy machine are upper bounds`;
};

const about = machine();
const tables: string[] = [];
const failed: string[] = [];
for (const name of files) {
  process.stdout.write(`\n── bench/${name}\n`);
  const [program, file] = IN_PAGE.includes(name) ? [process.execPath, await bundled(name)] : [TSX, join(HERE, name)];
  const { status, stdout } = spawnSync(program, [file], {
    stdio: ["inherit", "pipe", "inherit"],
    encoding: "utf8",
  });
  process.stdout.write(stdout);
  tables.push(
    `## ${name.replace(/\.m?ts$/, "")}\n\n\`\`\`text\n${stdout.trimEnd().replace(/^\n+|[ \t]+(?=\n)/g, "")}\n\`\`\`\n`,
  );
  if (status !== 0) failed.push(name);
}

if (intoDocs) {
  const head = "Made by `npm run bench -- --docs`. Nothing here was measured elsewhere or at another time.";
  writeFileSync(PAGE, `# Speed\n\n${head}\n\n${about}.\n\n${tables.join("\n")}`);
}
if (failed.length > 0) process.stdout.write(`\nfailed: ${failed.join(", ")}\n`);
process.exitCode = failed.length > 0 || files.length === 0 ? 1 : 0;
