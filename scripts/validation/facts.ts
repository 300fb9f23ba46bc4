/** What both forms of the validation report say in words. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { cite, type CellFunction } from "../../core";
import { collectHelp } from "../help/gather";
import { ROOT } from "../root";
import { referenceFile } from "./goldenRows";
import { GRIDS } from "./grids";
import type { Measured } from "./measure";

export const NEVER_RUN = [
  "Excel itself, on any platform: a stand-in made from Microsoft's client library and the sheet engine of the preview ran the functions. docs/acceptance.md lists what to try in a real Excel.",
  "A machine in the field: no function was compared with measurements of a built heat recovery.",
  "A browser other than Chromium.",
];

/** A deviation in print: anything below the rounding of the references prints as one bound. */
export const shareText = (value: number): string => {
  if (value < 1e-9) return "below 1e-9";
  return value < 1e-3 ? value.toExponential(1) : value.toPrecision(2);
};

export interface Totals {
  readonly functions: number;
  readonly checks: number;
  readonly rows: number;
}

export const totalsOf = (measured: readonly Measured[]): Totals => ({
  functions: measured.length,
  checks: measured.reduce((sum, { checks }) => sum + checks.length, 0),
  rows: measured.reduce((sum, { grids }) => sum + grids.reduce((all, { rows }) => all + rows, 0), 0),
});

/** How checks were seen, in words. */
const SEEN = {
  opened: "source opened",
  copied: "quoted by an opened text",
  memory: "from memory",
  rule: "common practice or an identity",
} as const;

export const seenText = ({ checks }: Measured): string =>
  (Object.keys(SEEN) as (keyof typeof SEEN)[])
    .map((seen) => [checks.filter((check) => check.seen === seen).length, SEEN[seen]] as const)
    .filter(([count]) => count > 0)
    .map(([count, words]) => `${String(count)} ${words}`)
    .join(", ");

/** Uncertainty that the sources of data state. */
export const uncertaintyText = (definition: CellFunction): string =>
  [
    ...new Set(
      collectHelp(definition).properties.flatMap(({ property, uncertainty, source }) =>
        uncertainty === undefined ? [] : [`${property}: ${uncertainty} (${cite(source)})`],
      ),
    ),
  ].join("; ");

/** Ranges of equations and what the definition says about its own. */
export const rangeTexts = (definition: CellFunction): readonly string[] => [
  ...(definition.details ?? []),
  ...collectHelp(definition).equations.flatMap(({ name, validity }) =>
    validity === undefined ? [] : [`${name}: ${validity}`],
  ),
];

const testFiles = (): readonly string[] =>
  readdirSync(join(ROOT, "test"), { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".test.ts"))
    .sort();

export interface OtherFile {
  readonly file: string;
  readonly rows: number;
  readonly tests: readonly string[];
}

/** Files of reference values that tests compare with a part of the core, not by calls of one cell function. */
export function otherFiles(): readonly OtherFile[] {
  const known = new Set(GRIDS.map(({ file }) => file));
  const tests = testFiles().map((path) => [path, readFileSync(join(ROOT, "test", path), "utf8")] as const);
  return readdirSync(join(ROOT, "test/golden"))
    .filter((file) => file.endsWith(".csv") && !known.has(file))
    .sort()
    .map((file) => ({
      file,
      rows: referenceFile(file).rows.length,
      tests: tests.filter(([, text]) => text.includes(file) || text.includes(stem(file))).map(([path]) => path),
    }));
}

/** Files of one kind are read by a name that is put together, such as `weather-${city}.csv`. */
const stem = (file: string): string => `${file.slice(0, file.indexOf("-") + 1) || file}\${`;
