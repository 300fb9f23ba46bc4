import type { SaturationData } from "../saturationData";

/** R-600a: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R600A_LINE: SaturationData = {
  name: "R-600a",
  from: 190,
  to: 407.77621830000004,
  critical: {
    temperature: 407.817,
    pressure: 3629000,
  },
  zero: {
    enthalpy: -1.9938092057811008e-11,
    entropy: -6.675700465784937e-14,
  },
  bubble: {
    pressure: {
      range: [190, 407.77621830000004],
      halvings: "123456789aa",
      degree: 12,
      decimals: 10,
      coefficients:
        "ixl2/jjGkj9kx1wB7sz76pG6srj+Z9wmphDomn5K7t0lBw0sE1tR2kCtHWDswl4hj7HqinxlqMhk9whR6zg8cnv7mBio9B7zD+PwFDLAAmr0js7rIqo6407E3zsszC+zzuC19G8nE2HgBEAAAAqsv0+7yIkohp/mCnnihP0jiMosK6hBsDMCAAAAqi5/5k2Iml6+niBzkt1Cm05CypEqMoBEAAAAAmyrk933I22sr9Qp3gMwlb6zByEOCAAAAAqn0kox4Igk4/tIomBorJoT2BGAAAAAAu91o994I6+9knE44iBisDkHUCAAAAAA2n2lok5Isiw3jC6oV4nB0CIAAAAAAAivg8tn5Iqit+hBw+J0OeCAAAAAAA+2o8xp5I43liiB6pX+2C0Q+DiBKCAAAA",
      error: 6.77e-10,
    },
    liquid: {
      range: [0.009999999999993897, 0.7308247107010375],
      halvings: "66543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "027psyP4iwl2B74z+Cg2lL150ByhJv3BuLtCs//7o1Pg1p9nB968hB0ujC7hFoNnBEA+5xrx4Pwruy/Bzm/6ByuqEr5M4oBpEODmtvy29Pq76jkDjg9/C2t9G1pX61CnKoBHui2l4lQ4mky6E7jnrF8rxKl/eq/DzRsCL6ws95xQojt/hHzk+tJkg5Xzp6BoqE1PiDLmuw6m+Qmq+rvFj/sgEk96IxpLyXzCSDs/jsuoRo/nq6ExyztBqnzFj7C2ILCA",
      error: 1.87e-8,
    },
    vapour: {
      range: [0.009999999999993897, 0.7308247107010375],
      halvings: "6654323333",
      degree: 8,
      decimals: 9,
      coefficients:
        "kvq1ylP1y2mlC6jrsDp5yNu18B7sJ+zBhKgCmyz05hP3ih21B2pzhB59xCssGjRwBFAs0npm9Oj/uj9Cg+yrBnn/EgnPtyBuFVC0v8y80OtyqhtF6w9Pxm4Hm9Z3hD8LxBGiri8okOjuwmsL1+82Fr42N2qcl6E+SzCKiyilt8M/3pm4dzi0pyBr962D1tzHlnXliB/KGk24qmoLn+rhxVp+26Z3hlmBv82Bp/BjCND+0mq70J33/zrelqqlvB9u+xC30pEpnHvKPDus2nmoHnu07yvBv81rhDvshvG51gNxxYprBpCF0+i2vlD1w4r32Cr23kuHtjzyTx/rvBrpsD32HtSvB",
      error: 1.73e-8,
    },
    incipient: [],
  },
};
