/** Cells that say a check's state look like it, whatever they say next: only the screen knows, the cell keeps its style. */
import { InterceptorEffectEnum, type IDisposable, type IStyleData, type Univer } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { STATE_LOOKS, stateOf } from "../../sheets/states";
import { saysState } from "./cellValue";

export const showStates = (univer: Univer): IDisposable =>
  univer
    .__getInjector()
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      id: "warmback-states",
      effect: InterceptorEffectEnum.Style,
      handler: (cell, location, next) => {
        const state = saysState(cell) ? stateOf(cell?.v) : undefined;
        if (state === undefined) return next(cell);
        const { color, fill } = STATE_LOOKS[state];
        const own = location.workbook.getStyles().getStyleByCell(cell) ?? {};
        const style: IStyleData = { ...own, cl: { rgb: color }, bg: { rgb: fill } };
        return next({ ...cell, s: style });
      },
    });
