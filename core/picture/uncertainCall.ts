/** A call with ranges as a model, its outcomes named and in the cell's units. */
import {
  admit,
  admitClimate,
  CATALOGUE,
  functionModel,
  functionNamed,
  knownRuns,
  OUTCOMES,
  runsFor,
  uncertainRuns,
  uncertaintyOptions,
  uncertainYear,
  type CellMatrix,
  type Compiled,
  type KindName,
} from "../index";
import type { Runs, UncertainModel } from "../uncertainty/study";
import { inUnit, type InUnit } from "./picture";

export interface NamedOutcome extends InUnit {
  readonly name: string;
}

export interface UncertainCall {
  readonly model: UncertainModel;
  readonly outcomes: readonly NamedOutcome[];
  /** What a run is: "year". */
  readonly run: string;
  /** The cell's own runs. */
  cellRuns(): Runs;
}

const NAMES: Readonly<Record<(typeof OUTCOMES)[number], readonly [name: string, kind: KindName]>> = {
  heatTaken: ["heat taken", "heat"],
  warmDays: ["warm days", "days"],
  moneySaved: ["money saved", "money"],
  payback: ["payback", "years"],
};

type YearArgs = Parameters<typeof uncertainYear>;

function yearCall(compiled: Compiled, args: readonly unknown[]): UncertainCall {
  const { values, system } = admit(compiled, args);
  const { inputs, climate, ranges, runs, correlations } = values as unknown as {
    readonly inputs: YearArgs[0];
    readonly climate: CellMatrix;
    readonly ranges: YearArgs[2];
    readonly runs: number;
    readonly correlations: YearArgs[4];
  };
  const model = uncertainYear(inputs, admitClimate(climate, system), ranges, system, correlations);
  return {
    model,
    outcomes: OUTCOMES.map((key) => {
      const [name, kind] = NAMES[key];
      return { name, ...inUnit(kind, system) };
    }),
    run: "year",
    cellRuns: () => uncertainRuns(model, inputs, climate, ranges, runs, system).found,
  };
}

function functionCall(compiled: Compiled, args: readonly unknown[]): UncertainCall {
  const {
    function: name,
    ranges,
    arguments: given,
  } = admit(compiled, args).values as unknown as {
    readonly function: string;
    readonly ranges: YearArgs[2];
    readonly arguments: readonly unknown[];
  };
  const { raw, pairs } = uncertaintyOptions(given);
  const definition = functionNamed(CATALOGUE, name);
  const model = functionModel(definition, ranges, raw, CATALOGUE, pairs);
  const { description } = definition.returns;
  return {
    model,
    outcomes: [{ name: description, unit: model.unit, of: (value) => value }],
    run: "run",
    cellRuns: () =>
      knownRuns(definition.id, [ranges.map((range) => Object.values(range)), raw], {
        model,
        runs: runsFor(definition),
        outcomes: 1,
      }).found,
  };
}

const CALLS: Readonly<Record<string, (compiled: Compiled, args: readonly unknown[]) => UncertainCall>> = {
  "POOL.UNCERTAINTY": yearCall,
  "NOTE.UNCERTAINTY": functionCall,
};

/** The functions whose inputs have ranges. */
export const UNCERTAIN: readonly string[] = Object.keys(CALLS);

/** Throws the fault of a call that is refused. */
export function uncertainCall(compiled: Compiled, args: readonly unknown[]): UncertainCall {
  const make = CALLS[compiled.definition.id];
  if (make === undefined) throw new Error(`${compiled.definition.id} has no ranges`);
  return make(compiled, args);
}
