/** Sheets beside the sheet "Project" take what they share from there, so that one job has one set of numbers. */
import { describe, expect, inject, test } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { starterBook } from "../../src/preview/file/starterBook";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { startHeadless } from "../../src/preview/univer/start";
import { STARTER_SHEETS } from "../../src/sheets";
import { project } from "../../src/sheets/project";
import { recoverySizing } from "../../src/sheets/recoverySizing";
import { isCellFault } from "../../src/workbook/port";
import { linkNames } from "../../src/workbook/starterCells";

const addressOf = (label: string, cells: typeof project.cells): { readonly row: number; readonly column: number } => {
  const found = Object.entries(cells).find(([place, { content }]) => place.startsWith("A") && content === label);
  if (found === undefined) throw new Error(`no line ${label}`);
  return { row: Number(found[0].slice(1)) - 1, column: 1 };
};

const valueAt = (book: SheetBook, sheet: string, label: string): unknown => {
  const starter = STARTER_SHEETS.find(({ name }) => name === sheet);
  if (starter === undefined) throw new Error(sheet);
  return book.read({ sheet, ...addressOf(label, starter.cells), rows: 1, columns: 1 }).values[0]?.[0];
};

describe("all starter sheets in one workbook", () => {
  const start = (): SheetBook =>
    startHeadless(loadFunctions(inject("build")), { sheets: [emptySheet("Start")], names: [] });

  test(
    "take water, machine, lines and prices from the project, and follow it when it changes",
    { timeout: 180_000 },
    async () => {
      const book = start();
      try {
        const workbook = previewWorkbook(book);
        for (const sheet of STARTER_SHEETS) await workbook.insert(sheet);
        const all = (): readonly unknown[] => [
          valueAt(book, "Recovery sizing", "Water through the exchanger"),
          valueAt(book, "Exchanger inquiry", "Water flow"),
          valueAt(book, "Survey and decision", "Flow through the suction fittings"),
        ];
        expect(all()).toEqual([75, 75, 75]);
        expect(valueAt(book, "Exchanger inquiry", "Heat rejected")).toBeCloseTo(
          Number(valueAt(book, "Recovery sizing", "Heat rejected at rating")),
          6,
        );
        expect(valueAt(book, "Other sinks", "Share of that heat which the pool takes")).toBe(
          valueAt(book, "Recovery sizing", "Share of the rejected heat that the pool takes"),
        );
        const flow = { sheet: "Project", ...addressOf("Water through the exchanger", project.cells) };
        await workbook.write([{ ...flow, content: 60 }]);
        expect(all()).toEqual([60, 60, 60]);
        await workbook.write([{ ...flow, content: null }]);
        expect(all()).toEqual(["", "", ""]);
        const master = book.read({ sheet: "Recovery sizing", row: 1, column: 1, rows: 1, columns: 1 }).values[0]?.[0];
        expect(master).toBe("FAILS");
      } finally {
        book.dispose();
      }
    },
  );

  test("keep values of their own where there is no project", async () => {
    const book = start();
    try {
      await previewWorkbook(book).insert(recoverySizing);
      expect(valueAt(book, "Recovery sizing", "Water through the exchanger")).toBe(75);
    } finally {
      book.dispose();
    }
  });

  test("ask only for names that a starter sheet gives", () => {
    const given = new Set(STARTER_SHEETS.flatMap(({ names }) => Object.keys(names)));
    const asked = STARTER_SHEETS.flatMap(linkNames);
    expect(asked.length).toBeGreaterThan(50);
    expect(asked.filter((name) => !given.has(name))).toEqual([]);
  });

  test("begin with the project's own values, so that the example is one", () => {
    const shared = new Map(
      Object.entries(project.names).map(
        ([name, address]) => [name, project.cells[address.replaceAll("$", "")]?.content] as const,
      ),
    );
    const typed = [...shared].filter(([, content]) => !String(content).startsWith("="));
    const values = new Map(typed);
    const apart = STARTER_SHEETS.flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([address, { link, content }]) =>
        link !== undefined && values.has(link) && link !== "ProjectTitle" && values.get(link) !== content
          ? [`${name} ${address}: ${String(content)}, ${link}: ${String(values.get(link))}`]
          : [],
      ),
    );
    expect(values.size).toBeGreaterThan(25);
    expect(apart).toEqual([]);
  });

  test("stand in the first workbook linked, without an error", async () => {
    const book = startHeadless(loadFunctions(inject("build")), starterBook([recoverySizing, project]));
    try {
      await book.whenCalculated();
      for (const { name } of book.sheets()) {
        const used = book.used(name);
        if (!used) throw new Error(name);
        expect(book.read(used).values.flat().filter(isCellFault), name).toEqual([]);
      }
      expect(
        book.read({ sheet: "Recovery sizing", ...addressOf("Length", recoverySizing.cells), rows: 1, columns: 1 })
          .formulas,
      ).toEqual([['=IF(LEN(ProjectLength)=0,"",ProjectLength)']]);
    } finally {
      book.dispose();
    }
  });
});
