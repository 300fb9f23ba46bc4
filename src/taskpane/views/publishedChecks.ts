/** Runs every published check of every function, slow ones included, and lists the differences. */
import type { PanelServices } from "../services";
import { sentenceOf } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";
import type { CheckedValue } from "../jobs/job";
import { progressBox } from "./progressBox";
import { isCancelled } from "../../workbook/timeSlices";

const differing = ({ id, what, expected, source }: CheckedValue): Child =>
  h("li", {}, `${id}${what === "" ? "" : `, ${what}`}: ${source} gives ${String(expected)}.`);

const resultParts = (all: readonly CheckedValue[]): readonly Child[] => {
  const off = all.filter(({ agrees }) => !agrees);
  return [
    h("p", {}, `${String(all.length - off.length)} of ${counted(all.length, "published value")} agree.`),
    off.length === 0 ? undefined : h("ul", { class: "fault" }, off.map(differing)),
  ];
};

const WHAT = "Calculating the published values";

/** The section with the command and its result in a live region. */
export const publishedChecks = (services: PanelServices): HTMLElement => {
  const going = h("div", { class: "going" });
  const result = h("div", { role: "status", class: "outcome" });
  const run = async (): Promise<void> => {
    const ending = new AbortController();
    const box = progressBox(services, { what: WHAT, key: "checks", cancel: () => ending.abort(), asked: true });
    replace(result);
    replace(going, box.root);
    try {
      const all = await services.jobs.run("check", {}, { signal: ending.signal, onProgress: box.update });
      replace(result, resultParts(all));
    } catch (error) {
      const text = isCancelled(error) ? "Cancelled: not every value was compared." : `${sentenceOf(error)}.`;
      replace(result, h("p", { class: isCancelled(error) ? undefined : "fault" }, text));
    } finally {
      box.end();
      replace(going);
    }
  };
  return h(
    "section",
    { "aria-labelledby": "checks-title" },
    h("h3", { id: "checks-title" }, "Published checks"),
    h(
      "p",
      {},
      "Calculates every published value again, slow functions included. In a sheet, NOTE.SELFTEST shows them one by one.",
    ),
    h("p", { class: "actions" }, action("Run the checks", run, { key: "checks" })),
    going,
    result,
  );
};
