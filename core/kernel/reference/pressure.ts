import { sourceEntries } from "./entry";

/** Pressures that hold, flammable charge in rooms, valves. */
export const pressureSources = sourceEntries({
  manualR32: {
    short: "R-32 installation manuals",
    full: "Installation manuals of R-32 machines: table of least floor areas for 0.307 kg/m³ (28.81 m² at 1.84 kg to 104.26 m² at 3.5 kg, release at 0.6 m; wall 3.20 and ceiling 2.14 m² at 1.84 kg), no area asked below 1.842 kg, charge always below 79.8 kg.",
    seen: "opened",
  },
  manualR454B: {
    short: "R-454B installation manual",
    full: "Installation manual of a ducted R-454B split, page 11: total conditioned area 14.458 ft² a pound of charge, which equals 1/(0.5 × 0.307 kg/m³ × 2.2 m); form of the clause from memory of IEC 60335-2-40 annex GG.",
    seen: "opened",
  },
  nycMechanical: {
    short: "NYC Mechanical Code",
    full: "New York City Mechanical Code, table 1103.1: refrigerant concentration limits (R-32: 77 g/m³, 4.8 lb per 1,000 ft³).",
    seen: "opened",
  },
  ashrae15Volume: {
    short: "ASHRAE 15-2022",
    full: "ANSI/ASHRAE Standard 15-2022: effective dispersal volume charge; terms as listed in the foreword of addendum g to the 2019 edition, equation from memory.",
    seen: "memory",
  },
  ashrae15Pressure: {
    short: "ASHRAE 15",
    full: "ANSI/ASHRAE Standard 15, least design pressure: 15 psig, and saturation at 80 °F on the low side, at the greater of 122 °F and 30 °F over the summer dry bulb on an air-cooled high side, at the greater of 104 °F and 15 °F over the leaving water on a water-cooled one; from memory, but for the 30 °F, which a trade column on IIAR 2-2021 (5.5.3) gives too.",
    seen: "memory",
  },
  en378Pressure: {
    short: "EN 378-2",
    full: "EN 378-2, design temperatures for ambients of 32, 38, 43 and 55 °C: air-cooled high side 55, 59, 63 and 67 °C, water-cooled leaving water + 8 K, as quoted by a German school of refrigeration (Bundesfachschule Kälte-Klima-Technik); low side outdoors at the ambient, from memory.",
    seen: "copied",
  },
  pipingCode: {
    short: "ASME B31 wall equation",
    full: "Wall of tube under internal pressure, P = 2 S E t/(D − 2 y t), y = 0.4: ASME B31 codes as printed with the allowable stresses of copper (table 3c: annealed 6,000 psi at 100 °F to 3,000 at 400 °F, drawn 10,300 to 9,400) in the Copper Tube Handbook of the trade association; B31.5 itself not opened.",
    seen: "opened",
  },
  acrPressureSheet: {
    short: "pressure sheet of ACR tube",
    full: "A gas systems firm's sheet of working pressures of ASTM B280 tube at 150 °F (1/4 in 1,195 to 1-5/8 in 347 psi); least walls and greatest diameters fitted to it within 1 psi; ASTM B280-20, table 1, prints nearly the same tolerances.",
    seen: "opened",
  },
  exoticStress: {
    short: "stresses of titanium and cupronickel",
    full: "Allowable stresses of titanium (grade 1: 10,000, grade 2: 14,300 psi at 100 °F, tensile over 3.5) and annealed copper-nickel (90-10: 8,700, 70-30: 12,000 psi), from memory; least wall 0.9 of nominal, an assumption.",
    seen: "memory",
  },
  reliefTable: {
    short: "UMC table 1113.5",
    full: "Uniform Mechanical Code (Nevada, 2018), table 1113.5, which repeats ASHRAE 15 table 9.7.5: relief capacity C = f D L in lb/min of air, factors by refrigerant, 2.5 times with combustibles within 20 ft.",
    seen: "opened",
  },
  testLimits: {
    short: "ASME B31.5, 538.4.2",
    full: "ASME B31.5, 538.4.2(d), as applied by a published test plan of a national laboratory: the relief of the test stands above the test pressure and below 130 % of the design pressure of any part; 1.1 × design for gas from memory.",
    seen: "copied",
  },
  iec60534: {
    short: "IEC 60534-2-1",
    full: "IEC 60534-2-1: Industrial-process control valves, sizing equations for compressible flow; constants as carried by the library fluids 1.3.1, which repeats the standard's example 3.",
    seen: "copied",
  },
  reclaimValve: {
    short: "heat reclaim valve bulletin",
    full: "A valve maker's bulletin on three-way heat reclaim valves, page 3: types with and without a bleed, pilot and piston, pump-out of the idle condenser to suction pressure.",
    seen: "opened",
  },
});
