import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import { costEstimate, neverPaysBack } from "../cautions";
import { paybackOf } from "../simplePayback";

export const costPayback = cellFunction({
  id: "COST.PAYBACK",
  topic: "cost",
  summary: "Simple and discounted payback and net present value of a yearly saving.",
  keywords: ["NPV", "return on investment", "life cycle cost", "present value", "discount", "UPV"],
  details: [
    "The saving is that of a year at today's prices; it rises by the escalation every year, from the first on, and is paid at the year's end.",
    "Discounted payback stays blank where the savings never reach the cost. A part of a year is found by the closed formula.",
    "Discount and escalation both with inflation or both without it.",
  ],
  args: {
    cost: quantity("money", "cost now", { above: 0 }),
    saving: quantity("money", "saving of a year at today's prices", { above: 0 }),
    discount: quantity("yearly rate", "discount rate, 3% or 0.03", { from: 0, to: 0.5 }).default(0.03),
    escalation: quantity("yearly rate", "yearly rise of the saving, 2% or 0.02", { from: -0.2, to: 0.3 }).default(0),
    years: quantity("years", "whole years that count", { from: 1, to: 60, whole: true }).default(15),
  },
  returns: listResult("payback", {
    simplePayback: quantityResult("years", "cost on the saving of a year"),
    discountedPayback: quantityResult("years", "years until discounted savings reach the cost"),
    netPresentValue: quantityResult("money", "present value of the savings less the cost"),
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
      inputs: { cost: 1000, saving: 100, discount: 0.03, escalation: 0.03, years: 10 },
      expected: { netPresentValue: 0, simplePayback: 10, discountedPayback: 10 },
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute(investment, { trace }) {
    const { simple, discounted, netPresentValue, presentValueFactor } = paybackOf(investment, trace);
    return { simplePayback: simple, discountedPayback: discounted ?? NO_VALUE, netPresentValue, presentValueFactor };
  },
});
