import type { SaturationData } from "../saturationData";

/** R-404A: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R404A_LINE: SaturationData = {
  name: "R-404A",
  from: 190,
  to: 344.92502259694936,
  critical: {
    temperature: 345.2702928898392,
    pressure: 3734886.577549812,
  },
  zero: {
    enthalpy: -17.498240889414777,
    entropy: 0.7533926193720654,
  },
  bubble: {
    pressure: {
      range: [190, 344.92502259694936],
      halvings: "222345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "w3w/ypkG01utziVh0us/kBy1vrgCp69mDijhF5pI6PhBCAAA44jv/jnHyy+85lO1zymhUiwl2e940pB2l6B1mCMLCAAA06ovst/H6rro1qKv+1twLy98yQjqzRgpfoR+CEEAAA83+zx3tI+2/9yoE35w07Bonw1BknN23DyKmBEAAAAq67pi+zI2hm5s/Bvt0zKol9JqgMiiBgDIAAAAAyj94h82Ikjlm7evh02BitvC8tDyGMAAAAAAs69llq4Iq0i0pP3/oGwpRqJnBLDAAAAA2vwijh5Ig72t0H3+PwKhNhCJDAAAAA6+uxrw5Ikkp8zHl+qH7ouCv+W1tGx6BhRjFxBPFD",
      error: 6.94e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6706015910932658],
      halvings: "443222",
      degree: 8,
      decimals: 9,
      coefficients:
        "w+ly0oQussy3D999oG+k0Uz4lC6iG3GxCciohqhvQq0ir4Cj71rC84zExsLkdrCGAsqw3n2Q+g80rEjqgrEmo+Ipmbi9ClKkBFwhogrhRst9hzG7r3iI0gzQlyoBsmF9U2CN6ugy/sRomi/kFxow7Ds0pIn9GgJKQA67y7z2R4844xE530biqpK4jfkxGkiB+ES",
      error: 8.94e-9,
    },
    vapour: {
      range: [0.031622776601683805, 0.6706015910932658],
      halvings: "2222",
      degree: 6,
      decimals: 9,
      coefficients:
        "grgpy6Oxj21jWhr0Bx467GojrxBxsiOoruDg88i1pN57jn5b503ooBpzo+Cx3/D50OxMwyq1ljLx/78nsBhlrglD528zIpzlX5l7BxwDor9q8/G56sym9Cpkjr4Kptr9oBphyyE5quPx6wB",
      error: 0.0000155,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6706015910932658],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "5yo/+Fk/srD93uKg6Rh3fkxIhkD1+637Fl1sCh8mKx/mB9tElNAx1vohGx1pvGpnqzBhuzH57hB5+ExW",
        error: 0.0000175,
      },
      {
        range: [0.031622776601683805, 0.6706015910932658],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "h4n/gD97tM8z1F0oa4qJxgBgPx1798C4278FgrliC8g0O4v0Cw/NknD",
        error: 0.00000495,
      },
      {
        range: [0.031622776601683805, 0.6706015910932658],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "xgw8mUxyxlP8loKt7zG4hzBt6Ok7Dpzl7mV9+2zR1y5XxwkC1wC9LAhu3uzW1t0icp8niCl16FtmOtdpB5to2nZhinm8Blj3iHp1/b9+xDp8Op9B",
        error: 0.00000756,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 344.92502259694936],
      halvings: "222345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "i7w8mpjG6jy/wvVzr/60mBizjjmC1no4D66xG1sMua9BEAAAwo7710mHyyyj9qO7p0xxUo1ilgBvuntBgriCt1C4BPCAAA++l+ul/H2/09mtK51nh2L6rqkRvgpS28hBqS+DGEAAAu7rp/ytI46+nxpEvj+77Boum4Bw/SyzEmO2BGAAAAiuv996zIyr668/B3jrpKw1uL0tRk4B8FWCAAAA8++x352Igqholfr9urB2+0D4zH+WuCKCAAAAookhso4I+3pwwPui+Co5sBinD4JiBEAAAAAog851/4I+t2p5H0/nG2rSorBgEOCAAAAAqihnrv5I4mwy8HkxuZy/nE4scm/Gw7B2Q6EuBOEC",
      error: 6.92e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6706015910932658],
      halvings: "3321",
      degree: 6,
      decimals: 9,
      coefficients:
        "40p2msQ4lr1nG5xkkOog5lCxswMw2mCxqL475/w2Q49xuqEh1wlEw8mIhnYoxCpGwt4tyhRorktyG568+Ho9/Px8lBg2E5S4zzx9xRwq5x0Jx+m2Jok0/Bwq2CgxlCw5Q",
      error: 0.00000414,
    },
    vapour: {
      range: [0.031622776601683805, 0.6706015910932658],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "+/31nqP334l0F+ru0Cr6gM0uhB3pCAsBNqznyq/O1v+/qFi+tDlxwD87G1QmBDAgu+7+uOpnh0kL5twpEpwtLq9N3gCwGXCyqzv/oN127i8bp3g6oB1r1+Cl3mE/0O7LrDEmnj8jiL3j/iysB71j0mD5yx6I12+Xr69Bn9DnJhCo3q5/uIt0y86kBrvnq8B7viqD7jzFjmJ5NVD+6u77wF5h01+6Bvi/q9D/+usIv+gR3vhBtjC1EL",
      error: 1.09e-8,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6706015910932658],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "9ks0pGpz69Ds90Fhxd40YluH8sChxk3uG1h1mB0t+D0mMgjBUpB93u6vGk1qDsq3Cp4nCp0X55E9a",
        error: 0.0000137,
      },
      {
        range: [0.031622776601683805, 0.6706015910932658],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "l0m9/Cl9yH1s/JtwsBtxL8Q1Px46tiDhzzoC5uyM5jtBl5EtOV9jvutD90ogKl7i/B96gKtrxB5zH1jB",
        error: 0.00000258,
      },
      {
        range: [0.031622776601683805, 0.6706015910932658],
        halvings: "221",
        degree: 6,
        decimals: 8,
        coefficients: "9n3y1So3u7OlixIk54FlkqB08L9gDp8wn2Rg5moRw40Wk0gCsqC0KA90q1/O80w1wC8n+tOgop2Csv9Os72C4oP",
        error: 0.00000846,
      },
    ],
  },
};
