/** The year's uncertainty as rows: percentiles, chances, and which inputs rule. */
import { quantityResult, wordResult, NO_VALUE } from "../../kernel/define/result";
import { rankCorrelation } from "../../numeric/sample";
import type { UncertainInput } from "../../uncertainty/ranges";
import { percentilesOf, type Runs } from "../../uncertainty/study";

const NEVER = "never" as const;

const rank = (of: string) => quantityResult("number", `rank correlation of the input with ${of}`, { or: "" });

export const UNCERTAINTY_COLUMNS = {
  statistic: wordResult("percentile, chance, or uncertain input"),
  heatTaken: quantityResult("heat", "heat taken by pool and tank, left to themselves"),
  warmDays: quantityResult("days", "days of the season whose mean reaches the set point, with recovery"),
  moneySaved: quantityResult("money", "saved in a year: back-up heat and electricity"),
  payback: quantityResult("years", "until the savings less upkeep have paid the cost", { or: NEVER }),
  share: quantityResult("fraction", "share of the years"),
  rankHeatTaken: rank("heat taken"),
  rankWarmDays: rank("warm days"),
  rankMoneySaved: rank("money saved"),
  rankPayback: rank("payback"),
} as const;

type Cell = number | typeof NO_VALUE;
type Years = Cell | typeof NEVER;

/** "" where there is none. */
const given = (value: number | undefined): Cell => (value === undefined || Number.isNaN(value) ? NO_VALUE : value);
const years = (value: number | undefined): Years => (value === Infinity ? NEVER : given(value));

const BLANK = {
  heatTaken: NO_VALUE,
  warmDays: NO_VALUE,
  moneySaved: NO_VALUE,
  payback: NO_VALUE as Years,
  share: NO_VALUE as Cell,
  rankHeatTaken: NO_VALUE as Cell,
  rankWarmDays: NO_VALUE as Cell,
  rankMoneySaved: NO_VALUE as Cell,
  rankPayback: NO_VALUE as Cell,
};

const outcomeRow = (statistic: string, [heat, days, money, payback]: readonly number[]) => ({
  ...BLANK,
  statistic,
  heatTaken: given(heat),
  warmDays: given(days),
  moneySaved: given(money),
  payback: years(payback),
});

const shareOf = (values: readonly number[], is: (value: number) => boolean): Cell =>
  values.some(Number.isNaN) ? NO_VALUE : values.filter(is).length / values.length;

/** The share of runs that pay back within a time; "" without a payback. */
export const shareInTime = ({ outcomes }: Runs, within: number): Cell =>
  shareOf(outcomes[3] ?? [], (payback) => payback <= within);

function chanceRows(runs: Runs, within: number) {
  const [, , money = [], payback = []] = runs.outcomes;
  return [
    { ...BLANK, statistic: "pays back within", payback: within, share: shareInTime(runs, within) },
    { ...BLANK, statistic: "never pays back", share: shareOf(payback, (value) => value === Infinity) },
    { ...BLANK, statistic: "saves nothing", share: shareOf(money, (value) => value <= 0) },
  ];
}

/** A row for each input, the one that rules the saving first; without a saving, the heat taken. */
function inputRows(inputs: readonly UncertainInput[], { inputs: values, outcomes }: Runs) {
  const ranks = inputs.map(({ label }, place) => {
    const of = outcomes.map((outcome) =>
      outcome.some(Number.isNaN) ? NaN : rankCorrelation(values[place] ?? [], outcome),
    );
    return { label, of, weight: Math.abs(given(of[2]) || (of[0] ?? 0)) };
  });
  ranks.sort((a, b) => b.weight - a.weight);
  return ranks.map(({ label, of }) => ({
    ...BLANK,
    statistic: label,
    rankHeatTaken: given(of[0]),
    rankWarmDays: given(of[1]),
    rankMoneySaved: given(of[2]),
    rankPayback: given(of[3]),
  }));
}

export function uncertaintyRows(
  inputs: readonly UncertainInput[],
  runs: Runs,
  likely: readonly number[],
  within: number,
) {
  const percentiles = runs.outcomes.map((values) => (values.some(Number.isNaN) ? [] : percentilesOf(values)));
  return [
    ...["P10", "P50", "P90"].map((name, at) =>
      outcomeRow(
        name,
        percentiles.map((each) => each[at] ?? NaN),
      ),
    ),
    outcomeRow("likely inputs", likely),
    ...chanceRows(runs, within),
    ...inputRows(inputs, runs),
  ];
}
