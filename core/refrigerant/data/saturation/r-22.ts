import type { SaturationData } from "../saturationData";

/** fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R22_LINE: SaturationData = {
  name: "R-22",
  from: 190,
  to: 369.25807050000003,
  critical: {
    temperature: 369.295,
    pressure: 4990000,
  },
  zero: {
    enthalpy: -2.627172750237493e-10,
    entropy: -1.1586573369242976e-12,
  },
  bubble: {
    pressure: {
      range: [190, 369.25807050000003],
      halvings: "1234567899",
      degree: 12,
      decimals: 10,
      coefficients:
        "65w1zv0Gs5zwj0nBzu/pssEwn964Pj9jt0Bkz+kF9k+OqtsBhqE0OzBGAg5i6t0jI0o2kzgLzqjmxN00w1UtxmX80pBzZ4DICAAAowrnl5yIu5196uEz+6ykCwhw+B2gBklDqIcCAAAA273+io5Iu/k24hC9vhuM05+J2jJydoDOCAAAAor1rtp8Ii2ny7f3g9lCg2wCu6E0Q+BIAAAAAg6/1/49Iq+sy4Pr0/HqnfiqC8GWCAAAAA4vvi0w+Iy8vi8Hij7B+yM+bsCIAAAAAAwmhzu8+Ikhzt+Doo+B41E4JaCAAAAAAy36wsi/Iyriv/B+1gB20BoDIAAAAAAA02q6rm/Iu9x7/BmuuCyiJm3B2N+DmBMECAA",
      error: 6.58e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.6967827259313613],
      halvings: "5543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "yv8zouQqlsq3C5551F6ugXpr9C2+JrPpFoCswgr6yQkxsy9B7wq3B86hEvmLuf7CIA28up73Qq6//hD/ov4CmhrG90X42CtJiBFsnr44/Q48ws4El19qFm8xJl8R65C3W0DL6k/50rRmil7+G/39hJ6hzXx69B8uJxvB9CwC4phs+3R0/wivF59/4Dm+1Gr4U2kCoDVAss1wkiSs7704E9145B815G+kPyK1HdH",
      error: 2.04e-8,
    },
    vapour: {
      range: [0.009999999999999449, 0.6967827259313613],
      halvings: "665432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "i969lgQ1xu3gCy+0gCnspE0vE0YjHkBFqq3xw8Prxiy1B+jmdhw5BwqD5FIAAs/mz83Pvgv29Cq5ysB9vuE+iMziBkDJAq3x3yvPzqnpsF0l3bni7Hw9Y94CmKnBE052qo/O/r/4iLvkmwE7qoOs/ex8EqTvCKyviqj5N9ynrmcli/ksB/r5oDrv0F51T/EpEMsv2p/vLzmur5uBv8zk1Dvj71Kt/+d55zC7oHzTvBw5n/52Ivgh9voBzkv8oCzw1qE759Hz7N3WjBD8r3nssFr1sgnkCzi43hFvrw6L143Zpk0BxkDjGN",
      error: 7.15e-9,
    },
    incipient: [],
  },
};
