/** All starter sheets in one workbook of the page, saved, and calculated by another program. */
import { beforeAll, describe, expect, inject, test } from "vitest";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { openedBook } from "../../src/preview/file/openedBook";
import { workbookFile } from "../../src/preview/file/workbookFile";
import type { BookData } from "../../src/preview/file/bookData";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import { startHeadless } from "../../src/preview/univer/start";
import { emptySheet } from "../../src/preview/file/bookData";
import { STARTER_SHEETS } from "../../src/sheets";
import { callsUs, packageBytes, patchCells, type CellChange } from "../../src/workbook/package";
import { addressText } from "../../src/workbook/reader/reference";
import { recalculated, skipsLibreOffice, titled } from "../workbook/package/libreOffice";
import { filesHere } from "./files";

/** Values by address; an array's cells one by one, blank ones left out. */
function valuesOf({ sheets }: BookData): ReadonlyMap<string, string | number | boolean> {
  const values = new Map<string, string | number | boolean>();
  for (const { name: sheet, cells } of sheets)
    for (const { row, column, value, spill } of cells)
      for (const [down, line] of (spill ?? [[value]]).entries())
        for (const [over, one] of line.entries())
          if (one !== null && one !== "")
            values.set(addressText({ sheet, row: row + down, column: column + over }), one);
  return values;
}

describe("All starter sheets in one workbook", () => {
  const set = loadFunctions(inject("build"));
  const texts = formulaTexts(set.namespace, set.metadata);
  let bytes: Uint8Array;
  let shown: ReadonlyMap<string, string | number | boolean>;

  beforeAll(async () => {
    const book = startHeadless(set, { sheets: [emptySheet("First")], names: [] });
    const workbook = previewWorkbook(book);
    for (const starter of STARTER_SHEETS) await workbook.insert(starter);
    bytes = await workbookFile(book, texts, filesHere()).savedBytes();
    shown = valuesOf(book.data());
    book.dispose();
  }, 240_000);

  test("come back from their file with every value and every formula, and nothing that can't be read", async () => {
    const { data } = await openedBook(bytes, texts);
    const again = valuesOf(data);
    expect(again.size).toBeGreaterThan(1_000);
    expect([...shown].filter(([address, value]) => again.get(address) !== value)).toEqual([]);
    const grouped = data.sheets.slice(1).map(({ groups = [] }) => [...groups].sort());
    expect(grouped).toEqual(STARTER_SHEETS.map(({ groups = [] }) => [...groups].sort()));
    expect(data.sheets.flatMap(({ cells }) => cells.flatMap(({ kept }) => kept ?? []))).toEqual([]);
  });

  test.skipIf(skipsLibreOffice)(
    titled("have the same values in LibreOffice, which calculates every formula that isn't ours"),
    async () => {
      const opened = await openedBook(bytes, texts);
      const frozen = opened.data.sheets.flatMap(({ name: sheet, cells }) =>
        cells.flatMap(({ row, column, formula = "" }): readonly CellChange[] =>
          callsUs(formula) ? [{ sheet, row, column, content: { kind: "frozen" } }] : [],
        ),
      );
      expect(frozen.length).toBeGreaterThan(100);
      const { pack } = await patchCells(opened.pack, opened.facts, frozen, { ours: "freeze" });
      const theirs = valuesOf((await openedBook(recalculated(await packageBytes(pack)), texts)).data);
      const differing = [...shown].filter(([address, value]) => {
        const other = theirs.get(address);
        if (typeof value === "boolean") return Number(value) !== Number(other);
        if (typeof value !== "number" || typeof other !== "number") return value !== other;
        return Math.abs(value - other) > 1e-12 * Math.max(1, Math.abs(value));
      });
      expect(differing.map(([address, value]) => [address, value, theirs.get(address)])).toEqual([]);
    },
    240_000,
  );
});
