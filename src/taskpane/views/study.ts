/** Many runs of a call with ranges: started by a button, with progress and Cancel, then their pictures. */
import type { CellInput } from "../../../core";
import type { StudiedCall } from "../jobs/job";
import { picturesBox } from "../pictures/box";
import type { PicturesOf } from "../pictures/actions";
import type { PanelServices } from "../services";
import { action, h, markScrollable, replace } from "../elements";
import { endedBy, progressBox, stoppedBox } from "./progressBox";
import { isCancelled } from "../../workbook/timeSlices";

/** The functions that can be studied. */
const STUDIED: readonly string[] = ["POOL.UNCERTAINTY", "NOTE.UNCERTAINTY"];

const shown = (services: PanelServices, of: PicturesOf, { pictures, shares, summary }: StudiedCall) => [
  h("p", {}, summary),
  ...(shares
    ? [
        h(
          "p",
          { class: "quiet" },
          "First-order share: the part of the spread that the input makes by itself. Total share: with all that it makes together with others.",
        ),
      ]
    : []),
  picturesBox(services, pictures, of, undefined),
];

/** A place for the study of a call; undefined where the function has no ranges. */
export function studySection(
  services: PanelServices,
  args: readonly CellInput[] | undefined,
  { id, key: callKey, area }: PicturesOf,
  signal: AbortSignal,
): HTMLElement | undefined {
  if (args === undefined || !STUDIED.includes(id)) return undefined;
  const key = `${callKey} study`;
  const body = h("div", { class: "call-body" });
  const start = action("Run 2,048 times, with shares", () => work(), { key });
  const work = async (): Promise<void> => {
    const ending = endedBy(signal);
    const box = progressBox(services, {
      what: `Running ${id} many times`,
      key,
      cancel: () => ending.abort(),
      asked: true,
      signal,
    });
    replace(body, box.root);
    try {
      const studied = await services.jobs.run("study", { id, args }, { signal: ending.signal, onProgress: box.update });
      replace(body, shown(services, { id, key, area }, studied));
      markScrollable(body);
      services.readOut(studied.summary);
    } catch (error) {
      if (signal.aborted) return;
      replace(body, stoppedBox(error, key, work));
      services.readOut(isCancelled(error) ? `Cancelled: ${id}.` : `Not worked out: ${id}.`);
    } finally {
      box.end();
    }
  };
  body.append(h("p", { class: "actions" }, start));
  return h("section", { "aria-label": "More runs" }, h("h4", {}, "More runs"), body);
}
