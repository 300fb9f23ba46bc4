/** Reads and writes cells as Excel does: protection, merged cells, spills. */
import { checkContent, refuse } from "./limits";
import { taken } from "./typed";
import {
  contains,
  formatOf,
  addressOf,
  keyOf,
  placeOf,
  type CellModel,
  type Place,
  type Scalar,
  type SheetModel,
} from "./workbook";

/** A formula's result, where a test knows one: Excel's own calculation is not imitated. */
export type Result = Scalar | readonly (readonly Scalar[])[] | { readonly error: string };
export type ResultOf = (formula: string, place: Place, sheet: SheetModel) => Result | undefined;

export const isEditable = (sheet: SheetModel, place: Place): boolean =>
  sheet.protection === undefined || sheet.unlocked.some((box) => contains(box, place));

/** Cells of a merged area but its first take no content. */
const isCovered = (sheet: SheetModel, place: Place): boolean =>
  sheet.merged.some((box) => contains(box, place) && (box.row !== place.row || box.column !== place.column));

const at = (place: Place): number => keyOf(place.row, place.column);

function* within({ row, column }: Place, values: readonly (readonly unknown[])[]): Generator<[Place, number, number]> {
  for (let down = 0; down < values.length; down++)
    for (let over = 0; over < (values[0]?.length ?? 0); over++)
      yield [{ row: row + down, column: column + over }, down, over];
}

function clearSpill(sheet: SheetModel, place: Place, cell: CellModel): void {
  if (cell.spill?.room !== true) return;
  for (const [child] of within(place, cell.spill.values)) {
    const parent = sheet.cells.get(at(child))?.parent;
    if (parent?.row === place.row && parent.column === place.column) sheet.cells.delete(at(child));
  }
}

/** Spills a result if its cells are free; else the cell shows #SPILL!. */
function spread(sheet: SheetModel, place: Place, cell: CellModel, values: readonly (readonly Scalar[])[]): void {
  const free = [...within(place, values)].every(([child, down, over]) => {
    const other = sheet.cells.get(at(child));
    return (down === 0 && over === 0) || (other === undefined && !isCovered(sheet, child));
  });
  cell.spill = { values, room: free };
  cell.value = free ? (values[0]?.[0] ?? "") : "#SPILL!";
  cell.error = !free;
  if (!free) return;
  for (const [child, down, over] of within(place, values)) {
    if (down === 0 && over === 0) continue;
    // A spilled cell shows its parent's formula: that is what `formulas` gives for it.
    sheet.cells.set(at(child), { formula: cell.formula, value: values[down]?.[over] ?? "", parent: place });
  }
}

/** Gives a formula's cell its result. */
export function setResult(sheet: SheetModel, place: Place, result: Result, message?: string): void {
  const cell = sheet.cells.get(at(place));
  if (cell === undefined) throw new Error(`no formula in ${addressOf({ ...place, rows: 1, columns: 1 })}`);
  clearSpill(sheet, place, cell);
  delete cell.spill;
  delete cell.message;
  cell.error = false;
  if (typeof result !== "object") cell.value = result;
  else if ("error" in result) Object.assign(cell, { value: result.error, error: true });
  else spread(sheet, place, cell, result);
  if (message !== undefined) cell.message = message;
}

/** What stood in the way of spills is gone: they spill again. */
function respill(sheet: SheetModel): void {
  for (const [key, cell] of sheet.cells) {
    if (cell.spill?.room !== false) continue;
    spread(sheet, placeOf(key), cell, cell.spill.values);
  }
}

/** Something was typed over a spilled cell: its parent has no room any more. */
function breakSpill(sheet: SheetModel, place: Place, parent: Place): void {
  const cell = sheet.cells.get(at(parent));
  const values = cell?.spill?.values;
  if (cell === undefined || values === undefined) return;
  clearSpill(sheet, parent, cell);
  Object.assign(cell, { spill: { values, room: false }, value: "#SPILL!", error: true });
  sheet.cells.delete(at(place));
}

/** Puts content into one cell; undefined of a matrix leaves the cell as it is (null does so in Excel). */
export function writeCell(sheet: SheetModel, place: Place, content: unknown, resultOf: ResultOf): void {
  if (content === null || content === undefined) return;
  if (!isEditable(sheet, place)) refuse("AccessDenied");
  checkContent(content);
  if (isCovered(sheet, place)) return;
  const before = sheet.cells.get(at(place));
  if (before?.parent !== undefined) {
    if (content === "") return;
    breakSpill(sheet, place, before.parent);
  } else if (before !== undefined) clearSpill(sheet, place, before);
  if (content === "") {
    sheet.cells.delete(at(place));
    respill(sheet);
    return;
  }
  const format = sheet.formats.length === 0 ? undefined : formatOf(sheet, place, "numberFormat");
  const cell: CellModel = { ...taken(content, format) };
  sheet.cells.set(at(place), cell);
  if (cell.formula === "") return;
  const result = resultOf(cell.formula, place, sheet);
  if (result !== undefined) setResult(sheet, place, result);
}
