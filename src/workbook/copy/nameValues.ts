/** The values of names whose formulas call us: the copy keeps them as constants. */
import { callsUs } from "../package";
import { resumeWhenReady } from "../pending";
import type { CellValue } from "../port";
import { prepare, wantedBy, type Engine } from "../reader/prepare";
import { readOne } from "../reader/read";
import { resolveFormulaReferences } from "../reader/resolve";
import { isMatrix, valueOf } from "../values";
import type { CopyWork } from "./copyWork";
import type { StoredBook } from "./storedBook";
import { typedFormula } from "./typedFormula";

/** By the name in lower case; names whose call is only a part of their formula, or fills several cells, are missing. */
export async function nameValues(
  { facts, reader }: StoredBook,
  engine: Engine,
  { signal }: CopyWork,
): Promise<ReadonlyMap<string, CellValue>> {
  const found = new Map<string, CellValue>();
  const resolved = resolveFormulaReferences(reader);
  for (const { name, sheet = facts.sheets[0]?.name ?? "", formula } of facts.names) {
    if (!callsUs(formula)) continue;
    const cell = { address: { sheet, row: 0, column: 0 }, formula: typedFormula(formula), value: null };
    const prepared = prepare(cell, engine.known);
    await resolved.load(wantedBy(prepared));
    const { calls } = await resumeWhenReady(() => readOne(prepared, resolved, engine), { signal });
    const outcome = calls.find(({ whole }) => whole)?.outcome;
    const value = outcome && valueOf(outcome);
    if (value !== undefined && !isMatrix(value)) found.set(name.toLowerCase(), value);
  }
  return found;
}
