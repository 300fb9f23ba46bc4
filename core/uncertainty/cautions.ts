/** Caution rules of calculations with uncertain inputs. */
import { caution } from "../kernel/define/caution";

const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`;

export const rangesAsGiven = caution({
  code: "UNCERTAINTY-RANGES",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description:
    "The spread is that of the ranges given, each independent of the others; errors of the method are not in it.",
  needs: {},
  when: () => true,
  message: () =>
    "The spread is that of the ranges given, each taken as independent of the others. What has no range counts as exact, and the method's own error is not in it.",
});

export const refusedRuns = caution({
  code: "UNCERTAINTY-REFUSED",
  severity: "Caution",
  source: "identity",
  description: "Some runs have values outside the limits and are left out.",
  needs: { refusedShare: "fraction", refusedReason: "word" },
  when: ({ refusedShare }) => refusedShare > 0,
  message: ({ refusedShare, refusedReason }) =>
    `${percent(refusedShare)} of the runs are left out: ${refusedReason}. The ends are too narrow by that; take ranges within the limits.`,
});

export const mayNotPay = caution({
  code: "UNCERTAINTY-PAYBACK",
  severity: "Warning",
  source: "identity",
  description: "The chance that the cost is not paid back in time.",
  needs: { inTime: "fraction", paybackLimit: "years" },
  when: ({ inTime }) => inTime < 0.9,
  message: ({ inTime, paybackLimit }, show) =>
    `It pays back within ${show(paybackLimit, "years")} in ${percent(inTime)} of the runs only. Get prices in writing and the design load calculated before anyone signs.`,
});
