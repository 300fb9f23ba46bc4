/** Every function of the catalogue inserted into Excel's workbook, and what is said where it can't be. */
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { CATALOGUE, COMPILED, evaluate, type CellInput, type CellMatrix, type CellScalar } from "../../core";
import { outcomeOf } from "../../src/functions/outcome";
import { insertChosen } from "../../src/taskpane/model/insertChosen";
import { excelWorkbook } from "../../src/workbook/excel/excelWorkbook";
import { isCellFault, type Area, type CellValue } from "../../src/workbook/port";
import { readCalls } from "../../src/workbook/reader/calls";
import { MOST_COLUMNS, parseCells } from "../../src/workbook/reader/reference";
import { isMatrix, isOutcomeFault } from "../../src/workbook/values";
import { excelHost, install, WEB, WINDOWS_20, type ExcelStandIn } from "../excelHost";
import type { Result } from "../excelHost/model/cells";
import { keyOf, type SheetModel } from "../excelHost/model/workbook";
import { CARDS, CROWDED, EMPTY, ENGINE, insertedWrongly, LAST_CELLS, LAST_COLUMN, type Card } from "./insertEverywhere";

/** Desktop Excel passes a blank cell of a range as 0. */
const rangeValues = (sheet: SheetModel, { row, column, rows, columns }: Omit<Area, "sheet">): CellMatrix =>
  Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, over) => {
      const cell = sheet.cells.get(keyOf(row + down, column + over));
      return cell === undefined ? 0 : cell.value;
    }),
  );

const scalarOf = (text: string): CellScalar => {
  if (text === "") return null;
  if (text.startsWith('"')) return text.slice(1, -1).replaceAll('""', '"');
  if (text === "TRUE" || text === "FALSE") return text === "TRUE";
  const number = Number(text);
  if (Number.isNaN(number)) throw new Error(`can't read the argument ${text}`);
  return number;
};

const argumentOf = (sheet: SheetModel, text: string): CellInput => {
  const area = parseCells(text);
  return area === undefined ? scalarOf(text) : rangeValues(sheet, area);
};

const resultCell = (value: CellValue): CellScalar => (isCellFault(value) ? value.code : (value ?? ""));

/** What a formula of ours comes to, worked out from the cells of the stand-in as they are. */
function resultOf(formula: string, sheet: SheetModel): Result | undefined {
  const [call] = readCalls(formula, new Set(COMPILED.keys()));
  const compiled = call && COMPILED.get(call.id);
  if (call === undefined || compiled === undefined) return undefined;
  const args = call.args.map(({ start, end }) => argumentOf(sheet, formula.slice(start, end).trim()));
  const outcome = outcomeOf(evaluate(compiled, args, CATALOGUE));
  if (isOutcomeFault(outcome)) return { error: outcome.code };
  if (isMatrix(outcome.value)) return outcome.value.map((row) => row.map((each) => resultCell(each) ?? ""));
  return resultCell(outcome.value) ?? "";
}

let excel: ExcelStandIn;
let restore: () => void;
const book = excelWorkbook();
const titles = CARDS.map((_, at) => `S${String(at)}`);
const sheetOf = (card: Card): string => `S${String(CARDS.indexOf(card))}`;
const cardOf = (id: string): Card => {
  const card = CARDS.find(({ definition }) => definition.id === id);
  if (card === undefined) throw new Error(`no card ${id}`);
  return card;
};

const open = (profile = WINDOWS_20, sheets: readonly string[] = titles): void => {
  excel = excelHost(profile, sheets);
  excel.host.resultOf = (formula, _, sheet) => resultOf(formula, sheet);
  restore = install(excel);
};

afterEach(() => restore());

const PLACES = [EMPTY, CROWDED, LAST_COLUMN, LAST_CELLS].map((place) => [place.name, place] as const);

describe.each([WEB, WINDOWS_20])("Every card inserted in $name", { timeout: 300_000 }, (profile) => {
  beforeEach(() => open(profile));

  it.each(PLACES)("shows a result on %s", async (_, place) => {
    expect(await insertedWrongly(book, place, sheetOf)).toEqual([]);
  });
});

describe("An insertion in Excel", () => {
  beforeEach(() => open(WINDOWS_20, ["Data"]));
  const at = { sheet: "Data", row: 0, column: 0 };
  const host = { book, engine: ENGINE };
  const soon = { times: 2, every: 1 };

  it("says what the cell says where it fails, with the message that the cell doesn't have", async () => {
    const { definition, example } = cardOf("PIPE.VELOCITY");
    const raw = [-40, ...example.raw.slice(1)];
    const { failed, sentence } = await insertChosen(host, { definition, example: { ...example, raw } }, at, soon);
    expect(failed).toBe(true);
    expect(sentence).toMatch(/^PIPE\.VELOCITY at Data!A1 gives #VALUE!: flow: /);
    expect(sentence).not.toContain("Inserted");
  });

  it("doesn't say that a cell has its result while it calculates", async () => {
    excel.host.resultOf = () => ({ error: "#BUSY!" });
    const { sentence } = await insertChosen(host, cardOf("PIPE.BORE"), at, soon);
    expect(sentence).toBe("PIPE.BORE at Data!A1 is still calculating.");
  });

  it("says how many columns it needs where the sheet has fewer", async () => {
    const last = { ...at, column: MOST_COLUMNS - 2 };
    await expect(insertChosen(host, cardOf("POOL.YEAR"), last, soon)).rejects.toThrow(
      /^This needs \d+ columns, and the sheet has 2 columns left here: select a cell further left\.$/,
    );
  });

  it("writes nothing over a cell that stands where the result will spill", async () => {
    const card = cardOf("POOL.YEAR");
    await book.write([{ sheet: "Data", row: 40, column: 20, content: 7 }]);
    await expect(insertChosen(host, card, at, soon)).rejects.toThrow(/^U41 is not empty/);
    expect((await book.read([{ ...at, rows: 1, columns: 1 }]))[0]?.values).toEqual([[null]]);
  });
});
