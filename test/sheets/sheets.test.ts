import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { placedArgs } from "../../core/kernel/units";
import { lookUp } from "../../core/kernel/catalogue";
import { emptySheet } from "../../src/preview/data";
import { loadFunctions } from "../../src/preview/load";
import { startHeadless } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/workbook";
import { STARTER_SHEETS } from "../../src/sheets";
import { isFault } from "../../src/workbook/port";
import { readCalls } from "../../src/workbook/reader/calls";
import { cautionsIn } from "./calculated";

const KNOWN = new Set(CATALOGUE.map(({ id }) => id));

describe.each(STARTER_SHEETS.map((sheet) => [sheet.name, sheet] as const))("starter sheet %s", (_, sheet) => {
  const formulas = Object.entries(sheet.cells).flatMap(([address, { content }]) =>
    typeof content === "string" && content.startsWith("=") ? [[address, content] as const] : [],
  );

  test("has a name that Excel takes, widths for its columns and its print area", () => {
    expect(sheet.name.length).toBeLessThanOrEqual(31);
    expect(sheet.name).not.toMatch(/[\\/?*[\]:]/);
    expect(sheet.widths.length).toBeGreaterThanOrEqual(5);
    expect(sheet.print.titleRows).toBe(`1:${sheet.frozenRows}`);
  });

  test("calls known functions with no more arguments than they take", () => {
    for (const [address, formula] of formulas) {
      if (!formula.includes("WARMBACK.")) continue;
      const calls = readCalls(formula, KNOWN);
      expect(calls.length, `${address} ${formula}`).toBeGreaterThan(0);
      for (const call of calls) {
        const definition = lookUp(CATALOGUE, call.id);
        if (definition)
          expect(call.args.length, `${address} ${formula}`).toBeLessThanOrEqual(placedArgs(definition).length);
      }
    }
  });

  test("passes no blank cell as a zero that could be meant", async () => {
    expect(await cautionsIn(sheet, "ZERO-OR-BLANK")).toEqual([]);
  });

  test("calculates without a failing cell, and its master check gives a verdict", async () => {
    const book = startHeadless(loadFunctions("dist"), { sheets: [emptySheet("Start")], names: [] });
    try {
      const workbook = previewWorkbook(book);
      const name = await workbook.insert(sheet);
      await book.settled();
      const used = await workbook.used(name);
      if (!used) throw new Error("the sheet is empty");
      const [block] = await workbook.read([used]);
      const failing = (block?.values ?? []).flatMap((line, row) =>
        line.flatMap((value, column) =>
          isFault(value) ? [`${String.fromCharCode(65 + column)}${row + 1} ${value.error} ${value.message ?? ""}`] : [],
        ),
      );
      expect(failing).toEqual([]);
      const master = block?.values.flat().find((value) => value === "OK" || value === "LOOK AT THE CHECKS");
      expect(master).toBeDefined();
    } finally {
      book.dispose();
    }
  });
});
