/** Notes that hold for a function whatever its numbers: once a workbook; those about danger stay open until they are read. */
import type { CautionReport, RaisedCode } from "../../workbook/scan/report";
import { codesOf } from "../../workbook/scan/report";
import { action, h, type Child } from "../elements";
import { browserStore, readNotes, type ReadMark } from "../model/readNotes";
import { counted, listed } from "../model/summary";
import type { PanelServices } from "../services";
import { severityClass, severityMark } from "./severity";

interface Standing extends RaisedCode {
  readonly severity: string;
}

const NOTES = readNotes(browserStore());

const standingOf = (report: CautionReport): readonly Standing[] =>
  codesOf(report, true).flatMap(({ severity, codes }) => codes.map((code) => ({ ...code, severity })));

const usesOf = ({ notes }: RaisedCode): string => {
  const ids = [...new Set(notes.flatMap((note) => note.ids))];
  const cells = notes.reduce((sum, note) => sum + note.cells.length, 0);
  const shown = ids.length > 3 ? [...ids.slice(0, 2), `${String(ids.length - 2)} more`] : ids;
  return `Holds for ${listed(shown)}, in ${counted(cells, "cell")}.`;
};

const said = (note: Standing): readonly Child[] => [
  h("p", {}, note.notes[0]?.text ?? ""),
  h("p", { class: "quiet" }, usesOf(note)),
];

const card = (note: Standing, ...rest: readonly Child[]): HTMLElement =>
  h(
    "li",
    { class: `card ${severityClass(note.severity)}` },
    h("h4", { class: "code" }, severityMark(note.severity), " ", note.code),
    said(note),
    rest,
  );

const markLine = ({ by, on }: ReadMark): string => `Marked as read by ${by} on ${on}.`;

const today = (): string => new Date().toISOString().slice(0, 10);

/** Who reads: asked once, above the first note that waits. */
const nameField = (id: string): HTMLElement =>
  h(
    "p",
    {},
    h("label", { for: id }, "Your name or initials"),
    h("input", { id, type: "text", maxlength: 40, autocomplete: "name", "data-key": id }),
  );

const NAME_ID = "read-by";

function markButton(services: PanelServices, note: Standing, shown: () => void): HTMLElement {
  const mark = (): void => {
    const field = document.getElementById(NAME_ID);
    const by = field instanceof HTMLInputElement ? field.value.trim() : "";
    if (by === "") {
      services.announce("Type your name or initials first: a note is marked as read by a person.");
      field?.focus();
      return;
    }
    const kept = NOTES.mark(note.code, { by, on: today() });
    shown();
    services.announce(`${note.code} is marked as read by ${by}${kept ? "" : ", until this panel closes"}.`);
  };
  return h("p", { class: "actions" }, action("Mark as read", mark, { key: `read ${note.code}` }));
}

function folded(notes: readonly Standing[]): Child {
  if (notes.length === 0) return undefined;
  const items = notes.map((note) => {
    const mark = NOTES.markOf(note.code);
    return card(note, mark && h("p", { class: "quiet" }, markLine(mark)));
  });
  return h(
    "details",
    { "data-key": "standing" },
    h("summary", {}, `${counted(notes.length, "standing note")}`),
    h("ul", { class: "plain" }, items),
  );
}

/**
 * The section of standing notes, undefined where there are none.
 * @param shown draws the section anew, after a note was marked
 */
export function standingSection(services: PanelServices, report: CautionReport, shown: () => void): Child {
  const all = standingOf(report);
  if (all.length === 0) return undefined;
  const waits = ({ severity, code }: Standing): boolean => severity === "Danger" && NOTES.markOf(code) === undefined;
  const waiting = all.filter(waits);
  return h(
    "section",
    { class: "standing" },
    h("h3", {}, "Standing notes", h("span", { class: "count" }, counted(all.length, "note"))),
    h("p", { class: "quiet" }, "They hold for these functions whatever the numbers, each shown once."),
    waiting.length === 0 ? undefined : nameField(NAME_ID),
    h(
      "ul",
      { class: "plain" },
      waiting.map((note) => card(note, markButton(services, note, shown))),
    ),
    folded(all.filter((note) => !waits(note))),
  );
}
