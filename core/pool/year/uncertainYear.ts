/** What recovery comes to in a year of given inputs: for many years, with no run that the answer doesn't need. */
import { admitLabel, labelKey, labelKind } from "../../kernel/call/admitLabel";
import { silent, type Trace } from "../../kernel/define/steps";
import { NO_VALUE } from "../../kernel/define/result";
import { valueError } from "../../kernel/values/fault";
import type { System } from "../../kernel/values/quantity";
import { sumOf } from "../../numeric/series";
import { discountedPayback, simplePayback, yearlyRatio } from "../../cost/equations";
import { correlationOf, type CorrelatedPair } from "../../uncertainty/correlation";
import { uncertainInputs, type UncertainInput, type UncertainRange } from "../../uncertainty/ranges";
import type { UncertainModel } from "../../uncertainty/study";
import { FREEZING } from "../equations";
import type { Climate } from "./climate";
import { warmDays } from "./monthlyTable";
import { repeatingYear } from "./repeat";
import type { PoolYear } from "./results";
import type { BackUp, PoolRun } from "./run";
import { savingOf } from "./saving";
import { setUpYear } from "./setUp";
import { totalOf } from "./sums";
import type { YearSurface } from "./surface";
import { UNCERTAIN_INPUTS, type UncertainEntries } from "./uncertainInputs";
import { uncertainWeather } from "./uncertainWeather";
import { variantOf } from "./year";

/** J, s, money, years. Without prices the saving is NaN; a payback that never comes is infinite. */
export const OUTCOMES = ["heatTaken", "warmDays", "moneySaved", "payback"] as const;

const MONTHS_OF_YEAR = [...Array(12).keys()];

/** The four pools' years: kept for the next year's runs and for where they begin. */
type Kept = Partial<Record<"freeWithout" | "freeWith" | "heldWithout" | "heldWith", PoolYear>>;

/** Time until the saving has paid the cost; NaN without a cost or a saving. */
function paybackYears(inputs: UncertainEntries, saving: number, trace: Trace): number {
  const { installedCost: C, yearlyUpkeep, discountRate: d } = inputs;
  if (C === undefined || Number.isNaN(saving)) return NaN;
  const S = saving - yearlyUpkeep;
  if (S <= 0) return Infinity;
  if (d === 0) return trace.step(simplePayback, { C, S });
  const q = trace.step(yearlyRatio, { e: 0, d });
  const r = C / S;
  return r * d < 1 ? trace.step(discountedPayback, { r, q }) : Infinity;
}

/** Runs a pool where the last one ended, into its arrays. */
function rerun(kept: Kept, name: keyof Kept, run: PoolRun, backUp: BackUp | undefined, guess: number): PoolYear {
  const last = kept[name];
  const year = repeatingYear(variantOf(run, backUp, name.endsWith("With")), last?.end.temperature ?? guess, last);
  kept[name] = year;
  return year;
}

/** The surface with its evaporation, and the convection that follows it, by a factor. */
function evaporating(surface: YearSurface, inputs: UncertainEntries): YearSurface {
  const { evaporationFactor: factor, convectionMethod, lossMethod } = inputs;
  if (factor === 1 || lossMethod !== "parts") return surface;
  const times = (film: Float64Array): Float64Array => film.map((each) => factor * each);
  return {
    ...surface,
    evaporationFilm: times(surface.evaporationFilm),
    airFilm: convectionMethod === "by evaporation" ? times(surface.airFilm) : surface.airFilm,
  };
}

/** Outcomes of one year. */
function outcomesOf(
  inputs: UncertainEntries,
  weatherAt: ReturnType<typeof uncertainWeather>,
  kept: Kept,
  trace: Trace,
): readonly number[] {
  const weather = weatherAt(inputs);
  const { season, run: plain } = setUpYear(inputs, weather);
  const run = { ...plain, surface: evaporating(plain.surface, inputs) };
  if (run.recovery === undefined && run.tank === undefined)
    throw valueError("inputs: the labels rated cooling, rated power and exchanger UA are needed: nothing is recovered");
  const held = inputs.backUpSource !== "none";
  const { setPoint, poolArea } = inputs;
  const mean = Math.max(FREEZING + 1, totalOf(weather.air) / weather.hours);
  const freeWith = rerun(kept, "freeWith", run, undefined, mean);
  const pair = {
    with: held ? rerun(kept, "heldWith", run, run.backUp, setPoint) : freeWith,
    without: held
      ? rerun(kept, "heldWithout", run, run.backUp, setPoint)
      : rerun(kept, "freeWithout", run, undefined, mean),
  };
  const year = { inputs, machine: run.machine, free: held ? { with: freeWith, without: freeWith } : pair, held: pair };
  const money = MONTHS_OF_YEAR.map((month) => savingOf(year, month).money);
  const saving = money.includes(NO_VALUE) ? NaN : sumOf(money as number[], (each) => each);
  return [
    poolArea * totalOf(freeWith.sums.taken) + totalOf(freeWith.sums.toTank),
    sumOf(MONTHS_OF_YEAR, (month) => (season[month] === true ? warmDays(freeWith, setPoint, month) : 0)),
    saving,
    paybackYears(inputs, saving, trace),
  ];
}

/** The year as a calculation with uncertain inputs. */
export interface UncertainYear extends UncertainModel {
  /** The outcomes at values, recorded. */
  trace(values: readonly number[], trace: Trace): readonly number[];
}

/** Values of the uncertain inputs, in the unit of the call, in the block. */
function withValues(
  inputs: UncertainEntries,
  uncertain: readonly UncertainInput[],
  values: readonly number[],
  system: System,
): UncertainEntries {
  const varied: Record<string, unknown> = { ...inputs };
  for (const [place, { label }] of uncertain.entries()) {
    const key = labelKey(UNCERTAIN_INPUTS, label, "ranges");
    varied[key] = admitLabel(UNCERTAIN_INPUTS, key, values[place] ?? 0, `ranges, ${label}`, system, varied);
  }
  return varied as UncertainEntries;
}

/** The year of a block with ranges, in a climate. */
export function uncertainYear(
  inputs: UncertainEntries,
  climate: Climate,
  ranges: readonly UncertainRange[],
  system: System,
  pairs: readonly CorrelatedPair[] = [],
): UncertainYear {
  const uncertain = uncertainInputs(ranges, (label, name) => labelKind(UNCERTAIN_INPUTS, label, name, inputs), system);
  const weatherAt = uncertainWeather(climate);
  const kept: Kept = {};
  const trace = (values: readonly number[], to: Trace): readonly number[] =>
    outcomesOf(withValues(inputs, uncertain, values, system), weatherAt, kept, to);
  return {
    inputs: uncertain,
    correlation: correlationOf(pairs, uncertain),
    trace,
    compute: (values) => trace(values, silent),
  };
}
