/** A list that shows its first items and, behind a button, all the others. */
import { h, type Child } from "../elements";

/** So many items are shown before the button. */
export const FIRST_ITEMS = 24;

/** After the button so many more at a time: thousands at once would stop the page. */
const NEXT_ITEMS = 500;

export function longList<T>(key: string, all: readonly T[], item: (one: T) => HTMLElement): HTMLElement {
  const list = h("ul", { class: "plain" });
  let shown = 0;
  const extend = (count: number): HTMLElement | undefined => {
    const items = all.slice(shown, shown + count).map(item);
    shown += items.length;
    list.append(...items);
    if (shown < all.length) list.append(more());
    return items[0];
  };
  const more = (): HTMLElement => {
    const row = h("li");
    const click = (): void => {
      const first = extend(NEXT_ITEMS);
      row.remove();
      first?.querySelector<HTMLElement>("button, input")?.focus();
    };
    const label: Child = `Show ${String(Math.min(NEXT_ITEMS, all.length - shown))} more`;
    row.append(h("button", { type: "button", class: "cell", "data-key": `${key} more`, click }, label));
    return row;
  };
  extend(FIRST_ITEMS);
  return list;
}
