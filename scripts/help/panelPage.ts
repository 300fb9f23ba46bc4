/** The help page of the panel. */
import { EDITION } from "../../core";
import { escaped, page, sections } from "./html";

const paragraphs = (...texts: readonly string[]): string => texts.map((text) => `<p>${text}</p>`).join("\n");

export function panelPage(): string {
  const main = `<header>
<nav aria-label="Place"><a href="index.html">All functions</a></nav>
</header>
<main id="main" tabindex="-1">
<h1>The panel</h1>
<p class="summary">It lies beside the sheet and says what the cells can't: what to watch, how a result comes about, which function fits.</p>
${sections([
  [
    "Cautions",
    paragraphs(
      "Cells that fail come first, each with its sentence: which argument, why, and what came. Then the notes that the numbers raise, then those that hold whatever the numbers. A cell's address takes you there.",
    ),
  ],
  [
    "Explain",
    paragraphs(
      "Select a cell with one of these functions: the panel shows its arguments (defaults are marked), the equation, every step with numbers, units and source, and a picture where the function has one.",
    ),
  ],
  [
    "Find",
    paragraphs(
      "Type what you want to know. Each card says what the function answers and inserts its example, with an input block to fill in where it takes one. Starter sheets are inserted from here too. A cell that isn't empty is never overwritten.",
    ),
  ],
  [
    "Workbook",
    paragraphs(
      "Runs the published checks, counts the functions in use, mends formulas that lost their add-in, and makes the copy to hand over: formulas become values, with a record of what they were.",
    ),
  ],
  [
    "Keyboard",
    paragraphs("Arrow keys change the tab; Tab goes on inside it. Every button can be reached without a mouse."),
  ],
])}</main>`;
  return page("The panel", "The panel beside the sheet.", main, `<p>${escaped(EDITION)}.</p>`);
}
