/** Inserts every function at several places of a workbook, and tells what its cell then holds. */
import { CATALOGUE, COMPILED, evaluate, type CellFunction } from "../../core";
import { panelEngine } from "../../src/taskpane/engine";
import { outcomeOf } from "../../src/functions/outcome";
import { insertChosen } from "../../src/taskpane/model/insertChosen";
import { exampleOf, insertionOf, type CallExample } from "../../src/taskpane/model/insertion";
import { sessionLog } from "../../src/workbook/callLog";
import { isMatrix, isOutcomeFault } from "../../src/workbook/values";
import { isCellFault, type Address, type Area, type CellValue, type Workbook } from "../../src/workbook/port";
import { MOST_COLUMNS, MOST_ROWS } from "../../src/workbook/reader/reference";

export const ENGINE = panelEngine(sessionLog());

export interface Card {
  readonly definition: CellFunction;
  readonly example: CallExample;
}

export const CARDS: readonly Card[] = CATALOGUE.flatMap((definition) => {
  const compiled = COMPILED.get(definition.id);
  if (compiled === undefined) throw new Error(`no function ${definition.id}`);
  const example = exampleOf(definition, (raw) => outcomeOf(evaluate(compiled, raw, CATALOGUE)));
  return example === undefined ? [] : [{ definition, example }];
});

/** How many cells hold an error, or the text of one. */
const faultsAmong = (cells: readonly CellValue[]): readonly string[] =>
  cells.flatMap((cell) => {
    const text = isCellFault(cell) ? cell.code : cell;
    return typeof text === "string" && /^#[A-Z]/.test(text) ? [text] : [];
  });

/** What a table holds on purpose: the errors that published checks expect. */
const expectedFaults = ({ outcome }: CallExample): readonly string[] =>
  isOutcomeFault(outcome) || !isMatrix(outcome.value) ? [] : faultsAmong(outcome.value.flat());

/** A place: where a card goes on a sheet of its own, and what is there before. */
export interface Place {
  readonly name: string;
  at(card: Card, sheet: string): Address;
  crowd(area: Area): readonly { readonly row: number; readonly column: number }[];
}

const NONE = () => [];

const areaOf = ({ definition, example }: Card, sheet: string): Area =>
  insertionOf(definition, example, { sheet, row: 0, column: 0 }).area;

/** Cells all around an area, none in it. */
const around = ({ row, column, rows, columns }: Area): readonly { row: number; column: number }[] => [
  ...Array.from({ length: columns + 2 }, (_, over) => ({ row: row - 1, column: column - 1 + over })),
  ...Array.from({ length: columns + 2 }, (_, over) => ({ row: row + rows, column: column - 1 + over })),
  ...Array.from({ length: rows }, (_, down) => ({ row: row + down, column: column - 1 })),
  ...Array.from({ length: rows }, (_, down) => ({ row: row + down, column: column + columns })),
];

export const EMPTY: Place = { name: "an empty sheet", at: (_, sheet) => ({ sheet, row: 0, column: 0 }), crowd: NONE };
export const CROWDED: Place = {
  name: "a crowded sheet",
  at: (_, sheet) => ({ sheet, row: 2, column: 2 }),
  crowd: around,
};
/** The last column that the page's sheets have at first: they have to grow. */
export const LAST_COLUMN: Place = {
  name: "the last column that the page shows",
  at: (_, sheet) => ({ sheet, row: 4, column: 25 }),
  crowd: NONE,
};
/** The last cells of an Excel sheet that the card fits into. */
export const LAST_CELLS: Place = {
  name: "the last rows and columns of Excel",
  at(card, sheet) {
    const { rows, columns } = areaOf(card, sheet);
    return { sheet, row: MOST_ROWS - rows, column: MOST_COLUMNS - columns };
  },
  crowd: NONE,
};

/** Cards that fail, each with what was said and read; a sentence that doesn't fit the cell counts too. */
export async function insertedWrongly(
  book: Workbook,
  place: Place,
  sheetOf: (card: Card) => string,
): Promise<readonly string[]> {
  const wrong: string[] = [];
  for (const card of CARDS) {
    const { definition, example } = card;
    const sheet = sheetOf(card);
    const at = place.at(card, sheet);
    const { area } = insertionOf(definition, example, at);
    const crowd = place.crowd(area).map((cell) => ({ ...cell, sheet, content: 7 }));
    if (crowd.length > 0) {
      await book.makeRoom?.({
        sheet,
        row: 0,
        column: 0,
        rows: area.row + area.rows + 1,
        columns: area.column + area.columns + 1,
      });
      await book.write(crowd);
    }
    try {
      const { sentence, result, failed } = await insertChosen({ book, engine: ENGINE }, card, at, {
        times: 20,
        every: 50,
      });
      const [block] = await book.read([{ ...area, row: result.row, rows: area.row + area.rows - result.row }]);
      const cells = block?.values.flat() ?? [];
      const faults = faultsAmong(cells);
      if (
        failed ||
        String(faults) !== String(expectedFaults(example)) ||
        !sentence.startsWith(`Inserted ${definition.id} at `)
      )
        wrong.push(`${definition.id}: ${sentence} ${faults.join(" ")}`);
    } catch (error) {
      wrong.push(`${definition.id}: ${String(error)}`);
    }
  }
  return wrong;
}
