/** Starter sheets worked out in the sheet engine, with other inputs too. */
import { inject } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { startHeadless } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { StarterSheet } from "../../src/sheets/sheet";
import type { CellValue } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";

type Row = readonly CellValue[];

/** Rows of the calculated sheet by their label; the last line of a label counts. */
export const rowsOf = async (sheet: StarterSheet): Promise<ReadonlyMap<string, Row>> => {
  const book = startHeadless(loadFunctions(inject("build")), { sheets: [emptySheet("Start")], names: [] });
  try {
    const workbook = previewWorkbook(book);
    const name = await workbook.insert(sheet);
    await book.whenCalculated();
    const used = await workbook.used(name);
    if (!used) throw new Error("the sheet is empty");
    const [block] = await workbook.read([used]);
    return new Map((block?.values ?? []).map((row) => [String(row[0]), row]));
  } finally {
    book.dispose();
  }
};

/** Label → value beside it. */
export const valuesOf = async (sheet: StarterSheet): Promise<ReadonlyMap<string, CellValue>> =>
  new Map([...(await rowsOf(sheet))].map(([label, row]) => [label, row[1] ?? ""]));

/** The sheet with other inputs, by label: in the first line of that label, or the first one whose value is blank. */
export const withInputs = (
  sheet: StarterSheet,
  inputs: Readonly<Record<string, string | number>>,
  where: "first" | "blank" = "first",
): StarterSheet => {
  const cells = { ...sheet.cells };
  for (const [label, content] of Object.entries(inputs)) {
    const at = Object.entries(cells)
      .filter(([place, cell]) => /^A\d/.test(place) && cell.content === label)
      .map(([place]) => `B${place.slice(1)}`)
      .find((place) => where === "first" || cells[place]?.content === "");
    const cell = at === undefined ? undefined : cells[at];
    if (at === undefined || !cell) throw new Error(`no value beside ${label}`);
    cells[at] = { ...cell, content };
  }
  return { ...sheet, cells };
};

/** Cautions of a code that the sheet's calls raise, by address. */
export const cautionsIn = async (sheet: StarterSheet, code: string): Promise<readonly string[]> => {
  const functions = loadFunctions(inject("build"));
  const book = startHeadless(functions, { sheets: [emptySheet("Start")], names: [] });
  try {
    const name = await previewWorkbook(book).insert(sheet);
    await book.whenCalculated();
    return Object.entries(sheet.cells).flatMap(([address, { content }]) => {
      if (typeof content !== "string" || !content.includes("WARMBACK.")) return [];
      const { row = 0, column = 0 } = parseCells(address) ?? {};
      const raised = book
        .calls({ sheet: name, row, column })
        .flatMap(({ id, args }) => functions.warmback.explain(id, args).cautions);
      return raised.filter((each) => each.code === code).map(({ text }) => `${address}: ${text}`);
    });
  } finally {
    book.dispose();
  }
};
