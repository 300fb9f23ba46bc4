/** Sheets with a cell far from the others: reading them whole would fill the memory. */
import { expect, test } from "vitest";
import type { BookReader, Block } from "../../src/workbook/port";
import { readFormulas, readSheet } from "../../src/workbook/reader/sheets";

const reads: number[] = [];
const spanning = (rows: number, columns: number): BookReader =>
  ({
    used: async (sheet: string) => ({ sheet, row: 0, column: 0, rows, columns }),
    read: async (areas: Block["area"][]) => {
      reads.push(areas.length);
      return areas.map((area) => ({ area, values: [], formulas: [] }));
    },
  }) as unknown as BookReader;

test("A sheet that spans too many cells is refused with its last cell, before anything is read", async () => {
  reads.length = 0;
  const message = /reach to T!XFD1048576 and span 17,179,869,184 cells; at most 20,000,000 can be read/;
  await expect(readFormulas(spanning(1_048_576, 16_384), ["T"])).rejects.toThrow(message);
  await expect(readSheet(spanning(1_048_576, 16_384), "T")).rejects.toThrow(message);
  expect(reads).toEqual([]);
});

test("A long sheet of few columns is read", async () => {
  const found = await readFormulas(spanning(1_000_000, 10), ["T"]);
  expect(found.get("T")?.blocks).toHaveLength(200);
});
