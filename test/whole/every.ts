/** What the catalogue-wide tests go through. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { CATALOGUE } from "../../core/catalogue";
import type { CellFunction } from "../../core/kernel/define/cellFunction";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { rawByPlace } from "../../core/kernel/explain/describe";
import type { Out } from "../../core/kernel/call/present";
import type { Fault } from "../../core/kernel/values/fault";
import type { CellInput } from "../../core/kernel/values/cellInput";

/** Id and definition, for test.each. */
export const EVERY = CATALOGUE.map((definition) => [definition.id, definition] as const);

/** Core files below a folder that match, as paths from the repository's root. */
export const coreFiles = (matches: RegExp, folder = "core"): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return coreFiles(matches, path);
    return matches.test(path) ? [path] : [];
  });

/** Everything that a core file exports. */
export const exportsOf = async (path: string): Promise<Readonly<Record<string, unknown>>> =>
  (await import(/* @vite-ignore */ `../../${path}`)) as Record<string, unknown>;

export const run = (definition: CellFunction, raw: readonly unknown[]): Out | Fault =>
  evaluate(compile(definition), raw, CATALOGUE);

/** Raw arguments that are known to work: those of the first check that gives a value, else of a caution. */
export const goodRaw = (definition: CellFunction): readonly CellInput[] | undefined => {
  const check = definition.checks.find(({ expected }) => typeof expected !== "string" || !expected.startsWith("#"));
  const at = check?.inputs ?? definition.cautions[0]?.raisedBy;
  return at === undefined ? undefined : rawByPlace(definition, at);
};
