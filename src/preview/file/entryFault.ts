import { cellsText } from "../../workbook/reader/reference";
import type { PlainValue, ValidationData } from "./bookData";

/** Whether an entry keeps its cell's rule: the rules that the starter sheets use, and those of files that name no other cell. */

type Holds = (value: PlainValue) => boolean;

const COMPARE: Readonly<Record<string, (value: number, first: number, second: number) => boolean>> = {
  between: (value, first, second) => value >= first && value <= second,
  notBetween: (value, first, second) => value < first || value > second,
  equal: (value, first) => value === first,
  notEqual: (value, first) => value !== first,
  greaterThan: (value, first) => value > first,
  greaterThanOrEqual: (value, first) => value >= first,
  lessThan: (value, first) => value < first,
  lessThanOrEqual: (value, first) => value <= first,
};

const TWO_LIMITS = ["between", "notBetween"];

const SIGNS: Readonly<Record<string, string>> = {
  ">": "greaterThan",
  ">=": "greaterThanOrEqual",
  "<": "lessThan",
  "<=": "lessThanOrEqual",
};

const compared = (operator: string, formulae: ValidationData["formulae"]): ((value: number) => boolean) | undefined => {
  const compare = COMPARE[operator];
  const [first = NaN, second = NaN] = formulae.map((text) => (text === "" ? NaN : Number(text)));
  const missing = Number.isNaN(first) || (TWO_LIMITS.includes(operator) && Number.isNaN(second));
  return compare === undefined || missing ? undefined : (value) => compare(value, first, second);
};

const TERM = /^(?:ISNUMBER\((\w+)\)|LEN\((\w+)\)>0|(\w+)(>=?|<=?)(-?[\d.]+(?:E[-+]?\d+)?))$/i;

/** A custom rule of terms that each test the cell itself. */
const customRule = (formula: string, address: string): Holds | undefined => {
  const bare = formula.replace(/^=/, "").replace(/\s|\$/g, "");
  const joined = /^AND\((.*)\)$/i.exec(bare)?.[1] ?? bare;
  const terms = joined.split(",").map((term): Holds | undefined => {
    const [, number, filled, cell, sign = "", limit = ""] = TERM.exec(term) ?? [];
    if ((number ?? filled ?? cell)?.toUpperCase() !== address) return undefined;
    if (number !== undefined) return (value) => typeof value === "number";
    if (filled !== undefined) return (value) => String(value).length > 0;
    const holds = compared(SIGNS[sign] ?? "", [limit]);
    return holds && ((value) => typeof value === "number" && holds(value));
  });
  const known = terms.flatMap((term) => term ?? []);
  return known.length === terms.length ? (value) => known.every((holds) => holds(value)) : undefined;
};

const ruleHolds = ({ type, operator = "between", formulae }: ValidationData, address: string): Holds | undefined => {
  const [first = ""] = formulae;
  if (type === "custom") return customRule(String(first), address);
  if (type === "list") {
    const words = listWords(formulae);
    return words && ((value) => words.some((word) => word.toLowerCase() === String(value).trim().toLowerCase()));
  }
  const holds = compared(operator, formulae);
  if (holds === undefined) return undefined;
  if (type === "textLength") return (value) => holds(String(value).length);
  return (value) => typeof value === "number" && (type !== "whole" || Number.isInteger(value)) && holds(value);
};

/** The words of a list that its rule holds itself. */
export function listWords(formulae: ValidationData["formulae"]): readonly string[] | undefined {
  const [source] = formulae;
  return typeof source === "string" && source.startsWith('"') ? source.slice(1, -1).split(",") : undefined;
}

/**
 * What is wrong with an entry; undefined where it keeps its rule, or where the rule can't be tested here.
 * @param place of the cell: a rule may name it
 */
export function entryFault(
  validation: ValidationData | undefined,
  value: PlainValue | null,
  { row, column }: { readonly row: number; readonly column: number },
): string | undefined {
  if (validation === undefined || validation.showErrorMessage !== true) return undefined;
  const blank = value === null || value === "";
  if (blank && validation.allowBlank === true) return undefined;
  const holds = ruleHolds(validation, cellsText({ row, column, rows: 1, columns: 1 }));
  if (holds === undefined || holds(value ?? "")) return undefined;
  return validation.error ?? validation.prompt ?? "another entry is expected";
}
