/** A part of the ways to break a starter sheet; `npm run verify:full` tries all. */
import { expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import { brokenInputs, filledIn, inputRows } from "./broken";
import { checkMasters } from "./masterChecks";

checkMasters({ ways: 15, rows: 25 });

test("there are so many inputs, ways to break them and rows to delete", () => {
  const counts = STARTER_SHEETS.map((sheet) => {
    const filled = filledIn(sheet);
    return [sheet.name, brokenInputs(sheet, filled).length, inputRows(filled).length] as const;
  });
  expect(counts).toEqual([
    ["Project", 83, 31],
    ["Recovery sizing", 339, 58],
    ["Survey and decision", 58, 25],
    ["Exchanger inquiry", 99, 37],
    ["Pool loop", 254, 45],
    ["Refrigerant side", 76, 30],
    ["Take-off and price", 202, 47],
    ["Other sinks", 80, 29],
    ["What if", 87, 32],
    ["Commissioning", 95, 37],
  ]);
});
