/** The cautions of a workbook, combined from those of its sheets. */
import type { RaisedCaution } from "../../../core";
import type { Address } from "../port";
import type { NextSlice } from "../timeSlices";

/** One wording of a caution and the cells that raise it. */
export interface RaisedNote {
  readonly text: string;
  readonly ids: readonly string[];
  readonly cells: readonly Address[];
  /** The same cells by the calculation that raises it: a table of a year is one, in however many cells it shows. */
  readonly calls: readonly (readonly Address[])[];
}

export interface RaisedCode {
  readonly code: string;
  /** It holds for its functions whatever the numbers. */
  readonly standing: boolean;
  readonly notes: readonly RaisedNote[];
}

export interface SeverityGroup {
  readonly severity: string;
  readonly codes: readonly RaisedCode[];
}

/** A cell that uses our functions. */
export interface UsingCell {
  readonly address: Address;
  readonly formula: string;
  readonly ids: readonly string[];
}

export interface FailingCell {
  readonly address: Address;
  readonly error: string;
  /** The full text, if the host kept it or the call gives it again. */
  readonly message?: string;
}

/** What one sheet raises. */
export interface SheetNotes {
  readonly raised: readonly {
    readonly caution: RaisedCaution;
    readonly id: string;
    readonly address: Address;
    /** Equal for equal calls; missing where the call has no outcome. */
    readonly call?: object;
  }[];
  readonly cells: readonly UsingCell[];
  readonly failing: readonly FailingCell[];
  /** Cells with an argument that can't be read: their cautions aren't known. */
  readonly unreadable: readonly Address[];
  /** Cells with a call whose calculation stopped: their cautions aren't known either. */
  readonly uncomputed: readonly Address[];
  /** Cells whose value differs from what their formula gives now. */
  readonly stale: readonly Address[];
}

export interface CautionReport extends Omit<SheetNotes, "raised"> {
  /** The gravest first. */
  readonly severities: readonly SeverityGroup[];
}

/** The severity words of the open safety-sign standards, the gravest first; others come after. */
const SEVERITIES = ["Danger", "Warning", "Caution", "Notice"];

const rank = (severity: string): number => {
  const at = SEVERITIES.indexOf(severity);
  return at < 0 ? SEVERITIES.length : at;
};

interface Wording {
  readonly text: string;
  readonly ids: Set<string>;
  readonly cells: Map<string, Address>;
  readonly calls: Map<object, Map<string, Address>>;
}

const placeKey = ({ sheet, row, column }: Address): string => `${String(row)},${String(column)},${sheet}`;

interface Coded {
  readonly standing: boolean;
  readonly texts: Map<string, Wording>;
}

type Wordings = Map<string, Map<string, Coded>>;

function into<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}

/** All sheets' notes as one report: by severity, then code, then wording, each with its cells. */
export async function report(sheets: readonly SheetNotes[], pause: NextSlice): Promise<CautionReport> {
  const all: Wordings = new Map();
  for (const { caution, id, address, call = address } of sheets.flatMap(({ raised }) => raised)) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const codes = into(all, caution.severity, () => new Map<string, Coded>());
    const standing = caution.standing === true;
    const { texts } = into(codes, caution.code, () => ({ standing, texts: new Map<string, Wording>() }));
    const { text } = caution;
    const wording = into(texts, text, () => ({
      text,
      ids: new Set<string>(),
      cells: new Map<string, Address>(),
      calls: new Map<object, Map<string, Address>>(),
    }));
    wording.ids.add(id);
    const key = placeKey(address);
    // A cell with two calls counts with the first.
    if (!wording.cells.has(key)) into(wording.calls, call, () => new Map<string, Address>()).set(key, address);
    wording.cells.set(key, address);
  }
  return {
    severities: [...all]
      .sort(([a], [b]) => rank(a) - rank(b))
      .map(([severity, codes]) => ({ severity, codes: coded(codes) })),
    cells: sheets.flatMap(({ cells }) => cells),
    failing: sheets.flatMap(({ failing }) => failing),
    unreadable: sheets.flatMap(({ unreadable }) => unreadable),
    uncomputed: sheets.flatMap(({ uncomputed }) => uncomputed),
    stale: sheets.flatMap(({ stale }) => stale),
  };
}

function coded(codes: ReadonlyMap<string, Coded>): readonly RaisedCode[] {
  return [...codes]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([code, { standing, texts }]) => ({
      code,
      standing,
      notes: [...texts.values()].map(({ text, ids, cells, calls }) => ({
        text,
        ids: [...ids],
        cells: [...cells.values()],
        calls: [...calls.values()].map((own) => [...own.values()]),
      })),
    }));
}

/** The part of the report that the numbers raise, or the part that always holds. */
export const codesOf = ({ severities }: CautionReport, standing: boolean): readonly SeverityGroup[] =>
  severities.flatMap(({ severity, codes }) => {
    const some = codes.filter((code) => code.standing === standing);
    return some.length === 0 ? [] : [{ severity, codes: some }];
  });
