/** The calculation as the reader, the scan and the panel use it. */
import { type Catalogue, CATALOGUE, COMPILED, EDITION, evaluate, explain, type CellInput } from "../../core";
import { outcomeOf } from "../functions/outcome";
import type { RecordingEngine } from "../workbook/copy/recordTypes";
import type { SessionLog } from "../workbook/callLog";
import type { CautionEngine } from "../workbook/scan/scan";
import { callDescription } from "./model/callRecord";
import { explainedOf } from "./model/explanationData";
import type { ExplainedCall } from "./jobs/job";

export interface PanelEngine extends CautionEngine, RecordingEngine {
  readonly catalogue: Catalogue;
  /** Functions that take long. */
  heavy(id: string): boolean;
  /** Repeats a call with its steps; undefined for an unknown function. */
  explain(id: string, args: readonly CellInput[]): ExplainedCall | undefined;
}

/** An engine over all cell functions that shares definitions and memory with the cells. */
export const panelEngine = (log: SessionLog): PanelEngine => ({
  catalogue: CATALOGUE,
  known: new Set(COMPILED.keys()),
  log,
  call(id, args) {
    const compiled = COMPILED.get(id);
    return compiled ? outcomeOf(evaluate(compiled, args, CATALOGUE)) : { code: "#NAME?" };
  },
  cautionsOf(id, args) {
    const compiled = COMPILED.get(id);
    return compiled ? explain(compiled, args, CATALOGUE, { steps: false }).cautions : [];
  },
  heavy: (id) => COMPILED.get(id)?.definition.memoised === true,
  edition: EDITION,
  describe(id, args) {
    const compiled = COMPILED.get(id);
    return compiled && callDescription(explain(compiled, args, CATALOGUE));
  },
  explain(id, args) {
    const compiled = COMPILED.get(id);
    return compiled && explainedOf(explain(compiled, args, CATALOGUE));
  },
});
