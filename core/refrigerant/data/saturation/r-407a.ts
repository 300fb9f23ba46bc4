import type { SaturationData } from "../saturationData";

/** R-407A: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R407A_LINE: SaturationData = {
  name: "R-407A",
  from: 190,
  to: 355.04048391271965,
  critical: {
    temperature: 355.3958797925122,
    pressure: 4513916.689248543,
  },
  zero: {
    enthalpy: 7.046559169217675,
    entropy: 1.0911551688633936,
  },
  bubble: {
    pressure: {
      range: [190, 355.04048391271965],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "4/w89gkGu33+o1W5j+7zpBi715qC1po7DkjiG9uJ+OZAAAAm/64+kpHw1oy7+O/l64kWml02iBzmrxBo8kC9xC8BVAAAA8jhylziI2pszm3Kvu5v1Mg82+Rn8uV6/gBwGObAAAA663uksxI40mn3rE15t1jC+yuxBniZn7B5PtCNDAAAk6gtp23Isiy0hgC1nplOkvtB5iXpnDvOjCLDAAAsog2106I0/i30evuhmEn+zE3hW79ChN9BJDAAAulv/hi8Iivqg6Opp8hCvi9E/nT/tCnKtBHAAAAw9ir+38Ig+ipjH52ntBji+DvuN3vBtFVDAAAAiyr6ri9Iuhl7qDtg6erkqCtlG3QvBFAAAAA0wq/0o9Ig7ry8Cl50jD/soMhvyBh4G/fxFlBJDAA",
      error: 6.51e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6821912567118693],
      halvings: "5543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "k5y3wrQkvqu1Cx9qsC959Bqub7zCFeD0uyopwQongyjC5p07BiyvC5qB1JyBFA29vk31QspnkoD5y/1Dq5kItlWw1BtCFCu7su79Qgul84EvwhoGuuxO17mB+8E1X+CJs90vypRyzvm6Gvqx7Ik96ZrouD4gLtFRP4q46y1Rmnl/pFxk/hE0wnIj4B1ExDwBFm7z2v/R08gr1E/snjBsuzI2yPqsE0YyDS",
      error: 6.3e-9,
    },
    vapour: {
      range: [0.031622776601683805, 0.6821912567118693],
      halvings: "33222",
      degree: 6,
      decimals: 9,
      coefficients:
        "4v+32vPxon79K4vivDh2rYp8zFgzsD56fw24655Ophg1lLxigsEhz/LozQpxCoGgm+5yzN5y2kkcpr6yqBxx1mD551EpvNxMg56rsrLxuq44tBhsoltDpoyvJ5r6Zx5iCh9DgmroghH54/qwjDpugp+L5quyuBpl8qFxnuShl8B",
      error: 0.00000373,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6821912567118693],
        halvings: "3321",
        degree: 6,
        decimals: 8,
        coefficients:
          "1ziw/Fs+w8FphiJwjqBhtBpsCokBp1wg1Fg514EhxgC88ExRwCAl/2ynFwiqzI55tDwtHlSsEA9m5jtE06ljT8g90BwjsUsgzEw7e4zH",
        error: 0.00000923,
      },
      {
        range: [0.031622776601683805, 0.6821912567118693],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "12s7+Gg4nlE1koKgy7CplSs0C0P192o3Gk7t4D4n2D0mR5hBwCAhn+quGoiwoFsurH1uDx1DtOUtv1tjGogx+El9qV1wtH9ysB5kH5hB",
        error: 0.0000168,
      },
      {
        range: [0.031622776601683805, 0.6821912567118693],
        halvings: "33222",
        degree: 6,
        decimals: 8,
        coefficients:
          "tvo/1Gt8+8Ioq5Jpy2BpL09D51Bh202mH9q7iIhgU1lKoVlDU5qm2gI19ltSp6iTth2BtYpLpBpgt+sJpq02a5si1Bt0iFl5OxgB9Bhjnw6Lx1942BhkvxG1wrcx62D1qPp9B",
        error: 0.00000333,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 355.04048391271965],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "o0y/yj8F455tn9Yhmj7iwBys1r6C/or5Ekv0H5iMoWxBEAAA222r7xkHog77okQ3ono6Yq3m9oBph27Bm/3ChkD2ERDAAAi8r1v7/Ho/w2zuLrzox0Ng8vyVzkjWwtwB80BiNSECAAkrvkp1vIyqyuh2El/uvhC6lxvCwmgCwyKkkByEUCAAAmwqi2v2I225/gmCzqo4IkhlWmwxByyF4V6CMCAAAys3th45I8rk4yiBox4V6+tKmne6sDoN2BIAAAAuy3xls7I2px7xRukr2Bmj9F+4R29BmHcEAAAA6l555m8I8o61hJmhmpBumoDmlJidiDKCAAAAohu5y08Immh02Eg9sYypxB22DgKcCAAAAA0ynpp+8Iso7/gFijvlC49rI2xnBywG4kB4GqBICAA",
      error: 6.51e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6821912567118693],
      halvings: "3321",
      degree: 6,
      decimals: 9,
      coefficients:
        "o0/w10Q4k48hG5y5wMw3zsBh26Eh9DoyJ41jz1+Qop+ukEhwz1E44kJpsR4rBpGgts5gpRoqr3iGx3w4Hgq6RhnqCo5IpGw5io33RgpwirIh/6oPgrkO5huGooOorK",
      error: 0.00000488,
    },
    vapour: {
      range: [0.031622776601683805, 0.6821912567118693],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "oig+jvPx+2qmFh3iGslU53aw1GnrBgItBu6hx0kP/33wpFxkpW/0zBipBDNCAoyyii0Ot5+xtL5lj1F3y9Ii7B/bgCFAywztusN3iwqrdhr2quB5hyqDx+4FrxO3enDC8p42tgL5iiqxwB5mj03D57r2Kr44dnptC3zFtTjDyujxskIj9jpxpBrt32oC3xnlEzkoHh/LnSdDg1s8q4Ej1jy0kCto9s7Etit3Ktp7V3npB3qCvEL",
      error: 9.8e-9,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6821912567118693],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "hu80rH9z7sZlnwa15kI0rWhrRswE171u4I54mvTlrkpB9v+ElkRtsBlD9rkw1K50vguB5lh7G1zqiB943E57S9iC",
        error: 0.0000096,
      },
      {
        range: [0.031622776601683805, 0.6821912567118693],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "hxu82H5tmzO9whvBp+tKk+Ex3H03B1+5z2Ixii2Q5o8uBtv1D97HpQxCl20pqKt9kklBtpnhE15lKs7B4gJ4zC",
        error: 0.00000528,
      },
      {
        range: [0.031622776601683805, 0.6821912567118693],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "1j8pgFo56paxluGopmKtt/BgyV51Gl2z4jDox97kBouliDkmpL94Q90SlwG",
        error: 0.0000164,
      },
    ],
  },
};
