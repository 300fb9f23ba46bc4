/** What only a real workbook is like: each oddity shown through Microsoft's client. */
import { beforeEach, describe, expect, it } from "vitest";
import { cellAt, excelHost, WEB, WINDOWS_20, MAC_20, type ExcelStandIn, type Profile } from "./index";
import { bringToFront, calculated } from "./model/edits";
import * as oddity from "./oddities";
import { codeOf, loaded, run } from "./running";

let excel: ExcelStandIn;
const open = (profile: Profile): void => {
  excel = excelHost(profile, ["Sheet1", "Data"]);
};
beforeEach(() => open(WEB));

const sheet = (name = "Data") =>
  excel.host.book.sheets.find((one) => one.name === name) ?? excel.host.book.active.sheet;
type Act = (data: Excel.Worksheet, context: Excel.RequestContext) => unknown;

/** Does something to the sheet Data, and syncs. */
const act = (what: Act, options?: Excel.RunOptions): Promise<void> =>
  run(
    excel,
    async (context) => {
      what(context.workbook.worksheets.getItem("Data"), context);
      await context.sync();
    },
    options,
  );

describe("While a cell is edited", () => {
  it("a request waits if it said so, and is refused otherwise", async () => {
    oddity.editingACell(excel.host);
    const write: Act = (data) => (data.getRange("A1").values = [[1]]);
    expect(await codeOf(act(write, { delayForCellEdit: false }))).toBe("InvalidOperationInCellEditMode");
    const waiting = act(write, { delayForCellEdit: true });
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect(sheet().cells.size).toBe(0);
    excel.host.finishEditing();
    await waiting;
    expect(sheet().cells.size).toBe(1);
  });
});

describe("An error in the user's language", () => {
  // Microsoft's reference, NameErrorCellValue.basicValue: what `Range.values` returns, "aligns with the en-US locale".
  it("is foreign as text and English as value", async () => {
    const held: unknown[] = [];
    await act((data) => (data.getRange("A1").formulas = [["=NOSUCH()"]]));
    calculated(excel.host, "Data!A1", { error: "#NAME?" });
    oddity.foreignError(excel.host, "Data!A1", "#¿NOMBRE?");
    await run(excel, async (context) => {
      const range = context.workbook.worksheets.getItem("Data").getRange("A1").load("values,text,valueTypes");
      await context.sync();
      held.push(range.values, range.text, range.valueTypes);
    });
    expect(held).toEqual([[["#NAME?"]], [["#¿NOMBRE?"]], [["Error"]]]);
  });
});

describe("While another workbook is in front", () => {
  // OfficeDev/office-js #5319 (Windows and web: the cell), #6365 (Mac: a sheet's names too).
  it.each([
    [WEB, undefined],
    [WINDOWS_20, undefined],
    [MAC_20, "InvalidSelection"],
  ])("there is no active cell on $name, and on the Mac no names of a sheet", async (profile, names) => {
    open(profile);
    oddity.anotherWorkbookInFront(excel.host);
    expect(await codeOf(act((_, { workbook }) => workbook.getActiveCell().load("address")))).toBe("InvalidSelection");
    expect(await codeOf(act((data) => data.names.getItemOrNullObject("x").load("name")))).toBe(names);
    bringToFront(excel.host);
    expect(await codeOf(act((_, { workbook }) => workbook.getActiveCell().load("address")))).toBeUndefined();
  });
});

describe("A selected chart", () => {
  // By design: OfficeDev/office-js #2268.
  it("leaves an active cell but no selected range", async () => {
    oddity.chartSelected(excel.host);
    expect(await codeOf(act((_, { workbook }) => workbook.getSelectedRange().load("address")))).toBe(
      "InvalidSelection",
    );
    expect(await codeOf(act((_, { workbook }) => workbook.getActiveCell().load("address")))).toBeUndefined();
  });
});

describe("A protected sheet", () => {
  it("takes content in unlocked cells only, and opens without a password or with the right one", async () => {
    oddity.protectedSheet(excel.host, "Data", "pool", ["B1"]);
    expect(await codeOf(act((data) => (data.getRange("A1").values = [[1]])))).toBe("AccessDenied");
    expect(await codeOf(act((data) => (data.getRange("B1").values = [[1]])))).toBeUndefined();
    expect(await codeOf(act((data) => data.protection.unprotect()))).toBe("BadPassword");
    expect(await codeOf(act((data) => data.protection.unprotect("pool")))).toBeUndefined();
    oddity.protectedSheet(excel.host, "Data");
    expect(await codeOf(act((data) => data.protection.unprotect()))).toBeUndefined();
  });

  it("is copied with its protection", async () => {
    oddity.protectedSheet(excel.host, "Data", "pool");
    await act((data) => data.copy("End"));
    expect(sheet("Data (2)").protection).toEqual({ password: "pool" });
  });
});

