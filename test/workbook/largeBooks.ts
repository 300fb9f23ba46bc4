/** Large workbooks for the stand-in, and what the commands send and get for them. */
import { sessionLog } from "../../src/workbook/callLog";
import { findDamage } from "../../src/workbook/mend/damage";
import { mendCells, type MendOutcome } from "../../src/workbook/mend/mend";
import type { Workbook } from "../../src/workbook/port";
import { scanner, type CautionEngine } from "../../src/workbook/scan/scan";
import { keyOf, type SheetModel } from "../excelHost/model/workbook";

const KNOWN = new Set(["PIPE.HEADLOSS"]);

export const ENGINE: CautionEngine = {
  known: KNOWN,
  log: sessionLog(),
  call: () => ({ value: 1 }),
  cautionsOf: () => [],
};

/** A formula of 75 characters, as inserted ones are. */
const formulaOf = (row: number): string =>
  `=WARMBACK.PIPE.HEADLOSS(A${String(row + 1).padEnd(6, " ")},"2 in",100,"40","horizontal")`.padEnd(74, " ") + " ";

/** Column A: flows; column B: so many formulas of ours. */
export function fillFormulas(sheet: SheetModel, rows: number): void {
  for (let row = 0; row < rows; row++) {
    sheet.cells.set(keyOf(row, 0), { formula: "", value: row + 1 });
    sheet.cells.set(keyOf(row, 1), { formula: formulaOf(row), value: 1.2345678901234 });
  }
}

/** Texts of 95 characters and no formula, ten a row. */
export function fillTexts(sheet: SheetModel, cells: number): void {
  for (let at = 0; at < cells; at++)
    sheet.cells.set(keyOf(Math.floor(at / 10), at % 10), {
      formula: "",
      value: "Lap pool, Fernhill Hall. ".repeat(4).slice(0, 95),
    });
}

/** Formulas that lost their functions, each in a row of its own so that no two can be written together. */
export function fillBroken(sheet: SheetModel, rows: number): void {
  for (let row = 0; row < rows; row++)
    sheet.cells.set(keyOf(row, row % 2), {
      formula: `=_xldudf_WARMBACK_PIPE_HEADLOSS(C${String(row + 1)},"2 in",100)`,
      value: "#NAME?",
      error: true,
    });
}

export const scanAll = (book: Workbook): Promise<unknown> => scanner(book, ENGINE).scan();

const KNOWLEDGE = { known: KNOWN, isSingle: () => true, mostArguments: () => undefined };

export async function mendAll(book: Workbook): Promise<readonly MendOutcome[]> {
  const { damaged } = await findDamage(book, KNOWLEDGE);
  return mendCells(book, ENGINE, damaged);
}
