/** A call's result as elements: one value, a list, the first rows of a table, or the full error text. */
import {
  type CellFunction,
  readableCells,
  readableNumber,
  resultUnit,
  type ShownBasis,
  type System,
} from "../../../core";
import { isCellFault, type CellValue } from "../../workbook/port";
import { isMatrix, isOutcomeFault, type CellOutcome } from "../../workbook/values";
import { h } from "../elements";
import { counted } from "../model/summary";

/** A value as the panel prints it: four significant digits; the title has all digits. */
export const valueText = (value: string | number | boolean): string =>
  typeof value === "number" ? readableNumber(value) : typeof value === "boolean" ? String(value).toUpperCase() : value;

/** A value with its unit, on one line if possible. */
export function valueWithUnit(value: string | number | boolean, unit: string): HTMLElement {
  const text = valueText(value);
  const full = typeof value === "number" && String(value) !== text ? String(value) : undefined;
  return h(
    "span",
    { class: "value", title: full },
    text,
    unit === "" ? undefined : h("span", { class: "unit" }, ` ${unit}`),
  );
}

/** An error with its whole text. */
export const faultText = (code: string, message: string | undefined): HTMLElement =>
  h("p", { class: "fault" }, h("strong", {}, code), message === undefined || message === "" ? "" : ` ${message}`);

const MOST_ROWS = 14;

const cellText = (cell: CellValue): string =>
  isCellFault(cell) ? `${cell.code} ${cell.message ?? ""}`.trim() : valueText(cell ?? "");

const cell = (tag: "td" | "th", value: CellValue, scope?: string): HTMLElement =>
  h(tag, { scope, class: typeof value === "number" ? "number" : undefined }, cellText(value));

const moreRows = (count: number): HTMLElement | undefined =>
  count <= 0 ? undefined : h("p", { class: "quiet" }, `${counted(count, "more row")} in the sheet.`);

const tableOf = (definition: CellFunction, matrix: readonly (readonly CellValue[])[]): HTMLElement => {
  const { type, description } = definition.returns;
  const headed = type === "table" || type === "grid";
  const [head = [], ...below] = headed ? matrix : [[], ...matrix];
  const shown = below.slice(0, MOST_ROWS);
  const heads = headed
    ? h(
        "thead",
        {},
        h(
          "tr",
          {},
          head.map((each) => cell("th", each, "col")),
        ),
      )
    : undefined;
  const rowHead = type === "list";
  const lines = shown.map((row) =>
    h(
      "tr",
      {},
      row.map((each, place) => (rowHead && place === 0 ? cell("th", each, "row") : cell("td", each))),
    ),
  );
  return h(
    "div",
    {},
    h(
      "div",
      { class: "wide", role: "group", "aria-label": `Result: ${description}` },
      h("table", { class: rowHead ? "list" : "grid" }, heads, h("tbody", {}, lines)),
    ),
    moreRows(below.length - shown.length),
  );
};

/** The whole result. @param basis what its pressures count from, where the call says that */
export function resultOf(
  definition: CellFunction,
  outcome: CellOutcome,
  system: System,
  basis: ShownBasis = "gauge",
): HTMLElement {
  if (isOutcomeFault(outcome)) return faultText(outcome.code, outcome.message);
  const { value } = outcome;
  const { returns } = definition;
  if (isMatrix(value)) return tableOf(definition, readableCells(returns, value, system, basis));
  if (isCellFault(value)) return faultText(value.code, value.message);
  const unit = returns.type === "quantity" ? resultUnit(returns, value, system, basis) : "";
  return h("p", { class: "result" }, valueWithUnit(value ?? "", unit));
}

/** The result in one line, for a card; of a table only its size. */
export function resultLine(definition: CellFunction, outcome: CellOutcome, system: System): HTMLElement {
  if (isOutcomeFault(outcome) || !isMatrix(outcome.value)) return resultOf(definition, outcome, system);
  const { value: matrix } = outcome;
  const size = `${counted(matrix.length, "row")} × ${counted(matrix[0]?.length ?? 0, "column")}`;
  return h("p", { class: "result" }, `a table of ${size}`);
}
