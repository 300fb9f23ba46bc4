/** What was typed into a cell whose formula is written otherwise for the engine. */
import type { ICellData, Nullable } from "@univerjs/core";

interface TypedFormula {
  readonly source: string;
  readonly formula: string;
}

/** What was typed, where the cell's formula is still the one that was made of it. */
export const typedOf = (cell: Nullable<ICellData>, formula: string): string | undefined => {
  const typed = cell?.custom?.["typed"] as TypedFormula | undefined;
  return typed?.formula === formula ? typed.source : undefined;
};
