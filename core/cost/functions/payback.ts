import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { listResult, quantityResult } from "../../kernel/define/result";
import { costEstimate, neverPaysBack } from "../cautions";
import { paybackOf } from "../simplePayback";

const NEVER = { or: "never" } as const;

export const costPayback = cellFunction({
  id: "COST.PAYBACK",
  topic: "cost",
  summary: "Simple and discounted payback and net present value of a yearly saving.",
  keywords: ["NPV", "return on investment", "life cycle cost", "present value", "discount", "UPV"],
  details: [
    "The saving is for one year at today's prices; it rises by the escalation every year, including the first, and arrives at the year's end.",
    'Both paybacks are "never" where the savings don\'t reach the cost; a saving may be nothing or negative. A part of a year is found by the closed formula.',
    "Upkeep falls due every year, replacement once, both at today's prices without escalation. With them the discounted payback is the time after which the sum stays positive within the years counted; the simple one includes upkeep only.",
    "Discount and escalation both with inflation or both without it.",
  ],
  args: {
    cost: quantity("money", "cost now", { above: 0 }),
    saving: quantity("money", "saving per year"),
    discount: quantity("yearly rate", "discount rate, 3% or 0.03", { from: 0, to: 0.5 }).default(0.03),
    escalation: quantity("yearly rate", "yearly rise of the saving, 2% or 0.02", { from: -0.2, to: 0.3 }).default(0),
    years: quantity("years", "whole years to count", { from: 1, to: 60, whole: true }).default(15),
    upkeep: quantity("money", "upkeep per year", { from: 0 }).default(0),
    replacement: quantity("money", "replacement, paid once", { from: 0 }).default(0),
    replacementYear: quantity("years", "year of the replacement", { from: 1, to: 60, whole: true }).optional(),
  },
  returns: listResult("payback", {
    simplePayback: quantityResult("years", "cost over the yearly saving less upkeep", NEVER),
    discountedPayback: quantityResult("years", "until discounted savings reach the cost", NEVER),
    netPresentValue: quantityResult("money", "present value of savings less costs"),
    presentValueFactor: quantityResult("number", "present value of a yearly saving of 1"),
  }),
  cautions: [
    { rule: neverPaysBack, raisedBy: { cost: 10_000, saving: 300 } },
    { rule: costEstimate, raisedBy: { cost: 5000, saving: 900 } },
  ],
  checks: [
    {
      inputs: { cost: 1000, saving: 100, discount: 0.03, years: 10 },
      expected: { presentValueFactor: 8.5302 },
      tolerance: 0.00005,
      source: "nistHandbook135",
      remark: "UPV at 3 %, 10 years",
    },
    {
      inputs: { cost: 1000, saving: 100, discount: 0.03, years: 10 },
      expected: { netPresentValue: -146.98 },
      tolerance: 0.01,
      source: "nistHandbook135",
      remark: "100 × 8.5302 − 1,000",
    },
    {
      inputs: { cost: 500, saving: 100, discount: 0.03, years: 10, upkeep: 10, replacement: 50, replacementYear: 8 },
      expected: { netPresentValue: 228.25, simplePayback: 5.5556 },
      tolerance: 0.01,
      source: "nistHandbook135",
      remark: "90 × 8.5302 − 50 × 0.7894 − 500",
    },
    {
      inputs: { cost: 1000, saving: 100, discount: 0.03, escalation: 0.03, years: 10 },
      expected: { netPresentValue: 0, simplePayback: 10, discountedPayback: 10 },
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute(investment, { trace }) {
    if (investment.replacement > 0 && investment.replacementYear === undefined)
      throw valueError("replacementYear: is blank: a replacement needs its year");
    const { simple = NEVER.or, discounted = NEVER.or, ...rest } = paybackOf(investment, trace);
    return { simplePayback: simple, discountedPayback: discounted, ...rest };
  },
});
