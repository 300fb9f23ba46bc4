/** What the user chose for a hand-over copy, as plain data. */
import type { CopyChoice, HiddenItem, KeptSheet } from "../../workbook/package";
import type { SurveyFacts } from "../../workbook/copy/surveyFacts";

export interface CopyForm {
  readonly project: string;
  readonly sheets: ReadonlySet<string>;
  readonly others: "live" | "frozen";
  /** Ids of hidden items and whether they are kept, where the user said so. */
  readonly hidden: ReadonlyMap<string, boolean>;
}

export const firstForm = ({ proposed }: SurveyFacts, project: string): CopyForm => ({
  project,
  sheets: new Set(proposed),
  others: "live",
  hidden: new Map(),
});

/** A hidden sheet is kept or dropped by its own choice above. */
export const isListed = ({ kind }: HiddenItem): boolean => kind !== "sheet";

export function choiceOf({ sheets, hidden }: CopyForm, survey: SurveyFacts): CopyChoice {
  const ids = (kept: boolean): ReadonlySet<string> =>
    new Set([...hidden].flatMap(([id, keeps]) => (keeps === kept ? [id] : [])));
  return {
    sheets: survey.sheets.map(({ name }) => name).filter((name) => sheets.has(name)),
    keep: ids(true),
    drop: ids(false),
  };
}

/** Sheets that join those chosen, each with why: "Prices is kept too: a validation on Loop needs it." */
export const joiningSentences = (kept: readonly KeptSheet[]): readonly string[] =>
  kept.flatMap(({ name, reasons }) => (reasons.length === 0 ? [] : [`${name} is kept too: ${reasons.join("; ")}.`]));
