import { sourceEntries } from "./entry";

/** Energy prices, carbon dioxide, present value. */
export const moneySources = sourceEntries({
  eiaUnits: {
    short: "US EIA, units and calculators",
    full: "US Energy Information Administration: Units and calculators explained, British thermal units (averages of 2019): 3,412 BTU/kWh, 100,000 BTU/therm, propane 91,452, heating oil 138,500 BTU/gal, wood 20,000,000 BTU/cord; higher heating values.",
    seen: "opened",
  },
  fuelPriceTable: {
    short: "fuel price comparison, US EIA heat contents",
    full: "Fuel cost for each million BTU without efficiency, worked from US EIA heat contents: propane at 0.70 $/gal 7.648 $, heating oil at 0.60 $/gal 4.332 $.",
    seen: "copied",
  },
  epaFactors: {
    short: "US EPA emission factors",
    full: "US Environmental Protection Agency: Emission Factors for Greenhouse Gas Inventories (hub of 2023) and 40 CFR 98, table C-1: natural gas 53.06 (opened; 5.306 kg/therm), propane 62.87, distillate oil no. 2 73.96, wood 93.80 kg/MMBTU (from memory).",
    seen: "copied",
  },
  egrid2018: {
    short: "US EPA eGRID2018",
    full: "US Environmental Protection Agency: eGRID2018 summary tables, 2020: US average output rate 947 lb of carbon dioxide for each MWh. Later releases are lower (eGRID2022 about 823 lb/MWh, from memory).",
    seen: "opened",
  },
  doePoolCosts: {
    short: "US DOE pool heating costs",
    full: "US Department of Energy: consumer guidance on gas and heat pump swimming pool heaters; tables worked with 80 % for gas, a pool uncovered for eight hours a day and, from memory, COP 5.0 and 0.085 $/kWh.",
    seen: "copied",
  },
  fsec8323: {
    short: "FSEC-IN-23-83",
    full: "Florida Solar Energy Center, FSEC-IN-23-83: pool heating; gas heaters about 80 % in the laboratory, 50 to 75 % in the field, 70 % for planning.",
    seen: "opened",
  },
  nistHandbook135: {
    short: "NIST Handbook 135",
    full: "S. K. Fuller, S. R. Petersen: Life-Cycle Costing Manual for the Federal Energy Management Program, NIST Handbook 135, 1996: single and uniform present-value factors (SPV, UPV, UPV*), end-of-year payments.",
    seen: "memory",
  },
  nistBlcc: {
    short: "NIST BLCC 5.3-19",
    full: "NIST: Building Life Cycle Cost program BLCC 5.3-19, printed report of the heat pump example (github usnistgov/blcc @3cfbded1, US government work), and its price index table of 2025, US average; the yearly fall of the energy price is backed out of its printed present value of 13,784 $.",
    seen: "opened",
  },
  guideline14: {
    short: "ASHRAE Guideline 14",
    full: "ASHRAE Guideline 14, Measurement of Energy, Demand, and Water Savings: bias, variation and uncertainty of savings, with the factors of Sun and Baltazar; forms as carried by open-source code (kW-Labs/nmecr @e789ebcc).",
    seen: "copied",
  },
});
