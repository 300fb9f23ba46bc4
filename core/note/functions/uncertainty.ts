import { cellFunction } from "../../kernel/define/cellFunction";
import { gridResult } from "../../kernel/define/result";
import { ascending, rankCorrelation, sampleQuantile, shortestInterval } from "../../numeric/sample";
import { mean, standardDeviation } from "../../numeric/series";
import { rangesAsGiven, refusedRuns } from "../../uncertainty/cautions";
import {
  coverageFactor,
  endsAgree,
  firstOrder,
  leastTrials,
  numericalTolerance,
  scatterOf,
} from "../../uncertainty/firstOrder";
import { RANGES_WITH_FREEDOM } from "../../uncertainty/ranges";
import { knownRuns } from "../../uncertainty/knownRuns";
import { refusedShare } from "../../uncertainty/study";
import { ARGUMENTS, FUNCTION, functionNamed } from "../args";
import { functionModel, runsFor, type FunctionModel } from "../uncertainty";

const CONFIDENCE = 0.95;
/** Digits of an uncertainty that mean something: two at most. */
const DIGITS = 2;

const AREA = {
  function: "POOL.AREA",
  ranges: [
    ["length", "log-normal", 44.251, null, 56.4959],
    ["width", "log-normal", 42.8674, null, 83.9799],
  ],
  arguments: [["rectangle", "", "", "SI"]],
} as const;

const COST = {
  function: "COST.OFHEAT",
  ranges: [
    ["price", "rectangular", 1.2, null, 1.8],
    ["efficiency", "rectangular", 0.7, null, 0.85],
  ],
  arguments: [[100_000, "natural gas", "", ""]],
} as const;

/** The law of propagation beside the runs, and each input's part in it. */
function gumRows(model: FunctionModel, values: readonly number[], [from = 0, to = 0]: readonly number[]) {
  const { inputs, unit } = model;
  const { estimate, uncertainty, freedom, coefficients, contributions } = firstOrder(model);
  const factor = coverageFactor(CONFIDENCE, freedom);
  const expanded = factor * uncertainty;
  const [low, high] = [estimate - expanded, estimate + expanded];
  const tolerance = numericalTolerance(uncertainty, DIGITS);
  const scatter = scatterOf(values, CONFIDENCE);
  return [
    ["GUM estimate", estimate, unit],
    ["GUM standard uncertainty", uncertainty, unit],
    ["effective degrees of freedom", freedom === Infinity ? "infinite" : freedom, ""],
    ["coverage factor", factor, ""],
    ["GUM expanded uncertainty", expanded, unit],
    ["GUM 95 % from", low, unit],
    ["GUM 95 % to", high, unit],
    ["numerical tolerance", tolerance, unit],
    ["scatter of the runs", scatter, unit],
    ["GUM beside the runs", endsAgree(Math.max(Math.abs(low - from), Math.abs(high - to)), tolerance, scatter), ""],
    ["random trials for 95 %", leastTrials(CONFIDENCE), ""],
    ...inputs.flatMap(({ label, unit: own }, place) => [
      [`sensitivity coefficient of ${label}`, coefficients[place] ?? 0, `${unit || 1} per ${own || 1}`],
      [`contribution of ${label}`, contributions[place] ?? 0, unit],
    ]),
  ];
}

