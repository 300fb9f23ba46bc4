import type { SaturationData } from "../saturationData";

/** fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R125_LINE: SaturationData = {
  name: "R-125",
  from: 190,
  to: 339.1390827,
  critical: {
    temperature: 339.173,
    pressure: 3617700,
  },
  zero: {
    enthalpy: 0.001112860286088384,
    entropy: 0.00005169203071039595,
  },
  bubble: {
    pressure: {
      range: [190, 339.1390827],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "8z6/zllG8p/ijyUtkz4ijBwyqx6B9nw4Ci+/D34FoJRCAAAy33knpnHmo+qv+NhqpttTyi7+cx3jlBo1zBpnC1DFIAAAkhzpvn/Hw0qixmKn675oLw2t9PzpsRuweirB0BCGAAA4ly0jstIy7jhgnE9+tg7Bg0t0B61U4zE6NyBGAAAA0gvsqwzIyj6s1+B982qK6x9KyuQ6xB+ESCAAAAmlluot2Ikj0ixezmruB+zpD+mGgR2BGAAAAA22xj+63Ioz08lPyxC6kjBwkC2FSCAAAAAmg0u3x4Igo4wzHu29Ds4LyW6BGAAAAAAu42rl94I2qlq6Dg1oCy5D8GQCAAAAAAgki56k5I2zwl7DkrlF2hQqrCqOgDUEAAAA",
      error: 6.6e-10,
    },
    liquid: {
      range: [0.009999999999999449, 0.6631846652938965],
      halvings: "66543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "sluwl/PoptmyBh68zBy4iBirJ1oCwLzBGm1u6+hQo8n0nBhpugBq9tB14BQIDAoqghmlQ273r+Bt26gCo1tEt5K8Z5BCA6op/kqQkj2++CvspnDw6qI11au6C7JiBFiupz2xQqwprwE1pm8EyihMzgqBojF3U2CL+kt3j9Qqpyv4Gr3rnIy5oR/11B8sH/b2DTis53hpRiii8oF9xikEwvhI1hGxLhDcEmkm66yR4iwnyEv5n1Byw7F84BsWgEmBJ",
      error: 6.37e-9,
    },
    vapour: {
      range: [0.009999999999999449, 0.6631846652938965],
      halvings: "665432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "q0k4kyP5zhx8By21hB2kCllL8mC3KuBHqpyozuPt25n1BslkXz0gB8bmBLCA+rgw+pPp4r4+Cuk0qBzk0D2hI7QcAA+8mgyhP3yzxtFut3kBpmxH8uWzqC0HZCsnp/pxO3+7p+KjygtDlwmPoyd/wE2StCKgsn4lsN1uv1nbxkozoBx6kiD18hDvqO9LnFOyqz32mLvovz4rBhkr+kDp+zzI1rvYn1gChrC0EpB62r1h1Ip7qmmkBrr1l7Bn5vmDrumFzwI/LHDsp/k44F/pmk25B5jn34D7nz5Hl6+Oz6anuBxCF",
      error: 2.23e-8,
    },
    incipient: [],
  },
};
