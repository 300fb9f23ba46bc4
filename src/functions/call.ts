/** A cell's call, from the host's arguments to the host's result. */
import {
  CATALOGUE,
  type CellInput,
  type Compiled,
  evaluate,
  explain,
  type Fault,
  notAvailable,
  type Out,
  UNFINISHED,
} from "../../core";
import { pending } from "../workbook/pending";
import { isOutcomeFault } from "../workbook/values";
import type { HostCallReport } from "./globals";
import { isValuePreview, placeArguments, slicesOf, type HostSlices } from "./hostArguments";
import { scriptFault } from "./buildHash";
import type { Definitions } from "./notes";
import { cellError, cellResult, outcomeOf } from "./outcome";
import { LOG, NOTES } from "./session";

/** Evaluates a call; one whose slice is over throws `Pending`, and goes on when it is made again. */
function evaluated(
  compiled: Compiled,
  args: readonly CellInput[],
  catalogue: Definitions["CATALOGUE"],
  slices: HostSlices | undefined,
): Out | Fault {
  try {
    return evaluate(compiled, args, catalogue, slices?.isOver);
  } catch (thrown) {
    if (thrown !== UNFINISHED || slices === undefined) throw thrown;
    throw pending(slices.nextTurn);
  }
}

/**
 * The function that the host calls for a cell. It throws `CustomFunctions.Error` and nothing else, but for a host that
 * calculates in slices.
 */
export const cellCall =
  (compiled: Compiled): ((...hostArguments: readonly unknown[]) => unknown) =>
  (...hostArguments) => {
    const args = placeArguments(compiled, hostArguments);
    const answer = ({ CATALOGUE }: Pick<Definitions, "CATALOGUE">): unknown => {
      const out = evaluated(compiled, args, CATALOGUE, slicesOf(hostArguments));
      if (!isValuePreview(hostArguments)) LOG.add(compiled.definition.id, args, outcomeOf(out));
      return cellResult(out);
    };
    if (compiled.definition.topic !== "note") return answer({ CATALOGUE });
    const complete = NOTES.now();
    return complete === undefined ? NOTES.whenAdded().catch(refuse).then(answer) : answer(complete);
  };

function refuse(reason: unknown): never {
  throw cellError(notAvailable(reason instanceof Error ? reason.message : String(reason)));
}

/** Repeats a call and returns its value and cautions. */
export const reportCall = (id: string, hostArguments: readonly unknown[]): HostCallReport => {
  const { CATALOGUE, COMPILED } = NOTES.now() ?? refuse(scriptFault("notes.js", undefined));
  const compiled = COMPILED.get(id);
  if (compiled === undefined) return { error: { code: "#NAME?", message: `no function "${id}"` }, cautions: [] };
  const { out, cautions } = explain(compiled, placeArguments(compiled, hostArguments), CATALOGUE, { steps: false });
  const outcome = outcomeOf(out);
  return isOutcomeFault(outcome)
    ? { error: { code: outcome.code, message: outcome.message ?? "" }, cautions }
    : { value: outcome.value, cautions };
};
