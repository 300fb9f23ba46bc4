/** Explains a call: its arguments, its value or fault, its steps and the cautions it raises. */
import { labelOf, type ArgData } from "../define/argument";
import { isBlank, kindOf } from "../call/admit";
import type { Catalogue, CellFunction, Context } from "../define/cellFunction";
import { SEVERITIES, type Caution, type RaisedCaution, type ShowQuantity } from "../define/caution";
import { admit, asFault, runAdmitted, type AdmittedCall, type Compiled } from "../call/evaluate";
import { isFault, type Fault } from "../values/fault";
import type { Out } from "../call/present";
import { KINDS, fromBase, readableNumber, type KindName, type System, showBriefly } from "../values/quantity";
import { recorder, silent, type Step } from "../define/steps";
import { normalizeInput, describeInput } from "../values/cellInput";
import { readableUnit } from "./readable";
import { besides, unusual } from "./unusual";
import { zeroOrBlank } from "./zeroOrBlank";

/** An argument as a reader sees it. */
export interface ExplainedArg {
  readonly label: string;
  readonly description: string;
  readonly value: string | number | boolean;
  readonly unit: string;
  /** False if it is the default. */
  readonly given: boolean;
  /** Of a single number. */
  readonly kind?: KindName;
}

export interface Explanation {
  readonly definition: CellFunction;
  readonly system: System;
  readonly args: readonly ExplainedArg[];
  readonly out: Out | Fault;
  readonly steps: readonly Step[];
  readonly cautions: readonly RaisedCaution[];
}

const scalarKind = (arg: ArgData, before: Readonly<Record<string, unknown>>): KindName | undefined => {
  const shape = arg.shape.type === "either" ? arg.shape.quantity : arg.shape;
  if (shape.type === "several") return shape.kind;
  return shape.type === "quantity" ? kindOf(shape.kind, before) : undefined;
};

/** A pressure that the runner leaves as the gauge shows it. */
const isGauge = ({ shape, description }: ArgData): boolean =>
  shape.type === "quantity" && shape.reading !== true && /\bgauge\b/.test(description);

const explainScalar = (
  label: string,
  arg: ArgData,
  value: unknown,
  given: boolean,
  before: Readonly<Record<string, unknown>>,
  system: System,
): ExplainedArg => {
  const kind = scalarKind(arg, before);
  const base = { label, description: arg.description, given };
  if (value === undefined) return { ...base, value: "", unit: "" };
  if (typeof value === "number" && kind !== undefined) {
    const unit = KINDS[kind][system];
    const shown = Number(fromBase(value, unit).toPrecision(12));
    const basis = isGauge(arg) ? "gauge" : "absolute";
    return {
      ...base,
      kind,
      value: shown,
      unit: readableUnit(shown, kind, system, { basis, description: base.description }),
    };
  }
  if (Array.isArray(value) && kind !== undefined) {
    const unit = KINDS[kind][system];
    const texts = (value as number[]).map((each) => readableNumber(fromBase(each, unit)));
    return { ...base, value: texts.join("; "), unit: unit.text };
  }
  if (Array.isArray(value)) return { ...base, value: counted(value.length, "row"), unit: "" };
  return { ...base, value: typeof value === "boolean" ? value : String(value), unit: "" };
};

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

/** A pressure reading is shown as the call uses it: absolute. */
const explainArg = (compiled: Compiled, call: AdmittedCall, name: string, arg: ArgData): readonly ExplainedArg[] => {
  const { values, system, given } = call;
  const value = values[name];
  const { shape } = arg;
  if (name === "units")
    return [{ label: name, description: arg.description, value: system, unit: "", given: given.has(name) }];
  if (shape.type === "block" && value !== undefined)
    return Object.entries(shape.entries).map(([key, inner]) => {
      const inside = value as Readonly<Record<string, unknown>>;
      return explainScalar(labelOf(key), inner, inside[key], given.has(`${name}.${key}`), inside, system);
    });
  if (shape.type === "repeat") {
    const count = (value as readonly unknown[]).length;
    return [
      {
        label: labelOf(name),
        description: arg.description,
        value: counted(count, "argument"),
        unit: "",
        given: count > 0,
      },
    ];
  }
  const label = compiled.readings.includes(name) ? `${labelOf(name)}, absolute` : labelOf(name);
  return [explainScalar(label, arg, value, given.has(name), values, system)];
};

