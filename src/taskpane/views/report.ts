/** The report of a scan as elements. */
import type { Address } from "../../workbook/port";
import {
  codesOf,
  type CautionReport,
  type FailingCell,
  type RaisedCode,
  type RaisedNote,
  type SeverityGroup,
} from "../../workbook/scan/report";
import type { PanelServices } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted, noteCount, useSentence } from "../model/summary";
import { cellButton, cellButtons } from "./cellButtons";
import { severityClass, severityMark } from "./severity";
import { standingSection } from "./standing";
import { startersSection } from "./starters";

/** The cells of a note; where one calculation shows in many, its first cell is named, and the rest fold. */
function noteCells(services: PanelServices, key: string, { ids, cells, calls }: RaisedNote): readonly Child[] {
  const by = `Raised by ${ids.join(", ")} in`;
  const shown = counted(cells.length, "cell");
  if (calls.length === cells.length)
    return [h("p", { class: "quiet" }, `${by} ${shown}:`), cellButtons(services, cells, key)];
  const firsts = calls.flatMap(([first]) => first ?? []);
  return [
    h("p", { class: "quiet" }, `${by} ${counted(calls.length, "calculation")}, shown in ${shown}:`),
    cellButtons(services, firsts, key),
    h(
      "details",
      { "data-key": `all ${key}` },
      h("summary", {}, `All ${shown}`),
      cellButtons(services, cells, `all ${key}`),
    ),
  ];
}

const noteItem = (services: PanelServices, code: string, note: RaisedNote): HTMLElement =>
  h("li", {}, h("p", {}, note.text), noteCells(services, `${code} ${note.text}`, note));

const codeCard = (services: PanelServices, severity: string, { code, notes }: RaisedCode): HTMLElement =>
  h(
    "li",
    { class: `card ${severityClass(severity)}` },
    h("h5", { class: "code" }, code),
    h(
      "ul",
      { class: "notes" },
      notes.map((note) => noteItem(services, code, note)),
    ),
  );

const severitySection = (services: PanelServices, group: SeverityGroup): HTMLElement =>
  h(
    "section",
    {},
    h(
      "h4",
      { class: "level" },
      severityMark(group.severity),
      h("span", { class: "count" }, counted(noteCount(group), "note")),
    ),
    h(
      "ul",
      { class: "plain" },
      group.codes.map((code) => codeCard(services, group.severity, code)),
    ),
  );

/** A hint for an error without a message. */
const failingHint = (error: string): string =>
  error === "#NAME?"
    ? "A function or name in the formula isn't known here: check its spelling."
    : "The host gives no reason: select the cell and open Explain.";

const failingItem = (services: PanelServices, { address, error, message }: FailingCell): HTMLElement =>
  h(
    "li",
    { class: "card" },
    h("p", { class: "fault-line" }, cellButton(services, address, "failing"), h("strong", {}, error)),
    h("p", {}, message ?? failingHint(error)),
  );

const failingSection = (services: PanelServices, failing: readonly FailingCell[]): Child =>
  failing.length === 0
    ? undefined
    : h(
        "section",
        {},
        h("h3", {}, "Cells that fail", h("span", { class: "count" }, counted(failing.length, "cell"))),
        h(
          "ul",
          { class: "plain" },
          failing.map((cell) => failingItem(services, cell)),
        ),
      );

const staleSection = (services: PanelServices, stale: readonly Address[]): Child => {
  if (stale.length === 0) return undefined;
  const recalculate = async (): Promise<void> => {
    await services.attempt(() =>
      services.workbook.recalculate(stale.map((cell) => ({ ...cell, rows: 1, columns: 1 }))),
    );
  };
  return h(
    "section",
    {},
    h("h3", {}, "Out of date", h("span", { class: "count" }, counted(stale.length, "cell"))),
    h(
      "div",
      { class: "card" },
      h("p", {}, "The values in these cells differ from what their formulas give now."),
      cellButtons(services, stale, "stale"),
      h("p", { class: "actions" }, action("Recalculate", recalculate, { key: "recalculate all", primary: true })),
    ),
  );
};

const unreadSection = (services: PanelServices, unread: readonly Address[]): Child =>
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
          cellButtons(services, unread, "unread"),
        ),
      );

const unworkedSection = (services: PanelServices, unworked: readonly Address[], again: () => void): Child =>
  unworked.length === 0
    ? undefined
    : h(
        "section",
        {},
        h("h3", {}, "Not worked out", h("span", { class: "count" }, counted(unworked.length, "cell"))),
        h(
          "div",
          { class: "card" },
          h("p", {}, "The calculation stopped: these cells may raise cautions that are not listed here."),
          cellButtons(services, unworked, "unworked"),
          h("p", { class: "actions" }, action("Scan again", again, { key: "scan unworked" })),
        ),
      );

const firstRun = (services: PanelServices): readonly Child[] => [
  h("p", {}, "No cell of this workbook uses these functions yet. Their cautions will appear here."),
  h("p", { class: "quiet" }, "Look for a function under Find, or type =WARMBACK. in a cell."),
  startersSection(services, "first", services.starters),
];

const allQuiet = (): HTMLElement =>
  h("p", { class: "card" }, "The numbers of the cells that could be checked raise nothing.");

const raisedSection = (services: PanelServices, groups: readonly SeverityGroup[]): Child => [
  h("h3", { class: "part" }, "Raised by these numbers"),
  groups.length === 0 ? allQuiet() : groups.map((group) => severitySection(services, group)),
];

/**
 * A whole report: failing cells, what the numbers raise from the gravest on, cells out of date or not checked, and what
 * always holds.
 * @param again scans the cells whose calculation stopped
 */
export function reportParts(services: PanelServices, report: CautionReport, again: () => void): readonly Child[] {
  const { cells, failing, stale, unreadable, uncomputed } = report;
  if (cells.length + failing.length + unreadable.length === 0) return firstRun(services);
  const standing = h("div");
  const showStanding = (): void => replace(standing, standingSection(services, report, showStanding));
  showStanding();
  return [
    h("p", { class: "quiet" }, useSentence(report)),
    failingSection(services, failing),
    raisedSection(services, codesOf(report, false)),
    staleSection(services, stale),
    unreadSection(services, unreadable),
    unworkedSection(services, uncomputed, again),
    standing,
  ];
}
