import { choice, quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { clamp, sumOf } from "../../numeric/series";
import { adjustedBaseline, savingUnproven, modelOutside } from "../cautions";
import { INTERVALS, fitErrors, savingUncertaintyOf } from "../saved";

const POINT = {
  measured: quantity("number", "what was measured"),
  modelled: quantity("number", "what the model of before expects"),
} as const;

/** Limits of bias and variation. */
const LIMITS = { month: [0.05, 0.15], day: [0.1, 0.3], hour: [0.1, 0.3] } as const;

/** Twelve months of an invented hall, measured and modelled. */
const BEFORE = [
  [2100, 2144],
  [1979, 1921],
  [1650, 1572],
  [1200, 1095],
  [750, 742.1],
  [420.6, 436.3],
  [300, 300.3],
  [420.6, 427],
  [750, 773],
  [1200, 1168],
  [1650, 1781],
  [1979, 1927],
];
const after = (share: number) => BEFORE.map(([, modelled = 0]) => [share * modelled, modelled]);

export const costSaved = cellFunction({
  id: "COST.SAVED",
  topic: "cost",
  summary: "Saving proven from records before and after, with its uncertainty and the fit of the model.",
  keywords: ["M&V", "measurement and verification", "NMBE", "CVRMSE", "Guideline 14", "IPMVP", "baseline", "meter"],
  details: [
    "Before: measured and what the model gives for the same times. After: measured and what the same model expects at the later weather and use. Saving: expected less measured, in the unit of the rows.",
    "Bias (NMBE) and variation (CV(RMSE)) divide by points less parameters and by the mean measured; measured less modelled. Limits: 5 and 15 % by months, 10 and 30 % by hours, here by days too. Not for temperatures: both depend on the zero of the scale.",
    "Uncertainty at the confidence, as a share of the saving: with the factors of Sun and Baltazar for the interval; from an autocorrelation of 0.5 on with the effective number of points. Left out, the autocorrelation is that of the errors before.",
  ],
  args: {
    before: rows(POINT, "rows before: measured, modelled", { least: 3, most: 8784 }),
    after: rows(POINT, "rows after: measured, expected by the model", { least: 1, most: 8784 }),
    interval: choice("RecordInterval", INTERVALS, "time of a row").default("month"),
    parameters: quantity("count", "parameters of the model; 1 for a calibrated simulation", {
      from: 1,
      to: 20,
      whole: true,
    }).default(1),
    confidence: quantity("fraction", "confidence, 90% or 0.9", { from: 0.5, to: 0.99 }).default(0.9),
    autocorrelation: quantity("number", "autocorrelation of neighbouring errors", { from: 0, below: 1 }).optional(),
  },
  returns: listResult("saving", {
    saved: quantityResult("number", "saving, in the unit of the rows"),
    shareSaved: quantityResult("fraction", "of what the model expects"),
    uncertainty: quantityResult("fraction", "of the saving, at the confidence"),
    least: quantityResult("number", "saving less its uncertainty"),
    most: quantityResult("number", "saving and its uncertainty"),
    bias: quantityResult("fraction", "normalized mean bias error"),
    variation: quantityResult("fraction", "coefficient of variation of the root mean square error"),
    error: quantityResult("number", "root mean square error, by all points"),
    autocorrelation: quantityResult("number", "of neighbouring errors"),
    effectivePoints: quantityResult("number", "points that count as independent"),
    model: wordResult("within or outside the guideline's limits"),
  }),
  facts: { proof: "fraction", outside: "yes/no" },
  cautions: [
    { rule: savingUnproven, raisedBy: { before: BEFORE, after: after(0.99) } },
    { rule: modelOutside, raisedBy: { before: after(0.5), after: after(0.4) } },
    { rule: adjustedBaseline, raisedBy: { before: BEFORE, after: after(0.9) } },
  ],
  checks: [
    {
      inputs: { before: BEFORE, after: after(0.9) },
      expected: { variation: 0.0528134, bias: 0.0085232, error: 60.6746 },
      tolerance: "0.01 %",
      source: "guideline14",
      remark: "by another program",
    },
  ],
  compute({ before, after: later, interval, parameters, confidence, autocorrelation }, { trace, recordFacts }) {
    if (before.length <= parameters)
      throw valueError(`before: must have more rows than parameters, ${parameters}, got ${before.length}`);
    const expected = sumOf(later, ({ modelled }) => modelled);
    if (sumOf(before, ({ measured }) => measured) === 0 || expected === 0)
      throw notAvailable("before, after: sums of 0 leave no share to tell");
    const fit = fitErrors(before, parameters);
    const saved = expected - sumOf(later, ({ measured }) => measured);
    const rho = autocorrelation ?? clamp(fit.autocorrelation, 0, 0.999);
    const share = saved / expected;
    const basis = { interval, count: before.length, parameters, after: later.length, confidence, autocorrelation: rho };
    // As a share of what is expected: a saving of nothing has an uncertainty too.
    const { k, U } = savingUncertaintyOf({ ...basis, variation: Math.abs(fit.variation), share: 1 }, trace);
    const [most, worst] = LIMITS[interval];
    const outside = Math.abs(fit.bias) > most || Math.abs(fit.variation) > worst;
    recordFacts({ outside, proof: share === 0 ? 9.99 : U / Math.abs(share) });
    return {
      saved,
      shareSaved: share,
      uncertainty: share === 0 ? NO_VALUE : U / Math.abs(share),
      least: saved - U * Math.abs(expected),
      most: saved + U * Math.abs(expected),
      bias: fit.bias,
      variation: fit.variation,
      error: fit.error,
      autocorrelation: rho,
      effectivePoints: k,
      model: outside ? "outside" : "within",
    };
  },
});
