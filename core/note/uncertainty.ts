/** Any function of one value as a calculation with uncertain arguments. */
import { labelOf, normalizeKey, type ArgData } from "../kernel/define/argument";
import type { Catalogue, CellFunction } from "../kernel/define/cellFunction";
import { silent } from "../kernel/define/steps";
import { numberKind } from "../kernel/call/admitLabel";
import { admit, asFault, compile, runAdmitted } from "../kernel/call/evaluate";
import { nearest } from "../kernel/call/nearest";
import { unitText } from "../kernel/call/present";
import { hostError, notAvailable, valueError } from "../kernel/values/fault";
import { placedArgs } from "../kernel/define/unitsArgument";
import { correlationOf, type CorrelatedPair } from "../uncertainty/correlation";
import { uncertainInputs, type UncertainRange } from "../uncertainty/ranges";
import type { UncertainModel } from "../uncertainty/study";

/** The place of an argument in a call, or of a label in one of its blocks. */
interface Place {
  readonly at: number;
  readonly name: string;
  readonly arg: ArgData;
  readonly label?: string;
}

/** Every argument and label that a range may name. */
const placesOf = (definition: CellFunction): readonly Place[] =>
  placedArgs(definition).flatMap(([name, arg], at): readonly Place[] =>
    arg.shape.type === "block"
      ? Object.entries(arg.shape.entries).map(([key, entry]) => ({
          at,
          name,
          arg: entry,
          label: labelOf(key),
        }))
      : [{ at, name, arg }],
  );

const wordsOf = ({ name, label }: Place): readonly string[] => (label === undefined ? [name, labelOf(name)] : [label]);

function placeNamed(places: readonly Place[], wanted: string): Place {
  const key = normalizeKey(wanted);
  const found = places.find((place) => wordsOf(place).some((word) => normalizeKey(word) === key));
  if (found !== undefined) return found;
  const near = nearest(
    wanted,
    places.map((place) => wordsOf(place).at(-1) ?? ""),
  );
  throw valueError(`ranges: no argument or label "${wanted}"; the nearest is "${near}"`);
}

type Raw = readonly unknown[];

/** The rows of a block with another value at a label, which need not be there yet. */
function blockWith(block: unknown, label: string, value: unknown): unknown {
  const rows: readonly Raw[] = Array.isArray(block) ? (block as readonly Raw[]) : [];
  const key = normalizeKey(label);
  const others = rows.filter((row) => normalizeKey(String(row[0] ?? "")) !== key);
  return [...others, [label, value, null].slice(0, Math.max(2, rows[0]?.length ?? 2))];
}

/** A call with other values at places. */
function callWith(raw: Raw, places: readonly Place[], values: Raw): Raw {
  const call = [...raw];
  for (const [which, { at, label }] of places.entries()) {
    while (call.length <= at) call.push(null);
    call[at] = label === undefined ? values[which] : blockWith(call[at], label, values[which]);
  }
  return call;
}

/** Somewhere inside a range, with its unit. */
const insideOf = ({ low, high, likely, unit = "" }: UncertainRange): unknown => {
  const value = likely || (low + high) / 2;
  return unit === "" ? value : `${value} ${unit}`;
};

/** A function's value by its uncertain arguments, and the unit of it. */
export interface FunctionModel extends UncertainModel {
  readonly unit: string;
}

export function functionModel(
  definition: CellFunction,
  ranges: readonly UncertainRange[],
  raw: Raw,
  catalogue: Catalogue,
  pairs: readonly CorrelatedPair[] = [],
): FunctionModel {
  const { id, returns } = definition;
  if (returns.type !== "quantity") throw valueError(`function: ${id} returns no single number: name one that does`);
  const compiled = compile(definition);
  const all = placesOf(definition);
  const places = ranges.map(({ label }) => placeNamed(all, label));
  const { values, system } = admit(compiled, callWith(raw, places, ranges.map(insideOf)));
  const kindAt = (label: string, name: string) => {
    const place = placeNamed(all, label);
    const before = place.label === undefined ? values : (values[place.name] as typeof values);
    return numberKind(place.arg.shape, name, before);
  };
  const compute = (at: readonly number[]): readonly number[] => {
    try {
      const call = admit(compiled, callWith(raw, places, at));
      const { out } = runAdmitted(compiled, call, catalogue, silent, () => undefined);
      if (typeof out === "number") return [out];
      throw notAvailable(`${id} has no number here: ${String(out)}`);
    } catch (thrown) {
      // In the units of the call: those of NOTE.UNCERTAINTY itself aren't known.
      const { code, message } = asFault(thrown, system);
      throw hostError(code, message);
    }
  };
  const inputs = uncertainInputs(ranges, kindAt, system);
  return { inputs, correlation: correlationOf(pairs, inputs), compute, unit: unitText(returns, system) };
}

/** Runs in a cell: fewer of a function that takes long. */
export function runsFor({ memoised, slow }: CellFunction): number {
  return slow === true ? 16 : memoised === true ? 256 : 2048;
}
