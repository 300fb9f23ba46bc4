/**
 * Steps: how a result shows its working. A plain cell uses `silent`, which computes and records nothing; NOTE.WORKING and
 * the panel use a recorder. Solver loops call plain code and record one pass at their answer.
 */
import type { AnyEquation, AnyRelation, Equation, Relation, SymbolValues, Symbols } from "./equation";
import type { KindName } from "../values/quantity";
import type { Source } from "../reference";

/** A number with its kind, or a word. */
export type StepValue = { readonly value: number; readonly kind: KindName } | string;

export interface EquationStep {
  readonly type: "equation";
  readonly equation: AnyEquation;
  readonly x: Readonly<Record<string, number>>;
  readonly value: number;
  /** Which of several like things it belongs to. */
  readonly of?: string;
}

export interface RelationStep {
  readonly type: "relation";
  readonly relation: AnyRelation;
  readonly x: Readonly<Record<string, number>>;
  readonly left: number;
  readonly right: number;
  readonly of?: string;
}

/** A table look-up. */
export interface LookupStep {
  readonly type: "lookup";
  readonly table: string;
  readonly row: string;
  readonly interpolation?: string;
  readonly result: StepValue;
  readonly source: Source;
}

/** A property of a substance, not expanded. */
export interface PropertyStep {
  readonly type: "property";
  readonly substance: string;
  readonly property: string;
  readonly inputs: Readonly<Record<string, StepValue>>;
  readonly result: StepValue;
  readonly uncertainty?: string;
  readonly source: Source;
}

/** A solver's answer. */
export interface SolutionStep {
  readonly type: "solution";
  readonly unknown: string;
  readonly kind: KindName;
  readonly solves: string;
  readonly bracket: readonly [number, number];
  readonly iterations: number;
  readonly residual: number;
  readonly answer: number;
}

/** How many values combine: amounts add up, states and rates have a mean, resistances in series a harmonic mean. */
export type Total = "sum" | "mean" | "harmonic mean";

/** Many values of one kind (slices, hours), shown by their total. */
export interface SeriesStep {
  readonly type: "series";
  readonly title: string;
  readonly of: string;
  readonly kind: KindName;
  readonly total: Total;
  readonly values: ArrayLike<number>;
}

/** A sentence between the steps. */
export interface RemarkStep {
  readonly type: "remark";
  readonly text: string;
}

export interface GroupStep {
  readonly type: "group";
  readonly title: string;
  readonly steps: readonly Step[];
}

export type Step =
  EquationStep | RelationStep | LookupStep | PropertyStep | SolutionStep | SeriesStep | RemarkStep | GroupStep;

type Detail<S extends Step> = Omit<S, "type">;

/** Records how a calculation reaches its result. */
export interface Trace {
  /** False on the silent trace: skip work that only the record needs. */
  readonly on: boolean;
  /** Computes an equation and records it; `of` says which of several like things it belongs to. */
  step<S extends Symbols>(equation: Equation<S>, x: SymbolValues<S>, of?: string): number;
  /** Records a relation at its answer. */
  relation<S extends Symbols>(relation: Relation<S>, x: SymbolValues<S>, of?: string): void;
  lookup(detail: Detail<LookupStep>): void;
  property(detail: Detail<PropertyStep>): void;
  solution(detail: Detail<SolutionStep>): void;
  series(detail: Detail<SeriesStep>): void;
  remark(says: string): void;
  /** Groups what `work` records below a title. */
  within<T>(title: string, work: () => T): T;
}

const nothing = (): void => undefined;

/** Computes, records nothing. */
export const silent: Trace = {
  on: false,
  step: (equation, x) => equation.code(x),
  relation: nothing,
  lookup: nothing,
  property: nothing,
  solution: nothing,
  series: nothing,
  remark: nothing,
  within: (_title, work) => work(),
};

const whose = (of: string | undefined): { readonly of?: string } => (of === undefined ? {} : { of });

/** The same trace, with its equations and relations recorded for one of several like things. */
export const traceFor = (of: string, trace: Trace): Trace =>
  trace.on
    ? {
        ...trace,
        step: (equation, x) => trace.step(equation, x, of),
        relation: (relation, x) => trace.relation(relation, x, of),
      }
    : trace;

/** A trace that keeps the tree of steps in `steps`. */
export const recorder = (): { readonly trace: Trace; readonly steps: readonly Step[] } => {
  const steps: Step[] = [];
  let open = steps;
  const trace: Trace = {
    on: true,
    step: (equation, x, of) => {
      const value = equation.code(x);
      open.push({ type: "equation", equation: equation, x: { ...x }, value, ...whose(of) });
      return value;
    },
    relation: (relation, x, of) => {
      const left = relation.left(x);
      const right = relation.right(x);
      open.push({ type: "relation", relation: relation, x: { ...x }, left, right, ...whose(of) });
    },
    lookup: (detail) => void open.push({ type: "lookup", ...detail }),
    property: (detail) => void open.push({ type: "property", ...detail }),
    solution: (detail) => void open.push({ type: "solution", ...detail }),
    series: (detail) => void open.push({ type: "series", ...detail, values: Array.from(detail.values) }),
    remark: (text) => void open.push({ type: "remark", text }),
    within: (title, work) => {
      const outer = open;
      const inner: Step[] = [];
      open = inner;
      try {
        return work();
      } finally {
        open = outer;
        if (inner.length > 0) outer.push({ type: "group", title, steps: inner });
      }
    },
  };
  return { trace, steps };
};
