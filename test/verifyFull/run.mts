/**
 * Runs the checks that take minutes or an hour, `npm run verify:full`, and writes what they print into docs/verify-full.md. They
 * are no part of `npm test`. With `--list` it only names its parts.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../scripts/root";
import { sheetEngineAlias } from "../../src/preview/packages.mjs";
import { verifyMutants } from "./mutation";
import { outcomePage } from "./outcomePage";
import type { Part } from "./part";
import { runVitestPart } from "./vitestPart.mjs";

/**
 * 5,000 lists of arguments of each function (500 of those that take long), and every check of every function against the sheet
 * engine's answer.
 */
const RANDOM_CALLS = ["test/fuzz/functions.test.ts", "test/preview/literalCalls.test.ts"];
/** 400 random workbooks with commands over them. Alone: each command's processor time counts that of all threads. */
const RANDOM_WORKBOOKS = ["test/fuzz/workbooks.test.ts"];

const PARTS: Readonly<Record<string, (name: string) => Part | Promise<Part>>> = {
  "Excel commands stopped at every action, large workbooks, master checks, soaks": (name) =>
    runVitestPart(
      name,
      [],
      {
        config: false,
        include: ["test/verifyFull/**/*.full.ts"],
        testTimeout: 900_000,
        globalSetup: ["test/setup/build.ts"],
      },
      { cacheDir: ".cache/vite", resolve: { alias: sheetEngineAlias(ROOT) } },
    ),
  "Random calls": (name) => runVitestPart(name, RANDOM_CALLS),
  "Random workbooks": (name) => runVitestPart(name, RANDOM_WORKBOOKS),
  "Mutation testing": verifyMutants,
};

async function runAll(): Promise<boolean> {
  process.env["VERIFY_FULL"] = "1";
  const parts: Part[] = [];
  for (const [name, run] of Object.entries(PARTS)) parts.push(await run(name));
  writeFileSync(join(ROOT, "docs/verify-full.md"), outcomePage(parts));
  return parts.every(({ held }) => held);
}

if (process.argv.includes("--list")) process.stdout.write(`${Object.keys(PARTS).join("\n")}\n`);
else process.exitCode = (await runAll()) ? 0 : 1;
