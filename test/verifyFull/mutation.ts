/**
 * Mutation testing of the kernel, the equations and the year, file by file within a time budget: what was tested before and
 * hasn't changed is taken from `.cache/mutation.json`. Needs @stryker-mutator/core; prints each file's score.
 */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../scripts/root";

/** No file is begun after that; the one at work may take longer. */
export const BUDGET_MINUTES = 60;

const MUTATED = /^core\/(kernel\/(call|values)\/.*|numeric\/.*|pool\/year\/.*|.*quations)\.ts$/;

interface MutationReport {
  readonly files: Readonly<Record<string, { readonly mutants: readonly { readonly status: string }[] }>>;
}

export function mutatedFiles(): readonly string[] {
  return readdirSync(join(ROOT, "core"), { recursive: true, encoding: "utf8" })
    .map((path) => `core/${path.replaceAll("\\", "/")}`)
    .filter((path) => MUTATED.test(path))
    .sort();
}

function scoreOf(file: string): string {
  const report = JSON.parse(readFileSync(join(ROOT, ".cache/mutation-report.json"), "utf8")) as MutationReport;
  const mutants = report.files[file]?.mutants ?? [];
  const count = (...states: readonly string[]): number =>
    mutants.filter(({ status }) => states.includes(status)).length;
  const [killed, alive] = [count("Killed", "Timeout"), count("Survived", "NoCoverage")];
  return `${file}: ${String(killed)} of ${String(killed + alive)} mutants killed`;
}

/** Goes through the files until the budget is used up. @returns whether Stryker itself worked */
export function verifyMutants(): boolean {
  const end = performance.now() + BUDGET_MINUTES * 60_000;
  const files = mutatedFiles();
  let [done, failed] = [0, 0];
  for (const file of files) {
    if (performance.now() > end) break;
    const command = [join(ROOT, "node_modules/@stryker-mutator/core/bin/stryker.js"), "run", "--mutate", file];
    const { status } = spawnSync(process.execPath, command, { cwd: ROOT, stdio: ["ignore", "ignore", "inherit"] });
    if (status === 0) console.log(scoreOf(file));
    else failed += 1;
    done += 1;
  }
  console.log(
    `mutation: ${String(done)} of ${String(files.length)} files within ${String(BUDGET_MINUTES)} minutes, ${String(failed)} not run`,
  );
  return failed === 0;
}
