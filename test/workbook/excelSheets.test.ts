/** Starter sheets through the Excel adapter: what is set, what an older Excel lacks, what is left where Excel breaks off. */
import { describe, expect, it } from "vitest";
import { validationRule } from "../../src/workbook/excel/dress";
import { STATE_LOOKS, STATE_WORDS, type CheckState } from "../../src/sheets/states";
import { cellAt, formatAt, PROFILES, WEB, WINDOWS_10, type Profile } from "../excelHost";
import type { SheetCell } from "../../src/sheets/sheet";
import { SMALL } from "./contractSheets";
import { onExcel, RAW, sentenceOf } from "./onExcel";

const BROKEN = { ...SMALL, cells: { ...SMALL.cells, B9: { content: "=BAD(" } } };

describe.each(PROFILES)("A starter sheet in Excel, $name", (profile) => {
  const on = onExcel(profile, "Sheet1", "Data");

  it("has built-in styles, formats, rules, widths, frozen rows and print set-up", async () => {
    await on.book.insert(SMALL);
    const sheet = on.sheet("Small sheet");
    const formats = ([address, name]: readonly [string, string]): unknown => formatAt(sheet, address, name);
    const asked = [
      ["A1", "style"],
      ["B2", "style"],
      ["B2", "numberFormat"],
      ["B2", "rule"],
      ["B2", "prompt"],
      ["B3", "rule"],
      ["B5", "style"],
      ["A2", "wrapText"],
      ["A1", "columnWidth"],
    ] as const;
    expect(asked.map(formats)).toEqual([
      "SheetTitle",
      "Input",
      "0.0",
      { custom: { formula: "=AND(ISNUMBER(B2),B2>0,B2<=200)" } },
      { message: "Water flow in gpm, above 0 to 200", showPrompt: true, title: "" },
      { list: { inCellDropDown: true, source: "1 1/2 in,2 in" } },
      "Calculation",
      true,
      108.75,
    ]);
    expect(Object.fromEntries(sheet.settings)).toEqual({
      frozenRows: 1,
      printArea: "A1:F20",
      printTitleRows: "$1:$2",
      orientation: "Portrait",
      zoom: { horizontalFitToPages: 1 },
      centerFooter: "Page &P of &N",
      leftMargin: 36,
      rightMargin: 36,
      topMargin: 36,
      bottomMargin: 50.4,
    });
    expect(on.host.book.active.sheet.name).toBe("Small sheet");
  });

  it("has its footer in three parts, and page ends where a page would split a group", async () => {
    const group = (first: number, last: number): Record<string, SheetCell> => ({
      [`A${String(first)}`]: { content: `Group ${String(first)}`, style: "Heading 3" },
      ...Object.fromEntries(
        Array.from({ length: last - first }, (_, at) => [`A${String(first + 1 + at)}`, { content: "Water flow" }]),
      ),
    });
    const print = { ...SMALL.print, area: "A1:C80", footer: "&A", footerLeft: "&F", footerRight: "&P" };
    await on.book.insert({
      ...SMALL,
      cells: { ...group(2, 29), ...group(30, 59), ...group(60, 80) },
      names: {},
      print,
    });
    expect(Object.fromEntries(on.sheet("Small sheet").settings)).toMatchObject({
      leftFooter: "&F",
      centerFooter: "&A",
      rightFooter: "&P",
      rowBreaks: [30, 60],
    });
  });

  it("shows each state of a check with a look of its own", async () => {
    await on.book.insert({
      ...SMALL,
      cells: { B2: { content: "=A1", style: "Check Cell" }, B3: { content: "=A2", style: "Check Cell" } },
    });
    const looks = on
      .sheet("Small sheet")
      .conditional.map(({ area, format }) => [area, format.get("formula"), format.get("fill.color")]);
    const area = { row: 1, column: 1, rows: 2, columns: 1 };
    expect(looks).toEqual(
      Object.entries(STATE_LOOKS).map(([state, { fill }]) => [
        area,
        `=OR(${STATE_WORDS[state as CheckState].map((word) => `B2="${word}"`).join(",")})`,
        fill,
      ]),
    );
  });

  it("freezes its first column too where it asks for that", async () => {
    await on.book.insert({ ...SMALL, frozenRows: 4, frozenColumns: 1 });
    expect(on.sheet("Small sheet").settings.get("frozenRows")).toBe(4);
    expect(on.sheet("Small sheet").settings.get("frozenColumns")).toBe(1);
  });

  it("folds rows where it asks for that", async () => {
    await on.book.insert({ ...SMALL, groups: ["A2:A9", "A3:A4"] });
    expect(on.sheet("Small sheet").settings.get("rowGroups")).toEqual(["2:9", "3:4"]);
  });

  it("takes a linked input from the workbook where the name exists, and its own value where not", async () => {
    const cells = {
      B2: { content: 75, style: "Input", format: "0", link: "ProjectFlow", validation: { above: 0, prompt: "gpm" } },
      D2: { content: "flow meter", style: "Explanatory Text" },
      B3: { content: 60, style: "Input", link: "ProjectRun" },
    } as const;
    await on.book.insert({
      ...SMALL,
      id: "project",
      name: "Project",
      names: { ProjectFlow: "B2" },
      cells: { B2: { content: 80 } },
    });
    await on.book.insert({ ...SMALL, names: {}, cells });
    const sheet = on.sheet("Small sheet");
    expect(cellAt(sheet, "B2")?.formula).toBe('=IF(LEN(ProjectFlow)=0,"",ProjectFlow)');
    expect(formatAt(sheet, "B2", "style")).toBe("Calculation");
    expect(cellAt(sheet, "D2")?.value).toBe("the workbook's ProjectFlow");
    expect(cellAt(sheet, "B3")?.value).toBe(60);
  });

  it("is taken away again where a formula is refused", async () => {
    await expect(on.book.insert(BROKEN)).rejects.toThrow("Excel refused a value, a formula or an address");
    expect(on.titles()).toEqual(["Sheet1", "Data"]);
  });

  it("says that the workbook's structure is protected", async () => {
    on.host.book.structureProtected = true;
    expect(await sentenceOf(on.book.insert(SMALL))).toMatch(/workbook.*protected/);
  });

  it("stays where only its outline is refused", async () => {
    on.host.fault = ({ label }) => (label.includes("Group") ? "GeneralException" : undefined);
    await on.book.insert({ ...SMALL, groups: ["A2:A9"] });
    expect(on.titles()).toContain("Small sheet");
    expect(on.sheet("Small sheet").settings.get("rowGroups")).toBeUndefined();
  });

  it("stays where only the page set-up is refused", async () => {
    on.host.fault = ({ label }) => (label.startsWith("set PageLayout") ? "GeneralException" : undefined);
    await on.book.insert(SMALL);
    expect(on.titles()).toContain("Small sheet");
  });

  it("has its charts, with cells, titles, looks and place", async () => {
    await on.book.insert(SMALL);
    const [chart, ...more] = on.sheet("Small sheet").charts;
    expect(more).toEqual([]);
    expect(Object.fromEntries(chart?.settings ?? [])).toMatchObject({
      chartType: "XYScatterLinesNoMarkers",
      name: "Flow twice",
      place: "E2:F9",
      "title.text": "Flow twice",
      "x.text": "flow (gpm)",
      "y.text": "twice the flow (gpm)",
      "legend.position": "Bottom",
    });
    expect(chart?.series.map((one) => Object.fromEntries(one))).toEqual([
      {
        name: "twice",
        x: "B2:B3",
        y: "B4:B5",
        "line.color": "#0b5c6e",
        "line.weight": 2,
        "line.lineStyle": "Continuous",
        markerStyle: "None",
      },
      {
        name: "again",
        x: "B2:B3",
        y: "B5:B6",
        "line.color": "#ad1f1a",
        "line.weight": 2,
        "line.lineStyle": "Dash",
        markerStyle: "None",
      },
    ]);
  });

  it("stays without a chart that Excel breaks off", async () => {
    on.host.fault = ({ label }) =>
      label.startsWith("set ChartAxisTitle") || label.includes("Title.Text") ? "GeneralException" : undefined;
    await on.book.insert(SMALL);
    expect(on.titles()).toContain("Small sheet");
    expect(on.sheet("Small sheet").charts).toEqual([]);
  });

  it("draws the rule under a record's line with a style", async () => {
    await on.book.insert({ ...SMALL, cells: { A1: { content: "line", entry: true } } });
    expect(formatAt(on.sheet("Small sheet"), "A1", "EdgeBottom.style")).toBe("Continuous");
  });
});

