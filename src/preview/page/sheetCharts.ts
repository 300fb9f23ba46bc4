/** Draws the charts of the sheet in front over its cells: they scroll with them and follow what the cells hold. */
import type * as Pictures from "../../taskpane/pictures";
import { legend } from "../../taskpane/pictures/legendList";
import { h } from "../../taskpane/elements";
import type { SheetChart } from "../../sheets/sheet";
import { parseCells } from "../../workbook/reader/reference";
import type { SheetBook } from "../host/sheetBook";
import type { ChartScreen, ChartsView, ScreenBox } from "../univer/chartPlaces";
import { sheetPicture } from "./sheetPicture";

/** Height of a chart's title and legend, in pixels. */
const AROUND = 62;

interface Shown {
  readonly root: HTMLElement;
  /** What is drawn: nothing is drawn twice. */
  drawn: string;
}

function put(element: HTMLElement, { left, top, width, height }: ScreenBox): void {
  element.style.transform = `translate(${left}px, ${top}px)`;
  element.style.width = `${width}px`;
  element.style.height = `${height}px`;
}

function draw(shown: Shown, chart: SheetChart, at: ScreenBox, { sheet, book, pictures }: Drawer): void {
  const picture = sheetPicture(chart, (area) => {
    const cells = parseCells(area);
    return cells === undefined ? [] : book.read({ sheet, ...cells }).values.flat();
  });
  const [width, height] = [Math.round(at.width) - 16, Math.round(at.height) - AROUND];
  const key = JSON.stringify([picture, width, height]);
  if (key === shown.drawn || width < 120 || height < 60) return;
  shown.drawn = key;
  const { svg } = pictures.drawnWithScale(picture, width, height);
  shown.root.replaceChildren(h("figcaption", {}, chart.title), ...[legend(picture) ?? []].flat(), svg);
}

interface Drawer {
  readonly sheet: string;
  readonly book: SheetBook;
  readonly pictures: typeof Pictures;
}

const NOTHING: ReturnType<ChartScreen["charts"]> = { sheet: "", charts: [] };

/** @param work the element around the sheet */
export function showSheetCharts(book: SheetBook, screen: ChartScreen, work: HTMLElement): void {
  const layer = h("div", {
    class: "sheet-charts panel",
    role: "group",
    "aria-label": "Charts of the sheet",
    hidden: true,
  });
  work.append(layer);
  const sizes = new ResizeObserver(() => changed());
  let front = NOTHING;
  let all: readonly Shown[] = [];
  let pictures: typeof Pictures | undefined;
  let [isDue, isStale] = [false, true];

  const settle = (): void => {
    front = screen.charts();
    all = front.charts.map(() => ({ root: h("figure", { class: "pictures" }), drawn: "" }));
    layer.replaceChildren(...all.map(({ root }) => root));
  };
  const place = ({ canvas, clip, places }: ChartsView): void => {
    const [own, around] = [canvas.getBoundingClientRect(), work.getBoundingClientRect()];
    put(layer, { ...clip, left: own.left - around.left + clip.left, top: own.top - around.top + clip.top });
    for (const [at, box] of places.entries()) {
      const shown = all[at];
      if (shown === undefined) continue;
      put(shown.root, { ...box, left: box.left - clip.left, top: box.top - clip.top });
      // Its rows are folded.
      shown.root.hidden = box.height < 1;
    }
  };
  const update = (): void => {
    isDue = false;
    const now = screen.charts();
    if (now.sheet !== front.sheet || JSON.stringify(now.charts) !== JSON.stringify(front.charts)) settle();
    const view = front.charts.length === 0 ? undefined : screen.view(front.charts.map(({ place: area }) => area));
    layer.hidden = view === undefined;
    if (view === undefined) return;
    // It takes its size after the element around it.
    sizes.observe(view.canvas);
    place(view);
    if (pictures === undefined) return void load();
    for (const [at, chart] of front.charts.entries()) {
      const [shown, box] = [all[at], view.places[at]];
      if (shown !== undefined && box !== undefined && (isStale || shown.drawn === ""))
        draw(shown, chart, box, { sheet: front.sheet, book, pictures });
    }
    isStale = false;
  };
  const later = (): void => {
    if (isDue) return;
    isDue = true;
    requestAnimationFrame(update);
  };
  const load = async (): Promise<void> => {
    pictures = await import(/* webpackChunkName: "pictures" */ "../../taskpane/pictures");
    isStale = true;
    later();
  };
  const changed = (): void => {
    isStale = true;
    later();
  };
  screen.onMove(later);
  book.onChange(changed);
  sizes.observe(work);
  later();
}
