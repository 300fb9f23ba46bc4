/** Cells through the Excel adapter: reads, writes, spills, errors, round trips. */
import { describe, expect, it } from "vitest";
import { asTyped } from "../../src/workbook/excel/typed";
import { findDamage } from "../../src/workbook/mend/damage";
import { boxOf } from "../excelHost/model/workbook";
import { foreignError } from "../excelHost/oddities";
import { atMost, calculated, cellAt, PROFILES, type } from "../excelHost";
import { area, groupsUndo, onExcel, sentenceOf } from "./onExcel";

const cell = (row: number, content: string | number, column = 0) => ({ sheet: "Data", row, column, content });
const place = (address: string) => boxOf(address) ?? { row: 0, column: 0 };

describe.each(PROFILES)("Cells in Excel, $name", (profile) => {
  const on = onExcel(profile, "Sheet1", "Data");
  const spills = atMost("1.12", profile.api);

  it("are written in one undo step where Excel has that", async () => {
    await on.book.write([cell(0, 1), cell(4, 2), cell(8, 3)]);
    expect(on.host.undo.steps).toHaveLength(1);
    expect(on.host.undo.steps[0]?.startsWith("group")).toBe(groupsUndo(profile));
  });

  it("hold again what they held when Excel breaks off half way", async () => {
    await on.book.write([cell(0, 1), cell(1, "1-2"), cell(2, "=A1")]);
    await expect(on.book.write([cell(0, 5), cell(1, 6), cell(2, "=BAD(")])).rejects.toThrow("Excel refused");
    const data = on.sheet("Data");
    expect([cellAt(data, "A1")?.value, cellAt(data, "A2")?.value, cellAt(data, "A3")?.formula]).toEqual([
      1,
      "1-2",
      "=A1",
    ]);
  });

  it("hold again a text that looks like a formula", async () => {
    type(on.host, "Data!A1", "'=A2");
    await expect(on.book.write([cell(0, 5), cell(1, "=BAD(")])).rejects.toThrow("Excel refused");
    expect(cellAt(on.sheet("Data"), "A1")).toMatchObject({ formula: "", value: "=A2" });
  });

  // A spilled cell shows its parent's formula; written back, it would be in the way of the spill. No member below 1.12 says
  // which cells are spilled into.
  it.runIf(spills)("spill again after a write that broke off", async () => {
    on.host.resultOf = (formula) => (formula === "=S()" ? [["a"], ["b"]] : undefined);
    await on.book.write([cell(0, "=S()")]);
    await expect(on.book.write([cell(1, 5), cell(2, "=BAD(")])).rejects.toThrow("Excel refused");
    expect([cellAt(on.sheet("Data"), "A1")?.value, cellAt(on.sheet("Data"), "A2")?.value]).toEqual(["a", "b"]);
  });

  it("show an error apart from a text that looks like one", async () => {
    await on.book.write([cell(0, "=1/0"), cell(0, "#N/A", 1)]);
    calculated(on.host, "Data!A1", { error: "#DIV/0!" });
    const [block] = await on.book.read([area("Data", 0, 0, 1, 2)]);
    expect(block?.values).toEqual([[{ code: "#DIV/0!" }, "#N/A"]]);
  });

  it.each(["#NOM?", "#¿NOMBRE?", "#NÉV?", "#ИМЯ?"])("are mended where Excel shows #NAME? as %s", async (foreign) => {
    const [proper, text] = ["=WARMBACK.POOL.AREA(B1)", "#NOM?"];
    await on.book.write([cell(0, proper), cell(0, text, 2)]);
    calculated(on.host, "Data!A1", { error: "#NAME?" });
    foreignError(on.host, "Data!A1", foreign);
    const [block] = await on.book.read([area("Data", 0, 0, 1, 3)]);
    expect(block?.values).toEqual([[{ code: "#NAME?" }, null, text]]);
    const known = { known: new Set(["POOL.AREA"]), isSingle: () => true, mostArguments: () => undefined };
    const { damaged } = await findDamage(on.book, known);
    expect(damaged.map(({ address, kind }) => [address, kind])).toEqual([
      [{ sheet: "Data", row: 0, column: 0 }, "again"],
    ]);
  });

  it.each(["#N/D", "#¡DIV/0!", "#SAYI/0!"])(
    "hold %s as an error should an Excel give it as a value",
    async (foreign) => {
      await on.book.write([cell(0, "=1/0")]);
      calculated(on.host, "Data!A1", { error: foreign });
      expect((await on.book.read([area("Data", 0, 0)]))[0]?.values).toEqual([[{ code: foreign }]]);
    },
  );

  it.runIf(spills)("that are spilled into have no formula of their own", async () => {
    const formula = "=WARMBACK.WATER.PROPERTIES($F$1)";
    on.host.resultOf = (_, { row }) => (row === 0 ? [["density"], ["heat capacity"]] : "density");
    await on.book.write([cell(0, formula), cell(3, formula), cell(3, formula, 1)]);
    expect(cellAt(on.sheet("Data"), "A2")?.formula).toBe(formula);
    const [block] = await on.book.read([area("Data", 0, 0, 4, 2)]);
    expect(block?.formulas).toEqual([
      [formula, ""],
      ["", ""],
      ["", ""],
      [formula, formula],
    ]);
    const from = area("Data", 9, 9);
    expect(await on.book.resolve([{ text: "A1#", from }])).toEqual([area("Data", 0, 0, 2, 1)]);
    expect(await on.book.resolve([{ text: "A4#", from }])).toEqual([undefined]);
  });

  it.runIf(spills)("that are spilled into across a block's edge have no formula of their own", async () => {
    const rows = Array.from({ length: 6 }, (_, at) => [at]);
    on.host.resultOf = () => rows;
    await on.book.write([{ sheet: "Data", row: 4_998, column: 0, content: "=S()" }]);
    const [block] = await on.book.read([area("Data", 0, 0, 5_004, 10)]);
    const found = block?.formulas.slice(4_998).map(([first]) => first);
    expect(found).toEqual(["=S()", "", "", "", "", ""]);
  });

  it("are read piece by piece where they are many", async () => {
    await on.book.write([{ sheet: "Data", row: 11_999, column: 2, content: 7 }]);
    on.host.traffic.clear();
    const [block] = await on.book.read([area("Data", 0, 0, 12_000, 10)]);
    expect(on.host.traffic.roundTrips()).toBeGreaterThan(1);
    expect(block?.values).toHaveLength(12_000);
    expect(block?.values[11_999]?.[2]).toBe(7);
  });

  it("are marked dirty by areas", async () => {
    await on.book.recalculate([area("Data", 0, 0, 2, 2), area("Sheet1", 4, 4)]);
    expect(on.host.dirty).toEqual(["Data!A1:B2", "Sheet1!E5"]);
  });

  it("of a protected sheet are refused, unlocked ones not", async () => {
    const data = on.sheet("Data");
    data.protection = {};
    data.unlocked.push({ ...place("B1"), rows: 1, columns: 1 });
    await expect(on.book.write([cell(0, 1)])).rejects.toThrow("the sheet is protected: take its protection off first");
    await on.book.write([cell(0, 2, 1)]);
    expect(cellAt(data, "B1")?.value).toBe(2);
  });

  it("of a hidden sheet can't be gone to: the sentence says so", async () => {
    on.sheet("Data").visibility = "Hidden";
    expect(await sentenceOf(on.book.select({ sheet: "Data", row: 0, column: 0 }))).toMatch(/hidden/);
  });
});

describe("What is typed into Excel", () => {
  it.each(["2 in", "1-2", "007", "-x", "TRUE", "May 5", "50%", "@home", "+1", "'quoted"])(
    "keeps %s as text",
    (text) => {
      expect(asTyped(text)).toBe(`'${text}`);
    },
  );

  it.each(["gpm", "Water flow", "=A1", "maybe", "R-410A"])("leaves %s as it is", (text) => {
    expect(asTyped(text)).toBe(text);
  });
});
