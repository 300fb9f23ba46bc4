import type { SaturationData } from "../saturationData";

/** R-452B: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R452B_LINE: SaturationData = {
  name: "R-452B",
  from: 190,
  to: 349.9679258299287,
  critical: {
    temperature: 350.3182440740027,
    pressure: 5246574.757991779,
  },
  zero: {
    enthalpy: 43.752192328313576,
    entropy: 0.6534743029025962,
  },
  bubble: {
    pressure: {
      range: [190, 349.9679258299287],
      halvings: "123456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "4omsxj6G6uwrl5jB99n9wyDq+wl3Llzg9iB4k1jDt0zIonY/+BiFbCAqptxqxlIgsvn/vKn2y88Lwig7Q7/1Ss7dhF0CEAAAAspjghi0I8q6pjqEz7q++BwgnyBhxD+4B0CGAAAAA0km2rq6Io66t4/Btm3jMmu+GyyCqEHFAAAAAq9hu1o9Iiir16ejtvwC+ybtmB/J7BLDAAAA6t6l02+Iox/9lPztuUp1Nx9C3N/BJDAAAAsx8qqt/Iu0wzwHljkJpgVr0ClKpBFAAAAAwwv5x4/I8js/2DvxgGtzPpwB5ERDAAAAAs8gi9//Iqqq6zDn47Y16iE9wXptErbtFjBJDAA",
      error: 6.73e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6764879982573896],
      halvings: "44321",
      degree: 8,
      decimals: 9,
      coefficients:
        "+1puo9Q+rp67D713nHqs4cxowDu0K5GjI4Ckup96jR20l06CnrppCs08Ep0O8pBzDKAw0+oprRym+nxExjlsE01sHx5VisDpP0BFw9zt62Rmin+6Gjr9uIqprT7uvB0mDCXFmo285nSq60w/JlxlrL6urvBj2gC4/SjBJ9B",
      error: 2.04e-8,
    },
    vapour: {
      range: [0.031622776601683805, 0.6764879982573896],
      halvings: "2222",
      degree: 6,
      decimals: 9,
      coefficients:
        "gkuk/uP5p2z1VxgimD544gHghy0Bx/qO4opD4glun+Nptw2gcxs2qqBhol9C5g1EhiOpGgh8x22Lxg66itBh0imoD5/45IhrwXh39B5vE4i+kvwHhrpuv/C5080iLhnqoqBhr03EpoiQx+zB",
      error: 0.0000122,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6764879982573896],
        halvings: "221",
        degree: 6,
        decimals: 8,
        coefficients: "9nphiBsqjtC5j2EspexgLwwDpfll4gesu60BxwzCpBoBUAhltua8jz8BlzRgn8DwxjBkiI8zB",
        error: 0.00000263,
      },
      {
        range: [0.031622776601683805, 0.6764879982573896],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "96is3Tt1juC4lvC4zhDl9HlmG9Gl+0p6T95jUt5Hpza15FxbVx677+TtkgqF9533BxsmMt17B97HlhB",
        error: 0.00000452,
      },
      {
        range: [0.031622776601683805, 0.6764879982573896],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "l97sqM1l8wPskxTxpkF8s+BptTspFxvjqmN9q3wMo3gMwjRgPhFAt5v57N9286IkmpQh2El7DxMpBhqvirOlkvnHhhqQl1lItztBl1G5c",
        error: 0.0000127,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 349.9679258299287],
      halvings: "123456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "g5u6nm5Gm3ypmgkBt+/g/zDonl+kMtsvwlBwls1D9q+L2wsBtxFqY7DOA6zusr8kIipqqvyKlnni4L0w8xR/xvR0xkB4RgGSCAAA6+662xzIyuttmsExp+66Byjl9B4pfigG8TwCKCAAAkx1y795Iw01uthCn+7qJy+mO6+a+gD2LwBGAAAAitsqj/8IuvmrigB55jU+47Fy5Pk3BwGaEAAAA667unv+I65o5iQ0gjV2phDu2IwdsDOCAAAAoj61vn/I4k5mlIo0gTw7yBisE8NwBGAAAAAg63w6z/I42oqlEy1yL46X65BgFOCAAAAAutpzp8/IozkqqE03+hBy1oEuoV82DoWsEcGCAA",
      error: 6.75e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6764879982573896],
      halvings: "33222",
      degree: 6,
      decimals: 9,
      coefficients:
        "w/wyhgR4ml2hG5jhzO498yChroRonrDh4S404//pRwrj1kEp9ipEw54GplSw3CxMgtv+r0RgskniGhijxIoi1ShjuB49CAowg07+R4op0wEp4h2Eg06CpyiBhrCxMwjp0tmSoy/x7Cx3+sM564sC5m9QhrmDxyR",
      error: 0.00000159,
    },
    vapour: {
      range: [0.031622776601683805, 0.6764879982573896],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "6kgx99P1kggzFsjvzCt3jM8tetzBhD2BN4rznizP7rruqFnlVzw2DiwH/QiBDAoq+l1iP3u6+mLrxh7Exz5Ki6PjtCqHXCgvq0m8Nvmuupc9595pB9xm9C5g5EliO9IhEImp9xn0Lx0p1otB9jukoDz148Ily7X58+Bj3EpLhBwpy+6/Izgr8rlB9hk/8Bhz+qDxjzFz+I/NXDm3u9ugG5i2/17Bh45n+D3p/sIvuiR1oiBlnC/EN",
      error: 6.27e-9,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6764879982573896],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "9vmnvBtmqjHxgyExuiB8pV53K80Dl4816Bl0jqEpo1Ep4a50EtT9B17n9nCpixvK1v5mC9+nStjlEtyc91F",
        error: 0.0000196,
      },
      {
        range: [0.031622776601683805, 0.6764879982573896],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "t284xTs/5tCwblm4Bo3OwgG8Btw17tTwqo2Bw7hH0pwB4pHgeUh4ipkTo9g0Jg7xsC8lxN8pzBsvCpa",
        error: 0.00000437,
      },
      {
        range: [0.031622776601683805, 0.6764879982573896],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "h3/y1Kgr+/PxjkOo9oEt3wBg2Ox6Dl1zu3Js20qOh45EsE0UoGAh5gz7I42q3NovsDw7hCwnKokB4Dt5gq4Hgx/wY8j99D06udwivFw/cwkE",
        error: 0.0000092,
      },
    ],
  },
};
