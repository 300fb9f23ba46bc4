/** Random argument lists of a function: its checks and examples, spoilt in a few places. */
import fc from "fast-check";
import { exampleArgs, labelOf, placedArgs, rawByPlace, type ArgData, type CellFunction } from "../../core";

export type Raw = readonly unknown[];

const ERRORS = ["#N/A", "#VALUE!", "#DIV/0!", "#NUM!", "#REF!", "#NAME?", "#NULL!", "#SPILL!", "#CALC!"];
const OF_EVERY_OBJECT = ["constructor", "toString", "valueOf", "hasOwnProperty", "__proto__", "prototype"];
const UNITS = [
  "ft",
  "m",
  "°F",
  "°C",
  "K",
  "psi",
  "kPa",
  "psia",
  "gpm",
  "BTU/h",
  "kW",
  "in",
  "lb",
  "%",
  "furlong",
  "h",
  "m²",
];
const ODD_TEXTS = [
  " ",
  "\u00a0",
  "\n",
  "-",
  "1e",
  "1/0",
  "1,200",
  "0x10",
  "=1+1",
  "'",
  '"',
  "1;2;;",
  "NaN",
  "Infinity",
  "TRUE",
  "😀",
  "2026-01-31",
  "zzz",
];

const number = fc.oneof(
  fc.constantFrom(0, 1, -1, 0.5, 1e-9, 100, 1e6, 1e9, 1e12, 1e15, 1e18, 1e19, -1e15, 1e308, -1e308, 5e-324),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
  fc.double({ min: -500, max: 5000, noNaN: true }),
  fc.integer({ min: -10, max: 400 }),
);

const text = fc.oneof(
  fc.constantFrom(...ERRORS, ...OF_EVERY_OBJECT, ...ODD_TEXTS),
  fc.tuple(number, fc.constantFrom("", " ", "  "), fc.constantFrom(...UNITS)).map((parts) => parts.join("")),
  fc.string({ maxLength: 20, unit: "grapheme" }),
  fc
    .integer({ min: 50, max: 4000 })
    .chain((size) => fc.constantFrom("1", "a ", "1 ", "3'", "-").map((one) => one.repeat(size))),
);

const cell = fc.oneof(number, text, fc.boolean(), fc.constantFrom(null, "", 0, undefined));

/** Ranges, and what is no range: of one dimension, ragged, empty, with holes. */
const matrix = fc.oneof(
  fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 5 }),
  fc.array(cell, { maxLength: 4 }),
  fc.array(fc.oneof(fc.array(cell, { maxLength: 3 }), fc.constantFrom(null, undefined)), {
    minLength: 1,
    maxLength: 4,
  }),
);

const hostile = fc.oneof(
  { weight: 4, arbitrary: cell },
  { weight: 1, arbitrary: matrix },
  { weight: 1, arbitrary: fc.constantFrom<unknown>({ address: "A1" }, undefined, () => 1, 10n) },
);

/** Lists that the definition itself gives. */
export function givenLists(definition: CellFunction): readonly Raw[] {
  const example = exampleArgs(definition);
  const all = [
    ...(example === undefined ? [] : [example]),
    ...definition.checks.map(({ inputs }) => inputs),
    ...definition.cautions.map(({ raisedBy }) => raisedBy),
  ];
  return all.length === 0 ? [[]] : all.map((inputs) => rawByPlace(definition, inputs));
}

const unitOf = ({ shape }: ArgData): fc.Arbitrary<string> =>
  shape.type === "quantity" ? fc.constantFrom("", ...UNITS) : fc.constant("");

/** A value near one that works. */
const nearby = (value: unknown): fc.Arbitrary<unknown> => {
  if (typeof value !== "number") return fc.constant(value);
  return fc.oneof(
    fc.double({ min: 0.5, max: 2, noNaN: true }).map((share) => value * share),
    fc.constantFrom(1e15, 1e9, 1e6, 1000, -1, 0).map((share) => (value === 0 ? share : value * share)),
  );
};

const likely = (arg: ArgData | undefined, value: unknown): fc.Arbitrary<unknown> => {
  if (arg === undefined) return fc.constant(value);
  const { shape } = arg;
  switch (shape.type) {
    case "choice":
      return fc.constantFrom<unknown>(...shape.words, ...Object.keys(shape.aliases ?? {}), null);
    case "either":
      return fc.oneof(fc.constantFrom<unknown>(...shape.choice.words), nearby(value), number);
    case "quantity":
      return fc.oneof(
        nearby(value),
        number,
        fc.tuple(number, unitOf(arg)).map(([size, unit]) => `${size} ${unit}`),
      );
    case "yes/no":
      return fc.constantFrom<unknown>(true, false, "yes", "no", 1, 0);
    default:
      return fc.constant(value);
  }
};

/** A copy with another value in one place. */
export const replaced = (values: Raw, place: number, value: unknown): Raw => {
  const copy = [...values];
  copy[place] = value;
  return copy;
};

/** Cells of a range: a label's or column's own likely value, or a hostile one, in one place. */
const spoiltRange = (arg: ArgData | undefined, range: readonly (readonly unknown[])[]): fc.Arbitrary<unknown> => {
  const shape = arg?.shape;
  const args = shape?.type === "block" ? shape.entries : shape?.type === "rows" ? shape.columns : {};
  const entries = Object.entries(args);
  const labels = entries.length === 0 ? [""] : entries.map(([key]) => labelOf(key));
  return fc.nat({ max: Math.max(0, range.length - 1) }).chain((at) => {
    const line = range[at] ?? [];
    return fc.nat({ max: Math.max(0, line.length - 1) }).chain((place) => {
      const inner = entries.find(([key]) => labelOf(key) === line[0])?.[1] ?? entries[place]?.[1];
      const value = fc.oneof(nearby(line[place]), likely(inner, line[place]), cell);
      const changed = value.map((one) => range.map((each, row) => (row === at ? replaced(each, place, one) : each)));
      const added = fc
        .tuple(fc.constantFrom(...labels), fc.oneof(number, cell))
        .map((pair): unknown => [...range, [...pair, ...Array<null>(Math.max(0, line.length - 2)).fill(null)]]);
      const dropped = fc.constant<unknown>(range.filter((_, row) => row !== at));
      return line.length === 0 ? added : fc.oneof({ weight: 4, arbitrary: changed }, added, dropped);
    });
  });
};

const isRange = (value: unknown): value is readonly (readonly unknown[])[] =>
  Array.isArray(value) && value.length > 0 && value.every(Array.isArray);

const spoilt = (arg: ArgData | undefined, value: unknown): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 5, arbitrary: isRange(value) ? spoiltRange(arg, value) : likely(arg, value) },
    { weight: 2, arbitrary: nearby(value) },
    { weight: 3, arbitrary: hostile },
  );

interface Edit {
  readonly place: number;
  readonly value: unknown;
}

/** Argument lists of one function; every third one or so works. */
export function listsOf(definition: CellFunction): fc.Arbitrary<Raw> {
  const args = placedArgs(definition);
  const places = Math.max(1, args.length);
  return fc.constantFrom(...givenLists(definition)).chain((given) => {
    const edit = fc
      .nat({ max: places })
      .chain((place) => spoilt(args[place]?.[1], given[place] ?? null).map((value): Edit => ({ place, value })));
    return fc.array(edit, { maxLength: 3 }).map((edits) => {
      const length = Math.max(given.length, ...edits.map(({ place }) => place + 1));
      const list = Array.from({ length }, (_, place): unknown => given[place] ?? null);
      for (const { place, value } of edits) list[place] = value;
      return list;
    });
  });
}
