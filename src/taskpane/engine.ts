/** The calculation as the reader, the scan and the panel use it. */
import { type Catalogue, CATALOGUE, COMPILED, EDITION, evaluate, explain } from "../../core";
import { outcomeOf } from "../functions/outcome";
import type { RecordingEngine } from "../workbook/handOver";
import type { CallLog } from "../workbook/log";
import type { CautionEngine } from "../workbook/scan";
import type { RawValue } from "../workbook/values";
import { describedOf } from "./model/described";
import { explainedOf } from "./model/explained";
import type { Explained } from "./runs/job";

export interface PanelEngine extends CautionEngine, RecordingEngine {
  readonly catalogue: Catalogue;
  /** Functions that take long. */
  heavy(id: string): boolean;
  /** Works a call again with its steps; undefined for a function that isn't there. */
  explain(id: string, args: readonly RawValue[]): Explained | undefined;
}

/** An engine over all cell functions that shares definitions and memory with the cells. */
export const panelEngine = (log: CallLog): PanelEngine => ({
  catalogue: CATALOGUE,
  known: new Set(COMPILED.keys()),
  log,
  call(id, args) {
    const compiled = COMPILED.get(id);
    return compiled ? outcomeOf(evaluate(compiled, args, CATALOGUE)) : { error: "#NAME?" };
  },
  cautionsOf(id, args) {
    const compiled = COMPILED.get(id);
    return compiled ? explain(compiled, args, CATALOGUE, { steps: false }).cautions : [];
  },
  heavy: (id) => COMPILED.get(id)?.definition.heavy !== undefined,
  edition: EDITION,
  describe(id, args) {
    const compiled = COMPILED.get(id);
    return compiled && describedOf(explain(compiled, args, CATALOGUE));
  },
  explain(id, args) {
    const compiled = COMPILED.get(id);
    return compiled && explainedOf(explain(compiled, args, CATALOGUE));
  },
});
