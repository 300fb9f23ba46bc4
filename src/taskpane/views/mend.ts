/** Mending of damaged formulas: first the list, then the write, then the outcome of each cell. */
import { briefValue } from "../../workbook/check/markedCells";
import { findDamage, type Damage, type DamageList, type Unmendable } from "../../workbook/mend/damage";
import { mendKnowledge } from "../../workbook/mend/knowledge";
import { mendCells, type MendOutcome } from "../../workbook/mend/mend";
import type { PanelServices } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";
import { cellButton } from "./cellButtons";
import { longList } from "./longList";
import { withProgress } from "./commands";

const codeLine = (label: string, formula: string): HTMLElement =>
  h("p", { class: "formula-line" }, h("span", { class: "quiet" }, label), " ", h("code", {}, formula));

const KINDS: Readonly<Record<Damage["kind"], string | undefined>> = {
  formula: undefined,
  text: "It is a text now: it becomes a formula.",
  again: "The formula is sound: it is entered again.",
};

interface Choice {
  readonly cell: Damage;
  chosen: boolean;
}

function damageItem(services: PanelServices, choice: Choice, changed: () => void): HTMLElement {
  const { address, now, meant, kind, notes } = choice.cell;
  const box = h("input", { type: "checkbox", checked: choice.chosen, "aria-label": "Mend this cell" });
  box.addEventListener("change", () => {
    choice.chosen = box.checked;
    changed();
  });
  return h(
    "li",
    { class: "mend-item" },
    h("p", { class: "where" }, box, " ", cellButton(services, address, "damaged")),
    codeLine("now", now),
    kind === "again" ? undefined : codeLine("meant", meant),
    [KINDS[kind], ...notes].map((text) => (text === undefined ? undefined : h("p", { class: "quiet" }, text))),
  );
}

const unmendableItem = (services: PanelServices, { address, now, why }: Unmendable): HTMLElement =>
  h(
    "li",
    { class: "mend-item" },
    h("p", { class: "where" }, cellButton(services, address, "unmendable")),
    codeLine("now", now),
    h("p", { class: "fault" }, `Not mended: ${why}${why.endsWith("?") ? "" : "."}`),
  );

function outcomeText({ outcome }: MendOutcome): string {
  if ("left" in outcome) return `not mended: ${outcome.left}`;
  if ("failing" in outcome)
    return `mended, still ${outcome.failing}${outcome.message === "" ? "" : `: ${outcome.message}`}`;
  return `mended, ${briefValue(outcome.value)}`;
}

const isWell = ({ outcome }: MendOutcome): boolean => "value" in outcome;

function outcomeParts(services: PanelServices, all: readonly MendOutcome[]): readonly Child[] {
  const well = all.filter(isWell);
  const ill = all.filter((one) => !isWell(one));
  const item = (one: MendOutcome): HTMLElement =>
    h(
      "li",
      { class: isWell(one) ? undefined : "fault" },
      cellButton(services, one.address, "mended"),
      ` ${outcomeText(one)}`,
    );
  const failing =
    ill.length === 0
      ? ""
      : ` ${counted(ill.length, "cell")} still ${ill.length === 1 ? "shows" : "show"} an error or stayed.`;
  return [
    h(
      "p",
      {},
      `${counted(well.length, "formula")} mended and ${well.length === 1 ? "calculates" : "calculate"}.${failing}`,
    ),
    longList("mended", [...ill, ...well], item),
  ];
}

function unmendableParts(services: PanelServices, all: readonly Unmendable[]): readonly Child[] {
  if (all.length === 0) return [];
  return [
    h("h4", {}, `${counted(all.length, "cell")} can't be mended`),
    longList("unmendable", all, (one) => unmendableItem(services, one)),
  ];
}

/** The list to look at before anything is written. */
function listParts(
  services: PanelServices,
  list: DamageList,
  mend: (cells: readonly Damage[]) => Promise<void>,
): readonly Child[] {
  const { damaged, unmendable } = list;
  if (damaged.length + unmendable.length === 0) return [h("p", {}, "No formula needs mending.")];
  const choices = damaged.map((cell): Choice => ({ cell, chosen: true }));
  const chosen = (): readonly Damage[] => choices.filter((one) => one.chosen).map(({ cell }) => cell);
  const label = (): string => `Mend ${counted(chosen().length, "cell")}`;
  const button = action(label(), () => (chosen().length === 0 ? undefined : mend(chosen())), {
    key: "mend chosen",
    primary: true,
  });
  const changed = (): void => {
    button.textContent = label();
  };
  const parts =
    damaged.length === 0
      ? []
      : [
          h("h4", {}, `${counted(damaged.length, "cell")} can be mended`),
          longList("damaged", choices, (choice) => damageItem(services, choice, changed)),
          h("p", { class: "actions" }, button),
        ];
  return [...parts, ...unmendableParts(services, unmendable)];
}

export function mendSection(services: PanelServices): HTMLElement {
  const result = h("div", { role: "status", class: "outcome" });
  const going = h("div", { class: "going" });
  const knowledge = mendKnowledge(services.engine.catalogue);
  const mend = (list: DamageList, cells: readonly Damage[]): Promise<void> => {
    const command = { what: "Mending the formulas", key: "mend chosen", going, result, changes: true };
    const onWritten = (): void => replace(going, h("p", { class: "quiet" }, "Reading the results…"));
    return withProgress(services, command, async (options) => {
      const outcomes = await mendCells(services.workbook, services.engine, cells, { ...options, onWritten });
      replace(going);
      return [...outcomeParts(services, outcomes), ...unmendableParts(services, list.unmendable)];
    });
  };
  const look = (): Promise<void> =>
    withProgress(services, { what: "Looking through the formulas", key: "mend", going, result }, async (options) => {
      const list = await findDamage(services.workbook, knowledge, options);
      return listParts(services, list, (cells) => mend(list, cells));
    });
  return h(
    "section",
    { "aria-labelledby": "mend-title" },
    h("h3", { id: "mend-title" }, "Mend formulas"),
    h(
      "p",
      {},
      "Finds formulas that lost their functions: without the add-in, behind the name of a lost book, with other separators, " +
        "or typed as a text. You see each one before anything is written.",
    ),
    h("p", { class: "actions" }, action("Look for damaged formulas", look, { key: "mend" })),
    going,
    result,
  );
}
