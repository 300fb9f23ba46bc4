/**
 * Mutation testing of numeric methods, kernel, equations and the year within a time budget: what was tested before and hasn't
 * changed is taken from `.cache/mutation.json`. Each file's score goes into docs/mutation.md, the mutants that no test
 * noticed into `.cache/survivors.txt`.
 */
import { spawnSync } from "node:child_process";
import { appendFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../scripts/root";
import { mutationRuns, type MutationRun } from "./mutationRuns";
import { withScores, type Score } from "./mutationScores";
import type { Part } from "./part";

/** No run is begun after that; the one at work may take longer. */
const BUDGET_MINUTES = Number(process.env["MUTATION_MINUTES"] ?? 60);

/** Only runs with a file whose path holds that; all by default. */
const PICKED = process.env["MUTATION_OF"] ?? "";

const PAGE = join(ROOT, "docs/mutation.md");
const KNOWN = join(ROOT, ".cache/mutation.json");
const SURVIVORS = join(ROOT, ".cache/survivors.txt");

interface Mutant {
  readonly status: string;
  readonly mutatorName: string;
  readonly replacement?: string;
  /** Tests that reach it; none where it is made once at load. */
  readonly coveredBy?: readonly string[];
  readonly location: { readonly start: { readonly line: number; readonly column: number } };
}

interface MutationReport {
  readonly files: Readonly<Record<string, { mutants: readonly Mutant[] }>>;
}

function scoreOf(file: string, mutants: readonly Mutant[]): Score {
  const count = (...states: readonly string[]): number =>
    mutants.filter(({ status }) => states.includes(status)).length;
  return {
    file,
    date: new Date().toISOString().slice(0, 10),
    killed: count("Killed", "Timeout"),
    survived: count("Survived"),
    uncovered: count("NoCoverage"),
  };
}

const survivorsOf = (file: string, mutants: readonly Mutant[]): string =>
  mutants
    .filter(({ status }) => status === "Survived" || status === "NoCoverage")
    .map(({ status, mutatorName, replacement, location: { start } }) =>
      [`${file}:${String(start.line)}:${String(start.column)}`, status, mutatorName, replacement].join("\t"),
    )
    .join("\n");

/** Forgets what no test noticed or reached at load: Stryker would not try it again when tests are added. */
function forgetUnnoticedAtLoad(files: readonly string[]): void {
  if (!existsSync(KNOWN)) return;
  const known = JSON.parse(readFileSync(KNOWN, "utf8")) as MutationReport;
  for (const file of files.map((path) => known.files[path]))
    if (file !== undefined)
      file.mutants = file.mutants.filter(
        ({ status, coveredBy = [] }) => (status !== "Survived" && status !== "NoCoverage") || coveredBy.length > 0,
      );
  writeFileSync(KNOWN, JSON.stringify(known));
}

/** Runs Stryker, and keeps the scores. @returns whether it worked */
function runStryker({ files, tests, ignoreStatic, environment }: MutationRun): boolean {
  forgetUnnoticedAtLoad(files);
  const command = [join(ROOT, "node_modules/@stryker-mutator/core/bin/stryker.js"), "run", "--mutate", files.join(",")];
  const { status } = spawnSync(process.execPath, [...command, ...(ignoreStatic === true ? ["--ignoreStatic"] : [])], {
    cwd: ROOT,
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, ...environment, MUTATION_TESTS: tests },
  });
  if (status !== 0) return false;
  const report = JSON.parse(readFileSync(join(ROOT, ".cache/mutation-report.json"), "utf8")) as MutationReport;
  const scores = files.map((file) => scoreOf(file, report.files[file]?.mutants ?? []));
  writeFileSync(PAGE, withScores(readFileSync(PAGE, "utf8"), scores));
  for (const file of files) appendFileSync(SURVIVORS, `${survivorsOf(file, report.files[file]?.mutants ?? [])}\n`);
  for (const { file, killed, survived, uncovered } of scores) {
    const timeouts = (report.files[file]?.mutants ?? []).filter(({ status }) => status === "Timeout").length;
    const all = killed + survived + uncovered;
    console.log(`${file}: ${String(killed)} of ${String(all)} mutants killed, ${String(timeouts)} of them by timeout`);
  }
  return true;
}

/** Goes through the runs until the budget is used up; it holds if Stryker itself worked. */
export function verifyMutants(): Part {
  const began = performance.now();
  const end = began + BUDGET_MINUTES * 60_000;
  const runs = mutationRuns().filter(({ files }) => files.some((file) => file.includes(PICKED)));
  writeFileSync(SURVIVORS, "");
  const lines: string[] = [];
  let [done, failed] = [0, 0];
  for (const run of runs) {
    if (performance.now() > end) break;
    if (!runStryker(run)) {
      lines.push(`${run.files.join(", ")}: not run, Stryker failed`);
      failed += run.files.length;
    }
    done += run.files.length;
  }
  const all = runs.reduce((count, { files }) => count + files.length, 0);
  lines.push(
    `${PICKED === "" ? "" : `of ${PICKED} alone: `}${String(done)} of ${String(all)} files begun within ${String(BUDGET_MINUTES)} minutes, Stryker failed on ${String(failed)}`,
  );
  console.log(lines.join("\n"));
  return { name: "Mutation testing", held: failed === 0, seconds: (performance.now() - began) / 1000, lines };
}
