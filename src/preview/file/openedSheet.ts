/** A sheet of a file as the sheet engine takes it. */
import type { FileCell, FileFormula, NewStyle, StoredSheetFacts, ValidationFacts } from "../../workbook/package";
import { placeNumber } from "../../workbook/columns";
import { isCellFault, type CellValue } from "../../workbook/port";
import { isStateCondition } from "../../sheets/states";
import { parseCells } from "../../workbook/reader/reference";
import type { CellData, KeptFormula, PlainValue, SheetData, ValidationData } from "./bookData";
import { openedGroups } from "./openedGroups";
import { readFormula } from "./readable/formula";
import type { ReadableBook } from "./readable/pass";

export interface SheetReading {
  readonly known: ReadableBook;
  readonly looks: readonly NewStyle[];
  /** Formulas of files as one types them. */
  typed(formula: string): string;
}

export interface SheetCollector {
  add(cell: FileCell): void;
  sheet(facts: StoredSheetFacts, hidden: boolean): SheetData;
}

export const plainOf = (value: CellValue): PlainValue | null => (isCellFault(value) ? value.code : value);

/** An array or a what-if table whose cells come one after the other. */
interface OpenArray {
  readonly isKept: boolean;
  readonly row: number;
  readonly column: number;
  readonly spill: (PlainValue | null)[][];
}

const emptySpill = (rows: number, columns: number): (PlainValue | null)[][] =>
  Array.from({ length: rows }, () => new Array<PlainValue | null>(columns).fill(null));

/** Arrays so large are no table of results; what they hold isn't compared. */
const LARGEST_SPILL = 100_000;

const UNMOVABLE = "formulas that several cells share and that can't be moved";

type Stored = { readonly text: string; readonly isArray: boolean } | { readonly why: string; readonly text: string };

function storedFormula(formula: Exclude<FileFormula, { kind: "filled" }>): Stored {
  if (formula.kind === "dataTable") return { why: "what-if tables", text: `TABLE(${formula.inputs.join(",")})` };
  if (formula.kind === "unreadable") return { why: UNMOVABLE, text: formula.text };
  return { text: formula.text, isArray: formula.kind === "array" };
}

type Cells = NonNullable<ReturnType<typeof parseCells>>;
type FormulaPart = Pick<CellData, "formula" | "source" | "kept">;

export function sheetCollector(name: string, { known, looks, typed }: SheetReading): SheetCollector {
  const cells = new Map<number, CellData>();
  const arrays = new Map<number, OpenArray>();
  const { cells: styles } = known.book.styles;
  const formulaPart = (stored: Stored, { row, column, value }: FileCell): FormulaPart => {
    const source = typed(stored.text);
    const keep = (why: string): { kept: KeptFormula } => ({ kept: { formula: source, why, value: plainOf(value) } });
    if ("why" in stored) return keep(stored.why);
    const read = readFormula(source, { sheet: name, row, column }, stored.isArray, known);
    if ("why" in read) return keep(read.why);
    return { formula: read.formula, ...(read.formula !== source && { source }) };
  };
  const lookParts = new Map<number, Pick<CellData, "look" | "format">>();
  const lookPart = (style: number): Pick<CellData, "look" | "format"> => {
    const known = lookParts.get(style);
    if (known !== undefined) return known;
    const look = looks[style] ?? {};
    const format = styles[style]?.numberFormat ?? "General";
    const part = { ...(Object.keys(look).length > 0 && { look }), ...(format !== "General" && { format }) };
    lookParts.set(style, part);
    return part;
  };
  const openArray = ({ row, column, formula }: FileCell, part: FormulaPart): OpenArray["spill"] | undefined => {
    if (formula?.kind !== "array" && formula?.kind !== "dataTable") return undefined;
    const { rows, columns } = formula.area;
    if (rows * columns < 2 || rows * columns > LARGEST_SPILL) return undefined;
    const spill = emptySpill(rows, columns);
    arrays.set(placeNumber(row, column), { isKept: part.kept !== undefined, row, column, spill });
    return spill;
  };
  return {
    add(cell) {
      const { row, column, formula, style } = cell;
      const value = plainOf(cell.value);
      const looked = lookPart(style);
      if (formula?.kind === "filled") {
        const array = arrays.get(placeNumber(formula.by.row, formula.by.column));
        const line = array?.spill[row - array.row];
        if (array !== undefined && line !== undefined) line[column - array.column] = value;
        // The formula fills the cells again; old results there would block it.
        cells.set(placeNumber(row, column), { row, column, value: array?.isKept === false ? null : value, ...looked });
        return;
      }
      const part = formula === undefined ? {} : formulaPart(storedFormula(formula), cell);
      if (value === null && formula === undefined && Object.keys(looked).length === 0) return;
      const spill = openArray(cell, part);
      if (spill?.[0] !== undefined) spill[0][0] = value;
      cells.set(placeNumber(row, column), {
        row,
        column,
        value,
        ...part,
        ...looked,
        ...(spill !== undefined && { spill }),
      });
    },
    sheet(facts, hidden) {
      addRules(facts.validations, cells);
      addStates(facts.formatRules, cells);
      return sheetOf(name, facts, hidden, [...cells.values()]);
    },
  };
}

