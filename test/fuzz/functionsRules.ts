/** What must hold of every call, whatever its arguments: the complaints of one call. */
import {
  CATALOGUE,
  COMPILED,
  KINDS,
  labelOf,
  lookUp,
  placedArgs,
  type ArgData,
  type CellFunction,
  type System,
} from "../../core";
import type { Limits } from "../../core/kernel/define/argument";
import { kindOf, matchWord } from "../../core/kernel/call/admit";
import { toBase } from "../../core/kernel/values/quantity";
import { singlesOf, UNITS } from "../../core/kernel/define/unitsArgument";
import type { Shown } from "./functionsHost";
import type { Raw } from "./functionsLists";

const HOST_CODES = ["#DIV/0!", "#NUM!", "#REF!", "#NAME?", "#NULL!"];
const OURS = ["#VALUE!", "#N/A"];

const cellsIn = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value.flatMap(cellsIn) : [value]);

/** Everything that a call brings, its single values in one list. */
const broughtBy = (list: Raw): readonly unknown[] => list.flatMap(cellsIn);

/** The names that a message may begin with: the function's, its arguments', their labels and columns. */
const argumentNames = (definition: CellFunction): readonly string[] => {
  const inner = ({ shape }: ArgData): readonly string[] =>
    shape.type === "block" ? Object.keys(shape.entries) : shape.type === "rows" ? Object.keys(shape.columns) : [];
  const names = placedArgs(definition).flatMap(([name, arg]) => [name, ...inner(arg)]);
  return [definition.id, ...names.flatMap((name) => [name, labelOf(name)])];
};

const resultNames = ({ returns }: CellFunction): readonly string[] =>
  singlesOf(returns).flatMap(([key, single]) => [labelOf(key), single.description]);

/** A function about functions passes on what the other one says. */
const toldOf = (definition: CellFunction, list: Raw): readonly CellFunction[] => {
  const other = typeof list[0] === "string" ? lookUp(CATALOGUE, list[0]) : undefined;
  return definition.topic === "note" && other !== undefined ? [definition, other] : [definition];
};

const holdsName = (text: string, name: string): boolean =>
  new RegExp(`(?<![\\p{L}\\d])${name.replace(/[.*+?()|[\]/]/g, "\\$&")}(?![\\p{L}\\d])`, "iu").test(text);

/** A name of several words stands for itself anywhere; others only in front, where they can't be a word of the sentence. */
const isLongName = (name: string): boolean => /[a-z][A-Z ]/.test(name);

const namesSomething = (definition: CellFunction, list: Raw, message: string): boolean => {
  const head = message.split(": ")[0] ?? "";
  const told = toldOf(definition, list);
  return (
    told.flatMap(argumentNames).some((name) => holdsName(isLongName(name) ? message : head, name)) ||
    (message.includes("lead beyond any number") && told.flatMap(resultNames).some((name) => head === name))
  );
};

/** What a message says by itself, without what it repeats of the arguments' texts. */
const unquoted = (list: Raw, message: string): string =>
  broughtBy(list)
    .filter((each) => typeof each === "string" && each.length > 2)
    .reduce((text: string, each) => text.replaceAll(each as string, ""), message.replace(/"[^"]*"/g, '""'))
    .replace(/"[^"]*$/, '""');

const NOT_FOR_READERS =
  /can't be computed|undefined|null\b|NaN|Infinity|\[object|TypeError|RangeError|is not a function|[⟦⟧]/;

/** Complaints about a fault. */
function faultComplaints(definition: CellFunction, list: Raw, code: string, message: string): readonly string[] {
  const passed = HOST_CODES.includes(code) && broughtBy(list).includes(code);
  return [
    ...(OURS.includes(code) || passed ? [] : [`shows ${code}`]),
    ...(namesSomething(definition, list, message) ? [] : ["names no argument, label or function"]),
    ...(NOT_FOR_READERS.test(unquoted(list, message)) ? ["says what no reader understands"] : []),
    ...(message.length > 1000 ? [`says it in ${message.length} characters`] : []),
  ];
}

const isBeyond = (value: number, { above, from, below, to }: Limits): boolean => {
  const beside = (limit: number): number => 1e-6 * Math.max(1e-9, Math.abs(limit));
  return (
    (above !== undefined && value < above - beside(above)) ||
    (from !== undefined && value < from - beside(from)) ||
    (below !== undefined && value > below + beside(below)) ||
    (to !== undefined && value > to + beside(to))
  );
};

export const systemIn = (definition: CellFunction, list: Raw): System => {
  const at = placedArgs(definition).findIndex(([, arg]) => arg === UNITS);
  const raw = list[at];
  return UNITS.shape.type === "choice" && typeof raw === "string" && matchWord(UNITS.shape, raw) === "SI" ? "SI" : "US";
};

/** Numbers that were accepted beyond their argument's limits: they must have been clamped or passed over. */
function clamped(definition: CellFunction, list: Raw): readonly string[] {
  const system = systemIn(definition, list);
  const before = Object.fromEntries(placedArgs(definition).map(([name], at) => [name, list[at]]));
  return placedArgs(definition).flatMap(([name, arg], at) => {
    const { shape } = arg;
    const value = list[at];
    const isLeftOut = value === 0 && arg.presence !== "required";
    if (shape.type !== "quantity" || shape.reading || typeof value !== "number" || isLeftOut) return [];
    const base = toBase(value, KINDS[kindOf(shape.kind, before)][system]);
    return isBeyond(base, shape) ? [`accepts ${name} beyond its limits`] : [];
  });
}

const isNoNumber = (cell: unknown): boolean => typeof cell === "number" && !Number.isFinite(cell);

/** Complaints about a value. */
function valueComplaints(definition: CellFunction, list: Raw, value: unknown): readonly string[] {
  const cells = cellsIn(value);
  const faults = cells.flatMap((cell) =>
    cell instanceof Error
      ? faultComplaints(definition, list, (cell as Error & { code: string }).code, cell.message)
      : [],
  );
  const widths = new Set(Array.isArray(value) ? value.map((row: unknown) => (row as readonly unknown[]).length) : []);
  return [
    ...(cells.some(isNoNumber) ? ["shows NaN or Infinity"] : []),
    ...(cells.some((cell) => cell === undefined || cell === null) ? ["shows nothing in a cell"] : []),
    ...(widths.size > 1 ? ["spills a ragged range"] : []),
    ...faults,
    ...clamped(definition, list),
  ];
}

/** The complaints about one call of a function; none where it behaved. */
export function complaintsAbout(id: string, list: Raw, shown: Shown): readonly string[] {
  const definition = COMPILED.get(id)?.definition;
  if (definition === undefined) return ["isn't in the catalogue"];
  return "code" in shown
    ? faultComplaints(definition, list, shown.code, shown.message)
    : valueComplaints(definition, list, shown.value);
}

/** Whether a call's own arguments hold a number that nobody means. */
export function isHuge(id: string, list: Raw): boolean {
  const args = COMPILED.get(id)?.args ?? [];
  return args.some(([, { shape }], place) => {
    const value = list[place];
    return shape.type === "quantity" && typeof value === "number" && Math.abs(value) >= 1e12;
  });
}

/** Freezes an argument list to its cells: whoever writes into it throws. */
export function frozen<T>(value: T): T {
  if (Array.isArray(value)) value.forEach(frozen);
  return Array.isArray(value) ? Object.freeze(value) : value;
}
