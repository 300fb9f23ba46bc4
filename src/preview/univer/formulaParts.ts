/**
 * The formulas that a calculation goes through, part by part. The engine lists all of the workbook's in one piece before
 * each calculation (0.25.1).
 */
import { isFormulaId, isFormulaString, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import type { ICellData, Injector, IObjectMatrixPrimitiveType, Nullable, Workbook } from "@univerjs/core";
import { CalculateController } from "@univerjs/engine-formula";
import type { FormulaDataModel } from "@univerjs/engine-formula";

export type ListedFormulas = Readonly<
  Record<number, Readonly<Record<number, { readonly f?: string; readonly si?: string } | null>> | undefined>
>;
export type UnitFormulas = Readonly<Record<string, Readonly<Record<string, ListedFormulas | null>> | null>>;

export interface FormulaPart {
  readonly unit: string;
  readonly sheet: string;
  readonly formulas: ListedFormulas;
}

type Cells = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

/** Rows of a sheet that are listed at a time. */
const ROWS = 200;

/** What a calculation gets in place of the list of all formulas. */
const NOT_LISTED: UnitFormulas = Object.freeze({});

/** A row's formulas; undefined where one of them shares its text with others. */
function formulasOfRow(line: Readonly<Record<number, Nullable<ICellData>>>): ListedFormulas[number] | undefined {
  const formulas: Record<number, { readonly f: string }> = {};
  for (const [column, cell] of Object.entries(line)) {
    if (isFormulaId(cell?.si)) return undefined;
    const text = cell?.f ?? "";
    if (isFormulaString(text)) formulas[Number(column)] = { f: text };
  }
  return formulas;
}

/** Rows from one on, which the engine must see together: formulas in them share their text. */
const rowsFrom = (row: number, all: ListedFormulas): ListedFormulas =>
  Object.fromEntries(Object.entries(all).filter(([one]) => Number(one) >= row));

/** @param all lists the sheet in one piece */
function* partsOfSheet(cells: Cells, all: () => ListedFormulas): Generator<ListedFormulas> {
  let part: Record<number, ListedFormulas[number]> = {};
  for (const [at, row] of Object.keys(cells).map(Number).entries()) {
    if (at > 0 && at % ROWS === 0) {
      yield part;
      part = {};
    }
    const formulas = formulasOfRow(cells[row] ?? {});
    if (formulas === undefined) {
      yield part;
      yield rowsFrom(row, all());
      return;
    }
    part[row] = formulas;
  }
  yield part;
}

/** @returns the parts of what the engine hands over as its list */
export function listInParts(injector: Injector): (list: UnitFormulas) => Iterable<FormulaPart> {
  const controller = injector.get(CalculateController) as unknown as { _formulaDataModel: FormulaDataModel };
  const model = controller._formulaDataModel;
  controller._formulaDataModel = new Proxy(model, {
    get: (target, key): unknown => (key === "getFormulaData" ? () => NOT_LISTED : Reflect.get(target, key)),
  });
  const instances = injector.get(IUniverInstanceService);
  function* everything(): Generator<FormulaPart> {
    for (const workbook of instances.getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET)) {
      const unit = workbook.getUnitId();
      for (const worksheet of workbook.getSheets()) {
        const sheet = worksheet.getSheetId();
        const all = (): ListedFormulas => model.getSheetFormulaData(unit, sheet) as ListedFormulas;
        for (const formulas of partsOfSheet(worksheet.getCellMatrix().getMatrix(), all))
          yield { unit, sheet, formulas };
      }
    }
  }
  function* listed(list: UnitFormulas): Generator<FormulaPart> {
    for (const [unit, sheets] of Object.entries(list))
      for (const [sheet, formulas] of Object.entries(sheets ?? {})) yield { unit, sheet, formulas: formulas ?? {} };
  }
  return (list) => (list === NOT_LISTED ? everything() : listed(list));
}
