/** Shows the selected cell as elements and as a sentence. */
import type { CellValue } from "../../workbook/port";
import { isCellFault } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { isOutcomeFault } from "../../workbook/values";
import type { PanelServices } from "../services";
import { action, h, type Child } from "../elements";
import { filledBy, type Selected } from "../model/selected";
import { callSection, type CallPlace } from "./callSection";
import { cellButton } from "./cellButtons";
import { faultText, valueText } from "./result";

const emptyText = (selected: Exclude<Selected, { state: "ours" }>): string => {
  if (selected.state === "nothing") return "Select a cell to see how its value comes about.";
  const at = addressText(selected.address);
  return selected.formula === "" ? `${at} holds no formula.` : `${at} uses none of these functions.`;
};

/** A cell that holds no call of ours. */
export const noCallParts = (
  services: PanelServices,
  selected: Exclude<Selected, { state: "ours" }>,
): readonly Child[] => [
  h("p", {}, emptyText(selected)),
  selected.state === "other" && selected.refersTo !== undefined
    ? h("p", {}, "It shows ", cellButton(services, selected.refersTo, "reference"))
    : undefined,
  h("p", { class: "quiet" }, "Select a cell whose formula has a WARMBACK function; Find helps to write one."),
];

export type SelectedCall = Extract<Selected, { state: "ours" }>;

const heldText = (value: CellValue): string =>
  value === null ? "nothing" : isCellFault(value) ? value.code : valueText(value);

const outOfDate = (services: PanelServices, { address, value }: SelectedCall): HTMLElement => {
  const recalculate = async (): Promise<void> => {
    await services.attempt(() => services.workbook.recalculate([{ ...address, rows: 1, columns: 1 }]));
  };
  return h(
    "div",
    { class: "card attention" },
    h(
      "p",
      {},
      h("strong", {}, "Out of date: recalculate."),
      ` The cell holds ${heldText(value)}; its formula now gives another value.`,
    ),
    h("p", { class: "actions" }, action("Recalculate", recalculate, { key: "recalculate", primary: true })),
  );
};

/** The cell's own error, unless a call below shows it. */
const ownFault = ({ value, reading }: SelectedCall): Child => {
  if (!isCellFault(value)) return undefined;
  const { code, message } = value;
  const shown = reading.calls.some(
    ({ outcome }) =>
      outcome !== undefined &&
      isOutcomeFault(outcome) &&
      outcome.code === code &&
      (message === undefined || message === outcome.message),
  );
  return shown ? undefined : faultText(code, message);
};

/** What the cell holds, unless a call below is the whole formula and shows it as its result. */
const holding = ({ inSpill, value, reading: { calls, stale } }: SelectedCall): Child =>
  inSpill !== undefined || stale || isCellFault(value) || calls.some(({ whole }) => whole)
    ? undefined
    : ` holds ${heldText(value)}`;

/** A cell with its calls. */
export const callParts = (
  services: PanelServices,
  selected: SelectedCall,
  by: Pick<CallPlace, "explainer" | "signal">,
): readonly Child[] => {
  const { address, inSpill, shownBy, reading } = selected;
  const area = filledBy(selected);
  const { refusal, calls } = reading;
  return [
    h("p", { class: "where" }, h("strong", {}, addressText(shownBy ?? inSpill ?? address)), holding(selected)),
    shownBy === undefined
      ? undefined
      : h("p", {}, `${addressText(shownBy)} shows `, cellButton(services, inSpill ?? address, "reference"), "."),
    inSpill === undefined ? undefined : h("p", {}, "Spilled from ", cellButton(services, address, "spill"), "."),
    h("pre", { class: "source" }, h("code", {}, reading.formula)),
    reading.stale ? outOfDate(services, selected) : undefined,
    refusal === undefined ? undefined : h("p", { class: "fault" }, `The formula can't be read: ${refusal.why}.`),
    ownFault(selected),
    calls.map((call, place) => callSection(services, call, { ...by, area, key: `call ${String(place)}` })),
  ];
};

/** The sentence that is read out for a cell. */
export const selectionSentence = (selected: Selected): string => {
  if (selected.state !== "ours") return emptyText(selected);
  const names = selected.reading.calls.map(({ id }) => id).join(", ");
  return `${addressText(selected.shownBy ?? selected.inSpill ?? selected.address)}: ${names}${selected.reading.stale ? ", out of date" : ""}`;
};
