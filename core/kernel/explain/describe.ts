/** Texts derived from a definition: argument descriptions, argument form, examples as formulas. */
import { labelOf, type ArgData, type BlockShape, type Shape } from "../define/argument";
import { isBlank, wordsText } from "../call/admit";
import type { CellFunction, Check, Example, ExampleArgs } from "../define/cellFunction";
import { KINDS, showReadable, type KindName, type System } from "../values/quantity";
import { placedArgs } from "../define/unitsArgument";
import type { CellInput, CellMatrix, CellScalar } from "../values/cellInput";

export const NAMESPACE = "WARMBACK";

const unitsText = (kind: KindName): string => {
  const { US, SI } = KINDS[kind];
  if (US.text === "") return "";
  return US.text === SI.text ? `${US.text}: ` : `${US.text} (SI: ${SI.text}): `;
};

const quantityUnits = (shape: Shape): string => {
  if (shape.type === "either") return quantityUnits(shape.quantity);
  if (shape.type === "several") return unitsText(shape.kind);
  if (shape.type !== "quantity") return "";
  return typeof shape.kind === "string" ? unitsText(shape.kind) : "";
};

/** The default as printed by `write`: "80 °F", "gauge", "as shallow"; "" where there is none. */
export const defaultText = (arg: ArgData, system: System = "US", write: typeof showReadable = showReadable): string => {
  const { fallback, shape } = arg;
  if (arg.presence !== "default" || fallback === undefined) return "";
  if (typeof fallback === "object" && fallback !== null && "words" in fallback) return String(fallback.words);
  const quantity = shape.type === "either" ? shape.quantity : shape;
  if (typeof fallback === "number" && quantity.type === "quantity")
    return write(fallback, typeof quantity.kind === "string" ? quantity.kind : "number", system);
  return typeof fallback === "boolean" ? String(fallback).toUpperCase() : String(fallback);
};

/** An argument's description: unit first, then what it is, then the default. */
export const argText = (arg: ArgData): string => {
  const preset = defaultText(arg);
  const end = preset === "" ? (arg.presence === "optional" ? " [may be left out]" : "") : ` [${preset}]`;
  return `${quantityUnits(arg.shape)}${arg.description}${end}`;
};

/** The limits of an argument in one system's units: "above 0 ft, at most 8 ft". */
export const limitsText = (shape: Shape, system: System): string => {
  if (shape.type === "choice") return wordsText(shape.words);
  if (shape.type === "either") return `${wordsText(shape.choice.words)}, or ${limitsText(shape.quantity, system)}`;
  if (shape.type === "yes/no") return "TRUE or FALSE";
  if (shape.type !== "quantity" && shape.type !== "several") return "";
  const kind = typeof shape.kind === "string" ? shape.kind : "number";
  const limitText = (words: string, value?: number): string[] =>
    value === undefined ? [] : [`${words} ${showReadable(value, kind, system)}`];
  const { above, from, below, to } = shape;
  const all = [
    ...limitText("above", above),
    ...limitText("from", from),
    ...limitText("below", below),
    ...limitText("to", to),
  ];
  return all.length === 0 ? "any number" : all.join(", ");
};

/** "PIPE.HEADLOSS(flow, size, length, [schedule], …)". */
export const signatureOf = (definition: CellFunction): string => {
  const names = placedArgs(definition).map(([name, arg]) =>
    arg.shape.type === "repeat" ? `${name}…` : arg.presence === "required" ? name : `[${name}]`,
  );
  return `${NAMESPACE}.${definition.id}(${names.join(", ")})`;
};

const isMatrix = (value: Example): value is readonly (readonly CellScalar[])[] =>
  Array.isArray(value) && Array.isArray(value[0]);

const matrixOfRows = (rows: readonly Readonly<Record<string, CellScalar>>[]): CellMatrix => {
  const keys = [...new Set(rows.flatMap((each) => Object.keys(each)))];
  return [keys.map(labelOf), ...rows.map((each) => keys.map((key) => each[key] ?? null))];
};

/** Ranges and array constants have rows of one length. */
const squared = (rows: CellMatrix): CellMatrix => {
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) =>
    row.length === width ? row : Array.from({ length: width }, (_, place) => row[place] ?? null),
  );
};

/** An example's value as a host would pass it. */
export const rawOfExample = (value: Example): CellInput => {
  if (typeof value !== "object") return value;
  if (isMatrix(value)) return squared(value);
  if (Array.isArray(value)) return matrixOfRows(value as readonly Readonly<Record<string, CellScalar>>[]);
  return Object.entries(value as Readonly<Record<string, CellScalar>>).map(([key, each]) => [labelOf(key), each]);
};

/** Named example arguments in their places; null where left out. */
export const rawByPlace = (definition: CellFunction, at: ExampleArgs): readonly CellInput[] => {
  const places = placedArgs(definition).flatMap(([name, arg]) => {
    const value = (at as Readonly<Record<string, Example>>)[name];
    if (arg.shape.type === "repeat") return value === undefined ? [] : (rawOfExample(value) as CellMatrix).flat();
    return [value === undefined ? null : rawOfExample(value)];
  });
  while (places.length > 0 && places.at(-1) === null) places.pop();
  return places;
};

const literal = (value: CellScalar): string => {
  if (isBlank(value)) return '""';
  if (typeof value === "string") return `"${value.replace(/"/g, '""')}"`;
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
};

/** Raw arguments as a formula that a cell takes: matrices as array constants. */
export const formulaOf = (definition: CellFunction, raw: readonly CellInput[]): string => {
  const texts = raw.map((value) => {
    if (value === null) return "";
    if (!Array.isArray(value)) return literal(value as CellScalar);
    return `{${(value as CellMatrix).map((line) => line.map(literal).join(",")).join(";")}}`;
  });
  return `=${NAMESPACE}.${definition.id}(${texts.join(",")})`;
};

/** The block to fill in: label, default, unit of every entry. */
export const blockRows = (shape: BlockShape, system: System): readonly (readonly [string, CellScalar, string])[] =>
  Object.entries(shape.entries).map(([key, arg]) => {
    const inner = arg.shape.type === "either" ? arg.shape.quantity : arg.shape;
    const kind = inner.type === "quantity" && typeof inner.kind === "string" ? inner.kind : undefined;
    const unit = kind ? KINDS[kind][system].text : "";
    const preset = arg.fallback;
    const shown = typeof preset === "number" && kind ? Number(fromBaseText(preset, kind, system)) : undefined;
    return [labelOf(key), shown ?? (typeof preset === "object" ? "" : defaultText(arg, system)), unit];
  });

const fromBaseText = (value: number, kind: KindName, system: System): string => {
  const unit = KINDS[kind][system];
  return (value / unit.factor - unit.shift).toPrecision(9);
};

const givesValue = ({ expected }: Check): boolean => typeof expected !== "string" || !expected.startsWith("#");

const needsArgs = ({ args }: CellFunction): boolean =>
  Object.values(args).some(({ presence, shape }) => presence === "required" && shape.type !== "repeat");

/**
 * The arguments of a function's example on its help page and in the panel: those of its definition's `example`, else of
 * its first check with a value, else of a caution; undefined if there are none.
 */
export const exampleArgs = (definition: CellFunction): ExampleArgs | undefined =>
  definition.example ??
  definition.checks.find(givesValue)?.inputs ??
  definition.cautions[0]?.raisedBy ??
  (needsArgs(definition) ? undefined : {});
