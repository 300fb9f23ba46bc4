/** The validation report as a page of docs/. */
import { format, resolveConfig } from "prettier";
import { ROOT } from "../root";
import { join } from "node:path";
import { NEVER_RUN, otherFiles, seenText, shareText, totalsOf, uncertaintyText } from "./facts";
import type { Measured, MeasuredGrid } from "./measure";

export const VALIDATION_PAGE = "docs/validation/README.md";

const cell = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [heads, heads.map(() => "---"), ...rows].map((row) => `| ${row.map(cell).join(" | ")} |`).join("\n");

/** The check that lies nearest to its tolerance. */
function worstCheck({ checks }: Measured): string {
  const numeric = checks.filter(({ relative }) => relative !== undefined);
  if (numeric.length === 0) return "words and zeros only";
  const worst = numeric.reduce((most, one) => (one.share > most.share ? one : most));
  return `${shareText(worst.relative ?? 0)} (${worst.where}; ${worst.source})`;
}

const checkRows = (measured: readonly Measured[]): readonly (readonly string[])[] =>
  measured
    .filter(({ checks }) => checks.length > 0)
    .map((one) => [`\`${one.definition.id}\``, String(one.checks.length), seenText(one), worstCheck(one)]);

const gridRow = ({ grid, rows, worst, median }: MeasuredGrid): readonly string[] => [
  `\`${grid.id}\``,
  grid.quantity,
  `\`${grid.file}\``,
  String(rows),
  shareText(worst.relative ?? 0),
  worst.where,
  shareText(median),
  `${String(grid.tolerance)}: ${grid.basis}`,
];

const GRID_HEADS = ["Function", "Compared", "File", "Rows", "Worst", "Where", "Median", "Tolerance and why"];

export async function validationMarkdown(measured: readonly Measured[]): Promise<string> {
  const { functions, checks, rows } = totalsOf(measured);
  const grids = measured.flatMap((one) => one.grids);
  const uncertain = measured
    .map(({ definition }) => [`\`${definition.id}\``, uncertaintyText(definition)] as const)
    .filter(([, text]) => text !== "");
  const sources = [...new Map(grids.map(({ grid, source }) => [grid.file, source]))];
  const text = `# Validation report

Made by \`npm run validation\`; a test fails when it is out of date, and the build ends when a value passes its tolerance. Deviations are shares of the reference value. ${String(functions)} functions, ${String(checks)} comparisons with published values, ${String(rows)} rows of reference grids called through the cell functions. Plots and ranges: \`help/validation.html\` of a build.

## What has never been run

${NEVER_RUN.map((line) => `- ${line}`).join("\n")}

## Grids

${table(GRID_HEADS, grids.map(gridRow))}

## Sources of the grids

${table(["File", "As its heading says"], sources)}

## Published checks

The deviation shown is that of the check nearest to its tolerance.

${table(["Function", "Comparisons", "How the sources were seen", "Deviation"], checkRows(measured))}

## Stated uncertainty

${table(["Function", "Uncertainty that the sources of its data state"], uncertain)}

## Other files of reference values

Tests compare these with parts of the core, under tolerances beside each comparison.

${table(
  ["File", "Rows", "Tests"],
  otherFiles().map(({ file, rows: count, tests }) => [
    `\`${file}\``,
    String(count),
    tests.map((path) => `\`test/${path}\``).join(", "),
  ]),
)}
`;
  const file = join(ROOT, VALIDATION_PAGE);
  return format(text, { ...(await resolveConfig(file)), filepath: file });
}
