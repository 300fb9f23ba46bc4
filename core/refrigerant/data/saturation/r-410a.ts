import type { SaturationData } from "../saturationData";

/** R-410A: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R410A_LINE: SaturationData = {
  name: "R-410A",
  from: 190,
  to: 344.14596930192704,
  critical: {
    temperature: 344.4904597616887,
    pressure: 4900995.320311964,
  },
  zero: {
    enthalpy: 10.595327740958624,
    entropy: 0.617475703632689,
  },
  bubble: {
    pressure: {
      range: [190, 344.14596930192704],
      halvings: "222345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "q5wkv+oGy+6whiV1gijrkBuo2g+B73ugD66vEtyG2JRAAAA+z8386rH+90hgoOxpw08Tk/4gez7roBu81Bv5BiCPAAAA8vh0mpkI8gruntKzporxLotnpQhgmR8jfkiByFJAAAAiot7g3yIwpmt2pEnn7o8B4ow1BimNy4CgEKAAAAA80wjk/4Is5sn8/B1979Kmw0IsyF0KYCAAAAA+r43497Iunv/gfjy9gCgwwBycEJDAAAAAm2nljs9I07vgrP3p3MqzEnT7DTDAAAAA2mqmij+Iuo1p0H380Dn4E5YhDNDAAAAAmpoqpy+IknkyyHxmpO1k6CxnT33DnVvDTFDAA",
      error: 6.65e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6696721425251894],
      halvings: "5543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "gil102Qon7i3ChynjD/3c6pkBz4DnGoDL6k3xs7Q+6t4hC9j5gC6zvDtsEpF+BJAoj5o0gR603gkD1j7xDkvxIzib2yCvGKAiwp7uoR4rmwzE9xy8Fqj5NjtjBm3EtZwDNos4v7zRs6221GnuuhI418Xrr0DgkL0BpBJ2u102/R0jwyoFtwxhEi8kHo+EvTpH+BFs43+vpSu5j9yEjr+uB87wFhsH2MgEDC",
      error: 5.88e-9,
    },
    vapour: {
      range: [0.031622776601683805, 0.6696721425251894],
      halvings: "2222",
      degree: 6,
      decimals: 9,
      coefficients:
        "g194trP5l41vVpmrgLh06mDwqiMpziCpnHwnv016N5jjihch51qpBx799CpkoEh+KhZ4v7puzLxvt73sBp+w9lD5svyI5k3Whv3BpqDws42lvHxgvqy9Cxm610Khxo5nBpnisExgyOhjuB",
      error: 0.0000183,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6696721425251894],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "xvxshCwuhqC55iG1wHtqMkzHtvCh/x89Bskh0B0qnO0luIwklCgqP0zD",
        error: 0.00000954,
      },
      {
        range: [0.031622776601683805, 0.6696721425251894],
        halvings: "221",
        degree: 6,
        decimals: 8,
        coefficients: "t9sopH1+wmDk6lDxobw1NpjE4hBhr79uHx6ptC0gxE0wHtdpBU5mj60Ht7uoEhzxmB942Wl5iGtiuBpzL",
        error: 0.0000147,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 344.14596930192704],
      halvings: "222345677",
      degree: 12,
      decimals: 10,
      coefficients:
        "46kjy7oGi8946iVr4gowkB29h3+Bju/iDmh4E1pHyLVCAAAum7554rHi09nkoO5ui19Tsr3le380oB0t3B16BiCTAAAAix8mpnkI0h7kqtKp3x2wLyqguQngiR0hgBypB+FNAAAAmt0+r1yI8znh8pE/mxz7By4j3Bk7QijDoFQCAAAAqno9694Is4+9hgClsiyK8wrJg2HgT8BIAAAAA4797587Iy+7slftps6Bou/B2vCoGQCAAAAA8ot+rr9Iot7kuP70zIwgP2PKDAAAAAA29mrwi+Ig9hv2HvpemjC9CVDAAAAAAihwi9x+Igjgo2H/ooBngF6PkfmPyF4BQECA",
      error: 6.6e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6696721425251894],
      halvings: "44321",
      degree: 6,
      decimals: 9,
      coefficients:
        "gs9xs4Qg32/5Eh/75Kw2sTw70Fp0pCo9Lw1zokgRowz5jDh9i2Dg7hJh9cw3CpG4hl38nR4v3yxExmugGouoOp9kBwiFhZw305izRg58oxGh+18HonnZ515Dg+KoGwsu5rjSw/o2wJp180NgpuHxinOx1xDxrS",
      error: 0.00000183,
    },
    vapour: {
      range: [0.031622776601683805, 0.6696721425251894],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "gxom47PnivkpF6znRx8/BzqMmnCyEpEaosuknxP19w3oF1wsN3khCohD5EHCAiov/7gPxolumLtk/4Elp4Iw2DvlBiENAu18jz6N1qozjcxz3hpB5yl+C9/nElgL3b7CC8pnzozLtlm04sBply5lDx0uzIhl7Wlr3BppDtN9Cms4vigJ/i7/1kBji116BtpnkD9njFx9HrLTDotumhjGhxx885Bpz732DxwrzHr5zOh3alvBzCF",
      error: 8.79e-9,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6696721425251894],
        halvings: "11",
        degree: 6,
        decimals: 8,
        coefficients: "l/0poCtrl3CwnxEs9Pg2OplIwyC94o7sCxj4qClk9TpkuLp+iDt5Wx2F",
        error: 0.00000912,
      },
      {
        range: [0.031622776601683805, 0.6696721425251894],
        halvings: "221",
        degree: 6,
        decimals: 8,
        coefficients: "p+o/+Gwi5pDxvgDshdxkOgiEhexwoh5Gsn2yCtioEp7HoaoBVhjgyyGk561E81pmB0onWgr2F47mBshJ",
        error: 0.00000737,
      },
    ],
  },
};
