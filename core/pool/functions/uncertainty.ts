import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { renderMarks, valueError } from "../../kernel/values/fault";
import { tableResult } from "../../kernel/define/result";
import { mayNotPay, notNormalPair, rangesAsGiven, refusedRuns } from "../../uncertainty/cautions";
import { CORRELATIONS, correlatedNames } from "../../uncertainty/correlation";
import { RANGES } from "../../uncertainty/ranges";
import { likelyValues, refusedShare } from "../../uncertainty/study";
import { evaporationMethodSpread } from "../evaporation/cautions";
import { poolEstimate } from "../losses/cautions";
import { MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../data/miami";
import { madeHours } from "../year/cautions";
import { admitClimate } from "../year/climate";
import { CLIMATE } from "../year/inputs";
import { UNCERTAIN_INPUTS } from "../year/uncertainInputs";
import { UNCERTAINTY_COLUMNS, shareInTime, uncertaintyRows } from "../year/uncertainTable";
import { traceUncertainty } from "../year/uncertainWorking";
import { uncertainRuns } from "../year/uncertainRuns";
import { uncertainYear } from "../year/uncertainYear";

/** More years keep a cell too long: the panel runs them. */
const MOST_RUNS = 256;

const MONEY = { backUpSource: "natural gas", backUpPrice: 0.05, electricityPrice: 0.15, installedCost: 4000 } as const;

const at = (
  inputs: Readonly<Record<string, string | number>>,
  ranges: readonly (readonly (string | number | null)[])[],
) =>
  ({
    inputs: { ...MIAMI_POOL, ...MIAMI_MACHINE, designLoad: 22, ...inputs },
    climate: MIAMI_MONTHS,
    ranges,
    runs: 8,
    units: "SI",
  }) as const;

const WIND = ["wind at water", "log-normal", 0.5, null, 1.7] as const;

const COST = ["installed cost", "rectangular", 3000, null, 6000] as const;

export const poolUncertainty = cellFunction({
  id: "POOL.UNCERTAINTY",
  topic: "pool",
  memoised: true,
  slow: true,
  unitsAfter: "runs",
  summary:
    "P10, P50 and P90 of POOL.YEAR's heat, warm days, saving and payback for inputs in ranges; which inputs rule.",
  keywords: ["Monte Carlo", "risk", "sensitivity", "confidence", "probability", "error", "tolerance", "Sobol"],
  details: [
    "Low and high: the ends of rectangular and triangular, P10 and P90 of normal and log-normal (a tenth lies beyond each). Likely: the peak of triangular; elsewhere the middle (log-normal: the geometric mean), and may be left out. For a normal of known standard deviation low and high are the mean ∓ 1.2816 deviations; for a log-normal of known geometric deviation g the median divided and multiplied by g^1.2816.",
    "Labels: those of POOL.YEAR, and those that this block adds: evaporation factor (for the spread between relations; convection follows it), sun factor, air shift (of the same humidity), installed cost, yearly upkeep, discount rate. The block may be that of POOL.YEAR with rows added below; an optional label with a range needs no value there.",
    "P10 is the value that a tenth of the years stays below; of payback the short end. A year that saves nothing never pays back and counts as the longest. Payback is simple at discount rate 0, else discounted without escalation.",
    "The runs are points of a scrambled Sobol sequence, the same at every call; a power of two, 8 to 256. At 64 a P10 or P90 is good to a few percent of the spread, and 256 halve that. A year takes 5 to 10 ms. The panel runs up to 2,048 and shows the shares of each input in the variance, first order and total.",
    "Correlations: the normal scores of the two ranges have this coefficient (a Gaussian copula; JCGM 101, 6.4.8 for normal ones); pairs not given are independent. Coefficients that can't be together are refused with the range that the others leave. Shares in the variance need independent inputs: with correlations the panel shows none.",
    "Rank correlation (Spearman): near 1 or −1 the input rules the outcome, near 0 it doesn't matter beside the others.",
    "Values outside a label's limits refuse their run: up to a tenth of the runs may be left out, and a caution says so.",
  ],
  args: {
    inputs: UNCERTAIN_INPUTS,
    climate: CLIMATE,
    ranges: RANGES,
    runs: quantity("count", "years to run: a power of two", { from: 8, to: MOST_RUNS, whole: true }).default(64),
    correlations: CORRELATIONS.describedAs("rows of label, label, correlation coefficient of two ranges").optional(),
  },
  returns: tableResult("uncertainty of the year", UNCERTAINTY_COLUMNS),
  facts: {
    lossEstimated: "yes/no",
    evaporationBy: "word",
    monthlyRows: "yes/no",
    refusedShare: "fraction",
    refusedReason: "word",
    inTime: "fraction",
    paybackLimit: "years",
    notNormal: "word",
  },
  sources: ["jcgm101"],
  cautions: [
    { rule: rangesAsGiven, raisedBy: at({}, [WIND]) },
    { rule: refusedRuns, raisedBy: { ...at({}, [["sun share", "normal", 0.7, null, 0.95]]), runs: 32 } },
    {
      rule: notNormalPair,
      raisedBy: {
        ...at({}, [WIND, ["design load", "normal", 20, null, 24]]),
        correlations: [["wind at water", "design load", 0.5]],
      },
    },
    { rule: mayNotPay, raisedBy: at(MONEY, [["installed cost", "rectangular", 4000, null, 400_000]]) },
    { rule: poolEstimate, raisedBy: at({}, [WIND]) },
    { rule: evaporationMethodSpread, raisedBy: at({}, [WIND]) },
    { rule: madeHours, raisedBy: at({}, [WIND]) },
  ],
  example: at(MONEY, [WIND]),
  checks: [
    {
      inputs: at(MONEY, [COST]),
      expected: { row: "installed cost", column: "rankPayback", value: 1 },
      tolerance: 1e-12,
      source: "identity",
      remark: "Nothing else is uncertain: the dearer, the longer.",
    },
    {
      inputs: at({ ...MONEY, setPoint: 10 }, [COST]),
      expected: { row: "P50", column: "warmDays", value: 365 },
      tolerance: 0,
      source: "identity",
      remark: "A set point that Miami's water never falls below.",
    },
    {
      inputs: at({ ...MONEY, backUpPrice: 0, electricityPrice: 0 }, [COST]),
      expected: { row: "never pays back", column: "share", value: 1 },
      tolerance: 0,
      source: "identity",
      remark: "Energy that costs nothing saves nothing.",
    },
  ],
  compute({ inputs, climate: cells, ranges, runs, correlations }, { trace, recordFacts, system, isSliceOver }) {
    if ((runs & (runs - 1)) !== 0) throw valueError(`runs: must be 8, 16, 32, 64, 128 or 256, got ${runs}`);
    const climate = admitClimate(cells, system);
    const model = uncertainYear(inputs, climate, ranges, system, correlations);
    if (trace.on) model.trace(likelyValues(model), trace);
    const { likely, found } = uncertainRuns(model, inputs, cells, ranges, runs, system, isSliceOver);
    const refused = refusedShare(found, runs);
    if (trace.on) traceUncertainty(model, found, trace);
    const { paybackWithin } = inputs;
    const inTime = shareInTime(found, paybackWithin);
    recordFacts({
      lossEstimated: true,
      evaporationBy: inputs.evaporationMethod,
      monthlyRows: climate.monthly,
      notNormal: correlatedNames(ranges, model.correlation, ({ distribution }) => distribution !== "normal"),
      refusedShare: refused,
      refusedReason: renderMarks(found.fault?.message ?? "", system),
      ...(inTime === "" ? {} : { inTime, paybackLimit: paybackWithin }),
    });
    return uncertaintyRows(model.inputs, found, likely, paybackWithin);
  },
});
