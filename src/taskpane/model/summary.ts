/** Sentences and numbers about a workbook's cautions. */
import { codesOf, type CautionReport, type SeverityGroup } from "../../workbook/scan/report";

/** "1 cell", "12 cells". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString("en")} ${count === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1) ?? ""}`;

/** How many different notes a severity holds. */
export const noteCount = ({ codes }: SeverityGroup): number => codes.reduce((sum, { notes }) => sum + notes.length, 0);

/** What is read out when a scan ends: "3 notes: 1 Danger and 2 Warning. 2 standing notes. 12 cells use these functions." */
export function scanSentence(report: CautionReport): string {
  const { cells, failing, uncomputed } = report;
  if (cells.length + failing.length === 0) return "No cell of this workbook uses these functions yet.";
  const severities = codesOf(report, false);
  const notes = severities.reduce((sum, group) => sum + noteCount(group), 0);
  const words = severities.map((group) => `${String(noteCount(group))} ${group.severity}`);
  const standing = codesOf(report, true).reduce((sum, { codes }) => sum + codes.length, 0);
  const always = standing === 0 ? "" : ` ${counted(standing, "standing note")}.`;
  const raised =
    (notes === 0 ? "These numbers raise no caution." : `${counted(notes, "note")}: ${listed(words)}.`) + always;
  const left = uncomputed.length === 0 ? "" : ` ${counted(uncomputed.length, "cell")} could not be worked out.`;
  return `${raised} ${useSentence(report)}${left}`;
}

/** "12 cells use these functions, 1 fails." */
export function useSentence({ cells, failing }: CautionReport): string {
  const use = `${counted(cells.length, "cell")} ${cells.length === 1 ? "uses" : "use"} these functions`;
  return failing.length === 0
    ? `${use}.`
    : `${use}, ${String(failing.length)} ${failing.length === 1 ? "fails" : "fail"}.`;
}
