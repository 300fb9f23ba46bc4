import type { SheetStyle, StarterSheet, Validation } from "../../sheets/sheet";
import { linkedSheet, placedCells } from "../../workbook/starterCells";
import { cellsText } from "../../workbook/reader/reference";
import { absoluteText, areaOf } from "./address";
import type { BookData, Edge, CellStyle, NameData, SheetData, ValidationData } from "./bookData";
import { emptySheet } from "./bookData";
import { inlineNames } from "./formulaTexts";

/** Starter sheets as the preview's sheet takes them. */

const line = (color: string, style: Edge["style"] = "thin"): Edge => ({ style, color });
const box = (edge: Edge): NonNullable<CellStyle["edges"]> => ({ top: edge, bottom: edge, left: edge, right: edge });

/** The looks of the styles: text against its ground has a contrast of at least 4.5 to 1, and no meaning rests on colour alone. */
const LOOKS: Readonly<Record<SheetStyle, CellStyle>> = {
  Title: { size: 16, bold: true, color: "#1f3a5f" },
  "Heading 2": { size: 13, bold: true, color: "#1f3a5f", edges: { bottom: line("#7f9db9", "medium") } },
  "Heading 3": { bold: true, color: "#1f3a5f", edges: { bottom: line("#b8c9da") } },
  Input: { color: "#20407a", fill: "#fff4d6", edges: box(line("#b59b4c")) },
  Calculation: { color: "#262626", fill: "#f2f2f2", edges: box(line("#bfbfbf")) },
  Output: { bold: true, color: "#123d1d", fill: "#e4f1e6", edges: box(line("#7da886")) },
  "Check Cell": { bold: true, color: "#262626", fill: "#dbe5ef", edges: box(line("#4a6785", "double")) },
  Note: { color: "#4d4426", fill: "#fffbe6", edges: box(line("#d9cf9f")) },
  "Warning Text": { bold: true, color: "#a3001d" },
  "Explanatory Text": { italic: true, color: "#595959" },
};

/** A font whose measures every office suite has. */
const TEXT: CellStyle = { font: "Arial", size: 10, verticalAlign: "middle" };

const ENTRY: CellStyle = { verticalAlign: "top", edges: { bottom: line("#bfbfbf") } };

const decimal = (operator: string, ...formulae: number[]): Pick<ValidationData, "type" | "operator" | "formulae"> => ({
  type: "decimal",
  operator,
  formulae,
});

const ruleOf = (rule: Validation, address: string): Pick<ValidationData, "type" | "operator" | "formulae"> => {
  if ("list" in rule) return { type: "list", formulae: [`"${rule.list.join(",")}"`] };
  if ("filled" in rule) return { type: "custom", formulae: [`LEN(${address})>0`] };
  const { above, from, to } = rule;
  if (above !== undefined && to !== undefined) {
    return { type: "custom", formulae: [`AND(ISNUMBER(${address}),${address}>${above},${address}<=${to})`] };
  }
  if (above !== undefined) return decimal("greaterThan", above);
  if (from !== undefined && to !== undefined) return decimal("between", from, to);
  if (from !== undefined) return decimal("greaterThanOrEqual", from);
  if (to !== undefined) return decimal("lessThanOrEqual", to);
  return { type: "custom", formulae: [`ISNUMBER(${address})`] };
};

const validationOf = (rule: Validation, address: string): ValidationData => ({
  ...ruleOf(rule, address),
  allowBlank: true,
  showInputMessage: true,
  prompt: rule.prompt,
  showErrorMessage: true,
  error: rule.prompt,
  errorStyle: "stop",
});

/** Height of a line of the text, in points. */
const LINE_POINTS = 13;
/** Characters of usual text that fit where the width says one digit: letters are a little narrower than digits. */
const LETTERS_PER_DIGIT = 1.2;
/** Height of a row with large text, over the text's size. */
const LARGE_TEXT = 1.4;
/** No row can be higher in a file. */
const HIGHEST_POINTS = 409;

/** Lines that a text takes in a column of so many letters. */
const linesOf = (text: string, letters: number): number =>
  text.split("\n").reduce((sum, part) => sum + Math.max(1, Math.ceil(part.length / letters)), 0);

/** No note of ours needs more lines for what its formula comes to. */
const MOST_FORMULA_LINES = 3;
/** Letters that a value in a text usually takes. */
const VALUE_LETTERS = 20;

