/** Collects what a function's example and published checks use: working, equations, data and sources. */
import {
  CATALOGUE,
  type CellFunction,
  COMPILED,
  exampleArgs,
  explain,
  type Explanation,
  type CellInput,
  rawByPlace,
  type Source,
  type Step,
} from "../../core";
import type { AnyEquation, AnyRelation, ExampleArgs, LookupStep, PropertyStep } from "../../core/help";

export type Printed = AnyEquation | AnyRelation;

export interface WorkedExample {
  readonly raw: readonly CellInput[];
  readonly explanation: Explanation;
}

export interface HelpContent {
  readonly example: WorkedExample | undefined;
  /** Equations and relations in the order in which example and checks use them, each once. */
  readonly equations: readonly Printed[];
  readonly lookups: readonly LookupStep[];
  readonly properties: readonly PropertyStep[];
  /** Every source of the function, each once. */
  readonly sources: readonly Source[];
}

const flat = (steps: readonly Step[]): readonly Step[] =>
  steps.flatMap((step) => (step.type === "group" ? flat(step.steps) : [step]));

const once = <T>(items: readonly T[], keyOf: (item: T) => string): readonly T[] =>
  [...new Map(items.map((item) => [keyOf(item), item] as const).reverse()).values()].reverse();

const sourceKey = (source: Source): string => (typeof source === "string" ? source : `${source.key}|${source.where}`);

const printedIn = (step: Step): readonly Printed[] => {
  if (step.type === "equation") return [step.equation];
  return step.type === "relation" ? [step.relation] : [];
};

const workOut = (definition: CellFunction, at: ExampleArgs): WorkedExample => {
  const compiled = COMPILED.get(definition.id);
  if (compiled === undefined) throw new Error(`${definition.id} is not in the catalogue`);
  const raw = rawByPlace(definition, at);
  return { raw, explanation: explain(compiled, raw, CATALOGUE) };
};

export const collectHelp = (definition: CellFunction): HelpContent => {
  const at = exampleArgs(definition);
  const example = at && workOut(definition, at);
  const others = definition.checks
    .filter((check) => check.inputs !== at)
    .map((check) => workOut(definition, check.inputs));
  const steps = [...(example ? [example] : []), ...others].flatMap(({ explanation }) => flat(explanation.steps));
  const equations = once(steps.flatMap(printedIn), ({ form }) => form);
  const lookups = steps.filter((step) => step.type === "lookup");
  const properties = steps.filter((step) => step.type === "property");
  const sources = [
    ...equations.map(({ source }) => source),
    ...lookups.map(({ source }) => source),
    ...properties.map(({ source }) => source),
    ...(definition.sources ?? []),
    ...definition.cautions.map(({ rule }) => rule.source),
    ...definition.checks.map(({ source }) => source),
  ];
  return {
    example,
    equations,
    lookups: once(lookups, ({ table }) => table),
    properties: once(properties, ({ property, substance }) => `${property} of ${substance}`),
    sources: once(sources, sourceKey),
  };
};
