import { describe, expect, test } from "vitest";
import { panelEngine } from "../../src/taskpane/engine";
import { readSelected, type Selected } from "../../src/taskpane/model/selected";
import { sessionLog } from "../../src/workbook/callLog";
import { at } from "../workbook/fakeWorkbook";
import { makeBook, type Book } from "./page/book";

const engine = panelEngine(sessionLog());

async function loop(): Promise<Book> {
  const book = makeBook(["Loop"], engine);
  book.type("Loop", "A1", "flow");
  book.type("Loop", "B1", 90);
  book.type("Loop", "B2", '=WARMBACK.PIPE.VELOCITY(B1,"2 in")');
  book.type("Loop", "B3", "=SUM(B1)");
  book.type("Loop", "D4", '=WARMBACK.CYCLE.STATES("R-410A",45,105)');
  await book.calculate();
  return book;
}

const read = (book: Book, text: string): Promise<Selected> => readSelected(book.workbook, at("Loop", text), engine);

describe("The selected cell", () => {
  test("nothing is read where no cell is selected", async () => {
    expect(await readSelected((await loop()).workbook, undefined, engine)).toEqual({ state: "nothing" });
  });

  test("a cell without a call of ours is another's, whatever it holds", async () => {
    const book = await loop();
    for (const cell of ["A1", "B3", "Z9"]) expect((await read(book, cell)).state).toBe("other");
  });

  test("a cell with a call of ours is read with its value", async () => {
    const selected = await read(await loop(), "B2");
    expect(selected).toMatchObject({ state: "ours", reading: { checked: true, stale: false } });
    if (selected.state === "ours") expect(selected.reading.calls[0]?.args).toEqual([{ value: 90 }, { value: "2 in" }]);
  });

  test("a cell inside a spill leads to the cell that spills", async () => {
    const selected = await read(await loop(), "F7");
    expect(selected).toMatchObject({ state: "ours", address: at("Loop", "D4"), inSpill: at("Loop", "F7") });
  });

  test("a plain reference leads to the cell that calculates", async () => {
    const book = await loop();
    book.type("Loop", "B5", "=$B$2");
    book.type("Loop", "B6", "=Loop!B5");
    await book.calculate();
    for (const cell of ["B5", "B6"])
      expect(await read(book, cell)).toMatchObject({
        state: "ours",
        address: at("Loop", "B2"),
        shownBy: at("Loop", cell),
        reading: { calls: [{ id: "PIPE.VELOCITY" }] },
      });
  });

  test("a plain reference to a cell without a call of ours says which cell it shows", async () => {
    const book = await loop();
    book.type("Loop", "B5", "=B1");
    expect(await read(book, "B5")).toEqual({
      state: "other",
      address: at("Loop", "B5"),
      formula: "=B1",
      refersTo: at("Loop", "B1"),
    });
  });

  test("references in a circle end", async () => {
    const book = await loop();
    book.type("Loop", "B5", "=B6");
    book.type("Loop", "B6", "=B5");
    expect((await read(book, "B5")).state).toBe("other");
  });

  test("a cell beside a spill belongs to no one", async () => {
    const book = await loop();
    book.type("Loop", "L7", "a remark");
    expect((await read(book, "L7")).state).toBe("other");
  });

  test("a cell whose spill was changed behind its first cell is out of date", async () => {
    const book = await loop();
    expect(await read(book, "D4")).toMatchObject({ reading: { stale: false } });
    book.hold("Loop", "E6", 1);
    expect(await read(book, "D4")).toMatchObject({ reading: { stale: true } });
  });
});
