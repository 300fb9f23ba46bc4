/** How a starter sheet's cells look and what may be typed into them, set area by area: few requests, short ones. */
import { stateConditions } from "../../sheets/states";
import type { SheetStyle, Validation } from "../../sheets/sheet";
import { cellsText } from "../reader/reference";
import type { Placed } from "../starterCells";
import { brief, supports } from "./run";

/** Excel's own names for its built-in styles, the same in every language. */
const STYLES: Readonly<Record<SheetStyle, string>> = {
  Title: "SheetTitle",
  "Heading 2": "Heading2",
  "Heading 3": "Heading3",
  Input: "Input",
  Calculation: "Calculation",
  Output: "Output",
  "Check Cell": "CheckCell",
  Note: "Note",
  "Warning Text": "WarningText",
  "Explanatory Text": "ExplanatoryText",
};

/** Colour of the rule under a record's line. */
const RULE = "#bfbfbf";

/** Excel takes a list typed into a rule up to this length. */
const LONGEST_LIST = 255;

/** Excel's rule for what may be typed into a cell. */
export function validationRule(validation: Validation, address: string): Excel.DataValidationRule {
  if ("list" in validation) {
    const source = validation.list.join(",");
    if (source.length > LONGEST_LIST || validation.list.some((word) => word.includes(","))) {
      throw new Error(
        `the list of ${address} can't be typed into a rule: at most 255 characters, no commas in its words`,
      );
    }
    return { list: { inCellDropDown: true, source } };
  }
  if ("filled" in validation) return { custom: { formula: `=LEN(${address})>0` } };
  const { above, from, to } = validation;
  if (above !== undefined && to !== undefined) {
    return { custom: { formula: `=AND(ISNUMBER(${address}),${address}>${String(above)},${address}<=${String(to)})` } };
  }
  if (above !== undefined) return { decimal: { formula1: above, operator: "GreaterThan" } };
  if (from !== undefined && to !== undefined) return { decimal: { formula1: from, formula2: to, operator: "Between" } };
  if (from !== undefined) return { decimal: { formula1: from, operator: "GreaterThanOrEqualTo" } };
  if (to !== undefined) return { decimal: { formula1: to, operator: "LessThanOrEqualTo" } };
  return { custom: { formula: `=ISNUMBER(${address})` } };
}

export interface Box {
  readonly row: number;
  readonly column: number;
  rows: number;
  columns: number;
}

/** Rectangles that cover places: neighbours in a row joined, then equal stretches of following rows. */
export function boxesOf(places: readonly { readonly row: number; readonly column: number }[]): readonly Box[] {
  const boxes: Box[] = [];
  const stretches: Box[] = [];
  for (const { row, column } of [...places].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const last = stretches.at(-1);
    if (last?.row === row && last.column + last.columns === column) last.columns += 1;
    else stretches.push({ row, column, rows: 1, columns: 1 });
  }
  const open = new Map<string, Box>();
  for (const stretch of stretches) {
    const key = `${String(stretch.column)} ${String(stretch.columns)}`;
    const above = open.get(key);
    if (above !== undefined && above.row + above.rows === stretch.row) above.rows += 1;
    else {
      boxes.push(stretch);
      open.set(key, stretch);
    }
  }
  return boxes;
}

/** Sets one thing in one area. */
export type Dressing = (worksheet: Excel.Worksheet) => void;

const on =
  (box: Box, set: (range: Excel.Range) => void): Dressing =>
  (worksheet) =>
    set(brief(worksheet.getRangeByIndexes(box.row, box.column, box.rows, box.columns)));

/** Equal values of cells, area by area. */
function byAreas<T extends string | boolean>(
  cells: readonly Placed[],
  valueOf: (cell: Placed["cell"]) => T | undefined,
  set: (range: Excel.Range, value: T, box: Box) => void,
): Dressing[] {
  const places = new Map<T, Placed[]>();
  for (const placed of cells) {
    const value = valueOf(placed.cell);
    if (value !== undefined) places.set(value, [...(places.get(value) ?? []), placed]);
  }
  return [...places].flatMap(([value, some]) => boxesOf(some).map((box) => on(box, (range) => set(range, value, box))));
}

/** A rule under each line of an area. */
function underline(range: Excel.Range, rows: number): void {
  range.format.verticalAlignment = "Top";
  for (const edge of rows > 1 ? (["InsideHorizontal", "EdgeBottom"] as const) : (["EdgeBottom"] as const)) {
    const border = range.format.borders.getItem(edge);
    border.style = "Continuous";
    border.color = RULE;
  }
}

const validated = ({ row, column, cell: { validation } }: Placed): readonly Dressing[] =>
  validation === undefined || !supports("1.8")
    ? []
    : [
        on({ row, column, rows: 1, columns: 1 }, ({ dataValidation }) => {
          dataValidation.rule = validationRule(validation, cellsText({ row, column, rows: 1, columns: 1 }));
          dataValidation.prompt = { message: validation.prompt, showPrompt: true, title: "" };
          dataValidation.errorAlert = { message: validation.prompt, showAlert: true, style: "Stop", title: "" };
        }),
      ];

/** The look of each state, where a cell says one of its words. */
function stateLooks(range: Excel.Range, { row, column }: Box): void {
  for (const { formula, color, fill } of stateConditions(cellsText({ row, column, rows: 1, columns: 1 }))) {
    const { custom } = range.conditionalFormats.add("Custom");
    custom.rule.formula = `=${formula}`;
    custom.format.font.color = color;
    custom.format.fill.color = fill;
  }
}

/** All that cells look like, in the order in which it is set: a style before what departs from it. */
export const dressings = (cells: readonly Placed[]): readonly Dressing[] => [
  ...byAreas(
    cells,
    ({ style }) => style,
    (range, style) => (range.style = STYLES[style]),
  ),
  ...byAreas(
    cells,
    ({ format }) => format,
    (range, format, { rows, columns }) =>
      (range.numberFormat = Array.from({ length: rows }, () => new Array<string>(columns).fill(format))),
  ),
  ...byAreas(
    cells,
    ({ wrap }) => wrap,
    (range, wrap) => (range.format.wrapText = wrap),
  ),
  ...byAreas(
    cells,
    ({ indent }) => (indent === true && supports("1.9") ? true : undefined),
    (range) => (range.format.indentLevel = 1),
  ),
  ...byAreas(
    cells,
    ({ entry }) => (entry === true ? true : undefined),
    (range, _, { rows }) => underline(range, rows),
  ),
  ...byAreas(
    cells,
    ({ style }) => (style === "Check Cell" && supports("1.6") ? true : undefined),
    (range, _, box) => stateLooks(range, box),
  ),
  ...cells.flatMap(validated),
];
