/** Equations, data, cautions and sources on a help page. */
import { type CellFunction, cite, KINDS, showNumber } from "../../core";
import { type EquationSymbol, type SourceEntry, referenceOf } from "../../core/help";
import type { HelpContent, Printed } from "./gather";
import { code, escaped, html, list, table } from "./html";
import { mathmlFor, symbolTex } from "./tex";
import temml from "temml";

const symbolMath = (name: string): string => temml.renderToString(symbolTex(name), { throwOnError: true });

const baseUnit = ({ kind }: EquationSymbol): string => {
  const { base } = KINDS[kind];
  return base.replace(/\^2/g, "²").replace(/\^3/g, "³");
};

/** The meaning of each symbol with its SI unit. */
const symbolList = ({ symbols, constants }: Printed): string => {
  const items = Object.entries(symbols).map(([key, symbol]) => {
    const unit = baseUnit(symbol);
    return `<li>${symbolMath(key)} ${escaped(symbol.description)}${unit === "" ? "" : `, ${escaped(unit)}`}</li>`;
  });
  const fixed = Object.entries(constants ?? {}).map(
    ([key, value]) => `<li>${symbolMath(key)} constant, ${escaped(showNumber(value))}</li>`,
  );
  return `<ul class="symbols">\n${[...items, ...fixed].join("\n")}\n</ul>`;
};

/** The longest form that fits on paper, which can't scroll; a longer one is printed as computed only. */
const MOST_ON_PAPER = 90;
/** A longer one takes both columns. */
const MOST_IN_COLUMN = 56;

const equationCard = (printed: Printed): string => {
  const { name, form, validity, source } = printed;
  const range = validity === undefined ? "" : ` Holds for: ${escaped(validity)}.`;
  return `<article class="equation${form.length > MOST_IN_COLUMN ? " wide" : ""}">
<h3>${escaped(name)}</h3>
<div class="math${form.length > MOST_ON_PAPER ? " long" : ""}" tabindex="0" role="group" aria-label="${escaped(name)}">${mathmlFor(form)}</div>
<p class="plain">As computed, in strict SI units: <code>${escaped(form)}</code></p>
<p>Source: ${escaped(cite(source))}.${range}</p>
${symbolList(printed)}
</article>`;
};

export const equationCards = ({ equations }: HelpContent): string => equations.map(equationCard).join("\n");

/** Tables and properties of substances that the calculation reads. */
export const dataList = ({ lookups, properties }: HelpContent): string =>
  list([
    ...lookups.map(({ table: name, source }) => `${name} (${cite(source)})`),
    ...properties.map(({ property, substance, uncertainty, source }) => {
      const doubt = uncertainty === undefined ? "" : `, ${uncertainty}`;
      return `${property} of ${substance}${doubt} (${cite(source)})`;
    }),
  ]);

/** Validity: the equations' ranges and the definition's own details. */
export const rangeList = (definition: CellFunction, { equations }: HelpContent): string =>
  list([
    ...(definition.details ?? []),
    ...equations.flatMap(({ name, validity }) => (validity === undefined ? [] : [`${name}: ${validity}.`])),
  ]);

export const cautionTable = ({ cautions }: CellFunction): string =>
  cautions.length === 0
    ? ""
    : table(
        "The panel and NOTE.CAUTIONS show these notes when a call raises them",
        ["Note", "Severity", "When and why", "Source"],
        cautions.map(({ rule }) => [code(rule.code), rule.severity, rule.description, cite(rule.source)]),
      );

const SEEN: Readonly<Record<SourceEntry["seen"], string>> = {
  opened: "The source itself was read.",
  copied: "Read as quoted by the text that is named here.",
  memory: "Cited from memory; the source was not opened.",
  rule: "",
};

export const sourceList = ({ sources }: HelpContent): string => {
  const references = [...new Map(sources.map((source) => [referenceOf(source).short, referenceOf(source)])).values()];
  return list(
    references.map(({ short, full, seen }) =>
      html(`<strong>${escaped(short)}</strong>: ${escaped(full)} ${SEEN[seen]}`),
    ),
  );
};
