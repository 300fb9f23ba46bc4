/** Buttons beside the rows under which others fold, and in the line above the grid, where the keyboard reaches them. */
import { h } from "../../taskpane/elements";
import type { SheetBook } from "../host/sheetBook";
import type { ChartScreen } from "../univer/chartPlaces";
import type { FoldingRows, FoldScreen } from "../univer/foldedRows";

/** Width of a button in the numbers of the rows, in pixels. */
const WIDTH = 15;

const sign = ({ isFolded }: FoldingRows): string => (isFolded ? "▸" : "▾");

const nameOf = ({ isFolded, label }: FoldingRows): string => `${isFolded ? "Unfold" : "Fold"} ${label}`;

interface FoldBook extends Pick<SheetBook, "selection" | "select" | "onSelection" | "onChange"> {
  readonly charts: ChartScreen;
  readonly folds: FoldScreen;
}

/** The innermost group of a row: its heading counts as one of its rows. */
const groupAt = (groups: readonly FoldingRows[], row: number): FoldingRows | undefined =>
  groups.filter(({ first, last }) => first - 1 <= row && row <= last).at(-1);

const besideButton = (group: FoldingRows, click: () => void): HTMLElement =>
  h(
    "button",
    { type: "button", tabindex: "-1", title: nameOf(group), "aria-label": nameOf(group), click },
    sign(group),
  );

const lineButton = (text: string, click: () => void): HTMLElement => h("button", { type: "button", click }, text);

/**
 * @param work the element around the sheet
 * @param line where the buttons for the selected cell go
 */
export function showSheetFolds(book: FoldBook, work: HTMLElement, line: HTMLElement): void {
  const { charts, folds } = book;
  const layer = h("div", {
    class: "sheet-folds",
    role: "group",
    "aria-label": "Fold beside the numbers of the rows",
    hidden: true,
  });
  work.append(layer);
  const sizes = new ResizeObserver(() => later());
  let isDue = false;
  let [beside, above] = ["", ""];

  const fold = (groups: readonly FoldingRows[], folded: boolean): void => {
    const cell = book.selection();
    folds.fold(groups, folded);
    // The selected cell stays in sight; from folded rows the selection goes to their heading.
    const around = groups.find(({ first, last }) => cell !== undefined && first <= cell.row && cell.row <= last);
    if (cell !== undefined)
      book.select(folded && around !== undefined ? { ...cell, row: around.first - 1, column: 0 } : cell);
    later();
  };
  const place = (groups: readonly FoldingRows[]): void => {
    const view = groups.length === 0 ? undefined : charts.view(groups.map(({ heading }) => heading));
    layer.hidden = view === undefined;
    if (view === undefined) return;
    const { canvas, clip, places } = view;
    // It takes its size after the element around it.
    sizes.observe(canvas);
    const [own, around] = [canvas.getBoundingClientRect(), work.getBoundingClientRect()];
    Object.assign(layer.style, {
      transform: `translate(${own.left - around.left}px, ${own.top - around.top + clip.top}px)`,
      width: `${WIDTH}px`,
      height: `${clip.height}px`,
    });
    for (const [at, button] of [...layer.children].entries()) {
      const { top, height } = places[at] ?? { top: 0, height: 0 };
      (button as HTMLElement).style.transform = `translateY(${top - clip.top}px)`;
      (button as HTMLElement).style.height = `${height}px`;
      (button as HTMLElement).hidden = height < 1;
    }
  };
  const drawBeside = (groups: readonly FoldingRows[]): void => {
    const now = JSON.stringify(groups);
    if (now === beside) return;
    beside = now;
    layer.replaceChildren(...groups.map((group) => besideButton(group, () => fold([group], !group.isFolded))));
  };
  const drawLine = (groups: readonly FoldingRows[]): void => {
    const cell = book.selection();
    const group = cell === undefined ? undefined : groupAt(groups, cell.row);
    const outer = groups.filter(({ isOutermost }) => isOutermost);
    const folded = outer.length > 0 && outer.every(({ isFolded }) => isFolded);
    const now = JSON.stringify([group, outer]);
    if (now === above) return;
    above = now;
    const hadFocus = [...line.children].indexOf(document.activeElement ?? line);
    line.replaceChildren(
      ...(outer.length === 0 ? [] : [lineButton(folded ? "Unfold all" : "Fold all", () => fold(outer, !folded))]),
      ...(group === undefined ? [] : [lineButton(nameOf(group), () => fold([group], !group.isFolded))]),
    );
    (line.children[hadFocus] as HTMLElement | undefined)?.focus();
  };
  const update = (): void => {
    isDue = false;
    const groups = folds.groups();
    drawBeside(groups);
    place(groups);
    drawLine(groups);
  };
  function later(): void {
    if (isDue) return;
    isDue = true;
    requestAnimationFrame(update);
  }
  charts.onMove(later);
  book.onSelection(later);
  book.onChange(later);
  sizes.observe(work);
  later();
}
