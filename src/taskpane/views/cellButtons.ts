/** Buttons that go to cells. */
import type { Address } from "../../workbook/port";
import { addressText, cellsText } from "../../workbook/reader/reference";
import type { PanelServices } from "../services";
import { h } from "../elements";

const button = (services: PanelServices, address: Address, key: string, shown: string): HTMLElement => {
  const text = addressText(address);
  const click = (): void => void services.goTo(address);
  const properties = {
    type: "button",
    class: "cell",
    "data-key": `${key}@${text}`,
    "aria-label": `Go to ${text}`,
    click,
  };
  const made = h("button", properties, shown);
  void services.labels.of(address).then((label) => {
    if (label === "") return;
    made.append(h("span", { class: "cell-label" }, ` ${label}`));
    made.setAttribute("aria-label", `Go to ${text}, ${label}`);
  });
  return made;
};

/** A cell's address as a button that goes there. */
export const cellButton = (services: PanelServices, address: Address, key: string): HTMLElement =>
  button(services, address, key, addressText(address));

const FIRST = 24;

/** The cells of one sheet; if there are many, the first ones and a button that shows the rest. */
function cellList(services: PanelServices, cells: readonly Address[], key: string): HTMLElement {
  const item = (address: Address): HTMLElement =>
    h("li", {}, button(services, address, key, cellsText({ ...address, rows: 1, columns: 1 })));
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

/** Cells as buttons, grouped below the name of their sheet. */
export function cellButtons(services: PanelServices, cells: readonly Address[], key: string): HTMLElement {
  const sheets = new Map<string, Address[]>();
  for (const address of cells) {
    const own = sheets.get(address.sheet);
    if (own === undefined) sheets.set(address.sheet, [address]);
    else own.push(address);
  }
  return h(
    "ul",
    { class: "plain" },
    [...sheets].map(([sheet, own]) =>
      h("li", {}, h("p", { class: "sheet-name" }, sheet), cellList(services, own, `${key} ${sheet}`)),
    ),
  );
}
