/** Formulas that are typed or written, as the engine takes them; the cell keeps what was typed. */
import type { ICellData, IDisposable } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { Address } from "../../workbook/port";
import type { OpenBook } from "./open";

/** As the engine takes a formula; undefined where it stays as it is. */
type FormulaReader = (formula: string, at: Address) => string | undefined;

interface Written {
  readonly subUnitId: string;
  readonly cellValue?: Readonly<Record<number, Readonly<Record<number, ICellData | null>>>>;
}

interface TypedFormulas extends IDisposable {
  read(reader: FormulaReader | undefined): void;
}

export function typedFormulas(open: OpenBook): TypedFormulas {
  let reader: FormulaReader | undefined;
  const listener = open.services.commands.beforeCommandExecuted((command, options) => {
    if (reader === undefined || command.id !== SetRangeValuesMutation.id || open.replacing()) return;
    if (options?.["applyFormulaCalculationResult"] === true) return;
    const { subUnitId, cellValue = {} } = command.params as Written;
    const sheet = open.workbook().getSheetBySheetId(subUnitId);
    if (sheet === null || sheet === undefined) return;
    for (const [row, line] of Object.entries(cellValue))
      for (const [column, cell] of Object.entries(line)) {
        const source = cell?.f ?? "";
        if (cell === null || source === "") continue;
        const at = { sheet: sheet.getName(), row: Number(row), column: Number(column) };
        const formula = reader(source, at);
        if (formula === undefined || formula === source) continue;
        const before = sheet.getCellMatrix().getValue(at.row, at.column)?.custom;
        cell.f = formula;
        cell.custom = { ...before, ...cell.custom, typed: { source, formula } };
      }
  });
  return { read: (one) => void (reader = one), dispose: () => listener.dispose() };
}
