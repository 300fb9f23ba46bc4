/**
 * `npm test`: everything that a change must pass. Format, lint, types, import rules, unused code and build run two at a time, then all
 * tests in one run of vitest. Each step shows its time; the ten slowest test files and one closing line come last. Where no
 * Chromium is installed the tests in a browser are named as not run; with CI=true that is a failure.
 */
import { spawn } from "node:child_process";
import { existsSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { countOf, filesNotRun, readReport, slowest, type Count } from "./setup/report.mjs";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const CACHE = join(ROOT, ".cache");
const REPORT = join(CACHE, "tests.json");
const CHROMIUM = process.env["WARMBACK_CHROMIUM"] ?? "/usr/bin/chromium";
const IS_CI = process.env["CI"] === "true";
const LANES = 2;

interface Step {
  readonly name: string;
  readonly command: readonly string[];
}

/**
 * ESLint's cache looks at one file at a time: an error that a change of another file causes is found in CI, which has no
 * cache.
 */
const CACHED_LINT = IS_CI ? [] : ["--cache", "--cache-strategy", "content", "--cache-location", ".cache/eslint/"];

/** The longest first, so that the lanes end together. */
const STEPS: readonly Step[] = [
  { name: "lint", command: ["eslint", ".", "--max-warnings", "0", ...CACHED_LINT] },
  { name: "build", command: ["tsx", "scripts/build.mts"] },
  {
    name: "types",
    command: ["tsc", "--noEmit", "-p", ".", "--incremental", "--tsBuildInfoFile", ".cache/types.tsbuildinfo"],
  },
  {
    name: "format",
    command: ["prettier", "--check", "--log-level", "warn", "--cache", "--cache-location", ".cache/prettier.json", "."],
  },
  {
    name: "import rules",
    command: ["depcruise", "core", "src", "scripts", "manifest", "bench", "--config", ".dependency-cruiser.cjs"],
  },
  { name: "unused code", command: ["knip", "--no-progress", "--include", "files,exports,dependencies"] },
];

const TESTS: Step = {
  name: "tests",
  command: ["vitest", "run", "--reporter=dot", "--reporter=json", `--outputFile.json=${REPORT}`],
};

const NOT_RUN = "NOT RUN: tests in a browser (apt-get install chromium)";

const say = (text: string): void => void process.stdout.write(`${text}\n`);

/** Runs a step to its end. Its output is shown at once or, beside other steps, when it ends. */
async function passes({ name, command: [tool = "", ...args] }: Step, show: "at once" | "at the end"): Promise<boolean> {
  const began = performance.now();
  if (show === "at once") say(`\n── ${name}`);
  const stdio = show === "at once" ? "inherit" : "pipe";
  const child = spawn(join(ROOT, "node_modules/.bin", tool), args, { cwd: ROOT, stdio });
  const output: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (chunk: Buffer) => void output.push(chunk));
  const status = await new Promise<number | null>((resolve, reject) => {
    child.once("error", reject);
    child.once("close", resolve);
  });
  if (show === "at the end") say(`\n── ${name}\n${Buffer.concat(output).toString().trim()}`.trimEnd());
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  say(`── ${name}: ${status === 0 ? "passed" : "FAILED"} in ${seconds} s`);
  return status === 0;
}

/** Runs steps side by side, as many at a time as there are lanes. */
async function runSteps(steps: readonly Step[]): Promise<readonly Count[]> {
  const waiting = [...steps];
  const counts: Count[] = [];
  const lane = async (): Promise<void> => {
    for (let step = waiting.shift(); step !== undefined; step = waiting.shift()) {
      const passed = await passes(step, "at the end");
      counts.push({ passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 });
    }
  };
  await Promise.all(Array.from({ length: LANES }, lane));
  return counts;
}

async function runTests(): Promise<readonly Count[]> {
  rmSync(REPORT, { force: true });
  const passed = await passes(TESTS, "at once");
  const report = readReport(REPORT);
  const counts = [countOf(report, passed)];
  if (report === undefined) return counts;
  say(`\nThe ten slowest test files:\n${slowest(report, ROOT, 10).join("\n")}\n`);
  const forgotten = filesNotRun(report, ROOT);
  if (forgotten.length > 0) say(`No project of vitest.config.mts runs ${forgotten.join(", ")}`);
  return [...counts, { passed: 0, failed: forgotten.length, skipped: 0 }];
}

mkdirSync(CACHE, { recursive: true });
const counts = [...(await runSteps(STEPS)), ...(await runTests())];
const total = (key: keyof Count): number => counts.reduce((sum, count) => sum + count[key], 0);
if (!existsSync(CHROMIUM)) say(NOT_RUN);
const skipped = total("skipped");
say(`${total("passed")} passed, ${total("failed")} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exitCode = total("failed") > 0 ? 1 : 0;
