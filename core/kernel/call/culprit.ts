/** Which arguments a fault of a calculation is about: models know their own quantities, not the cell's arguments. */
import { labelOf, type ArgData } from "../define/argument";
import type { CellFunction } from "../define/cellFunction";
import { hostError, isFault, type Fault } from "../values/fault";
import { markedValues } from "../values/quantityMark";

type Values = Readonly<Record<string, unknown>>;

/** Names as messages print them, with the values that came: arguments, and the labels of blocks. */
const namedValues = (
  args: Readonly<Record<string, ArgData>>,
  values: Values,
): readonly (readonly [string, unknown])[] =>
  Object.entries(args).flatMap(([name, { shape }]) => {
    if (shape.type === "rows")
      return [name, ...Object.keys(shape.columns).map(labelOf)].map((each) => [each, undefined] as const);
    if (shape.type !== "block") return [[name, values[name]] as const];
    const inner = values[name] as Values;
    return [
      [name, undefined] as const,
      ...Object.keys(shape.entries).map((key) => [labelOf(key), inner[key]] as const),
    ];
  });

/** Text with a space on either side of every word. */
const spaced = (text: string): string => ` ${text.replace(/[^\p{L}\p{N}/.-]+/gu, " ")} `.toLowerCase();

/** Whether a message names one of these: in front of its first colon, or in capitals inside ("hotIn") anywhere. */
const names = (message: string, name: string): boolean =>
  spaced(message.split(":")[0] ?? "").includes(spaced(name)) ||
  spaced(message.split(":")[0] ?? "").includes(spaced(labelOf(name))) ||
  (/[A-Z]/.test(name) && message.includes(name));

/**
 * The fault of a calculation with the arguments in front that it is about, where it names none: those whose value it
 * tells behind "got", else the function itself.
 */
export function namingArguments(thrown: unknown, { id, args }: CellFunction, values: Values): unknown {
  if (!isFault(thrown)) return thrown;
  const { code, message }: Fault = thrown;
  const all = namedValues(args, values);
  if (message.includes(id) || all.some(([name]) => names(message, name))) return thrown;
  const got = new Set(markedValues(message.slice(message.lastIndexOf(", got ") + 1)));
  const about = all.filter(([, value]) => typeof value === "number" && got.has(value)).map(([name]) => name);
  return hostError(code, `${about.length > 0 ? about.join(" and ") : id}: ${message}`);
}
