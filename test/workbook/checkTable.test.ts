import { afterAll, beforeAll, describe, expect, it, test } from "vitest";
import { checkTableSheet } from "../../src/workbook/check/checkTable";
import { readMarked } from "../../src/workbook/check/markedCells";
import { cellAt, sheetNamed, WEB } from "../excelHost";
import { at } from "./fakeWorkbook";
import { onExcel } from "./onExcel";
import { ENGINE, onPreview, type OnPreview } from "./previewEngine";

const MARKED = [at("Pool loop", "B7"), at("Pool loop", "B8"), at("Pool loop", "B9")];

describe("A check table in the preview's sheet engine", () => {
  let on: OnPreview;
  let name: string;
  const verdicts = (): readonly unknown[] => on.block(name, "H11:H13").values.map(([value]) => value);
  const ofAll = (): unknown => on.block(name, "B6").values[0]?.[0];
  beforeAll(async () => {
    on = await onPreview("Pool loop");
    await on.put("Pool loop", {
      A7: "Head lost",
      B7: '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100)',
      C7: "ft",
      A8: "Velocity",
      B8: '=WARMBACK.PIPE.VELOCITY(40,"2 in")',
      B9: 0,
    });
    name = await on.book.insert(checkTableSheet(await readMarked(on.book, ENGINE, MARKED), ENGINE.edition));
    await on.sheets.whenCalculated();
  });
  afterAll(() => on.sheets.dispose());

  test("names each value by the text beside it, with its unit from the sheet or the function", () => {
    expect(on.block(name, "A11:D12").values.map((row) => [row[0], row[1], row[3]])).toEqual([
      ["Head lost", "'Pool loop'!B7", "ft"],
      ["Velocity", "'Pool loop'!B8", "ft/s"],
    ]);
  });

  test("is not checked as long as hand values or initials are missing", async () => {
    expect(verdicts()).toEqual(["not checked", "not checked", "not checked"]);
    expect(ofAll()).toBe("NOT CHECKED");
    await on.put(name, { E11: 2.68, E12: 3.89, E13: 0 });
    expect(verdicts()).toEqual(["agrees", "agrees", "agrees"]);
    expect(ofAll()).toBe("NOT CHECKED");
  });

  test.each([
    ["AB", "AB"],
    ["A.B.", "a b"],
    ["AB", "\u00a0ab "],
    ["AB", ""],
    [" ", "CD"],
  ])("is not checked where %j made it and %j checked it", async (made, checked) => {
    await on.put(name, { B4: made, B5: checked });
    expect(ofAll()).toBe("NOT CHECKED");
  });

  test("agrees once two people have signed, and differs where one value does", async () => {
    await on.put(name, { B4: "AB", B5: "CD" });
    expect(ofAll()).toBe("AGREES");
    await on.put(name, { E12: 4.5 });
    expect(verdicts()[1]).toBe("differs");
    expect(ofAll()).toBe("DIFFERS");
    await on.put(name, { F12: 0.2 });
    expect(ofAll()).toBe("AGREES");
    await on.put("Pool loop", { B7: '=WARMBACK.PIPE.HEADLOSS(40,"2 in",-5)' });
    expect(ofAll()).toBe("NOT CHECKED");
  });

  test("says that named initials are no digital signature", () => {
    expect(on.block(name, "A7").values[0]?.[0]).toContain("There is no digital signature");
  });
});

describe("A check table in the stand-in for Excel", () => {
  const on = onExcel(WEB, "Pool loop");

  it("is a sheet of its own with its print set-up, the edition as a value", async () => {
    const cells = sheetNamed(on.host.book, "Pool loop").cells;
    cells.set(0, { formula: '=WARMBACK.PIPE.VELOCITY(40,"2 in")', value: 3.8924 });
    const name = await on.book.insert(
      checkTableSheet(await readMarked(on.book, ENGINE, [at("Pool loop", "A1")]), ENGINE.edition),
    );
    const sheet = sheetNamed(on.host.book, name);
    expect(cellAt(sheet, "C11")?.formula).toBe("='Pool loop'!A1");
    expect(cellAt(sheet, "H11")?.formula).toBe('=WARMBACK.NOTE.VERDICT(IF(LEN(E11)=0,"",E11),C11,F11)');
    expect(cellAt(sheet, "B8")).toMatchObject({ formula: "", value: ENGINE.edition });
  });
});
