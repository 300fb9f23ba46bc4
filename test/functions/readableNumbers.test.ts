/** Numbers in what people read: limits, defaults, worked examples, help pages. None is longer than its method carries. */
import { expect, test } from "vitest";
import {
  basisOf,
  CATALOGUE,
  defaultText,
  exampleArgs,
  explain,
  labelOf,
  limitsText,
  rawByPlace,
  readableCell,
  readableCells,
  readableNumber,
  resultUnit,
  workingLines,
  type CellFunction,
  type Explanation,
} from "../../core";
import { compile } from "../../core/kernel/call/evaluate";
import type { ArgData } from "../../core/kernel/define/argument";

/** Seven digits without a comma, more than four significant digits behind a point. */
const TOO_LONG = /(?<![\w.,#])\d{7,}(?!\w)|(?<![\d.])[1-9]\d*\.\d{4,}|(?<![\d.,])\d{2,}\.\d{3,}/;
/** A point that ends a number; a sentence may end with one. */
const SENTENCE = 40;
const OPEN_POINT = /(?<![\w.])\d+\.(?=[\s,;)]|$)/;

test.each([
  [48.8889, "48.89"],
  [1e9, "1,000,000,000"],
  [115_591.3, "115,591"],
  [1452.096, "1452"],
  [6, "6"],
  [0.0833333, "0.08333"],
  [-12_345.6, "-12,346"],
  [0, "0"],
  [1.5e-7, "1.5e-7"],
])("%d reads %s", (value, text) => {
  expect(readableNumber(value)).toBe(text);
});

const entriesOf = (args: Readonly<Record<string, ArgData>>): readonly (readonly [string, ArgData])[] =>
  Object.entries(args).flatMap(([name, arg]) => {
    const { shape } = arg;
    const inner = shape.type === "block" ? shape.entries : shape.type === "rows" ? shape.columns : {};
    return [[name, arg] as const, ...entriesOf(inner)];
  });

const faulty = (place: string, texts: readonly string[]): readonly string[] =>
  texts
    .filter((text) => TOO_LONG.test(text) || (text.length < SENTENCE && OPEN_POINT.test(text)))
    .map((text) => `${place}: ${text}`);

test("limits and defaults in both systems of units are short", () => {
  const found = CATALOGUE.flatMap(({ id, args }) =>
    entriesOf(args).flatMap(([name, arg]) =>
      (["US", "SI"] as const).flatMap((system) =>
        faulty(`${id}, ${labelOf(name)}`, [limitsText(arg.shape, system), defaultText(arg, system)]),
      ),
    ),
  );
  expect(found).toEqual([]);
});

const withUnit = (value: unknown, unit: string): string =>
  `${typeof value === "number" ? readableNumber(value) : String(value)} ${unit}`.trim();

/** What Explain and the help page print of a function's example; the numbers in an equation stay exact. */
function printedOf({ definition, args, steps, system, out }: Explanation): readonly string[] {
  const lines = workingLines(steps, system);
  const basis = basisOf(args);
  const cells = Array.isArray(out)
    ? (readableCells(definition.returns, out as never, system, basis) as never as never[][]).flat()
    : [];
  return [
    ...args.map(({ label, value, unit }) => `${label} ${withUnit(value, unit)}`),
    // A text is quoted from a table.
    ...lines.flatMap(({ value, unit }) => (typeof value === "number" ? [withUnit(value, unit)] : [])),
    ...lines.filter(({ form }) => form === undefined).map(({ numbers }) => numbers.replace(/residual \S+$/, "")),
    ...cells.map(readableCell),
    ...(typeof out === "number" && definition.returns.type === "quantity"
      ? [withUnit(out, resultUnit(definition.returns, out, system, basis))]
      : []),
  ];
}

const exampleOf = (definition: CellFunction): Explanation | undefined => {
  const args = exampleArgs(definition);
  return args && explain(compile(definition), rawByPlace(definition, args), CATALOGUE);
};

test("every worked example prints short numbers", () => {
  const found = CATALOGUE.flatMap((definition) => {
    const explanation = exampleOf(definition);
    if (explanation === undefined) return [];
    const sentences = explanation.cautions.map(({ text }) => text).filter((text) => TOO_LONG.test(text));
    return [...faulty(definition.id, printedOf(explanation)), ...sentences];
  });
  expect(found).toEqual([]);
}, 120_000);

const explained = (id: string, ...raw: readonly (string | number)[]): Explanation => {
  const definition = CATALOGUE.find((one) => one.id === id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  return explain(compile(definition), raw, CATALOGUE);
};

test("pressures say what they count from: readings absolute, results as asked for", () => {
  const { args } = explained("REFRIG.TEMPERATURE", "R-410A", 318, "dew");
  expect(args.find(({ label }) => label.startsWith("pressure"))?.unit).toBe("psia");
  const asked = explained("REFRIG.PRESSURE", "R-410A", 100, "dew");
  const units = workingLines(asked.steps, "US").map(({ unit }) => unit);
  expect(units).toEqual(expect.arrayContaining(["psia", "psig"]));
  const { returns } = asked.definition;
  if (returns.type !== "quantity") throw new Error("a pressure is one value");
  expect(resultUnit(returns, 317, "US", basisOf(asked.args))).toBe("psig");
  const absolute = explained("REFRIG.PRESSURE", "R-410A", 100, "dew", "absolute");
  expect(resultUnit(returns, 332, "US", basisOf(absolute.args))).toBe("psia");
  expect(resultUnit(returns, 2290, "SI", "absolute")).toBe("kPa absolute");
});

test("the heads of a table of pressures say psig or psia", () => {
  const { definition, out, args } = explained("REFRIG.CHART", "R-410A", 40, 60, 10);
  const [heads] = readableCells(definition.returns, out as never, "US", basisOf(args)) as never as string[][];
  expect(heads).toEqual(expect.arrayContaining(["dew pressure (psig)", "bubble pressure (psig)"]));
});

test("a COP says its EER, a cooling its tons and much heat its MMBtu in US units alone", () => {
  const cop = { type: "quantity", kind: "COP", description: "COP of the compressor" } as const;
  expect(resultUnit(cop as never, 3, "US", "gauge")).toBe("(EER 10.24)");
  expect(resultUnit(cop as never, 3, "SI", "gauge")).toBe("");
  const cooling = { type: "quantity", kind: "heat rate", description: "net cooling" } as const;
  expect(resultUnit(cooling as never, 90_000, "US", "gauge")).toBe("BTU/h (7.5 tons)");
  const heat = { type: "quantity", kind: "heat", description: "heat taken" } as const;
  expect(resultUnit(heat as never, 168e6, "US", "gauge")).toBe("BTU (168 MMBtu)");
});
