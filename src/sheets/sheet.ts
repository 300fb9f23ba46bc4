/** A starter sheet as data: nothing host-specific. Rows and columns count from 0; a content that begins with "=" is a formula. */

/** The built-in cell styles that every starter sheet uses, by meaning. */
export type SheetStyle =
  | "Title"
  | "Heading 2"
  | "Heading 3"
  | "Input"
  | "Calculation"
  | "Output"
  | "Check Cell"
  | "Note"
  | "Warning Text"
  | "Explanatory Text";

/** What may be typed into a cell. */
export type Validation =
  | { readonly list: readonly string[]; readonly prompt: string }
  /** Anything but a blank: the functions say what they take. */
  | { readonly filled: true; readonly prompt: string }
  | { readonly above?: number; readonly from?: number; readonly to?: number; readonly prompt: string };

export interface SheetCell {
  readonly content: string | number | boolean;
  readonly style?: SheetStyle;
  /** An Excel number format; General where missing. */
  readonly format?: string;
  readonly validation?: Validation;
  /** The content is text, even where it begins with "=". */
  readonly text?: true;
  /** A name of the workbook: where it exists when the sheet is inserted, the cell takes its value from there. */
  readonly link?: string;
  /** Indented a little: a unit beside its number. */
  readonly indent?: true;
  /** Part of a record's line: at the top of its row, with a rule below. */
  readonly entry?: true;
  /** Wraps the text in its column. */
  readonly wrap?: boolean;
}

/** A line or a row of columns of a chart: two rows of cells of the same sheet, "B60:B68". */
export interface ChartSeries {
  readonly name: string;
  /** Numbers of a chart of curves; else the names along the axis. */
  readonly x: string;
  readonly y: string;
  /** How the line is drawn; whole where missing. */
  readonly stroke?: "dashed" | "dotted" | "dash-dotted";
}

/** Curves have numbers along both axes; lines and columns have names along the x axis. */
export type ChartKind = "curves" | "lines" | "columns";

export interface SheetChart {
  readonly kind: ChartKind;
  readonly title: string;
  /** What the chart shows, in a sentence. */
  readonly description: string;
  /** Titles of the axes, with units. */
  readonly x: string;
  readonly y: string;
  readonly series: readonly [ChartSeries, ...ChartSeries[]];
  /** Curves go smoothly through their points. */
  readonly smooth?: true;
  /** The cells that the chart covers; they are kept free. */
  readonly place: string;
}

export interface PrintSetUp {
  readonly area: string;
  readonly landscape: boolean;
  readonly fitToWidth: true;
  /** All of it fits one page. */
  readonly onePage?: true;
  /** Rows repeated on every page: "1:4". */
  readonly titleRows: string;
  /** In the middle; `&P`, `&N`, `&F`, `&D` and `&A` are page, pages, file, date and sheet. */
  readonly footer: string;
  readonly footerLeft?: string;
  readonly footerRight?: string;
  /** What the user's program proposes where missing. */
  readonly paper?: "Letter" | "A4";
  /** Rows, counted from 1, above which a page ends. */
  readonly breaks?: readonly number[];
}

export interface StarterSheet {
  readonly id: string;
  /** The sheet's name, at most 31 characters. */
  readonly name: string;
  readonly summary: string;
  /** Column widths in characters, from the first column on. */
  readonly widths: readonly number[];
  /** Cells by address text: "B4". */
  readonly cells: Readonly<Record<string, SheetCell>>;
  /** Defined names: name → address text on this sheet. A name that the workbook has already is left alone and the sheet's own scope is used. */
  readonly names: Readonly<Record<string, string>>;
  readonly frozenRows: number;
  /** Columns that stay in sight; none where missing. */
  readonly frozenColumns?: number;
  readonly print: PrintSetUp;
  readonly charts?: readonly SheetChart[];
  /** Rows that fold under the heading in the row above them, as cells of the first column: "A12:A30". */
  readonly groups?: readonly string[];
}
