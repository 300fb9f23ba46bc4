/** Cells whose entry breaks their rule look like it: only the screen knows, the cell keeps its style. */
import { InterceptorEffectEnum, type ICellData, type IDisposable, type IStyleData, type Univer } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { entryFault } from "../file/entryFault";
import { plainValue, validationOf } from "./cellValue";

const INVALID: IStyleData = { cl: { rgb: "#9c0006" }, bg: { rgb: "#ffc7ce" } };

export function isInvalid(cell: ICellData, row: number, column: number): boolean {
  const rule = validationOf(cell);
  // A formula's result isn't an entry.
  if (rule === undefined || (cell.f ?? cell.si ?? "") !== "") return false;
  return entryFault(rule, plainValue(cell), { row, column }) !== undefined;
}

export const showInvalid = (univer: Univer): IDisposable =>
  univer
    .__getInjector()
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      id: "warmback-invalid",
      effect: InterceptorEffectEnum.Style,
      handler: (cell, location, next) => {
        const { rawData, row, col, workbook } = location;
        if (rawData === null || rawData === undefined || !isInvalid(rawData, row, col)) return next(cell);
        const own = workbook.getStyles().getStyleByCell(cell) ?? {};
        return next({ ...cell, s: { ...own, ...INVALID } });
      },
    });