/** The facts that cautions read: arguments, a block's entries, results, and what the calculation recorded. */
const factsOf = (
  definition: CellFunction,
  call: AdmittedCall,
  result: unknown,
  recorded: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> => {
  const blocks = Object.entries(definition.args)
    .filter(([, arg]) => arg.shape.type === "block")
    .map(([name]) => call.values[name] as Readonly<Record<string, unknown>>);
  const { type } = definition.returns;
  const results =
    type === "list" || type === "row"
      ? (result as Readonly<Record<string, unknown>>)
      : type === "quantity" || type === "word"
        ? { answer: result }
        : {};
  return Object.assign({}, ...blocks, call.values, results, recorded) as Readonly<Record<string, unknown>>;
};

const known = (value: unknown): boolean =>
  value !== undefined && value !== "" && !isFault(value) && !(typeof value === "number" && !Number.isFinite(value));

const raised = (
  rule: Caution<never>,
  facts: Readonly<Record<string, unknown>>,
  showIn: ShowQuantity,
): RaisedCaution | undefined => {
  if (!Object.keys(rule.needs).every((need) => known(facts[need]))) return undefined;
  const asked = rule as unknown as Caution<unknown>;
  if (!asked.when(facts)) return undefined;
  const { code, severity, standing } = rule;
  return { code, severity, text: asked.message(facts, showIn), ...(standing && { standing }) };
};

const bySeverity = (a: RaisedCaution, b: RaisedCaution): number =>
  SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity);

/** The cautions that a finished call raises, most severe first. */
const raise = (
  compiled: Compiled,
  call: AdmittedCall,
  result: unknown,
  recorded: Readonly<Record<string, unknown>>,
): readonly RaisedCaution[] => {
  const { definition } = compiled;
  const facts = factsOf(definition, call, result, recorded);
  const showIn: ShowQuantity = (value, kind) => showBriefly(value, kind, call.system);
  const rules = definition.cautions.flatMap(({ rule }) => raised(rule, facts, showIn) ?? []);
  return [...rules, ...zeroOrBlank(call), ...besides(rules, unusual(call, compiled.args, call.values))].sort(
    bySeverity,
  );
};

/** The raw arguments of a refused call. */
const rawArgs = (compiled: Compiled, raw: readonly unknown[]): readonly ExplainedArg[] =>
  compiled.args.map(([name, arg], place) => {
    const cleared = ((): ReturnType<typeof normalizeInput> => {
      try {
        return normalizeInput(raw[place], name);
      } catch {
        return null;
      }
    })();
    const value = isBlank(cleared)
      ? ""
      : Array.isArray(cleared)
        ? describeInput(cleared)
        : (cleared as string | number);
    return { label: labelOf(name), description: arg.description, value, unit: "", given: !isBlank(cleared) };
  });

interface Wanted {
  /** Record the steps too; cautions alone are cheaper without. */
  readonly steps: boolean;
}

/** Runs a call again and explains it in full. Never throws. */
export const explain = (
  compiled: Compiled,
  raw: readonly unknown[],
  catalogue: Catalogue,
  wanted: Wanted = { steps: true },
): Explanation => {
  const { definition } = compiled;
  const recording = wanted.steps ? recorder() : { trace: silent, steps: [] };
  let call: AdmittedCall | undefined;
  try {
    const admitted = admit(compiled, raw, true);
    call = admitted;
    const recorded: Record<string, unknown> = {};
    const recordFacts: Context["recordFacts"] = (facts) =>
      void Object.assign(recorded, typeof facts === "function" ? facts() : facts);
    const run = runAdmitted(compiled, admitted, catalogue, recording.trace, recordFacts);
    const args = wanted.steps ? compiled.args.flatMap(([name, arg]) => explainArg(compiled, admitted, name, arg)) : [];
    const cautions = raise(compiled, admitted, run.result, recorded);
    return { definition, system: admitted.system, args, out: run.out, steps: recording.steps, cautions };
  } catch (thrown) {
    const system = call?.system ?? "US";
    const admitted = call;
    const args = admitted
      ? compiled.args.flatMap(([name, arg]) => explainArg(compiled, admitted, name, arg))
      : rawArgs(compiled, raw);
    return { definition, system, args, out: asFault(thrown, system), steps: recording.steps, cautions: [] };
  }
};
