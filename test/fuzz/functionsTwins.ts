/** Calls that must give the same: the same arguments spelt, ordered or measured otherwise, or worked another way. */
import { CATALOGUE, KINDS, type ArgData, type Compiled, type Fault, type Out, type System } from "../../core";
import { admit, evaluate, type AdmittedCall } from "../../core/kernel/call/evaluate";
import { kindOf, matchWord } from "../../core/kernel/call/admit";
import { fromBase, toBase, type KindName } from "../../core/kernel/values/quantity";
import { normalizeKey } from "../../core/kernel/define/argument";
import { replaced, type Raw } from "./functionsLists";

type Range = readonly (readonly unknown[])[];

/** Another way to the same result, in the other system where `otherSystem`; undefined where there is none for these arguments. */
export type Twin = (compiled: Compiled, list: Raw, salt: number) => Out | Fault | undefined;

const run = (compiled: Compiled, list: Raw): Out | Fault => evaluate(compiled, list, CATALOGUE);

const isRange = (value: unknown): value is Range =>
  Array.isArray(value) && value.length > 0 && value.every((row) => Array.isArray(row) && row.length > 0);

/** A word with other capitals, spaces and hyphens. */
const respelt = (word: string, salt: number): string => {
  const cased = salt % 2 === 0 ? word.toUpperCase() : word.toLowerCase();
  const parted = cased.replace(/[ -]/g, [" ", "-", "\u00a0", "_"][salt % 4] ?? " ");
  return ["", " ", "\u00a0", "\n"][(salt >> 2) % 4] + parted + ["", " ", "\t"][(salt >> 4) % 3];
};

const wordOf = ({ shape }: ArgData, value: unknown): boolean =>
  typeof value === "string" &&
  ((shape.type === "choice" && matchWord(shape, value) !== undefined) ||
    (shape.type === "either" && matchWord(shape.choice, value) !== undefined));

const labelsOf = ({ shape }: ArgData): ReadonlySet<string> =>
  new Set(shape.type === "block" ? Object.keys(shape.entries).map(normalizeKey) : []);

const respeltArgument = (arg: ArgData, value: unknown, salt: number): unknown => {
  if (wordOf(arg, value)) return respelt(value as string, salt);
  const labels = labelsOf(arg);
  if (!isRange(value) || labels.size === 0) return value;
  return value.map(([label, ...rest], at) =>
    typeof label === "string" && labels.has(normalizeKey(label))
      ? [respelt(label, salt + at), ...rest]
      : [label, ...rest],
  );
};

/** Words and labels spelt otherwise. */
const respelling: Twin = (compiled, list, salt) =>
  run(
    compiled,
    list.map((value, place) => {
      const arg = compiled.args[place]?.[1];
      return arg === undefined ? value : respeltArgument(arg, value, salt + place);
    }),
  );

/** A blank as any platform hands it over: null, an empty text, nothing; in a range null or an empty text. */
const blanks: Twin = (compiled, list, salt) => {
  if (compiled.repeats) return undefined;
  const blank = [null, "", undefined][salt % 3];
  const isBlank = (value: unknown): boolean => value === null || value === "" || value === undefined;
  const inside = (cell: unknown): unknown => (isBlank(cell) ? (salt % 2 === 0 ? null : "") : cell);
  return run(
    compiled,
    list.map((value) => (isBlank(value) ? blank : isRange(value) ? value.map((row) => row.map(inside)) : value)),
  );
};

/** The lines of a block the other way round. */
const reversed: Twin = (compiled, list) => {
  const turned = list.map((value, place) =>
    compiled.args[place]?.[1].shape.type === "block" && isRange(value) ? [...value].reverse() : value,
  );
  return turned.some((value, place) => value !== list[place]) ? run(compiled, turned) : undefined;
};

/** Without the memory of results. */
const unremembered: Twin = (compiled, list) => {
  const { memo, ...rest } = compiled;
  return memo === undefined ? undefined : run(rest, list);
};

/** The arguments as admitted, undefined where they are refused. */
const admitted = (compiled: Compiled, list: Raw): AdmittedCall | undefined => {
  try {
    return admit(compiled, list);
  } catch {
    return undefined;
  }
};

type Values = Readonly<Record<string, unknown>>;

