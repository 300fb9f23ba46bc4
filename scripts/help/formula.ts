/** Formulas on a help page: long array constants are cut or stand beneath as ranges, the whole is there to be copied. */
import { type CellFunction, formulaOf, placedArgs, type Raw, type RawMatrix } from "../../core";
import { inputGrid } from "./grid";
import { escaped, folded, html, type Html } from "./html";

/** The longest formula that stands as it is. */
const LONGEST = 160;

/** The most rows that tell a formula from the others beside it. */
const MOST_OWN = 6;

const LEFT_OUT = "…";
const WHOLE = "The whole formula, to copy";

/** Lines may break behind the function's bracket, a comma or a semicolon. */
const breaking = (formula: string): string =>
  formula
    .split(/(?<=[,;]|^=[\w.]+\()/)
    .map(escaped)
    .join("<wbr>");

const isMatrix = (value: Raw | undefined): value is RawMatrix => Array.isArray(value);

/** Rows of a matrix as texts. */
const rowTexts = (value: Raw | undefined): readonly string[] =>
  isMatrix(value) ? value.map((row) => JSON.stringify(row)) : [];

/** First and last row, and those between that don't stand in all the formulas beside it, where they are few. */
const cutMatrix = (value: Raw, place: number, others: readonly (readonly Raw[])[]): Raw => {
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
  raw: readonly Raw[],
  others: readonly (readonly Raw[])[],
): Html => {
  const whole = formulaOf(definition, raw);
  if (whole.length <= LONGEST) return html(`<code class="formula">${breaking(whole)}</code>`);
  const cut = raw.map((value, place) => cutMatrix(value, place, others));
  const brief = formulaOf(definition, cut).replaceAll(`"${LEFT_OUT}"`, LEFT_OUT);
  return html(folded(`<code class="formula">${breaking(brief)}</code>`, formulaPre(whole)));
};

/** A formula with the ranges that it refers to beneath. */
export const formulaBlock = (definition: CellFunction, raw: readonly Raw[]): string => {
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
  return [formulaPre(named), ...ranges, folded(WHOLE, formulaPre(whole))].join("\n");
};
