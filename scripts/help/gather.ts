/** What a function's example and its published checks show of it: its working, equations, data and sources. */
import {
  CATALOGUE,
  type CellFunction,
  COMPILED,
  exampleArgs,
  explain,
  type Explanation,
  type Raw,
  rawByPlace,
  type Source,
  type Step,
} from "../../core";
import type { AnyEquation, AnyRelation, ExampleArgs, LookupStep, PropertyStep } from "../../core/help";

export type Printed = AnyEquation | AnyRelation;

export interface Worked {
  readonly raw: readonly Raw[];
  readonly told: Explanation;
}

export interface Gathered {
  readonly example: Worked | undefined;
  /** Equations and relations in the order in which example and checks meet them, each once. */
  readonly equations: readonly Printed[];
  readonly lookups: readonly LookupStep[];
  readonly properties: readonly PropertyStep[];
  /** Every source that the function leans on, each once. */
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

const workOut = (definition: CellFunction, at: ExampleArgs): Worked => {
  const compiled = COMPILED.get(definition.id);
  if (compiled === undefined) throw new Error(`${definition.id} is not in the catalogue`);
  const raw = rawByPlace(definition, at);
  return { raw, told: explain(compiled, raw, CATALOGUE) };
};

export const gather = (definition: CellFunction): Gathered => {
  const at = exampleArgs(definition);
  const example = at && workOut(definition, at);
  const others = definition.checks.filter((check) => check.at !== at).map((check) => workOut(definition, check.at));
  const steps = [...(example ? [example] : []), ...others].flatMap(({ told }) => flat(told.steps));
  const equations = once(steps.flatMap(printedIn), ({ form }) => form);
  const lookups = steps.filter((step) => step.type === "lookup");
  const properties = steps.filter((step) => step.type === "property");
  const sources = [
    ...equations.map(({ source }) => source),
    ...lookups.map(({ source }) => source),
    ...properties.map(({ source }) => source),
    ...(definition.sources ?? []),
    ...definition.cautions.map(({ rule }) => rule.source),
    ...definition.checks.map(({ from }) => from),
  ];
  return {
    example,
    equations,
    lookups: once(lookups, ({ table }) => table),
    properties: once(properties, ({ property, substance }) => `${property} of ${substance}`),
    sources: once(sources, sourceKey),
  };
};
