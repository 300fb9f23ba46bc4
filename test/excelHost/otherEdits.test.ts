/** Someone else's edits between two syncs of ours. */
import { expect, describe, it } from "vitest";
import { deleteSheet, excelHost, type, WEB } from "./index";
import * as oddity from "./oddities";
import { codeOf, run } from "./running";

describe("Someone else's edit between two syncs", () => {
  const open = () => excelHost(WEB, ["Sheet1", "Data"]);

  it("moves a range that is kept, not one by its place", async () => {
    const excel = open();
    type(excel.host, "Data!A5", "here");
    oddity.rowsInsertedBefore(excel.host, 1, "Data", 0, 2);
    await run(excel, async ({ workbook, sync }) => {
      const kept = workbook.worksheets.getItem("Data").getRange("A5");
      kept.load("values");
      await sync();
      kept.load("address,values");
      const placed = workbook.worksheets.getItem("Data").getRange("A5");
      placed.load("values");
      await sync();
      expect([kept.address, kept.values, placed.values]).toEqual(["Data!A7", [["here"]], [[""]]]);
    });
  });

  it("renames a sheet: its name leads nowhere, the proxy that has its id still does", async () => {
    const excel = open();
    oddity.sheetRenamedBefore(excel.host, 1, "Data", "Other");
    const asked = run(excel, async ({ workbook, sync }) => {
      const kept = workbook.worksheets.getItem("Data");
      kept.load("id");
      await sync();
      kept.load("name");
      await sync();
      expect(kept.name).toBe("Other");
      workbook.worksheets.getItem("Data").load("name");
      await sync();
    });
    expect(await codeOf(asked)).toBe("ItemNotFound");
  });

  it("deletes a sheet: the proxy leads nowhere", async () => {
    const excel = open();
    excel.host.before = (number) => number === 1 && deleteSheet(excel.host, "Data");
    const asked = run(excel, async ({ workbook, sync }) => {
      const kept = workbook.worksheets.getItem("Data");
      kept.load("id");
      await sync();
      kept.getRange("A1").values = [[1]];
      await sync();
    });
    expect(await codeOf(asked)).toBe("ItemNotFound");
  });
});
