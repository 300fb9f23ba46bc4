/** One pass over a sheet gives the cells that reading it gives, in the same order, and the formulas for the choice. */
import { expect, test } from "vitest";
import {
  cellContext,
  openPackage,
  readBook,
  readFrame,
  readStoredSheet,
  type FileCell,
  type FrameCell,
} from "../../../src/workbook/package";
import { fullBook } from "./fullBook";
import { plainBook, zipOf, type PartTexts } from "./zipParts";

/** A cell of a group before its first one, one whose group never begins, an array with what it fills, metadata. */
const ODD_CELLS =
  '<sheetData><row r="1"><c r="A1"><f t="shared" si="0"/><v>1</v></c><c r="B1" t="str"><f t="shared" si="9"/><v>x</v></c></row>' +
  '<row r="2"><c r="A2"><f t="shared" ref="A1:A3" si="0">C2*2</f><v>2</v></c><c r="B2" cm="1"><f t="array" ref="B2:B3">C2:C3</f><v>3</v></c></row>' +
  '<row r="3"><c r="A3"><f t="shared" si="0"/><v>3</v></c><c r="B3"><v>4</v></c><c r="C3" t="e" vm="1"><v>#VALUE!</v></c></row></sheetData>';

const BOOKS: readonly (readonly [string, PartTexts])[] = [
  ["with every kind of part", fullBook()],
  ["with odd groups", plainBook({ S: ODD_CELLS })],
];

test.each(BOOKS)("A workbook %s has the same cells in a frame as when it is read", async (_, parts) => {
  const pack = await openPackage(zipOf(parts));
  const book = await readBook(pack);
  const context = await cellContext(pack, book);
  for (const { name, kind, path } of book.sheets) {
    if (kind !== "worksheet") continue;
    const read: FileCell[] = [];
    await readStoredSheet(pack, book, name, context, (cell) => void read.push(cell));
    const framed: FrameCell[] = [];
    const frame = await readFrame(pack, path, {}, context, (cell) => void framed.push(cell));
    expect(framed).toEqual(
      read.map(({ row, column, value, formula, valueMetadata }) => ({
        ...{ row, column, value, formula },
        hasValueMetadata: valueMetadata !== undefined,
      })),
    );
    const texts = framed.flatMap(({ row, column, formula }) =>
      formula !== undefined && "text" in formula && formula.text !== "" ? [{ row, column, text: formula.text }] : [],
    );
    expect(frame.formulas).toEqual(texts);
    expect(frame.linkedValues).toBe(framed.filter(({ hasValueMetadata }) => hasValueMetadata).length);
    // Which values and dynamic arrays there are doesn't matter to the choice.
    expect((await readFrame(pack, path, {})).formulas).toEqual(texts);
  }
});
