/** The selected cell: what its functions were given, what they give, and how. */
import type { Address, CellValue } from "../../workbook/port";
import { isFault } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { isOutcomeFault } from "../../workbook/values";
import { sentenceOf, type Desk, type View } from "../desk";
import { action, h, markScrollable, replace, type Child } from "../elements";
import { explainer } from "../model/explainer";
import { filledBy, readSelected, type Selected } from "../model/selected";
import { CANCELLED } from "../runs/runs";
import { callSection, type CallPlace } from "./call";
import { cellButton } from "./cells";
import { faultText, valueText } from "./result";
import { endedBy, running, stoppedBox } from "./running";

/** How long after the last change or move the cell is read again, in milliseconds. */
const AFTER_CHANGE = 300;
const AFTER_MOVE = 60;

const emptyText = (selected: Exclude<Selected, { state: "ours" }>): string => {
  if (selected.state === "nothing") return "Select a cell to see how its value comes about.";
  const at = addressText(selected.address);
  return selected.formula === "" ? `${at} holds no formula.` : `${at} uses none of these functions.`;
};

const empty = (selected: Exclude<Selected, { state: "ours" }>): readonly Child[] => [
  h("p", {}, emptyText(selected)),
  h("p", { class: "quiet" }, "Select a cell whose formula has a WARMBACK function; Find helps to write one."),
];

type Ours = Extract<Selected, { state: "ours" }>;

const heldText = (value: CellValue): string =>
  value === null ? "nothing" : isFault(value) ? value.error : valueText(value);

const outOfDate = (desk: Desk, { address, value }: Ours): HTMLElement => {
  const recalculate = async (): Promise<void> => {
    await desk.attempt(() => desk.workbook.recalculate([{ ...address, rows: 1, columns: 1 }]));
  };
  return h(
    "div",
    { class: "card attention" },
    h(
      "p",
      {},
      h("strong", {}, "Out of date: recalculate."),
      ` The cell holds ${heldText(value)}; its formula gives something else now.`,
    ),
    h("p", { class: "actions" }, action("Recalculate", recalculate, { key: "recalculate", primary: true })),
  );
};

/** The cell's own error, where no call below says it. */
const ownFault = ({ value, reading }: Ours): Child => {
  if (!isFault(value)) return undefined;
  const { error, message } = value;
  const told = reading.calls.some(
    ({ outcome }) =>
      outcome !== undefined &&
      isOutcomeFault(outcome) &&
      outcome.error === error &&
      (message === undefined || message === outcome.message),
  );
  return told ? undefined : faultText(error, message);
};

/** What the cell holds, where no call below is all of its formula: their results don't say it then. */
const holding = ({ inSpill, value, reading: { calls, stale } }: Ours): Child =>
  inSpill !== undefined || stale || isFault(value) || calls.some(({ whole }) => whole)
    ? undefined
    : ` holds ${heldText(value)}`;

const ours = (desk: Desk, selected: Ours, by: Pick<CallPlace, "explainer" | "signal">): readonly Child[] => {
  const { address, inSpill, reading } = selected;
  const area = filledBy(selected);
  const { refusal, calls } = reading;
  return [
    h("p", { class: "where" }, h("strong", {}, addressText(inSpill ?? address)), holding(selected)),
    inSpill === undefined ? undefined : h("p", {}, "Spilled from ", cellButton(desk, address, "spill"), "."),
    h("pre", { class: "source" }, h("code", {}, reading.formula)),
    reading.stale ? outOfDate(desk, selected) : undefined,
    refusal === undefined ? undefined : h("p", { class: "fault" }, `The formula can't be read: ${refusal.why}.`),
    ownFault(selected),
    calls.map((call, place) => callSection(desk, call, { ...by, area, key: `call ${String(place)}` })),
  ];
};

const spoken = (selected: Selected): string => {
  if (selected.state !== "ours") return emptyText(selected);
  const names = selected.reading.calls.map(({ id }) => id).join(", ");
  return `${addressText(selected.inSpill ?? selected.address)}: ${names}${selected.reading.stale ? ", out of date" : ""}`;
};

/** The view of the selected cell; it follows the selection and the workbook while it shows. */
export function explainView(desk: Desk): View {
  const content = h("div");
  const root = h("div", { class: "view" }, h("h2", { tabindex: -1 }, "Explain"), content);
  const explains = explainer(desk.engine, desk.runs);
  let showing = false;
  let current = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last = "";

  const draw = (...parts: readonly Child[]): void => {
    replace(content, ...parts);
    markScrollable(content);
  };

  /** Reads a cell and shows it, unless another took its place meanwhile. */
  const show = async (at: Address | undefined, own: AbortController, ending: AbortController): Promise<void> => {
    const selected = await readSelected(desk.workbook, at, desk.engine, ending.signal);
    if (own.signal.aborted) return;
    draw(
      selected.state === "ours" ? ours(desk, selected, { explainer: explains, signal: own.signal }) : empty(selected),
    );
    const sentence = spoken(selected);
    if (sentence !== last) desk.readOut(sentence);
    last = sentence;
  };

  const read = async (known?: Address, asked = false): Promise<void> => {
    current.abort();
    const own = new AbortController();
    current = own;
    const ending = endedBy(own.signal);
    const box = running(desk, {
      what: "Working out what the cell gives",
      key: "reading",
      cancel: () => ending.abort(),
      asked,
      shown: () => draw(box.root),
    });
    if (asked) draw(box.root);
    try {
      await show(known ?? (await desk.workbook.selection()), own, ending);
    } catch (error) {
      if (own.signal.aborted) return;
      draw(
        error === CANCELLED
          ? stoppedBox(error, "reading", () => read(known, true))
          : h("p", { class: "fault", role: "alert" }, `The cell could not be read: ${sentenceOf(error)}`),
      );
    } finally {
      box.end();
    }
  };

  const later = (wait: number, at?: Address): void => {
    clearTimeout(timer);
    if (showing) timer = setTimeout(() => void read(at), wait);
  };
  desk.workbook.onSelection((at) => later(AFTER_MOVE, at));
  desk.workbook.onChange(() => later(AFTER_CHANGE));

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
    },
  };
}