describe("A protected structure", () => {
  it("lets no sheet be added, copied, deleted or renamed", async () => {
    oddity.protectedStructure(excel.host);
    const tried: readonly Act[] = [
      (_, { workbook }) => workbook.worksheets.add("New"),
      (data) => data.copy("End"),
      (data) => data.delete(),
      (data) => (data.name = "Other"),
    ];
    for (const one of tried) expect(await codeOf(act(one))).toBe("AccessDenied");
  });
});

describe("A hidden sheet", () => {
  it("is read and written to, but can't be gone to", async () => {
    oddity.hiddenSheet(excel.host, "Data");
    expect(await codeOf(act((data) => (data.getRange("A1").values = [[1]])))).toBeUndefined();
    expect(await codeOf(act((data) => data.activate()))).toBe("InvalidOperation");
    expect(await codeOf(act((data) => data.getRange("A1").select()))).toBe("InvalidOperation");
  });

  // By design: OfficeDev/office-js #365.
  it("that is very hidden can't be deleted either", async () => {
    oddity.veryHiddenSheet(excel.host, "Data");
    expect(await codeOf(act((data) => data.delete()))).toBe("GeneralException");
    oddity.hiddenSheet(excel.host, "Data");
    expect(await codeOf(act((data) => data.delete()))).toBeUndefined();
  });
});

describe("Filtered rows", () => {
  it("say that they are hidden, and take content all the same", async () => {
    oddity.filteredRows(excel.host, "Data", 1);
    const found = await Promise.all(["A1", "A2", "A1:A2"].map((at) => loaded(excel, `Data!${at}`, "rowHidden")));
    expect(found.map(({ rowHidden }) => rowHidden)).toEqual([false, true, null]);
    await act((data) => (data.getRange("A1:A2").values = [[1], [2]]));
    expect(cellAt(sheet(), "A2")?.value).toBe(2);
  });
});

describe("Merged cells", () => {
  it("take content in their first cell only", async () => {
    oddity.mergedCells(excel.host, "Data!A1:B1");
    await act((data) => (data.getRange("A1:C1").values = [[1, 2, 3]]));
    expect((await loaded(excel, "Data!A1:C1", "values")).values).toEqual([[1, "", 3]]);
  });
});

describe("A table", () => {
  it("has columns, parts, and is found from a cell in it", async () => {
    oddity.tableOn(excel.host, "Data!B2:C5", { name: "Pumps", columns: ["Flow", "Head"], headers: true, totals: true });
    const found = await run(excel, async ({ workbook, sync }) => {
      const tables = workbook.worksheets.getItem("Data").getRange("C3").getTables(false);
      tables.load("items/name,items/showTotals");
      const body = workbook.tables.getItem("pumps").getDataBodyRange();
      body.load("address");
      await sync();
      return [tables.items.map(({ name, showTotals }) => [name, showTotals]), body.address];
    });
    expect(found).toEqual([[["Pumps", true]], "Data!B3:C4"]);
  });
});

describe("A spill", () => {
  it("shows its parent's formula in every cell", async () => {
    oddity.spill(excel.host, "Data!A1", "=SEQUENCE(2)", [[1], [2]]);
    const range = await loaded(excel, "Data!A1:A3", "formulas", "values", "hasSpill");
    expect(range.formulas).toEqual([["=SEQUENCE(2)"], ["=SEQUENCE(2)"], [""]]);
    expect([range.values, range.hasSpill]).toEqual([[[1], [2], [""]], null]);
  });

  it("is #SPILL! while something is in its way, and comes back", async () => {
    oddity.spill(excel.host, "Data!A1", "=SEQUENCE(2)", [[1], [2]]);
    await act((data) => (data.getRange("A2").values = [["mine"]]));
    expect((await loaded(excel, "Data!A1:A2", "values", "valueTypes")).values).toEqual([["#SPILL!"], ["mine"]]);
    await act((data) => (data.getRange("A2").values = [[""]]));
    expect((await loaded(excel, "Data!A1:A2", "values")).values).toEqual([[1], [2]]);
  });
});

describe("A formula without a result yet", () => {
  it("shows #BUSY! until the result comes", async () => {
    oddity.busyCell(excel.host, "Data!A1", "=WARMBACK.POOL.YEAR(A2:B40)");
    const before = await loaded(excel, "Data!A1", "values", "valueTypes");
    expect([before.values, before.valueTypes]).toEqual([[["#BUSY!"]], [["Error"]]]);
    calculated(excel.host, "Data!A1", 3);
    expect((await loaded(excel, "Data!A1", "values")).values).toEqual([[3]]);
  });
});
