/** Commands for the whole workbook: a copy for people without the add-in, and repair of formulas. */
import { handOver, type HandOver } from "../../workbook/copy/handOver";
import type { PanelServices, View } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";
import { checkSection } from "./checkAndSign";
import { compareSection } from "./compare";
import { reportInto } from "./commands";
import { mendSection } from "./mend";
import { editionSection } from "./edition";
import { markedNote } from "./note";
import { publishedChecks } from "./publishedChecks";
import { orCancelled, progressBox } from "./progressBox";
import { usesSection } from "./uses";

/** A live region for a command's result, which is read out when it appears. */
const outcome = (): HTMLElement => h("div", { role: "status", class: "outcome" });

const copyText = ({ cells, ours, stale }: HandOver, where: string): readonly Child[] => [
  h(
    "p",
    {},
    `Made ${where}: ${counted(cells, "formula")} became ${cells === 1 ? "a value" : "values"}, ` +
      `${String(ours)} of them ${ours === 1 ? "calls" : "call"} these functions. Your own sheets are as they were.`,
  ),
  stale === 0
    ? undefined
    : h(
        "p",
        { class: "fault" },
        `${counted(stale, "cell")} ${stale === 1 ? "is" : "are"} out of date: recalculate under Cautions and make the copy again.`,
      ),
];

const NO_USE = "No cell of this workbook uses these functions.";

const handOverSection = (services: PanelServices): HTMLElement => {
  const result = outcome();
  const going = h("div", { class: "going" });
  const run = async (): Promise<void> => {
    const ending = new AbortController();
    const { root, update, end } = progressBox(services, {
      what: "Making the copy",
      key: "hand over",
      cancel: () => ending.abort(),
      asked: true,
    });
    const onProgress = (done: number, total: number): void =>
      update({ done, total, text: `${String(done)} of ${counted(total, "formula")}` });
    const work = async (): Promise<readonly Child[]> => {
      const { signal } = ending;
      const copy = await orCancelled(
        handOver(services.workbook, services.engine, { signal, onProgress: onProgress }),
        signal,
      );
      if (copy === undefined) return [h("p", {}, NO_USE)];
      // Writing can't be cancelled.
      replace(going, h("p", { class: "quiet" }, "Writing the copy…"));
      return copyText(copy, await services.workbook.handOver(copy));
    };
    replace(result);
    replace(going, root);
    await reportInto(result, work);
    end();
    replace(going);
  };
  const where =
    services.workbook.host === "excel"
      ? "New sheets of this workbook hold the copy. Making them empties Excel's undo list."
      : "The copy is saved as a file.";
  return h(
    "section",
    { "aria-labelledby": "hand-over-title" },
    h("h3", { id: "hand-over-title" }, "Hand over"),
    h(
      "p",
      {},
      "A copy for people without this add-in: values in place of every formula that needs it, and a record of formula, " +
        `inputs, method, source and cautions beside them. ${where}`,
    ),
    h("p", { class: "actions" }, action("Make a hand-over copy", run, { key: "hand over", primary: true })),
    going,
    result,
  );
};

/** The view of commands on the whole workbook. */
export function workbookView(services: PanelServices): View {
  const compare = compareSection(services);
  const root = h(
    "div",
    { class: "view" },
    h("h2", { tabindex: -1 }, "Workbook"),
    handOverSection(services),
    mendSection(services),
    checkSection(services, (result) => markedNote(services, result)),
    compare.root,
    editionSection(services),
    usesSection(services),
    publishedChecks(services),
  );
  return { root, show: () => void services.attempt(compare.refresh), hide: () => undefined };
}
