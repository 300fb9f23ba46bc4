/** Help pages of the starter sheets, from their cells. */
import { CATALOGUE, EDITION, NAMESPACE } from "../../core";
import { STARTER_SHEETS } from "../../src/sheets";
import type { SheetCell, SheetStyle, StarterSheet } from "../../src/sheets/sheet";
import { escaped, html, list, page, sections, table, type Cell } from "./html";

export const sheetFile = ({ id }: StarterSheet): string => `sheet-${id}.html`;

interface SheetLine {
  readonly row: number;
  readonly label: string;
  readonly value: SheetCell;
  readonly unit: string;
  readonly note: string;
}

const textOf = (cell: SheetCell | undefined): string =>
  cell === undefined || (typeof cell.content === "string" && cell.content.startsWith("=")) ? "" : String(cell.content);

/** Lines whose value has one of these styles, from top to bottom. */
function linesWith({ cells, frozenRows }: StarterSheet, style: SheetStyle): readonly SheetLine[] {
  return Object.entries(cells).flatMap(([address, value]) => {
    const row = Number(/^B(\d+)$/.exec(address)?.[1] ?? 0);
    const label = textOf(cells[`A${String(row)}`]);
    if (row <= frozenRows || value.style !== style || label === "") return [];
    const others = Object.entries(cells).filter(([at]) => at.endsWith(String(row)) && /^[C-H]\d+$/.test(at));
    const inRow = others.filter(([at]) => Number(at.slice(1)) === row).map(([, cell]) => cell);
    const unit = textOf(inRow.find(({ indent }) => indent === true));
    const note = textOf(inRow.find((cell) => cell.style === "Note"));
    return [{ row, label, value, unit, note }];
  });
}

/** What may be typed: the choices, or the prompt. */
function entry({ validation }: SheetCell): string {
  if (validation === undefined) return "";
  return "list" in validation ? validation.list.join(", ") : validation.prompt;
}

const tableOf = (caption: string, heads: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  rows.length === 0 ? "" : table(caption, heads, rows);

const shown = (cell: SheetCell): string => (cell.content === "" ? "blank" : textOf(cell));

/** Functions that its formulas call. */
const functionsOf = ({ cells }: StarterSheet): readonly string[] => {
  const formulas = Object.values(cells).map(({ content }) => String(content));
  return CATALOGUE.map(({ id }) => id).filter((id) => formulas.some((text) => text.includes(`${NAMESPACE}.${id}(`)));
};

const PLACE = `<nav aria-label="Place"><a href="index.html">All functions</a> › <a href="index.html#starter-sheets">Starter sheets</a></nav>`;

const footer = `<p>${escaped(EDITION)}. Fernhill Hall, its pool and its machine are invented: replace every value of the example by your own.</p>`;

export function sheetPage(sheet: StarterSheet): string {
  const inputs = linesWith(sheet, "Input").map(({ label, value, unit, note }) => [
    label,
    shown(value),
    unit,
    entry(value),
    note,
  ]);
  const results = [...linesWith(sheet, "Output")].map(({ label, unit, note }) => [label, unit, note]);
  const checks = linesWith(sheet, "Check Cell").map(({ label, note }) => [label, note]);
  const uses = functionsOf(sheet).map((id) => html(`<a href="${id}.html">${escaped(id)}</a>`));
  const main = `<header>
${PLACE}
</header>
<main id="main" tabindex="-1">
<h1>${escaped(sheet.name)}</h1>
<p class="summary">${escaped(sheet.summary)}</p>
<p>Insert it from the panel: Find, then Starter sheets. Yellow cells are yours to fill in; the first rows name the master check, which is only as good as the worst check at the foot. Where the workbook has the sheet “Project”, shared inputs come from there. On paper it is a landscape sheet, Letter or A4, with the project, date, file and page on every page.</p>
${sections([
  ["Results", tableOf("What it answers", ["Result", "Unit", "Note"], results)],
  ["Inputs", tableOf("Values of the example", ["Input", "Example", "Unit", "What may be typed", "Note"], inputs)],
  ["Checks", tableOf("OK, LOOK, FAILS or NOT CHECKED", ["Check", "Why"], checks)],
  ["Functions", list(uses)],
])}</main>`;
  return page(`Starter sheet: ${sheet.name}`, sheet.summary, main, footer);
}

export const sheetRows = (): readonly (readonly Cell[])[] =>
  STARTER_SHEETS.map((sheet) => [html(`<a href="${sheetFile(sheet)}">${escaped(sheet.name)}</a>`), sheet.summary]);
