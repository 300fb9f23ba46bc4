/** What is hidden in a workbook, each thing to keep or to drop. */
import type { HiddenItem } from "../../workbook/package";
import { h, type Child } from "../elements";
import { counted } from "../model/summary";
import { tick } from "./tick";

/** More than this are shown on demand. */
const FIRST = 24;

function hiddenTick(item: HiddenItem, keeps: Map<string, boolean>, onChange: () => void): HTMLElement {
  const { id, sheet, text, kind, byDefault } = item;
  return tick(kind === "name" ? `the name ${text}` : text, {
    key: `hidden ${id}`,
    checked: keeps.get(id) ?? byDefault === "keep",
    hint: sheet,
    change: (on) => {
      keeps.set(id, on);
      onChange();
    },
  });
}

function hiddenList(items: readonly HiddenItem[], keeps: Map<string, boolean>, onChange: () => void): Child {
  const choices = items.filter(({ alwaysDropped }) => alwaysDropped !== true);
  const left = items.filter(({ alwaysDropped }) => alwaysDropped === true);
  const list = h(
    "div",
    { class: "ticks" },
    choices.slice(0, FIRST).map((item) => hiddenTick(item, keeps, onChange)),
  );
  if (choices.length > FIRST) {
    const showRest = (): void => {
      const rest = choices.slice(FIRST).map((item) => hiddenTick(item, keeps, onChange));
      more.replaceWith(...rest);
      rest[0]?.querySelector("input")?.focus();
    };
    const label = `Show ${String(choices.length - FIRST)} more`;
    const more = h("button", { type: "button", class: "cell", "data-key": "more hidden", click: showRest }, label);
    list.append(more);
  }
  const never = left.map(({ text, sheet }) => (sheet === undefined ? text : `${text} of ${sheet}`));
  return [
    choices.length === 0
      ? undefined
      : [h("p", { class: "quiet" }, "Ticked things stay in the copy, the others leave no trace."), list],
    never.length === 0 ? undefined : h("p", { class: "quiet" }, `Never in a copy: ${never.join("; ")}.`),
  ];
}

/** @param keeps whether an item is kept, by its id, where the user said so: changed in place */
export function hiddenThings(items: readonly HiddenItem[], keeps: Map<string, boolean>, onChange: () => void): Child {
  if (items.length === 0) return undefined;
  return h(
    "details",
    { "data-key": "hidden", class: "hidden-things" },
    h("summary", { "data-key": "hidden summary" }, `What is hidden: ${counted(items.length, "thing")}`),
    h(
      "fieldset",
      {},
      h("legend", { class: "unseen" }, "What to keep of what is hidden"),
      hiddenList(items, keeps, onChange),
    ),
  );
}
