import type { SaturationData } from "../saturationData";

/** R-507A: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R507A_LINE: SaturationData = {
  name: "R-507A",
  from: 190,
  to: 343.42114001621405,
  critical: {
    temperature: 343.7649049211352,
    pressure: 3704824.995769701,
  },
  zero: {
    enthalpy: -19.34765197434403,
    entropy: 0.6309963681030563,
  },
  bubble: {
    pressure: {
      range: [190, 343.42114001621405],
      halvings: "222345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "o3314ykGomnqn9Uxs07ukBsipj/B3tukD498EnjIwPhBCAAAwj7itlnHmjv+ljOxs9q6Tiyinexv2oB494BllCCLEAAA8ko27q/Hg107npK/42ktLqxktQ9jqR4+eqVgDEEAAA0k7rnztIu78pkoEt46i7B6ov1Bi0P+gE6LsBEAAAAg5uqk5zImsuqn/Bt3htKo4qKw7NwpB+DOCAAAAoly0822Igm8s5e3mpyB257C+7EqMkBEAAAAAy9nj+k4IqmotpP95/Cm+aorB8CGAAAAAAg0qn874Ikg160Hg79BygHyIMAAAAAAAyll2mr5I6lh31H+/pFokIt1B/YrIzCbJDAA",
      error: 6.57e-10,
    },
    liquid: {
      range: [0.03162277660168556, 0.6688024314858183],
      halvings: "443222",
      degree: 8,
      decimals: 9,
      coefficients:
        "w/n73oQ4phy0Dx1n+Fmp0TlqlCq8GtPRQmzprgvQiwx92Cj8qoCw2qEtzKkbnCGA6k46j2Q+/imqEvv2mEk8wI50Z22CrJgBFosjrkhRmnz5xGjhn+Hm2+PpqmBihFzUwCLq+qh3sRsy+okFjtz6DizlIt3GoHMQC00qhq2RsgjkxEv/mcgykK4ze+rGmhB6EQ",
      error: 7.73e-9,
    },
    vapour: {
      range: [0.03162277660168556, 0.6688024314858183],
      halvings: "33222",
      degree: 6,
      decimals: 9,
      coefficients:
        "g1409kP5+2p/KgnjyFhlv8Bg4+Jpq1B4zHw6m+ivOx9jjjLp9skE552LwnP5kCoG45x/qpNpmq51b5qqnoBxqq9C5y9DpoOxMo0uukjLpwh9hsBp4mqkDhtlxIhl/Wpg6BpqD42trzgHpum3x8Cx/1r0KpzgooBp+xvEh6iP5uvB",
      error: 0.00000321,
    },
    incipient: [
      {
        range: [0.03162277660168556, 0.6688024314858183],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "56s2lF4yhoC1qzI97Ct5WspFl/Bx/6xnFpxlkG5488Cpr/Wtm6Ehqe1mH",
        error: 0.0000131,
      },
      {
        range: [0.03162277660168556, 0.6688024314858183],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "p3w3nD1ig0Bow+FgnEkrQ90D4rBx3/umD8tvpEki2/BolvO4pyCsvMs5C",
        error: 0.00000822,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 343.42114001621405],
      halvings: "222345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "6g62xykGmon4x9Uv2p8zkBmq89/B1tlnDihkFnzIuQjBCAAAq1mjnlnH4wqvgjO3ozu6T0+4rerhppBkn6BxnCOLCAAAusghtq/HorynlpKpzlxsLi35tQ//pRmtf+ToDGEAAA61gr3ytIm/nlloEr7v76B8141Bk1QwlEuMuBGAAAAg32z24zIo360o/B9jwpK4zyKs5OotBuEQCAAAA+2rvx22I6sry6e5/+vByliD6yFiPuBEAAAAAkrzi1k4Ii4qrqPvpqBszfk7B4EOCAAAAA0i18074Iur5x1HknjD0hKgSsBEAAAAAAopmrhr5Ig3+i3Hy/6Kg/rBq9G6uBuLiDcICAA",
      error: 6.57e-10,
    },
    liquid: {
      range: [0.03162277660168556, 0.6688024314858183],
      halvings: "3321",
      degree: 6,
      decimals: 9,
      coefficients:
        "wuzz7rQgnm4oG5573OgljsChhpOgl1C50O4v/mm2Qoy6jqE5s7lEo+sIpmZw3CpGo4r3mhRw4k7xGhmu+Hwp4P5imBo8E5Soy29uxR431xxJpt2wKwq63BgtQ45xBg3L",
      error: 0.00000304,
    },
    vapour: {
      range: [0.03162277660168556, 0.6688024314858183],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "m/minqPpm970F81m9ClttNsloB/kDyCqBP8hi7p/O7l4yqF+nwF1z1DquH1SsBDA28kqgvOx+z5iLr/wlExwyL41OvjC+GZCixp9opN1irw1b/wrnoBvsh9C5q+DlqOjLrDEsxhljjLzm0rhsB12qokD11hxIzt/W5r6B/sDlH9B4vgmmxIt3lqlkB3p6o6B/11kDljmF/pI7LRD0j2+n1F54kjr5B98ri3Dh303H/giP/5blzBnDH",
      error: 1.16e-8,
    },
    incipient: [
      {
        range: [0.03162277660168556, 0.6688024314858183],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "5p52sFxovnCoh9Iw5G8xWtkFg8B5j3/qFo403FgprxCwy5Q8quCsxGof",
        error: 0.0000113,
      },
      {
        range: [0.03162277660168556, 0.6688024314858183],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "x9q6iD8yywB1jpG1wC5tP80DxqB1v3hkDpgngE92h6Bx/iN12qCp1KhhC",
        error: 0.00000807,
      },
    ],
  },
};
