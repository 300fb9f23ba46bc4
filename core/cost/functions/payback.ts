import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { mend } from "../../kernel/fault";
import { list, of } from "../../kernel/result";
import { estimate, neverPaysBack } from "../cautions";
import { paybackOf } from "../models/payback";

const NEVER = { or: "never" } as const;

export const payback = cellFunction({
  id: "COST.PAYBACK",
  topic: "cost",
  summary: "Simple and discounted payback and net present value of a yearly saving.",
  finds: ["NPV", "return on investment", "life cycle cost", "present value", "discount", "UPV"],
  remarks: [
    "The saving is that of a year at today's prices; it rises by the escalation every year, from the first on, and is paid at the year's end.",
    'Both paybacks are "never" where the savings don\'t reach the cost; a saving may be nothing or negative. A part of a year is found by the closed formula.',
    "Upkeep is of every year, replacement of one, both at today's prices without escalation. With them the discounted payback is the time from which the sum stays positive within the years that count; the simple one counts upkeep only.",
    "Discount and escalation both with inflation or both without it.",
  ],
  args: {
    cost: quantity("money", "cost now", { above: 0 }),
    saving: quantity("money", "saving of a year"),
    discount: quantity("yearly rate", "discount rate, 3% or 0.03", { from: 0, to: 0.5 }).otherwise(0.03),
    escalation: quantity("yearly rate", "yearly rise of the saving, 2% or 0.02", { from: -0.2, to: 0.3 }).otherwise(0),
    years: quantity("years", "whole years that count", { from: 1, to: 60, whole: true }).otherwise(15),
    upkeep: quantity("money", "upkeep of a year", { from: 0 }).otherwise(0),
    replacement: quantity("money", "replacement, paid once", { from: 0 }).otherwise(0),
    replacementYear: quantity("years", "year of the replacement", { from: 1, to: 60, whole: true }).optionally(),
  },
  gives: list("payback", {
    simplePayback: of("years", "cost on the saving of a year less upkeep", NEVER),
    discountedPayback: of("years", "until discounted savings reach the cost", NEVER),
    netPresentValue: of("money", "present value of savings less costs"),
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
      at: { cost: 500, saving: 100, discount: 0.03, years: 10, upkeep: 10, replacement: 50, replacementYear: 8 },
      gives: { netPresentValue: 228.25, simplePayback: 5.5556 },
      within: 0.01,
      from: "nistHandbook135",
      remark: "90 × 8.5302 − 50 × 0.7894 − 500",
    },
    {
      at: { cost: 1000, saving: 100, discount: 0.03, escalation: 0.03, years: 10 },
      gives: { netPresentValue: 0, simplePayback: 10, discountedPayback: 10 },
      within: 1e-9,
      from: "identity",
    },
  ],
  work(investment, { trace }) {
    if (investment.replacement > 0 && investment.replacementYear === undefined)
      throw mend("replacementYear: is blank: a replacement needs its year");
    const { simple = NEVER.or, discounted = NEVER.or, ...rest } = paybackOf(investment, trace);
    return { simplePayback: simple, discountedPayback: discounted, ...rest };
  },
});