describe("A starter sheet in an Excel with fewer members", () => {
  const old: Profile = { ...WINDOWS_10, name: "Windows 1.8", api: "1.8" };
  const on = onExcel(old, "Sheet1");

  it("goes without print set-up", async () => {
    await on.book.insert(SMALL);
    const sheet = on.sheet("Small sheet");
    expect(Object.fromEntries(sheet.settings)).toEqual({ frozenRows: 1 });
    expect(cellAt(sheet, "B2")?.value).toBe(40);
  });
});

describe("A starter sheet that is too large for Excel on the web", () => {
  const on = onExcel({ ...WEB, payload: 2_000 }, "Sheet1");

  it("is refused with a sentence on its size", async () => {
    const sentence = await sentenceOf(on.book.insert(SMALL));
    expect(sentence).not.toMatch(RAW);
    expect(sentence).toMatch(/large|much/);
  });
});

describe("The rule of an input cell", () => {
  it("is Excel's for the limits that there are", () => {
    expect(validationRule({ from: 0, to: 1, prompt: "" }, "B2")).toEqual({
      decimal: { formula1: 0, formula2: 1, operator: "Between" },
    });
    expect(validationRule({ above: 0, prompt: "" }, "B2")).toEqual({
      decimal: { formula1: 0, operator: "GreaterThan" },
    });
    expect(validationRule({ from: 1, prompt: "" }, "B2")).toEqual({
      decimal: { formula1: 1, operator: "GreaterThanOrEqualTo" },
    });
    expect(validationRule({ to: 9, prompt: "" }, "B2")).toEqual({
      decimal: { formula1: 9, operator: "LessThanOrEqualTo" },
    });
    expect(() => validationRule({ list: ["a,b"], prompt: "" }, "B2")).toThrow(/B2.*no commas/);
  });
});
