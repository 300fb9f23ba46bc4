/** The cells of a workbook file as columns, for comparisons: formulas as they are typed, values as the file last showed them. */
import { placeNumber, textColumn, valueColumn, type TextColumn, type ValueColumn } from "../columns";
import type { MendKnowledge } from "../mend/knowledge";
import { repairFormula } from "../mend/repair";
import {
  cellContext,
  openPackage,
  readBook,
  readStoredSheet,
  type FileCell,
  type NameEntry,
  type PackageWork,
} from "../package";
import type { Area, CellValue } from "../port";

export interface StoredColumns {
  readonly name: string;
  /** By row and column together: `placeNumber`. */
  readonly places: Float64Array;
  readonly values: ValueColumn;
  /** "" where there is none. */
  readonly formulas: TextColumn;
  /** What array formulas fill, by their first cell's place. */
  readonly spills: ReadonlyMap<number, Omit<Area, "sheet">>;
}

export interface StoredFile {
  readonly sheets: readonly StoredColumns[];
  readonly names: readonly NameEntry[];
}

/** A stored formula as it is typed; what can't be read stays in its stored form. */
function typed(text: string, knowledge: MendKnowledge): string {
  const formula = `=${text}`;
  const repair = repairFormula(formula, knowledge);
  return repair.state === "mended" ? repair.formula : formula.replace(/_xl(?:fn|ws|pm)\./gi, "");
}

interface Draft {
  readonly places: number[];
  readonly values: CellValue[];
  readonly formulas: string[];
  readonly spills: Map<number, Omit<Area, "sheet">>;
}

function addCell(draft: Draft, { row, column, formula, value }: FileCell, knowledge: MendKnowledge): void {
  const isOwn = formula !== undefined && formula.kind !== "filled" && formula.kind !== "dataTable";
  const text = isOwn ? typed(formula.text, knowledge) : "";
  if (text === "" && value === null) return;
  const place = placeNumber(row, column);
  draft.places.push(place);
  draft.values.push(value);
  draft.formulas.push(text);
  if (formula?.kind === "array") draft.spills.set(place, formula.area);
}

/** @throws a sentence where the file can't be read */
export async function storedFile(
  bytes: Uint8Array,
  knowledge: MendKnowledge,
  work: PackageWork = {},
): Promise<StoredFile> {
  // Progress is counted in sheets alone.
  const within: PackageWork = { ...work, onProgress: () => undefined };
  const pack = await openPackage(bytes, within);
  const book = await readBook(pack);
  const context = await cellContext(pack, book, within);
  const sheets: StoredColumns[] = [];
  for (const [at, { name, kind }] of book.sheets.entries()) {
    if (kind !== "worksheet") continue;
    work.onProgress?.(at, book.sheets.length);
    const draft: Draft = { places: [], values: [], formulas: [], spills: new Map() };
    await readStoredSheet(pack, book, name, context, (cell) => addCell(draft, cell, knowledge), within);
    sheets.push({
      name,
      places: Float64Array.from(draft.places),
      values: valueColumn(draft.values),
      formulas: textColumn(draft.formulas),
      spills: draft.spills,
    });
  }
  return { sheets, names: book.names };
}
