/** Where the charts of the sheet in front are on the screen: the sheet engine draws cells alone. */
import { ICommandService, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import type { Nullable, Univer, Workbook } from "@univerjs/core";
import { IRenderManagerService, SHEET_VIEWPORT_KEY } from "@univerjs/engine-render";
import type { IRender, SpreadsheetSkeleton } from "@univerjs/engine-render";
import { SheetSkeletonManagerService } from "@univerjs/sheets-ui";

import type { SheetChart } from "../../sheets/sheet";
import { parseCells } from "../../workbook/reader/reference";
import { sheetCharts } from "./sheetData";

/** Pixels from the upper left corner of the drawn sheet. */
export interface ScreenBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface ChartsView {
  readonly sheet: string;
  /** The element into which the sheet is drawn. */
  readonly canvas: HTMLElement;
  /** The part of it that scrolls: without headers and frozen cells. */
  readonly clip: ScreenBox;
  readonly places: readonly ScreenBox[];
}

export interface ChartScreen {
  /** The sheet in front and its charts, as they lie now; it is asked for after changes. */
  charts(): { readonly sheet: string; readonly charts: readonly SheetChart[] };
  /** Where cells are now; undefined before the sheet is drawn. */
  view(places: readonly string[]): ChartsView | undefined;
  /** Whatever the engine does may move them: it scrolls by commands too. */
  onMove(call: () => void): void;
}

function boxOf(place: string, skeleton: SpreadsheetSkeleton): ScreenBox {
  const { row = 0, column = 0, rows = 1, columns = 1 } = parseCells(place) ?? {};
  const first = skeleton.getNoMergeCellWithCoordByIndex(row, column);
  const last = skeleton.getNoMergeCellWithCoordByIndex(row + rows - 1, column + columns - 1);
  return { left: first.startX, top: first.startY, width: last.endX - first.startX, height: last.endY - first.startY };
}

/** The engine makes a sheet's parts one after the other: before all are there, asking for one throws. */
function skeletonOf(render: IRender): SpreadsheetSkeleton | undefined {
  try {
    return render.with(SheetSkeletonManagerService).getCurrentSkeleton() ?? undefined;
  } catch {
    return undefined;
  }
}

function viewOf(render: IRender, sheet: string, areas: readonly string[]): ChartsView | undefined {
  const skeleton = skeletonOf(render);
  const main = render.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  if (!skeleton || main === undefined) return undefined;
  const { scaleX, scaleY } = render.scene.getAncestorScale();
  const { left, top, viewportScrollX, viewportScrollY } = main;
  const canvas = render.engine.getCanvasElement();
  const [x, y] = [left * scaleX, top * scaleY];
  return {
    sheet,
    canvas,
    clip: { left: x, top: y, width: canvas.clientWidth - x, height: canvas.clientHeight - y },
    places: areas.map((area) => {
      const box = boxOf(area, skeleton);
      return {
        left: (box.left - viewportScrollX) * scaleX,
        top: (box.top - viewportScrollY) * scaleY,
        width: box.width * scaleX,
        height: box.height * scaleY,
      };
    }),
  };
}

export function chartScreen(univer: Univer): ChartScreen {
  const injector = univer.__getInjector();
  const instances = injector.get(IUniverInstanceService);
  const renders = injector.get(IRenderManagerService);
  const front = (): Nullable<Workbook> => instances.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  return {
    charts() {
      const sheet = front()?.getActiveSheet();
      return sheet ? { sheet: sheet.getName(), charts: sheetCharts(sheet.getConfig()) } : { sheet: "", charts: [] };
    },
    view(areas) {
      const workbook = front();
      const render = workbook ? renders.getRenderById(workbook.getUnitId()) : null;
      return workbook && render ? viewOf(render, workbook.getActiveSheet().getName(), areas) : undefined;
    },
    onMove(call) {
      injector.get(ICommandService).onCommandExecuted(call);
    },
  };
}
