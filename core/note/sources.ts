/** All sources of a function. */
import type { CellFunction } from "../kernel/define/cellFunction";
import type { Source, SourceKey } from "../kernel/reference";

const keyOf = (source: Source): SourceKey => (typeof source === "string" ? source : source.key);

/** Source keys of a definition with the use of each, in order of appearance. */
export const sourcesOf = (definition: CellFunction): readonly (readonly [SourceKey, string])[] => {
  const uses = new Map<SourceKey, Set<string>>();
  const use = (source: Source, serves: string): void => {
    const key = keyOf(source);
    uses.set(key, (uses.get(key) ?? new Set()).add(serves));
  };
  for (const source of definition.sources ?? []) use(source, "method");
  for (const { source } of definition.checks) use(source, "check");
  for (const { rule } of definition.cautions) use(rule.source, "caution");
  return [...uses].map(([key, serves]) => [key, [...serves].join(", ")]);
};
