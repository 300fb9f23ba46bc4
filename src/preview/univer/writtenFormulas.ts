/** What a write changes of a sheet's formulas (engine 0.25.1): the engine lists all formulas of the workbook for it. */
import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from "@univerjs/core";
import { isFormulaId, isFormulaString, ObjectMatrix } from "@univerjs/core";
import type { IUniverInstanceService, Workbook } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";

type Cells = IObjectMatrixPrimitiveType<Nullable<ICellData>>;
type Formulas = IObjectMatrixPrimitiveType<{ f: string } | null>;

interface Model {
  readonly _univerInstanceService: IUniverInstanceService;
  getSheetFormulaData(unit: string, sheet: string): object;
}

type Update = (this: Model, unit: string, sheet: string, cells: Cells) => Formulas;

const prototype = FormulaDataModel.prototype as unknown as { updateFormulaData: Update };

/** The engine's own way. */
export const updateOfEngine = prototype.updateFormulaData;

/** Formulas that were filled into neighbours share one text by an id. */
function hasShared(cells: ObjectMatrix<Nullable<ICellData>>): boolean {
  let found = false;
  cells.forValue((_row, _column, cell) => {
    found ||= isFormulaId(cell?.si);
    return !found;
  });
  return found;
}

/** As the engine does it, from the written cells and what they hold before. */
function updateOfCells(held: ObjectMatrix<Nullable<ICellData>>, written: ObjectMatrix<Nullable<ICellData>>): Formulas {
  const changed = new ObjectMatrix<{ f: string } | null>();
  written.forValue((row, column, cell) => {
    const formula = cell?.f ?? "";
    if (isFormulaString(formula)) changed.setValue(row, column, { f: formula });
    else if (isFormulaString(held.getValue(row, column)?.f)) changed.setValue(row, column, null);
  });
  return changed.getMatrix();
}

export const updateOfSheet: Update = function updateFormulaData(unit, sheet, cells) {
  const worksheet = this._univerInstanceService.getUnit<Workbook>(unit)?.getSheetBySheetId(sheet);
  if (!worksheet) return updateOfEngine.call(this, unit, sheet, cells);
  const [held, written] = [worksheet.getCellMatrix(), new ObjectMatrix(cells)];
  if (!hasShared(written) && !hasShared(held)) return updateOfCells(held, written);
  const getFormulaData = () => ({ [unit]: { [sheet]: this.getSheetFormulaData(unit, sheet) } });
  const ofSheet = Object.create(this, { getFormulaData: { value: getFormulaData } }) as Model;
  return updateOfEngine.call(ofSheet, unit, sheet, cells);
};

export function readWrittenSheetOnly(): void {
  prototype.updateFormulaData = updateOfSheet;
}
