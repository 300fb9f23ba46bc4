import type { SaturationData } from "../saturationData";

/** R-454B: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R454B_LINE: SaturationData = {
  name: "R-454B",
  from: 190,
  to: 351.07754578833527,
  critical: {
    temperature: 351.4289747630984,
    pressure: 5304348.714825305,
  },
  zero: {
    enthalpy: 49.14360613706913,
    entropy: 0.5574446046163787,
  },
  bubble: {
    pressure: {
      range: [190, 351.07754578833527],
      halvings: "123456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "0799+l6G4n8yz9jB1ot5wzDisvg8Lv1iyjBiklmD3t8I6hZliC6FVCAs32t73lIo0pxtwKnvzl/Luhk/Qnw+S6mdxMoCEAAAA86+3/o0Iw/sxkqE52ou/Bg/wxB9rH2xBwCGAAAAA8s2gqx6Iopvi3/B3snrMyqzG0iCwDLFAAAAA+lz2wv9Iww1j5ex8wzCs2X/yB7LjCLDAAAAmym2s9+Ii7p5kPvo9V/8Q7pDpPlCLDAAAAsn88g0/Iu6w6vH35hKhrXx7C7KrBHAAAAA43qhn//Iqi3u2DpoyGn2QxyB9ERDAAAAA+4oixmgJ2t6izDtsian8kExrXrqE1arFjBJDAA",
      error: 6.51e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6777538004317099],
      halvings: "44321",
      degree: 8,
      decimals: 9,
      coefficients:
        "+4xup9Qujgj5D54kpG0tyVtulCs1EyGnFoBsni+5jR4jr26C1s5mCokxE30M2gBxCGA4hisprR804oyE781pEklgH/kW0qDxNqBF495v92R82jz8Grrt2IslwTtllBq0BlDYJynr2/nS6n20gKn07xLw8nuBn53Bgvb7wB7EG",
      error: 9.67e-9,
    },
    vapour: {
      range: [0.031622776601683805, 0.6777538004317099],
      halvings: "2222",
      degree: 6,
      decimals: 9,
      coefficients:
        "gmtt2vPx0hv8VpohJp+29H4z66Bxp/OguiD47lv5+Nh0tnhcxtkqqBxl59Cxh0ExnPAww6zm3L5rl0ktBpnjzoDx+07Ix00Xhw+Bh2Ewtp1zwHpqmi7/CppstlLpgn4qB5vh6ExzsQpq1B",
      error: 0.00000812,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6777538004317099],
        halvings: "221",
        degree: 6,
        decimals: 8,
        coefficients: "58q+ewx63Cxi0Fw7jBp9LstD9ax5ysasp77Blr7C4IpBUApr0rWs2piC9ooDsmjDgucg3G4rB",
        error: 0.00000198,
      },
      {
        range: [0.031622776601683805, 0.6777538004317099],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "93kwqLhijyPsg4ThpjFos5Bl8P04DlmuwmM5vjzM8zzL05PgKtEA1h6p8M5shjJosnPh8GpjEhPpBtvnzsN95gjI59vVpwiJp3xB5kHpf",
        error: 0.00000448,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 351.07754578833527],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "45vy89nGq26jv9V3vgk2nBuxr+oCvpjhEgjzHz3P+hB7BAAAAs5yqp/rHsorjtzOh8i6+Uk4vlhBz23uB2xjCz7C+EJAAAAsxm63+kI0j38zzKv/lj6Lix86R11zRytlB+NqGUEAAAmxh011zIggph2sEhw926Bmqw+Bq5hB+wG4W+CMCAAA4qj/yi6Iomuv2hCrmkjJsnmPu+e6xD6N4BICAAA+rj4pk9I8lgqogB/9mMg02Gu5SwiC+HgBEAAAAyx2n40+I0y2inQ+jzbwq0Du1K0kBoEQCAAAAogy/nt/Io9rroI4k0X81+BwvFyR8BGAAAAAqs5o45/I24zxnEu/sOg7d8oCoGSCAAAAAm1h9sigJulh5tEupuqB+6qFqsagyEiboFiBGCAA",
      error: 6.51e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6777538004317099],
      halvings: "33222",
      degree: 6,
      decimals: 9,
      coefficients:
        "wjo3//Qwv/29FxnoqNgtvkC5h2MosjCpyJg/gi6pRo6x2jEx58mEw+pGplSw3CxMwjh3i0R4opw/Fxow7I44wShwlBwlBpGgymuq+R4/jrrEx0vjFw4iBxksB59CxMgshzolS4/xuqCh14iQx73lDpxlVh0zDh0P",
      error: 8.37e-7,
    },
    vapour: {
      range: [0.031622776601683805, 0.6777538004317099],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "gi00z+P9mno4FsvxlDhxmN4ibgBzOyDVk7+ixzPrk/3sF4jiG/gpEk5IrTmBDAm740/iPjlsgpLzm10E/n6L67T55CuIbCyww1s8Njmn9rc90/3pB9lg+Cp74EnkPjEvEK6jn2n0LpuqzstB9291oDj51/I/7jYpkgC1/EhMd25xxx/Iz7qsxlB1+ly9Brg4sD953F9pJ9OZDuuvky/Fp7hkl8Bv72sgEhjq1IvogSzulBjxC3FN",
      error: 6.41e-9,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6777538004317099],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "h269tB9pvnI5kvGhu1BgsYpiMk7Dh/nx7B55zqF91rH9gmB5mGpalD5ki8sCphvnO5irlDp6oa9qhG15oB11H",
        error: 0.0000154,
      },
      {
        range: [0.031622776601683805, 0.6777538004317099],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "xz3y2Js+1hQ93mOstqEtutBgrM16C96wn4I4n5wO53zDswEsiB8GA9vhu7Hgi4xO486H4wxCg8LkrBsEp5zj0Ggr6nckx+1Ew88gBk7yFg4Xk1B",
        error: 0.00000753,
      },
    ],
  },
};
