/** What is changed in a workbook, and what the report says of it. */
import type { Address, Area, CellValue } from "../../port";

export type CellContent =
  /** A value; null empties the cell. A text is a text, whatever it begins with. */
  | { readonly kind: "value"; readonly value: CellValue }
  /** A formula in its stored form, without "=", with its result; `spill` holds what an array formula fills, its own cell included. */
  | {
      readonly kind: "formula";
      readonly formula: string;
      readonly value: CellValue;
      readonly spill?: readonly (readonly CellValue[])[];
    }
  /** The formula stays and has this result now. */
  | { readonly kind: "result"; readonly value: CellValue }
  /** The formula goes; the cell holds the value given, or the one that the file has. */
  | { readonly kind: "frozen"; readonly value?: CellValue };

export interface CellChange extends Address {
  readonly content?: CellContent;
  /** A number format's code; the cell's other looks stay. */
  readonly format?: string;
}

export interface PatchOptions {
  /**
   * What is done with our calls in names, validations, conditional formats and calculated columns. They are listed,
   * unless they are ignored.
   */
  readonly ours?: "keep" | "freeze" | "ignore";
  /** Values for names that hold calls of ours, by the name in lower case, where they are frozen. */
  readonly nameValues?: ReadonlyMap<string, CellValue>;
  /** Whether the next program that opens the file recalculates all of it; by default where a content changed. */
  readonly recalculate?: boolean;
}

/** A formula outside the cells. */
export interface OutsideFormula {
  readonly kind: "name" | "validation" | "conditional format" | "calculated column" | "totals row";
  readonly sheet?: string;
  /** A name, or the cells. */
  readonly where: string;
  readonly formula: string;
}

export interface PatchReport {
  /** Arrays, spills and what-if tables that became values, since one of their cells changed. */
  readonly frozenAreas: readonly Area[];
  /** How many groups of shared formulas were written out. */
  readonly expandedGroups: number;
  /** Cells of groups whose formula can't be moved: they hold their values now. */
  readonly frozenCells: readonly Address[];
  /** Our calls outside the cells. */
  readonly outside: readonly OutsideFormula[];
  /** For the user, each a whole sentence. */
  readonly sentences: readonly string[];
}
