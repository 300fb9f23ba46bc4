/** Reads a sheet: its cells as they come, then what else it holds. */
import type { BookFacts, SheetEntry } from "../book/facts";
import { dynamicArrays } from "../book/metadata";
import { partTextPieces, type Package } from "../parts/package";
import { refusal } from "../refusal";
import { pauseOf, type PackageWork } from "../work";
import { numberOf } from "../xml/node";
import { xmlScan } from "../xml/scan";
import { emptyDraft, readElement, rowFacts } from "./elements";
import type { FileCell, FileFormula, StoredSheetFacts } from "./facts";
import { formulaKinds } from "./formulas";
import { sheetScan, type ScannedCell, type SheetVisitor } from "./scan";
import { readSharedStrings } from "./strings";
import { storedValue, type ValueContext } from "./value";

/** What reading needs beside the sheet itself: read once for a workbook. */
export interface CellContext extends ValueContext {
  /** The cell metadata that mark dynamic arrays. */
  readonly dynamic: ReadonlySet<number>;
}

export async function cellContext(pack: Package, book: BookFacts, work: PackageWork = {}): Promise<CellContext> {
  return {
    strings: await readSharedStrings(pack, book.path, pauseOf(work)),
    date1904: book.date1904,
    dynamic: await dynamicArrays(pack, book.path),
  };
}

export function sheetNamed(book: BookFacts, name: string): SheetEntry {
  const found = book.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  if (found === undefined) throw refusal("change", `This workbook has no sheet ${JSON.stringify(name)}.`);
  return found;
}

function cellOf(scanned: ScannedCell, formula: FileFormula | undefined, context: CellContext): FileCell {
  const { row, column, attributes } = scanned;
  const cellMetadata = numberOf(attributes["cm"]);
  const valueMetadata = numberOf(attributes["vm"]);
  return {
    row,
    column,
    value: storedValue(scanned, context),
    type: attributes["t"] ?? "n",
    ...(formula !== undefined && { formula }),
    style: numberOf(attributes["s"]) ?? 0,
    ...(cellMetadata !== undefined && { cellMetadata }),
    ...(valueMetadata !== undefined && { valueMetadata }),
  };
}

/**
 * Streams a sheet: memory doesn't grow with the number of cells, nor with how far out they are.
 * @param onCell called with each cell that the file holds, in the file's order; a cell of a shared group that comes
 * before the group's first cell is given last
 */
export async function readStoredSheet(
  pack: Package,
  book: BookFacts,
  name: string,
  context: CellContext,
  onCell: (cell: FileCell) => void,
  work: PackageWork = {},
): Promise<StoredSheetFacts> {
  const sheet = sheetNamed(book, name);
  const draft = emptyDraft();
  const kinds = formulaKinds(context.dynamic);
  const late: ScannedCell[] = [];
  const visitor: SheetVisitor = {
    element: (node) => readElement(node, draft),
    row: (row) => {
      const facts = rowFacts(row);
      if (facts !== undefined) draft.rows.push(facts);
    },
    cell: (cell) => {
      const formula = kinds.of(cell);
      if (formula === "later") late.push(cell);
      else onCell(cellOf(cell, formula, context));
    },
  };
  const scan = xmlScan(sheet.path, sheetScan(visitor));
  const pause = pauseOf(work);
  for await (const piece of partTextPieces(pack, sheet.path, pause)) {
    scan.write(piece);
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  scan.close();
  for (const cell of late) {
    const formula = kinds.of(cell);
    onCell(cellOf(cell, formula === "later" ? { kind: "unreadable", text: "" } : formula, context));
  }
  return { name: sheet.name, ...draft };
}
