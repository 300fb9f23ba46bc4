/** How a new sheet is printed. */
import { escapedXml } from "../xml/text";
import type { NewPrint } from "./newSheet";

/** ECMA-376 part 1, 18.3.1.63 and 18.18.43. */
const PAPER_SIZES = { Letter: 1, A4: 9 } as const;

/** The parts of a footer: ECMA-376 part 1, 18.3.1.46. */
function footerText({ footer = "", footerLeft = "", footerRight = "" }: NewPrint): string {
  const sides = footerLeft + footerRight === "" ? footer : `&L${footerLeft}&C${footer}&R${footerRight}`;
  return sides === "" ? "" : `<headerFooter><oddFooter>${escapedXml(sides)}</oddFooter></headerFooter>`;
}

/** A break's number is that of the last row above it: ECMA-376 part 1, 18.3.1.3. */
function breaksText({ breaks = [] }: NewPrint): string {
  const items = breaks.map((row) => `<brk id="${String(row - 1)}" max="16383" man="1"/>`);
  const count = String(items.length);
  return items.length === 0
    ? ""
    : `<rowBreaks count="${count}" manualBreakCount="${count}">${items.join("")}</rowBreaks>`;
}

/** Margins, paper, footer and breaks, in the order of the format. */
export function pageText(print: NewPrint): string {
  const { landscape, fitToWidth, onePage, paper } = print;
  // Without a height in pages it is one.
  const fit = fitToWidth === true && onePage !== true ? ' fitToHeight="0"' : "";
  const size = paper === undefined ? "" : ` paperSize="${String(PAPER_SIZES[paper])}"`;
  return (
    '<pageMargins left="0.5" right="0.5" top="0.5" bottom="0.7" header="0.3" footer="0.3"/>' +
    `<pageSetup${size}${fit} orientation="${landscape === true ? "landscape" : "portrait"}"/>` +
    footerText(print) +
    breaksText(print)
  );
}
