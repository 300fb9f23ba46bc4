import type { TransportData } from "./transportData";

// Uncertainties: the authors' statements for the correlations (from memory, the papers were not at hand); for the
// corresponding-states and entropy models, what they and each other differ by, widened.

/** Viscosity, thermal conductivity and surface tension of the pure fluids. */
export const TRANSPORT: readonly TransportData[] = [
  {
    name: "R-22",
    viscosity: {
      source:
        "S.A. Klein, M.O. McLinden, A. Laesecke (1997) Int. J. Refrig. 20:208-217 doi:10.1016/S0140-7007(96)00073-4",
      uncertainty: { liquid: 0.06, vapour: 0.05 },
      kind: "conformal",
      reference: "R-134a",
      sigma: 0.4666,
      epsilon: 284.72,
      psi: [1.106, -0.0491],
      density: 6058.22,
    },
    conductivity: {
      source:
        "Mark O. McLinden, Sanford A. Klein, Richard A. Perkins (2000) Int. J. Refrig. 23:43-63 doi:10.1016/S0140-7007(99)00024-9",
      uncertainty: { liquid: 0.05, vapour: 0.09 },
      kind: "conformal",
      reference: "R-134a",
      psi: [1.075, -0.038574],
      density: 6058.22,
      f: [0.77817, 0.0012536],
      critical: { qD: 2000000000, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 369.295,
      rows: [
        [3.0587, 1.41809],
        [-2.99856, 1.42291],
      ],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-32",
    viscosity: {
      source:
        "Marcia L. Huber, Arno Laesecke, Richard A. Perkins (2003) Ind. Eng. Chem. Res. 42:3163-3178 doi:10.1021/ie0300880",
      uncertainty: { liquid: 0.06, vapour: 0.08 },
      kind: "conformal",
      reference: "R-290",
      sigma: 0.4098,
      epsilon: 289.65,
      psi: [0.7954, 0.0542658, 0],
      density: 8150,
    },
    conductivity: {
      source:
        "Marcia L. Huber, Arno Laesecke, Richard A. Perkins (2003) Ind. Eng. Chem. Res. 42:3163-3178 doi:10.1021/ie0300880",
      uncertainty: { liquid: 0.05, vapour: 0.07 },
      kind: "conformal",
      reference: "R-290",
      psi: [1.2942, -0.0924549],
      density: 8150,
      f: [0.436654, 0.00178134],
      critical: { qD: 2000000000, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 351.255,
      rows: [[0.07147, 1.246]],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-125",
    viscosity: {
      source: "Marcia L. Huber, Arno Laesecke (2006) Ind. Eng. Chem. Res. 45:4447-4453 doi:10.1021/ie051367l",
      uncertainty: { liquid: 0.03, vapour: 0.03 },
      kind: "correlation",
      sigma: 0.5235,
      epsilon: 237.077,
      dilute: { kind: "kinetic" },
      dense: {
        kind: "Batschinski-Hildebrand",
        temperature: 339.173,
        density: 4779,
        a: [
          [5.677448e-6, 2, 2, 0, 1],
          [-5.096662e-6, 3, 1, 0, 1],
        ],
        f: [[0.0001412564, 1, 0]],
        g: [
          [3.033797, 0],
          [0.2992464, -0.5],
        ],
        p: [[1, 0]],
      },
    },
    conductivity: {
      source: "Richard A. Perkins, Marcia L. Huber (2006) J. Chem. Eng. Data 51:898-904 doi:10.1021/je050372t",
      uncertainty: { liquid: 0.03, vapour: 0.03 },
      kind: "correlation",
      dilute: { kind: "polynomial", temperature: 339.173, A: [-0.0046082, 0.0168688, 0.00488345] },
      residual: {
        temperature: 339.173,
        density: 573.5822706,
        rows: [
          [-0.0072941, 0, 1],
          [0.01105, -1, 1],
          [0.041634, 0, 2],
          [-0.028924, -1, 2],
          [-0.031149, 0, 3],
          [0.0278399, -1, 3],
          [0.0112682, 0, 4],
          [-0.01211, -1, 4],
          [-0.00138322, 0, 5],
          [0.00211196, -1, 5],
        ],
      },
      critical: { qD: 1713900000, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 339.173,
      rows: [[0.05252, 1.237]],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-134a",
    viscosity: {
      source:
        "Marcia L. Huber, Arno Laesecke, Richard A. Perkins (2003) Ind. Eng. Chem. Res. 42:3163-3178 doi:10.1021/ie0300880",
      uncertainty: { liquid: 0.015, vapour: 0.015 },
      kind: "correlation",
      sigma: 0.468932,
      epsilon: 299.363,
      dilute: {
        kind: "collision",
        C: 2.1357e-8,
        rows: [
          [0.355404, 0],
          [-0.464337, 1],
          [0.0257353, 2],
        ],
      },
      dense: {
        kind: "Batschinski-Hildebrand",
        temperature: 374.21,
        density: 5017.053,
        a: [
          [-2.06900719e-5, 1, 0, 0, 1],
          [3.56029549e-7, 2, 6, 0, 1],
          [2.11101816e-6, 2, 2, 0, 1],
          [1.39601415e-5, 2, 0.5, 0, 1],
          [-4.5643502e-6, 2, -2, 0, 1],
          [-3.51593275e-6, 3, 0, 0, 1],
        ],
        f: [[0.00021476332, 0, 0]],
        g: [[3.163695636, 0]],
        p: [
          [1, 0],
          [-0.0890173375, -1],
          [0.100035295, -2],
        ],
      },
    },
    conductivity: {
      source:
        "Mark O. McLinden, Sanford A. Klein, Richard A. Perkins (2000) Int. J. Refrig. 23:43-63 doi:10.1016/S0140-7007(99)00024-9",
      uncertainty: { liquid: 0.05, vapour: 0.05 },
      kind: "correlation",
      dilute: { kind: "polynomial", temperature: 1, A: [-0.0105248, 8.00982e-5] },
      residual: {
        temperature: 1,
        density: 515.249968352,
        rows: [
          [0.00377406093, 0, 1],
          [0.010534223865, 0, 2],
          [-0.002952794565, 0, 3],
          [0.00128672592, 0, 4],
        ],
      },
      critical: { qD: 1892020000, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 374.21,
      rows: [[0.05801, 1.241]],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-143a",
    viscosity: {
      source:
        "S.A. Klein, M.O. McLinden, A. Laesecke (1997) Int. J. Refrig. 20:208-217 doi:10.1016/S0140-7007(96)00073-4",
      uncertainty: { liquid: 0.06, vapour: 0.06 },
      kind: "conformal",
      reference: "R-134a",
      sigma: 0.5025,
      epsilon: 267.1,
      psi: [1.134, -0.0801],
      density: 5128.45,
    },
    conductivity: {
      source:
        "Mark O. McLinden, Sanford A. Klein, Richard A. Perkins (2000) Int. J. Refrig. 23:43-63 doi:10.1016/S0140-7007(99)00024-9",
      uncertainty: { liquid: 0.08, vapour: 0.08 },
      kind: "conformal",
      reference: "R-134a",
      psi: [1.1779, -0.20541, 0.06487, -0.006473],
      density: 5128.45,
      f: [1.0066, 0.0013729],
      critical: { qD: 2000000000, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 345.857,
      rows: [[0.0537, 1.25]],
      source: "A. Mulero, I. Cachadina (2014) J. Phys. Chem. Ref. Data 43:023104-1:8 doi:10.1063/1.4878755",
    },
  },
  {
    name: "R-290",
    viscosity: {
      source:
        "E. Vogel, C. Kuechenmeister, E. Bich, A. Laesecke (1998) J. Phys. Chem. Ref. Data 27:947-970 doi:10.1063/1.556025",
      uncertainty: { liquid: 0.02, vapour: 0.02 },
      kind: "correlation",
      sigma: 0.49748,
      epsilon: 263.88,
      dilute: {
        kind: "collision",
        C: 2.1357e-8,
        rows: [
          [0.25104574, 0],
          [-0.47271238, 1],
          [0.060836515, 3],
        ],
      },
      dense: {
        kind: "Batschinski-Hildebrand",
        temperature: 369.825,
        density: 5000,
        a: [
          [3.59873030195e-5, 2, 0, 0, 1],
          [-0.000180512188564, 2, 1, 0, 1],
          [8.77124888223e-5, 2, 2, 0, 1],
          [-0.000105773052525, 3, 0, 0, 1],
          [0.000205319740877, 3, 1, 0, 1],
          [-0.00012921093261, 3, 2, 0, 1],
          [5.89491587759e-5, 4, 0, 0, 1],
          [-0.0001297400331, 4, 1, 0, 1],
          [7.66280419971e-5, 4, 2, 0, 1],
          [-9.59407868475e-6, 5, 0, 0, 1],
          [2.10726986598e-5, 5, 1, 0, 1],
          [-1.43971968187e-5, 5, 2, 0, 1],
        ],
        f: [[0.00161688405374, 1, 0]],
        g: [
          [2.50053938863, 0],
          [2.15175430074, -0.5],
        ],
        p: [[1, 0]],
      },
    },
    conductivity: {
      source:
        "Kenneth N. Marsh, Richard A. Perkins, Maria L. V. Ramires (2002) J. Chem. Eng. Data 47:932-940 doi:10.1021/je010001m",
      uncertainty: { liquid: 0.02, vapour: 0.02 },
      kind: "correlation",
      dilute: { kind: "polynomial", temperature: 369.85, A: [-0.00124778, 0.00816371, 0.0199374] },
      residual: {
        temperature: 369.82,
        density: 220.3,
        rows: [
          [-0.03695, 0, 1],
          [0.148658, 0, 2],
          [-0.119986, 0, 3],
          [0.0412431, 0, 4],
          [-0.00486905, 0, 5],
          [0.0482798, -1, 1],
          [-0.135636, -1, 2],
          [0.117588, -1, 3],
          [-0.0436911, -1, 4],
          [0.00616079, -1, 5],
        ],
      },
      critical: { qD: 1395410494.88, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 369.89,
      rows: [
        [0.05334, 1.235],
        [-0.01748, 4.404],
      ],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-600a",
    viscosity: {
      source: "E. Vogel, C. Kuechenmeister, E. Bich (2000) Int. J. Thermophys 21:343-356 doi:10.1023/A:1006623310780",
      uncertainty: { liquid: 0.03, vapour: 0.03 },
      kind: "correlation",
      sigma: 0.46445,
      epsilon: 307.55,
      dilute: {
        kind: "collision",
        C: 2.1357e-8,
        rows: [
          [0.53583008, 0],
          [-0.4562963, 1],
          [0.049911282, 2],
        ],
      },
      dense: {
        kind: "Batschinski-Hildebrand",
        temperature: 407.817,
        density: 3860,
        a: [
          [0.000103511763411, 2, 0, 0, 1],
          [-0.000312670896234, 2, 1, 0, 1],
          [0.000145253750239, 2, 2, 0, 1],
          [-0.000210649894193, 3, 0, 0, 1],
          [0.000386269696509, 3, 1, 0, 1],
          [-0.000214963015527, 3, 2, 0, 1],
          [0.00011258036092, 4, 0, 0, 1],
          [-0.000223242033154, 4, 1, 0, 1],
          [0.000119114788598, 4, 2, 0, 1],
          [-1.819097459e-5, 5, 0, 0, 1],
          [3.60438957232e-5, 5, 1, 0, 1],
          [-2.1396018405e-5, 5, 2, 0, 1],
        ],
        f: [[0.0019403760699, 1, 0]],
        g: [
          [2.33859774637, 0],
          [2.35255150838, -0.5],
        ],
        p: [[1, 0]],
      },
    },
    conductivity: {
      source: "R.A. Perkins (2002) J. Chem. Eng. Data 47:1272-1279 doi:10.1021/je010121u",
      uncertainty: { liquid: 0.03, vapour: 0.03 },
      kind: "correlation",
      dilute: { kind: "polynomial", temperature: 407.85, A: [-0.00237901, 0.0106601, 0.0215811] },
      residual: {
        temperature: 407.85,
        density: 224.4,
        rows: [
          [-0.0411789, 0, 1],
          [0.146805, 0, 2],
          [-0.11919, 0, 3],
          [0.0410226, 0, 4],
          [-0.00488704, 0, 5],
          [0.0476346, -1, 1],
          [-0.128445, -1, 2],
          [0.107565, -1, 3],
          [-0.0385968, -1, 4],
          [0.00520901, -1, 5],
        ],
      },
      critical: { qD: 1520540217.5, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 407.81,
      rows: [
        [-0.01639, 2.102],
        [0.06121, 1.304],
      ],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-744",
    viscosity: {
      source:
        "A. Laesecke, C. D. Muzny (2017) Journal of Physical and Chemical Reference Data 46 doi:10.1063/1.4977429",
      uncertainty: { liquid: 0.02, vapour: 0.01 },
      kind: "correlation",
      sigma: 0.378421,
      epsilon: 200.76,
      dilute: {
        kind: "R-744",
        a: [1749.35489319, -369.069300007, 5423856.34888, -2.21283852168, -269503.247934, 73145.0215318, 5.34368649509],
      },
      dense: {
        kind: "R-744",
        c1: 0.360603235428,
        c2: 0.121550806591,
        gamma: 8.06282737481,
        temperature: 216.592,
        density: 1178.53,
      },
    },
    conductivity: {
      source:
        "M. L. Huber, E. A. Sykioti, M. J. Assael, R. A. Perkins (2016) Journal of Physical and Chemical Reference Data 45 doi:10.1063/1.4940892",
      uncertainty: { liquid: 0.04, vapour: 0.03 },
      kind: "correlation",
      dilute: { kind: "R-744", l: [0.0151874307, 0.028067404, 0.022856419, -0.0074162421] },
      residual: {
        temperature: 304.1282,
        density: 467.6,
        rows: [
          [0.0100128, 0, 1],
          [0.0560488, 0, 2],
          [-0.081162, 0, 3],
          [0.0624337, 0, 4],
          [-0.0206336, 0, 5],
          [0.00253248, 0, 6],
          [0.00430829, -1, 1],
          [-0.0358563, -1, 2],
          [0.067148, -1, 3],
          [-0.0522855, -1, 4],
          [0.0174571, -1, 5],
          [-0.00196414, -1, 6],
        ],
      },
      critical: { qD: 2500000000, zeta0: 1.5e-10, Gamma: 0.052, R0: 1.02, reference: 456.19 },
    },
    surfaceTension: {
      critical: 304.128,
      rows: [[0.07863, 1.254]],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-1234yf",
    viscosity: {
      source:
        "Ian H. Bell, Arno Laesecke (2016) 16th International Refrigeration and Air Conditioning Conference at Purdue, July 11-14, 2016",
      uncertainty: { liquid: 0.08, vapour: 0.08 },
      kind: "entropy",
      C: 0.87302,
      critical: -54468.4774143,
    },
    conductivity: {
      source: "Richard A. Perkins, Marcia L. Huber (2011) J. Chem. Eng. Data 56:4868-4874 doi:10.1021/je200811n",
      uncertainty: { liquid: 0.02, vapour: 0.02 },
      kind: "correlation",
      dilute: { kind: "polynomial", temperature: 367.85, A: [-0.0102778, 0.0291098, 0.000860643] },
      residual: {
        temperature: 367.85,
        density: 475.55,
        rows: [
          [-0.0368219, 0, 1],
          [0.0883226, 0, 2],
          [-0.0705909, 0, 3],
          [0.0259026, 0, 4],
          [-0.0032295, 0, 5],
          [0.0397166, -1, 1],
          [-0.077239, -1, 2],
          [0.0664707, -1, 3],
          [-0.0249071, -1, 4],
          [0.00336228, -1, 5],
        ],
      },
      critical: { qD: 1713796058.2, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 367.85,
      rows: [[0.06274, 1.394]],
      source:
        "A. Mulero, I. Cachadina, M. I. Parra (2012) J. Phys. Chem. Ref. Data 41:043105-1:13 doi:10.1063/1.4768782",
    },
  },
  {
    name: "R-1234ze(E)",
    viscosity: {
      source:
        "Ian H. Bell, Arno Laesecke (2016) 16th International Refrigeration and Air Conditioning Conference at Purdue, July 11-14, 2016",
      uncertainty: { liquid: 0.1, vapour: 0.06 },
      kind: "entropy",
      C: 0.91012,
      critical: -58081.5249656,
    },
    conductivity: {
      source: "Richard A. Perkins, Marcia L. Huber (2011) J. Chem. Eng. Data 56:4868-4874 doi:10.1021/je200811n",
      uncertainty: { liquid: 0.02, vapour: 0.02 },
      kind: "correlation",
      dilute: { kind: "polynomial", temperature: 382.52, A: [-0.0103589, 0.0308929, 0.000230348] },
      residual: {
        temperature: 382.52,
        density: 489.24,
        rows: [
          [-0.0428296, 0, 1],
          [0.0927099, 0, 2],
          [-0.0702107, 0, 3],
          [0.0249708, 0, 4],
          [-0.00301838, 0, 5],
          [0.0434288, -1, 1],
          [-0.0605844, -1, 2],
          [0.0440187, -1, 3],
          [-0.0155082, -1, 4],
          [0.0021019, -1, 5],
        ],
      },
      critical: { qD: 1713796058.2, zeta0: 1.94e-10, Gamma: 0.0496, R0: 1.03 },
    },
    surfaceTension: {
      critical: 382.51,
      rows: [
        [0.06158, 1.281],
        [0.8247, 6.505],
      ],
      source: "A. Mulero, I. Cachadina (2014) J. Phys. Chem. Ref. Data 43:023104-1:8 doi:10.1063/1.4878755",
    },
  },
];
