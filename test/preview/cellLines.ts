/** All cells of a book, one a line: a difference is a line then, and the report short. */
import { expect } from "vitest";
import type { SheetBook } from "../../src/preview/host/sheetBook";

type Book = Pick<SheetBook, "data">;

export const cellLines = (book: Book): readonly string[] =>
  book.data().sheets.flatMap(({ name, cells }) => cells.map((cell) => `${name} ${JSON.stringify(cell)}`));

export const expectCells = (book: Book, before: readonly string[]): void => {
  const now = cellLines(book);
  expect(now.filter((line, at) => line !== before[at]).slice(0, 3)).toEqual([]);
  expect(now).toHaveLength(before.length);
};
