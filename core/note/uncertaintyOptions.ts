/** What may follow the arguments of a function whose uncertainty is asked for: words, each with its values. */
import { normalizeKey, quantity, type RowsShape, type ScalarShape } from "../kernel/define/argument";
import { admitScalar, isBlank, type AdmitContext } from "../kernel/call/admit";
import { admitRows } from "../kernel/call/admitRange";
import { describeInput, type CellInput, type CellScalar } from "../kernel/values/cellInput";
import { valueError } from "../kernel/values/fault";
import { CORRELATIONS, type CorrelatedPair } from "../uncertainty/correlation";

const COVERAGE = quantity("fraction", "", { from: 0.5, to: 0.9999 }).shape as ScalarShape;

const CONTEXT: AdmitContext = { system: "US", unitsPlace: "", before: {} };

interface Options {
  /** The arguments before the first word. */
  readonly raw: readonly CellInput[];
  /** Coverage probability. */
  readonly coverage: number;
  readonly pairs: readonly CorrelatedPair[];
}

const WORDS = ["coverage", "correlations", "correlation"] as const;

const wordOf = (value: CellInput | undefined): string | undefined =>
  typeof value === "string" ? WORDS.find((word) => word === normalizeKey(value)) : undefined;

/** Admits rows of pairs: a range, or one pair in three values. */
function pairsOf(values: readonly CellInput[]): readonly [Options["pairs"], used: number] {
  const [first = null] = values;
  const inRange = Array.isArray(first) || isBlank(first) || first === 0;
  const rows = inRange ? first : [values.slice(0, 3) as CellScalar[]];
  if (!Array.isArray(rows)) return [[], 1];
  return [
    admitRows(CORRELATIONS.shape as RowsShape, rows as CellInput, "correlations", CONTEXT) as Options["pairs"],
    inRange ? 1 : 3,
  ];
}

/** Tells the arguments of the function from the words behind them. */
export function uncertaintyOptions(all: readonly unknown[]): Options {
  const given = all as readonly CellInput[];
  const first = given.findIndex((value) => wordOf(value) !== undefined);
  const options = { raw: first < 0 ? given : given.slice(0, first), coverage: 0.95, pairs: [] as Options["pairs"] };
  for (let place = first; place >= 0 && place < given.length;) {
    const [word, value = null] = [wordOf(given[place]), given[place + 1]];
    if (word === undefined) {
      if (!isBlank(given[place]) && given[place] !== 0)
        throw valueError(
          `arguments: after "coverage" or "correlations" and its value only the other of the two may follow, got ${describeInput(given[place] ?? null)}`,
        );
      place++;
    } else if (word === "coverage") {
      if (Array.isArray(value)) throw valueError(`coverage: expected one value, got ${describeInput(value)}`);
      // Some hosts pass a blank as 0.
      if (!isBlank(value) && value !== 0)
        options.coverage = admitScalar(COVERAGE, value as CellScalar, "coverage", CONTEXT) as number;
      place += 2;
    } else {
      const [pairs, used] = pairsOf(given.slice(place + 1));
      options.pairs = [...options.pairs, ...pairs];
      place += 1 + used;
    }
  }
  return options;
}