export const noteUncertainty = cellFunction({
  id: "NOTE.UNCERTAINTY",
  topic: "note",
  memoised: true,
  summary: "What uncertain arguments make of any function of one value: percentiles, spread, and which of them rule.",
  keywords: ["Monte Carlo", "GUM", "error propagation", "sensitivity", "confidence interval", "tolerance"],
  details: [
    "Low and high: the ends of rectangular and triangular, P10 and P90 of normal and log-normal (a tenth lies beyond each). For a normal of known standard deviation they are the mean ∓ 1.2816 deviations; for a log-normal of known geometric deviation g the median divided and multiplied by g^1.2816. Likely: the peak of triangular; elsewhere the middle, and may be left out.",
    "The label is an argument, such as flow, or a label of its block. Low, likely and high are in the unit of the call, or in a sixth column's. An argument with a range may be left out of the call.",
    "The runs are points of a scrambled Sobol sequence, the same at every call: 2,048, or 256 of a function over 20 µs. Percentiles of 2,048 are good to about 0.5 % of the spread. Ranges are independent of each other.",
    "Below the runs: the first-order law of the GUM at the means of the inputs. A seventh column may give degrees of freedom: a normal is then Student's distribution in the runs, and the coverage factor is Student's for the effective ones.",
    "The GUM interval agrees if both ends lie within the numerical tolerance (half a unit of the second digit of its uncertainty) of those of the runs; the scatter of the runs is twice the standard deviation of the mean over eight parts of them.",
    "Checked on the four examples of JCGM 101: sums, mass calibration, comparison loss, gauge block.",
  ],
  args: { function: FUNCTION, ranges: RANGES_WITH_FREEDOM, arguments: ARGUMENTS },
  returns: gridResult("statistic, value, unit"),
  facts: { refusedShare: "fraction", refusedReason: "word" },
  sources: ["jcgm101"],
  cautions: [
    { rule: rangesAsGiven, raisedBy: AREA },
    {
      rule: refusedRuns,
      raisedBy: {
        ...COST,
        ranges: [["efficiency", "normal", 0.7, null, 0.96]],
        arguments: [[100_000, "natural gas", 1.5]],
      },
    },
  ],
  checks: [
    {
      inputs: AREA,
      expected: { row: "P90", column: "value", value: 4290.25 },
      tolerance: "0.5 %",
      source: "distributionRows",
      remark: "Two log-normal lengths, medians 50 and 60 m, geometric deviations 1.1 and 1.3",
    },
    {
      inputs: COST,
      expected: { row: "mean", column: "value", value: 1.94156 },
      tolerance: "0.1 %",
      source: "distributionRows",
      remark: "1.5 · ln(0.85/0.7)/0.15",
    },
    {
      inputs: COST,
      expected: { row: "P10", column: "value", value: 1.61218 },
      tolerance: "0.5 %",
      source: "distributionRows",
    },
    {
      inputs: {
        ...AREA,
        ranges: [
          ["length", "normal", 9.926951561178286, null, 10.073048438821714, null, 9],
          ["width", "normal", 9.967961210990285, null, 10.032038789009715],
        ],
      },
      expected: { row: "effective degrees of freedom", column: "value", value: 12.8 },
      tolerance: 0.05,
      source: "suncal",
      remark: "Contributions 0.57, with 9 degrees of freedom, and 0.25",
    },
  ],
  compute({ function: name, ranges, arguments: raw }, { catalogue, recordFacts, isSliceOver }) {
    const definition = functionNamed(catalogue, name);
    const model = functionModel(definition, ranges, raw, catalogue);
    const runs = runsFor(definition);
    const { found, likely } = knownRuns(definition.id, [ranges.map((range) => Object.values(range)), raw], {
      model,
      runs,
      outcomes: 1,
      isSliceOver,
    });
    const refused = refusedShare(found, runs);
    recordFacts({ refusedShare: refused, refusedReason: found.fault?.message ?? "" });
    const [values = []] = found.outcomes;
    const sorted = ascending(values);
    const at = (share: number): number => sampleQuantile(sorted, share);
    const ends = [at((1 - CONFIDENCE) / 2), at((1 + CONFIDENCE) / 2)] as const;
    const [from, to] = shortestInterval(sorted, CONFIDENCE);
    const { unit } = model;
    return [
      ["statistic", "value", "unit"],
      ["P10", at(0.1), unit],
      ["P50", at(0.5), unit],
      ["P90", at(0.9), unit],
      ["likely inputs", likely[0] ?? 0, unit],
      ["mean", mean(values), unit],
      ["standard deviation", standardDeviation(values), unit],
      ["95 % from", ends[0], unit],
      ["95 % to", ends[1], unit],
      ["shortest 95 % from", from, unit],
      ["shortest 95 % to", to, unit],
      ["share below 0", values.filter((value) => value < 0).length / values.length, ""],
      ["runs", runs, ""],
      ["left out", refused, ""],
      ...model.inputs.map(({ label }, place) => [
        `rank correlation of ${label}`,
        rankCorrelation(found.inputs[place] ?? [], values),
        "",
      ]),
      ...gumRows(model, values, ends),
    ];
  },
});
