import type { SaturationData } from "../saturationData";

/** R-513A: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R513A_LINE: SaturationData = {
  name: "R-513A",
  from: 190,
  to: 368.1887756494981,
  critical: {
    temperature: 368.5573329824806,
    pressure: 3654865.6661436735,
  },
  zero: {
    enthalpy: 31.413096911380237,
    entropy: 0.7506540814333402,
  },
  bubble: {
    pressure: {
      range: [190, 368.1887756494981],
      halvings: "12345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "8+8w8/pG80wh+pqBjt81w3Ei0xg9Q1qj32Bm6/oF9/6PivzBp2FgVhCEAs9j1im8Hy01nk1LlikkyOmyntW73ia4xsBlQ8EMCAAA29zhpmsIu494y2Epop4pCo3mjCmiEkhEyLsBGAAAAsy+jpgzIs8irnlC309nN29yLo8NyuB6ESCAAAAog2p3m2I49huxhB3gslCgpnDy+F6Q0BGAAAAAwk24643I6s87zQz9/Fg+hBggC+EOCAAAAA0yhr4x4Iwtl9pI6skC6pK+PcCAAAAAAi2ymti5Iu8njrIui/HmkT1mB/epLzDjBLDAA",
      error: 6.56e-10,
    },
    liquid: {
      range: [0.03162277660168556, 0.6960433955050297],
      halvings: "554321",
      degree: 8,
      decimals: 9,
      coefficients:
        "0hw34hQ8qrjmCl+m9Cg2zGnhLrI8FhBE0mtzzlQk2xi2B/gsqB2rtCv6EiJPAAq/guiqQ+6/t3C/7ksC23uFzlQwwBxEOD4tmnnxQ2h4lrEt6ojEgspInmc6yDhO0BHwmg5r8Qk0n70Gjpj7HspnQl0jB+4D5OqCRmm/rgtRimvu7Jnry+Juxr1BplNmyZ9I3RxB",
      error: 1.12e-8,
    },
    vapour: {
      range: [0.03162277660168556, 0.6960433955050297],
      halvings: "33222",
      degree: 6,
      decimals: 9,
      coefficients:
        "g5kz39OxoztrLwrqtIpjt4Cg7+Mp9kBhvFglojpnOxix9tLh7mpFx81N4yZ52DwMwz0ry/Mh4mvvdxqgzvBpiptDxznGp3TpGov/j3yK5jz2qxBx0rx8DpnlpL5wzfh32ChhHwp7q+4Fhs0ohxDhzkxxOxpx87B5o7lHhn4Zh32C",
      error: 0.00000608,
    },
    incipient: [
      {
        range: [0.03162277660168556, 0.6960433955050297],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "5yr55Dpu3Ow5yT4iiDotTpnCwvB5zu/tDgq7kP8m4lEwz4Us/5C8xM0e",
        error: 0.0000086,
      },
      {
        range: [0.03162277660168556, 0.6960433955050297],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "linnvEo+wQl69Vx8rDt0WgmC94Bpj0r+EtvhjU9khtGxi7sBpt1J5ikChuN",
        error: 0.0000164,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 368.1887756494981],
      halvings: "12345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "uk9163pG8q3r80qB/9p/t7Eqvj44Rv+3s7Bkjt+FxksSiu7BlwGiZ7CIAkn05/l8H+q9nn1L/7580Osk88Wl1kbg5uBvTmFMCAAAo3n7kmsI6ij6w2E3v+0pCkgpkC0nEymEkMwBGAAAAizk5igzI433knlCl3/jNwk8LszOqxBkFSCAAAA4r3oxm2Iumk8xhBh8jjC6isDitGuS6BGAAAAAig73143Ig52s0Qj22E+5kBgpC+FSCAAAAA265p0x4Ii4orqI828C6gMkVuBEAAAAAAixksqi5Im659rI4klLkmnB+1DiLUDAAAAA",
      error: 6.54e-10,
    },
    liquid: {
      range: [0.03162277660168556, 0.6960433955050297],
      halvings: "3321",
      degree: 6,
      decimals: 9,
      coefficients:
        "gi4+zmQwkvwwGhzk1Sgnm8Dhrmcgi9FpghBwl4skxQgkqhrEh79iEgxtIxwc42DxMouuop8Q4spw1Gp8jzHgjiRx/hBg9DxMg+t+utRwy/uxKhv82Co2trDg/vLwipDgpN",
      error: 0.0000029,
    },
    vapour: {
      range: [0.03162277660168556, 0.6960433955050297],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "4p5ktjPv+t5/F2nxyE74yS+ybylFt/B0M5B+yw9h4Ozu78uFyr5Lls1FmjN5fiCFA0us3pnO57/ouLts+nFzk5N6gaj4DoMrBEwgvvy/Mxq7yvdhn8wvB1yytD1mpGnjUzD1FK874o2yKv4/jsxBvqmm9DnrwuL/rugB3+5CnwHtTxB2tmqq0H1k13/qB/0shuCphg0EtxqI5mO9WjBD2176ljEzomhyoC90l7rFhursMv2ua9j1BpoD3GP",
      error: 6.65e-9,
    },
    incipient: [
      {
        range: [0.03162277660168556, 0.6960433955050297],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "x9uz2DwvpQ9h2TxxpDx3WkwBl1Bhwkq6Dtn3mE9t9Z9u2ChkI9alD9lh5vEx7z5Th1/gE5l2V59wDlkRtqC",
        error: 0.00000865,
      },
      {
        range: [0.03162277660168556, 0.6960433955050297],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "5up7yEli7S0g6Woy8DsuZ9iCk6Btzw7iEoqhkVgk1uG0k0nBgq8Gk1kB4lE",
        error: 0.0000106,
      },
    ],
  },
};
