/** The page's formulas in slices: over the real sheet engine, with functions that end and go on. */
import { describe, expect, onTestFinished, test } from "vitest";
import { emptySheet, type CellData } from "../../src/preview/file/bookData";
import type { CustomFunction } from "../../src/preview/host/hostValues";
import { formulaSlices } from "../../src/preview/univer/formulaSlices";
import { startHeadless } from "../../src/preview/univer/start";
import { slicesOf } from "../../src/functions/hostArguments";
import { pending } from "../../src/workbook/pending";
import { SHEET, placeOf, put, valueAt, valuesAt } from "./support";

/** Tasks that others get: `onTurn` does in each what a person would. */
function slicedBook(functions: Readonly<Record<string, CustomFunction>>, cells: readonly CellData[] = []) {
  let turns = 0;
  let onTurn: (turn: number) => void | Promise<void> = () => undefined;
  const turn = async (): Promise<void> => {
    await new Promise((resolve) => setTimeout(resolve, 0));
    await onTurn(++turns);
  };
  const ids = Object.keys(functions);
  const book = startHeadless(
    {
      namespace: "WARMBACK",
      metadata: { functions: ids.map((id) => ({ id, name: id, parameters: [{ name: "x", type: "any" }] })) },
      associated: new Map(Object.entries(functions)),
    },
    { sheets: [{ ...emptySheet(SHEET), cells }], names: [] },
    { slices: formulaSlices({ slice: 0, turn }), withoutTyping: false },
  );
  onTestFinished(() => book.dispose());
  return { book, turns: () => turns, eachTurn: (call: typeof onTurn) => (onTurn = call) };
}

/** Adds 1 once it was called three times with its argument. */
function slowFunction() {
  const made = new Map<unknown, number>();
  const call: CustomFunction = (...args) => {
    const slices = slicesOf(args);
    const calls = (made.get(args[0]) ?? 0) + 1;
    made.set(args[0], calls);
    if (slices?.isOver() === true && calls < 3) throw pending(slices.nextTurn);
    return Number(args[0]) + 1;
  };
  return { call, made };
}

const formula = (row: number, column: number, text: string): CellData => ({ row, column, value: null, formula: text });

describe("On the page", () => {
  test("a call that ends with its slice goes on until its result is there, and counts once", async () => {
    const { call, made } = slowFunction();
    const { book } = slicedBook({ SLOW: call });
    await put(book, { A1: "=WARMBACK.SLOW(1)+WARMBACK.SLOW(10)", A2: "=A1*2" });
    expect(valueAt(book, "A1")).toBe(13);
    expect(valueAt(book, "A2")).toBe(26);
    expect([made.get(1), made.get(10)]).toEqual([5, 3]);
    expect(book.calls(placeOf("A1")).map(({ args }) => args[0])).toEqual([1, 10]);
  });

  test("other tasks get a turn between two formulas", async () => {
    const { book, turns } = slicedBook({});
    const before = turns();
    await put(book, { A1: 1, A2: "=A1+1", A3: "=A2+1", A4: "=A3+1" });
    expect(valueAt(book, "A4")).toBe(4);
    expect(turns() - before).toBeGreaterThanOrEqual(3);
  });

  test("what is typed meanwhile is calculated as well", async () => {
    const formulas = Array.from({ length: 20 }, (_, row) => formula(row, 1, `=A$1+${row}`));
    const { book, eachTurn } = slicedBook({}, [{ row: 0, column: 0, value: 1 }, ...formulas]);
    await book.whenCalculated();
    let left = 8;
    eachTurn(() => {
      if (--left === 0) book.write([{ ...placeOf("A1"), content: 100 }]);
    });
    await put(book, { A1: 50 });
    expect(valuesAt(book, "B1:B20").flat()).toEqual(formulas.map((_, row) => 100 + row));
  });

  test.each([2, 10, 19])("what is typed over formulas at turn %i of their calculation stays", async (turn) => {
    const formulas = Array.from({ length: 20 }, (_, row) => formula(row, 1, `=A$1+${row}`));
    const cells = [{ row: 0, column: 0, value: 1 }, ...formulas, formula(2, 2, "=B3*2")];
    const { book, eachTurn } = slicedBook({}, cells);
    await book.whenCalculated();
    let left = turn;
    eachTurn(() => {
      if (--left > 0) return;
      eachTurn(() => undefined);
      book.write([3, 18].map((row) => ({ ...placeOf(`B${String(row)}`), content: 777 })));
    });
    await put(book, { A1: 50 });
    expect(left).toBe(0);
    expect([valueAt(book, "B3"), valueAt(book, "C3"), valueAt(book, "B18")]).toEqual([777, 1554, 777]);
    expect([valueAt(book, "B2"), valueAt(book, "B20")]).toEqual([51, 69]);
  });

  test("a calculation that is stopped in its list leaves no errors", async () => {
    const formulas = Array.from({ length: 30 }, (_, row) => formula(row, 1, `=A$1+${row}`));
    const { book, eachTurn } = slicedBook({}, [{ row: 0, column: 0, value: 1 }, ...formulas]);
    await book.whenCalculated();
    const seen = new Set<unknown>();
    book.onChange(() => seen.add(valueAt(book, "B30")));
    let left = 5;
    eachTurn(async () => {
      if (--left === 0) book.recalculateAll();
      // The engine stops a calculation 100 ms after a change.
      if (left < 0 && left > -12) await new Promise((resolve) => setTimeout(resolve, 20));
    });
    await put(book, { A1: 7 });
    expect(valueAt(book, "B30")).toBe(36);
    expect([...seen].filter((value) => typeof value !== "number")).toEqual([]);
  });

  test("the end of a stopped calculation and of the one that follows it is waited for", async () => {
    const { book, eachTurn } = slicedBook({}, [
      { row: 0, column: 0, value: 1 },
      formula(0, 1, "=A1+1"),
      formula(1, 1, "=B1+1"),
      formula(2, 1, "=B2+1"),
    ]);
    await book.whenCalculated();
    let left = 2;
    eachTurn(async () => {
      // Longer than the engine waits for another calculation after a stop.
      if (--left === 0) await new Promise((resolve) => setTimeout(resolve, 600));
    });
    book.write([{ ...placeOf("A1"), content: 10 }]);
    await new Promise((resolve) => setTimeout(resolve, 200));
    await put(book, { A1: 20 });
    expect(valueAt(book, "B3")).toBe(23);
  });

  test("results aren't written where cells were before they moved", async () => {
    const formulas = Array.from({ length: 10 }, (_, row) => formula(row, 1, `=A$1+${row}`));
    const { book, eachTurn } = slicedBook({}, [{ row: 0, column: 0, value: 1 }, ...formulas]);
    await put(book, { A1: 10 });
    book.addSheet(emptySheet("Other"), []);
    let left = 5;
    eachTurn(() => {
      if (--left === 0) book.undo();
    });
    await book.whenCalculated();
    expect(book.sheets()).toHaveLength(1);
    expect(valuesAt(book, "A1:B10").map(([, value]) => value)).toEqual(formulas.map((_, row) => 10 + row));
  });
});
