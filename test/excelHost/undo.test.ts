/** Undo groups, by the table of Microsoft's documentation: see host/undo.ts. */
import { describe, expect, it } from "vitest";
import { excelHost, type PROFILES, WEB, WINDOWS_17, WINDOWS_20 } from "./index";
import { codeOf, run } from "./running";

type Act = (data: Excel.Worksheet) => unknown;

const grouped = (profile: (typeof PROFILES)[number], act: Act): Promise<string | undefined> =>
  codeOf(
    run(
      excelHost(profile, ["Sheet1", "Data"]),
      async ({ workbook, sync }) => {
        act(workbook.worksheets.getItem("Data"));
        await sync();
      },
      { mergeUndoGroup: true },
    ),
  );

describe("An undo group", () => {
  it("refuses what can't be undone", async () => {
    expect(await grouped(WEB, (data) => data.copy("End"))).toBe("UndoNotSupported");
    expect(await grouped(WEB, (data) => data.delete())).toBe("UndoNotSupported");
    expect(await grouped(WEB, (data) => data.protection.protect())).toBe("UndoNotSupported");
    expect(await grouped(WEB, (data) => (data.getRange("A1").values = [[1]]))).toBeUndefined();
  });

  it("refuses to name a sheet on the desktop only", async () => {
    expect(await grouped(WEB, (data) => (data.name = "Other"))).toBeUndefined();
    expect(await grouped(WINDOWS_20, (data) => (data.name = "Other"))).toBe("UndoNotSupported");
  });

  it("is not known below ExcelApi 1.20: nothing is refused", async () => {
    expect(await grouped(WINDOWS_17, (data) => data.copy("End"))).toBeUndefined();
  });

  it("is one step, however many syncs; without it each is one", async () => {
    const excel = excelHost(WEB);
    const twice = async ({ workbook, sync }: Excel.RequestContext) => {
      for (const at of ["A1", "A2"]) {
        workbook.worksheets.getItem("Sheet1").getRange(at).values = [[1]];
        await sync();
      }
    };
    await run(excel, twice, { mergeUndoGroup: true });
    expect(excel.host.undo.steps).toHaveLength(1);
    await run(excel, twice);
    expect(excel.host.undo.steps).toHaveLength(3);
  });

  it("that can't hold a change isn't needed for it, but the list of steps is emptied", async () => {
    const excel = excelHost(WEB);
    await run(excel, async ({ workbook, sync }) => {
      const sheet = workbook.worksheets.getItem("Sheet1");
      sheet.getRange("A1").values = [[1]];
      sheet.copy("End");
      await sync();
    });
    expect(excel.host.undo.steps).toEqual([]);
  });
});
