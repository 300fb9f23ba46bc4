/** One test of weather: its values beside what stations show and what no place has. */
import { show, type KindName, type System } from "../../kernel/values/quantity";
import { MONTHS } from "../../numeric/calendar";

const VERDICTS = ["fine", "unlikely", "impossible"] as const;
type Verdict = (typeof VERDICTS)[number] | "not judged";

export interface WeatherFinding {
  readonly check: string;
  readonly where: string;
  readonly found: string;
  readonly expected: string;
  readonly verdict: Verdict;
  readonly meaning: string;
}

type Span = readonly [from: number, to: number];

export interface Test {
  readonly check: string;
  readonly kind: KindName;
  /** In base units, by month or one for the year; no number where it says nothing. */
  readonly values: readonly number[];
  readonly fine: Span;
  /** Beyond it no place is. */
  readonly possible: Span;
  readonly meaning: string;
}

const within = (value: number, [from, to]: Span): boolean => value >= from && value <= to;

const rankOf = (value: number, { fine, possible }: Test): number => {
  if (Number.isNaN(value) || within(value, fine)) return 0;
  return within(value, possible) ? 1 : 2;
};

export function findingOf(test: Test, system: System): WeatherFinding {
  const { check, kind, values, fine, meaning } = test;
  // Four digits of kelvins would move a limit of whole degrees.
  const rounded = (value: number): string => (kind === "temperature" ? value.toFixed(2) : value.toPrecision(4));
  const print = (value: number): string =>
    Number.isFinite(value) ? show(Number(rounded(value)), kind, system) : "sun in the polar night";
  const known = values.filter((value) => !Number.isNaN(value));
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const worst = Math.max(...values.map((value) => rankOf(value, test)));
  const at = values.flatMap((value, month) => (worst > 0 && rankOf(value, test) === worst ? [MONTHS[month]] : []));
  return {
    check,
    where: values.length === 1 || at.length === 0 ? "year" : at.join(", "),
    found: least === most ? print(least) : `${print(least)} to ${print(most)}`,
    expected: `${print(fine[0])} to ${print(fine[1])}`,
    verdict: VERDICTS[worst] ?? "fine",
    meaning: worst > 0 ? meaning : "",
  };
}
