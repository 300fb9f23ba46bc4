/**
 * `npm test`: everything that a change must pass. The tests in a browser leave much of the processor idle while they wait
 * for pages. So two rows of steps run side by side: the build, then those tests; the checks of the sources, then all
 * other tests. Each step shows its output and time when it ends; the ten slowest test files and one closing line come
 * last. Where no Chromium is installed the tests in a browser are named as not run; with CI=true that is a failure.
 */
import { spawn } from "node:child_process";
import { existsSync, mkdirSync, rmSync } from "node:fs";
import { getPriority, setPriority } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { countOf, filesNotRun, readReport, slowest, type Count } from "./setup/report.mjs";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const CACHE = join(ROOT, ".cache");
const CHROMIUM = process.env["WARMBACK_CHROMIUM"] ?? "/usr/bin/chromium";
const IS_CI = process.env["CI"] === "true";
/** By how much less urgent the other steps are: a test in a browser has time limits, and needs the processor at once. */
const BESIDE = 10;
const LEAST_URGENT = 19;

interface Step {
  readonly name: string;
  readonly command: readonly string[];
}

interface TestStep extends Step {
  readonly report: string;
}

/**
 * ESLint's cache looks at one file at a time: an error that a change of another file causes is found in CI, which has no
 * cache.
 */
const CACHED_LINT = IS_CI ? [] : ["--cache", "--cache-strategy", "content", "--cache-location", ".cache/eslint/"];

const BUILD: Step = { name: "build", command: ["tsx", "scripts/build.mts"] };

/** Of the sources alone: none needs the build. */
const CHECKS: readonly Step[] = [
  { name: "lint", command: ["eslint", ".", "--max-warnings", "0", ...CACHED_LINT] },
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

const testsOf = (name: string, projects: string): TestStep => {
  const report = join(CACHE, `${name.replaceAll(" ", "-")}.json`);
  const reporters = ["--reporter=dot", "--reporter=json", `--outputFile.json=${report}`];
  return { name, report, command: ["vitest", "run", `--project=${projects}`, ...reporters] };
};

const BROWSER_TESTS = testsOf("tests in a browser", "browser");
const OTHER_TESTS = testsOf("other tests", "!browser");

const NOT_RUN = "NOT RUN: tests in a browser (apt-get install chromium)";

const say = (text: string): void => void process.stdout.write(`${text}\n`);

/** Runs a step to its end, less urgently by so much. */
async function passes({ name, command: [tool = "", ...args] }: Step, less = 0): Promise<boolean> {
  const began = performance.now();
  const child = spawn(join(ROOT, "node_modules/.bin", tool), args, { cwd: ROOT, stdio: ["ignore", "pipe", "pipe"] });
  if (less > 0 && child.pid !== undefined) setPriority(child.pid, Math.min(getPriority() + less, LEAST_URGENT));
  const output: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk: Buffer) => void output.push(chunk));
  const status = await new Promise<number | null>((resolve, reject) => {
    child.once("error", reject);
    child.once("close", resolve);
  });
  say(`\n── ${name}\n${Buffer.concat(output).toString().trim()}`.trimEnd());
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  say(`── ${name}: ${status === 0 ? "passed" : "FAILED"} in ${seconds} s`);
  return status === 0;
}

const checkCount = (passed: boolean): Count => ({ passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 });

async function runTests(step: TestStep, less = 0): Promise<Count> {
  rmSync(step.report, { force: true });
  const passed = await passes(step, less);
  return countOf(readReport(step.report), passed);
}

/** The build, then the tests in a browser, beside the checks, then the other tests, which ask for the build too. */
async function runAll(): Promise<readonly Count[]> {
  const build = passes(BUILD).then(checkCount);
  const browser = build.then(() => runTests(BROWSER_TESTS));
  const counts: Count[] = [];
  for (const step of CHECKS) counts.push(checkCount(await passes(step, BESIDE)));
  counts.push(await build, await runTests(OTHER_TESTS, BESIDE), await browser);
  return counts;
}

/** Shows the slowest files of all tests, and counts those that none of the runs took. */
function lookAtFiles(): Count {
  const reports = [BROWSER_TESTS, OTHER_TESTS].flatMap(({ report }) => readReport(report) ?? []);
  say(`\nThe ten slowest test files:\n${slowest(reports, ROOT, 10).join("\n")}\n`);
  const forgotten = reports.length === 2 ? filesNotRun(reports, ROOT) : [];
  if (forgotten.length > 0) say(`No project of vitest.config.mts runs ${forgotten.join(", ")}`);
  return { passed: 0, failed: forgotten.length, skipped: 0 };
}

mkdirSync(CACHE, { recursive: true });
const counts = [...(await runAll()), lookAtFiles()];
const total = (key: keyof Count): number => counts.reduce((sum, count) => sum + count[key], 0);
if (!existsSync(CHROMIUM)) say(NOT_RUN);
const skipped = total("skipped");
say(`${total("passed")} passed, ${total("failed")} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exitCode = total("failed") > 0 ? 1 : 0;
