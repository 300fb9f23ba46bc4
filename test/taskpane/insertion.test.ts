import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { block, quantity, rows } from "../../core/kernel/argument";
import type { Catalogue } from "../../core/kernel/catalogue";
import { cellFunction, type CellFunction } from "../../core/kernel/cellFunction";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { of } from "../../core/kernel/result";
import { us } from "../../core/kernel/quantity";
import { outcomeOf } from "../../src/functions/outcome";
import { exampleOf, insertionOf } from "../../src/taskpane/model/insertion";
import { roomRefusal } from "../../src/taskpane/model/room";
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
        meanDepth: quantity("depth", "mean depth", { above: 0 }).otherwise(us("depth", 4)),
        note: quantity("length", "width, as text with its unit", { above: 0 }),
      },
      "the pond",
    ),
    ditches: rows({ length: quantity("length", "length"), area: quantity("area", "area") }, "ditches", {
      least: 0,
      most: 9,
    }),
  },
  gives: of("pool volume", "volume"),
  cautions: [],
  checks: [
    {
      at: { inputs: { length: 50, note: "7 m" }, ditches: [{ length: 10, area: 3 }] },
      gives: 1,
      from: "identity",
    },
  ],
  work: ({ inputs, ditches }) =>
    inputs.length * inputs.meanDepth * inputs.note + ditches.reduce((sum, { length, area }) => sum + length * area, 0),
});

const at = (cells: readonly CellWrite[], row: number, column: number): unknown =>
  cells.find((cell) => cell.row === row && cell.column === column)?.content;

describe("An example's insertion", () => {
  const example = exampleOf(pond, call(pond, [pond]));
  if (example === undefined) throw new Error("no example");
  const { area, cells, formula } = insertionOf(pond, example, AT);

  test("writes the whole block beside the formula, with units and what each entry is", () => {
    expect(at(cells, 4, 3)).toBe("length");
    expect(at(cells, 4, 4)).toBe(50);
    expect(at(cells, 4, 5)).toBe("ft");
    expect(at(cells, 4, 6)).toBe("length of the pond (needed)");
    expect([at(cells, 5, 3), at(cells, 5, 4), at(cells, 5, 5)]).toEqual(["mean depth", 4, "ft"]);
  });

  test("writes no unit behind a text that has its own", () => {
    expect([at(cells, 6, 4), at(cells, 6, 5)]).toEqual(["7 m", undefined]);
  });

  test("refers to the ranges that it writes and covers them all", () => {
    expect(formula).toBe("=WARMBACK.POND.VOLUME(D5:F7,I5:J6)");
    expect([at(cells, 4, 8), at(cells, 5, 8)]).toEqual(["length", 10]);
    expect(area).toEqual({ sheet: "Inputs", row: 4, column: 1, rows: 3, columns: 9 });
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
      roomRefusal({
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
      roomRefusal({
        area: block3,
        formulas: none,
        values: [
          [null, null],
          [null, 0],
        ],
      }),
    ).toBe("B2 is not empty: select a cell with 2 × 2 empty cells (rows × columns) from it on.");
    const one = { ...block3, rows: 1, columns: 1 };
    expect(roomRefusal({ area: one, formulas: [["=1"]], values: [[""]] })).toBe(
      "A1 is not empty: select an empty cell.",
    );
  });
});
