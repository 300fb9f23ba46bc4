/** What Excel makes of typed content, and the limits that it holds names, formulas and prompts to. */
import { describe, expect, it } from "vitest";
import { cellAt, excelHost, sheetNamed, WEB } from "./index";
import { codeOf, loaded, run } from "./running";

const typed = async (content: string): Promise<unknown[]> => {
  const excel = excelHost(WEB);
  await run(excel, async ({ workbook, sync }) => {
    workbook.worksheets.getItem("Sheet1").getRange("A1").formulas = [[content]];
    await sync();
  });
  const range = await loaded(excel, "Sheet1!A1", "values", "numberFormat");
  return [range.values[0]?.[0], range.numberFormat[0]?.[0]];
};

describe("Typed text", () => {
  // Day 1 is 1 January 1900; 2026-01-02 is day 46,024.
  it.each([
    ["1-2", [46_024, "d-mmm"]],
    ["1/2", [46_024, "d-mmm"]],
    ["1/2/2026", [46_024, "m/d/yyyy"]],
    ["2026-01-02", [46_024, "m/d/yyyy"]],
    ["Jan 2", [46_024, "d-mmm"]],
    ["2 jan", [46_024, "d-mmm"]],
    ["1 1/2", [1.5, "# ?/?"]],
    ["0 1/4", [0.25, "# ?/?"]],
    ["5%", [0.05, "0%"]],
    ["1,234.5", [1234.5, "General"]],
    ["007", [7, "General"]],
    ["1e3", [1000, "0.00E+00"]],
    ["(5)", [-5, "General"]],
    ["$5", [5, "$#,##0"]],
    ["12:00", [0.5, "h:mm"]],
    ["TRUE", [true, "General"]],
    ["13-32", ["13-32", "General"]],
    ["2 in", ["2 in", "General"]],
    ["'1-2", ["1-2", "General"]],
    ["'=A1", ["=A1", "General"]],
  ])("%s is taken for %j", async (content, expected) => {
    expect(await typed(content)).toEqual(expected);
  });

  it("stays text in a cell that is formatted as text", async () => {
    const excel = excelHost(WEB);
    await run(excel, async ({ workbook, sync }) => {
      const range = workbook.worksheets.getItem("Sheet1").getRange("A1");
      range.numberFormat = [["@"]];
      range.values = [["1-2"]];
      await sync();
    });
    expect(cellAt(sheetNamed(excel.host.book, "Sheet1"), "A1")?.value).toBe("1-2");
  });
});

type Act = (sheet: Excel.Worksheet, workbook: Excel.Workbook) => unknown;
const tried = (act: Act): Promise<string | undefined> =>
  codeOf(
    run(excelHost(WEB, ["Sheet1", "Data"]), async ({ workbook, sync }) => {
      act(workbook.worksheets.getItem("Sheet1"), workbook);
      await sync();
    }),
  );

const name = (length: number): string => "n".repeat(length);
const prompt =
  (message: string, title = ""): Act =>
  (sheet) =>
    (sheet.getRange("A1").dataValidation.prompt = { message, title, showPrompt: true });
const alert =
  (message: string): Act =>
  (sheet) =>
    (sheet.getRange("A1").dataValidation.errorAlert = { message, title: "", showAlert: true, style: "Stop" });
const list =
  (source: string): Act =>
  (sheet) =>
    (sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source } });

describe("A limit of Excel's", () => {
  const cases: readonly (readonly [string, Act, Act, string])[] = [
    [
      "31 characters of a sheet's name",
      (sheet) => (sheet.name = name(31)),
      (sheet) => (sheet.name = name(32)),
      "InvalidArgument",
    ],
    ["signs in a sheet's name", (sheet) => (sheet.name = "a (b)"), (sheet) => (sheet.name = "a/b"), "InvalidArgument"],
    ["one sheet of a name", (sheet) => (sheet.name = "Data 2"), (sheet) => (sheet.name = "DATA"), "ItemAlreadyExists"],
    [
      "names that are no addresses",
      (sheet, book) => book.names.add("flow_1", sheet.getRange("A1")),
      (sheet, book) => book.names.add("AB12", sheet.getRange("A1")),
      "InvalidArgument",
    ],
    [
      "255 characters of a name",
      (sheet, book) => book.names.add(name(255), sheet.getRange("A1")),
      (sheet, book) => book.names.add(name(256), sheet.getRange("A1")),
      "InvalidArgument",
    ],
    [
      "8,192 characters of a formula",
      (sheet) => (sheet.getRange("A1").formulas = [[`="${name(200)}"`]]),
      (sheet) => (sheet.getRange("A1").formulas = [[`=${"1+".repeat(4_200)}1`]]),
      "FormulaLengthExceedsLimit",
    ],
    [
      "32,767 characters of a text",
      (sheet) => (sheet.getRange("A1").values = [[name(32_767)]]),
      (sheet) => (sheet.getRange("A1").values = [[name(32_768)]]),
      "InvalidArgument",
    ],
    ["255 characters of a prompt", prompt(name(255)), prompt(name(256)), "InvalidArgument"],
    ["32 characters of a prompt's title", prompt("x", name(32)), prompt("x", name(33)), "InvalidArgument"],
    ["225 characters of an alert", alert(name(225)), alert(name(226)), "InvalidArgument"],
    ["255 characters of a typed list", list(name(255)), list(name(256)), "InvalidArgument"],
    [
      "5,000,000 cells of a read",
      (sheet) => sheet.getRange("A1:A10").load("values"),
      (sheet) => sheet.getRange("A1:E1048576").load("values"),
      "RangeExceedsLimit",
    ],
    [
      "a matrix of the range's size",
      (sheet) => (sheet.getRange("A1:B1").values = [[1, 2]]),
      (sheet) => (sheet.getRange("A1:B1").values = [[1]]),
      "InvalidArgument",
    ],
  ];
  it.each(cases)("is %s", async (_, within, beyond, code) => {
    expect(await tried(within)).toBeUndefined();
    expect(await tried(beyond)).toBe(code);
  });
});
