/** The calculation as the reader, the scan and the panel use it. */
import { CATALOGUE } from "../../core/catalogue";
import type { Catalogue } from "../../core/kernel/catalogue";
import { compile, evaluate, type Compiled } from "../../core/kernel/evaluate";
import { explain, type Explanation } from "../../core/kernel/explain";
import { isFault, type Fault } from "../../core/kernel/fault";
import type { CellOut, Out } from "../../core/kernel/present";
import type { CallLog } from "../workbook/log";
import type { CellValue } from "../workbook/port";
import type { CautionEngine } from "../workbook/scan";
import type { CellOutcome, RawValue } from "../workbook/values";

export interface PanelEngine extends CautionEngine {
  readonly catalogue: Catalogue;
  /** Works a call again with its steps; undefined for a function that isn't there. */
  explain(id: string, args: readonly RawValue[]): Explanation | undefined;
}

const cellOf = (cell: CellOut): CellValue => (isFault(cell) ? { error: cell.code, message: cell.message } : cell);

/** A result as the workbook's reader compares it. */
export const outcomeOf = (out: Out | Fault): CellOutcome => {
  if (isFault(out)) return { error: out.code, message: out.message };
  return {
    value: Array.isArray(out)
      ? (out as readonly (readonly CellOut[])[]).map((row) => row.map(cellOf))
      : (out as CellValue),
  };
};

/** An engine over a catalogue; definitions are compiled when first asked for. */
export function panelEngine(log: CallLog, catalogue: Catalogue = CATALOGUE): PanelEngine {
  const definitions = new Map(catalogue.map((definition) => [definition.id, definition]));
  const compiled = new Map<string, Compiled>();
  const ready = (id: string): Compiled | undefined => {
    const known = compiled.get(id);
    const definition = definitions.get(id);
    if (known !== undefined || definition === undefined) return known;
    const made = compile(definition);
    compiled.set(id, made);
    return made;
  };
  return {
    catalogue,
    known: new Set(definitions.keys()),
    log,
    call(id, args) {
      const one = ready(id);
      return one ? outcomeOf(evaluate(one, args, catalogue)) : { error: "#NAME?" };
    },
    cautionsOf(id, args) {
      const one = ready(id);
      return one ? explain(one, args, catalogue, { steps: false }).cautions : [];
    },
    heavy: (id) => definitions.get(id)?.heavy === true,
    explain(id, args) {
      const one = ready(id);
      return one && explain(one, args, catalogue);
    },
  };
}
