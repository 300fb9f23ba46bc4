/**
 * The limits that Excel holds content to. Numbers: "Excel specifications and limits" (support.microsoft.com), and for
 * ranges "Resource limits and performance optimization for Office Add-ins".
 */
import { HostError } from "../client/protocol";
import { boxOf, findSheet, MOST_COLUMNS, MOST_ROWS, type BookModel, type Box } from "./workbook";

export const LONGEST_SHEET_NAME = 31;
export const LONGEST_NAME = 255;
export const LONGEST_FORMULA = 8_192;
export const LONGEST_TEXT = 32_767;
export const LONGEST_PROMPT = 255;
export const LONGEST_ALERT = 225;
export const LONGEST_TITLE = 32;
export const LONGEST_LIST = 255;
export const MOST_CELLS_READ = 5_000_000;

export const refuse = (code: string): never => {
  throw new HostError(code);
};

export function checkSheetName(book: BookModel, name: unknown, own?: object): string {
  const legal =
    typeof name === "string" &&
    name.length > 0 &&
    name.length <= LONGEST_SHEET_NAME &&
    !/[\\/?*[\]:]/.test(name) &&
    !/^'|'$/.test(name) &&
    name.toLowerCase() !== "history";
  if (!legal) return refuse("InvalidArgument");
  const other = findSheet(book, name);
  if (other !== undefined && other !== own) return refuse("ItemAlreadyExists");
  return name;
}

export function checkName(name: unknown): string {
  const legal =
    typeof name === "string" &&
    name.length <= LONGEST_NAME &&
    /^[\p{L}_\\][\p{L}\d_.\\?]*$/u.test(name) &&
    boxOf(name) === undefined &&
    !/^(?:r|c|r\d*c\d*)$/i.test(name);
  return legal ? name : refuse("InvalidArgument");
}

/** Parentheses and quotation marks that don't pair are all that is checked of a formula's sense. */
function pairs(formula: string): boolean {
  let depth = 0;
  let quote = "";
  for (const one of formula) {
    if (quote !== "") quote = one === quote ? "" : quote;
    else if (one === '"' || one === "'") quote = one;
    else if (one === "(") depth += 1;
    else if (one === ")") depth -= 1;
    if (depth < 0) return false;
  }
  return depth === 0 && quote === "";
}

export function checkContent(content: unknown): void {
  if (typeof content !== "string") return;
  if (content.startsWith("=")) {
    if (content.length > LONGEST_FORMULA) refuse("FormulaLengthExceedsLimit");
    if (!pairs(content)) refuse("InvalidArgument");
  } else if (content.length > LONGEST_TEXT) refuse("InvalidArgument");
  else if (content.startsWith("@")) refuse("InvalidArgument");
}

export function checkBox(box: Box): Box {
  const { row, column, rows, columns } = box;
  const inside =
    row >= 0 && column >= 0 && rows >= 1 && columns >= 1 && row + rows <= MOST_ROWS && column + columns <= MOST_COLUMNS;
  return inside ? box : refuse("InvalidArgument");
}

const lengthOf = (of: unknown, name: string): number => {
  const text = (of as Record<string, unknown> | null)?.[name];
  return typeof text === "string" ? text.length : 0;
};

/** Rules for what may be typed, and the texts that go with them. */
export function checkValidation(name: string, value: unknown): void {
  const title = lengthOf(value, "title") > LONGEST_TITLE;
  if (name === "prompt" && (title || lengthOf(value, "message") > LONGEST_PROMPT)) refuse("InvalidArgument");
  if (name === "errorAlert" && (title || lengthOf(value, "message") > LONGEST_ALERT)) refuse("InvalidArgument");
  const list = (value as { list?: unknown } | null)?.list;
  if (name === "rule" && lengthOf(list, "source") > LONGEST_LIST) refuse("InvalidArgument");
}
