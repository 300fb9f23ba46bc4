/** How much the Excel adapter sends and asks for: large workbooks on the web, round trips for small ones. */
import { describe, expect, it } from "vitest";
import { sheetNamed, WEB } from "../excelHost";
import { quiet } from "../excelHost/running";
import { fillBroken, fillFormulas, fillTexts, mendAll, scanAll } from "./largeBooks";
import { onExcel } from "./onExcel";

const LIMIT = 5 * 1024 * 1024;

const TWENTY = Array.from({ length: 20 }, (_, at) => `Sheet${String(at + 1)}`);

describe("A large workbook in Excel on the web", { timeout: 120_000 }, () => {
  const on = onExcel(WEB, "Sheet1");
  const within = (): void => {
    expect(on.host.traffic.largestRequest()).toBeLessThan(LIMIT);
    expect(on.host.traffic.largestAnswer()).toBeLessThan(LIMIT);
  };

  it("of 5,000 formulas is scanned within the limit of requests and answers", async () => {
    fillFormulas(on.sheet("Sheet1"), 5_000);
    await scanAll(on.book);
    within();
  });

  it("of 60,000 long texts is scanned within the limit", async () => {
    fillTexts(on.sheet("Sheet1"), 60_000);
    await scanAll(on.book);
    within();
  });

  it("of 10,000 broken formulas is mended within the limit", async () => {
    fillBroken(on.sheet("Sheet1"), 10_000);
    expect(await mendAll(on.book)).toHaveLength(10_000);
    within();
  });
});

describe("A workbook of 20 small sheets", () => {
  const on = onExcel(WEB, ...TWENTY);

  it("is scanned with at most 8 requests", async () => {
    for (const title of TWENTY) fillFormulas(sheetNamed(on.host.book, title), 5);
    await scanAll(on.book);
    await quiet(on.host);
    expect(on.host.traffic.requests()).toBeLessThanOrEqual(8);
  });
});
