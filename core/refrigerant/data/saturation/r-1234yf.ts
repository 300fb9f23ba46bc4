import type { SaturationData } from "../saturationData";

/** R-1234yf: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R1234YF_LINE: SaturationData = {
  name: "R-1234yf",
  from: 190,
  to: 367.813215,
  critical: {
    temperature: 367.85,
    pressure: 3384400,
  },
  zero: {
    enthalpy: -4.3511671443562196e-11,
    entropy: -5.1458040339648526e-14,
  },
  bubble: {
    pressure: {
      range: [190, 367.813215],
      halvings: "123456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "g47/zmqG2tgi3rpBzthi8zEwgi3zQvjqq2Bmq8rFt3xQ0v0BrnFoR5BGA8wh8uq7H+zzrjuLzy3tjOktm+Vr13Z+xqBxR+EMCAAAw6v+1hrIqz/5o0EpuujnCwqshCwkF6vEuO6BIAAAAwimxw4xI2x+6pkCh0+zM6ghM8pR88B0GYEAAAAorul190Im34glhBrxm8Bkq8DouIma6CKCAAAAmijvnv2I28s/uQ59B6pxBqyDwKiBEAAAAA8yp1+n3IwjzqoIi8+FkoTuoBiDIAAAAAAg/lks03I6+ihlEu2yDs2F8FJFAAAAAA2t3o383I80okmEg/nEz9PjhGtbwC6CeEAAA",
      error: 6.54e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.6953309400680002],
      halvings: "6654321",
      degree: 8,
      decimals: 9,
      coefficients:
        "or5481Pqsk32Bho/Itg3CxgF0a6CJDo9m4k5P4wgwwB97mlBl3b+9HzIjCIAiw50/8PollhoCn2rpD8w1H3+Iv2BoQzCIk6nrtiQuisikD/r4kEq6mO5/2B8vG9WkCF+n9+nqQu6+80Evs18EsixNj28B+0I7mB0Fb2+3mi2Qk0h0gHl541Iqk1Qrpe06FjsB6Gd0v4tunR+i/6mKvlljLi/q5B0kBm+vBsV/lBD",
      error: 1.5e-8,
    },
    vapour: {
      range: [0.009999999999999449, 0.6953309400680002],
      halvings: "55432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "upoyjqPz12l2D7r9e+ogJuxqBzjHphBoFgB4ji86iPl3h/vD8nr+Bqra50aghDD5BI6k1pq5Ohg/7+Fu3vkD50hQ0voBjiBxRuFjB4zz4+nOtjr+xLtlwuD9zgYm9uC/uLyvBjGWuj/9sgNjv8wmd3yohuBtzxsDnukFpkbwbtJiBsu3kz0K7oirxwB595h6D1nlpL/7ugB1o6CjxHzTvBo98983H/wg/mqBv6s9sCn9xzEpvrIlqOtXlBDs/qizoEr9gpwnCvww7qFh8xuMvg+ahi3BztD9GP",
      error: 9.41e-9,
    },
    incipient: [],
  },
};
