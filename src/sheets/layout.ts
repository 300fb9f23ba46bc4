/**
 * Builds a starter sheet from lines in reading order. A line with a key can be named in formulas as [key]; the builder
 * puts the cell's address there, so that lines can be moved without touching formulas.
 */
import { foldingRows, type PlacedLine } from "./folds";
import type { PrintSetUp, SheetCell, SheetChart, SheetStyle, StarterSheet, Validation } from "./sheet";

const VALUE_COLUMN = "B";

type Content = string | number | boolean;

/** A cell of a line besides the usual ones: a second value, a column of a list. */
export interface ExtraCell {
  readonly content: Content;
  readonly style?: SheetStyle;
  readonly format?: string;
  readonly validation?: Validation;
  readonly indent?: true;
  readonly link?: string;
}

/** The columns of a sheet; label and value are always A and B. */
export interface ColumnPlan {
  readonly unit: string;
  readonly source: string;
  readonly note: string;
  /** The last column of the print area. */
  readonly last: string;
}

const USUAL_COLUMNS: ColumnPlan = { unit: "C", source: "D", note: "E", last: "E" };

/** One line of the sheet. */
export interface Line {
  readonly key?: string;
  readonly label: string;
  readonly labelStyle?: SheetStyle;
  readonly value?: Content;
  readonly style?: SheetStyle;
  readonly format?: string;
  readonly validation?: Validation;
  /** A workbook's name: a sheet that is inserted where the name exists takes its value from there. */
  readonly link?: string;
  /** A formula where it begins with "=". */
  readonly unit?: string;
  readonly unitStyle?: SheetStyle;
  readonly source?: string;
  readonly sourceStyle?: SheetStyle;
  readonly note?: string;
  readonly noteStyle?: SheetStyle;
  /** Cells in other columns, by column letter; formulas in them may say [@] for this line's own row. */
  readonly extra?: Readonly<Record<string, ExtraCell>>;
  /** Rows that a spilling formula needs below this one, kept free. */
  readonly spills?: number;
  /** A part's heading under which rows fold; or the line before which the last of them ends. */
  readonly fold?: "starts" | "ends";
}

const HEADINGS: Readonly<Record<string, SheetStyle>> = { title: "Title", part: "Heading 2", group: "Heading 3" };

/** A heading of a part ("Inputs") or of a group in it ("Pool"). */
export const heading = (kind: "title" | "part" | "group", label: string, note?: string): Line => ({
  label,
  labelStyle: HEADINGS[kind] ?? "Heading 3",
  ...(note === undefined ? {} : { note }),
});

/** An empty line. */
export const gap: Line = { label: "" };

type InputOptions = Pick<Line, "format" | "validation" | "source" | "note" | "link">;

/** A value for the user to fill in. */
export const input = (key: string, label: string, value: Content, unit: string, options: InputOptions = {}): Line => ({
  key,
  label,
  value,
  unit,
  style: "Input",
  ...options,
});

type ResultOptions = Pick<Line, "format" | "source" | "note" | "spills" | "style">;

/** A calculated value; `formula` may name other lines as [key]. */
export const computed = (
  key: string,
  label: string,
  formula: string,
  unit: string,
  options: ResultOptions = {},
): Line => ({
  key,
  label,
  value: formula,
  unit,
  style: "Calculation",
  ...options,
});

/** Rows of all lines, counting the rows that spills keep free. */
const placed = (lines: readonly Line[]): readonly PlacedLine<Line>[] => {
  let row = 0;
  return lines.map((line) => {
    row += 1;
    const at = row;
    row += line.spills ?? 0;
    return [at, line] as const;
  });
};

const KEY = /\[([a-zA-Z][a-zA-Z0-9]*)(?:@([A-Z]))?\]/g;

const BLOCK = /\[\[([a-zA-Z0-9]+):([a-zA-Z0-9]+)\]\]/g;

/**
 * Puts addresses in place of [keys]; [key@C] is that line's cell in column C, a range of values is written [from]:[to], an
 * input block of labels, values and units [[from:to]].
 */
const resolved = (formula: string, rows: ReadonlyMap<string, number>): string => {
  const rowOf = (key: string): number => {
    const row = rows.get(key);
    if (row === undefined) throw new Error(`no line has the key ${key}`);
    return row;
  };
  return formula
    .replace(BLOCK, (_, from: string, to: string) => `$A$${rowOf(from)}:$C$${rowOf(to)}`)
    .replace(KEY, (_, key: string, column: string | undefined) => `$${column ?? VALUE_COLUMN}$${rowOf(key)}`);
};

const content = (value: Content, rows: ReadonlyMap<string, number>): Content =>
  typeof value === "string" && value.startsWith("=") ? resolved(value, rows) : value;

