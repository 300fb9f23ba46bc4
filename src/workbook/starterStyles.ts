/** How the cells of a starter sheet look where no host brings built-in styles. */
import type { SheetCell, SheetStyle, StarterSheet } from "../sheets/sheet";
import type { NewEdge, NewStyle } from "./package";
import { placedCells } from "./starterCells";
import { textLines } from "./textLines";

const line = (color: string, style: NewEdge["style"] = "thin"): NewEdge => ({ style, color });
const box = (edge: NewEdge): NonNullable<NewStyle["edges"]> => ({ top: edge, bottom: edge, left: edge, right: edge });

/** How the styles look: text against its ground has a contrast of at least 4.5 to 1, and no meaning rests on colour alone. */
const STYLES: Readonly<Record<SheetStyle, NewStyle>> = {
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
const TEXT: NewStyle = { font: "Arial", size: 10, verticalAlign: "middle" };

const ENTRY: NewStyle = { verticalAlign: "top", edges: { bottom: line("#bfbfbf") } };

export function starterStyle({ style, entry, wrap, indent }: SheetCell): NewStyle {
  return {
    ...TEXT,
    ...(entry === true && ENTRY),
    ...(style && STYLES[style]),
    ...(wrap === true && { wrap }),
    ...(indent === true && { indent }),
  };
}

/** Height of a line of the text, in points. */
const LINE_POINTS = 13;
/** Characters of usual text that fit where the width says one digit: letters are a little narrower than digits. */
const LETTERS_PER_DIGIT = 1.2;
/** Height of a row with large text, over the text's size. */
const LARGE_TEXT = 1.4;
/** A title's row has room for the project in two lines at its end. */
const TITLE_POINTS = 30;
/** No row can be higher in a file. */
const HIGHEST_POINTS = 409;

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

/** The height of a row with wrapped text in a column of so many characters; undefined where one line holds it. */
export function wrappedHeight(text: string, width = 8, isFormula = false): number | undefined {
  const lines = isFormula ? formulaLines(text, width * LETTERS_PER_DIGIT) : textLines(text, width);
  return lines > 1 ? Math.min(HIGHEST_POINTS, lines * LINE_POINTS + 3) : undefined;
}

/** Rows with large text, and rows whose wrapped texts need more than one line, get the height for them: no host is asked to measure. */
export function rowHeights(starter: StarterSheet, placed = placedCells(starter)): Readonly<Record<number, number>> {
  const heights: Record<number, number> = {};
  for (const { row, column, cell } of placed) {
    const { size = 0 } = cell.style === undefined ? {} : STYLES[cell.style];
    const large = cell.style === "Title" ? TITLE_POINTS : size * LARGE_TEXT;
    if (size > 11) heights[row] = Math.max(heights[row] ?? 0, large);
    if (cell.wrap !== true || typeof cell.content !== "string") continue;
    const isFormula = cell.content.startsWith("=") && cell.text !== true;
    const points = wrappedHeight(cell.content, starter.widths[column], isFormula);
    if (points !== undefined) heights[row] = Math.max(heights[row] ?? 0, points);
  }
  return heights;
}
