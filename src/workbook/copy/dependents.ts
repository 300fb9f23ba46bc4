/** Finds the cells that lose their values without our functions: those that call them, and all that depend on those. */
import type { Address, Area, BookReader, CellValue } from "../port";
import { mentionsUs } from "../reader/calls";
import { cellsText } from "../reader/reference";
import { readFormulas } from "../reader/sheets";
import type { NextSlice } from "../timeSlices";
import { plainArea, referencesOf } from "./reach";
import { readerIndex } from "./readerIndex";

export interface FormulaCell {
  readonly address: Address;
  readonly formula: string;
  readonly value: CellValue;
}

export interface DependentCell extends FormulaCell {
  /** Everything that the formula fills: its own cell and its spill. */
  readonly area: Area;
  /** It counts as dependent only because its references can't be followed. */
  readonly unclear: boolean;
}

/** A workbook's formulas and what each refers to. */
export interface FormulaGraph {
  readonly cells: readonly FormulaCell[];
  /** The areas that each formula refers to; undefined if one of them isn't known. */
  readonly reads: readonly (readonly Area[] | undefined)[];
  /** The areas that formulas fill: the spill, if there is one. */
  filled(cells: readonly FormulaCell[]): readonly Area[] | Promise<readonly Area[]>;
}

const NEVER: NextSlice = () => undefined;

/**
 * All cells that use us or depend on such a cell, in the order given. A formula with unknown references counts as
 * dependent: its value is kept rather than lost.
 */
export async function needingUs(graph: FormulaGraph, pause: NextSlice = NEVER): Promise<readonly DependentCell[]> {
  const { cells, reads } = graph;
  const index = await readerIndex(reads, pause);
  const areas = new Map<number, Area>();
  let fresh: number[] = [];
  for (const [at, { formula }] of cells.entries()) if (reads[at] === undefined || mentionsUs(formula)) fresh.push(at);
  while (fresh.length > 0) {
    const filled = await graph.filled(fresh.flatMap((at) => cells[at] ?? []));
    for (const [at, area] of filled.entries()) areas.set(fresh[at] ?? -1, area);
    const next: number[] = [];
    for (const area of filled) {
      const wait = pause();
      if (wait !== undefined) await wait;
      for (const at of index.take(area)) if (!areas.has(at)) next.push(at);
    }
    fresh = next;
  }
  const found: DependentCell[] = [];
  for (const [at, { address, formula, value }] of cells.entries()) {
    const area = areas.get(at);
    const unclear = reads[at] === undefined && !mentionsUs(formula);
    if (area !== undefined) found.push({ address, formula, value, area, unclear });
  }
  return found;
}

const alone = ({ address }: FormulaCell): Area => ({ ...address, rows: 1, columns: 1 });

async function formulaCells(book: BookReader): Promise<readonly FormulaCell[]> {
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

/** The areas that each formula refers to, in one round trip; undefined if one of them isn't known. */
async function areasOf(book: BookReader, cells: readonly FormulaCell[]): Promise<FormulaGraph["reads"]> {
  const reaches = cells.map(({ formula, address }) => referencesOf(formula, address));
  const asked = reaches.flatMap((reach) => (reach ?? []).filter((one) => plainArea(one) === undefined));
  const answers = asked.length === 0 ? [] : await book.resolve(asked);
  const resolved = new Map(asked.map((one, at) => [one, answers[at]] as const));
  return reaches.map((reach) => {
    const areas = reach?.map((one) => plainArea(one) ?? resolved.get(one));
    return areas?.every((area) => area !== undefined) === true ? areas : undefined;
  });
}

/** The same of a workbook that a host has open, sheet by sheet, row by row; none if no cell uses us. */
export async function dependentCells(book: BookReader): Promise<readonly DependentCell[]> {
  const cells = await formulaCells(book);
  if (!cells.some(({ formula }) => mentionsUs(formula))) return [];
  return needingUs({
    cells,
    reads: await areasOf(book, cells),
    async filled(those) {
      const spills = await book.resolve(
        those.map((cell) => ({ text: `${cellsText(alone(cell))}#`, from: cell.address })),
      );
      return those.map((cell, at) => spills[at] ?? alone(cell));
    },
  });
}
