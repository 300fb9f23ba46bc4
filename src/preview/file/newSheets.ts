/** A workbook of the page as new sheets of a package. */
import { stateConditions } from "../../sheets/states";
import type {
  NewCondition,
  NewName,
  NewSheet,
  NewSheetCell,
  NewStyle,
  NewValidation,
  PlacedCell,
} from "../../workbook/package";
import type { CellValue } from "../../workbook/port";
import { cellsText } from "../../workbook/reader/reference";
import type { BookData, CellData, PlainValue, SheetData, ValidationData } from "./bookData";
import type { FormulaTexts } from "./formulaTexts";

const ERROR = /^#(?:N\/A|REF!|NAME\?|DIV\/0!|NULL!|VALUE!|NUM!|CYCLE!|SPILL!|CALC!)$/;

/** A value of the page as a file holds it: the page keeps errors as their texts. */
export const fileValue = (value: PlainValue | null): CellValue =>
  typeof value === "string" && ERROR.test(value) ? { code: value } : value;

export const fileSpill = (spill: NonNullable<CellData["spill"]>): readonly (readonly CellValue[])[] =>
  spill.map((line) => line.map(fileValue));

function cellOf({ formula, value, spill, look, format }: CellData, texts: FormulaTexts): NewSheetCell {
  const style: NewStyle = { ...look, ...(format !== undefined && { format }) };
  return {
    ...(formula !== undefined && { formula: texts.toFile(formula) }),
    ...(formula !== undefined && spill !== undefined && { spill: fileSpill(spill) }),
    value: fileValue(value),
    style,
  };
}

/** Equal rules one after the other are one rule over several cells. */
function rulesOf(cells: readonly CellData[], texts: FormulaTexts): readonly NewValidation[] {
  const rules = new Map<string, { rule: ValidationData; places: string[] }>();
  for (const { row, column, validation } of cells) {
    if (validation === undefined) continue;
    const key = JSON.stringify(validation);
    const known = rules.get(key) ?? { rule: validation, places: [] };
    known.places.push(cellsText({ row, column, rows: 1, columns: 1 }));
    rules.set(key, known);
  }
  return [...rules.values()].map(({ rule: { formulae, ...rest }, places }) => ({
    ...rest,
    formulas: formulae.map((formula) => (typeof formula === "number" ? String(formula) : texts.toFile(formula))),
    areas: places.join(" "),
  }));
}

/** The looks of the cells that say a check's state. */
function conditionsOf(cells: readonly CellData[]): readonly NewCondition[] {
  const places = cells
    .filter(({ state }) => state)
    .map(({ row, column }) => cellsText({ row, column, rows: 1, columns: 1 }));
  const [first] = places;
  return first === undefined ? [] : stateConditions(first).map((look) => ({ ...look, areas: places.join(" ") }));
}

export function fileSheetOf(sheet: SheetData, texts: FormulaTexts): NewSheet {
  const { name, widths, heights, frozenRows, frozenColumns, merged, hidden, hiddenRows, print, charts, groups } = sheet;
  const cells = sheet.cells.map((cell): PlacedCell => {
    const { row, column } = cell;
    return { row, column, ...cellOf(cell, texts) };
  });
  return {
    name,
    cells,
    widths,
    heights,
    merged,
    frozenRows,
    frozenColumns,
    state: hidden ? "hidden" : "visible",
    validations: rulesOf(sheet.cells, texts),
    conditions: conditionsOf(sheet.cells),
    ...(hiddenRows !== undefined && { hiddenRows }),
    ...(groups !== undefined && { groups }),
    ...(print !== undefined && { print }),
    ...(charts !== undefined && { charts }),
  };
}

/** The names of the workbook and those of single sheets. */
export function newNames({ names, sheets }: BookData, texts: FormulaTexts): readonly NewName[] {
  const formulaOf = (refersTo: string): string => texts.toFile(refersTo.startsWith("=") ? refersTo : `=${refersTo}`);
  return [
    ...names.map(({ name, refersTo }) => ({ name, formula: formulaOf(refersTo) })),
    ...sheets.flatMap(({ name: sheet, names: own = [] }) =>
      own.map(({ name, refersTo }) => ({ name, formula: formulaOf(refersTo), sheet })),
    ),
  ];
}
