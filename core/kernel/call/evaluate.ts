/**
 * Runs cell functions. Takes raw cell values by position and returns a value in the cell's units, or a fault. Definitions
 * are compiled once. A plain call records nothing; `explain` runs the same code with a recorder, then the caution rules.
 */
import { labelOf, type ArgData, type ScalarShape, type Shape } from "../define/argument";
import {
  admitScalar,
  isBlank,
  isReadQuantity,
  placeText,
  matchWord,
  zeroIsImpossible,
  type AdmitContext,
} from "./admit";
import { admitBlock, admitRows, admitSheet, defaultFor, maybeBlank, type ZeroDoubts } from "./admitRange";
import type { Catalogue, CellFunction, Context } from "../define/cellFunction";
import { renderMarks, isFault, valueError, notAvailable, hostError, type Fault } from "../values/fault";
import { namingArguments } from "./culprit";
import { boundedMemo, type Memo } from "./memo";
import { UNFINISHED, type IsSliceOver } from "../define/slice";
import { present, type Out } from "./present";
import { STANDARD_PRESSURE, gaugeZero } from "../define/pressureBasis";
import { show, type System } from "../values/quantity";
import {
  MAX_ARGUMENT_CELLS,
  describeInput,
  normalizeInput,
  refuseErrorText,
  type CellInput,
} from "../values/cellInput";
import { silent, type Trace } from "../define/steps";
import { UNITS, placedArgs, type PlacedArg } from "../define/unitsArgument";

/** A definition, compiled for calls. */
export interface Compiled {
  readonly definition: CellFunction;
  readonly args: readonly PlacedArg[];
  /** Place of `units`; −1 if the function has none. */
  readonly unitsAt: number;
  readonly unitsPlace: string;
  readonly repeats: boolean;
  readonly readings: readonly string[];
  readonly memo?: Memo<Out | Fault>;
}

/** A year of hourly rows is about 53,000 cells. */
const MEMO_BOUNDS = { entries: 64, cells: 2_000_000 };

export const compile = (definition: CellFunction): Compiled => {
  const args = placedArgs(definition);
  const unitsAt = args.findIndex(([, arg]) => arg === UNITS);
  return {
    definition,
    args,
    unitsAt,
    unitsPlace: unitsAt < 0 ? "" : placeText(unitsAt + 1),
    repeats: args.at(-1)?.[1].shape.type === "repeat",
    readings: args.filter(([, arg]) => arg.shape.type === "quantity" && arg.shape.reading).map(([name]) => name),
    ...(definition.memoised ? { memo: boundedMemo<Out | Fault>(MEMO_BOUNDS) } : {}),
  };
};

/** Arguments as admitted, in base units. */
export interface AdmittedCall {
  readonly values: Readonly<Record<string, unknown>>;
  readonly system: System;
  /** Names of the given arguments and, for each block, of its filled labels ("inputs.label"). */
  readonly given: ReadonlySet<string>;
  /** Labels of blocks whose 0 may be a blank cell. */
  readonly doubts: ZeroDoubts;
}

/** Whether the argument `units` is filled in: some hosts pass a blank cell as 0. */
const namesUnits = (wanted: CellInput): boolean => !isBlank(wanted) && wanted !== 0;

const systemOf = (compiled: Compiled, raw: readonly unknown[]): System => {
  if (compiled.unitsAt < 0) return "US";
  const wanted = normalizeInput(raw[compiled.unitsAt], "units");
  if (!namesUnits(wanted)) return "US";
  if (Array.isArray(wanted)) throw valueError(`units: expected "US" or "SI", got ${describeInput(wanted)}`);
  refuseErrorText(wanted as string, "units");
  const word = UNITS.shape.type === "choice" ? matchWord(UNITS.shape, wanted as string) : undefined;
  if (word !== "US" && word !== "SI")
    throw valueError(
      `units: expected "US" or "SI" as the ${compiled.unitsPlace} argument, got ${describeInput(wanted)}`,
    );
  return word;
};

