/** Admits ranges: input blocks (label, value, unit) and rows with named columns. */
import {
  normalizeKey,
  labelOf,
  type ArgData,
  type Args,
  type BlockShape,
  type RowsShape,
  type ScalarShape,
} from "../define/argument";
import { admitScalar, isBlank, isReadQuantity, kindOf, zeroIsImpossible, type AdmitContext } from "./admit";
import { valueError } from "../values/fault";
import { KINDS } from "../values/quantity";
import {
  describeInput,
  quoteText,
  refuseErrorText,
  sizeText,
  type CellInput,
  type CellMatrix,
  type CellScalar,
} from "../values/cellInput";
import { STANDARD_PRESSURE } from "../define/pressureBasis";
import { isMisspelt, lookalike } from "./nearest";

/** Appends the unit from the unit column or header to a bare number. */
const withOwnUnit = (raw: CellScalar, unit: string): CellScalar =>
  unit !== "" && (typeof raw === "number" || (typeof raw === "string" && /^[-+.,;\d\s/]+$/.test(raw)))
    ? `${String(raw)} ${unit}`
    : raw;

const takesUnit = (arg: ArgData, before: Readonly<Record<string, unknown>>): boolean => {
  const { shape } = arg;
  const quantity = shape.type === "either" ? shape.quantity : shape;
  if (quantity.type !== "quantity" && quantity.type !== "several") return false;
  const kind = KINDS[kindOf(quantity.kind, before)];
  return kind.US.text !== "" || kind.SI.text !== "";
};

/** The value of an omitted argument: default, computed default or undefined; throws for a required one. */
export const defaultFor = (arg: ArgData, missing: () => Error, before: Readonly<Record<string, unknown>>): unknown => {
  if (arg.presence === "required") throw missing();
  if (arg.presence === "optional") return undefined;
  const fallback = arg.fallback as { readonly from?: (args: Readonly<Record<string, unknown>>) => unknown };
  return typeof fallback === "object" && fallback !== null && typeof fallback.from === "function"
    ? fallback.from(before)
    : fallback;
};

const keysByLabel = (entries: Args): ReadonlyMap<string, string> =>
  new Map(Object.keys(entries).map((key) => [normalizeKey(key), key]));

/** The label of a head, and its unit. */
const HEADER = /^(.*?)(?:\s*[(,]\s*([^()]*(?:\([^()]*\)[^()]*)?)\)?)?$/;

const unknownLabel = (name: string, label: string, entries: Args): Error => {
  const labels = Object.keys(entries).map(labelOf);
  const near = lookalike(HEADER.exec(label)?.[1] ?? label, labels);
  const advice = near === undefined ? "NOTE.INPUTS lists them" : `the nearest is "${near}"`;
  return valueError(`${name}: no label ${quoteText(label)} here; ${advice}`);
};

interface FoundCell {
  readonly value: CellScalar;
  readonly unit: string;
}

const HEADINGS = new Set(["label", "input", "inputs", "name", "quantity", "item"]);

/** A blank cell inside a range arrives as 0 on some hosts. */
const isBlankInRange = (cell: CellScalar): boolean => isBlank(cell) || cell === 0;

/** Whether a row is a heading: no value and unit, or the block's own header. */
const isHeading = (text: string, value: CellScalar, unit: CellScalar): boolean =>
  (isBlankInRange(value) && isBlankInRange(unit)) ||
  isBlank(value) ||
  (HEADINGS.has(normalizeKey(text)) && typeof value === "string");

interface ReadBlock {
  /** Key → value and unit of the filled rows. */
  readonly found: ReadonlyMap<string, FoundCell>;
  /** Keys whose 0 counted as left out. */
  readonly leftOut: readonly string[];
  /** Unknown labels with a 0 that counted as headings. */
  readonly headings: readonly string[];
}

