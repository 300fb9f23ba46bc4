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

/** The year's files by the quick tests that hold them; those of the physics need no functions, a fifth of the others' time. */
const YEAR_PARTS: readonly (readonly [files: RegExp, tests: string])[] = [
  [
    /\/(airConditioner|exponential|hourLoop|lossesAt|machine|machineSetUp|partLoad|recordStep|repeat|schedule|setUp|state|sums|sun|surface|vapourTable|waterCurve)\.ts$/,
    yearTests("Hour Limits Losses Machine Repeat SetUp Sun Valve"),
  ],
  [/\/(climate|climateColumns)\.ts$/, yearTests("ClimateRange")],
  [/\/(cautions|checks|inputCautions)\.ts$/, yearTests("Rules")],
  [/\/(monthlyTable|saving)\.ts$/, yearTests("Rows")],
  [/\/(madeHours|weather)\.ts$/, `${yearTests("Climate Made")} test/pool/madeWeather.test.ts`],
  [/\/(extremes|facts|finding|plausibility|sunTests)\.ts$/, yearTests("Cautions Facts Findings")],
  [/\/(touched|working)\.ts$/, yearTests("Working")],
  [/\/(sunCheck|weatherCheck)\.ts$/, yearTests("OddWeather")],
  [/\/(tank|tankSetUp|year)\.ts$/, yearTests("Limits Tank Valve")],
  [/\/(oddInputs|stages|tableOnWater)\.ts$/, yearTests("Cautions Climate Stages TableOnWater Tank")],
  [
    /\/(sharedYear|spread|uncertain[A-Z]\w+)\.ts$/,
    yearTests("Spread UncertainOutcomes UncertainRows UncertainRuns UncertainWeather"),
  ],
  [/./, `${yearTests("Climate Pad PublishedHouse Tank")} test/pool/madeWeather.test.ts`],
];

/** The year's files in groups of three, so that the budget can end between them. */
function yearRuns(files: readonly string[]): readonly MutationRun[] {
  const partOf = (file: string) => YEAR_PARTS.findIndex(([pattern]) => pattern.test(file));
  return YEAR_PARTS.flatMap(([, tests], part) => {
    const own = files.filter((file) => partOf(file) === part);
    const starts = own.map((_, place) => place).filter((place) => place % 3 === 0);
    return starts.map((start) => ({ files: own.slice(start, start + 3), tests, ignoreStatic: true }));
  });
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
  "evaluate fault headsAndPrices hostileInput numbersShown quantity quantityText unitWords unitsWritten",
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
    ...yearRuns(year),
  ];
}
