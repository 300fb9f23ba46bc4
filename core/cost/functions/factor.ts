import { choice, quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { realOrNominal } from "../cautions";
import { sum } from "../../numeric/series";
import { capitalRecovery, midYearFactor, presentValueFactor, singleFactor, yearlyRatio } from "../equations";

export const costFactor = cellFunction({
  id: "COST.FACTOR",
  topic: "cost",
  unitsAfter: "escalation",
  summary: "Present-value factor: what a payment of 1, once or every year, is worth now.",
  keywords: ["SPV", "UPV", "UPV*", "annuity", "discount factor", "capital recovery", "present worth"],
  details: [
    "SPV: paid once at the end of the last year. UPV: at every year's end; with an escalation this is the UPV* of NIST's tables. UPV mid-year: in the middle of every year. Capital recovery: 1/UPV, the yearly value of a first cost.",
    "Price index: the price of each year over today's, as official tables print it by fuel and region; the payment of a year is 1 times its index, and UPV is then the UPV* of those tables. Longer columns than the years are cut. Times the yearly cost at today's prices it gives the present value of an energy row of a life-cycle cost.",
    "Escalation and discount both with inflation (nominal) or both without it (real): nominal = (1 + real) (1 + inflation) - 1.",
  ],
  args: {
    kind: choice("PresentValueFactor", ["SPV", "UPV", "UPV mid-year", "capital recovery"], "which factor", {
      "single present value": "SPV",
      "uniform present value": "UPV",
      "UPV mid": "UPV mid-year",
      "mid-year": "UPV mid-year",
      CRF: "capital recovery",
      UCR: "capital recovery",
    }),
    years: quantity("years", "years", { from: 0, to: 100 }),
    discount: quantity("yearly rate", "discount rate, 3% or 0.03", { from: -0.2, to: 0.5 }),
    escalation: quantity("yearly rate", "yearly rise of the payment, 2% or 0.02", { from: -0.2, to: 0.3 }).default(0),
    priceIndex: rows(
      { index: quantity("number", "price of the year over today's", { above: 0, to: 100 }) },
      "price index of year 1, 2, …, in a column, in place of an escalation",
      { least: 1, most: 100 },
    ).optional(),
  },
  returns: quantityResult("number", "present value of 1"),
  cautions: [{ rule: realOrNominal, raisedBy: { kind: "UPV", years: 15, discount: 0.03 } }],
  checks: [
    ...(
      [
        ["SPV", 0.642, 0.0005],
        ["UPV", 11.94, 0.005],
      ] as const
    ).map(([kind, expected, tolerance]) => ({
      inputs: { kind, years: 15, discount: 0.03 },
      expected,
      tolerance,
      source: "nistHandbook135" as const,
    })),
    {
      inputs: { kind: "UPV*", years: 5, discount: 0.03, escalation: 0.02 },
      expected: 4.8562,
      tolerance: 0.00005,
      source: "nistHandbook135",
    },
    {
      inputs: {
        kind: "UPV*",
        years: 10,
        discount: 0.03,
        priceIndex: [
          [0.9444],
          [0.8959],
          [0.8908],
          [0.8988],
          [0.9064],
          [0.9193],
          [0.9265],
          [0.9441],
          [0.9483],
          [0.9472],
        ],
      },
      expected: 7.86,
      tolerance: 0.005,
      source: "nistBlcc",
      remark: "residential electricity, US average, index table of 2025 as printed; the factor worked in Python",
    },
  ],
  compute({ kind, years: n, discount: d, escalation: e, priceIndex }, { step, trace }) {
    const q = step(yearlyRatio, { e, d });
    if (priceIndex !== undefined && (e !== 0 || n % 1 !== 0 || n < 1 || priceIndex.length < n))
      throw valueError(
        `priceIndex: needs whole years and a row for each, and no escalation; got ${priceIndex.length} rows, ${n} years, escalation ${e}`,
      );
    const values = priceIndex?.slice(0, n).map(({ index }, at) => index * q ** (at + 1));
    if (values)
      trace.series({ title: "Present value of a year's price", of: "year", kind: "number", total: "sum", values });
    if (kind === "SPV") return values?.at(-1) ?? step(singleFactor, { q, n });
    const U = values ? sum(values) : step(presentValueFactor, { q, n });
    if (kind === "UPV") return U;
    if (kind === "UPV mid-year") return step(midYearFactor, { U, q });
    if (U === 0) throw notAvailable("years: 0 recover nothing: must be above 0 for capital recovery");
    return step(capitalRecovery, { U });
  },
});
