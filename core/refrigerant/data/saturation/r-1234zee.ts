import type { SaturationData } from "../saturationData";

/** R-1234ze(E): fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R1234ZEE_LINE: SaturationData = {
  name: "R-1234ze(E)",
  from: 190,
  to: 382.481748,
  critical: {
    temperature: 382.52,
    pressure: 3635376.34913,
  },
  zero: {
    enthalpy: 0.040350105801523484,
    entropy: 0.00032989190038809553,
  },
  bubble: {
    pressure: {
      range: [190, 382.481748],
      halvings: "22234567899",
      degree: 12,
      decimals: 10,
      coefficients:
        "ssp2x2sFqu61s6dngz4ghCqr/9nE7mjkIsw/Orncs5B1DGAAAg1nph/7G64qy7pS7+uxsfuiuq4B9k66C02sEz4GgJECAAAqwro+s6H2t6qpwM/5x9yQ8g09atsxiBiz6B/pBmNqCLFAAsw9n0vrIqoy+w/Ev00oyC8pnuCo6F+9E+LuBGAAAAyg32l2yIghwshpC7q8wOokqNirOurBkEOCAAAA6u+3mi2IyrworjB1gksC4mqDgnF+NsBEAAAAA25hlg33I8/nkwRrohI6uf24B4EQCAAAAA2im7nx4I4w/53Io/sBolKyT0BGAAAAAAujg8r+4Iu7umsEusvBqtD2GSCAAAAAA+q5s+k5IypupmCqhY6kBoCGAAAAAAAwl+nrp5IyzvymC+13B+qGuoBgLwDoBQGCCA",
      error: 6.82e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.7094321288288393],
      halvings: "776543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "kr6/h5Pmpglb7kifsh4Cn7JsnBpFYF04x1y6Psu1+Vzu8NmxWvuBsDJAAosi9t8Pk0u4kBto3bm13BluE2MpBEAq7o1v/Py+8k8BztlxB+5tDrlKmhB1DOD4+vrukQ2rnkhDlp60Cs00F5qS8iC/HgBFk5z9qsQ6sjz4E7wngF47pJ1ja2lD3N6BJkjrmq4Qs4rqhH3yjsJ81hVrvyBw9EjMgCNop880kRuow4tF9mphEihwKpsN37B5BgFa6g4x6uR8rtw6E9l0Z+w/JgtMnZyGiClB",
      error: 9.24e-9,
    },
    vapour: {
      range: [0.009999999999999449, 0.7094321288288393],
      halvings: "7765432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "g9go6qP9nnzhB6xjfz99CyzK1qB2FZEyo+x8oP9o0xc078M/0XsxB1DIAAsup5smP3i16yB8vzW3v5B80EvNqBFAsknq9hPnipq8Ck4nblgvDgvKviB6DPCs5t3v5O3m38xFznoCr4uF8qSnlCmIhBE+89kooOx5w+6L7k27F1zmL87MvtD+O/BI8qog/+Mvw9t3evmjlzBx2r9DjhkHziRltB9GF48y65tK5j1h30Bz2gitEx7szNzx6oBx51D3sL5jB0Cql8grnH13hnzvBx34j9C3pl9FrtqL/sU/iB5BD89hq7mDz/w+i0C97005Gngm9Q111mB5mzC/wFtMf",
      error: 2.4e-8,
    },
    incipient: [],
  },
};
