/** A part of the ways to break a starter sheet; `npm run verify:full` tries all. */
import { expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import { brokenInputs, filledIn, inputRows } from "./broken";
import { checkMasters } from "./masterChecks";

checkMasters({ ways: 37, rows: 53 });

test("there are so many inputs, ways to break them and rows to delete", () => {
  const counts = STARTER_SHEETS.map((sheet) => {
    const filled = filledIn(sheet);
    return [sheet.name, brokenInputs(sheet, filled).length, inputRows(filled).length] as const;
  });
  expect(counts).toEqual([
    ["Project", 84, 32],
    ["Recovery sizing", 397, 73],
    ["Survey and decision", 60, 26],
    ["Exchanger inquiry", 102, 38],
    ["Pool loop", 255, 46],
    ["Refrigerant side", 96, 37],
    ["Take-off and price", 203, 48],
    ["Other sinks", 80, 29],
    ["Alternatives", 379, 54],
    ["What if", 87, 32],
    ["Commissioning", 131, 49],
  ]);
});
