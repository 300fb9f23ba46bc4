/** A sheet part as a stream: its cells one by one, everything else as small trees, each with its place in the text. */
import type { Attributes, XmlNode } from "../xml/node";
import { treeBuilder, type TagPlace, type TreeBuilder, type XmlVisitor } from "../xml/scan";

export interface ScannedFormula extends TagPlace {
  readonly attributes: Attributes;
  readonly text: string;
}

export interface ScannedCell extends TagPlace {
  readonly row: number;
  readonly column: number;
  readonly attributes: Attributes;
  readonly formula: ScannedFormula | undefined;
  /** What `<v>` holds. */
  readonly value: string | undefined;
  /** The text of `<is>`, without its reading aids. */
  readonly inline: string | undefined;
  /** Children that are none of these. */
  readonly others: readonly TagPlace[];
}

export interface ScannedRow {
  readonly row: number;
  readonly attributes: Attributes;
  readonly open: TagPlace;
  readonly empty: boolean;
}

export interface SheetVisitor {
  /** The sheet's own opening tag. */
  root?(attributes: Attributes, open: TagPlace): void;
  /** A child of the sheet that holds no cells. */
  element?(node: XmlNode): void;
  /** The element of the cells opens and closes; empty: `<sheetData/>`. */
  data?(open: TagPlace, empty: boolean): void;
  dataEnd?(close: TagPlace): void;
  row?(row: ScannedRow): void;
  rowEnd?(row: ScannedRow, close: TagPlace): void;
  cell?(cell: ScannedCell): void;
}

/** A cell while it is read. All of its fields are set at once: sheets have hundreds of thousands. */
interface Draft {
  readonly row: number;
  readonly column: number;
  readonly attributes: Attributes;
  readonly start: number;
  end: number;
  formula: { attributes: Attributes; text: string; start: number; end: number } | undefined;
  value: string | undefined;
  inline: string | undefined;
  others: { start: number; end: number }[];
}

const NO_OTHERS: { start: number; end: number }[] = [];

const CODE_A = 65;

/** B4 as numbers from 0, undefined where the text is no address. */
export function placeOf(address: string): { readonly row: number; readonly column: number } | undefined {
  let at = 0;
  let column = 0;
  for (; at < 3; at++) {
    const letter = (address.charCodeAt(at) & ~32) - CODE_A;
    if (!(letter >= 0 && letter < 26)) break;
    column = column * 26 + letter + 1;
  }
  const row = Number(address.slice(at));
  return at > 0 && column <= 16_384 && Number.isInteger(row) && row > 0 && row <= 1_048_576
    ? { row: row - 1, column: column - 1 }
    : undefined;
}

interface State {
  /** How many elements are open. */
  depth: number;
  row: number;
  column: number;
  inData: boolean;
  current: ScannedRow | undefined;
  cell: Draft | undefined;
  /** The child of the cell that is open: f, v, is or another. */
  part: string;
  /** Inside `<rPh>`, which says how a text is read aloud. */
  phonetic: boolean;
  inText: boolean;
  tree: TreeBuilder | undefined;
}

const CELL_DEPTH = 4;

function openCell(state: State, attributes: Attributes, start: number): void {
  const place = placeOf(attributes["r"] ?? "");
  state.column = place?.column ?? state.column + 1;
  state.cell = {
    row: place?.row ?? state.row,
    column: state.column,
    attributes,
    start,
    end: start,
    formula: undefined,
    value: undefined,
    inline: undefined,
    others: NO_OTHERS,
  };
}

/** Inside a cell. */
function openPart(state: State, cell: Draft, name: string, attributes: Attributes, { start, end }: TagPlace): void {
  if (state.depth > CELL_DEPTH + 1) {
    if (name === "rPh") state.phonetic = true;
    state.inText = name === "t";
    return;
  }
  state.part = name;
  if (name === "f") cell.formula = { attributes, text: "", start, end };
  else if (name === "v") cell.value ??= "";
  else if (name === "is") cell.inline ??= "";
  else cell.others = [...cell.others, { start, end }];
}

function textPart(state: State, cell: Draft, text: string): void {
  if (state.part === "f" && cell.formula !== undefined) cell.formula.text += text;
  else if (state.part === "v") cell.value = (cell.value ?? "") + text;
  else if (state.part === "is" && state.inText && !state.phonetic) cell.inline = (cell.inline ?? "") + text;
}

function closePart(state: State, cell: Draft, name: string, end: number): void {
  state.inText = false;
  if (state.depth > CELL_DEPTH + 1) {
    if (name === "rPh") state.phonetic = false;
    return;
  }
  const other = cell.others.at(-1);
  if (state.part === "f" && cell.formula !== undefined) cell.formula.end = end;
  else if (other !== undefined && state.part !== "v" && state.part !== "is") other.end = end;
  state.part = "";
}

function openInData(
  state: State,
  visitor: SheetVisitor,
  name: string,
  attributes: Attributes,
  at: TagPlace,
  empty: boolean,
): void {
  if (state.depth === 3 && name === "row") {
    const number = Number(attributes["r"]);
    state.row = Number.isInteger(number) && number > 0 ? number - 1 : state.row + 1;
    state.column = -1;
    state.current = { row: state.row, attributes, open: at, empty };
    visitor.row?.(state.current);
  } else if (state.depth === CELL_DEPTH && name === "c") openCell(state, attributes, at.start);
  else if (state.cell !== undefined) openPart(state, state.cell, name, attributes, at);
}

function closeInData(state: State, visitor: SheetVisitor, name: string, at: TagPlace): void {
  if (state.depth === 3 && state.current !== undefined) visitor.rowEnd?.(state.current, at);
  else if (state.depth === CELL_DEPTH && state.cell !== undefined) {
    state.cell.end = at.end;
    visitor.cell?.(state.cell);
    state.cell = undefined;
  } else if (state.cell !== undefined) closePart(state, state.cell, name, at.end);
}

/** Turns a stream of tags into that of a sheet. */
export function sheetScan(visitor: SheetVisitor): XmlVisitor {
  const state: State = {
    depth: 0,
    row: -1,
    column: -1,
    inData: false,
    current: undefined,
    cell: undefined,
    part: "",
    phonetic: false,
    inText: false,
    tree: undefined,
  };
  return {
    open(name, attributes, at, empty) {
      state.depth++;
      if (state.depth === 1) visitor.root?.(attributes, at);
      else if (state.depth === 2 && name === "sheetData") {
        state.inData = true;
        visitor.data?.(at, empty);
      } else if (state.inData) openInData(state, visitor, name, attributes, at, empty);
      else {
        if (state.depth === 2) state.tree = treeBuilder();
        state.tree?.open(name, attributes, at, empty);
      }
    },
    close(name, at) {
      if (state.depth === 2 && state.inData) {
        state.inData = false;
        visitor.dataEnd?.(at);
      } else if (state.inData) closeInData(state, visitor, name, at);
      else if (state.depth > 1) closeElement(state, visitor, name, at);
      state.depth--;
    },
    text(text) {
      if (state.cell !== undefined) textPart(state, state.cell, text);
      else if (!state.inData) state.tree?.text(text);
    },
  };
}

function closeElement(state: State, visitor: SheetVisitor, name: string, at: TagPlace): void {
  state.tree?.close(name, at);
  const root = state.depth === 2 ? state.tree?.root() : undefined;
  if (state.depth === 2) state.tree = undefined;
  if (root !== undefined) visitor.element?.(root);
}