const NO_KEYS: ReadonlySet<string> = new Set();
const NO_LABELS: readonly string[] = [];

/** Which arguments were given, if the caller asks for it. */
interface GivenArguments {
  readonly given: Set<string>;
  readonly zeros: string[];
  readonly leftOut: string[];
  readonly headings: string[];
}

const NO_DOUBTS: ZeroDoubts = { zeros: NO_LABELS, leftOut: NO_LABELS, headings: NO_LABELS };

const missing = (name: string, arg: ArgData): Error =>
  valueError(`${name}: is blank, but it is needed (${arg.description})`);

/** Whether a 0 in an optional argument counts as left out: some hosts pass a blank cell as 0. */
const meansBlank = (arg: ArgData, raw: CellInput, context: AdmitContext): boolean =>
  raw === 0 && arg.presence !== "required" && (!isScalarShape(arg.shape) || zeroIsImpossible(arg, context));

const isScalarShape = ({ type }: Shape): boolean =>
  type !== "block" && type !== "rows" && type !== "sheet" && type !== "repeat";

const admitSingle = (shape: Shape, raw: CellInput, name: string, context: AdmitContext): unknown => {
  if (typeof raw === "object") throw valueError(`${name}: expected one value, got ${describeInput(raw)}`);
  return admitScalar(shape as ScalarShape, raw, name, context);
};

/** Admits a block or rows; adds the filled labels to `givenArguments`. */
const admitRange = (
  arg: ArgData,
  raw: CellInput,
  name: string,
  context: AdmitContext,
  givenArguments: GivenArguments | undefined,
): unknown => {
  const { shape } = arg;
  if (shape.type === "rows") return admitRows(shape, raw, name, context);
  if (shape.type === "sheet") return admitSheet(raw, name);
  if (shape.type !== "block") return raw;
  const { values, given, doubts } = admitBlock(shape, raw, name, context);
  if (givenArguments) {
    for (const label of given) givenArguments.given.add(`${name}.${label}`);
    givenArguments.zeros.push(...doubts.zeros.map(labelOf));
    givenArguments.leftOut.push(...doubts.leftOut.map(labelOf));
    givenArguments.headings.push(...doubts.headings);
  }
  return values;
};

const mostCellsOf = ({ shape }: ArgData): number => (shape.type === "sheet" ? shape.mostCells : MAX_ARGUMENT_CELLS);

/** Converts readings to absolute pressures, by their own text or by the argument `basis`. */
const turnReadings = (compiled: Compiled, values: Record<string, unknown>, system: System): void => {
  for (const name of compiled.readings) {
    const value = values[name];
    if (value === undefined) continue;
    const own = isReadQuantity(value) ? value.basis : undefined;
    const basis = values["basis"];
    const zero =
      own === "absolute" ? 0 : own === "gauge" && basis === "absolute" ? STANDARD_PRESSURE : gaugeZero(basis);
    const absolute = (isReadQuantity(value) ? value.value : (value as number)) + zero;
    if (!(absolute > 0))
      throw valueError(
        `${name}: must be above ${show(-zero, "pressure", system)} (vacuum), got ${show(absolute - zero, "pressure", system)}`,
      );
    values[name] = absolute;
  }
};

const refuseSurplus = (compiled: Compiled, raw: readonly unknown[]): void => {
  if (compiled.repeats) return;
  for (let place = compiled.args.length; place < raw.length; place++) {
    const surplus = normalizeInput(raw[place], `${compiled.definition.id}, ${placeText(place + 1)} argument`);
    if (!isBlank(surplus))
      throw valueError(
        `${compiled.definition.id}: takes at most ${compiled.args.length} arguments, got ${describeInput(surplus)} as the ${placeText(place + 1)}`,
      );
  }
};

