/** What a sheet holds, as plain data. Rows and columns count from 0. */
import type { Area, CellValue } from "../../port";

type Cells = Omit<Area, "sheet">;

export type FileFormula =
  /** In its stored form, without "=": functions newer than the format keep their prefixes. */
  | { readonly kind: "normal"; readonly text: string }
  /** One cell of a group; the text is the group's, moved to this cell. */
  | { readonly kind: "shared"; readonly text: string; readonly group: number }
  /** The first cell of an array; `dynamic` where it spills. Old ones were typed with Ctrl+Shift+Enter. */
  | { readonly kind: "array"; readonly text: string; readonly area: Cells; readonly dynamic: boolean }
  /** A what-if table. */
  | { readonly kind: "dataTable"; readonly area: Cells; readonly inputs: readonly string[] }
  /** Filled by the array or the what-if table whose first cell this is. */
  | { readonly kind: "filled"; readonly by: { readonly row: number; readonly column: number } }
  /** One cell of a group whose formula can't be moved. */
  | { readonly kind: "unreadable"; readonly text: string };

export interface FileCell {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  /** How the file types the value: n, s, str, inlineStr, b, e or d. */
  readonly type: string;
  readonly formula?: FileFormula;
  /** Index into the workbook's cell styles. */
  readonly style: number;
  /** Index into the cell metadata: dynamic arrays. */
  readonly cellMetadata?: number;
  /** Index into the value metadata: pictures in cells, linked data. */
  readonly valueMetadata?: number;
}

export interface ColumnFacts {
  readonly first: number;
  readonly last: number;
  readonly width?: number;
  readonly hidden: boolean;
  readonly outline: number;
}

export interface RowFacts {
  readonly row: number;
  readonly height?: number;
  readonly hidden: boolean;
  readonly outline: number;
}

export interface ValidationFacts {
  readonly areas: string;
  readonly type: string;
  readonly formulas: readonly string[];
  readonly operator?: string;
  readonly allowBlank?: true;
  readonly showInputMessage?: true;
  readonly showErrorMessage?: true;
  readonly promptTitle?: string;
  readonly prompt?: string;
  readonly errorTitle?: string;
  readonly error?: string;
  readonly errorStyle?: string;
}

export interface FormatRuleFacts {
  readonly areas: string;
  readonly type: string;
  readonly formulas: readonly string[];
}

export interface StoredSheetFacts {
  readonly name: string;
  readonly columns: readonly ColumnFacts[];
  /** Rows with a height, hidden or with an outline level. */
  readonly rows: readonly RowFacts[];
  readonly merged: readonly Cells[];
  readonly validations: readonly ValidationFacts[];
  readonly formatRules: readonly FormatRuleFacts[];
  readonly protected: boolean;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly filter?: string;
  /** The other children of the sheet by name, for what is not read here. */
  readonly elements: readonly string[];
}