/** Lines that a formula's text will take: its literals and about a word for each cell that it names. */
function formulaLines(formula: string, letters: number): number {
  const literals = [...formula.matchAll(/"((?:[^"]|"")*)"/g)].reduce((sum, [, text = ""]) => sum + text.length, 0);
  const cells = [...formula.matchAll(/&\$?[A-Z]+\$?\d+/g)].length;
  return Math.min(MOST_FORMULA_LINES, Math.max(1, Math.ceil((literals + VALUE_LETTERS * cells) / letters)));
}

/** Rows with large text, and rows whose wrapped texts need more than one line, get the height for them: no host is asked to measure. */
const heightsOf = (starter: StarterSheet): Readonly<Record<number, number>> => {
  const heights: Record<number, number> = {};
  for (const { row, column, cell } of placedCells(starter)) {
    const { size = 0 } = cell.style === undefined ? {} : LOOKS[cell.style];
    if (size > 11) heights[row] = Math.max(heights[row] ?? 0, size * LARGE_TEXT);
    if (cell.wrap !== true || typeof cell.content !== "string") continue;
    const letters = (starter.widths[column] ?? 8) * LETTERS_PER_DIGIT;
    const isFormula = cell.content.startsWith("=") && cell.text !== true;
    const lines = isFormula ? formulaLines(cell.content, letters) : linesOf(cell.content, letters);
    const points = Math.min(HIGHEST_POINTS, lines * LINE_POINTS + 3);
    if (lines > 1) heights[row] = Math.max(heights[row] ?? 0, points);
  }
  return heights;
};

export interface StarterData {
  readonly sheet: SheetData;
  /** Names for the whole workbook. */
  readonly names: readonly NameData[];
}

const absolute = (sheet: string, address: string): string => {
  const area = areaOf(address, sheet);
  if (area === undefined) throw new Error(`${address} is no address on the sheet ${sheet}`);
  return absoluteText(area);
};

/**
 * A starter sheet for a workbook.
 * @param title the name that it gets there
 * @param taken names that the workbook has already, in lower case: they become the sheet's own, and as the sheet engine
 * knows no names of single sheets, the sheet's formulas refer to their cells
 */
export const starterData = (plan: StarterSheet, title: string, taken: ReadonlySet<string>): StarterData => {
  const starter = linkedSheet(plan, (name) => taken.has(name.toLowerCase()));
  const names = Object.entries(starter.names).map(([name, address]) => ({ name, refersTo: absolute(title, address) }));
  const own = names.filter(({ name }) => taken.has(name.toLowerCase()));
  const references = new Map(own.map(({ name, refersTo }) => [name.toLowerCase(), refersTo]));
  const cells = placedCells(starter).map(({ row, column, cell }) => {
    const { content, style, format, text, wrap, indent, entry, validation } = cell;
    const formula = typeof content === "string" && text !== true && content.startsWith("=") ? content : undefined;
    const look: CellStyle = {
      ...TEXT,
      ...(entry === true && ENTRY),
      ...(style && LOOKS[style]),
      ...(wrap === true && { wrap }),
      ...(indent === true && { indent }),
    };
    const address = cellsText({ row, column, rows: 1, columns: 1 });
    return {
      row,
      column,
      value: formula === undefined ? content : null,
      ...(formula !== undefined && { formula: inlineNames(formula, references) }),
      look,
      ...(format !== undefined && { format }),
      ...(validation !== undefined && { validation: validationOf(validation, address) }),
      ...(style === "Check Cell" && { state: true as const }),
    };
  });
  const sheet: SheetData = {
    ...emptySheet(title),
    cells,
    widths: Object.fromEntries(starter.widths.entries()),
    heights: heightsOf(starter),
    frozenRows: starter.frozenRows,
    frozenColumns: starter.frozenColumns ?? 0,
    print: starter.print,
    ...(starter.charts !== undefined && { charts: starter.charts }),
    names: own,
  };
  return { sheet, names: names.filter(({ name }) => !taken.has(name.toLowerCase())) };
};

/** A workbook of starter sheets, the first in front; each takes what it links to from the others. */
export function starterBook(starters: readonly StarterSheet[]): BookData {
  const given = new Map(
    starters.flatMap((starter) => Object.keys(starter.names).map((name) => [name.toLowerCase(), starter] as const)),
  );
  const made = starters.map((starter) => {
    const linked = linkedSheet(starter, (name) => ![undefined, starter].includes(given.get(name.toLowerCase())));
    return starterData(linked, starter.name, new Set());
  });
  return { sheets: made.map(({ sheet }) => sheet), names: made.flatMap(({ names }) => names) };
}
