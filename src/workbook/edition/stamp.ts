/** The edition that made a sheet: stored in it as a text, so that a later edition can tell. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import type { Address, Block } from "../port";
import { parseCells } from "../reader/reference";

const WORDS = "Made with";

/** "Made with Warmback 0.1.0", and what records, check tables and notes say of themselves. */
const STAMP = /^(?:(?:Made|Computed) (?:with|by) )?(Warmback \d+(?:\.\d+)+[\w.-]*?)(?:[.,:]?\s.*|\.?)$/s;

export interface FoundStamp {
  readonly address: Address;
  readonly edition: string;
}

const lastRow = (sheet: StarterSheet): number =>
  Math.max(...Object.keys(sheet.cells).map((at) => (parseCells(at)?.row ?? 0) + 1));

/** The sheet with the edition in a cell of its own, two rows below its last line: no formula refers to it. */
export function stamped(sheet: StarterSheet, edition: string): StarterSheet {
  const cell: SheetCell = { content: `${WORDS} ${edition}`, text: true, style: "Explanatory Text" };
  return { ...sheet, cells: { ...sheet.cells, [`A${String(lastRow(sheet) + 2)}`]: cell } };
}

/** The stamps in what was read of a workbook. */
export function stampsIn(blocks: readonly Block[]): readonly FoundStamp[] {
  return blocks.flatMap(({ area, values, formulas }) =>
    values.flatMap((line, down) =>
      line.flatMap((value, over): readonly FoundStamp[] => {
        if (typeof value !== "string" || (formulas[down]?.[over] ?? "") !== "") return [];
        const edition = STAMP.exec(value)?.[1];
        return edition === undefined
          ? []
          : [{ edition, address: { sheet: area.sheet, row: area.row + down, column: area.column + over } }];
      }),
    ),
  );
}
