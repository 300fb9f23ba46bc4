/** Reads and writes cells through Office.js, at most 50,000 cells a round trip. */
import type { Area, Block, CellFault, CellValue, CellWrite } from "../port";
import { BLOCK_CELLS, blocksOf } from "../reader/sheets";
import { supports } from "./run";

export const rangeOf = (context: Excel.RequestContext, area: Area): Excel.Range =>
  context.workbook.worksheets.getItem(area.sheet).getRangeByIndexes(area.row, area.column, area.rows, area.columns);

const LOOKS_LIKE_ERROR = /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|[A-Z_]+[!?]?)$/;

interface Piece {
  readonly area: Area;
  readonly range: Excel.Range;
}

/** Pieces in groups of at most 50,000 cells together. */
function* groups(areas: readonly Area[]): Generator<readonly Area[]> {
  let group: Area[] = [];
  let cells = 0;
  for (const area of areas) {
    const size = area.rows * area.columns;
    if (group.length > 0 && cells + size > BLOCK_CELLS) {
      yield group;
      group = [];
      cells = 0;
    }
    group.push(area);
    cells += size;
  }
  if (group.length > 0) yield group;
}

/** Excel gives "" for an empty cell: only a formula, or nothing, can stand behind it. */
const cellOf = (value: unknown, formula: unknown): string | number | boolean | null =>
  value === "" && formula === "" ? null : (value as string | number | boolean);

const isFormula = (text: unknown): text is string => typeof text === "string" && text.startsWith("=");

function blockOf({ area, range }: Piece): { area: Area; formulas: string[][]; values: CellValue[][] } {
  const written = range.formulas as unknown[][];
  return {
    area,
    formulas: written.map((row) => row.map((text) => (isFormula(text) ? text : ""))),
    values: (range.values as unknown[][]).map((row, at) =>
      row.map((value, over) => cellOf(value, written[at]?.[over])),
    ),
  };
}

/** A text like #N/A is an error only where Excel says that it is one: asked for only where such a text came. */
async function markErrors(
  context: Excel.RequestContext,
  pieces: readonly Piece[],
  values: CellValue[][][],
): Promise<void> {
  const doubtful = pieces.filter((_, at) =>
    values[at]?.some((row) => row.some((cell) => typeof cell === "string" && LOOKS_LIKE_ERROR.test(cell))),
  );
  for (const { range } of doubtful) range.load("valueTypes");
  if (doubtful.length === 0) return;
  await context.sync();
  for (const piece of doubtful) {
    const rows = values[pieces.indexOf(piece)] ?? [];
    piece.range.valueTypes.forEach((types, row) => {
      types.forEach((type, column) => {
        const cells = rows[row];
        if (cells !== undefined && type === "Error")
          cells[column] = { error: String(cells[column]) } satisfies CellFault;
      });
    });
  }
}

interface Place {
  readonly formulas: string[][];
  readonly area: Area;
  readonly row: number;
  readonly column: number;
  readonly parent: Excel.Range;
}

/**
 * A cell that another one spills into has no formula of its own, but may show its parent's: wherever a formula repeats
 * its neighbour's word for word, Excel is asked for the parent.
 */
async function dropSpilled(
  context: Excel.RequestContext,
  pieces: readonly Piece[],
  formulas: string[][][],
): Promise<void> {
  if (!supports("1.12")) return;
  const places: Place[] = [];
  pieces.forEach(({ range, area }, at) => {
    const rows = formulas[at] ?? [];
    rows.forEach((cells, row) => {
      cells.forEach((text, column) => {
        if (text === "" || (text !== rows[row - 1]?.[column] && text !== cells[column - 1])) return;
        const parent = range.getCell(row, column).getSpillParentOrNullObject();
        parent.load("rowIndex,columnIndex");
        places.push({ formulas: rows, area, row, column, parent });
      });
    });
  });
  if (places.length === 0) return;
  await context.sync();
  for (const { formulas: rows, area, row, column, parent } of places) {
    const own =
      parent.isNullObject || (parent.rowIndex === area.row + row && parent.columnIndex === area.column + column);
    const cells = rows[row];
    if (!own && cells !== undefined) cells[column] = "";
  }
}

async function readGroup(context: Excel.RequestContext, areas: readonly Area[]): Promise<readonly Block[]> {
  const pieces = areas.map((area) => ({ area, range: rangeOf(context, area) }));
  for (const { range } of pieces) range.load("values,formulas");
  await context.sync();
  const blocks = pieces.map(blockOf);
  const values = blocks.map((block) => block.values);
  const formulas = blocks.map((block) => block.formulas);
  await markErrors(context, pieces, values);
  await dropSpilled(context, pieces, formulas);
  return blocks;
}

/** Formulas and values of areas; a large one is read piece by piece and put together. */
export async function readAreas(context: Excel.RequestContext, areas: readonly Area[]): Promise<readonly Block[]> {
  const cut = areas.map(blocksOf);
  const read: Block[] = [];
  for (const group of groups(cut.flat())) read.push(...(await readGroup(context, group)));
  let at = 0;
  return areas.map((area, which) => {
    const parts = read.slice(at, (at += cut[which]?.length ?? 0));
    return { area, formulas: parts.flatMap((part) => part.formulas), values: parts.flatMap((part) => part.values) };
  });
}

/** A text that stays a text whatever it looks like. */
export const asText = (text: string): string => (text.startsWith("=") ? `'${text}` : String(asTyped(text)));

/** Texts that Excel would take for a number, a date or a truth value get its own mark for text. */
export function asTyped(content: CellWrite["content"]): string | number | boolean {
  if (typeof content !== "string") return content ?? "";
  if (content.startsWith("=")) return content;
  return /^\s*['\-+@.\d(#$€£%]|^(?:true|false)$|^[a-z]{3,9}[ .-]+\d/i.test(content) ? `'${content}` : content;
}

/** Cells in one row that stand side by side, as one write. */
function runs(cells: readonly CellWrite[]): readonly (readonly CellWrite[])[] {
  const sorted = [...cells].sort((a, b) => a.sheet.localeCompare(b.sheet) || a.row - b.row || a.column - b.column);
  const found: CellWrite[][] = [];
  for (const cell of sorted) {
    const last = found.at(-1)?.at(-1);
    const joins = last?.sheet === cell.sheet && last.row === cell.row && last.column === cell.column - 1;
    if (joins) found.at(-1)?.push(cell);
    else found.push([cell]);
  }
  return found;
}

/** What a cell held, as it must be typed to be held again. */
const again = (held: unknown): unknown => (typeof held === "string" && held !== "" ? asTyped(held) : held);

/** Writes cells; where Excel breaks off, what was there before is written back. */
export async function writeCells(context: Excel.RequestContext, cells: readonly CellWrite[]): Promise<void> {
  const pieces = runs(cells).flatMap((run) => {
    const [first] = run;
    const area = first && { sheet: first.sheet, row: first.row, column: first.column, rows: 1, columns: run.length };
    return area === undefined ? [] : [{ run, range: rangeOf(context, area) }];
  });
  for (const { range } of pieces) range.load("formulas");
  await context.sync();
  const before = pieces.map(({ range }) => range.formulas as unknown[][]);
  for (const { run, range } of pieces) range.formulas = [run.map((cell) => asTyped(cell.content))];
  try {
    await context.sync();
  } catch (error) {
    pieces.forEach(({ range }, at) => (range.formulas = (before[at] ?? []).map((row) => row.map(again))));
    await context.sync().catch(() => undefined);
    throw error;
  }
}
