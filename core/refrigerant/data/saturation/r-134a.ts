import type { SaturationData } from "../saturationData";

/** R-134a: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R134A_LINE: SaturationData = {
  name: "R-134a",
  from: 190,
  to: 374.172579,
  critical: {
    temperature: 374.21,
    pressure: 4059280,
  },
  zero: {
    enthalpy: -0.00014080275119801808,
    entropy: 4.5349932875420573e-7,
  },
  bubble: {
    pressure: {
      range: [190, 374.172579],
      halvings: "1234567899",
      degree: 12,
      decimals: 10,
      coefficients:
        "+3/7kwnGymhrixtBz70utqF+js+2Tl+z7hCknuuGx7yTm5jC3yIyjBzDIAus8nxg9H2kvsnnM9iih7P6n7iZrs8dgg3B3PsGOCAAAq20i+3tIst3i38Ej355uCo1psCivJu1E6LsBGAAAAky6k160Is/mn+nCrpw4NmkmNu5OsvB+ESCAAAA0o6pkl4Ikn7/7iB5sslCm0wDirG2S+BGAAAAAyu23n55Iws1ppR9t8E4lmBkvCgHWCAAAAA60s1lz6Iywt60IymmD87NqdyCIAAAAAA0qrvlg7Imqk+qE0+sC0gFsKcCAAAAAAg17n2m7I6x94lCgxlBg4BuDIAAAAAAA8kumir7Iu45mmC0xzCgvI4rBgJiCQECAAA",
      error: 6.62e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.7016150669699873],
      halvings: "66543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "wui/3hQipsk1B5no1BmovBomFhtBmHjBEy+l+2kQujzrqBx1qhB64sB50BUGAAgnq2loQgthjjCj+ykCu/wE5xK8XxBCA+lx9wtQ29ormD34tvD2n7Inmc28C3JgBFu7m501Qsx566Erh8uFo/xM73qBs2F3X6CLsgtw4hR+4nkkHh05jJmitVjjmC4wHnHchB+rw2puR0nwgxFv+moE4gpJ73G5BNQFql+uz4Rqryk7E9jisB2mpGvwEuBzBJA",
      error: 8.35e-9,
    },
    vapour: {
      range: [0.009999999999999449, 0.7016150669699873],
      halvings: "665432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "khm+j1Pn+mujC23tpB24C3/LygC9HcFql/tmxPn1gt6B+97cz5oB2dmCPCAyqi6ksPx7xpmD+p+zBri1E2rKjVeCAok2tkjPj+4i6F0rklB/yvJuid7/C+JhBEmmn5xxOt5+69Lt43+EvsuQ0zoB5oGoX9CMggyqqoN3u89xex9lrxBtyt5DrlmHhgVXjJYkh1ml4K1w095zB7+48nEzy36Mn9jlBv7qDpnJvY/B2p9yk0Hrmy+iuB7sjr3C/z6rF3ngKpwRpcrBDky0wk5Dv1lt4vC5ykmmGpux5Oh0qgBt7hChmEtJZ",
      error: 7.05e-9,
    },
    incipient: [],
  },
};
