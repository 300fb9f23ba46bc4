import { cellFunction } from "../../kernel/define/cellFunction";
import { gridResult } from "../../kernel/define/result";
import { correlatedFreedom, fewBeyond, notNormalPair, rangesAsGiven, refusedRuns } from "../../uncertainty/cautions";
import { correlatedNames } from "../../uncertainty/correlation";
import { RANGES_WITH_FREEDOM } from "../../uncertainty/ranges";
import { knownRuns } from "../../uncertainty/knownRuns";
import { refusedShare } from "../../uncertainty/study";
import { ARGUMENTS, FUNCTION, functionNamed } from "../args";
import { functionModel, runsFor } from "../uncertainty";
import { uncertaintyOptions } from "../uncertaintyOptions";
import { functionRows } from "../uncertaintyRows";

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

const TOGETHER = ["correlations", "length", "width", 0.6] as const;

/** Voltage over current of the guide's example, as a volume over a flow: V/I in ohms are m³/(m³/h). */
const IMPEDANCE = {
  function: "POOL.TURNOVER",
  ranges: [
    ["volume", "normal", 4.994899035, null, 5.003100965],
    ["flow", "normal", 0.01964882526, null, 0.01967317474],
  ],
  arguments: [["", "", "SI", "correlations", "volume", "flow", -0.36]],
} as const;

export const noteUncertainty = cellFunction({
  id: "NOTE.UNCERTAINTY",
  topic: "note",
  memoised: true,
  summary: "What uncertain arguments make of any function of one value: percentiles, spread, and which of them rule.",
  keywords: ["Monte Carlo", "GUM", "error propagation", "sensitivity", "confidence interval", "tolerance"],
  details: [
    "Low and high: the ends of rectangular and triangular, P10 and P90 of normal and log-normal (a tenth lies beyond each). For a normal of known standard deviation they are the mean ∓ 1.2816 deviations; for a log-normal of known geometric deviation g the median divided and multiplied by g^1.2816. Likely: the peak of triangular; elsewhere the middle, and may be left out.",
    "The label is an argument, such as flow, or a label of its block. Low, likely and high are in the unit of the call, or in a sixth column's. An argument with a range may be left out of the call.",
    "The runs are points of a scrambled Sobol sequence, the same at every call: 2,048, or 256 of a function over 20 µs. Percentiles of 2,048 are good to about 0.5 % of the spread. Ranges are independent of each other unless a correlation is given.",
    'Behind the arguments of the function may follow the word "coverage" and the coverage probability of both intervals and of the coverage factor, 0.5 to 0.9999 (left out: 95 %); and the word "correlations" and rows of label, label, correlation coefficient, or the three of one pair: =WARMBACK.NOTE.UNCERTAINTY("POOL.TURNOVER",A1:G2,"","","SI","coverage",0.99,"correlations","volume","flow",-0.36).',
    "Correlated runs: the normal scores of the inputs are multivariate normal with these coefficients (JCGM 101, 6.4.8); between inputs that aren't normal this is a Gaussian copula. The law: u² = Σ (c u)² + 2 Σ c c r u u over the pairs (JCGM 100, 5.2.2); the contribution of the correlations is the root of what the second sum adds, negative where it takes away. Coefficients that can't be together are refused with the range that the others leave; pairs not given are 0.",
    "Below the runs: the first-order law of the GUM at the means of the inputs. A seventh column may give degrees of freedom: a normal is then Student's distribution in the runs, and the coverage factor is Student's for the effective ones by Welch and Satterthwaite, cut to a whole number (JCGM 100, G.4). Their formula holds for independent inputs: correlated ones count as one contribution with the least degrees of freedom among them.",
    "The GUM interval agrees if both ends lie within the numerical tolerance (half a unit of the second digit of its uncertainty) of those of the runs; the scatter of the runs is twice the standard deviation of the mean over eight parts of them.",
    "Checked on the four examples of JCGM 101: sums, mass calibration, comparison loss, gauge block; and on example H.2 of JCGM 100.",
  ],
  args: {
    function: FUNCTION,
    ranges: RANGES_WITH_FREEDOM,
    arguments: ARGUMENTS.describedAs(
      'its arguments in order; "" is a default; then "coverage", probability; "correlations", rows of label, label, r',
    ),
  },
  returns: gridResult("statistic, value, unit"),
  facts: {
    refusedShare: "fraction",
    refusedReason: "word",
    notNormal: "word",
    correlatedFreedom: "yes/no",
    runsBeyond: "number",
    coverage: "fraction",
  },
  sources: ["jcgm100", "jcgm101"],
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
    { rule: notNormalPair, raisedBy: { ...AREA, arguments: [[...AREA.arguments[0], ...TOGETHER]] } },
    {
      rule: correlatedFreedom,
      raisedBy: { ...IMPEDANCE, ranges: IMPEDANCE.ranges.map((row) => [...row, null, 4]) },
    },
    { rule: fewBeyond, raisedBy: { ...AREA, arguments: [[...AREA.arguments[0], "coverage", 0.999]] } },
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
    ...(
      [
        ["GUM estimate", 254.26],
        ["GUM standard uncertainty", 0.236],
      ] as const
    ).map(([row, value]) => ({
      inputs: IMPEDANCE,
      expected: { row, column: "value", value },
      tolerance: 0.001,
      source: "jcgm100" as const,
      remark:
        "H.2, table H.4: impedance of 4.9990 V (u 0.0032) and 19.661 mA (u 0.0095), r -0.36, as hours of a volume",
    })),
    {
      inputs: {
        ...AREA,
        ranges: [
          ["length", "log-normal", 0.27376613, null, 0.91318819],
          ["width", "log-normal", 15.832706, null, 25.264159],
        ],
        arguments: [[...AREA.arguments[0], ...TOGETHER]],
      },
      expected: { row: "mean", column: "value", value: 11.954087 },
      tolerance: "0.5 %",
      source: "distributionRows",
      remark: "medians 0.5 and 20 m, geometric deviations 1.6 and 1.2, correlation 0.6 of the logarithms",
    },
  ],
  compute({ function: name, ranges, arguments: given }, { catalogue, trace, recordFacts, isSliceOver }) {
    const definition = functionNamed(catalogue, name);
    const { raw, coverage, pairs } = uncertaintyOptions(given);
    const model = functionModel(definition, ranges, raw, catalogue, pairs);
    const runs = runsFor(definition);
    const { found, likely } = knownRuns(
      definition.id,
      [ranges.map((range) => Object.values(range)), raw, [...(model.correlation?.matrix ?? [])]],
      {
        model,
        runs,
        outcomes: 1,
        isSliceOver,
      },
    );
    const refused = refusedShare(found, runs);
    const { inputs, correlation } = model;
    recordFacts({
      refusedShare: refused,
      refusedReason: found.fault?.message ?? "",
      notNormal: correlatedNames(
        ranges,
        correlation,
        ({ distribution, freedom }) => distribution !== "normal" || Boolean(freedom),
      ),
      correlatedFreedom: correlatedNames(inputs, correlation, ({ freedom }) => freedom < Infinity) !== "",
      runsBeyond: (runs * (1 - coverage)) / 2,
      coverage,
    });
    return functionRows(model, likely[0] ?? 0, found, runs, coverage, trace);
  },
});
