import type { StarterSheet, Validation } from "../../sheets/sheet";
import { linkedSheet, placedCells, type Placed } from "../../workbook/starterCells";
import { starterPrint } from "../../workbook/starterPrint";
import { rowHeights, starterStyle } from "../../workbook/starterStyles";
import { cellsText } from "../../workbook/reader/reference";
import type { SlicedWork } from "../host/sheetBook";
import { absoluteText, areaOf } from "./address";
import type { BookData, CellData, NameData, SheetData, ValidationData } from "./bookData";
import { emptySheet } from "./bookData";
import { inlineNames } from "./formulaTexts";

/** Starter sheets as the preview's sheet takes them. */

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

/** What a starter sheet becomes: its cells one by one, then the whole. */
function starterParts(starter: StarterSheet, title: string, taken: ReadonlySet<string>) {
  const names = Object.entries(starter.names).map(([name, address]) => ({ name, refersTo: absolute(title, address) }));
  const own = names.filter(({ name }) => taken.has(name.toLowerCase()));
  const references = new Map(own.map(({ name, refersTo }) => [name.toLowerCase(), refersTo]));
  const cellOf = ({ row, column, cell }: Placed): CellData => {
    const { content, format, text, validation } = cell;
    const formula = typeof content === "string" && text !== true && content.startsWith("=") ? content : undefined;
    const look = starterStyle(cell);
    return {
      row,
      column,
      value: formula === undefined ? content : null,
      ...(formula !== undefined && { formula: inlineNames(formula, references) }),
      look,
      ...(format !== undefined && { format }),
      ...(validation !== undefined && {
        validation: validationOf(validation, cellsText({ row, column, rows: 1, columns: 1 })),
      }),
      ...(cell.style === "Check Cell" && { state: true as const }),
    };
  };
  const whole = (placed: readonly Placed[], cells: readonly CellData[]): StarterData => ({
    sheet: {
      ...emptySheet(title),
      cells,
      widths: Object.fromEntries(starter.widths.entries()),
      heights: rowHeights(starter, placed),
      frozenRows: starter.frozenRows,
      frozenColumns: starter.frozenColumns ?? 0,
      print: starterPrint(starter),
      ...(starter.charts !== undefined && { charts: starter.charts }),
      ...(starter.groups !== undefined && { groups: starter.groups }),
      names: own,
    },
    names: names.filter(({ name }) => !taken.has(name.toLowerCase())),
  });
  return { cellOf, whole };
}

/**
 * A starter sheet for a workbook.
 * @param title the name that it gets there
 * @param taken names that the workbook has already, in lower case: they become the sheet's own, and as the sheet engine
 * knows no names of single sheets, the sheet's formulas refer to their cells
 */
export const starterData = (plan: StarterSheet, title: string, taken: ReadonlySet<string>): StarterData => {
  const starter = linkedSheet(plan, (name) => taken.has(name.toLowerCase()));
  const { cellOf, whole } = starterParts(starter, title, taken);
  const placed = placedCells(starter);
  return whole(placed, placed.map(cellOf));
};

/** The same with pauses between the cells; progress in rows. */
export async function starterDataInSlices(
  plan: StarterSheet,
  title: string,
  taken: ReadonlySet<string>,
  { pause, onProgress }: SlicedWork,
): Promise<StarterData> {
  const starter = linkedSheet(plan, (name) => taken.has(name.toLowerCase()));
  await pause();
  const placed = placedCells(starter);
  const rows = placed.reduce((most, { row }) => Math.max(most, row + 1), 0);
  const { cellOf, whole } = starterParts(starter, title, taken);
  const cells: CellData[] = [];
  for (const one of placed) {
    const wait = pause();
    if (wait !== undefined) {
      onProgress?.(one.row, rows);
      await wait;
    }
    cells.push(cellOf(one));
  }
  onProgress?.(rows, rows);
  return whole(placed, cells);
}

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
