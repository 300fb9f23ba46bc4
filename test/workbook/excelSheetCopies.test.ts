/** Copies of sheets within the workbook: the last way to hand over in Excel. */
import { describe, expect, it } from "vitest";
import type { SheetCopies, Workbook } from "../../src/workbook/port";
import { cellAt, formatAt, PROFILES, WINDOWS_10 } from "../excelHost";
import { SMALL } from "./contractSheets";
import { onExcel } from "./onExcel";

const COPY: SheetCopies = {
  sheets: [
    {
      sheet: "Data",
      title: "Data values",
      areas: [
        {
          row: 0,
          column: 1,
          values: [
            [2.5, "=A1"],
            [null, "1-2"],
          ],
        },
      ],
    },
  ],
  record: { ...SMALL, name: "Record", cells: { A1: { content: "=A1+1", text: true, entry: true, indent: true } } },
};

const copySheets = async ({ copySheets: copy }: Workbook, copies: SheetCopies): Promise<string> => {
  if (copy === undefined) throw new Error("Excel copies sheets");
  return copy(copies);
};

describe.each(PROFILES)("Copies of sheets in Excel, $name", (profile) => {
  const on = onExcel(profile, "Sheet1", "Data");

  it("is new sheets with values in place of formulas; the originals stay", async () => {
    await on.book.write([
      { sheet: "Data", row: 0, column: 0, content: 7 },
      { sheet: "Data", row: 0, column: 1, content: "=A1*2" },
      { sheet: "Data", row: 1, column: 2, content: "=A1" },
      { sheet: "Data", row: 5, column: 5, content: "=A1+1" },
    ]);
    expect(await copySheets(on.book, COPY)).toBe("the new sheets “Data values”, “Record”");
    expect(on.titles()).toEqual(["Sheet1", "Data", "Data values", "Record"]);
    const copy = on.sheet("Data values");
    const plain = (at: string): unknown => [cellAt(copy, at)?.formula, cellAt(copy, at)?.value];
    expect(plain("B1")).toEqual(["", 2.5]);
    expect(plain("C1")).toEqual(["", "=A1"]);
    expect(plain("C2")).toEqual(["", "1-2"]);
    expect(cellAt(copy, "B2")).toBeUndefined();
    expect(cellAt(copy, "F6")?.formula).toBe("=A1+1");
    expect(cellAt(on.sheet("Data"), "B1")?.formula).toBe("=A1*2");
    const record = on.sheet("Record");
    expect(cellAt(record, "A1")).toMatchObject({ formula: "", value: "=A1+1" });
    expect([formatAt(record, "A1", "verticalAlignment"), formatAt(record, "A1", "indentLevel")]).toEqual(["Top", 1]);
  });

  it("opens the copy of a sheet that is protected without a password; the original stays protected", async () => {
    on.sheet("Data").protection = {};
    await copySheets(on.book, COPY);
    expect(on.sheet("Data values").protection).toBeUndefined();
    expect(on.sheet("Data").protection).toEqual({});
  });

  it("takes its copies away where the record can't be made", async () => {
    const broken = { ...COPY, record: { ...COPY.record, cells: { A1: { content: "=BAD(" } } } };
    await expect(copySheets(on.book, broken)).rejects.toThrow("Excel refused a value, a formula or an address");
    expect(on.titles()).toEqual(["Sheet1", "Data"]);
  });

  it("says that a sheet with a password must be opened first, and leaves no copy", async () => {
    on.sheet("Data").protection = { password: "pool" };
    await expect(copySheets(on.book, COPY)).rejects.toThrow(/Data.*password|password.*Data/);
    expect(on.titles()).toEqual(["Sheet1", "Data"]);
  });

  it("says that the workbook's structure is protected", async () => {
    on.host.book.structureProtected = true;
    await expect(copySheets(on.book, COPY)).rejects.toThrow(/workbook.*protected/);
    expect(on.titles()).toEqual(["Sheet1", "Data"]);
  });
});

describe("Copies of sheets in an Excel that can't copy sheets", () => {
  const on = onExcel({ ...WINDOWS_10, name: "Windows 1.6", api: "1.6" }, "Data");

  it("is refused with a sentence", async () => {
    await expect(copySheets(on.book, COPY)).rejects.toThrow("this Excel can't copy sheets");
  });
});
