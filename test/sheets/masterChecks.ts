/** The master check never says OK over a broken sheet: inputs broken in turn, rows of inputs deleted in turn. */
import { afterAll, describe, expect, inject, test } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { starterData } from "../../src/preview/file/starterBook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { startHeadless } from "../../src/preview/univer/start";
import { STARTER_SHEETS } from "../../src/sheets";
import type { StarterSheet } from "../../src/sheets/sheet";
import { STATES } from "../../src/sheets/states";
import { isCellFault, type CellValue, type CellWrite } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";
import { brokenInputs, filledIn, inputRows, rowDeleted } from "./broken";

const MASTER = { row: 1, column: 1, rows: 1, columns: 1 };

const masterOf = (book: SheetBook, sheet: string): CellValue => book.read({ sheet, ...MASTER }).values[0]?.[0] ?? null;

const isLie = (master: CellValue): boolean => master === STATES.good || isCellFault(master) || master === null;

const load = async (book: SheetBook, sheet: StarterSheet): Promise<void> => {
  const { sheet: data, names } = starterData(sheet, sheet.name, new Set());
  book.load({ sheets: [data], names });
  await book.whenCalculated();
};

const sameInitials = ({ cells, ...rest }: StarterSheet): StarterSheet => ({
  ...rest,
  cells: Object.fromEntries(
    Object.entries(cells).map(([address, cell]) => [
      address,
      cell.content === "CD" ? { ...cell, content: "AB" } : cell,
    ]),
  ),
});

/** Which of the ways and rows are tried: every so-manieth. */
export interface Share {
  readonly ways: number;
  readonly rows: number;
}

/** Breaks one input after the other and mends it again; answers where the master check was wrong. */
async function liesOf(book: SheetBook, sheet: StarterSheet, every: number): Promise<readonly string[]> {
  const filled = filledIn(sheet);
  await load(book, filled);
  const lies: string[] = [];
  let mended: CellWrite[] = [];
  for (const { address, way, content } of brokenInputs(sheet, filled).filter((_, at) => at % every === 0)) {
    const { row = 0, column = 0 } = parseCells(address) ?? {};
    const place = { sheet: sheet.name, row, column };
    book.write([...mended, { ...place, content }]);
    await book.whenCalculated();
    const master = masterOf(book, sheet.name);
    if (isLie(master)) lies.push(`${address} ${way}: ${JSON.stringify(master)}`);
    mended = [{ ...place, content: filled.cells[address]?.content ?? "" }];
  }
  book.write(mended);
  await book.whenCalculated();
  if (masterOf(book, sheet.name) !== STATES.good) lies.push("mended again: not OK");
  return lies;
}

export const checkMasters = (share: Share): void =>
  describe.each(STARTER_SHEETS.map((sheet) => [sheet.name, sheet] as const))(
    "the master check of %s",
    (name, sheet) => {
      const book = startHeadless(loadFunctions(inject("build")), { sheets: [emptySheet("Start")], names: [] });
      const filled = filledIn(sheet);
      afterAll(() => book.dispose());

      test("says OK only once everything is filled in and two people have signed", async () => {
        await load(book, sheet);
        expect(masterOf(book, name)).not.toBe(STATES.good);
        await load(book, filled);
        expect(masterOf(book, name)).toBe(STATES.good);
        await load(book, sameInitials(filled));
        expect(masterOf(book, name)).toBe(STATES.bad);
      });

      test("never says OK with a broken input", { timeout: 600_000 }, async () => {
        expect(await liesOf(book, sheet, share.ways)).toEqual([]);
      });

      test("never says OK where an input's row is deleted", { timeout: 600_000 }, async () => {
        const lies: string[] = [];
        for (const row of inputRows(filled).filter((_, at) => at % share.rows === 0)) {
          await load(book, rowDeleted(filled, row));
          const master = masterOf(book, name);
          if (isLie(master)) lies.push(`row ${row + 1}: ${JSON.stringify(master)}`);
        }
        expect(lies).toEqual([]);
      });
    },
  );
