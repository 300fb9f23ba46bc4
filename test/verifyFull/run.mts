/**
 * Runs the checks that take minutes or an hour, `npm run verify:full`, and writes what they print into docs/verify-full.md. They
 * are no part of `npm test`.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../scripts/root";
import { sheetEngineAlias } from "../../src/preview/packages.mjs";
import { verifyMutants } from "./mutation";
import { outcomePage } from "./outcomePage";
import { runVitestPart } from "./vitestPart";

/**
 * 5,000 lists of arguments of each function (500 of those that take long), 400 random workbooks with commands over them, and
 * every check of every function against the sheet engine's answer.
 */
const RANDOM_RUNS = ["test/fuzz/functions.test.ts", "test/fuzz/workbooks.test.ts", "test/preview/literalCalls.test.ts"];

process.env["VERIFY_FULL"] = "1";
const parts = [
  await runVitestPart(
    "Excel commands stopped at every action, large workbooks, master checks, soak",
    [],
    {
      config: false,
      include: ["test/verifyFull/**/*.full.ts"],
      testTimeout: 900_000,
      globalSetup: ["test/setup/build.ts"],
    },
    { cacheDir: ".cache/vite", resolve: { alias: sheetEngineAlias(ROOT) } },
  ),
  await runVitestPart("Random calls and workbooks", RANDOM_RUNS),
  verifyMutants(),
];
writeFileSync(join(ROOT, "docs/verify-full.md"), outcomePage(parts));
process.exitCode = parts.every(({ held }) => held) ? 0 : 1;
