/** A cell's call, from the host's arguments to the host's result. */
import type { Compiled } from "../../core/kernel/evaluate";
import { evaluate } from "../../core/kernel/evaluate";
import { explain } from "../../core/kernel/explain";
import { isOutcomeFault } from "../workbook/values";
import { CATALOGUE, COMPILED } from "./compiled";
import { inPlaces } from "./handed";
import { cellResult, outcomeOf } from "./outcome";
import { LOG } from "./session";
import type { ToldCall } from "./surface";

/** The function that the host calls for a cell. It throws `CustomFunctions.Error` and nothing else. */
export const cellCall =
  (compiled: Compiled): ((...handed: readonly unknown[]) => unknown) =>
  (...handed) => {
    const args = inPlaces(compiled, handed);
    const out = evaluate(compiled, args, CATALOGUE);
    LOG.add(compiled.definition.id, args, outcomeOf(out));
    return cellResult(out);
  };

/** Works a call again and tells value and cautions. */
export const tellCall = (id: string, handed: readonly unknown[]): ToldCall => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) return { error: { code: "#NAME?", message: `no function "${id}"` }, cautions: [] };
  const { out, cautions } = explain(compiled, inPlaces(compiled, handed), CATALOGUE, { steps: false });
  const outcome = outcomeOf(out);
  return isOutcomeFault(outcome)
    ? { error: { code: outcome.error, message: outcome.message ?? "" }, cautions }
    : { value: outcome.value, cautions };
};
