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

const yearTests = (names: string): string =>
  names
    .split(" ")
    .map((name) => `test/pool/year${name}.test.ts`)
    .join(" ");

/** The physics of a step and of a year, whose tests need no catalogue: a mutant takes a third of the others' time. */
const YEAR_PHYSICS =
  /\/(airConditioner|exponential|hourLoop|lossesAt|machine|machineSetUp|recordStep|repeat|schedule|setUp|state|sums|sun|surface|tank|tankSetUp|vapourTable|waterCurve|year)\.ts$/;
const PHYSICS_TESTS = yearTests("Golden Limits Pad");
const YEAR_TESTS = `${yearTests("Golden Climate Limits Cautions Pad Stages PublishedHouse")} test/pool/madeWeather.test.ts`;

/** The year's files in groups of three. */
function yearRuns(files: readonly string[], tests: string): readonly MutationRun[] {
  const starts = files.map((_, place) => place).filter((place) => place % 3 === 0);
  return starts.map((start) => ({ files: files.slice(start, start + 3), tests, ignoreStatic: true }));
}

const kernelTests = (names: string): string =>
  names
    .split(" ")
    .map((name) => `test/kernel/${name}.test.ts`)
    .join(" ");

/** Those that load no more than the kernel: with the catalogue each mutant would take a second longer. */
const CALL_TESTS = kernelTests(
  "admitWords calls callsExplained cautionsRaised evaluate hostileInput limits memo nearest present ranges sheet",
);
const VALUE_TESTS = kernelTests(
  "evaluate fault headsAndPrices hostileInput numbersShown quantity quantityText unitsWritten",
);
const DEFINE_TESTS = kernelTests(
  "admitWords calls definitions evaluate glossary hostileInput limits pressureBasis ranges sheet traces unitsArgument working",
);
const EXPLAIN_TESTS = kernelTests(
  "callsExplained cautionsRaised checks described evaluate examples explanations hostileInput pressureBasis readable unusualInputs working workingLines",
);

const topicOf = (file: string): string | undefined => file.split("/")[1];

/** "core/pool/year/sunEquations.ts" belongs to "pool". */
const byTopic = (files: readonly string[]): readonly (readonly string[])[] =>
  [...new Set(files.map(topicOf))].map((topic) => files.filter((file) => topicOf(file) === topic));

/** Several files in one run share its start; where tests take long they are few, so that the budget can end between them. */
export function mutationRuns(): readonly MutationRun[] {
  const equations = filesOf(/quations\.ts$/);
  const year = filesOf(/^core\/pool\/year\//).filter((file) => !equations.includes(file));
  return [
    { files: filesOf(/^core\/numeric\//), tests: "test/numeric/*.test.ts" },
    { files: filesOf(/^core\/kernel\/values\/(?!usual|unit)/), tests: VALUE_TESTS },
    { files: filesOf(/^core\/kernel\/values\/unit/), tests: kernelTests("quantityText unitText unitsWritten") },
    { files: ["core/kernel/values/usual.ts"], tests: kernelTests("unusual") },
    { files: filesOf(/^core\/kernel\/call\/(?!culprit)/), tests: CALL_TESTS },
    { files: ["core/kernel/call/culprit.ts"], tests: kernelTests("culprit") },
    { files: filesOf(/^core\/kernel\/define\//), tests: DEFINE_TESTS },
    { files: filesOf(/^core\/kernel\/explain\//), tests: EXPLAIN_TESTS },
    { files: ["core/kernel/unitWords.ts"], tests: kernelTests("quantityText unitText unitWords unitsWritten") },
    ...byTopic(equations).map((files) => ({
      files,
      tests: "test/whole/equations.test.ts test/whole/equationLimits.test.ts",
      ignoreStatic: true,
      environment: { EQUATIONS_OF: files.join(" ") },
    })),
    ...yearRuns(
      year.filter((file) => YEAR_PHYSICS.test(file)),
      PHYSICS_TESTS,
    ),
    ...yearRuns(
      year.filter((file) => !YEAR_PHYSICS.test(file)),
      YEAR_TESTS,
    ),
  ];
}
