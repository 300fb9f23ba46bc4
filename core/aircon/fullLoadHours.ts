/** Equivalent full-load cooling hours of a year from its monthly mean temperatures. */
import { DAYS } from "../numeric/calendar";
import { silent, type Trace } from "../kernel/define/steps";
import { daySpread, fullLoadTime, meanExcess, meanLoad } from "./climate";

export interface MonthOfLoad {
  /** Mean temperature of the month, K. */
  readonly mean: number;
  /** Mean share of the full load, 0 to 1. */
  readonly load: number;
  /** Equivalent full-load time, s. */
  readonly time: number;
}

export interface LoadModel {
  /** Outdoor temperature at and below which there is no cooling, K. */
  readonly balance: number;
  /** Outdoor temperature at and above which the machine is fully loaded, K. */
  readonly design: number;
  /** Standard deviation of the monthly means, K. */
  readonly yearlySpread: number;
}

export const monthOfLoad = (mean: number, days: number, model: LoadModel, trace: Trace = silent): MonthOfLoad => {
  const s = trace.step(daySpread, { T: mean, sigma: model.yearlySpread, N: days });
  const Eb = trace.step(meanExcess, { T: mean, Tb: model.balance, s });
  const Ed = trace.step(meanExcess, { T: mean, Tb: model.design, s });
  const load = trace.step(meanLoad, { Eb, Ed, Td: model.design, Tb: model.balance });
  return { mean, load, time: trace.step(fullLoadTime, { N: days, L: load }) };
};

/** Twelve months, January first; the warmest one is recorded in full. */
export const yearOfLoad = (means: readonly number[], model: LoadModel, trace: Trace = silent): MonthOfLoad[] => {
  const months = means.map((mean, place) => monthOfLoad(mean, DAYS[place] ?? 30, model));
  if (trace.on) {
    const warmest = means.indexOf(Math.max(...means));
    trace.within(`The warmest month (month ${warmest + 1})`, () =>
      monthOfLoad(means[warmest] ?? model.balance, DAYS[warmest] ?? 30, model, trace),
    );
    trace.series({
      title: "All months",
      of: "equivalent full-load time",
      kind: "time",
      total: "sum",
      values: months.map(({ time }) => time),
    });
  }
  return months;
};
