/** Buttons that go to cells. */
import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import type { Desk } from "../desk";
import { h } from "../elements";

/** A cell's address as a button that goes there. */
export const cellButton = (desk: Desk, address: Address, key: string): HTMLElement => {
  const text = addressText(address);
  const click = (): void => void desk.goTo(address);
  return h(
    "button",
    { type: "button", class: "cell", "data-key": `${key}@${text}`, "aria-label": `Go to ${text}`, click },
    text,
  );
};

const FIRST = 24;

/** Cells as a list of buttons; of many the first, and one more button that shows the rest. */
export function cellButtons(desk: Desk, cells: readonly Address[], key: string): HTMLElement {
  const item = (address: Address): HTMLElement => h("li", {}, cellButton(desk, address, key));
  const list = h("ul", { class: "cells" }, cells.slice(0, FIRST).map(item));
  if (cells.length <= FIRST) return list;
  const rest = cells.slice(FIRST);
  const more = h("li");
  const showRest = (): void => {
    const items = rest.map(item);
    more.replaceWith(...items);
    items[0]?.querySelector("button")?.focus();
  };
  const label = `Show ${String(rest.length)} more`;
  more.append(h("button", { type: "button", class: "cell", "data-key": `${key} more`, click: showRest }, label));
  list.append(more);
  return list;
}
