/** Formulas on a help page: long array constants are shortened or shown below as ranges; the whole can be copied. */
import { type CellFunction, formulaOf, placedArgs, type CellInput, type CellMatrix } from "../../core";
import { inputGrid } from "./grid";
import { escaped, collapsed, html, type Html } from "./html";

/** The longest formula that is shown in full. */
const LONGEST = 160;

/** The most rows that distinguish a formula from the others in its column. */
const MOST_OWN = 6;

const LEFT_OUT = "…";
const WHOLE = "The whole formula, to copy";

/** Lines may break after the function's bracket, a comma or a semicolon. */
const breaking = (formula: string): string =>
  formula
    .split(/(?<=[,;]|^=[\w.]+\()/)
    .map(escaped)
    .join("<wbr>");

const isMatrix = (value: CellInput | undefined): value is CellMatrix => Array.isArray(value);

/** Rows of a matrix as texts. */
const rowTexts = (value: CellInput | undefined): readonly string[] =>
  isMatrix(value) ? value.map((row) => JSON.stringify(row)) : [];

/** First and last row and, if they are few, those between that other formulas of the column lack. */
const cutMatrix = (value: CellInput, place: number, others: readonly (readonly CellInput[])[]): CellInput => {
  if (!isMatrix(value) || value.length < 3) return value;
  const texts = rowTexts(value);
  const beside = others.map((raw) => rowTexts(raw[place]));
  const own = texts.map((text) => beside.some((rows) => !rows.includes(text)));
  const few = own.filter(Boolean).length <= MOST_OWN;
  const kept = texts.map((_, row) => row === 0 || row === texts.length - 1 || (few && own[row] === true));
  return value.flatMap((row, at) => (kept[at] === true ? [row] : kept[at - 1] === true ? [[LEFT_OUT]] : []));
};

const formulaPre = (formula: string): string => `<pre tabindex="0"><code>${breaking(formula)}</code></pre>`;

/** A formula in a cell of a table. @param others those of the whole column */
export const formulaCell = (
  definition: CellFunction,
  raw: readonly CellInput[],
  others: readonly (readonly CellInput[])[],
): Html => {
  const whole = formulaOf(definition, raw);
  if (whole.length <= LONGEST) return html(`<code class="formula">${breaking(whole)}</code>`);
  const cut = raw.map((value, place) => cutMatrix(value, place, others));
  const brief = formulaOf(definition, cut).replaceAll(`"${LEFT_OUT}"`, LEFT_OUT);
  return html(collapsed(`<code class="formula">${breaking(brief)}</code>`, formulaPre(whole)));
};

/** A formula with the ranges that it refers to below it. */
export const formulaBlock = (definition: CellFunction, raw: readonly CellInput[]): string => {
  const whole = formulaOf(definition, raw);
  if (whole.length <= LONGEST) return formulaPre(whole);
  const places = placedArgs(definition);
  const nameOf = (place: number): string => places[place]?.[0] ?? "";
  const named = formulaOf(
    definition,
    raw.map((value, place) => (isMatrix(value) ? `${LEFT_OUT}${nameOf(place)}` : value)),
  ).replace(new RegExp(`"${LEFT_OUT}(\\w+)"`, "g"), "$1");
  const ranges = places.flatMap(([name, { shape }], place) => {
    const value = raw[place];
    return isMatrix(value) ? [inputGrid(name, shape, value)] : [];
  });
  return [formulaPre(named), ...ranges, collapsed(WHOLE, formulaPre(whole))].join("\n");
};
