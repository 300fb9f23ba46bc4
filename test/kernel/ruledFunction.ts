/** A function with the arguments, answer, facts and rules that a test names, and the cautions that a call of it raises. */
import { expect } from "vitest";
import type { Args } from "../../core/kernel/define/argument";
import {
  caution,
  type Caution,
  type RaisedCaution,
  type RequiredFacts,
  type Severity,
} from "../../core/kernel/define/caution";
import { cellFunction, type CellFunction } from "../../core/kernel/define/cellFunction";
import { quantityResult, type ResultShape } from "../../core/kernel/define/result";
import { compile } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { explain } from "../../core/kernel/explain/explain";

export interface Made {
  readonly args?: Args;
  readonly returns?: ResultShape;
  readonly answer?: unknown;
  readonly facts?: Readonly<Record<string, unknown>>;
  readonly rules?: readonly Caution<never>[];
}

const made = ({
  args = {},
  returns = quantityResult("number", "a number"),
  answer = 1,
  facts = {},
  rules = [],
}: Made): CellFunction =>
  cellFunction({
    id: "SAMPLE.RULES",
    topic: "sample",
    summary: "Nothing.",
    args,
    returns,
    cautions: rules.map((rule) => ({ rule, raisedBy: {} })) as never,
    checks: [],
    compute: ((_: unknown, { recordFacts }: { recordFacts: (facts: unknown) => void }) => {
      recordFacts(facts);
      return answer;
    }) as never,
  });

/** The cautions of a call: the same with its steps and without. */
export function raisedBy(given: Made, ...raw: readonly unknown[]): readonly RaisedCaution[] {
  const definition = made(given);
  const all = explain(compile(definition), raw, [definition]);
  if (isFault(all.out)) throw new Error(all.out.message);
  expect(explain(compile(definition), raw, [definition], { steps: false }).cautions).toEqual(all.cautions);
  return all.cautions;
}

/** A rule whose text has the facts it needs. */
export const telling = (needs: RequiredFacts, severity: Severity = "Notice", code = "TELLS"): Caution<never> =>
  caution({
    code,
    severity,
    source: "identity",
    description: "Tells its facts.",
    needs,
    when: () => true,
    message: (facts) => JSON.stringify(facts),
  });
