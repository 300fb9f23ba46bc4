import type { PrintSetUp, SheetChart } from "../../sheets/sheet";

/** A whole workbook as data: between .xlsx files, starter sheets and the sheet engine. Rows and columns count from 0. */

export type Align = "left" | "center" | "right";
export type VerticalAlign = "top" | "middle" | "bottom";
export type EdgeStyle = "thin" | "medium" | "thick" | "double" | "dotted" | "dashed" | "hair";

export interface Edge {
  readonly style: EdgeStyle;
  /** As #rrggbb. */
  readonly color: string;
}

/** How a cell looks; colours are #rrggbb, sizes are points. */
export interface CellStyle {
  readonly font?: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly color?: string;
  readonly fill?: string;
  readonly align?: Align;
  readonly verticalAlign?: VerticalAlign;
  readonly wrap?: boolean;
  /** Indented by one step. */
  readonly indent?: boolean;
  readonly edges?: Readonly<Partial<Record<"top" | "bottom" | "left" | "right", Edge>>>;
}

export type PlainValue = string | number | boolean;

/** What may be typed into a cell, in the terms of .xlsx files. */
export interface ValidationData {
  readonly type: "list" | "whole" | "decimal" | "date" | "textLength" | "custom";
  readonly operator?: string;
  readonly formulae: readonly (string | number)[];
  readonly allowBlank?: boolean;
  readonly promptTitle?: string;
  readonly prompt?: string;
  readonly errorTitle?: string;
  readonly error?: string;
  readonly errorStyle?: string;
  readonly showInputMessage?: boolean;
  readonly showErrorMessage?: boolean;
}

export interface CellData {
  readonly row: number;
  readonly column: number;
  /** What was typed, or the last result of a formula; null if the cell only has a style. */
  readonly value: PlainValue | null;
  /** Begins with "=". */
  readonly formula?: string;
  readonly format?: string;
  readonly look?: CellStyle;
  readonly validation?: ValidationData;
  /** It says a check's state and looks like it. */
  readonly state?: true;
  /** What the formula spills, its own cell included, where it spills. */
  readonly spill?: readonly (readonly (PlainValue | null)[])[];
  /** The formula as the file has it, where the engine's is written otherwise. */
  readonly source?: string;
  /** The file's formula, which can't be read here: the cell keeps the result that the file holds. */
  readonly kept?: KeptFormula;
}

export interface KeptFormula {
  /** As one types it, with "=". */
  readonly formula: string;
  /** What can't be read, as a plural: "references to other workbooks". */
  readonly why: string;
  /** The result that the cell keeps. */
  readonly value: PlainValue | null;
}

export interface MergedArea {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface SheetData {
  readonly name: string;
  readonly cells: readonly CellData[];
  /** Widths of columns in characters of the standard font, by column number. */
  readonly widths: Readonly<Record<number, number>>;
  /** Heights of rows in points, by row number. */
  readonly heights: Readonly<Record<number, number>>;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly hidden: boolean;
  readonly hiddenRows?: readonly number[];
  readonly hiddenColumns?: readonly number[];
  /** Nothing may be written there. */
  readonly locked?: boolean;
  readonly merged: readonly MergedArea[];
  readonly print?: PrintSetUp;
  /** Charts over its cells: their cells follow rows and columns that come and go. */
  readonly charts?: readonly SheetChart[];
  /** Rows that fold under the row above them, a group before those within it: "A12:A30". */
  readonly groups?: readonly string[];
  /** Names that only this sheet knows. */
  readonly names?: readonly NameData[];
  /** Rows and columns that the sheet must at least have. */
  readonly room?: { readonly rows: number; readonly columns: number };
}

export interface NameData {
  readonly name: string;
  /** A reference with its sheet, or a formula: `Inputs!$B$4`. */
  readonly refersTo: string;
  /** The sheet that alone knows the name; the whole workbook where missing. */
  readonly sheet?: string;
}

export interface BookData {
  readonly sheets: readonly SheetData[];
  readonly names: readonly NameData[];
}

export const emptySheet = (name: string): SheetData => ({
  name,
  cells: [],
  widths: {},
  heights: {},
  frozenRows: 0,
  frozenColumns: 0,
  hidden: false,
  merged: [],
});
