/** The largest request and answer of the Excel adapter on large workbooks, printed; the web's limit lifted to see them whole. */
import { describe, expect, it } from "vitest";
import { sheetNamed, WEB } from "../excelHost";
import { quiet } from "../excelHost/running";
import { fillBroken, fillFormulas, fillTexts, mendAll, scanAll } from "../workbook/largeBooks";
import { onExcel } from "../workbook/onExcel";

const SHEETS = Array.from({ length: 20 }, (_, at) => `Sheet${String(at + 1)}`);

describe("On the web, without its limit,", () => {
  const on = onExcel({ ...WEB, payload: undefined }, ...SHEETS);
  const first = () => on.sheet("Sheet1");
  const cases: readonly (readonly [string, () => void, () => Promise<unknown>])[] = [
    [
      "scan of 20 sheets of 5,000 formulas",
      () => SHEETS.forEach((title) => fillFormulas(sheetNamed(on.host.book, title), 5_000)),
      () => scanAll(on.book),
    ],
    ["scan of 60,000 long texts", () => fillTexts(first(), 60_000), () => scanAll(on.book)],
    ["mend of 10,000 cells", () => fillBroken(first(), 10_000), () => mendAll(on.book)],
    [
      "scan of 20 small sheets",
      () => SHEETS.forEach((title) => fillFormulas(sheetNamed(on.host.book, title), 5)),
      () => scanAll(on.book),
    ],
  ];
  it.each(cases)("a %s goes through", async (name, fill, run) => {
    fill();
    await run();
    await quiet(on.host);
    const { traffic } = on.host;
    const [asked, got] = [traffic.largestRequest(), traffic.largestAnswer()];
    console.log(`${name}: ${traffic.requests()} requests, largest request ${asked} bytes, largest answer ${got} bytes`);
    expect(traffic.requests()).toBeGreaterThan(0);
  });
});
