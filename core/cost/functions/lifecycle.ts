import { block, choice, quantity, rows, text } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { lifeCyclePrices, losingAlternative, noSingleRate } from "../cautions";
import { COST_KINDS, lifeCycles } from "../lifecycle";

const NEVER = { or: "never" } as const;
const NONE = { or: "none" } as const;
const money = (description: string) => quantityResult("money", description);

/** Yearly fall of the energy price by which the printed report's factor of 11.4867 comes out. */
const FALL = -0.0051924;

/** A heat pump beside a furnace and fan, as NIST's program prints it. */
const NIST = {
  inputs: { years: 15, discount: 0.03 },
  rows: [
    ["alternative", "kind", "amount", "year", "escalation"],
    ["base", "first cost", 1500, "", 0],
    ["base", "energy", 1200, "", FALL],
    ["base", "upkeep", 50, "", 0],
    ["base", "once", 200, 10, 0],
    ["base", "replacement", 600, 10, 0],
    ["base", "residual", 450, 15, 0],
    ["heat pump", "first cost", 3000, "", 0],
    ["heat pump", "energy", 820, "", FALL],
    ["heat pump", "upkeep", 100, "", 0],
    ["heat pump", "once", 600, 8, 0],
    ["heat pump", "residual", 750, 15, 0],
  ],
} as const;

const printed = (column: string, value: number, row: string, tolerance: number) => ({
  inputs: NIST,
  expected: { row, column, value },
  tolerance,
  source: "nistBlcc" as const,
});

