/** What the year's inputs may be, and the range of the answer. Distributions as POOL.UNCERTAINTY takes them. */
import { computed, gap, heading, type ExtraCell, type Line } from "../layout";
import { MONEY } from "../technicianParts";
import { columnPlace, UNCERTAIN_BLOCK } from "./year";

interface Range {
  readonly key: string;
  readonly label: string;
  readonly distribution: "rectangular" | "triangular" | "normal" | "log-normal";
  readonly low: string | number;
  readonly likely?: string | number;
  readonly high: string | number;
  readonly format: string;
  readonly source: string;
}

/*
 * Where the ranges come from: classes of shelter lie 2 to 3 times apart in ISO/TR 12596; evaporation by other published
 * relations beside Smith, Löf and Jones; sun as the TMY3 files state its uncertainty, less over a year; machines are 0 to
 * 50 % larger than their load; relations of exchangers are within ±10 to 25 %, and fouling comes on top; the price
 * forecasts of NIST's BLCC moved by 5 to 16 % (gas) and 15 % (electricity) in two years; a cost is an estimate before offers.
 */

/** Formulas of the value above, so that a changed input moves its range. */
const times = (key: string, factor: number): string => `=[${key}]*${factor}`;

const WIND = 'IF([yearShelter]="open",0.6,IF([yearShelter]="sheltered",0.1,0.3))';

const RANGES: readonly Range[] = [
  {
    key: "rangeWind",
    label: "shelter",
    distribution: "triangular",
    low: `=${WIND}/2.5`,
    likely: `=${WIND}`,
    high: `=MIN(1,${WIND}*2.5)`,
    format: "0.00",
    source: "classes of ISO/TR 12596",
  },
  {
    key: "rangeEvaporation",
    label: "evaporation factor",
    distribution: "log-normal",
    low: 0.84,
    high: 1.19,
    format: "0.00",
    source: "other published relations",
  },
  {
    key: "rangeSun",
    label: "sun factor",
    distribution: "normal",
    low: 0.9,
    high: 1.1,
    format: "0.00",
    source: "uncertainty in TMY3 files",
  },
  {
    key: "rangeAir",
    label: "air shift",
    distribution: "normal",
    low: -1.5,
    high: 1.5,
    format: "0.0",
    source: "common practice: site, years",
  },
  {
    key: "rangeLoad",
    label: "design load",
    distribution: "triangular",
    low: times("yearCooling", 0.65),
    likely: times("yearCooling", 0.87),
    high: times("yearCooling", 1),
    format: "#,##0",
    source: "common practice: oversized",
  },
  {
    key: "rangeUa",
    label: "exchanger UA",
    distribution: "triangular",
    low: times("yearUA", 0.75),
    likely: times("yearUA", 1),
    high: times("yearUA", 1.1),
    format: "#,##0",
    source: "common practice: ±10 to 25 %",
  },
  {
    key: "rangeGas",
    label: "back up price",
    distribution: "rectangular",
    low: times("yearGas", 0.85),
    high: times("yearGas", 1.15),
    format: "0.00",
    source: "NIST BLCC: ±5 to 16 %",
  },
  {
    key: "rangePower",
    label: "electricity price",
    distribution: "rectangular",
    low: times("yearElectricity", 0.85),
    high: times("yearElectricity", 1.15),
    format: "0.000",
    source: "NIST BLCC: ±15 %",
  },
  {
    key: "rangeCost",
    label: "installed cost",
    distribution: "triangular",
    low: times("yearCost", 0.85),
    likely: times("yearCost", 1),
    high: times("yearCost", 1.4),
    format: "#,##0",
    source: "common practice: estimate",
  },
];

const cell = (content: string | number | undefined, format: string): ExtraCell => ({
  content: content ?? "",
  style: "Input",
  format,
});

const head = (content: string): ExtraCell => ({ content, style: "Heading 3" });

/** The block of ranges: label, distribution, low, likely, high; the source lies beside it. */
export const RANGE_LINES: readonly Line[] = [
  heading("group", "The year: what is uncertain", "Normal, log-normal: low and high are P10 and P90."),
  {
    key: "rangeHead",
    label: "label",
    value: "distribution",
    style: "Heading 3",
    extra: { C: head("low"), D: head("likely"), E: head("high"), F: head("source") },
  },
  ...RANGES.map(({ key, label, distribution, low, likely, high, format, source }): Line => ({
    key,
    label,
    value: distribution,
    style: "Input",
    extra: {
      C: cell(low, format),
      D: cell(likely, format),
      E: cell(high, format),
      F: { content: source, style: "Explanatory Text" },
    },
  })),
];

const UNCERTAINTY = `WARMBACK.POOL.UNCERTAINTY(${UNCERTAIN_BLOCK},[climateHead@A]:[climateDec@G],[rangeHead@A]:[rangeCost@E])`;

/** Rows of the result: a heading, three percentiles, the likely inputs, three chances, then the inputs by weight. */
const [P10, P50, P90, IN_TIME, FIRST_INPUT] = [2, 3, 4, 6, 9];

const at = (row: number, column: string): string =>
  `=INDEX(${UNCERTAINTY},${row},${columnPlace("POOL.UNCERTAINTY", column)})`;

const figure = (key: string, label: string, row: number, column: string, unit: string, format = "#,##0"): Line =>
  computed(key, label, at(row, column), unit, { format, source: "POOL.UNCERTAINTY" });

/** The range of the answer. */
export const UNCERTAIN_RESULTS: readonly Line[] = [
  figure("moneyLow", "Money saved: nine cases of ten reach", P10, "moneySaved", MONEY),
  figure("moneyMiddle", "Money saved: every second case reaches", P50, "moneySaved", MONEY),
  figure("moneyHigh", "Money saved: one case of ten reaches", P90, "moneySaved", MONEY),
  figure("daysLow", "Warm days with recovery: nine cases of ten reach", P10, "warmDays", "day"),
  figure("daysHigh", "Warm days with recovery: one case of ten reaches", P90, "warmDays", "day"),
  figure("paybackMiddle", "Payback in every second case within", P50, "payback", "year", "0.0"),
  figure("paybackChance", "Chance that it pays back in time", IN_TIME, "share", "", "0%"),
  figure("rulesFirst", "Input that rules the saving most", FIRST_INPUT, "statistic", "", "General"),
  figure("rulesSecond", "Next input", FIRST_INPUT + 1, "statistic", "", "General"),
  gap,
];
