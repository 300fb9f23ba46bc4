/**
 * `npm test`: everything that a change must pass, in order, with each step's time and one closing line. Where no Chromium
 * is installed the end-to-end tests are named as not run; with CI=true that is a failure.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const CACHE = join(ROOT, ".cache");
const CHROMIUM = process.env["WARMBACK_CHROMIUM"] ?? "/usr/bin/chromium";
const IS_CI = process.env["CI"] === "true";

interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

interface Step {
  readonly name: string;
  readonly command: readonly string[];
  /** The name of a vitest project whose report holds the step's count. */
  readonly project?: string;
}

const vitest = (name: string, project: string): Step => ({
  name,
  project,
  command: ["vitest", "run", "--project", project],
});

const STEPS: readonly Step[] = [
  { name: "format", command: ["prettier", "--check", "--log-level", "warn", "."] },
  { name: "lint", command: ["eslint", ".", "--max-warnings", "0"] },
  { name: "types", command: ["tsc", "--noEmit", "-p", "."] },
  {
    name: "import rules",
    command: ["depcruise", "core", "src", "scripts", "manifest", "bench", "--config", ".dependency-cruiser.cjs"],
  },
  { name: "build", command: ["tsx", "scripts/build.mts"] },
  vitest("tests", "unit"),
  vitest("catalogue-wide tests", "whole"),
];

const END_TO_END = vitest("end-to-end", "e2e");
const NOT_RUN = "NOT RUN: end-to-end (apt-get install chromium)";

const say = (text: string): void => void process.stdout.write(`${text}\n`);

const run = ([tool = "", ...args]: readonly string[]): boolean => {
  const path = join(ROOT, "node_modules/.bin", tool);
  return spawnSync(path, args, { cwd: ROOT, stdio: "inherit" }).status === 0;
};

const reportOf = (project: string): string => join(CACHE, `tests-${project}.json`);

/** Counts as vitest reports them; no report is one failure. */
const countOf = (project: string, passed: boolean): Count => {
  if (!existsSync(reportOf(project))) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(reportOf(project), "utf8")) as {
    readonly numPassedTests: number;
    readonly numFailedTests: number;
    readonly numPendingTests: number;
    readonly numTodoTests: number;
  };
  // A file that can't be loaded has no tests of its own to fail.
  const failed = passed ? report.numFailedTests : Math.max(1, report.numFailedTests);
  return { passed: report.numPassedTests, failed, skipped: report.numPendingTests + report.numTodoTests };
};

const runStep = ({ name, command, project }: Step): Count => {
  say(`\n── ${name}`);
  const began = performance.now();
  if (project !== undefined) rmSync(reportOf(project), { force: true });
  const report =
    project === undefined
      ? []
      : ["--reporter=dot", "--reporter=json", `--outputFile.json=${reportOf(project)}`, "--passWithNoTests"];
  const passed = run([...command, ...report]);
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  say(`── ${name}: ${passed ? "passed" : "FAILED"} in ${seconds} s`);
  if (project !== undefined) return countOf(project, passed);
  return { passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 };
};

const hasEndToEnd = (): boolean =>
  existsSync(join(ROOT, "test/e2e")) && readdirSync(join(ROOT, "test/e2e")).some((path) => path.endsWith(".test.ts"));

const endToEnd = (): Count => {
  if (!hasEndToEnd()) throw new Error("test/e2e holds no test");
  if (existsSync(CHROMIUM)) return runStep(END_TO_END);
  say(`\n${NOT_RUN}`);
  return IS_CI ? { passed: 0, failed: 1, skipped: 0 } : { passed: 0, failed: 0, skipped: 1 };
};

mkdirSync(CACHE, { recursive: true });
const counts = [...STEPS.map(runStep), endToEnd()];
const total = (key: keyof Count): number => counts.reduce((sum, count) => sum + count[key], 0);
if (!existsSync(CHROMIUM)) say(NOT_RUN);
const skipped = total("skipped");
say(`${total("passed")} passed, ${total("failed")} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exitCode = total("failed") > 0 ? 1 : 0;
