/** Sheets that are made anew, as plain data. Rows and columns count from 0, colours are #rrggbb, sizes are points. */
import type { SheetChart } from "../../../sheets/sheet";
import type { Area, CellValue } from "../../port";
import type { SheetState } from "../book/facts";

type Cells = Omit<Area, "sheet">;

export interface NewEdge {
  readonly style: "thin" | "medium" | "thick" | "double" | "dotted" | "dashed" | "hair";
  readonly color: string;
}

export interface NewStyle {
  readonly font?: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly color?: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  readonly verticalAlign?: "top" | "middle" | "bottom";
  readonly wrap?: boolean;
  /** One step off the edge. */
  readonly indent?: boolean;
  readonly edges?: Readonly<Partial<Record<"left" | "right" | "top" | "bottom", NewEdge>>>;
  /** A number format's code. */
  readonly format?: string;
  /** False: may be changed on a protected sheet. */
  readonly locked?: boolean;
}

/** One object for all: looks are found by identity. */
export const NO_LOOK: NewStyle = {};

export interface NewSheetCell {
  /** A value, or the result of the formula; missing or null: empty. A text is a text, whatever it begins with. */
  readonly value?: CellValue;
  /** In its stored form, without "=". */
  readonly formula?: string;
  /** What an array formula fills, its own cell included. */
  readonly spill?: readonly (readonly CellValue[])[];
  readonly style?: NewStyle;
}

export interface PlacedCell extends NewSheetCell {
  readonly row: number;
  readonly column: number;
}

/** What may be typed into cells: ECMA-376 part 1, 18.3.1.32. */
export interface NewValidation {
  /** The cells: "B2" or "B2:B9 D4". */
  readonly areas: string;
  readonly type: "list" | "whole" | "decimal" | "date" | "textLength" | "custom";
  readonly operator?: string;
  readonly formulas: readonly string[];
  readonly allowBlank?: boolean;
  readonly errorStyle?: string;
  readonly showInputMessage?: boolean;
  readonly showErrorMessage?: boolean;
  readonly promptTitle?: string;
  readonly prompt?: string;
  readonly errorTitle?: string;
  readonly error?: string;
}

/** A look of cells while a formula holds, written for the first of them: ECMA-376 part 1, 18.3.1.10. */
export interface NewCondition {
  /** The cells: "B2" or "B2:B9 D4". */
  readonly areas: string;
  /** In its stored form, without "=". */
  readonly formula: string;
  readonly color: string;
  readonly fill: string;
}

export interface NewPrint {
  /** "A1:H40"; the whole sheet where missing. */
  readonly area?: string;
  readonly landscape?: boolean;
  readonly fitToWidth?: boolean;
  /** With `fitToWidth`: all of it on one page. */
  readonly onePage?: boolean;
  /** Rows on top of every page: "1:4". */
  readonly titleRows?: string;
  /** In the middle. */
  readonly footer?: string;
  readonly footerLeft?: string;
  readonly footerRight?: string;
  readonly paper?: "Letter" | "A4";
  /** Rows, counted from 1, above which a page ends. */
  readonly breaks?: readonly number[];
}

/** A row of values from the first column on. */
export interface NewLine {
  readonly values: readonly CellValue[];
  /** One for each value. */
  readonly styles: readonly NewStyle[];
  /** In points. */
  readonly height?: number | undefined;
}

/** Rows that are made one by one as they are written: a long sheet needs no cells in memory. */
export interface NewLines {
  readonly firstRow: number;
  readonly count: number;
  /** Columns in which the same texts often come again: the file holds each of them once. */
  readonly sharedColumns: ReadonlySet<number>;
  line(at: number): NewLine;
}

export interface NewSheet {
  readonly name: string;
  readonly cells: readonly PlacedCell[];
  /** Behind all cells. */
  readonly lines?: NewLines;
  /** In characters, by column. */
  readonly widths?: Readonly<Record<number, number>>;
  /** In points, by row. */
  readonly heights?: Readonly<Record<number, number>>;
  readonly merged?: readonly Cells[];
  readonly frozenRows?: number;
  readonly frozenColumns?: number;
  readonly state?: SheetState;
  readonly validations?: readonly NewValidation[];
  /** The first that holds counts. */
  readonly conditions?: readonly NewCondition[];
  readonly print?: NewPrint;
  /** Rows that fold under the row above them: "A12:A30". */
  readonly groups?: readonly string[];
  readonly hiddenRows?: readonly number[];
  /** Their cells are those of this sheet. */
  readonly charts?: readonly SheetChart[];
}

export interface NewName {
  readonly name: string;
  /** In its stored form, without "=". */
  readonly formula: string;
  /** The sheet that alone knows it. */
  readonly sheet?: string;
}

/** Rows of cells or plain values from the first cell on. */
export function cellsFromRows(
  rows: readonly (readonly (NewSheetCell | string | number | boolean | null)[])[],
): readonly PlacedCell[] {
  return rows.flatMap((line, row) =>
    line.flatMap((cell, column): PlacedCell[] => {
      if (cell === null) return [];
      return [{ row, column, ...(typeof cell === "object" ? cell : { value: cell }) }];
    }),
  );
}