const TYPES: readonly string[] = ["list", "whole", "decimal", "date", "textLength", "custom"];
/** A rule for more cells than these is only known to those that hold something. */
const MOST_EMPTY_CELLS = 1_000;

const isInside = ({ row, column, rows, columns }: Cells, at: CellData): boolean =>
  at.row >= row && at.row < row + rows && at.column >= column && at.column < column + columns;

const numberOrText = (text: string): number | string => (/^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text);

/** Gives each cell its rule, since the engine carries rules along with cells. */
function addRules(rules: readonly ValidationFacts[], cells: Map<number, CellData>): void {
  for (const { areas, formulas, type, ...rest } of rules) {
    if (!TYPES.includes(type)) continue;
    const rule = { ...rest, type: type as ValidationData["type"], formulae: formulas.map(numberOrText) };
    for (const area of areas.split(/\s+/)) addRule(rule, parseCells(area), cells);
  }
}

function addRule(validation: ValidationData, area: Cells | undefined, cells: Map<number, CellData>): void {
  if (area === undefined) return;
  const { row: top, column: left, rows, columns } = area;
  if (rows * columns > MOST_EMPTY_CELLS) {
    for (const [key, cell] of cells) if (isInside(area, cell)) cells.set(key, { ...cell, validation });
    return;
  }
  for (let row = top; row < top + rows; row++)
    for (let column = left; column < left + columns; column++) {
      const key = placeNumber(row, column);
      cells.set(key, { ...(cells.get(key) ?? { row, column, value: null }), validation });
    }
}

/** Cells that the file colours by the state that they say. */
function addStates(rules: StoredSheetFacts["formatRules"], cells: Map<number, CellData>): void {
  const areas = rules
    .filter(({ formulas }) => formulas.some(isStateCondition))
    .flatMap((rule) => rule.areas.split(/\s+/).flatMap((text) => parseCells(text) ?? []));
  if (areas.length === 0) return;
  for (const [key, cell] of cells)
    if (areas.some((area) => isInside(area, cell))) cells.set(key, { ...cell, state: true });
}

function sheetOf(name: string, facts: StoredSheetFacts, hidden: boolean, cells: readonly CellData[]): SheetData {
  const last = cells.reduce((most, { column }) => Math.max(most, column), 25) + 10;
  const spans = facts.columns.flatMap(({ first, last: end, width, hidden: isHidden }) =>
    Array.from({ length: Math.max(0, Math.min(end, last) - first + 1) }, (_, at) => ({
      column: first + at,
      width,
      isHidden,
    })),
  );
  const groups = openedGroups(facts.rows);
  return {
    name,
    cells,
    ...(groups.length > 0 && { groups }),
    widths: Object.fromEntries(spans.flatMap(({ column, width }) => (width === undefined ? [] : [[column, width]]))),
    heights: Object.fromEntries(facts.rows.flatMap(({ row, height }) => (height === undefined ? [] : [[row, height]]))),
    frozenRows: facts.frozenRows,
    frozenColumns: facts.frozenColumns,
    hidden,
    hiddenRows: facts.rows.flatMap(({ row, hidden: isHidden }) => (isHidden ? [row] : [])),
    hiddenColumns: spans.flatMap(({ column, isHidden }) => (isHidden ? [column] : [])),
    ...(facts.protected && { locked: true }),
    merged: facts.merged,
  };
}
