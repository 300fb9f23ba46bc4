/** Equations of the calcite saturation index. Temperatures in K, concentrations in mol/L, logarithms to base 10. */
import { equation, symbol } from "../kernel/define/equation";

const T = symbol("temperature", "water temperature", 273.15, 363.15);
const number = (description: string, from: number, to: number) => symbol("number", description, from, to);
const f = number("pfm: −log of the activity coefficient of a single charge", 0.02, 0.12);
const pH = number("pH", 6.8, 8.4);

const plummerBusenberg = (name: string, form: string, code: (K: number) => number) =>
  equation({
    name,
    form,
    kind: "number",
    symbols: { T },
    validity: "0 to 90 °C",
    source: "plummerBusenberg1982",
    code: (x) => code(x.T),
  });

export const pK1 = plummerBusenberg(
  "First constant of carbonic acid",
  "pK1 = 356.3094 + 0.06091964*T - 21834.37/T - 126.8339*log10(T) + 1684915/T^2",
  (K) => 356.3094 + 0.06091964 * K - 21834.37 / K - 126.8339 * Math.log10(K) + 1684915 / K ** 2,
);

export const pK2 = plummerBusenberg(
  "Second constant of carbonic acid",
  "pK2 = 107.8871 + 0.03252849*T - 5151.79/T - 38.92561*log10(T) + 563713.9/T^2",
  (K) => 107.8871 + 0.03252849 * K - 5151.79 / K - 38.92561 * Math.log10(K) + 563713.9 / K ** 2,
);

export const pKs = plummerBusenberg(
  "Solubility of calcite",
  "pKs = 171.9065 + 0.077993*T - 2839.319/T - 71.595*log10(T)",
  (K) => 171.9065 + 0.077993 * K - 2839.319 / K - 71.595 * Math.log10(K),
);

export const pKw = equation({
  name: "Ion product of water",
  form: "pKw = 4471/T + 0.01706*T - 6.0875",
  kind: "number",
  symbols: { T },
  source: "standardMethods2330",
  code: (x) => 4471 / x.T + 0.01706 * x.T - 6.0875,
});

export const ionicStrength = equation({
  name: "Ionic strength",
  form: "I = 2.5e-5 * (TDS - NaCl) + NaCl / 58443",
  kind: "number",
  symbols: { TDS: number("dissolved solids, mg/L", 4000, 8000), NaCl: number("salt among them, mg/L", 0, 3500) },
  validity: "up to 0.5",
  source: "standardMethods2330",
  code: (x) => 2.5e-5 * (x.TDS - x.NaCl) + x.NaCl / 58443,
});

export const activityExponent = equation({
  name: "Activity of a single charge, −log",
  form: "f = 1.82e6 * ((60954/(T + 116) - 68.937) * T)^-1.5 * (sqrt(I)/(1 + sqrt(I)) - 0.3*I)",
  kind: "number",
  symbols: { T, I: number("ionic strength", 0.005, 0.2) },
  source: "standardMethods2330",
  code: (x) =>
    1.82e6 * ((60954 / (x.T + 116) - 68.937) * x.T) ** -1.5 * (Math.sqrt(x.I) / (1 + Math.sqrt(x.I)) - 0.3 * x.I),
});

export const cyanurateAlkalinity = equation({
  name: "Alkalinity of cyanurate, mg/L as CaCO3",
  form: "A = CYA * 50.0435/129.074 / (1 + 10^(6.88 - f - pH))",
  kind: "number",
  symbols: { CYA: number("cyanuric acid, mg/L", 0, 150), f, pH },
  source: "poolAlkalinity",
  code: (x) => (x.CYA * 50.0435) / 129.074 / (1 + 10 ** (6.88 - x.f - x.pH)),
});

export const borateAlkalinity = equation({
  name: "Alkalinity of borate, mg/L as CaCO3",
  form: "A = B * 50.0435/10.811 / (1 + 10^(9.24 + 13489/(2.302585*8.314463)*(1/T - 1/298.15) - f - pH))",
  kind: "number",
  symbols: { B: number("borate as boron, mg/L", 0, 60), T, f, pH },
  validity: "contested: prints give up to 1.4 times this",
  source: "poolAlkalinity",
  code: (x) =>
    (x.B * 50.0435) /
    10.811 /
    (1 + 10 ** (9.24 + (13489 / (2.302585 * 8.314463)) * (1 / x.T - 1 / 298.15) - x.f - x.pH)),
});

export const bicarbonate = equation({
  name: "Bicarbonate, mol/L",
  form: "HCO3 = (A/50043.5 - 10^(pH + f - pKw) + 10^(f - pH)) / (1 + 2 * 10^(pH - pK2 + 3*f))",
  kind: "number",
  symbols: {
    A: number("carbonate alkalinity, mg/L as CaCO3", 20, 200),
    pH,
    f,
    pKw: number("pKw", 13, 14.5),
    pK2: number("pK2", 10, 10.5),
  },
  source: "identity",
  code: (x) =>
    (x.A / 50043.5 - 10 ** (x.pH + x.f - x.pKw) + 10 ** (x.f - x.pH)) / (1 + 2 * 10 ** (x.pH - x.pK2 + 3 * x.f)),
});

export const saturationPh = equation({
  name: "pH at saturation with calcite",
  form: "pHs = pK2 - pKs - log10(Ca) - log10(HCO3) + 5*f",
  kind: "number",
  symbols: {
    pK2: number("pK2", 10, 10.5),
    pKs: number("pKs", 8.4, 9),
    Ca: number("calcium, mol/L", 5e-4, 1e-2),
    HCO3: number("bicarbonate, mol/L", 5e-4, 5e-3),
    f,
  },
  source: "standardMethods2330",
  code: (x) => x.pK2 - x.pKs - Math.log10(x.Ca) - Math.log10(x.HCO3) + 5 * x.f,
});

export const siteIndex = equation({
  name: "Index by the table used on site",
  form: "SI = pH + TF + log10(CH) - 0.4 + log10(TA - CYA/3) - k",
  kind: "number",
  symbols: {
    pH,
    TF: number("temperature factor", 0, 1),
    CH: number("calcium hardness, mg/L", 50, 1000),
    TA: number("total alkalinity, mg/L", 60, 200),
    CYA: number("cyanuric acid, mg/L", 0, 100),
    k: number("constant for dissolved solids", 12.1, 12.3),
  },
  source: "siteTable",
  code: (x) => x.pH + x.TF + Math.log10(x.CH) - 0.4 + Math.log10(x.TA - x.CYA / 3) - x.k,
});
