/** The API sets, events, the pane, and what belongs to the common API. */
import { describe, expect, it } from "vitest";
import { excelHost, hasSet, install, PROFILES, showPane, type, WEB, WINDOWS_20 } from "./index";
import { readApiSets } from "./sets/readTypings";
import SETS from "./sets/apiSets.json";
import { busyCell } from "./oddities";
import { calculated } from "./model/edits";
import { run } from "./running";

const soon = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 100));

describe("The table of API sets", () => {
  it("is what the published typings say", () => {
    expect(readApiSets()).toEqual(SETS);
  });

  it("tells reading a member from setting it", () => {
    expect([SETS.Worksheet.visibility, SETS.Worksheet.getUsedRangeOrNullObject]).toEqual(["1.1|1.2", "1.4"]);
    expect(SETS.Range).toMatchObject({ left: "1.10", getSpillParentOrNullObject: "1.12", setDirty: "1.9" });
  });
});

describe.each(PROFILES)("Excel, $name,", (profile) => {
  it("has its own API sets and those below", () => {
    const [, minor = 0] = profile.api.split(".").map(Number);
    expect(hasSet(profile, "ExcelApi", profile.api)).toBe(true);
    expect(hasSet(profile, "ExcelApi", "1.9")).toBe(true);
    expect(hasSet(profile, "ExcelApi", `1.${String(minor + 1)}`)).toBe(false);
    expect(hasSet(profile, "NoSuchSet")).toBe(false);
  });
});

describe("Events", () => {
  it("tell an edit before the calculation that follows it", async () => {
    const excel = excelHost(WEB, ["Sheet1", "Data"]);
    const seen: string[] = [];
    await run(excel, async ({ workbook: { worksheets }, sync }) => {
      worksheets.onCalculated.add(async ({ address }) => void seen.push(`calculated ${address}`));
      worksheets.onChanged.add(async ({ address, source }) => void seen.push(`${source} change ${address}`));
      await sync();
    });
    await run(excel, async ({ workbook, sync }) => {
      workbook.worksheets.getItem("Data").getRange("A1").formulas = [["=1+1"]];
      await sync();
    });
    await soon();
    type(excel.host, "Data!B2", 1);
    await soon();
    expect(seen).toEqual(["Local change A1", "calculated A1", "Remote change B2"]);
  });

  it("tell a result that comes later as a calculation alone", async () => {
    const excel = excelHost(WEB, ["Data"]);
    const seen: string[] = [];
    busyCell(excel.host, "Data!A1", "=WARMBACK.POOL.YEAR(A2:B40)");
    await run(excel, async ({ workbook: { worksheets }, sync }) => {
      worksheets.onCalculated.add(async ({ address }) => void seen.push(address));
      worksheets.onChanged.add(async () => void seen.push("changed"));
      await sync();
    });
    calculated(excel.host, "Data!A1", 3);
    await soon();
    expect(seen).toEqual(["A1"]);
  });
});

interface Visibility {
  onVisibilityModeChanged(call: (message: { visibilityMode: string }) => void): Promise<() => Promise<void>>;
}

describe("The pane", () => {
  it("tells when it is hidden and shown", async () => {
    const excel = excelHost(WEB);
    const seen: string[] = [];
    const addin = excel.client.Office["addin"] as Visibility;
    const stop = await addin.onVisibilityModeChanged(({ visibilityMode }) => seen.push(visibilityMode));
    showPane(excel.host, false);
    showPane(excel.host, true);
    await soon();
    expect(seen).toEqual(["Hidden", "Taskpane"]);
    await stop();
    showPane(excel.host, false);
    await soon();
    expect(seen).toHaveLength(2);
  });
});

type Answer<T> = { readonly status: string; readonly value: T; readonly error?: { readonly code: number } };

const opened = (sliceSize: number): Promise<Answer<Office.File>> =>
  new Promise((resolve) => {
    Office.context.document.getFileAsync("compressed" as never, { sliceSize }, resolve as never);
  });

const sliceOf = (file: Office.File, index: number): Promise<Answer<Office.Slice>> =>
  new Promise((resolve) => file.getSliceAsync(index, resolve as never));

const closed = (file: Office.File): Promise<unknown> => new Promise((resolve) => file.closeAsync(resolve));

describe("The common API", () => {
  it("hands the workbook's file out in slices until it is closed", async () => {
    const excel = excelHost(WEB);
    excel.office.file.bytes = Uint8Array.from([1, 2, 3, 4, 5]);
    const restore = install(excel);
    const { value: file } = await opened(2);
    const found: unknown[] = [];
    for (let at = 0; at < file.sliceCount; at++) found.push((await sliceOf(file, at)).value.data);
    expect(found).toEqual([[1, 2], [3, 4], [5]]);
    expect(excel.office.file).toMatchObject({ open: 1, slices: [0, 1, 2] });
    await closed(file);
    expect(excel.office.file.open).toBe(0);
    expect((await sliceOf(file, 0)).status).toBe("failed");
    restore();
  });

  it("holds two files at most and gives no slice above 4 MB", async () => {
    const restore = install(excelHost(WEB));
    const answers = [await opened(4_194_305), await opened(4_194_304), await opened(2), await opened(2)];
    expect(answers.map(({ status }) => status)).toEqual(["failed", "succeeded", "succeeded", "failed"]);
    restore();
  });
});

describe.each([WEB, WINDOWS_20])("A new workbook on $name", (profile) => {
  it("is made from a file in base 64", async () => {
    const excel = excelHost(profile);
    await excel.Excel.createWorkbook("UEsDBA==");
    expect(excel.host.created).toEqual(["UEsDBA=="]);
    expect(excel.host.unknown).toEqual([]);
  });
});
