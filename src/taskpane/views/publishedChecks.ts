/** Runs every published check of every function, the slow ones too, and tells what differs. */
import type { PanelServices } from "../services";
import { sentenceOf } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";
import type { CheckedValue } from "../jobs/job";
import { CANCELLED } from "../jobs/jobQueue";
import { progressBox } from "./progressBox";

const differing = ({ id, what, expected, from }: CheckedValue): Child =>
  h("li", {}, `${id}${what === "" ? "" : `, ${what}`}: ${from} gives ${String(expected)}.`);

const told = (all: readonly CheckedValue[]): readonly Child[] => {
  const off = all.filter(({ agrees }) => !agrees);
  return [
    h("p", {}, `${String(all.length - off.length)} of ${counted(all.length, "published value")} agree.`),
    off.length === 0 ? undefined : h("ul", { class: "fault" }, off.map(differing)),
  ];
};

const WHAT = "Working the published values";

/** The section with the command and, in a live region, what it found. */
export const publishedChecks = (desk: PanelServices): HTMLElement => {
  const going = h("div", { class: "going" });
  const result = h("div", { role: "status", class: "outcome" });
  const run = async (): Promise<void> => {
    const ending = new AbortController();
    const box = progressBox(desk, { what: WHAT, key: "checks", cancel: () => ending.abort(), asked: true });
    replace(result);
    replace(going, box.root);
    try {
      const all = await desk.jobs.run("check", {}, { signal: ending.signal, tell: box.tell });
      replace(result, told(all));
    } catch (error) {
      const text = error === CANCELLED ? "Cancelled: no value was compared to its end." : `${sentenceOf(error)}.`;
      replace(result, h("p", { class: error === CANCELLED ? undefined : "fault" }, text));
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
      "Works every published value again, of slow functions too. In a sheet, NOTE.SELFTEST shows them one by one.",
    ),
    h("p", { class: "actions" }, action("Run the checks", run, { key: "checks" })),
    going,
    result,
  );
};
