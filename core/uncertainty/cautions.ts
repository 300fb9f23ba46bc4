/** Caution rules of calculations with uncertain inputs. */
import { caution } from "../kernel/define/caution";

const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`;

export const rangesAsGiven = caution({
  code: "UNCERTAINTY-RANGES",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description:
    "The spread is that of the ranges given, independent but for the correlations given; errors of the method are not in it.",
  needs: {},
  when: () => true,
  message: () =>
    "The spread is that of the ranges given; pairs without a correlation are taken as independent. What has no range counts as exact, and the method's own error is not in it.",
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

export const notNormalPair = caution({
  code: "UNCERTAINTY-NOT-NORMAL",
  severity: "Notice",
  source: "jcgm101",
  description: "A correlation between inputs that aren't normal: it is that of their normal scores.",
  needs: { notNormal: "word" },
  when: ({ notNormal }) => notNormal !== "",
  message: ({ notNormal }) =>
    `The correlation of ${notNormal} is that of the normal scores: between the values themselves it is a little nearer to 0, and the first-order law takes it as it is.`,
});

export const correlatedFreedom = caution({
  code: "UNCERTAINTY-FREEDOM",
  severity: "Caution",
  source: "jcgm100",
  description: "Degrees of freedom of correlated inputs: Welch and Satterthwaite's formula doesn't hold between them.",
  needs: { correlatedFreedom: "yes/no" },
  when: ({ correlatedFreedom: correlated }) => correlated,
  message: () =>
    "Welch and Satterthwaite's formula holds for independent inputs only. Correlated ones count as one contribution here, with the least degrees of freedom among them: exact where they come from the same readings, else on the safe side.",
});

export const fewBeyond = caution({
  code: "UNCERTAINTY-FEW-BEYOND",
  severity: "Caution",
  source: "jcgm101",
  description: "Fewer than five runs lie beyond each end of the interval.",
  needs: { runsBeyond: "number", coverage: "fraction" },
  when: ({ runsBeyond }) => runsBeyond < 5,
  message: ({ runsBeyond, coverage }) =>
    `Only ${runsBeyond.toPrecision(2)} runs lie beyond each end of the ${Number((100 * coverage).toPrecision(8))} % interval: its ends from the runs are rough. Take the first-order one, or a smaller coverage.`,
});
