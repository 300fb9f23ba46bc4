/** Which arguments a fault of a calculation is about: models know their own quantities, not the cell's arguments. */
import { labelOf, type Args } from "../define/argument";
import type { CellFunction } from "../define/cellFunction";
import { hostError, isFault } from "../values/fault";
import { markedValues } from "../values/quantityMark";

type Values = Readonly<Record<string, unknown>>;

/** Names as messages print them, with the values that came: arguments, and the labels of blocks and columns. */
const namedValues = (args: Args, values: Values): readonly (readonly [name: string, value: unknown])[] =>
  Object.entries(args).flatMap(([name, { shape }]) => {
    if (shape.type === "rows") return [[name, 0] as const, ...namedValues(shape.columns, {})];
    return shape.type === "block"
      ? [
          [name, 0] as const,
          ...namedValues(shape.entries, (values[name] ?? {}) as Values).map(
            ([key, value]) => [labelOf(key), value] as const,
          ),
        ]
      : [[name, values[name]] as const];
  });

/** Text with a space on either side of every word. */
const spaced = (text: string): string => ` ${text.replace(/[^\p{L}\p{N}/.-]+/gu, " ")} `.toLowerCase();

/**
 * The fault of a calculation with the arguments in front that it is about, where it names none: those whose value it
 * tells behind "got", else the function itself. A name counts in front of the first colon; one with a capital inside
 * ("hotIn") is no word of a sentence and counts anywhere.
 */
export function namingArguments(thrown: unknown, { id, args }: CellFunction, values: Values): unknown {
  if (!isFault(thrown)) return thrown;
  const { code, message } = thrown;
  const head = spaced(message.split(":")[0] ?? "");
  const all = namedValues(args, values);
  const isNamed = all.some(
    ([name]) =>
      head.includes(spaced(name)) ||
      head.includes(spaced(labelOf(name))) ||
      (/[A-Z]/.test(name) && message.includes(name)),
  );
  if (isNamed || message.includes(id)) return thrown;
  const got = markedValues(message.slice(message.lastIndexOf(", got ") + 1));
  const about = all.filter(([, value]) => value !== 0 && got.includes(value as number)).map(([name]) => name);
  return hostError(code, `${about.join(" and ") || id}: ${message}`);
}