/** Admits all arguments of a call; throws the fault of the first invalid one. */
export const admit = (compiled: Compiled, raw: readonly unknown[], whole = false): AdmittedCall => {
  const system = systemOf(compiled, raw);
  const values: Record<string, unknown> = {};
  const context: AdmitContext = { system, unitsPlace: compiled.unitsPlace, before: values };
  const givenArguments: GivenArguments | undefined = whole
    ? { given: new Set(), zeros: [], leftOut: [], headings: [] }
    : undefined;
  for (let place = 0; place < compiled.args.length; place++) {
    const [name, arg] = compiled.args[place] as PlacedArg;
    if (place === compiled.unitsAt) {
      if (givenArguments && namesUnits(normalizeInput(raw[place], name))) givenArguments.given.add(name);
      continue;
    }
    if (arg.shape.type === "repeat") {
      values[name] = raw.slice(place).map((each) => normalizeInput(each, name));
      continue;
    }
    const value = raw[place];
    const cleared = typeof value === "number" ? value : normalizeInput(value, name, mostCellsOf(arg));
    if (cleared === null || cleared === "" || meansBlank(arg, cleared, context)) {
      if (cleared === 0 && arg.shape.type === "quantity") givenArguments?.leftOut.push(name);
      values[name] = defaultFor(arg, () => missing(name, arg), values);
      continue;
    }
    values[name] = isScalarShape(arg.shape)
      ? admitSingle(arg.shape, cleared, name, context)
      : admitRange(arg, cleared, name, context, givenArguments);
    givenArguments?.given.add(name);
    if (maybeBlank(arg, cleared)) givenArguments?.zeros.push(name);
  }
  if (raw.length > compiled.args.length) refuseSurplus(compiled, raw);
  if (compiled.readings.length > 0) turnReadings(compiled, values, system);
  return { values, system, given: givenArguments?.given ?? NO_KEYS, doubts: givenArguments ?? NO_DOUBTS };
};

/** Turns whatever a calculation threw into a fault with its message in the call's units. */
export const asFault = (thrown: unknown, system: System): Fault => {
  if (isFault(thrown)) {
    const message = renderMarks(thrown.message, system);
    return message === thrown.message ? thrown : hostError(thrown.code, message);
  }
  const says = thrown instanceof Error ? thrown.message : String(thrown);
  return notAvailable(`can't be computed for these inputs: ${says}`);
};

const ignore = (): void => undefined;

/** The outcome of a run. */
export interface Run {
  readonly call: AdmittedCall;
  readonly result: unknown;
  readonly out: Out;
}

/** Runs an admitted call on a trace; throws faults. */
export const runAdmitted = (
  compiled: Compiled,
  call: AdmittedCall,
  catalogue: Catalogue,
  trace: Trace,
  recordFacts: Context["recordFacts"],
  isSliceOver?: IsSliceOver,
): Run => {
  const { definition } = compiled;
  const context = { trace, step: trace.step, recordFacts, system: call.system, catalogue, isSliceOver };
  let result: unknown;
  try {
    result = definition.compute(call.values, context);
  } catch (thrown) {
    throw namingArguments(thrown, definition, call.values);
  }
  const out = present(definition.returns, result, { system: call.system, basis: call.values["basis"] });
  return { call, result, out };
};

const compute = (
  compiled: Compiled,
  raw: readonly unknown[],
  catalogue: Catalogue,
  isSliceOver: IsSliceOver | undefined,
): Out | Fault => {
  let system: System = "US";
  try {
    const call = admit(compiled, raw);
    system = call.system;
    return runAdmitted(compiled, call, catalogue, silent, ignore, isSliceOver).out;
  } catch (thrown) {
    if (thrown === UNFINISHED) throw thrown;
    return asFault(thrown, system);
  }
};

/**
 * Evaluates a call: the cell's value, or a fault as a value. Throws nothing but `UNFINISHED`, and that only if the caller
 * says when a slice is over.
 */
export const evaluate = (
  compiled: Compiled,
  raw: readonly unknown[],
  catalogue: Catalogue,
  isSliceOver?: IsSliceOver,
): Out | Fault =>
  compiled.memo
    ? compiled.memo.getOrCompute(compiled.definition.id, raw, () => compute(compiled, raw, catalogue, isSliceOver))
    : compute(compiled, raw, catalogue, isSliceOver);
