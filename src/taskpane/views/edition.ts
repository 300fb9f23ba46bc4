/** A workbook of another edition: what it holds against what this edition gives. */
import {
  editionCheck,
  type EditionDifference,
  type EditionReport,
  type LoggedChange,
} from "../../workbook/edition/editionCheck";
import { briefValue } from "../../workbook/check/markedCells";
import type { CellValue, Workbook } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import type { PanelServices } from "../services";
import { action, h, type Child } from "../elements";
import { chosenWorkbook } from "../model/chosenWorkbook";
import { counted, listed } from "../model/summary";
import { cellButton } from "./cellButtons";
import { withProgress, type RunningOptions } from "./commands";
import { longList } from "./longList";

const nowText = (value: CellValue | undefined): string => (value === undefined ? "another value" : briefValue(value));

function differenceItem(
  services: PanelServices,
  { address, ids, stored, now, changes }: EditionDifference,
  inFile: boolean,
): HTMLElement {
  const newest = [...changes].reverse();
  return h(
    "li",
    { class: "mend-item" },
    h(
      "p",
      {},
      inFile ? h("strong", {}, addressText(address)) : cellButton(services, address, "edition"),
      ` ${listed(ids)}`,
    ),
    h("p", {}, `stored ${briefValue(stored)}, now ${nowText(now)}`),
    newest.length === 0
      ? h("p", { class: "fault" }, "Unexplained: the change log names none of its functions.")
      : newest.map(({ edition, text }) => h("p", { class: "quiet" }, `${edition}: ${text}`)),
  );
}

function editionParts(
  services: PanelServices,
  { stamps, compared, unread, differences }: EditionReport,
  inFile: boolean,
): readonly Child[] {
  const own = services.engine.edition;
  const editions = [...new Set(stamps.map(({ edition }) => edition))];
  const others = editions.filter((edition) => edition !== own);
  const made =
    editions.length === 0
      ? "No sheet says which edition made it."
      : others.length === 0
        ? `Made with this edition, ${own}.`
        : `Made with ${listed(others)}; this is ${own}.`;
  const explained = differences.filter(({ changes }) => changes.length > 0);
  const unexplained = differences.filter(({ changes }) => changes.length === 0);
  return [
    h("p", {}, made),
    h(
      "p",
      {},
      `${counted(compared, "cell")} compared: ${differences.length === 0 ? "all hold what this edition gives." : `${counted(differences.length, "cell")} ${differences.length === 1 ? "differs" : "differ"}, ${String(unexplained.length)} of them unexplained.`}`,
    ),
    unread.length === 0
      ? undefined
      : h("p", { class: "quiet" }, `${counted(unread.length, "cell")} can't be compared: their inputs can't be read.`),
    differences.length === 0
      ? undefined
      : longList("edition", [...unexplained, ...explained], (one) => differenceItem(services, one, inFile)),
  ];
}

/** The change log, which the build keeps beside the panel. */
async function loadChanges(): Promise<readonly LoggedChange[]> {
  const answer = await fetch("changes.json");
  if (!answer.ok) throw new Error("the change log can't be loaded");
  return (await answer.json()) as readonly LoggedChange[];
}

export function editionSection(services: PanelServices): HTMLElement {
  const result = h("div", { role: "status", class: "outcome" });
  const going = h("div", { class: "going" });
  const check = (open: (options: RunningOptions) => Promise<Workbook>, inFile: boolean): Promise<void> =>
    withProgress(
      services,
      { what: "Comparing with this edition", key: "edition", unit: "cell", going, result },
      async (options) => {
        const changes = await loadChanges();
        return editionParts(
          services,
          await editionCheck(await open(options), services.engine, changes, options),
          inFile,
        );
      },
    );
  const input = h("input", { type: "file", id: "edition-file", accept: ".xlsx,.xlsm" });
  input.addEventListener("change", () => {
    const [chosen] = input.files ?? [];
    if (chosen === undefined) return;
    void check((options) => chosenWorkbook(services, chosen, { ...options, onProgress: () => undefined }), true);
  });
  return h(
    "section",
    { "aria-labelledby": "edition-title" },
    h("h3", { id: "edition-title" }, "Another edition"),
    h(
      "p",
      {},
      "Sheets that the panel inserts keep the edition that made them. This compares the values that cells hold with what " +
        `${services.engine.edition} gives, each difference beside the line of the change log that names its function. ` +
        "A host that has calculated again holds new values already: then choose the file.",
    ),
    h(
      "p",
      { class: "actions" },
      action("Check this workbook", () => check(async () => services.workbook, false), { key: "edition" }),
    ),
    h("p", { class: "note-input" }, h("label", { for: "edition-file" }, "A file as it was saved"), input),
    going,
    result,
  );
}
