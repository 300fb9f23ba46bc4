/** What the client library and the host do together, whatever the workbook. */
import { describe, expect, it } from "vitest";
import { cellAt, excelHost, PROFILES, sheetNamed, WEB, WINDOWS_10, WINDOWS_20, type Profile } from "./index";
import { codeOf, loaded, run } from "./running";

const grid = (rows: number, text: string): string[][] => Array.from({ length: rows }, () => [text]);

describe("Microsoft's client in front of the host", () => {
  it("gives no property before it was loaded and synced", async () => {
    const excel = excelHost(WEB);
    const found = run(excel, async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      range.load("values");
      await Promise.resolve();
      return range.values;
    });
    expect(await codeOf(found)).toBe("PropertyNotLoaded");
  });

  it("carries out what stands before the action that failed, and tells which that was", async () => {
    const excel = excelHost(WEB);
    const failed = await run(excel, async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.load("name");
      sheet.getRange("A1").values = [[1]];
      sheet.getRange("A2").formulas = [["=BAD("]];
      sheet.getRange("A3").values = [[3]];
      const error: unknown = await context.sync().catch((reason: unknown) => reason);
      return [error, sheet.name] as const;
    });
    const [error, name] = failed as [OfficeExtension.Error, string];
    expect(error.code).toBe("InvalidArgument");
    expect(error.debugInfo["statement"]).toContain("formulas");
    expect(name).toBe("Sheet1");
    const sheet = sheetNamed(excel.host.book, "Sheet1");
    expect([cellAt(sheet, "A1")?.value, cellAt(sheet, "A3")]).toEqual([1, undefined]);
  });

  it("leaves the proxies of a rejected request unusable: calls on them throw at once", async () => {
    const excel = excelHost({ ...WEB, payload: 1_000 });
    const code = run(excel, async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      range.values = [["x".repeat(2_000)]];
      await context.sync().catch(() => undefined);
      range.values = [["y"]];
      await context.sync();
    });
    expect(await codeOf(code)).toBe("InvalidObjectPath");
  });

  it("keeps a range from one sync to the next, and lets go of it at the end", async () => {
    const excel = excelHost(WEB);
    await run(excel, async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      range.load("values");
      await context.sync();
      expect(excel.host.references.size).toBe(1);
      range.values = [[2]];
      await context.sync();
    });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(excel.host.references.size).toBe(0);
    expect(excel.host.traffic.requests()).toBe(3);
    expect(excel.host.traffic.roundTrips()).toBe(2);
  });

  it("gives null objects through chains, and nothing to set on them", async () => {
    const excel = excelHost(WEB);
    await run(excel, async (context) => {
      const range = context.workbook.worksheets.getItemOrNullObject("Gone").getUsedRangeOrNullObject();
      range.load("address");
      await context.sync();
      expect(range.isNullObject).toBe(true);
    });
    const set = run(excel, async (context) => {
      context.workbook.worksheets.getItemOrNullObject("Gone").name = "There";
      await context.sync();
    });
    expect(await codeOf(set)).toBe("InvalidObjectPath");
  });

  it("sends a large matrix in pieces of 1,500 cells", async () => {
    const excel = excelHost(WEB);
    await run(excel, async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1:A4000").values = grid(4_000, "x");
      await context.sync();
    });
    const sent = excel.host.traffic.exchanges[0]?.request.body.Actions.filter(({ Name }) => Name === "Values");
    expect(sent).toHaveLength(3);
    expect(sheetNamed(excel.host.book, "Sheet1").cells.size).toBe(4_000);
  });

  it("fails by name at a member that the host doesn't know", async () => {
    const excel = excelHost(WEB);
    const asked = run(excel, async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").removeDuplicates([0], false);
      await context.sync();
    });
    await expect(asked).rejects.toThrow("the stand-in doesn't know Range.removeDuplicates");
    expect(excel.host.unknown).toEqual(["Range.removeDuplicates"]);
  });
});

const loadSpill = (profile: Profile): Promise<unknown> =>
  run(excelHost(profile), async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
    range.load("hasSpill");
    await context.sync();
    return range.hasSpill;
  });

describe("A member of a higher API set", () => {
  it("is refused at once by the client where it is a method", async () => {
    const called = run(excelHost(WINDOWS_10), async (context) => {
      context.workbook.getActiveCell().getSpillParentOrNullObject();
      await context.sync();
    });
    expect(await codeOf(called)).toBe("ApiNotFound");
  });

  it("is refused by the host where it is loaded", async () => {
    expect(await codeOf(loadSpill(WINDOWS_10))).toBe("ApiNotFound");
    expect(await loadSpill(WINDOWS_20)).toBe(false);
  });
});

const TEXT = "x".repeat(600_000);

describe.each(PROFILES)("A large request or answer on $name", (profile) => {
  const limited = profile.platform === "web";

  const send = (times: number) =>
    run(excelHost(profile), async (context) => {
      for (let at = 0; at < times; at++)
        context.workbook.worksheets.getItem("Sheet1").getRange("A1").numberFormat = [[TEXT]];
      await context.sync();
    });

  it("is refused above 5 MB on the web only", async () => {
    const excel = excelHost(profile);
    for (let row = 0; row < 170; row++)
      sheetNamed(excel.host.book, "Sheet1").cells.set(row * 16_384, { formula: "", value: "y".repeat(32_000) });
    expect(await codeOf(send(10))).toBe(limited ? "RequestPayloadSizeLimitExceeded" : undefined);
    expect(await codeOf(loaded(excel, "Sheet1!A1:A170", "values"))).toBe(
      limited ? "ResponsePayloadSizeLimitExceeded" : undefined,
    );
    expect(excel.host.traffic.largestAnswer()).toBeGreaterThan(5 * 1024 * 1024);
  });
});
