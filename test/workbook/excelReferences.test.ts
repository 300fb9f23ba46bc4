/** References through the Excel adapter: tables, names, how many round trips. */
import { describe, expect, it } from "vitest";
import { sessionLog } from "../../src/workbook/callLog";
import { readCells } from "../../src/workbook/reader/read";
import { addTable, atMost, PROFILES, type } from "../excelHost";
import { keyOf } from "../excelHost/model/workbook";
import { spill } from "../excelHost/oddities";
import { area, onExcel } from "./onExcel";

describe.each(PROFILES)("References in Excel, $name", (profile) => {
  const on = onExcel(profile, "Sheet1", "Data");

  it("follow tables: columns, this row, headers, totals", async () => {
    const columns = ["Flow", "Head", "Flow rate"];
    addTable(on.sheet("Data"), "B3:D7", { name: "Pumps", columns, headers: true, totals: true });
    const from = { sheet: "Data", row: 4, column: 3 };
    const texts = [
      "Pumps[Flow]",
      "Pumps[[flow]:[Head]]",
      "Pumps[@Head]",
      "[@[Flow rate]]",
      "Pumps[#All]",
      "Pumps[#Headers]",
    ];
    const more = ["Pumps[[#Totals],[Head]]", "Pumps", "Pumps[Power]", "Fans[Flow]"];
    expect(await on.book.resolve([...texts, ...more].map((text) => ({ text, from })))).toEqual([
      area("Data", 3, 1, 3, 1),
      area("Data", 3, 1, 3, 2),
      area("Data", 4, 2),
      area("Data", 4, 3),
      area("Data", 2, 1, 5, 3),
      area("Data", 2, 1, 1, 3),
      area("Data", 6, 2),
      area("Data", 3, 1, 3, 3),
      undefined,
      undefined,
    ]);
    const outside = { sheet: "Data", row: 20, column: 3 };
    expect(
      await on.book.resolve([
        { text: "[@Flow]", from: outside },
        { text: "Pumps[@Flow]", from: outside },
      ]),
    ).toEqual([undefined, undefined]);
  });

  it("need no more round trips for 200 than for two", async () => {
    const from = { sheet: "Data", row: 0, column: 0 };
    const texts = Array.from({ length: 200 }, (_, at) => ({ text: `Sheet1!A${String(at + 1)}`, from }));
    await on.book.resolve(texts.slice(0, 2));
    const few = on.host.traffic.roundTrips();
    on.host.traffic.clear();
    await on.book.resolve(texts);
    expect(on.host.traffic.roundTrips()).toBe(few);
  });

  const spills = atMost("1.12", profile.api);

  it("find the one spill among 5,000 cells in two requests, and ask for none where no Excel has them", async () => {
    for (let row = 0; row < 5_000; row++) on.sheet("Data").cells.set(keyOf(row, 1), { formula: "=A1", value: row });
    spill(on.host, "Data!D3000", "=S()", [
      [1, 2],
      [3, 4],
    ]);
    const places = Array.from({ length: 5_000 }, (_, at) => `B${String(at + 1)}#`);
    const from = { sheet: "Data", row: 0, column: 0 };
    const found = await on.book.resolve([...places, "D3000#", "E3001#"].map((text) => ({ text, from })));
    expect(found.filter((one) => one !== undefined)).toEqual(spills ? [area("Data", 2999, 3, 2, 2)] : []);
    // Areas first, then the cells of those that hold a spill.
    expect(on.host.traffic.roundTrips()).toBe(spills ? 4 : 0);
    expect(on.host.traffic.largestRequest()).toBeLessThan(200_000);
  });

  it("ask for each cell beside a spill, and find every spill of a column of them", async () => {
    for (let row = 0; row < 300; row++) on.sheet("Data").cells.set(keyOf(row, 1), { formula: "=A1", value: row });
    for (const row of [10, 20, 290]) spill(on.host, `Data!B${String(row)}`, "=S()", [[1, 2]]);
    const texts = Array.from({ length: 300 }, (_, at) => `B${String(at + 1)}#`);
    const from = { sheet: "Data", row: 0, column: 0 };
    const found = await on.book.resolve(texts.map((text) => ({ text, from })));
    const rows = found.flatMap((one) => (one === undefined ? [] : [one.row + 1]));
    expect(rows).toEqual(spills ? [10, 20, 290] : []);
  });

  it("let the reader follow a table's column", async () => {
    addTable(on.sheet("Data"), "A1:A3", { name: "Pumps", columns: ["Flow"], headers: true, totals: false });
    type(on.host, "Data!A2", 40);
    type(on.host, "Data!A3", 50);
    const cell = {
      address: { sheet: "Data", row: 2, column: 4 },
      formula: "=WARMBACK.PIPE.SIZE(SUM(Pumps[Flow]),[@Flow])",
      value: 1,
    };
    const engine = { known: new Set(["PIPE.SIZE"]), log: sessionLog(), call: () => ({ value: 1 }) };
    const [outside] = await readCells(on.book, [cell], engine);
    expect(outside?.calls[0]?.args[0]).toEqual({ value: 90 });
    const [inside] = await readCells(on.book, [{ ...cell, address: { sheet: "Data", row: 2, column: 0 } }], engine);
    expect(inside?.calls[0]?.args).toEqual([{ value: 90 }, { value: 50 }]);
  });

  it("to a sheet that was renamed between two syncs mean nothing, without an error", async () => {
    const from = { sheet: "Sheet1", row: 0, column: 0 };
    on.host.before = (number) => {
      if (number === 1) on.sheet("Data").name = "Data 2026";
    };
    expect(
      await on.book.resolve([
        { text: "Data!A1", from },
        { text: "Sheet1!A1", from },
      ]),
    ).toEqual([undefined, area("Sheet1", 0, 0)]);
  });
});
