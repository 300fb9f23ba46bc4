/** The report of a scan as elements. */
import type { Address } from "../../workbook/port";
import type { CautionReport, FailingCell, RaisedCode, RaisedNote, SeverityGroup } from "../../workbook/scan/report";
import type { PanelServices } from "../services";
import { action, h, type Child } from "../elements";
import { counted, noteCount, useSentence } from "../model/summary";
import { cellButton, cellButtons } from "./cellButtons";
import { severityClass, severityMark } from "./severity";
import { startersSection } from "./starters";

const noteItem = (desk: PanelServices, code: string, { text, ids, cells }: RaisedNote): HTMLElement =>
  h(
    "li",
    {},
    h("p", {}, text),
    h("p", { class: "quiet" }, `Raised by ${ids.join(", ")} in ${counted(cells.length, "cell")}:`),
    cellButtons(desk, cells, `${code} ${text}`),
  );

const codeCard = (desk: PanelServices, severity: string, { code, notes }: RaisedCode): HTMLElement =>
  h(
    "li",
    { class: `card ${severityClass(severity)}` },
    h("h4", { class: "code" }, code),
    h(
      "ul",
      { class: "notes" },
      notes.map((note) => noteItem(desk, code, note)),
    ),
  );

const severitySection = (desk: PanelServices, group: SeverityGroup): HTMLElement =>
  h(
    "section",
    {},
    h("h3", {}, severityMark(group.severity), h("span", { class: "count" }, counted(noteCount(group), "note"))),
    h(
      "ul",
      { class: "plain" },
      group.codes.map((code) => codeCard(desk, group.severity, code)),
    ),
  );

/** What can be said of an error that came without its text. */
const failingHint = (error: string): string =>
  error === "#NAME?"
    ? "A function or name in the formula isn't known here: check its spelling."
    : "No more than this error is known: select the cell and open Explain.";

const failingItem = (desk: PanelServices, { address, error, message }: FailingCell): HTMLElement =>
  h(
    "li",
    { class: "card" },
    h("p", { class: "fault-line" }, cellButton(desk, address, "failing"), h("strong", {}, error)),
    h("p", {}, message ?? failingHint(error)),
  );

const failingSection = (desk: PanelServices, failing: readonly FailingCell[]): Child =>
  failing.length === 0
    ? undefined
    : h(
        "section",
        {},
        h("h3", {}, "Cells that fail", h("span", { class: "count" }, counted(failing.length, "cell"))),
        h(
          "ul",
          { class: "plain" },
          failing.map((cell) => failingItem(desk, cell)),
        ),
      );

const staleSection = (desk: PanelServices, stale: readonly Address[]): Child => {
  if (stale.length === 0) return undefined;
  const recalculate = async (): Promise<void> => {
    await desk.attempt(() => desk.workbook.recalculate(stale.map((cell) => ({ ...cell, rows: 1, columns: 1 }))));
  };
  return h(
    "section",
    {},
    h("h3", {}, "Out of date", h("span", { class: "count" }, counted(stale.length, "cell"))),
    h(
      "div",
      { class: "card" },
      h("p", {}, "These cells hold something else than their formulas give now."),
      cellButtons(desk, stale, "stale"),
      h("p", { class: "actions" }, action("Recalculate", recalculate, { key: "recalculate all", primary: true })),
    ),
  );
};

const unreadSection = (desk: PanelServices, unread: readonly Address[]): Child =>
  unread.length === 0
    ? undefined
    : h(
        "section",
        {},
        h("h3", {}, "Not checked", h("span", { class: "count" }, counted(unread.length, "cell"))),
        h(
          "div",
          { class: "card" },
          h(
            "p",
            {},
            "An argument is an expression that can't be read here: put it in its own cell to have it checked.",
          ),
          cellButtons(desk, unread, "unread"),
        ),
      );

const unworkedSection = (desk: PanelServices, unworked: readonly Address[], again: () => void): Child =>
  unworked.length === 0
    ? undefined
    : h(
        "section",
        {},
        h("h3", {}, "Not worked out", h("span", { class: "count" }, counted(unworked.length, "cell"))),
        h(
          "div",
          { class: "card" },
          h("p", {}, "The calculation broke off: whether these cells raise cautions isn't known."),
          cellButtons(desk, unworked, "unworked"),
          h("p", { class: "actions" }, action("Scan again", again, { key: "scan unworked" })),
        ),
      );

const firstRun = (desk: PanelServices): readonly Child[] => [
  h("p", {}, "No cell of this workbook uses these functions yet. Their cautions will stand here."),
  h("p", { class: "quiet" }, "Look for a function under Find, or type =WARMBACK. in a cell."),
  startersSection(desk, "first"),
];

const allQuiet = (): HTMLElement =>
  h("p", { class: "card" }, "No caution is raised by the cells that could be checked.");

/**
 * All of a report: severities from the gravest, then what fails, what is out of date and what could not be checked.
 * @param again scans what could not be worked out
 */
export function reportParts(desk: PanelServices, report: CautionReport, again: () => void): readonly Child[] {
  const { cells, failing, severities, stale, unread, unworked } = report;
  if (cells.length + failing.length + unread.length === 0) return firstRun(desk);
  return [
    h("p", { class: "quiet" }, useSentence(report)),
    severities.length === 0 ? allQuiet() : severities.map((group) => severitySection(desk, group)),
    failingSection(desk, failing),
    staleSection(desk, stale),
    unreadSection(desk, unread),
    unworkedSection(desk, unworked, again),
  ];
}
