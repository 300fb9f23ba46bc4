/** Tabs: one stop for the Tab key; arrows, Home and End move between tabs and show the view at once. */
import type { View } from "./services";
import { h } from "./elements";
import type { PaneVisibility } from "./visibility";

export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly view: View;
}

const MOVES: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowRight: (at, count) => (at + 1) % count,
  ArrowLeft: (at, count) => (at + count - 1) % count,
  Home: () => 0,
  End: (_at, count) => count - 1,
};

/** The tab list and its panels; the first tab's view shows as soon as the pane does. */
export function tabs(all: readonly Tab[], label: string, visibility: PaneVisibility): readonly HTMLElement[] {
  const buttons = all.map(({ id, label: name }, at) =>
    h(
      "button",
      { type: "button", role: "tab", id: `tab-${id}`, "aria-controls": `view-${id}`, click: () => choose(at) },
      name,
    ),
  );
  const panels = all.map(({ id, view }) =>
    h("div", { role: "tabpanel", id: `view-${id}`, "aria-labelledby": `tab-${id}` }, view.root),
  );
  let chosen: number | undefined;

  function choose(at: number): void {
    if (chosen === at) return;
    const before = chosen === undefined ? undefined : all[chosen];
    chosen = at;
    for (const [place, button] of buttons.entries()) {
      button.setAttribute("aria-selected", String(place === at));
      button.tabIndex = place === at ? 0 : -1;
    }
    for (const [place, panel] of panels.entries()) panel.hidden = place !== at;
    before?.view.hide();
    if (visibility.shown()) all[at]?.view.show();
  }

  // In a shared runtime the page outlives its closed pane: the view pauses until it shows again.
  visibility.onChange((shown) => {
    const view = chosen === undefined ? undefined : all[chosen]?.view;
    if (shown) view?.show();
    else view?.hide();
  });

  const keydown = (event: Event): void => {
    if (!(event instanceof KeyboardEvent) || chosen === undefined) return;
    const move = MOVES[event.key];
    if (move === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const at = move(chosen, all.length);
    choose(at);
    buttons[at]?.focus();
  };
  const list = h("div", { role: "tablist", class: "tabs", "aria-label": label, keydown }, buttons);
  choose(0);
  return [list, ...panels];
}
