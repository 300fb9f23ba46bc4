import type { SaturationData } from "../saturationData";

/** R-143a: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R143A_LINE: SaturationData = {
  name: "R-143a",
  from: 190,
  to: 345.82241430000005,
  critical: {
    temperature: 345.857,
    pressure: 3761000,
  },
  zero: {
    enthalpy: -1.7650537631837766e-12,
    entropy: -1.723685315609157e-14,
  },
  bubble: {
    pressure: {
      range: [190, 345.82241430000005],
      halvings: "12345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "u50nmg2Gmu+u2riBjxxq0rD2k1h8Kj1l2fkmq3CrriHk8UjnCwIZCA+xim48/H6wiu4mKv645nLgp2kQtqmQ21emEmEMCAAAm3g8+huIijg3qnEj7jg6Bg2t1By2P6+DgMsBGAAAAutiw5m0I45549+B5oqkKg5sK2vO0tB0EQCAAAA4u+ykk3Ikixx1e/whvBsuiD27FyQ0BGAAAAA4vk5gy4Iws1+nPxzYsxhBkjC0FSCAAAAAqltj9o5I05vu0HwxyDkuLkW4BGAAAAAAk60yn45I+4qo2H8njNo95BknKosCuU+F4BQECA",
      error: 6.98e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.6712972548691675],
      halvings: "554321",
      degree: 8,
      decimals: 9,
      coefficients:
        "sv52skQ8tp9+Cpl1yF4+5N/nKhkGu2B1IY8oj1qpQ21s6hCh55mCol4E1hLwYvBCAiwmrxuQuprjjDr+twD4soJ9td8hDrKiBF0kyjs2Qs+jp1E1ojlF6rjNvsvBs4FhX+CNkhiwkiR4zuz+Gnxi1I8goSr8zBs4HzjB2EVo2n4qzRm203iK7oimL0r+3BtxoDpcv5BlG9B",
      error: 9.98e-9,
    },
    vapour: {
      range: [0.009999999999999449, 0.6712972548691675],
      halvings: "55432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "w7qui1Pzgs/1D20u5D57kI7xGgqGlsBmGRyr0rsuPzr+hiDu6zuBrs4D04H1OSAAw6k73lP18klyFm1prB/1qI8hYpsCwHZCigj3j1Otvw+lLjrrtDlmhQ0zlBllF0TvCKir3ypvN11tl1b7o52nB1+m+Cnl+Dv+R0JxFQs5ljmpLvs5ogsBljl3kDnyj0I/18W1/8Bh7EnMdynkmn3Ip63uokBzwvh7B1z/nD33vFr5IhNTAyltj26Fzkz+85B9huu6DvzzjI378Pr6cxyBhDH",
      error: 6.53e-9,
    },
    incipient: [],
  },
};