const readBlock = (shape: BlockShape, matrix: CellMatrix, name: string, context: AdmitContext): ReadBlock => {
  const keys = keysByLabel(shape.entries);
  const labels = Object.keys(shape.entries).map(labelOf);
  const found = new Map<string, FoundCell>();
  const leftOut: string[] = [];
  const headings: string[] = [];
  for (const line of matrix) {
    const [label = null, value = null, unit = null] = line;
    refuseErrorText(label, name);
    if (isBlank(label) || (label === 0 && isBlankInRange(value))) continue;
    const text = String(label).trim();
    const key = keys.get(normalizeKey(text));
    if (key === undefined) {
      // A heading's blank cell may arrive as 0, but the 0 of a misspelt label must not be lost.
      if (!isHeading(text, value, unit) || (value === 0 && isMisspelt(text, labels)))
        throw unknownLabel(name, text, shape.entries);
      if (value === 0) headings.push(text);
      continue;
    }
    const arg = shape.entries[key];
    if (arg === undefined || isBlank(value)) continue;
    if (isLeftOut(arg, value, context)) {
      if (!isNeverZero(arg)) leftOut.push(key);
      continue;
    }
    if (found.has(key)) throw valueError(`${name}: the label ${quoteText(text)} appears twice`);
    found.set(key, { value, unit: isBlankInRange(unit) ? "" : String(unit).trim() });
  }
  return { found, leftOut, headings };
};

/** Admits one value of a range. A reading in a range is a gauge pressure at sea level; an absolute text is turned into one. */
const admitCell = (arg: ArgData, cell: FoundCell, label: string, context: AdmitContext): unknown => {
  const raw = takesUnit(arg, context.before) ? withOwnUnit(cell.value, cell.unit) : cell.value;
  const value = admitScalar(arg.shape as ScalarShape, raw, label, context);
  if (!isReadQuantity(value)) return value;
  return value.basis === "absolute" ? value.value - STANDARD_PRESSURE : value.value;
};

interface AdmittedBlock {
  readonly values: Readonly<Record<string, unknown>>;
  readonly given: ReadonlySet<string>;
  readonly doubts: ZeroDoubts;
}

/** Zeros that may be blank cells. */
export interface ZeroDoubts {
  /** Labels and arguments whose 0 counts as 0 although leaving them out would mean something else. */
  readonly zeros: readonly string[];
  /** Labels and arguments whose 0 counts as left out, since 0 is outside their limits. */
  readonly leftOut: readonly string[];
  /** Unknown labels of a block with a 0 beside them: they count as headings. */
  readonly headings: readonly string[];
}

/** Whether a 0 may be a blank cell that the host passed as 0, and leaving it out would change the result. */
export const maybeBlank = (arg: ArgData | undefined, value: CellInput): boolean =>
  value === 0 && arg !== undefined && arg.presence !== "required" && arg.fallback !== 0 && arg.fallback !== false;

/** Admits an input block; `given` names the keys that were filled in. */
export const admitBlock = (shape: BlockShape, raw: CellInput, name: string, context: AdmitContext): AdmittedBlock => {
  if (!Array.isArray(raw)) {
    refuseErrorText(raw as CellScalar, name);
    throw valueError(`${name}: expected a range of labels and values, got ${describeInput(raw)}`);
  }
  const matrix = raw as CellMatrix;
  if ((matrix[0]?.length ?? 0) < 2)
    throw valueError(`${name}: expected two or three columns (label, value, unit), got ${sizeText(matrix)}`);
  const { found, leftOut, headings } = readBlock(shape, matrix, name, { ...context, before: {} });
  const values: Record<string, unknown> = {};
  const inside: AdmitContext = { ...context, unitsPlace: "", before: values };
  for (const [key, arg] of Object.entries(shape.entries)) {
    const cell = found.get(key);
    const label = labelOf(key);
    values[key] = cell
      ? admitCell(arg, cell, label, inside)
      : defaultFor(
          arg,
          () => valueError(`${name}: the label "${label}" is missing or blank: ${arg.description}`),
          values,
        );
  }
  const zeros = [...found].filter(([key, { value }]) => maybeBlank(shape.entries[key], value)).map(([key]) => key);
  return { values, given: new Set(found.keys()), doubts: { zeros, leftOut, headings } };
};

interface Column {
  readonly key: string;
  readonly unit: string;
}

