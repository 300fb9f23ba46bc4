/** The words of a check and of a decision, each with its own look: what a cell in the style "Check Cell" may say. */

/** From best to worst. A master check says the worst of its checks. */
export const STATES = { good: "OK", unfinished: "NOT CHECKED", doubtful: "LOOK", bad: "FAILS" } as const;

export type CheckState = keyof typeof STATES;

/** A word that a cell shows beside the sign of its state: words of the survey's points and decision among them. */
export const STATE_WORDS: Readonly<Record<CheckState, readonly string[]>> = {
  good: [STATES.good, "go", "GO", "nothing found against it", "agrees"],
  unfinished: [STATES.unfinished, "open", "open conditions", "not checked"],
  doubtful: [STATES.doubtful, "look", "GO WITH CONDITIONS"],
  bad: [STATES.bad, "no-go", "NO-GO", "don't do it as planned", "differs"],
};

/** Text on ground with a contrast of at least 4.5 to 1; the word carries the meaning, the colour repeats it. */
export const STATE_LOOKS: Readonly<Record<CheckState, { readonly color: string; readonly fill: string }>> = {
  good: { color: "#0b4a1f", fill: "#d3ecd9" },
  unfinished: { color: "#3d3d3d", fill: "#e4e4e4" },
  doubtful: { color: "#5c3b00", fill: "#ffe3a3" },
  bad: { color: "#ffffff", fill: "#a3001d" },
};

/** The state that a cell's value means; undefined where it is none of the words. */
export const stateOf = (value: unknown): CheckState | undefined =>
  typeof value === "string"
    ? (Object.keys(STATE_WORDS) as CheckState[]).find((state) => STATE_WORDS[state].some((word) => word === value))
    : undefined;

/** A conditional look: a formula without "=", and the colours while it holds. */
export interface StateCondition {
  readonly formula: string;
  readonly color: string;
  readonly fill: string;
}

/** The conditional looks of cells that say a state; `first` is the address of the first of them. */
export const stateConditions = (first: string): readonly StateCondition[] =>
  (Object.keys(STATE_WORDS) as CheckState[]).map((state) => ({
    formula: `OR(${STATE_WORDS[state].map((word) => `${first}="${word}"`).join(",")})`,
    ...STATE_LOOKS[state],
  }));

/** A cell compared with a word; programs may write the address with dollars and the words in another order. */
const COMPARED = /^\$?[A-Z]{1,3}\$?\d{1,7}\s*=\s*"((?:[^"]|"")*)"$/i;

/** Whether a conditional look is one of those above, as any program may have written it. */
export function isStateCondition(formula: string): boolean {
  const inner = /^\s*OR\((.*)\)\s*$/is.exec(formula)?.[1];
  const words = inner?.match(/[^,"]*"(?:[^"]|"")*"/g)?.map((piece) => COMPARED.exec(piece.trim())?.[1]) ?? [];
  return Object.values(STATE_WORDS).some(
    (of) => of.length === words.length && of.every((word) => words.includes(word)),
  );
}
