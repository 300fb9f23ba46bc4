/** The choices of the selected cell, at the cell: a button beside it and a list below it, as in other spreadsheets. */
import { h } from "../../taskpane/elements";
import type { Address } from "../../workbook/port";
import { cellsText } from "../../workbook/reader/reference";
import { listWords } from "../file/entryFault";
import type { SheetBook } from "../host/sheetBook";
import type { ScreenBox } from "../univer/chartPlaces";
import type { ScreenBook } from "../univer/screen";

type ChoiceBook = SheetBook & Pick<ScreenBook, "charts" | "focus">;

const BUTTON = 22;
const TYPED_FOR = 800;

const wordsOf = (book: SheetBook, cell: Address): readonly string[] | undefined => {
  const rule = book.validation(cell);
  return rule?.type === "list" ? listWords(rule.formulae) : undefined;
};

/** Where a cell is over the page's part that holds the sheet; undefined where it isn't in sight. */
function placeOf(book: ChoiceBook, { sheet, row, column }: Address, work: HTMLElement): ScreenBox | undefined {
  const view = book.charts.view([cellsText({ row, column, rows: 1, columns: 1 })]);
  const [box] = view?.places ?? [];
  if (view === undefined || box === undefined || view.sheet !== sheet) return undefined;
  const { clip } = view;
  const isSeen =
    box.left >= clip.left - 1 &&
    box.top >= clip.top - 1 &&
    box.left < clip.left + clip.width - BUTTON &&
    box.top + box.height <= clip.top + clip.height;
  const [own, around] = [view.canvas.getBoundingClientRect(), work.getBoundingClientRect()];
  return isSeen ? { ...box, left: box.left + own.left - around.left, top: box.top + own.top - around.top } : undefined;
}

/** The next place whose word begins as typed. */
function beginning(words: readonly string[], typed: string, from: number): number {
  const order = words.map((_, step) => (from + step) % words.length);
  return order.find((at) => words[at]?.toLowerCase().startsWith(typed)) ?? -1;
}

interface OpenList {
  readonly root: HTMLElement;
  choose(): void;
}

interface ListOptions {
  readonly name: string;
  readonly words: readonly string[];
  readonly current: string;
  chosen(word: string): void;
  closed(): void;
}

function openList({ name, words, current, chosen, closed }: ListOptions): OpenList {
  let at = Math.max(
    0,
    words.findIndex((word) => word.toLowerCase() === current.trim().toLowerCase()),
  );
  let [typed, time] = ["", 0];
  const items = words.map((word, place) =>
    h(
      "li",
      {
        role: "option",
        id: `choice-${String(place)}`,
        pointerdown: (event) => event.preventDefault(),
        click: () => chosen(word),
      },
      word,
    ),
  );
  const mark = (place: number): void => {
    at = Math.min(words.length - 1, Math.max(0, place));
    items.forEach((item, each) => item.setAttribute("aria-selected", String(each === at)));
    root.setAttribute("aria-activedescendant", `choice-${String(at)}`);
    items[at]?.scrollIntoView({ block: "nearest" });
  };
  const choose = (): void => chosen(words[at] ?? "");
  const moves: Readonly<Record<string, () => void>> = {
    ArrowDown: () => mark(at + 1),
    ArrowUp: () => mark(at - 1),
    Home: () => mark(0),
    End: () => mark(words.length - 1),
    Enter: choose,
    Tab: choose,
    Escape: closed,
  };
  const keydown = (event: Event): void => {
    if (!(event instanceof KeyboardEvent) || event.key === "F6") return;
    event.stopPropagation();
    const letter = event.key.length === 1 && !event.ctrlKey && !event.metaKey;
    if (letter) {
      typed = event.timeStamp - time < TYPED_FOR ? typed + event.key.toLowerCase() : event.key.toLowerCase();
      time = event.timeStamp;
      const found = beginning(words, typed, typed.length > 1 ? at : at + 1);
      if (found >= 0) mark(found);
    }
    const move = event.altKey && event.key === "ArrowUp" ? closed : moves[event.key];
    if (move !== undefined || letter) event.preventDefault();
    move?.();
  };
  const root = h("ul", { class: "cell-list", role: "listbox", tabindex: 0, "aria-label": name, keydown }, items);
  mark(at);
  return { root, choose };
}

/**
 * Shows the button while a cell with choices is selected; Alt+Down, the button or its click opens the list.
 * @param work the element around the sheet
 */
export function showCellChoices(book: ChoiceBook, work: HTMLElement): void {
  const button = h(
    "button",
    { type: "button", class: "cell-choose", tabindex: -1, "aria-haspopup": "listbox", hidden: true },
    "▾",
  );
  work.append(button);
  let list: OpenList | undefined;
  let cell: Address | undefined;
  const close = (): void => {
    const was = list;
    list = undefined;
    was?.root.remove();
    button.setAttribute("aria-expanded", "false");
  };
  const back = (): void => {
    close();
    book.focus();
  };
  const open = (): void => {
    const words = cell === undefined ? undefined : wordsOf(book, cell);
    const place = cell === undefined ? undefined : placeOf(book, cell, work);
    if (cell === undefined || words === undefined || place === undefined || list !== undefined) return;
    const target = cell;
    const value = book.read({ ...target, rows: 1, columns: 1 }).values[0]?.[0] ?? "";
    list = openList({
      name: `Choices for ${cellsText({ ...target, rows: 1, columns: 1 })}`,
      words,
      current: String(value),
      chosen: (word) => {
        back();
        book.write([{ ...target, content: word }]);
      },
      closed: back,
    });
    const { root } = list;
    work.append(root);
    button.setAttribute("aria-expanded", "true");
    const below = place.top + place.height;
    const fits = below + root.offsetHeight <= work.clientHeight;
    const top = fits ? below : Math.max(0, place.top - root.offsetHeight);
    root.style.transform = `translate(${String(place.left)}px, ${String(top)}px)`;
    root.style.minWidth = `${String(place.width)}px`;
    root.addEventListener("focusout", close);
    root.focus();
  };
  let due = false;
  const place = (): void => {
    due = false;
    cell = book.selection();
    const box = cell !== undefined && wordsOf(book, cell) !== undefined ? placeOf(book, cell, work) : undefined;
    button.hidden = box === undefined;
    if (box === undefined || cell === undefined) return;
    button.setAttribute("aria-label", `Choices for ${cellsText({ ...cell, rows: 1, columns: 1 })}`);
    button.style.transform = `translate(${String(box.left + box.width)}px, ${String(box.top + box.height - BUTTON)}px)`;
  };
  const later = (): void => {
    if (due) return;
    due = true;
    requestAnimationFrame(place);
  };
  book.onSelection(() => {
    if (list !== undefined) close();
    later();
  });
  book.charts.onMove(later);
  new ResizeObserver(later).observe(work);
  // Otherwise the grid would take the focus, and with it the list's end.
  button.addEventListener("pointerdown", (event) => event.preventDefault());
  button.addEventListener("click", () => (list === undefined ? open() : back()));
  addEventListener(
    "keydown",
    (event) => {
      const outside = event.target instanceof Element && event.target.closest("#side, .top, #message") !== null;
      if (outside || list !== undefined || !event.altKey || event.key !== "ArrowDown" || button.hidden) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      open();
    },
    { capture: true },
  );
  later();
}
