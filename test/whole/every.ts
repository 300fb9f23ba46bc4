/** What the catalogue-wide tests go through. */
import { CATALOGUE } from "../../core/catalogue";
import type { CellFunction } from "../../core/kernel/define/cellFunction";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { rawByPlace } from "../../core/kernel/explain/describe";
import type { Out } from "../../core/kernel/call/present";
import type { Fault } from "../../core/kernel/values/fault";
import type { CellInput } from "../../core/kernel/values/cellInput";

/** Id and definition, for test.each. */
export const EVERY = CATALOGUE.map((definition) => [definition.id, definition] as const);

export const run = (definition: CellFunction, raw: readonly unknown[]): Out | Fault =>
  evaluate(compile(definition), raw, CATALOGUE);

/** Raw arguments that are known to work: those of the first check that gives a value, else of a caution. */
export const goodRaw = (definition: CellFunction): readonly CellInput[] | undefined => {
  const check = definition.checks.find(({ expected }) => typeof expected !== "string" || !expected.startsWith("#"));
  const at = check?.inputs ?? definition.cautions[0]?.raisedBy;
  return at === undefined ? undefined : rawByPlace(definition, at);
};
