/** What the panel says before and after a hand-over. */
import type { MadeSheetCopies } from "../../workbook/copy/sheetCopies";
import type { MadeCopy, SurveyFacts } from "../../workbook/copy/surveyFacts";
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { h, type Child } from "../elements";
import { joiningSentences } from "../model/copyChoice";
import { counted } from "../model/summary";
import type { PanelServices } from "../services";
import { cellButtons } from "./cellButtons";

const isOne = (cells: readonly unknown[]): boolean => cells.length === 1;

const doubt = (services: PanelServices, key: string, sentence: string, cells: readonly Address[]): Child =>
  cells.length === 0 ? undefined : [h("p", { class: "fault" }, sentence), cellButtons(services, cells, key)];

/** What is doubtful about a workbook, with the cells; undefined where nothing is. */
export function doubts(services: PanelServices, { failing, differing, unreadable }: SurveyFacts): Child {
  if (failing.length + differing.length + unreadable.length === 0) return undefined;
  return h(
    "div",
    { class: "card attention" },
    doubt(
      services,
      "failing",
      `${counted(failing.length, "cell")} ${isOne(failing) ? "shows" : "show"} an error, and so will the copy.`,
      failing,
    ),
    doubt(
      services,
      "differing",
      `${counted(differing.length, "cell")} ${isOne(differing) ? "holds" : "hold"} another value than ${isOne(differing) ? "its formula gives" : "their formulas give"} now. Recalculate under Cautions, or hand the values over as they are.`,
      differing,
    ),
    doubt(
      services,
      "unreadable",
      `${counted(unreadable.length, "cell")} ${isOne(unreadable) ? "has a formula" : "have formulas"} that can't be read in full: the copy holds the value, the record lacks its inputs.`,
      unreadable,
    ),
  );
}

export const hasDoubts = ({ failing, differing, unreadable }: SurveyFacts): boolean =>
  failing.length + differing.length + unreadable.length > 0;

function frozenList({ frozen }: MadeCopy): Child {
  const { count, first } = frozen;
  if (count === 0) return undefined;
  return h(
    "details",
    { "data-key": "cut off" },
    h("summary", { "data-key": "cut off summary" }, `${counted(count, "formula")} cut off from what isn't in the copy`),
    h(
      "ul",
      { class: "plain" },
      first.map((one) => h("li", {}, `${addressText(one)}: it uses ${one.reason}`)),
      count > first.length ? h("li", {}, `and ${(count - first.length).toLocaleString("en")} more`) : undefined,
    ),
  );
}

/** @param where the host's sentence on where the copy is */
export function copyTexts(copy: MadeCopy, where: string): readonly Child[] {
  const { ours, dependent, othersFrozen, failing, failingBefore, titles } = copy;
  const values = ours + dependent + othersFrozen;
  return [
    h("p", {}, where),
    h(
      "p",
      {},
      `${counted(values, "formula")} became ${values === 1 ? "a value" : "values"}, ${ours.toLocaleString("en")} of them ${ours === 1 ? "calls" : "call"} these functions. ` +
        `${counted(failing, "cell")} ${failing === 1 ? "shows" : "show"} an error in the copy, ${failingBefore.toLocaleString("en")} on the same sheets here. Your own workbook is as it was.`,
    ),
    h("p", { class: "quiet" }, `Sheets: ${titles.join(", ")}.`),
    [...joiningSentences(copy.kept), ...copy.sentences].map((text) => h("p", { class: "quiet" }, text)),
    frozenList(copy),
  ];
}

export const sheetCopyTexts = ({ cells, ours, differing }: MadeSheetCopies, where: string): readonly Child[] => [
  h(
    "p",
    {},
    `Made ${where}: ${counted(cells, "formula")} became ${cells === 1 ? "a value" : "values"}, ` +
      `${ours.toLocaleString("en")} of them ${ours === 1 ? "calls" : "call"} these functions. Your own sheets are as they were.`,
  ),
  differing.length === 0
    ? undefined
    : h(
        "p",
        { class: "fault" },
        `${counted(differing.length, "cell")} ${isOne(differing) ? "is" : "are"} out of date: recalculate under Cautions and make the copies again.`,
      ),
];
