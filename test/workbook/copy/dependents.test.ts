/** Which cells a copy takes values of, on grids in memory. */
import { describe, expect, test } from "vitest";
import type { Area } from "../../../src/workbook/port";
import { dependentCells, needingUs } from "../../../src/workbook/copy/dependents";
import { fakePort } from "../fakeWorkbook";

const f = (formula: string, value: number | string = 1) => ({ formula, value });

describe("The cells that a copy takes values of", () => {
  const taken = async (cells: Parameters<typeof fakePort>[0], meanings: Readonly<Record<string, string>> = {}) => {
    const { book, meanings: known } = fakePort(cells);
    for (const [text, meaning] of Object.entries(meanings)) known.set(text, meaning);
    return (await dependentCells(book)).map(
      ({ address: { sheet, row, column } }) => `${sheet}!${String.fromCharCode(65 + column)}${String(row + 1)}`,
    );
  };

  test("a copy takes values of our cells and all that rely on them, over any number of steps and sheets", async () => {
    expect(
      await taken({
        Loop: { A1: f("=WARMBACK.POOL.AREA(B1)"), A2: f("=A1*2"), A3: f("=SUM(B1:B9)"), A4: f("=B1"), B1: 3 },
        Sum: { A1: f("=MAX(Loop!A2:A9)+1"), A2: f("=IF(A1>0,1,2)"), A3: f("=Loop!B1") },
      }),
    ).toEqual(["Loop!A1", "Loop!A2", "Sum!A1", "Sum!A2"]);
  });

  test("a copy takes values of cells that rely on a part of a spill of ours", async () => {
    const cells = { S: { A1: f("=WARMBACK.POOL.AREA(1)"), A2: 5, A3: 6, C1: f("=A3*2"), C2: f("=A4") } };
    expect(await taken(cells, { "A1#": "S!A1:A3" })).toEqual(["S!A1", "S!C1"]);
  });

  test("a copy takes values of cells whose references are unknown, but of none where nobody uses us", async () => {
    const unsure = { B1: f('=INDIRECT("A1")'), B2: f("=Rate*2"), B3: f("=OFFSET(A9,1,1)"), B4: f("=A9:INDEX(A:A,3)") };
    expect(await taken({ S: { A1: f("=WARMBACK.POOL.AREA(1)"), ...unsure, B5: f("=A8+1") } })).toEqual([
      "S!A1",
      "S!B1",
      "S!B2",
      "S!B3",
      "S!B4",
    ]);
    expect(await taken({ S: unsure })).toEqual([]);
  });

  test("a copy keeps formulas with a name of LET or of other cells", async () => {
    const cells = { S: { A1: f("=WARMBACK.POOL.AREA(1)"), B1: f("=LET(x,A8,x*2)"), B2: f("=Rate*2"), B3: f("=Area") } };
    expect(await taken(cells, { Rate: "S!C1", Area: "S!A1" })).toEqual(["S!A1", "S!B3"]);
  });
});

describe("A large workbook's dependents", () => {
  const area = (row: number, column: number, rows = 1): Area => ({ sheet: "S", row, column, rows, columns: 1 });
  const cell = (row: number, formula: string) => ({ address: { sheet: "S", row, column: 1 }, formula, value: 1 });

  test("a chain of 20,000 cells and as many running totals are followed to their end, each once", async () => {
    const COUNT = 20_000;
    const chain = Array.from({ length: COUNT }, (_, row) =>
      cell(row, row === 0 ? "=WARMBACK.POOL.AREA(1)" : `=B${row}`),
    );
    const totals = chain.map((_, row) => cell(row, `=SUM(B1:B${row + 1})`));
    const reads = [
      ...chain.map((_, row) => (row === 0 ? [] : [area(row - 1, 1)])),
      ...totals.map((_, row) => [area(0, 1, row + 1)]),
    ];
    let asked = 0;
    const found = await needingUs({
      cells: [...chain, ...totals],
      reads,
      filled: (cells) => cells.map(({ address: { row } }) => (asked++, area(row, 1))),
    });
    expect(found).toHaveLength(2 * COUNT);
    expect(asked).toBe(2 * COUNT);
  });
});
