/** The validation report as a help page. */
import { EDITION } from "../../core";
import { escaped, html, list, page, scrolled } from "../help/html";
import { NEVER_RUN, rangeTexts, seenText, shareText, totalsOf, uncertaintyText } from "./facts";
import { failuresIn, type Measured, measureAll, type MeasuredCheck } from "./measure";
import { deviationPlot } from "./plot";

const CHECK_HEADS = ["Compared", "Deviation", "Share of the tolerance", "Source"];
const GRID_HEADS = ["Compared", "Rows", "Worst", "Where", "Median", "Tolerance", "Source"];

const checkRow = ({ where, relative, share, source }: MeasuredCheck): readonly string[] => [
  where,
  relative === undefined ? "agrees" : shareText(relative),
  relative === undefined ? "" : shareText(share),
  source,
];

const paragraph = (title: string, text: string): string => (text === "" ? "" : `<p>${title}: ${escaped(text)}.</p>`);

function functionSection(one: Measured): string {
  const { definition, checks, grids } = one;
  const { id } = definition;
  const all = [...checks.filter(({ relative }) => relative !== undefined), ...grids.flatMap((grid) => grid.deviations)];
  const caption = `${String(all.length)} comparisons of ${id} by the share of their tolerance`;
  const rows = grids.map(({ grid, rows: count, worst, median, source }) => [
    `${grid.quantity} (${grid.file})`,
    String(count),
    shareText(worst.relative ?? 0),
    worst.where,
    shareText(median),
    `${String(grid.tolerance)}: ${grid.basis}`,
    source,
  ]);
  const ranges = rangeTexts(definition);
  return `<section id="${id}">
<h2><a href="${id}.html">${escaped(id)}</a></h2>
${all.length === 0 ? "" : `<figure>${deviationPlot(caption, all)}<figcaption>${caption}, by decades</figcaption></figure>`}
${paragraph("Published checks", seenText(one))}
${checks.length === 0 ? "" : scrolled(`Published checks of ${id}`, CHECK_HEADS, checks.map(checkRow))}
${rows.length === 0 ? "" : scrolled(`Reference grids of ${id}`, GRID_HEADS, rows)}
${paragraph("Uncertainty stated by the sources of its data", uncertaintyText(definition))}
${ranges.length === 0 ? "" : `<details><summary>Ranges and remarks</summary>${list(ranges)}</details>`}
</section>`;
}

/** @throws Error where a value passes its tolerance */
export function validationPage(): string {
  const measured = measureAll();
  const failures = failuresIn(measured);
  if (failures.length > 0) throw new Error(`values beyond their tolerance:\n${failures.join("\n")}`);
  const { functions, checks, rows } = totalsOf(measured);
  const main = `<header>
<nav aria-label="Place"><a href="index.html">All functions</a> › Validation</nav>
</header>
<main id="main" tabindex="-1">
<h1>Validation report</h1>
<p>Made with this build, which ends where a value passes its tolerance: ${String(functions)} functions, ${String(checks)} comparisons with published values, ${String(rows)} rows of reference grids. Deviations are shares of the reference value.</p>
<h2>What has never been run</h2>
${list(NEVER_RUN)}
${list(measured.map(({ definition: { id } }) => html(`<a href="#${id}">${escaped(id)}</a>`)))}
${measured.map(functionSection).join("\n")}
</main>`;
  return page(
    "Validation report",
    "How far the functions lie from published values.",
    main,
    `<p>${escaped(EDITION)}.</p>`,
  );
}
