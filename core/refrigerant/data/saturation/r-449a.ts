import type { SaturationData } from "../saturationData";

/** R-449A: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state. */
export const R449A_LINE: SaturationData = {
  name: "R-449A",
  from: 190,
  to: 355.2788513908336,
  critical: {
    temperature: 355.6344858767103,
    pressure: 4516556.106947434,
  },
  zero: {
    enthalpy: 37.47176159442452,
    entropy: 1.3880000129392258,
  },
  bubble: {
    pressure: {
      range: [190, 355.2788513908336],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "svouthlG602p/tW9qlpkpB4yg3pC7sq5Dkq/F1rJ8OZCAAAkq7635pH4qmyn6O/o379V2w6niB9r3wB+3iClzCuCNAAAAo5tu+/iIyt7y2zKt/lnzMqnvzRp2wVire7LJTAAAA4g4o5zxI2795gqEpy8mkCkv/tBvmgBznChQtCNDAAAsyhhp73Iyolij/Bzvg1OmjRn5XtnD1OlCLDAAAm1kol46I8q8xjezm1sExs9E3tXpnD7OnCLDAAAkyj52k8I+l2vwOhw4mCj5yFtmX/jD9N/BLDAAAulr3j68Ii4/q9Glgu1BhhoF9/T7uC7JpBFAAAAwv1tmk9Iux0/lDp7wqBrn4DtkL9epCDAAAAA675jgq9I8ytjxCx74uE3jwNv8K8/D7IvRzFbCCA",
      error: 6.56e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6824541013098423],
      halvings: "5543222",
      degree: 8,
      decimals: 9,
      coefficients:
        "ort1zqQyi73iDpmxsDn1qN04qD80B94D4KgE+9n57vQqqwjmC5o34Cq3iGj7IlTyHpBEghshp1QuuptlD5098D8t5L90rB+6E5PsBDqqqkn9Q6msn2Ep58xFu4gN7/tBgoHrkB8ETsgv+8oRq9vm7Ghx84I6o3Wh0wC42HpFDR87uh/0R6l71qF716iEyviIt1F0FlCcD4y2u8+R2qn+0ErsltB66iH4iHwhCuJuBI",
      error: 2.09e-8,
    },
    vapour: {
      range: [0.031622776601683805, 0.6824541013098423],
      halvings: "443222",
      degree: 6,
      decimals: 9,
      coefficients:
        "4t38k0P5qs9rFh0+F4rgS5m7C5hf44Rgpu7xpPxv0/mFg5zIx/lE4oFwMpGos15y5Oxm9r8Kh+tyExzvMwvVhkDoGwhg9j0Nxguw1bpmu9qBpl5jDh95EpoOpG428g7sLpkjhptBh41vsDpikrJprqZx5iC5vEgivt8jHhg5yviDh8785L5z49tBpuloFp1kShs7B",
      error: 0.00000373,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "3321",
        degree: 6,
        decimals: 8,
        coefficients:
          "lw7/+Egx00G11wNwhpCwC9lI4qE1nwvzE8ywkFt9rC43F5X4DVt4lklE8rrkJ55rEojJhKgFA53ywpD06ozTw2ouBovkRggpDwhSs3D",
        error: 0.00000953,
      },
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "33222",
        degree: 6,
        decimals: 8,
        coefficients:
          "lg75jKk/g/B1y6Fg8agtBh4Ds7Bho91gKwi0oBhrlB80DlIoBAxrmn9Js+7mC0U0/HhtB8BU1j734JwpsnCliwB1lZxsF5SU1h3v3JxkhlCt7txBto3Kpi5BhzItnB",
        error: 0.00000365,
      },
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "3321",
        degree: 6,
        decimals: 8,
        coefficients:
          "trtpnKpx88H0l1MxqnCpgD88J5+E1i1x1Kp4n0GwvuB98E0Z5DU9+35oLhs7xMk7sDw/DofpGVl5jiuMhzh6Zp3m2Bh11clv5H1m0Bx7K",
        error: 0.0000169,
      },
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "33222",
        degree: 6,
        decimals: 8,
        coefficients:
          "lg35wJ9z7/Ig3gNlizC5jF89Lp6Fl4pxhK5grjIxyvBlyK4ctEU950j8K5u4hTtgoWhv3B9zB9LVt0m0qMpkvscp216Bl4sFprPpkBxCtvnw9Olq/y6Blm99Ghxmd5l3D55O13B",
        error: 0.0000115,
      },
    ],
  },
  dew: {
    pressure: {
      range: [190, 355.2788513908336],
      halvings: "2223456788",
      degree: 12,
      decimals: 10,
      coefficients:
        "0iul999F4nlkppYnv70zuBu0ij4C79s4Eo78Hn9M8WvBEAAAgxw12tlHwzomm5P5lr3gYq9v0nBnn15Bs/1CvpD0EPAAAAy1qtrmgIoqkhuoLn+vzlN05vgVng7U+qxBuxBuLaGAAAqp5wv4vIwjurm0E/3wv+BwwuvC+qlC+nLkoBmFWEAAAg+ssvw2Iwkk9slC1w46HwyqXmk3BoqG8YoDOCAAA2vh7g45IyzvtsiBu6jlBknzLqviB88DoP+BICAAA2/999r7Isl69wRkrwgC0y3GyvUsnCqIgBEAAAA8v7tym8Igsw2iJ+y6vB+p4Di1KgiB0DMCAAAA473/t08Iosii4E0yqc6u5BqrE6LiBEAAAAAm+q8o+8Ioo9kkFgypxC228J2lvB26HwsBoIyBKCAA",
      error: 6.51e-10,
    },
    liquid: {
      range: [0.031622776601683805, 0.6824541013098423],
      halvings: "3321",
      degree: 6,
      decimals: 9,
      coefficients:
        "g+giszQgo117Fh6/0Oww9yChgmRgnjDp2Mgoii+8Qgvkr+DprvnEo30HplS4kCxMoym26mRw04/5Fxtq2H46sR590Bw7FpGog9sg1Rw1sinIh5rnKgw+zBwrkCwrkC47N",
      error: 0.0000046,
    },
    vapour: {
      range: [0.031622776601683805, 0.6824541013098423],
      halvings: "4432233",
      degree: 8,
      decimals: 9,
      coefficients:
        "+r+4suP7l3plF2zjG/ziBx+UomG5qBmIvB++9lhkPluhgnFl/nU5u+B2qCxCHCA2+532zO5rgkoL15l1Fph+IowEvlB+CHAi7si1sNvozg+ct/outB7vsmD5q4F9wO3XnDC06wm8hL5my60vBl7uq0Dlw4qK/i3cr/rC9zFjQpCy4+23nIpyh1yoBhy2umCzr5gE9mgH5zLjSdD25nts+Elt616iCp9sx2E5s0tKznwV51pB7tC1EL",
      error: 9.59e-9,
    },
    incipient: [
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "hro9iGx4o2Ng4Ilx9Ck/ah/Ho9Bhzs7/Gp7txPxwpMllYtsBxHVth6wjIp3i1Up6uhBt9zD5uMpf9Bh+v19Jpqt0oB56o/Et56XtwoDt3Np4B",
        error: 0.00000221,
      },
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "122",
        degree: 6,
        decimals: 8,
        coefficients: "9wm+1Kxy42Lx0zf91rH8uVxjMojEhkt+tL96w+Lh+7dphrChqFlNlD5tq8xMl+qxZpp66C59/IxuOo5DozB",
        error: 0.0000181,
      },
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "2222",
        degree: 6,
        decimals: 8,
        coefficients:
          "hj5hjJo/10Ll6yO4twC5gd0zItlC9y5xuIos98Ih91Lx/Sx5BoBA19y3gI8gmyElpnZ54+BxgGxWxCxjg+iIhnz4I5x1qDxr9R1kiDltPtlC",
        error: 0.00000264,
      },
      {
        range: [0.031622776601683805, 0.6824541013098423],
        halvings: "221",
        degree: 6,
        decimals: 8,
        coefficients: "lmrxoI89zgN585Kgw/DlnhBs6JxtC5265uHgg3lN07oIs/iBsd8GAtj5h4Fkqw2uBg/usG8r7iBwjuE00P8B",
        error: 0.0000135,
      },
    ],
  },
};
