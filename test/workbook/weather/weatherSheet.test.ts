/** The sheet of a weather file: in the browser sheet it calculates, in Excel it is written whole or not at all. */
import { readFileSync } from "node:fs";
import { strToU8 } from "fflate";
import { describe, expect, inject, test } from "vitest";
import { emptySheet } from "../../../src/preview/file/bookData";
import { loadFunctions } from "../../../src/preview/host/loadFunctions";
import { previewWorkbook } from "../../../src/preview/host/previewWorkbook";
import { startHeadless } from "../../../src/preview/univer/start";
import { recoverySizing } from "../../../src/sheets/recoverySizing";
import type { StarterSheet } from "../../../src/sheets/sheet";
import { parseCells } from "../../../src/workbook/reader/reference";
import { readRecordedFile, type RecordedFile } from "../../../src/workbook/weather/readFile";
import { recordedSheet, recordedTitle, usedAs } from "../../../src/workbook/weather/weatherSheet";
import { PROFILES, WEB } from "../../excelHost";
import { cellsIn, numberIn } from "../../golden/rows";
import { onExcel } from "../onExcel";

/** The typical year of Chicago (NREL TMY3), as a table with its place above it. */
const CHICAGO = [
  "Station: Fernhill (invented)",
  "Latitude: 41.98",
  "Longitude: -87.92",
  "Time zone: -6",
  "Elevation: 201",
  ...readFileSync("test/golden/weather-chicago-il.csv", "utf8").split("\n").slice(1),
].join("\n");

const chicago = (hourly: boolean): RecordedFile => readRecordedFile(strToU8(CHICAGO), hourly);
const sheetOf = (file: RecordedFile, hasYearInputs = false): StarterSheet =>
  recordedSheet(file, { title: recordedTitle(file, "chicago.csv"), file: "chicago.csv", hasYearInputs });

/** Address of the first cell that begins so. */
const placeOf = (sheet: StarterSheet, begin: string): string =>
  Object.entries(sheet.cells).find(([, { content }]) => String(content).startsWith(begin))?.[0] ?? "";

describe("The sheet of a weather file", () => {
  test.each([false, true])(
    "checks its rows and gives the year of the sizing sheet (hourly: %s)",
    { timeout: 240_000 },
    async (hourly) => {
      const book = startHeadless(loadFunctions(inject("build")), { sheets: [emptySheet("Start")], names: [] });
      try {
        const workbook = previewWorkbook(book);
        await workbook.insert(recoverySizing);
        const sheet = sheetOf(chicago(hourly), true);
        const name = await workbook.insert(sheet);
        expect(name).toBe("Weather Fernhill (invented)");
        const spilled = async (begin: string, rows: number, columns: number) => {
          const at = parseCells(placeOf(sheet, begin));
          const [block] = await workbook.read([
            { sheet: name, row: at?.row ?? 0, column: at?.column ?? 0, rows, columns },
          ]);
          return block?.values ?? [];
        };
        const checks = await spilled("=WARMBACK.CLIMATE.CHECK", hourly ? 13 : 8, 6);
        expect(checks[0]?.[0]).toBe("check");
        for (const [check, , , , verdict] of checks.slice(1)) expect([check, verdict]).toEqual([check, "fine"]);
        const year = await spilled("Heat taken by the pool", 6, 3);
        const totals = year.map(([, value]) => Number(value));
        for (const value of totals) expect(value).toBeGreaterThan(0);
        const [, without = 0, with_ = 0, needed = 0, bought = 0] = totals;
        expect(with_).toBeGreaterThan(without);
        expect(bought).toBeLessThan(needed);
        expect(usedAs(sheet)).toMatch(
          /^=WARMBACK\.POOL\.YEAR\(YearInputs,'Weather Fernhill \(invented\)'!\$A\$\d+:\$G\$\d+\)$/,
        );
      } finally {
        book.dispose();
      }
    },
  );

  test("says station, place, source and what was found, and asks for a latitude that the file lacks", () => {
    const file = readRecordedFile(strToU8(CHICAGO.split("\n").slice(5).join("\n")), false);
    const texts = Object.values(sheetOf(file).cells).map(({ content }) => String(content));
    expect(texts).toContain("degrees, south negative: type it here");
    expect(texts.some((each) => each.startsWith("=IF(LEN($B$"))).toBe(true);
    expect(texts).toContain("no opaque cloud: the total cover was taken, which makes the sky warmer");
    expect(texts.some((each) => each.startsWith("Read from chicago.csv on this computer"))).toBe(true);
  });

  test("has a title that every workbook takes", () => {
    const file = { ...chicago(false), station: "St. Mary's [north] / hall: a very long name of a station, ZZ" };
    expect(recordedTitle(file, "x.epw")).toMatch(/^[^\\/?*[\]:']{1,31}$/);
    expect(recordedTitle({ ...file, station: "" }, "site.epw.gz")).toBe("Weather site");
  });
});

describe.each(PROFILES)("In Excel, $name, a weather sheet", (profile) => {
  const on = onExcel(profile, "Sheet1");
  test("is written with its rows, its name and its formula", { timeout: 120_000 }, async () => {
    const sheet = sheetOf(chicago(false));
    const done: number[] = [];
    const name = await on.book.insert(sheet, { onProgress: (rows) => done.push(rows) });
    expect(done.length).toBeGreaterThan(0);
    const jan = parseCells(placeOf(sheet, "Jan"));
    const [block] = await on.book.read([{ sheet: name, row: jan?.row ?? 0, column: 0, rows: 12, columns: 7 }]);
    // As published with the stations' months, to its digits.
    const [january] = cellsIn("weather-months-22.csv").filter(({ wmo }) => wmo === "725300");
    expect(block?.values[0]?.[1]).toBeCloseTo(numberIn(january ?? {}, "air_mean_degC"), 2);
    expect(block?.values[11]?.[0]).toBe("Dec");
    const [named] = await on.book.resolve([
      { text: "Weather_FernhillInvented", from: { sheet: name, row: 0, column: 0 } },
    ]);
    expect(named).toMatchObject({ sheet: name, row: (jan?.row ?? 0) - 1, rows: 13, columns: 7 });
  });
});

describe("In Excel a weather sheet of 8,760 rows", () => {
  const on = onExcel(WEB, "Sheet1");
  test("leaves no sheet when it is cancelled while it is written", { timeout: 120_000 }, async () => {
    const ending = new AbortController();
    const inserting = on.book.insert(sheetOf(chicago(true)), {
      signal: ending.signal,
      onProgress: () => ending.abort(),
    });
    await expect(inserting).rejects.toThrow();
    expect(on.titles()).toEqual(["Sheet1"]);
  });
});