export const costLifecycle = cellFunction({
  id: "COST.LIFECYCLE",
  topic: "cost",
  memoised: true,
  summary: "Life-cycle cost of alternatives, and what each saves beside a base: net savings, ratio, paybacks, rates.",
  keywords: ["LCC", "net present value", "SIR", "AIRR", "IRR", "MIRR", "alternatives", "replacement", "residual value"],
  details: [
    "A row: the alternative's name, kind of cost, amount at today's prices, year, yearly rise. Energy and upkeep fall due at the end of every year; once (an overhaul, a cleaning) and replacement in their year; residual comes in at the end or in its year; first cost is paid now. A negative amount is a gain. A part with a life shorter than the years counted needs its replacement, and what is left of it as residual.",
    "Savings ratio: operating savings (energy, upkeep, once) over extra investment (first cost, replacement, residual); blank where nothing more is invested. Adjusted rate: (1 + discount) × ratio^(1/years) - 1.",
    "Paybacks: the first time that the sum reaches zero, inside the year by a straight line; later costs may turn it back, so positive from is the first year from which the discounted sum stays. Never is no number of years.",
    "Internal rate: none where no rate or several solve it (costs after gains): use net savings. Modified rate: gains put out and costs financed at the discount rate.",
    "Energy multiple: times the energy prices given at which net savings are nothing; negative pays at any price.",
  ],
  args: {
    inputs: block(
      {
        years: quantity("years", "whole years to count", { from: 1, to: 60, whole: true }).default(15),
        discount: quantity("yearly rate", "discount rate, 3% or 0.03", { from: 0, to: 0.5 }).default(0.03),
        base: text("alternative that the others are compared with; left out: the first", 60).optional(),
      },
      "block of labels and values",
    ),
    rows: rows(
      {
        alternative: text("name of the alternative", 60),
        kind: choice("LifeCycleCost", COST_KINDS, "kind of cost", {
          investment: "first cost",
          initial: "first cost",
          fuel: "energy",
          electricity: "energy",
          maintenance: "upkeep",
          overhaul: "once",
          "residual value": "residual",
          resale: "residual",
        }),
        amount: quantity("money", "amount at today's prices"),
        year: quantity("years", "year in which it is paid", { from: 0, to: 60, whole: true }).optional(),
        escalation: quantity("yearly rate", "yearly rise", { from: -0.2, to: 0.3 }).default(0),
      },
      "rows: alternative, kind, amount, [year], [escalation]",
      { least: 1, most: 200 },
    ),
  },
  returns: tableResult("alternatives", {
    alternative: wordResult("alternative"),
    firstCost: money("first cost"),
    energy: money("present value of energy"),
    upkeep: money("of upkeep"),
    once: money("of single operating costs"),
    replacement: money("of replacements"),
    residual: money("of residual values, negative"),
    lifeCycleCost: money("present value of all"),
    annualValue: money("the same as equal yearly payments"),
    netSavings: money("life-cycle cost of the base less this"),
    savingsRatio: quantityResult("number", "savings-to-investment ratio"),
    adjustedRate: quantityResult("yearly rate", "adjusted internal rate of return"),
    simplePayback: quantityResult("years", "until undiscounted savings reach the cost", NEVER),
    discountedPayback: quantityResult("years", "until discounted savings reach the cost", NEVER),
    positiveFrom: quantityResult("years", "year from which the discounted sum stays positive", NEVER),
    internalRate: quantityResult("yearly rate", "the one rate at which savings are worth nothing", NONE),
    modifiedRate: quantityResult("yearly rate", "modified internal rate of return", NONE),
    energyMultiple: quantityResult("number", "times the energy prices at which it breaks even"),
  }),
  facts: { losing: "word", noRate: "word" },
  cautions: [
    { rule: losingAlternative, raisedBy: { ...NIST, inputs: { base: "heat pump" } } },
    {
      rule: noSingleRate,
      raisedBy: {
        inputs: { years: 2 },
        rows: [
          ["nothing", "upkeep", 0],
          ["pond", "first cost", 100],
          ["pond", "once", -230, 1],
          ["pond", "once", 132, 2],
        ].map((row) => [...row, ...Array.from({ length: 4 - row.length }, () => "")]),
      },
    },
    { rule: lifeCyclePrices, raisedBy: NIST },
  ],
  checks: [
    printed("lifeCycleCost", 16_187, "base", 1),
    printed("lifeCycleCost", 13_605, "heat pump", 1),
    printed("netSavings", 2582, "heat pump", 1),
    printed("savingsRatio", 4, "heat pump", 0.005),
    printed("adjustedRate", 0.1297, "heat pump", 0.00005),
  ],
  compute({ inputs, rows: given }, { trace, recordFacts }) {
    const found = lifeCycles(given, inputs, inputs.base, trace);
    const named = (fits: (beside: NonNullable<(typeof found)[number]["beside"]>) => boolean): string =>
      found.flatMap(({ alternative, beside }) => (beside && fits(beside) ? [alternative] : [])).join(", ");
    recordFacts({
      losing: named(({ netSavings }) => netSavings < 0),
      noRate: named((beside) => beside.internalRate === undefined),
    });
    return found.map(({ alternative, values, lifeCycleCost, annualValue, beside }) => ({
      alternative,
      firstCost: values["first cost"],
      energy: values.energy,
      upkeep: values.upkeep,
      once: values.once,
      replacement: values.replacement,
      residual: values.residual,
      lifeCycleCost,
      annualValue,
      netSavings: beside?.netSavings ?? NO_VALUE,
      savingsRatio: beside?.savingsRatio ?? NO_VALUE,
      adjustedRate: beside?.adjustedRate ?? NO_VALUE,
      simplePayback: beside ? (beside.simplePayback ?? NEVER.or) : NO_VALUE,
      discountedPayback: beside ? (beside.discountedPayback ?? NEVER.or) : NO_VALUE,
      positiveFrom: beside ? (beside.positiveFrom ?? NEVER.or) : NO_VALUE,
      internalRate: beside ? (beside.internalRate ?? NONE.or) : NO_VALUE,
      modifiedRate: beside ? (beside.modifiedRate ?? NONE.or) : NO_VALUE,
      energyMultiple: beside?.energyMultiple ?? NO_VALUE,
    }));
  },
});
