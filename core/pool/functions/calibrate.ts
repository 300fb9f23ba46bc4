import { quantity, rows, sheet } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, POOL_WATER } from "../../kernel/define/glossary";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { KINDS, fromBase, type KindName } from "../../kernel/values/quantity";
import { valueError } from "../../kernel/values/fault";
import { MIAMI_POOL } from "../data/miami";
import { calibrate, readLabels } from "../learn/calibrate";
import { calibrationLimits, calibrationWeak, calibrationWell } from "../learn/calibrateCautions";
import { poolEstimate } from "../losses/cautions";
import { CLIMATE, YEAR_INPUTS } from "../year/inputs";

/** Limits of bias and variation by the hour. */
const [MOST_BIAS, MOST_VARIATION] = [0.1, 0.3];

/** An invented April day and night by three hours. */
const NIGHT = {
  inputs: MIAMI_POOL,
  climate: Array.from({ length: 24 }, (_, hour) => [
    20 + 5 * Math.sin(((hour - 9) * Math.PI) / 12),
    0.7,
    4,
    Math.max(0, Math.round(800 * Math.sin(((hour - 6) * Math.PI) / 12))),
  ]),
  log: [
    [2160, 26, 16.5],
    [2163, 25.72, 15],
    [2166, 25.4, 16.5],
    [2169, 25.3, 20],
    [2172, 25.75, 23.5],
    [2175, 26.3, 25],
    [2178, 26.3, 23.5],
    [2181, 25.9, 20],
  ],
  labels: [["shelter"]],
  units: "SI",
} as const;

export const poolCalibrate = cellFunction({
  id: "POOL.CALIBRATE",
  topic: "pool",
  memoised: true,
  slow: true,
  summary:
    "Wind share, activity, shade, UA or other labels of POOL.YEAR fitted to a log of the pool, with their errors.",
  keywords: ["calibration", "logger", "tune", "fit", "inverse model", "parameter estimation", "measured pool"],
  details: [
    "Climate: the weather of the log itself, 8,760 hours or the hours from the log's first row on. A typical year is refused: twelve rows, and hours whose air is over 2.5 K (root mean square) off the log's own. With the log's hours alone give mains temperature: its estimate needs a whole year.",
    "Log: time (hours of the year from midnight of 1 January, or dates of the sheet; standard time), water, air, [heat]. Heat is what a meter shows from another heater since the row before. The machine and its exchanger run as in POOL.YEAR, the back-up heater doesn't.",
    "Labels: one to five, each with [lower] and [upper] bound. Usual bounds: shelter 0.02 to 1, activity 1 (Carrier 0.3) to 3, shading and hidden sky 0 to 0.9, others a third to three times the block's value. The water at the start is fitted too, within 1 K.",
    "Bounded least squares (Gauss and Newton, damped, projected). Standard errors count neighbouring errors as related (n (1 - ρ)/(1 + ρ) readings).",
    "Bias and variation: the guideline's NMBE and CV(RMSE) with one parameter, of the water over the air, for a temperature has no share of itself; limits by the hour 10 and 30 %. By the root mean square error 0.5 K is good, 1 K usable.",
  ],
  args: {
    inputs: YEAR_INPUTS,
    climate: CLIMATE,
    log: rows(
      {
        time: quantity("time", "hours of the year, or dates", { from: 0 }),
        water: POOL_WATER,
        air: AIR_TEMPERATURE,
        heat: quantity("heat rate", "heat of another heater since the row before", { from: 0 }).default(0),
      },
      "rows: time, water, air, [heat]",
      { least: 6, most: 8760 },
    ),
    labels: sheet("rows: label, [lower bound], [upper bound]", 60),
  },
  returns: tableResult("fitted labels and errors of the model", {
    label: wordResult("label, or measure"),
    fitted: quantityResult("number", "fitted value, or the measure"),
    given: quantityResult("number", "value in the block, or the limit"),
    standardError: quantityResult("number", "standard error of the fitted value"),
    lower: quantityResult("number", "lower bound"),
    upper: quantityResult("number", "upper bound"),
    unit: wordResult("of the row"),
    finding: wordResult("what the log tells"),
  }),
  facts: { outsideLimits: "yes/no", weak: "word", lossEstimated: "yes/no" },
  sources: ["guideline14"],
  cautions: [
    {
      rule: calibrationLimits,
      raisedBy: { ...NIGHT, log: NIGHT.log.map(([time, water, air], i) => [time, water + (i % 2) * 6, air]) },
    },
    { rule: calibrationWeak, raisedBy: { ...NIGHT, labels: [["shelter"], ["activity"]] } },
    { rule: calibrationWell, raisedBy: NIGHT },
    { rule: poolEstimate, raisedBy: NIGHT },
  ],
  checks: [
    { inputs: NIGHT, expected: { row: "readings", column: "fitted", value: 8 }, tolerance: 0, source: "identity" },
    {
      inputs: NIGHT,
      expected: { row: "variation", column: "given", value: 0.3 },
      tolerance: 0,
      source: "guideline14",
      remark: "limit by the hour",
    },
    {
      inputs: { ...NIGHT, log: NIGHT.log.map(([time, water, air]) => [time, water, air + 6]) },
      expected: "#VALUE!",
      source: "identity",
      remark: "the climate isn't the log's own weather",
    },
  ],
  compute({ inputs, climate, log, labels }, { trace, recordFacts, system }) {
    const wanted = readLabels(labels, inputs, system);
    if (log.length < wanted.length + 3)
      throw valueError(`log: must have at least ${wanted.length + 3} rows for these labels, got ${log.length}`);
    const found = calibrate(inputs, climate, log, wanted, system, trace);
    const { bias, variation } = found.shares ?? {};
    const outside = Math.abs(bias ?? 0) > MOST_BIAS || (variation ?? 0) > MOST_VARIATION;
    const weak = found.labels.filter(({ finding }) => finding !== "found");
    recordFacts({
      outsideLimits: outside,
      weak: weak.map(({ label, finding }) => `${label}: ${finding}`).join("; "),
      lossEstimated: true,
    });
    const shown = (value: number | undefined, kind: KindName) =>
      value === undefined ? NO_VALUE : fromBase(value, KINDS[kind][system]);
    const measure = (label: string, value: number | undefined, kind: KindName, given?: number, finding = "") => ({
      label,
      fitted: shown(value, kind),
      given: shown(given, kind),
      standardError: NO_VALUE,
      lower: NO_VALUE,
      upper: NO_VALUE,
      unit: KINDS[kind][system].text,
      finding,
    });
    const { error } = found;
    return [
      ...found.labels.map(({ label, kind, fitted, given, error: own, low, high, finding }) => ({
        label,
        fitted: shown(fitted, kind),
        given: shown(given, kind),
        standardError: shown(own, kind),
        lower: shown(low, kind),
        upper: shown(high, kind),
        unit: KINDS[kind][system].text,
        finding,
      })),
      measure("water at the start", found.start, "temperature", log[0]?.water),
      measure(
        "root mean square error",
        error,
        "temperature difference",
        1,
        error <= 0.5 ? "good" : error <= 1 ? "usable" : "too large",
      ),
      measure("bias", bias, "number", MOST_BIAS, bias === undefined ? "water as warm as the air" : ""),
      measure("variation", variation, "number", MOST_VARIATION, outside ? "outside" : "within"),
      measure("autocorrelation", found.autocorrelation, "number"),
      measure("readings", log.length, "number"),
      measure("effective readings", found.effective, "number"),
    ];
  },
});
