/** Puts a starter sheet into the workbook. */
import type { SheetCell, SheetStyle, StarterSheet, Validation } from "../../sheets/sheet";
import { cellsText } from "../reader/reference";
import { freeName, placedCells } from "../starterCells";
import type { Placed } from "../starterCells";
import { asText, asTyped } from "./cells";
import { supports } from "./run";

/** Excel's own names for its built-in styles, the same in every language. */
const STYLES: Readonly<Record<SheetStyle, string>> = {
  Title: "SheetTitle",
  "Heading 2": "Heading2",
  "Heading 3": "Heading3",
  Input: "Input",
  Calculation: "Calculation",
  Output: "Output",
  "Check Cell": "CheckCell",
  Note: "Note",
  "Warning Text": "WarningText",
  "Explanatory Text": "ExplanatoryText",
};

/** Colour of the rule under a record's line. */
const RULE = "#bfbfbf";

/** Excel takes a list typed into a rule up to this length. */
const LONGEST_LIST = 255;

const typedCell = ({ content, text }: SheetCell): string | number | boolean =>
  text === true ? asText(String(content)) : asTyped(content);

/** Everything that cells hold, as one grid from A1 on. */
function grid(cells: readonly Placed[]): (string | number | boolean)[][] {
  const rows = Math.max(...cells.map(({ row }) => row)) + 1;
  const columns = Math.max(...cells.map(({ column }) => column)) + 1;
  const found = Array.from({ length: rows }, () => new Array<string | number | boolean>(columns).fill(""));
  for (const { row, column, cell } of cells) (found[row] ?? [])[column] = typedCell(cell);
  return found;
}

/** Excel's rule for what may be typed into a cell. */
export function ruleOf(validation: Validation, address: string): Excel.DataValidationRule {
  if ("list" in validation) {
    const source = validation.list.join(",");
    if (source.length > LONGEST_LIST || validation.list.some((word) => word.includes(","))) {
      throw new Error(
        `the list of ${address} can't be typed into a rule: at most 255 characters, no commas in its words`,
      );
    }
    return { list: { inCellDropDown: true, source } };
  }
  const { above, from, to } = validation;
  if (above !== undefined && to !== undefined) {
    return { custom: { formula: `=AND(ISNUMBER(${address}),${address}>${String(above)},${address}<=${String(to)})` } };
  }
  if (above !== undefined) return { decimal: { formula1: above, operator: "GreaterThan" } };
  if (from !== undefined && to !== undefined) return { decimal: { formula1: from, formula2: to, operator: "Between" } };
  if (from !== undefined) return { decimal: { formula1: from, operator: "GreaterThanOrEqualTo" } };
  if (to !== undefined) return { decimal: { formula1: to, operator: "LessThanOrEqualTo" } };
  return { custom: { formula: `=ISNUMBER(${address})` } };
}

function dress(worksheet: Excel.Worksheet, { row, column, cell }: Placed): void {
  const { style, format, wrap, validation, indent, entry } = cell;
  if ([style, format, wrap, validation, indent, entry].every((one) => one === undefined)) return;
  const range = worksheet.getRangeByIndexes(row, column, 1, 1);
  if (style !== undefined) range.style = STYLES[style];
  if (format !== undefined) range.numberFormat = [[format]];
  if (wrap !== undefined) range.format.wrapText = wrap;
  if (indent === true && supports("1.9")) range.format.indentLevel = 1;
  if (entry === true) {
    range.format.verticalAlignment = "Top";
    range.format.borders.getItem("EdgeBottom").color = RULE;
  }
  if (validation === undefined || !supports("1.8")) return;
  range.dataValidation.rule = ruleOf(validation, cellsText({ row, column, rows: 1, columns: 1 }));
  range.dataValidation.prompt = { message: validation.prompt, showPrompt: true, title: "" };
  range.dataValidation.errorAlert = { message: validation.prompt, showAlert: true, style: "Stop", title: "" };
}

/** Points of a column that shows so many characters of the usual font: 7 pixels each and 5 beside, at 96 to the inch. */
const columnPoints = (characters: number): number => (characters * 7 + 5) * 0.75;

function layOut(worksheet: Excel.Worksheet, sheet: StarterSheet): void {
  sheet.widths.forEach((width, column) => {
    worksheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = columnPoints(width);
  });
  if (sheet.frozenRows > 0 && supports("1.7")) worksheet.freezePanes.freezeRows(sheet.frozenRows);
  if (!supports("1.9")) return;
  const page = worksheet.pageLayout;
  page.setPrintArea(sheet.print.area);
  page.setPrintTitleRows(`$${sheet.print.titleRows.replace(":", ":$")}`);
  page.orientation = sheet.print.landscape ? "Landscape" : "Portrait";
  page.zoom = { horizontalFitToPages: 1 };
  page.headersFooters.defaultForAllPages.centerFooter = sheet.print.footer;
}

/** Adds the sheet and shows it; answers its name. A sheet that can't be finished is taken away again. */
export async function insertStarter(context: Excel.RequestContext, sheet: StarterSheet): Promise<string> {
  const cells = placedCells(sheet);
  const worksheets = context.workbook.worksheets;
  worksheets.load("items/name");
  const names = Object.keys(sheet.names).map((name) => context.workbook.names.getItemOrNullObject(name));
  for (const name of names) name.load("name");
  await context.sync();
  const title = freeName(
    sheet.name,
    worksheets.items.map((one) => one.name),
  );
  const worksheet = worksheets.add(title);
  try {
    Object.entries(sheet.names).forEach(([name, address], at) => {
      const scope = names[at]?.isNullObject === false ? worksheet.names : context.workbook.names;
      scope.add(name, worksheet.getRange(address));
    });
    const contents = grid(cells);
    worksheet.getRangeByIndexes(0, 0, contents.length, contents[0]?.length ?? 1).formulas = contents;
    for (const cell of cells) dress(worksheet, cell);
    layOut(worksheet, sheet);
    worksheet.activate();
    await context.sync();
  } catch (error) {
    worksheet.delete();
    await context.sync().catch(() => undefined);
    throw error;
  }
  return title;
}

export { freeName, placedCells } from "../starterCells";
