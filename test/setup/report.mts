/** What vitest's report says of a run: how many tests passed, the slowest files, and test files that no project took. */
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join, relative } from "node:path";

export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

interface FileReport {
  readonly name: string;
  readonly startTime: number;
  readonly endTime: number;
}

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly FileReport[];
}

export function readReport(path: string): Report | undefined {
  return existsSync(path) ? (JSON.parse(readFileSync(path, "utf8")) as Report) : undefined;
}

/** Counts as vitest reports them; no report is one failure. */
export function countOf(report: Report | undefined, passed: boolean): Count {
  if (report === undefined) return { passed: 0, failed: 1, skipped: 0 };
  // A file that can't be loaded has no tests of its own to fail.
  const failed = passed ? report.numFailedTests : Math.max(1, report.numFailedTests);
  return { passed: report.numPassedTests, failed, skipped: report.numPendingTests + report.numTodoTests };
}

/** The slowest test files, as lines. */
export function slowest(reports: readonly Report[], root: string, count: number): readonly string[] {
  return reports
    .flatMap(({ testResults }) => testResults)
    .map(({ name, startTime, endTime }) => ({ name: relative(root, name), seconds: (endTime - startTime) / 1000 }))
    .sort((a, b) => b.seconds - a.seconds)
    .slice(0, count)
    .map(({ name, seconds }) => `${seconds.toFixed(1).padStart(6)} s  ${name}`);
}

/** Test files that no project of vitest.config.mts takes: nobody would miss their tests. */
export function filesNotRun(reports: readonly Report[], root: string): readonly string[] {
  const ran = new Set(reports.flatMap(({ testResults }) => testResults.map(({ name }) => relative(root, name))));
  return readdirSync(join(root, "test"), { recursive: true, encoding: "utf8" })
    .map((path) => join("test", path))
    .filter((path) => path.endsWith(".test.ts") && !ran.has(path));
}
