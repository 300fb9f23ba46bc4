/** What a workbook part says, as plain data. Rows and columns count from 0, sheets in the order of their tabs. */
import type { Area } from "../../port";

export type SheetKind = "worksheet" | "chartsheet" | "dialogsheet" | "macrosheet";
export type SheetState = "visible" | "hidden" | "veryHidden";

export interface SheetEntry {
  readonly name: string;
  readonly kind: SheetKind;
  readonly state: SheetState;
  readonly path: string;
  readonly relationId: string;
  readonly sheetId: string;
}

export interface NameEntry {
  readonly name: string;
  /** The sheet that alone knows it. */
  readonly sheet?: string;
  /** The whole formula as the file keeps it, without "=". */
  readonly formula: string;
  readonly hidden: boolean;
  readonly comment?: string;
  /** Print_Area, Print_Titles, _FilterDatabase and the like, without their prefix. */
  readonly builtIn?: string;
  /** A macro, not a value. */
  readonly macro: boolean;
}

export interface CalculationFacts {
  readonly mode: "automatic" | "manual" | "exceptTables";
  readonly iterate: boolean;
  readonly iterations: number;
  readonly largestChange: number;
  /** False: precision as displayed. */
  readonly fullPrecision: boolean;
  readonly fullCalcOnLoad: boolean;
}

export interface ExternalLink {
  /** As formulas count it: [1]. */
  readonly number: number;
  readonly path: string;
  readonly kind: "workbook" | "dde" | "ole" | "other";
  /** Never followed. */
  readonly target: string | undefined;
}

export interface TableColumn {
  readonly name: string;
  readonly calculated?: string;
  readonly totals?: string;
}

export interface TableFacts {
  readonly name: string;
  readonly sheet: string;
  readonly path: string;
  readonly area: Area;
  readonly headerRows: number;
  readonly totalsRows: number;
  readonly columns: readonly TableColumn[];
}

export interface BookFacts {
  readonly path: string;
  /** ISO/IEC 29500 strict: the same elements in other namespaces. */
  readonly strict: boolean;
  readonly macros: boolean;
  readonly signed: boolean;
  readonly date1904: boolean;
  readonly calculation: CalculationFacts;
  readonly sheets: readonly SheetEntry[];
  readonly activeSheet: number;
  readonly names: readonly NameEntry[];
  readonly tables: readonly TableFacts[];
  readonly externalLinks: readonly ExternalLink[];
  /** Sheets can't be added, moved or renamed. */
  readonly structureLocked: boolean;
  readonly styles: StyleFacts;
}

export interface StoredStyle {
  readonly numberFormatId: number;
  /** The format's code: "General", "0.00", … */
  readonly numberFormat: string;
  readonly quotePrefix: boolean;
  readonly locked: boolean;
  readonly hiddenFormula: boolean;
}

export interface StyleFacts {
  readonly path: string | undefined;
  /** By the index that cells carry. */
  readonly cells: readonly StoredStyle[];
}