/** A number of a kind in another form. */
type Measure = (value: number, kind: KindName) => unknown;

const kindIn = ({ shape }: ArgData, before: Values): KindName | undefined => {
  const quantity = shape.type === "either" ? shape.quantity : shape;
  return quantity.type === "quantity" ? kindOf(quantity.kind, before) : undefined;
};

/** A number measured otherwise. A 0 on a shifted scale may have counted as a blank: it then stays one. */
const measured = (arg: ArgData | undefined, value: unknown, inside: Values, name: string, as: Measure): unknown => {
  const kind = arg === undefined ? undefined : kindIn(arg, inside);
  if (typeof value !== "number" || kind === undefined) return value;
  // Next to nothing, a unit's factor leaves none of it.
  if (value !== 0 && Math.abs(value) < 1e-300) return undefined;
  const { US, SI } = KINDS[kind];
  if (value !== 0 || (US.shift === 0 && SI.shift === 0)) return value === 0 ? 0 : as(value, kind);
  const counted = [US, SI].some((unit) => inside[name] === toBase(0, unit));
  return counted ? as(0, kind) : null;
};

/** A block's plain numbers measured otherwise; undefined for ranges whose numbers may have units beside them. */
const measuredRange = (arg: ArgData, value: Range, inside: Values, as: Measure): Range | undefined => {
  const { shape } = arg;
  if (shape.type !== "block" || value.some((row) => row.length > 2)) return undefined;
  const keys = new Map(Object.keys(shape.entries).map((key) => [normalizeKey(key), key]));
  const turned = value.map(([label, cell]) => {
    const key = keys.get(normalizeKey(String(label))) ?? "";
    return [label, measured(shape.entries[key], cell, inside, key, as)];
  });
  return turned.every(([, cell], at) => cell !== undefined || value[at]?.[1] === undefined) ? turned : undefined;
};

/** The plain numbers of a call measured otherwise. */
const remeasured = (compiled: Compiled, list: Raw, call: AdmittedCall, as: Measure): Raw | undefined => {
  const turned: unknown[] = [];
  for (const [place, [name, arg]] of compiled.args.entries()) {
    const value = list[place] ?? null;
    const ranged = arg.shape.type === "block" || arg.shape.type === "rows" || arg.shape.type === "sheet";
    if (arg.shape.type === "several" || arg.shape.type === "repeat") return undefined;
    const other =
      ranged && isRange(value)
        ? measuredRange(arg, value, call.values[name] as Values, as)
        : measured(arg, value, call.values, name, as);
    if (other === undefined) return undefined;
    turned.push(other);
  }
  return turned;
};

/** Numbers as texts with their units. */
const asTexts: Twin = (compiled, list) => {
  const call = admitted(compiled, list);
  const withUnit: Measure = (value, kind) => `${value} ${KINDS[kind][call?.system ?? "US"].text}`.trim();
  const turned = call && remeasured(compiled, list, call, withUnit);
  return turned && run(compiled, turned);
};

const other = (system: System): System => (system === "US" ? "SI" : "US");

/** The plain numbers in the other system's units, and the answer in those. */
const otherSystem: Twin = (compiled, list) => {
  const call = admitted(compiled, list);
  // The functions about functions tell other functions' units.
  if (call === undefined || compiled.unitsAt < 0 || compiled.definition.topic === "note") return undefined;
  const system = other(call.system);
  const turn: Measure = (value, kind) => fromBase(toBase(value, KINDS[kind][call.system]), KINDS[kind][system]);
  const turned = remeasured(compiled, list, call, turn);
  if (turned === undefined || hasNumberText(compiled, list)) return undefined;
  return run(compiled, replaced(turned, compiled.unitsAt, system));
};

/** Whether a text counts in the call's own units: it would mean something else in the other system. */
const hasNumberText = (compiled: Compiled, list: Raw): boolean =>
  compiled.args.some(([, arg], place) => {
    const cells = [list[place]].flat(2);
    return arg.shape.type !== "choice" && cells.some((cell) => typeof cell === "string" && /^[\s+-]*[\d.,]/.test(cell));
  });

export const TWINS: Readonly<Record<string, Twin>> = {
  respelling,
  blanks,
  reversed,
  unremembered,
  asTexts,
  otherSystem,
};
