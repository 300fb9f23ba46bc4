import { references } from "./entry";

/** Heat exchangers. */
export const exchanger = references({
  bergman2011: {
    short: "Bergman 2011",
    full: "T. L. Bergman, A. S. Lavine, F. P. Incropera, D. P. DeWitt: Introduction to Heat Transfer, 6th ed., Wiley 2011, chapter 11 (mean difference, effectiveness and transfer units).",
    seen: "memory",
  },
  fakheri2003: {
    short: "Fakheri 2003",
    full: "A. Fakheri: A general expression for the determination of the log mean temperature correction factor for shell and tube heat exchangers, J. Heat Transfer 125 (2003) 527–530, doi 10.1115/1.1571078.",
    seen: "memory",
  },
  mason1955: {
    short: "Mason 1955",
    full: "J. L. Mason: Heat transfer in crossflow, Proc. 2nd U.S. National Congress of Applied Mechanics, ASME 1955, 801–803 (series for both streams unmixed).",
    seen: "memory",
  },
  exchangerRows: {
    short: "50-digit evaluation, ht 1.0.7",
    full: "Rows worked with 50 digits in mpmath 1.3.0 from the closed relations, beside ht 1.0.7 (C. Bell, open-source Python library, MIT).",
    seen: "opened",
  },
  steamCondenserTables: {
    short: "textbook mean differences",
    full: "Printed mean differences of condensers: 60 °C with water 30 to 45 °C 21.6 K; 100 °C with 20 to 50 °C 63.83 K; 100 °C with 10 to 30 °C 79.58 K.",
    seen: "copied",
  },
  titaniumSheet: {
    short: "titanium data sheet, grades 1–2",
    full: "Data sheet of commercially pure titanium, grades 1 and 2: 16.0 W/(m·K) at room temperature. Other prints give 17 and 21.6.",
    seen: "opened",
  },
  corrosionPrinciples: {
    short: "Corrosion Engineering, Table 8.9",
    full: "Corrosion Engineering: Principles and Practice, Table 8.9: copper-nickel 90/10 44.9 W/(m·K), stainless S30400 15.0 W/(m·K).",
    seen: "opened",
  },
  copperTubeConductivity: {
    short: "copper C12200",
    full: "Phosphorus-deoxidized copper C12200, 339 W/(m·K) at 20 °C, as data sheets of the alloy print.",
    seen: "memory",
  },
  foulingTable: {
    short: "TEMA fouling table",
    full: "Fouling resistances of the TEMA standards: city water or treated tower water 0.001, sea water to 125 °F 0.0005, hard water 0.003 h·ft²·°F/BTU.",
    seen: "copied",
  },
  poolChemistryTexts: {
    short: "pool chemistry texts",
    full: "Texts on pool chemistry: low pH, high chlorine and salt attack copper and copper-nickel and stain the pool; pH 7.2 to 7.8 is the usual band.",
    seen: "copied",
  },
  waterRuleOf500: {
    short: "500 × gpm × °F",
    full: "Rule of the trade: heat in BTU/h is 500 times gpm times °F (60 min/h × 8.33 lb/gal × 1 BTU/(lb·°F)); for water near 60 °F.",
    seen: "rule",
  },
});
