/** What a survey and a finished copy have for the user, as plain data that one thread hands to another. */
import type { FrozenFormula, KeptSheet } from "../package";
import type { Address } from "../port";
import type { FinishedCopy } from "./handOver";
import type { CopySummary } from "./readMe";
import type { Survey } from "./survey";

/** Many addresses as numbers: the sheet's place in the list, row and column of each. */
export interface PackedAddresses {
  readonly sheets: readonly string[];
  readonly numbers: Uint32Array;
}

export interface SurveyFacts extends Pick<Survey, "sheets" | "proposed" | "differing" | "unreadable"> {
  /** Cells that show an error. */
  readonly failing: readonly Address[];
}

export interface PackedSurvey extends Pick<Survey, "sheets" | "proposed"> {
  readonly failing: PackedAddresses;
  readonly differing: PackedAddresses;
  readonly unreadable: PackedAddresses;
}

/** A list of which the first ones are named. */
interface Counted<T> {
  readonly count: number;
  readonly first: readonly T[];
}

export interface MadeCopy extends Pick<CopySummary, "ours" | "dependent" | "othersFrozen" | "failingBefore"> {
  readonly bytes: Uint8Array;
  readonly failing: number;
  /** Titles of all its sheets. */
  readonly titles: readonly string[];
  readonly kept: readonly KeptSheet[];
  readonly frozen: Counted<FrozenFormula>;
  /** What else was taken away, each a whole sentence. */
  readonly sentences: readonly string[];
}

function packAddresses(addresses: readonly Address[]): PackedAddresses {
  const places = new Map<string, number>();
  const numbers = new Uint32Array(addresses.length * 3);
  addresses.forEach(({ sheet, row, column }, at) => {
    const place = places.get(sheet) ?? places.size;
    places.set(sheet, place);
    numbers.set([place, row, column], at * 3);
  });
  return { sheets: [...places.keys()], numbers };
}

const unpackAddresses = ({ sheets, numbers }: PackedAddresses): readonly Address[] =>
  Array.from({ length: numbers.length / 3 }, (_, at) => ({
    sheet: sheets[numbers[at * 3] ?? 0] ?? "",
    row: numbers[at * 3 + 1] ?? 0,
    column: numbers[at * 3 + 2] ?? 0,
  }));

export const packedSurvey = ({ sheets, proposed, stored, differing, unreadable }: Survey): PackedSurvey => ({
  ...{ sheets, proposed },
  failing: packAddresses(stored.failing),
  differing: packAddresses(differing),
  unreadable: packAddresses(unreadable),
});

export const surveyFacts = ({ sheets, proposed, failing, differing, unreadable }: PackedSurvey): SurveyFacts => ({
  ...{ sheets, proposed },
  failing: unpackAddresses(failing),
  differing: unpackAddresses(differing),
  unreadable: unpackAddresses(unreadable),
});

/** As many cut-off formulas are named. */
const MOST_LISTED = 200;

export function madeCopy({ bytes, summary, report, added }: FinishedCopy): MadeCopy {
  const { ours, dependent, othersFrozen, failingBefore, failing, sheets } = summary;
  return {
    ...{ bytes, ours, dependent, othersFrozen, failingBefore },
    failing: failing.length,
    titles: [...sheets, ...added],
    kept: report.sheets,
    frozen: { count: report.frozen.length, first: report.frozen.slice(0, MOST_LISTED) },
    sentences: report.sentences,
  };
}
