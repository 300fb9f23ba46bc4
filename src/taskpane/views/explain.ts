/** The selected cell: the arguments of its functions, their results and the working. */
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { isCancelled } from "../../workbook/timeSlices";
import { sentenceOf, type PanelServices, type View } from "../services";
import { action, h, markScrollable, replace, type Child } from "../elements";
import { explainer } from "../model/explainer";
import { readSelected, type Selected } from "../model/selected";
import { markSelected } from "./checkAndSign";
import { noteActions } from "./note";
import { noCallParts, callParts, selectionSentence } from "./cellParts";
import { endedBy, HOST_AFTER, orCancelled, progressBox, stoppedBox, type ProgressBox } from "./progressBox";

/** Delay between the last change or move and the next read of the cell, in milliseconds. */
const AFTER_CHANGE = 300;
const AFTER_MOVE = 60;

const WHAT = "Working out what the cell gives";

interface CellPlace {
  show(at: Address | undefined, selected: Selected, signal: AbortSignal): void;
  /** The read takes long: clears what belongs to another cell, so that nobody takes it for this one. */
  wait(at: Address | undefined): void;
  fail(error: unknown): void;
}

/** The part of the view that shows a cell. */
function cellPlace(services: PanelServices, content: HTMLElement): CellPlace {
  const explains = explainer(services.engine, services.jobs);
  let shownCell = "";
  let last = "";
  const draw = (cell: string, ...parts: readonly Child[]): void => {
    shownCell = cell;
    replace(content, ...parts);
    markScrollable(content);
  };
  return {
    show(at, selected, signal) {
      const parts =
        selected.state === "ours"
          ? callParts(services, selected, { explainer: explains, signal })
          : noCallParts(services, selected);
      draw(at === undefined ? "" : addressText(at), ...parts);
      const sentence = selectionSentence(selected);
      if (sentence !== last) services.readOut(sentence);
      last = sentence;
    },
    wait(at) {
      last = "";
      if (at === undefined || addressText(at) === shownCell) return;
      draw(addressText(at), h("p", { class: "where" }, h("strong", {}, addressText(at))));
    },
    fail(error) {
      last = "";
      draw("", h("p", { class: "fault", role: "alert" }, `The cell could not be read: ${sentenceOf(error)}`));
    },
  };
}

/** Ways to keep the explained calculation. */
function keepSection(
  services: PanelServices,
  result: HTMLElement,
  formulaCell: () => Address | undefined,
): HTMLElement {
  const cells = async (): Promise<readonly Address[]> => {
    const at = formulaCell() ?? (await services.workbook.selection());
    return at === undefined ? [] : [at];
  };
  return h(
    "section",
    { "aria-labelledby": "keep-title" },
    h("h3", { id: "keep-title" }, "Keep this calculation"),
    h(
      "p",
      { class: "actions" },
      action("Mark this cell", () => markSelected(services), { key: "mark explained" }),
    ),
    noteActions(services, cells, result, "explained note"),
    result,
  );
}

/** The view of the selected cell; it follows the selection and the workbook while it shows. */
export function explainView(services: PanelServices): View {
  const going = h("div", { class: "going" });
  const content = h("div");
  const result = h("div", { role: "status", class: "outcome" });
  /** The cell whose formula is explained, where the selected one only shows a part of its spill. */
  let formulaCell: Address | undefined;
  const keep = keepSection(services, result, () => formulaCell);
  const root = h("div", { class: "view" }, h("h2", { tabindex: -1 }, "Explain"), going, content, keep);
  const cell = cellPlace(services, content);
  let showing = false;
  let current = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** The progress box of the newest read. */
  let box: ProgressBox | undefined;

  const read = async (known?: Address, asked = false): Promise<void> => {
    current.abort();
    const own = new AbortController();
    current = own;
    const ending = endedBy(own.signal);
    let at = known;
    const mine = progressBox(services, {
      what: WHAT,
      key: "reading",
      cancel: () => ending.abort(),
      // A box that is already visible stays visible.
      asked: asked || box?.root.hidden === false,
      after: asked ? undefined : HOST_AFTER,
      signal: own.signal,
      shown() {
        replace(going, mine.root);
        cell.wait(at);
      },
    });
    if (!mine.root.hidden) replace(going, mine.root);
    box = mine;
    try {
      at ??= await orCancelled(services.workbook.selection(), ending.signal);
      const { signal } = ending;
      const reading = readSelected(services.workbook, at, services.engine, { signal, onWait: mine.showNow });
      const selected = await orCancelled(reading, signal);
      formulaCell = selected.state === "ours" ? selected.address : undefined;
      replace(result);
      cell.show(at, selected, own.signal);
      replace(going);
    } catch (error) {
      if (!own.signal.aborted) stopped(error, at);
    } finally {
      mine.end();
      if (box === mine) box = undefined;
    }
  };

  const stopped = (error: unknown, at: Address | undefined): void => {
    if (!isCancelled(error)) {
      cell.fail(error);
      return replace(going);
    }
    cell.wait(at);
    replace(
      going,
      stoppedBox(error, "reading", () => read(at, true)),
    );
    services.readOut("Cancelled: the cell keeps what it holds.");
  };

  const later = (wait: number, at?: Address): void => {
    clearTimeout(timer);
    if (showing) timer = setTimeout(() => void read(at), wait);
  };
  services.workbook.onSelection((at) => later(AFTER_MOVE, at));
  services.workbook.onChange(() => later(AFTER_CHANGE));

  return {
    root,
    show() {
      showing = true;
      void read();
    },
    hide() {
      showing = false;
      current.abort();
      clearTimeout(timer);
      replace(going);
    },
  };
}
