/** Every caution that the workbook's formulas raise now, and the cells that fail. */
import type { CautionReport } from "../../workbook/scan/report";
import { scanner } from "../../workbook/scan/scan";
import { sentenceOf, type PanelServices, type View } from "../services";
import { action, h, replace } from "../elements";
import { counted, scanSentence } from "../model/summary";
import { reportParts } from "./report";
import { HOST_AFTER, orCancelled, progressBox } from "./progressBox";

/** Delay between the last change and the next scan of the changed sheets, in milliseconds. */
const AFTER_CHANGE = 300;

interface Scanning {
  readonly due: Set<string>;
  report: CautionReport | undefined;
  showing: boolean;
  running: AbortController | undefined;
  timer: ReturnType<typeof setTimeout> | undefined;
}

const heading = (): HTMLElement => h("h2", { tabindex: -1 }, "Cautions");

const trouble = (error: unknown, again: () => void): HTMLElement =>
  h(
    "div",
    { class: "card", role: "alert" },
    h("p", {}, `The workbook could not be read: ${sentenceOf(error)}`),
    h("p", { class: "actions" }, action("Scan again", again, { key: "scan again" })),
  );

const WHAT = "Reading the workbook";

const stopped = (again: () => void): HTMLElement =>
  h(
    "div",
    { class: "progress" },
    h("p", {}, h("strong", {}, "Cancelled."), " Not every cell was checked."),
    h("p", { class: "actions" }, action("Scan again", again, { key: "scan" })),
  );

/** The view of cautions: scans everything when first shown, then the changed sheets only, and only while it shows. */
export function cautionsView(services: PanelServices): View {
  const going = h("div", { class: "going" });
  const content = h("div");
  const root = h("div", { class: "view" }, heading(), going, content);
  const scan = scanner(services.workbook, services.engine);
  const state: Scanning = { due: new Set(), report: undefined, showing: false, running: undefined, timer: undefined };

  const show = (report: CautionReport, asked: boolean): void => {
    const before = state.report === undefined ? "" : scanSentence(state.report);
    state.report = report;
    replace(
      content,
      reportParts(services, report, () => void run(true)),
    );
    const sentence = scanSentence(report);
    if (asked || sentence !== before) services.readOut(sentence);
  };

  const run = async (asked = state.report === undefined): Promise<void> => {
    const own = new AbortController();
    const sheets = [...state.due];
    state.running = own;
    root.setAttribute("aria-busy", "true");
    let cancelled = false;
    const cancel = (): void => {
      cancelled = true;
      own.abort();
    };
    const after = asked ? undefined : HOST_AFTER;
    const { signal } = own;
    const box = progressBox(services, { what: WHAT, key: "scan", cancel, asked, after, signal });
    replace(going, box.root);
    if (state.report === undefined) replace(content);
    try {
      const onProgress = (done: number, total: number): void =>
        box.update({ done, total, text: `${String(done)} of ${counted(total, "cell")}` });
      const those = state.report === undefined ? undefined : sheets;
      const report = await orCancelled(scan.scan(those, signal, { onProgress, onWait: box.showNow }), signal);
      if (report === undefined) return;
      for (const sheet of sheets) state.due.delete(sheet);
      show(report, asked);
    } catch (error) {
      if (!signal.aborted)
        replace(
          content,
          trouble(error, () => void run(true)),
        );
    } finally {
      box.end();
      if (cancelled) services.readOut("Cancelled: not every cell was checked.");
      if (state.running === own) {
        state.running = undefined;
        root.removeAttribute("aria-busy");
        replace(going, cancelled ? stopped(() => void run(true)) : undefined);
      }
    }
  };

  const stop = (): void => {
    clearTimeout(state.timer);
    state.running?.abort();
  };

  const scanLater = (): void => {
    stop();
    if (state.showing) state.timer = setTimeout(() => void run(), AFTER_CHANGE);
  };

  services.workbook.onChange((sheets) => {
    for (const sheet of sheets) state.due.add(sheet);
    scanLater();
  });

  return {
    root,
    show() {
      state.showing = true;
      if (state.report === undefined || state.due.size > 0) void run();
    },
    hide() {
      state.showing = false;
      stop();
    },
  };
}
