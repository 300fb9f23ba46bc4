/** F6 and Shift+F6 go round the page's areas: in the grid every other key belongs to the sheet. */

export interface PageArea {
  readonly element: HTMLElement;
  /** Puts the focus into it; false where nothing in it can take any now. */
  enter(): boolean;
}

const FOCUSABLE =
  "a[href], button:not(:disabled), select:not(:disabled), input:not(:disabled), summary, [tabindex]:not([tabindex='-1'])";

const isShown = (element: HTMLElement): boolean => element.getClientRects().length > 0;

/** Puts the focus on the first element in an area that can take it, the selected tab before others. */
export function focusFirst(area: HTMLElement): boolean {
  const all = [...area.querySelectorAll<HTMLElement>(FOCUSABLE)].filter(isShown);
  const first = all.find((each) => each.getAttribute("aria-selected") === "true") ?? all[0];
  first?.focus();
  return first !== undefined;
}

/** The sheet's editor and menus lie outside its element; what is in no other area is the sheet's. */
const placeOf = (areas: readonly PageArea[], sheet: number): number => {
  const { activeElement } = document;
  if (activeElement === null || activeElement === document.body) return -1;
  const place = areas.findIndex(({ element }) => element.contains(activeElement));
  return place < 0 ? sheet : place;
};

/**
 * @param areas in the order in which F6 goes round
 * @param sheet the place of the sheet among them
 */
export function cycleAreas(areas: readonly PageArea[], sheet: number): void {
  const go = (direction: 1 | -1): void => {
    const from = placeOf(areas, sheet);
    const start = from < 0 && direction < 0 ? 0 : from;
    for (let step = 1; step <= areas.length; step += 1) {
      const to = (start + direction * step + 2 * areas.length) % areas.length;
      if (areas[to]?.enter() === true) return;
    }
  };
  // Before the sheet, which takes every key.
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      go(event.shiftKey ? -1 : 1);
    },
    { capture: true },
  );
}
