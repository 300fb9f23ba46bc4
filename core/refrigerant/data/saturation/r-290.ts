import type { SaturationData } from "../saturationData";

/** fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R290_LINE: SaturationData = {
  name: "R-290",
  from: 190,
  to: 369.853011,
  critical: {
    temperature: 369.89,
    pressure: 4251200,
  },
  zero: {
    enthalpy: -0.00003234315481043904,
    entropy: -1.6343512267334503e-7,
  },
  bubble: {
    pressure: {
      range: [190, 369.853011],
      halvings: "123456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "w49zk91Gquwpk8kB17lh2/Dwz/nmOjm5tuBq5mwE/xmNqroBtmE2PpBAAmnio2giI+iyymtK3zhstM8rw4Sv9hV6soBZiHaADAAi1oo+rwI2mk77nE/vs/+Bi3v6BomE6/C0M2BCAAAAwlllhx2Im/l14+BvrynL4n/JijL6hBmDMCAAAA6pvjgu5Iwisovevox7BuwxCslEsLkBEAAAAAommkx76I+vkqjPv9pG+8Y8tB6DMCAAAAAu852ly7I4s7uxH6rkB4hImPoBEAAAAAAom+kw97Ii4++4D8nlBozC6EMCAAAAAAg3/wil8Igt4u5D+uoDw0M+nCwRgF0BSGCAA",
      error: 6.67e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.6973763509799089],
      halvings: "5543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "8j8xviQ0s082C1n+sFqu4TnohCoiD4fzNqDyn1ghnQ+giw9Brz84B259DjzKwdzCGA+o7xgsQu67vgD9h9+Cw16GtmWwvClJiBF67kh4zQi8ln0Eh39kFu37KlpgBk9DzQoCL0thlr/Q6zro6Gxki3I05jWz5+BmzErLkFfy/uksrRg+jzqFzhg/D2/rHp6Jmb3BGA+v5lp1Roisq0Ep+l2Bu4wF3qBjTlDwBO",
      error: 1.81e-8,
    },
    vapour: {
      range: [0.009999999999999449, 0.6973763509799089],
      halvings: "554333233",
      degree: 8,
      decimals: 9,
      coefficients:
        "kg6v+zP/v+1sD01pmEzr6Pq4qBiQpuByOnD29nn6tP/q/i6CymyjBxsxDupJ9YgCHAu+kh4lPhrnnoF0gkVzhrG8hUzoCmIfEk//351O7zlj6Kpou/D/71MqlXz1DoPjCIs/654+Nr9zhqM5xh8HzogK7jE9UNFAqr5q4jNvltn6OxtovMrhzPhgR7IeLDugjwvrLtnxnksB7w1xrDjo+2Jhmlb9qtCrnG9SR85xl93I9kz02lBp01uiC/1s9DzgjH3nMjUfDgt6rs1F1/697+BnwupyE1v0yK3t6W7juB75CzFN",
      error: 1.54e-8,
    },
    incipient: [],
  },
};
