/** One pass over a sheet: all that choosing, cleaning and checking a copy need to know of it. */
import type { CellValue } from "../../port";
import { partTextPieces, type Package } from "../parts/package";
import { rowFacts } from "../sheet/elements";
import type { FileFormula, RowFacts } from "../sheet/facts";
import { formulaKinds } from "../sheet/formulas";
import type { CellContext } from "../sheet/read";
import { sheetScan, type ScannedCell, type SheetVisitor } from "../sheet/scan";
import { storedValue } from "../sheet/value";
import { pauseOf, type PackageWork } from "../work";
import { isTrue, numberOf, type XmlNode } from "../xml/node";
import { xmlScan, type TagPlace } from "../xml/scan";

export interface FrameFormula {
  readonly row: number;
  readonly column: number;
  /** In its stored form. */
  readonly text: string;
}

/** A sheet with the formulas of its cells, but not their values. */
export interface SheetFrame {
  readonly elements: readonly XmlNode[];
  /** Rows with a height, hidden or with an outline level. */
  readonly rows: readonly RowFacts[];
  readonly formulas: readonly FrameFormula[];
  /** Cells whose value has a picture or linked data behind it. */
  readonly linkedValues: number;
  /** The sheet's own opening tag. */
  readonly root: TagPlace | undefined;
  /** Where cells with metadata begin, and whether they hold a dynamic array. */
  readonly marked: readonly { readonly start: number; readonly dynamic: boolean }[];
  /** What its rows and cells use of the parts that all sheets share. */
  readonly styles: ReadonlySet<number>;
  readonly strings: ReadonlySet<number>;
}

interface Draft extends SheetFrame {
  readonly elements: XmlNode[];
  readonly rows: RowFacts[];
  readonly formulas: FrameFormula[];
  linkedValues: number;
  root: TagPlace | undefined;
  readonly marked: { readonly start: number; readonly dynamic: boolean }[];
  readonly styles: Set<number>;
  readonly strings: Set<number>;
}

const newFrame = (): Draft => ({
  elements: [],
  rows: [],
  formulas: [],
  linkedValues: 0,
  root: undefined,
  marked: [],
  styles: new Set(),
  strings: new Set(),
});

export const NO_FRAME: SheetFrame = newFrame();

/** A cell as it passes. */
export interface FrameCell {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  readonly formula: FileFormula | undefined;
  /** Its value has metadata: a picture, linked data or an error that is newer than the format. */
  readonly hasValueMetadata: boolean;
}

export type OnFrameCell = (cell: FrameCell) => void;

/** Enough where nobody asks for values, nor which kind of dynamic array a formula is. */
const NO_CONTEXT: CellContext = { strings: [], date1904: false, dynamic: new Set() };

function noteUse({ attributes, value, formula, start }: ScannedCell, draft: Draft, dynamic: ReadonlySet<number>): void {
  const { s: style, t: type, cm, vm } = attributes;
  draft.styles.add(style === undefined ? 0 : (numberOf(style) ?? 0));
  if (type === "s") draft.strings.add(Number(value));
  if (cm === undefined && vm === undefined) return;
  draft.marked.push({ start, dynamic: formula !== undefined && dynamic.has(numberOf(cm) ?? 0) });
  if (numberOf(vm) !== undefined) draft.linkedValues++;
}

const UNREADABLE: FileFormula = { kind: "unreadable", text: "" };

function frameVisitor(draft: Draft, context: CellContext, onCell: OnFrameCell | undefined) {
  const kinds = formulaKinds(context.dynamic);
  const late: ScannedCell[] = [];
  const give = (cell: ScannedCell, formula: FileFormula | undefined): void => {
    if (onCell === undefined) return;
    const { row, column, attributes } = cell;
    const hasValueMetadata = numberOf(attributes["vm"]) !== undefined;
    onCell({ row, column, value: storedValue(cell, context), formula, hasValueMetadata });
  };
  const add = (cell: ScannedCell, formula: FileFormula | undefined): void => {
    const { row, column } = cell;
    if (formula !== undefined && "text" in formula) draft.formulas.push({ row, column, text: formula.text });
    give(cell, formula);
  };
  const visitor: SheetVisitor = {
    root: (_, open) => void (draft.root = open),
    element: (node) => void draft.elements.push(node),
    row(row) {
      const facts = rowFacts(row);
      if (facts !== undefined) draft.rows.push(facts);
      if (isTrue(row.attributes["customFormat"])) draft.styles.add(numberOf(row.attributes["s"]) ?? 0);
    },
    cell(cell) {
      noteUse(cell, draft, context.dynamic);
      const formula = kinds.of(cell);
      if (formula === "later") late.push(cell);
      else add(cell, formula);
    },
  };
  /** Cells of a shared group that precede its first cell, or whose first cell is missing. */
  const end = (): void => {
    for (const cell of late) {
      const formula = kinds.of(cell);
      if (formula === "later") give(cell, UNREADABLE);
      else add(cell, formula);
    }
  };
  return { visitor, end };
}

/**
 * Streams a sheet.
 * @param onCell called with each cell in the file's order; one of a shared group that comes before the group's first
 * cell is given last
 */
export async function readFrame(
  pack: Package,
  path: string,
  work: PackageWork,
  context: CellContext = NO_CONTEXT,
  onCell?: OnFrameCell,
): Promise<SheetFrame> {
  const draft = newFrame();
  const { visitor, end } = frameVisitor(draft, context, onCell);
  const scan = xmlScan(path, sheetScan(visitor));
  const pause = pauseOf(work);
  for await (const piece of partTextPieces(pack, path, pause)) {
    scan.write(piece);
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  scan.close();
  end();
  return draft;
}

/** Frames by the path of the sheet's part. */
export type SheetFrames = ReadonlyMap<string, SheetFrame>;

/** Reads the frames that aren't known yet. */
export function framesOf(pack: Package, work: PackageWork, known: SheetFrames) {
  return async ({ path }: { readonly path: string }): Promise<SheetFrame> =>
    known.get(path) ?? (await readFrame(pack, path, work));
}
