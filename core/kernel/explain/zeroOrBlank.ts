/** The caution about zeros that may be blank cells. */
import type { AdmittedCall } from "../call/evaluate";
import type { RaisedCaution } from "../define/caution";

const quoted = (labels: readonly string[]): string => labels.map((label) => `"${label}"`).join(", ");

/** Raises one caution for all zeros that may be blank cells; it says how each was read. */
export function zeroOrBlank({ doubts: { zeros, leftOut, headings } }: AdmittedCall): RaisedCaution[] {
  const sentences = [
    ...(zeros.length > 0 ? [`Taken as 0: ${quoted(zeros)}.`] : []),
    ...(leftOut.length > 0 ? [`Taken as left out, since 0 is outside the limits: ${quoted(leftOut)}.`] : []),
    ...(headings.length > 0 ? [`Taken as a heading: ${quoted(headings)}.`] : []),
  ];
  if (sentences.length === 0) return [];
  const advice =
    "A blank cell reaches a function as 0 on some hosts: where nothing is meant, leave the argument out or take the line out of the block.";
  return [{ code: "ZERO-OR-BLANK", severity: "Caution", text: `${sentences.join(" ")} ${advice}` }];
}
