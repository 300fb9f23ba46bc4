/** The Excel adapter on the stand-in, fresh for every test. */
import { afterEach, beforeEach, expect } from "vitest";
import { excelWorkbook } from "../../src/workbook/excel/excelWorkbook";
import type { Area, Workbook } from "../../src/workbook/port";
import { atMost, excelHost, install, sheetNamed, type ExcelStandIn, type Profile } from "../excelHost";
import type { Host } from "../excelHost/host/objects";
import type { SheetModel } from "../excelHost/model/workbook";

export interface OnExcel {
  readonly excel: ExcelStandIn;
  readonly host: Host;
  readonly book: Workbook;
  sheet(name: string): SheetModel;
  /** Names of the sheets, in their order. */
  titles(): readonly string[];
}

/** Opens Excel before each test of a suite and closes it afterwards; a member that it doesn't know fails the test. */
export function onExcel(profile: Profile, ...sheets: readonly string[]): OnExcel {
  let excel: ExcelStandIn;
  let restore: () => void;
  const book = excelWorkbook();
  beforeEach(() => {
    excel = excelHost(profile, sheets);
    restore = install(excel);
  });
  afterEach(() => restore());
  return {
    get excel() {
      return excel;
    },
    get host() {
      return excel.host;
    },
    book,
    sheet: (name) => sheetNamed(excel.host.book, name),
    titles: () => excel.host.book.sheets.map(({ name }) => name),
  };
}

export const area = (sheet: string, row: number, column: number, rows = 1, columns = 1): Area => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

/** Whether changes of a run are one undo step here: where they are, what can't be undone is refused within it. */
export const groupsUndo = ({ api }: Profile): boolean => atMost("1.20", api);

/** The sentence of a refusal; fails where nothing was refused. */
export async function sentenceOf(run: Promise<unknown>): Promise<string> {
  const error = await run.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(Error);
  return (error as Error).message;
}

/** Words by which a message of Excel's own gives itself away: the stand-in puts them into each. */
export const RAW = /stand-in|object path|\{0\}|isn't working|PayloadSizeLimit/;
