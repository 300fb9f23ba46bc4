import type { SaturationData } from "../saturationData";

/** fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R744_LINE: SaturationData = {
  name: "R-744",
  from: 216.592,
  to: 304.09778718,
  critical: {
    temperature: 304.1282,
    pressure: 7377300,
  },
  zero: {
    enthalpy: 4.00531092012683e-12,
    entropy: 6.01759453144055e-14,
  },
  bubble: {
    pressure: {
      range: [216.592, 304.09778718],
      halvings: "123456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "sqlujokIgyiy9sO/v92lXuqusrB14plCsm9D1tDkbU9BLGCi63l6x3Islv0lvFvrwusDy+xtDprX+7FqOgBFAAAAyt0xit/Ig98i4uChqrmT0pgQklNi2B+GWAAAAAinojlhjJksn25lBh12qDg85D2tFwLkBGCAAAAsi63w5kJ40v10SvwxO8iiB8/B+FSCAAAAAgv4wu1lJ6t1wpJ4iEknL2U0BGAAAAAAgln/sjmJ86t+0E0goBi0DiHUCAAAAAA+umzsqmJiv70qCmiX+nBuCGAAAAAAA67glivmJou59qC6o4B+nG+iBsIuCaKECAA",
      error: 6.85e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.5364947779700044],
      halvings: "55433322",
      degree: 8,
      decimals: 9,
      coefficients:
        "0/siwvRwy7r9BjlyoC4uiJ9s0BwvJt3BuK/B+tvs+yRo64+xBthjf+/jBn2CgLpBEAixpik3Ryu4myCxogqCu2kEjnFMpBMDw4pk59RoztzgEr5vkEympI33bo4F/S7CY8zyvglS+j7roD9u0lC6igDnrIoSiDVAg/7tirS6+tl6C5vsuB+5uBlkBhDAEA6kwv4ySg22w5E928yD+3nFv1I+rB6CDXs7vo07Sm3vzjEr3i/Bo5uDjtD2TGrBM",
      error: 1.44e-8,
    },
    vapour: {
      range: [0.009999999999999449, 0.5364947779700044],
      halvings: "5543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "uh6r/gRvwnnwC6pk8B999HmypBrpHmqB9HuBozz0o8Q720vnCk9nUh6oB89CrJeDA+p9961Q1js5lEm84czt3DmrG/PoCLC6v7yupQ7xwqoIrivqBvr8J8vc51CiCKCqr1s3uPx5yq+Sj/wpSx4ynB58Vp4EyNjEiBk3vgxiOtggr4Zv4rhmB1v5pC93gEjhI3IbJ84wn1hMvnyxqoBvvp01Cp+yvGzzrPx1iB9sC/HG",
      error: 1.15e-8,
    },
    incipient: [],
  },
};
