import { sourceEntries } from "./entry";

/** Pressures that hold, flammable charge in rooms, valves. */
export const pressureSources = sourceEntries({
  manualR32: {
    short: "R-32 installation manuals",
    full: "Installation manuals of R-32 machines: least floor areas by IEC 60335-2-40 for 0.307 kg/m³.",
    seen: "opened",
  },
  manualR454B: {
    short: "R-454B installation manual",
    full: "Installation manual of a ducted R-454B split, page 11: 14.458 ft² a pound = 1/(0.5 × 0.307 kg/m³ × 2.2 m); the clause from memory.",
    seen: "opened",
  },
  nycMechanical: {
    short: "NYC Mechanical Code",
    full: "New York City Mechanical Code, table 1103.1: refrigerant concentration limits.",
    seen: "opened",
  },
  ashrae15Volume: {
    short: "ASHRAE 15-2022",
    full: "ANSI/ASHRAE Standard 15-2022: effective dispersal volume charge, from memory.",
    seen: "memory",
  },
  ashrae15Pressure: {
    short: "ASHRAE 15",
    full: "ANSI/ASHRAE Standard 15: least design pressures, from memory; the 30 °F also in a trade column on IIAR 2-2021.",
    seen: "memory",
  },
  en378Pressure: {
    short: "EN 378-2",
    full: "EN 378-2: design temperatures of the high side, as quoted by Bundesfachschule Kälte-Klima-Technik; low side from memory.",
    seen: "copied",
  },
  pipingCode: {
    short: "ASME B31 wall equation",
    full: "ASME B31 wall equation and stresses of copper (table 3c), as printed in the Copper Tube Handbook.",
    seen: "opened",
  },
  acrPressureSheet: {
    short: "pressure sheet of ACR tube",
    full: "A gas systems firm's working pressures of ASTM B280 tube at 150 °F; mill tolerances fitted to it.",
    seen: "opened",
  },
  exoticStress: {
    short: "stresses of titanium and cupronickel",
    full: "Allowable stresses of titanium and annealed copper-nickel, least wall 0.9 of nominal: from memory.",
    seen: "memory",
  },
  reliefTable: {
    short: "UMC table 1113.5",
    full: "Uniform Mechanical Code (Nevada, 2018), table 1113.5, which repeats ASHRAE 15 table 9.7.5.",
    seen: "opened",
  },
  testLimits: {
    short: "ASME B31.5, 538.4.2",
    full: "ASME B31.5, 538.4.2(d), as applied by a published test plan; 1.1 × design for gas from memory.",
    seen: "copied",
  },
  iec60534: {
    short: "IEC 60534-2-1",
    full: "IEC 60534-2-1: control valves, sizing equations for gas; constants as carried by the library fluids 1.3.1.",
    seen: "copied",
  },
  reclaimValve: {
    short: "heat reclaim valve bulletin",
    full: "A valve maker's bulletin on three-way heat reclaim valves, page 3.",
    seen: "opened",
  },
});
