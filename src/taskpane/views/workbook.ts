/** Commands for the whole workbook: a copy for people without the add-in, and repair of formulas. */
import { mendFormulas, type Mending } from "../../workbook/mend/mend";
import type { Address } from "../../workbook/port";
import { WORK_CANCELLED } from "../../workbook/timeSlices";
import type { PanelServices, View } from "../services";
import { sentenceOf } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";
import { CANCELLED } from "../jobs/jobQueue";
import { cellButtons } from "./cellButtons";
import { handOverSection } from "./handOver";
import { publishedChecks } from "./publishedChecks";

/** A live region for a command's result, which is read out when it appears. */
const outcome = (): HTMLElement => h("div", { role: "status", class: "outcome" });

/** Runs a command and shows its result, why it failed, or that it was cancelled. */
async function report(into: HTMLElement, work: () => Promise<readonly Child[]>): Promise<void> {
  try {
    replace(into, await work());
  } catch (error) {
    const cancelled = error === CANCELLED || error === WORK_CANCELLED;
    const text = cancelled ? "Cancelled: nothing was changed." : `Nothing was changed: ${sentenceOf(error)}.`;
    replace(into, h("p", { class: cancelled ? undefined : "fault" }, text));
  }
}

const cellsOf = (services: PanelServices, cells: readonly Address[], key: string): Child =>
  cells.length === 0 ? undefined : cellButtons(services, cells, key);

const mendedText = (services: PanelServices, { mended, failing, protectedSheets }: Mending): readonly Child[] => [
  h(
    "p",
    {},
    mended.length === 0 && protectedSheets.length === 0
      ? "No formula needs mending."
      : `${counted(mended.length, "formula")} mended.`,
  ),
  cellsOf(services, mended, "mended"),
  failing.length === 0
    ? undefined
    : [
        h("p", { class: "fault" }, "Still #NAME?: something else in these formulas isn't known here."),
        cellsOf(services, failing, "failing still"),
      ],
  protectedSheets.length === 0
    ? undefined
    : [
        h("p", { class: "fault" }, "These sheets are protected: take the protection off and mend again."),
        h(
          "ul",
          {},
          protectedSheets.map(({ sheet, cells }) => h("li", {}, `${sheet}: ${counted(cells, "formula")}`)),
        ),
      ],
];

const mendSection = (services: PanelServices): HTMLElement => {
  const result = outcome();
  const run = async (): Promise<void> => {
    replace(result, h("p", { class: "quiet" }, "Looking through the formulas…"));
    await report(result, async () =>
      mendedText(services, await mendFormulas(services.workbook, services.engine.known)),
    );
  };
  return h(
    "section",
    { "aria-labelledby": "mend-title" },
    h("h3", { id: "mend-title" }, "Mend formulas"),
    h(
      "p",
      {},
      "Repairs formulas that show #NAME? because the add-in was missing, or that have the name of a lost book before a " +
        "function.",
    ),
    h("p", { class: "actions" }, action("Mend formulas", run, { key: "mend" })),
    result,
  );
};

/** The view of commands on the whole workbook. */
export function workbookView(services: PanelServices): View {
  const root = h(
    "div",
    { class: "view" },
    h("h2", { tabindex: -1 }, "Workbook"),
    handOverSection(services),
    mendSection(services),
    publishedChecks(services),
  );
  return { root, show: () => undefined, hide: () => undefined };
}
