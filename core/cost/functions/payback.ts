import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, list, of } from "../../kernel/define/result";
import { estimate, neverPaysBack } from "../cautions";
import { paybackOf } from "../simplePayback";

export const payback = cellFunction({
  id: "COST.PAYBACK",
  topic: "cost",
  summary: "Simple and discounted payback and net present value of a yearly saving.",
  finds: ["NPV", "return on investment", "life cycle cost", "present value", "discount", "UPV"],
  remarks: [
    "The saving is that of a year at today's prices; it rises by the escalation every year, from the first on, and is paid at the year's end.",
    "Discounted payback stays blank where the savings never reach the cost. A part of a year is found by the closed formula.",
    "Discount and escalation both with inflation or both without it.",
  ],
  args: {
    cost: quantity("money", "cost now", { above: 0 }),
    saving: quantity("money", "saving of a year at today's prices", { above: 0 }),
    discount: quantity("yearly rate", "discount rate, 3% or 0.03", { from: 0, to: 0.5 }).otherwise(0.03),
    escalation: quantity("yearly rate", "yearly rise of the saving, 2% or 0.02", { from: -0.2, to: 0.3 }).otherwise(0),
    years: quantity("years", "whole years that count", { from: 1, to: 60, whole: true }).otherwise(15),
  },
  gives: list("payback", {
    simplePayback: of("years", "cost on the saving of a year"),
    discountedPayback: of("years", "years until discounted savings reach the cost"),
    netPresentValue: of("money", "present value of the savings less the cost"),
    presentValueFactor: of("number", "present value of a yearly saving of 1"),
  }),
  cautions: [
    { rule: neverPaysBack, fires: { cost: 10_000, saving: 300 } },
    { rule: estimate, fires: { cost: 5000, saving: 900 } },
  ],
  checks: [
    {
      at: { cost: 1000, saving: 100, discount: 0.03, years: 10 },
      gives: { presentValueFactor: 8.5302 },
      within: 0.00005,
      from: "nistHandbook135",
      remark: "UPV at 3 %, 10 years",
    },
    {
      at: { cost: 1000, saving: 100, discount: 0.03, years: 10 },
      gives: { netPresentValue: -146.98 },
      within: 0.01,
      from: "nistHandbook135",
      remark: "100 × 8.5302 − 1,000",
    },
    {
      at: { cost: 1000, saving: 100, discount: 0.03, escalation: 0.03, years: 10 },
      gives: { netPresentValue: 0, simplePayback: 10, discountedPayback: 10 },
      within: 1e-9,
      from: "identity",
    },
  ],
  work(investment, { trace }) {
    const { simple, discounted, netPresentValue, presentValueFactor } = paybackOf(investment, trace);
    return { simplePayback: simple, discountedPayback: discounted ?? NO_VALUE, netPresentValue, presentValueFactor };
  },
});
