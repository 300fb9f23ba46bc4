/** What mutation testing changes, and the quick tests that are to notice it: one run of Stryker each, in this order. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../scripts/root";

export interface MutationRun {
  readonly files: readonly string[];
  /** Patterns of test files, with spaces between. */
  readonly tests: string;
  /** Leaves out what is made once when a file is loaded: names, spans and sources of equations. */
  readonly ignoreStatic?: boolean;
  readonly environment?: Readonly<Record<string, string>>;
}

const filesOf = (pattern: RegExp): readonly string[] =>
  readdirSync(join(ROOT, "core"), { recursive: true, encoding: "utf8" })
    .map((path) => `core/${path.replaceAll("\\", "/")}`)
    .filter((path) => pattern.test(path))
    .sort();

const YEAR_TESTS = ["Golden", "Climate", "Limits", "Cautions", "Pad", "Stages", "PublishedHouse"]
  .map((name) => `test/pool/year${name}.test.ts`)
  .concat("test/pool/madeWeather.test.ts")
  .join(" ");

const kernelTests = (names: string): string =>
  names
    .split(" ")
    .map((name) => `test/kernel/${name}.test.ts`)
    .join(" ");

/** Those that load no more than the kernel: with the catalogue each mutant would take a second longer. */
const CALL_TESTS = kernelTests("admitWords calls evaluate hostileInput limits memo nearest present ranges sheet");
const VALUE_TESTS = kernelTests("evaluate fault hostileInput numbersShown quantity quantityText unitText unitsWritten");

const topicOf = (file: string): string | undefined => file.split("/")[1];

/** "core/pool/year/sunEquations.ts" belongs to "pool". */
const byTopic = (files: readonly string[]): readonly (readonly string[])[] =>
  [...new Set(files.map(topicOf))].map((topic) => files.filter((file) => topicOf(file) === topic));

/** Several files in one run share its start; those whose tests take long come one by one, so that the budget can end between them. */
export function mutationRuns(): readonly MutationRun[] {
  const equations = filesOf(/quations\.ts$/);
  return [
    { files: filesOf(/^core\/numeric\//), tests: "test/numeric/*.test.ts" },
    { files: filesOf(/^core\/kernel\/values\/(?!usual)/), tests: VALUE_TESTS },
    { files: ["core/kernel/values/usual.ts"], tests: kernelTests("unusual") },
    { files: filesOf(/^core\/kernel\/call\/(?!culprit)/), tests: CALL_TESTS },
    { files: ["core/kernel/call/culprit.ts"], tests: kernelTests("namedArguments") },
    ...byTopic(equations).map((files) => ({
      files,
      tests: "test/whole/equations.test.ts test/whole/equationLimits.test.ts",
      ignoreStatic: true,
      environment: { EQUATIONS_OF: files.join(" ") },
    })),
    ...filesOf(/^core\/pool\/year\//)
      .filter((file) => !equations.includes(file))
      .map((file) => ({ files: [file], tests: YEAR_TESTS, ignoreStatic: true })),
  ];
}
