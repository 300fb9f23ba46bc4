import type { SaturationData } from "../saturationData";

/** fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R32_LINE: SaturationData = {
  name: "R-32",
  from: 190,
  to: 351.2198745,
  critical: {
    temperature: 351.255,
    pressure: 5782000,
  },
  zero: {
    enthalpy: 0.00008434848537162512,
    entropy: 3.6549130328293864e-8,
  },
  bubble: {
    pressure: {
      range: [190, 351.2198745],
      halvings: "1234567899",
      degree: 12,
      decimals: 10,
      coefficients:
        "g739yj7G2k+9sjkB71q9uzD8oy47L5rxojBsyjlDp/3Ik8Y/hCiGVCAyy+my+mIqsqz3zKhkwr8L0sypRruiS2qgBW8DKCAAA6g3wl11IqmiqosEx8ro9B0mm3Bs3J2uD+JmBEAAAAu+v0gh8IuyrijhCrqv+K2z/J08MwsBgFUCAAAAs8stwh/Iko5w1fxv+2BuygD+nG+S+BGAAAAAsph17wgJ++hn3PpxuC67jBmtC2GUCAAAAAmt/2uohJm7p/7Ho+xDwhN4aoCGAAAAAAkropp0hJk2mx+Di4rC6vE2IWCAAAAAA219tn6hJot/x/Bg2iBouByCGAAAAAAAk0k9m+hJ0+i+/ByykCwxFkWkDIDDDAAA",
      error: 6.6e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.6775562212763437],
      halvings: "554321",
      degree: 8,
      decimals: 9,
      coefficients:
        "wmv8shRqvzy6C9nm9GmqoiBhx8F8/gBnxFsa/C2ht9gmR+z+u9Bpyr6B+jwEh+M4nBhEOD4747grR+jmnhDt5q2C66mH9wZw5CrKoBFkhsz/yRqy6k7E164yEskwHhqeosFtWoCJgsjkp/R2+7yoHpr9tJu1/V3ymBpH4KHT+m3rnxSqpgywKrztqMq7ztB129CstbvgBmFR",
      error: 1.76e-8,
    },
    vapour: {
      range: [0.009999999999999449, 0.6775562212763437],
      halvings: "55432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "mt95ovQz4vk1Do2/sFv9na28iEt7UomD9NsBqsrh4oQ7i+9+C2x/nB9mhEs9KhgBiDLCkvi2ogQvotzwF+7iWvvpH+3WtvCgJjBEo7umvvP1/hztLx/01E5xjN6te70EuRnCKigqosoO7l/13ct7omqBxk99Cpt+E9qPRjGSw2x8q/L5jz69tBzo78pDx9tlJl3+Yn/iC3mFtMdwx+9ypJvx92hmBl2+6+B15lwDlm+F7vJzOXAgittjoGv/hum9Bpw1vjE52w6I9x1R5uhB98BtDH",
      error: 1.02e-8,
    },
    incipient: [],
  },
};
