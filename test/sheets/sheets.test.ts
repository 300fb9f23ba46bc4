import { describe, expect, inject, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { placedArgs } from "../../core/kernel/define/unitsArgument";
import { lookUp } from "../../core/kernel/define/catalogue";
import { emptySheet } from "../../src/preview/file/bookData";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { startHeadless } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import { STARTER_SHEETS } from "../../src/sheets";
import { STATES } from "../../src/sheets/states";
import { isCellFault } from "../../src/workbook/port";
import { readCalls } from "../../src/workbook/reader/calls";
import { cautionsIn } from "./calculated";

const KNOWN = new Set(CATALOGUE.map(({ id }) => id));

/** Of each sheet as it is shipped: how many cells call our functions, what the master check says, how many checks are OK. */
const SHIPPED: Readonly<Record<string, readonly [calls: number, master: string, checks: number]>> = {
  Project: [4, "NOT CHECKED", 4],
  "Recovery sizing": [110, "LOOK", 10],
  "Survey and decision": [6, "LOOK", 4],
  "Exchanger inquiry": [20, "NOT CHECKED", 6],
  "Pool loop": [43, "NOT CHECKED", 10],
  "Refrigerant side": [39, "FAILS", 12],
  "Take-off and price": [7, "NOT CHECKED", 6],
  "Other sinks": [12, "NOT CHECKED", 6],
  "What if": [30, "NOT CHECKED", 8],
  Commissioning: [15, "FAILS", 15],
};

describe.each(STARTER_SHEETS.map((sheet) => [sheet.name, sheet] as const))("starter sheet %s", (_, sheet) => {
  const [calls = 0, master, checks = 0] = SHIPPED[sheet.name] ?? [];
  const formulas = Object.entries(sheet.cells).flatMap(([address, { content }]) =>
    typeof content === "string" && content.startsWith("=") ? [[address, content] as const] : [],
  );

  test("has no formula that is longer than Excel takes", () => {
    for (const [address, formula] of formulas) expect(formula.length, address).toBeLessThanOrEqual(8192);
  });

  test("has a name that Excel takes, widths for its columns and its print area", () => {
    expect(sheet.name.length).toBeLessThanOrEqual(31);
    expect(sheet.name).not.toMatch(/[\\/?*[\]:]/);
    expect(sheet.widths.length).toBeGreaterThanOrEqual(5);
    expect(sheet.print.titleRows).toBe(`1:${sheet.frozenRows}`);
  });

  test("calls known functions with no more arguments than they take", () => {
    const ours = formulas.filter(([, formula]) => formula.includes("WARMBACK."));
    expect(ours).toHaveLength(calls);
    for (const [address, formula] of ours) {
      const sites = readCalls(formula, KNOWN);
      expect(sites.length, `${address} ${formula}`).toBe(formula.split("WARMBACK.").length - 1);
      for (const call of sites) {
        const definition = lookUp(CATALOGUE, call.id);
        if (!definition) throw new Error(`${address} ${call.id}`);
        expect(call.args.length, `${address} ${formula}`).toBeLessThanOrEqual(placedArgs(definition).length);
      }
    }
  });

  test("passes no blank cell as a zero that could be meant", async () => {
    expect(await cautionsIn(sheet, "ZERO-OR-BLANK")).toEqual([]);
  });

  test("passes nothing that is unusual", async () => {
    expect(await cautionsIn(sheet, "UNUSUAL-INPUT")).toEqual([]);
  });

  test("calculates without a failing cell, and its master check gives a verdict", async () => {
    const book = startHeadless(loadFunctions(inject("build")), { sheets: [emptySheet("Start")], names: [] });
    try {
      const workbook = previewWorkbook(book);
      const name = await workbook.insert(sheet);
      await book.whenCalculated();
      const used = await workbook.used(name);
      if (!used) throw new Error("the sheet is empty");
      const [block] = await workbook.read([used]);
      const failing = (block?.values ?? []).flatMap((line, row) =>
        line.flatMap((value, column) =>
          isCellFault(value)
            ? [`${String.fromCharCode(65 + column)}${row + 1} ${value.code} ${value.message ?? ""}`]
            : [],
        ),
      );
      expect(failing).toEqual([]);
      const verdicts = block?.values.flat().filter((value) => Object.values<unknown>(STATES).includes(value));
      expect(verdicts?.[0]).toBe(master);
      expect(verdicts?.slice(1).filter((value) => value === STATES.good)).toHaveLength(checks);
    } finally {
      book.dispose();
    }
  });
});