/** The columns that a header row names; undefined if the first row isn't a header. */
const readHeader = (shape: RowsShape, line: readonly CellScalar[], name: string): readonly Column[] | undefined => {
  const keys = keysByLabel(shape.columns);
  const heads = line.map((cell) => HEADER.exec(typeof cell === "string" ? cell.trim() : ""));
  const hits = heads.filter((head) => head && keys.has(normalizeKey(head[1] ?? ""))).length;
  if (hits === 0 || line.some((cell) => typeof cell === "number")) return undefined;
  const columns = line.map((cell, place) => {
    if (isBlank(cell)) return { key: "", unit: "" };
    const key = keys.get(normalizeKey(heads[place]?.[1] ?? ""));
    if (key === undefined) throw unknownLabel(`${name}, header`, String(cell), shape.columns);
    return { key, unit: (heads[place]?.[2] ?? "").trim() };
  });
  const twice = columns.find((each, place) => each.key !== "" && columns.findIndex((c) => c.key === each.key) < place);
  if (twice) throw valueError(`${name}, header: the column "${labelOf(twice.key)}" appears twice`);
  return columns;
};

/** "12 rows", "2 to 40 rows". */
const countsText = ({ least, most }: RowsShape): string =>
  least === most ? `${most} row${most === 1 ? "" : "s"}, one below the other` : `${least} to ${most} rows`;

/** Whether a zero can't be meant: words, texts, and quantities above zero. */
const isNeverZero = ({ shape }: ArgData): boolean =>
  shape.type === "choice" ||
  shape.type === "either" ||
  shape.type === "text" ||
  (shape.type === "quantity" && shape.above === 0);

/** Inside a range a blank cell arrives as 0 on some hosts: it counts as left out if zero can't be meant. */
const isLeftOut = (arg: ArgData, value: CellScalar, context: AdmitContext): boolean =>
  isBlank(value) || (value === 0 && arg.presence !== "required" && zeroIsImpossible(arg, context));

/** A line of blanks, or of zeros although it needs a word. */
const isEmptyLine = ({ columns }: RowsShape, line: readonly CellScalar[]): boolean => {
  if (line.every(isBlank)) return true;
  const needsWord = Object.values(columns).some((arg) => arg.presence === "required" && isNeverZero(arg));
  return needsWord && line.every((cell) => isBlank(cell) || cell === 0);
};

/** Admits rows with named columns. */
export const admitRows = (
  shape: RowsShape,
  raw: CellInput,
  name: string,
  context: AdmitContext,
): readonly Readonly<Record<string, unknown>>[] => {
  const matrix: CellMatrix = Array.isArray(raw) ? (raw as CellMatrix) : [[raw as CellScalar]];
  for (const line of matrix) for (const cell of line) refuseErrorText(cell, name);
  const header = readHeader(shape, matrix[0] ?? [], name);
  const columns: readonly Column[] = header ?? Object.keys(shape.columns).map((key) => ({ key, unit: "" }));
  const lines = matrix
    .map((line, place) => ({ line, place: place + 1 }))
    .slice(header ? 1 : 0)
    .filter(({ line }) => !isEmptyLine(shape, line));
  if (lines.length < shape.least || lines.length > shape.most)
    throw valueError(`${name}: expected ${countsText(shape)}, got ${lines.length}`);
  const slots = Object.entries(shape.columns).map(([key, arg]): Slot => {
    const at = columns.findIndex((column) => column.key === key);
    return { key, arg, label: labelOf(key), at, unit: columns[at]?.unit ?? "" };
  });
  return lines.map(({ line, place }) => admitLine(slots, line, `${name}, row ${place}`, context));
};

/** A declared column and its place in this range; `at` is −1 if it is missing. */
interface Slot {
  readonly key: string;
  readonly arg: ArgData;
  readonly label: string;
  readonly at: number;
  readonly unit: string;
}

/** Admits a range unchanged; throws for an error value in it. */
export const admitSheet = (raw: CellInput, name: string): CellMatrix => {
  const matrix: CellMatrix = Array.isArray(raw) ? (raw as CellMatrix) : [[raw as CellScalar]];
  for (const line of matrix) for (const cell of line) refuseErrorText(cell, name);
  return matrix;
};

const admitLine = (
  slots: readonly Slot[],
  line: readonly CellScalar[],
  name: string,
  context: AdmitContext,
): Readonly<Record<string, unknown>> => {
  const values: Record<string, unknown> = {};
  const inside: AdmitContext = { ...context, unitsPlace: "", before: values };
  for (const { key, arg, label: own, at, unit } of slots) {
    const value = at < 0 ? null : (line[at] ?? null);
    const label = `${name}, ${own}`;
    values[key] = isLeftOut(arg, value, inside)
      ? defaultFor(arg, () => valueError(`${label}: is blank: ${arg.description}`), values)
      : admitCell(arg, { value, unit }, label, inside);
  }
  return values;
};
