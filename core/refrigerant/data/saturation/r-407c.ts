import type { SaturationData } from "../saturationData";

/** R-407C: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R407C_LINE: SaturationData = {
  name: "R-407C",
  from: 190,
  to: 358.92513561579034,
  critical: {
    temperature: 359.28442003582614,
    pressure: 4639415.812472153,
  },
  zero: {
    enthalpy: 8.7391569012852,
    entropy: 1.04370790147748,
  },
  bubble: {
    pressure: {
      range: [190, 358.92513561579034],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "645u9ljGyoomylX9mj6krBu0uuuCnn5iE0uwGjoKgQZAAAA48vxxhpHs6zy8mPth545W62+ikBjo+zB8noCx5C6CPAAAAo+1r67iI4gkww7K9jq3/MuiqwS3jrW61hBrHOVAAAA45h7m6xIs6k8itEzm1slCyk8xBj/clhCpQvCNDAAAo194mm4Ik/rnygCl5p0O46kB3gYrqD/OlCLDAAAm94gql7Igprt7e7msrE777EtnXjkDjOhCLDAAAg67x/y8Io8m08O3hqlC7hpFhjVn3C1LzBHAAAAg74l/o9Ius89jHx8lxBnhvE98P/6BhHbFAAAAusk6sz9Iqo6rqDplwjB577CxmI5XlCHAAAAAs82sy59Ioxu94C7u0+DjixQh+hCnmHjVjCRHDAA",
      error: 6.51e-10,
    },
    liquid: {
      range: [0.03162277660168205, 0.6864190099593386],
      halvings: "5543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "sss7ltQqshi6ChsoqDj5Zw3rBvjGsF8CT2nusiyQitxxjC3xwjCk/1Dr/E/C4BJAil0qu3Q+hrtmD1jo1Dw9hJ/lc2zC1GMAostqv/Q+ixz3Eln58F2/0NhqoByxF7asDN4yhimrRus+/6Gpr74Ik1mYlwgD45J3EZR8ykmo3Rq4x+qFr3vgE+3qI78DhCtCiBFy0imnhS+1vs2E3j1lBgl5Hq3L+yD4TiDQ",
      error: 7.22e-9,
    },
    vapour: {
      range: [0.03162277660168205, 0.6864190099593386],
      halvings: "33222",
      degree: 6,
      decimals: 9,
      coefficients:
        "4/p1ywPh66h/Kw4p2E5+jhB5riHo+oFxm6Bw5um26Opu8llLh3g0ExrpMgqUhkDwMwmwvr0Nh8v+oc5z0vrBhnjnDx8iFhiOxMgh6ixrLpzzkpuB5ryxvDp2q3Jp0wahqmCh2Eg8hk9+G5z1zvlDp3vuqMxohxwB58xzF55wThigC",
      error: 0.00000693,
    },
    incipient: [
      {
        range: [0.03162277660168205, 0.6864190099593386],
        halvings: "3321",
        degree: 6,
        decimals: 8,
        coefficients:
          "t6xisFom0tGl3tLwnhCl3FpxCk1Bllt3gFspglFxl9Bw2FpVkDV557/xEgs9xJl7/BkwLlIgFA9zp8yD0k4mXg8vkCosxUo8mE49bkwG",
        error: 0.00000886,
      },
      {
        range: [0.03162277660168205, 0.6864190099593386],
        halvings: "33222",
        degree: 6,
        decimals: 8,
        coefficients:
          "l5t3gKgk0yD5k3HonqB5iDl6B0jBxguy6Jox33C10ewgG9L8BA1vgoyJo3y3Fw15E4tUhtBkDUx85glJwikzHwh7I9kG93EhUAx1861IkhlwGx7okBt4mMtjuC1uN5kC",
        error: 0.00000366,
      },
      {
        range: [0.03162277660168205, 0.6864190099593386],
        halvings: "33222",
        degree: 6,
        decimals: 8,
        coefficients:
          "156grFlpqgIoykKt1lCwkE0zD1hC9oth6FhxjpHp9fl7I8VlDUxgo1xG99l6Qx8mS5lxB5wBpLVxrgu6Ht185Yp75zBh4jFxnPxlBxCtq6lkKp8ig1Blr51G92zdx/7DtzPh8B",
        error: 0.00000654,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 358.92513561579034],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "+9n+wx6Fgqwlh0Z/ngtnyB683u/C72ojF+qmI/nNqZ5BEAAAq1x37gkHg26qyvQjigj3Zusr9qB90p/Bio9ChuDgFLDAAA4sqk37/Hyh5y+0L5n5phOyu/uW1k9Wkx0BmsByMaEAAA843x69vI4k6/q4Evgy5iCi1hzC48iCmiLsmB8EWCAAAwu7py72I8g/ujnC33x3ImlpXw30B+/FwXiDOCAAAyv8hyl6I8i44kjB62wbq/kLs0gB81DsO6BICAAAy/kpy67Io8q87Ro6v7BqnsGkpTgjC6HeEAAAA6t5t218IosovnJiw4sBshxD4+J0fsDMCAAAA8ov14j9I2s3g6Emtwa6y1BkhE8KgBCAAAAAs8s42t9Ii6tplFumwrCqijJm8qBshHwnBoHsBICAA",
      error: 6.51e-10,
    },
    liquid: {
      range: [0.03162277660168205, 0.6864190099593386],
      halvings: "3321",
      degree: 6,
      decimals: 9,
      coefficients:
        "o5umq2Qw77i6FpkuzL453rBpxxF4hGw0Gw4xgggRgk7vhE5y7rE498HphP4rBpG4933kqRw7j/+F5/35Hwt0QhigCwtHpG4wkjt4RgxyhgIhgphQgq2OhpjFo/Zo9L",
      error: 0.00000449,
    },
    vapour: {
      range: [0.03162277660168205, 0.6864190099593386],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "wqlrzvP18r2kFjixL64hBpge2tHpwB+IxB+67imlP3vl/oFzpianhyBgoBKPCAgnpiz0Oj/39uLpzwgG5+vI42BjegCDAsyio1sNvxi60dhx0svB/m9rDllqGx1OndtDCi/hm0/Krx1/pxB9tq86D/53hL9k9ehxyC1rGnTtCg4n07hI7lg2uqB7/1nrClqqrE380Hh2MxTdD4iurgzE713m0mC7j8iiF3r3pL1ylXr/rBzwC9EL",
      error: 1.03e-8,
    },
    incipient: [
      {
        range: [0.03162277660168205, 0.6864190099593386],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "5/lh9Gl109blojkBpglJkoUt6T88E9y5qvIp/xqWh30wBx6tFh1R9uB5Dx2s40Kxgs5zBpxqsH97xjBlz4ExrSx+B",
        error: 0.00000983,
      },
      {
        range: [0.03162277660168205, 0.6864190099593386],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "tkg++K91z2Sl+izBx73LopL96K44C93i3lM576yTxp4yBxh7D5zHhPxCl6jjgOlj+5oB9p2/D980H8hZgiOkxD",
        error: 0.00000792,
      },
      {
        range: [0.03162277660168205, 0.6864190099593386],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "1z3u7D84/rW995I8hwHp8xBgnT9/F17r3pCw03rdgsumCo1pI92RtzP9mF",
        error: 0.0000126,
      },
    ],
  },
};
