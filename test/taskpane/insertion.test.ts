import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { block, quantity, rows } from "../../core/kernel/define/argument";
import { type Catalogue, cellFunction, type CellFunction } from "../../core/kernel/define/cellFunction";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { quantityResult } from "../../core/kernel/define/result";
import { us } from "../../core/kernel/values/quantity";
import { outcomeOf } from "../../src/functions/outcome";
import { exampleOf, insertionOf } from "../../src/taskpane/model/insertion";
import { freeCellsRefusal } from "../../src/taskpane/model/freeCells";
import type { Address, CellWrite } from "../../src/workbook/port";

const call = (definition: CellFunction, catalogue: Catalogue) => (raw: readonly unknown[]) =>
  outcomeOf(evaluate(compile(definition), raw, catalogue));

const AT: Address = { sheet: "Inputs", row: 4, column: 1 };

const pond = cellFunction({
  id: "POND.VOLUME",
  topic: "pond",
  summary: "Volume of a pond and its ditches.",
  args: {
    inputs: block(
      {
        length: quantity("length", "length of the pond", { above: 0 }),
        meanDepth: quantity("depth", "mean depth", { above: 0 }).default(us("depth", 4)),
        note: quantity("length", "width, as text with its unit", { above: 0 }),
        cover: quantity("area", "area under a cover", { from: 0 }).optional(),
      },
      "the pond",
    ),
    ditches: rows({ length: quantity("length", "length"), area: quantity("area", "area") }, "ditches", {
      least: 0,
      most: 9,
    }),
  },
  returns: quantityResult("pool volume", "volume"),
  cautions: [],
  checks: [
    {
      inputs: { inputs: { length: 50, note: "7 m" }, ditches: [{ length: 10, area: 3 }] },
      expected: 1,
      source: "identity",
    },
  ],
  compute: ({ inputs, ditches }) =>
    inputs.length * inputs.meanDepth * inputs.note + ditches.reduce((sum, { length, area }) => sum + length * area, 0),
});

const at = (cells: readonly CellWrite[], row: number, column: number): unknown =>
  cells.find((cell) => cell.row === row && cell.column === column)?.content;

describe("An example's insertion", () => {
  const example = exampleOf(pond, call(pond, [pond]));
  if (example === undefined) throw new Error("no example");
  const { area, cells, formula, result } = insertionOf(pond, example, AT);

  test("writes the block from the selected cell on, with units and what each entry is", () => {
    expect(at(cells, 4, 1)).toBe("length");
    expect(at(cells, 4, 2)).toBe(50);
    expect(at(cells, 4, 3)).toBe("ft");
    expect(at(cells, 4, 4)).toBe("length of the pond (needed)");
    expect([at(cells, 5, 1), at(cells, 5, 2), at(cells, 5, 3)]).toEqual(["mean depth", 4, "ft"]);
  });

  test("writes no unit behind a text that has its own", () => {
    expect([at(cells, 6, 2), at(cells, 6, 3)]).toEqual(["7 m", undefined]);
  });

  test("leaves out an optional line without a value", () => {
    expect(cells.map(({ content }) => content)).not.toContain("cover");
  });

  test("refers to the ranges that it writes, has its formula below them and covers them all", () => {
    expect(formula).toBe("=WARMBACK.POND.VOLUME(B5:D7,B9:C10)");
    expect([at(cells, 8, 1), at(cells, 9, 1)]).toEqual(["length", 10]);
    expect(result).toEqual({ sheet: "Inputs", row: 11, column: 1 });
    expect(at(cells, 11, 1)).toBe(formula);
    expect(area).toEqual({ sheet: "Inputs", row: 4, column: 1, rows: 8, columns: 4 });
    for (const cell of cells) {
      expect(cell.row - area.row).toBeLessThan(area.rows);
      expect(cell.column - area.column).toBeLessThan(area.columns);
    }
  });

  test("an insertion puts no cell on another", () => {
    expect(new Set(cells.map(({ row, column }) => `${String(row)},${String(column)}`)).size).toBe(cells.length);
  });
});

describe("Every function of the catalogue", () => {
  test.each(CATALOGUE.map((definition) => [definition.id, definition] as const))(
    "%s has an example to insert",
    (_id, definition) => {
      const example = exampleOf(definition, call(definition, CATALOGUE));
      const insertion = example && insertionOf(definition, example, AT);
      if (insertion === undefined) {
        // Functions about functions need the name of one.
        expect(definition.topic).toBe("note");
        return;
      }
      expect(insertion.formula).toMatch(/^=WARMBACK\.[A-Z.0-9]+\(.*\)$/);
      expect(insertion.formula).not.toContain("\u0001");
      expect(insertion.cells.at(-1)?.content).toBe(insertion.formula);
    },
  );
});

describe("Room for an insertion", () => {
  const block3 = { sheet: "S", row: 0, column: 0, rows: 2, columns: 2 };
  const none = [
    ["", ""],
    ["", ""],
  ];

  test("there is room where every cell is empty", () => {
    expect(
      freeCellsRefusal({
        area: block3,
        formulas: none,
        values: [
          [null, ""],
          [null, null],
        ],
      }),
    ).toBeUndefined();
  });

  test("an insertion is refused with the first cell that is taken, by a value or by a formula", () => {
    expect(
      freeCellsRefusal({
        area: block3,
        formulas: none,
        values: [
          [null, null],
          [null, 0],
        ],
      }),
    ).toBe("B2 is not empty: select a cell with 2 × 2 empty cells (rows × columns) from it on.");
    const one = { ...block3, rows: 1, columns: 1 };
    expect(freeCellsRefusal({ area: one, formulas: [["=1"]], values: [[""]] })).toBe(
      "A1 is not empty: select an empty cell.",
    );
  });
});
