/** Finds the cells that lose their values without our functions: those that call them, and all that depend on those. */
import type { Address, Area, CellValue, ReferenceText, Workbook } from "../port";
import { mentionsUs, walkTree } from "../reader/calls";
import { plainName } from "../reader/evaluate";
import { cellsText, parseReference } from "../reader/reference";
import { boundValue } from "../reader/scope";
import { readFormulas } from "../reader/sheets";
import { isRefusal } from "../reader/tokens";
import { parse } from "../reader/tree";

export interface FormulaCell {
  readonly address: Address;
  readonly formula: string;
  readonly value: CellValue;
}

export interface DependentCell extends FormulaCell {
  /** Everything that the formula fills: its own cell and its spill. */
  readonly area: Area;
}

/** What a formula refers to; undefined if its text doesn't show it. */
type Reach = readonly ReferenceText[] | undefined;

/** Functions that build references from texts and numbers. */
const UNTRACEABLE = new Set(["INDIRECT", "OFFSET"]);

function reachOf({ address, formula }: FormulaCell): Reach {
  const tree = parse(formula);
  if (isRefusal(tree)) return undefined;
  const found: ReferenceText[] = [];
  let traceable = true;
  walkTree(tree, (node, scope) => {
    if (node.kind === "call" && UNTRACEABLE.has(plainName(node.name))) traceable = false;
    // A range between two references (A1:INDEX(…)) holds cells that neither names.
    if (node.kind === "binary" && node.operator === ":") traceable = false;
    if (node.kind !== "reference" || (scope && boundValue(scope, plainName(node.text))) !== undefined) return;
    found.push({ text: node.text, from: address });
  });
  return traceable ? found : undefined;
}

const plainArea = ({ text, from }: ReferenceText): Area | undefined => {
  const meaning = parseReference(text);
  if (meaning?.kind !== "cells" || meaning.spill) return undefined;
  return { sheet: meaning.sheet ?? from.sheet, ...meaning.area };
};

/** The areas that each formula refers to, in one round trip; undefined if one of them isn't known. */
async function areasOf(book: Workbook, reaches: readonly Reach[]): Promise<readonly (readonly Area[] | undefined)[]> {
  const asked = reaches.flatMap((reach) => (reach ?? []).filter((one) => plainArea(one) === undefined));
  const answers = asked.length === 0 ? [] : await book.resolve(asked);
  const resolved = new Map(asked.map((one, at) => [one, answers[at]] as const));
  return reaches.map((reach) => {
    const areas = reach?.map((one) => plainArea(one) ?? resolved.get(one));
    return areas?.every((area) => area !== undefined) === true ? areas : undefined;
  });
}

/** Cells by sheet, in any case of its name. */
interface Marked {
  add(area: Area): void;
  meets(area: Area): boolean;
}

function marks(): Marked {
  const sheets = new Map<string, Set<string>>();
  const key = (row: number, column: number): string => `${String(row)},${String(column)}`;
  const inside = ({ row, column, rows, columns }: Area, place: string): boolean => {
    const [down = 0, over = 0] = place.split(",").map(Number);
    return down >= row && down < row + rows && over >= column && over < column + columns;
  };
  return {
    add({ sheet, row, column, rows, columns }) {
      const name = sheet.toLowerCase();
      const places = sheets.get(name) ?? new Set<string>();
      for (let down = 0; down < rows; down++)
        for (let over = 0; over < columns; over++) places.add(key(row + down, column + over));
      sheets.set(name, places);
    },
    meets(area) {
      const places = sheets.get(area.sheet.toLowerCase());
      if (places === undefined) return false;
      if (area.rows * area.columns > places.size) return [...places].some((place) => inside(area, place));
      for (let down = 0; down < area.rows; down++)
        for (let over = 0; over < area.columns; over++)
          if (places.has(key(area.row + down, area.column + over))) return true;
      return false;
    },
  };
}

const alone = ({ address }: FormulaCell): Area => ({ ...address, rows: 1, columns: 1 });

/** The areas that formulas fill: the spill, if there is one. */
async function filled(book: Workbook, cells: readonly FormulaCell[]): Promise<readonly Area[]> {
  const spills = await book.resolve(cells.map((cell) => ({ text: `${cellsText(alone(cell))}#`, from: cell.address })));
  return cells.map((cell, at) => spills[at] ?? alone(cell));
}

async function formulaCells(book: Workbook): Promise<readonly FormulaCell[]> {
  const found: FormulaCell[] = [];
  const sheets = (await book.sheets()).map(({ name }) => name);
  for (const { blocks } of (await readFormulas(book, sheets)).values())
    for (const { area, formulas, values } of blocks)
      formulas.forEach((line, down) =>
        line.forEach((formula, over) => {
          if (formula === "") return;
          const address = { sheet: area.sheet, row: area.row + down, column: area.column + over };
          found.push({ address, formula, value: values[down]?.[over] ?? null });
        }),
      );
  return found;
}

/**
 * All cells of the workbook that use us or depend on such a cell, sheet by sheet, row by row. A formula with unknown
 * references counts as dependent: its value is kept rather than lost. Empty if no cell uses us.
 */
export async function dependentCells(book: Workbook): Promise<readonly DependentCell[]> {
  const cells = await formulaCells(book);
  if (!cells.some(({ formula }) => mentionsUs(formula))) return [];
  const areas = await areasOf(book, cells.map(reachOf));
  const marked = marks();
  const area = new Map<FormulaCell, Area>();
  let fresh = cells.filter(({ formula }, at) => mentionsUs(formula) || areas[at] === undefined);
  while (fresh.length > 0) {
    for (const [at, own] of (await filled(book, fresh)).entries()) {
      const cell = fresh[at];
      if (cell === undefined) continue;
      area.set(cell, own);
      marked.add(own);
    }
    fresh = cells.filter((cell, at) => !area.has(cell) && areas[at]?.some((one) => marked.meets(one)) === true);
  }
  return cells.flatMap((cell) => {
    const own = area.get(cell);
    return own === undefined ? [] : [{ ...cell, area: own }];
  });
}