const extraCells = (
  row: number,
  line: Line,
  rows: ReadonlyMap<string, number>,
): readonly (readonly [string, SheetCell])[] =>
  Object.entries(line.extra ?? {}).map(([column, cell]) => {
    const own = typeof cell.content === "string" ? cell.content.replace(/\[@\]/g, String(row)) : cell.content;
    return [`${column}${row}`, { ...cell, content: content(own, rows) }] as const;
  });

/** The column to the left. */
const before = (column: string): string => String.fromCharCode(column.charCodeAt(0) - 1);

const cellsOf = (
  row: number,
  line: Line,
  rows: ReadonlyMap<string, number>,
  columns: ColumnPlan,
): readonly (readonly [string, SheetCell])[] => {
  const cells: [string, SheetCell][] = [];
  if (line.label !== "")
    cells.push([
      `A${row}`,
      { content: content(line.label, rows), ...(line.labelStyle ? { style: line.labelStyle } : { wrap: true }) },
    ]);
  if (line.value !== undefined)
    cells.push([
      `${VALUE_COLUMN}${row}`,
      {
        content: content(line.value, rows),
        ...(line.style ? { style: line.style } : {}),
        ...(line.format ? { format: line.format } : {}),
        ...(line.validation ? { validation: line.validation } : {}),
        ...(line.link === undefined ? {} : { link: line.link }),
      },
    ]);
  if (line.unit)
    cells.push([
      `${columns.unit}${row}`,
      { content: content(line.unit, rows), indent: true, ...(line.unitStyle ? { style: line.unitStyle } : {}) },
    ]);
  if (line.source)
    cells.push([
      `${columns.source}${row}`,
      {
        content: line.source,
        style: line.sourceStyle ?? "Explanatory Text",
        wrap: true,
        // A unit beside a number of a table is indented.
        ...(line.extra?.[before(columns.source)] && !line.sourceStyle ? { indent: true } : {}),
      },
    ]);
  if (line.note)
    cells.push([
      `${columns.note}${row}`,
      { content: content(line.note, rows), style: line.noteStyle ?? "Note", wrap: true },
    ]);
  return [...cells, ...extraCells(row, line, rows)];
};

export interface SheetPlan {
  readonly id: string;
  readonly name: string;
  readonly summary: string;
  readonly widths: readonly number[];
  readonly lines: readonly Line[];
  /** Keys whose cells get a defined name, or a block "[[from:to]]". */
  readonly named: Readonly<Record<string, string>>;
  readonly frozenRows: number;
  readonly landscape?: boolean;
  /** Other columns for unit, source and note than C, D and E. */
  readonly columns?: ColumnPlan;
  /** Their cells and places are named by keys: "[first@B]:[last@B]". */
  readonly charts?: readonly SheetChart[];
}

/** The chart with addresses in place of keys. */
function placedChart(chart: SheetChart, rows: ReadonlyMap<string, number>): SheetChart {
  const plain = (text: string): string => resolved(text, rows).replaceAll("$", "");
  const [first, ...more] = chart.series.map((one) => ({ ...one, x: plain(one.x), y: plain(one.y) }));
  if (first === undefined) throw new Error(`the chart "${chart.title}" has no series`);
  return { ...chart, place: plain(chart.place), series: [first, ...more] };
}

/** Lays out the lines and returns the sheet. */
export const sheetOf = (plan: SheetPlan): StarterSheet => {
  const lines = placed(plan.lines);
  const rows = new Map(lines.flatMap(([row, line]) => (line.key === undefined ? [] : [[line.key, row] as const])));
  const last = lines.at(-1);
  const columns = plan.columns ?? USUAL_COLUMNS;
  const groups = foldingRows(lines);
  const end = last ? last[0] + (last[1].spills ?? 0) : 1;
  const print: PrintSetUp = {
    area: `A1:${columns.last}${end}`,
    landscape: plan.landscape ?? true,
    fitToWidth: true,
    titleRows: `1:${plan.frozenRows}`,
    footer: "&A",
    footerLeft: "&D  &F",
    footerRight: "Page &P of &N",
  };
  return {
    id: plan.id,
    name: plan.name,
    summary: plan.summary,
    widths: plan.widths,
    cells: Object.fromEntries(lines.flatMap(([row, line]) => cellsOf(row, line, rows, columns))),
    names: Object.fromEntries(
      Object.entries(plan.named).map(([name, key]) => [name, resolved(key.startsWith("[") ? key : `[${key}]`, rows)]),
    ),
    frozenRows: plan.frozenRows,
    frozenColumns: 1,
    print,
    ...(groups.length > 0 && { groups }),
    ...(plan.charts === undefined ? {} : { charts: plan.charts.map((chart) => placedChart(chart, rows)) }),
  };
};
