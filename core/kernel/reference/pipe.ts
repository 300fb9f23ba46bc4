import { sourceEntries } from "./entry";

/** Pool pipework. */
export const pipeSources = sourceEntries({
  astmD1785: {
    short: "ASTM D1785",
    full: "ASTM D1785: Standard Specification for Poly(Vinyl Chloride) (PVC) Plastic Pipe, Schedules 40, 80, and 120; outside diameters and minimum walls as carried by fluids 1.3.1 (C. Bell), average bores and ratings as printed in makers' data sheets.",
    seen: "copied",
  },
  colebrook1939: {
    short: "Colebrook 1939",
    full: "C. F. Colebrook: Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe laws, J. Inst. Civil Eng. 11 (1939) 133–156.",
    seen: "memory",
  },
  darcyWeisbach: {
    short: "Darcy–Weisbach",
    full: "J. Weisbach 1845, H. Darcy 1857; as in every text of hydraulics, for example F. M. White: Fluid Mechanics.",
    seen: "memory",
  },
  hazenWilliams: {
    short: "Hazen–Williams",
    full: "G. S. Williams, A. Hazen: Hydraulic Tables, 1905; US form 0.2083 (100/C)^1.852 Q^1.852/d^4.8655 ft per 100 ft.",
    seen: "memory",
  },
  fluids131: {
    short: "fluids 1.3.1",
    full: "C. Bell: fluids 1.3.1, open-source Python library (MIT), friction_factor and one_phase_dP, evaluated with IAPWS-95 density and IAPWS 2008 viscosity.",
    seen: "opened",
  },
  illinois906: {
    short: "77 Ill. Adm. Code 906",
    full: "77 Illinois Administrative Code 906, appendix A, exhibit I: friction loss table, C = 150, worked with steel inside diameters.",
    seen: "opened",
  },
  poolVelocityLimits: {
    short: "ANSI/APSP-15, ISPSC 2021 s. 311.3",
    full: "ANSI/APSP-15 (residential pools: suction 6 ft/s, return 8 ft/s) and ISPSC 2021 section 311.3; the limits depend on the edition that is law at the place.",
    seen: "copied",
  },
  machinerysHandbook: {
    short: "Machinery's Handbook 31",
    full: "Machinery's Handbook, 31st edition, table 14: temperature derating of PVC pipe; pipe data sheets differ in the last digit at 110 and 130 °F.",
    seen: "copied",
  },
  hangerTable: {
    short: "hanger spacing table",
    full: "Hanger spacing for PVC pipe, Schedules 40 and 80, as printed in plastics technical manuals. Local codes may ask for closer supports (3 ft up to 1 in, 4 ft above).",
    seen: "opened",
  },
  cementTable: {
    short: "ASTM D2855 practice",
    full: "Set, cure and coverage of PVC solvent cement as printed in plastics manuals after ASTM D2855 practice; makers print other times for fast cements: the cement's label governs.",
    seen: "opened",
  },
  plasticsManual: {
    short: "plastics technical manuals",
    full: "Worked examples of PVC derating and expansion in plastics technical manuals; expansion coefficients printed there run from 0.336 to 0.375 in per 10 °F and 100 ft.",
    seen: "opened",
  },
  hydraulicsTexts: {
    short: "texts of hydraulics",
    full: "Identities of textbook hydraulics: pump power Q·H·ρ·g/efficiency, affinity laws, net positive suction head.",
    seen: "copied",
  },
  npshRows: {
    short: "fluids 1.3.1, chemicals 1.5.2",
    full: "Net positive suction head from the US Standard Atmosphere 1976 (fluids 1.3.1) and IAPWS-95 vapour pressure and density (chemicals 1.5.2), open-source Python libraries (MIT).",
    seen: "opened",
  },
  darby1999: {
    short: "Darby 1999 (three constants)",
    full: "P. M. Silverberg, R. Darby: Correlate pressure drops through fittings, Chem. Eng. 106 (July 1999) 101; constants as carried by fluids 1.3.1 (C. Bell).",
    seen: "copied",
  },
  hooper1981: {
    short: "Hooper 1981 (two constants)",
    full: "W. B. Hooper: The two-K method predicts head losses in pipe fittings, Chem. Eng. (24 August 1981) 97; constants as carried by fluids 1.3.1 (C. Bell).",
    seen: "copied",
  },
  craneTp410: {
    short: "Crane TP-410",
    full: "Crane Co.: Flow of Fluids Through Valves, Fittings, and Pipe, Technical Paper 410, 2009; entrance 0.5, exit 1.0, sudden contraction 0.5 (1 − β²), as carried by fluids 1.3.1.",
    seen: "copied",
  },
  perryCoupling: {
    short: "Perry, table 6-4",
    full: "Perry's Chemical Engineers' Handbook, table 6-4: K 0.04 for a sound coupling or union, from memory; 0.08 is also quoted.",
    seen: "memory",
  },
  pvcEquivalentLengths: {
    short: "PVC tables of equivalent length",
    full: "Equivalent lengths of PVC fittings as printed in plastics manuals; three tables, which differ up to 3 times with others.",
    seen: "opened",
  },
  fritschCarlson1980: {
    short: "Fritsch, Carlson 1980",
    full: "F. N. Fritsch, R. E. Carlson: Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17 (1980) 238–246.",
    seen: "memory",
  },
  pumpRows: {
    short: "made-up pump curves, scipy 1.17.1",
    full: "Made-up quadratic pump curves met with system curves by scipy.optimize.brentq (scipy 1.17.1) and by the closed quadratic solution; friction by fluids 1.3.1 (C. Bell).",
    seen: "opened",
  },
  vgbAct: {
    short: "VGB Act, ASME A112.19.8, APSP-16",
    full: "Virginia Graeme Baker Pool and Spa Safety Act (in force 19 December 2008): drain covers to ASME/ANSI A112.19.8 or its successor ANSI/APSP-16, each with a rated flow; as told by notes on the act.",
    seen: "copied",
  },
  necBonding: {
    short: "NEC 680.26",
    full: "National Electrical Code, 680.26(B) and (C): equipotential bonding of pools, solid copper not smaller than 8 AWG; as told by code notes.",
    seen: "copied",
  },
  filterNotes: {
    short: "pool filtration notes",
    full: "Pool filtration notes: a filter is cleaned when it loses 8 to 10 psi more than clean.",
    seen: "opened",
  },
  epanet22: {
    short: "EPANET 2.2 manual, ch. 12",
    full: "US EPA: EPANET 2.2 User Manual, chapter 12, analysis algorithms (public domain): the global gradient method of E. Todini, S. Pilati (1988), the cubic friction factor between Re 2,000 and 4,000 (Dunlop 1991), states of check valves and pumps.",
    seen: "opened",
  },
  networkRows: {
    short: "solved networks, EPANET 2.3",
    full: "Made-up pool networks solved by the global gradient method, by bisection of each link (within 3e-10 m³/h) and by EPANET 2.3 built from its source (7e-5 m³/h).",
    seen: "opened",
  },
  valveTexts: {
    short: "texts on control valves",
    full: "Flow coefficients and inherent characteristics of control valves: Δp[bar] = (ρ/1000)(Q/Kv)², linear, equal percentage; quick opening (square root) from memory.",
    seen: "copied",
  },
  whiteParallel: {
    short: "White, example 6.18",
    full: "F. M. White: Fluid Mechanics, example 6.18, three pipes in parallel, as reprinted by an open solution page.",
    seen: "copied",
  },
  sarbuBorza: {
    short: "Sarbu, Borza",
    full: "I. Sarbu, I. Borza: efficiency of pumps at variable speed, 1 − (1 − η)(1/s)^0.1, as coded in the source of EPANET 2.3 (hydraul.c).",
    seen: "copied",
  },
  pumpSpeedRows: {
    short: "made-up pumps at several speeds",
    full: "Made-up quadratic pump curves against static head and quadratic losses, solved in closed form in Python, with the efficiency at speed of Sarbu and Borza.",
    seen: "opened",
  },
  poolEnergyNotes: {
    short: "trade paper on pool pumps",
    full: "A trade paper's example (2021): 2 kW for 6 h a day at 0.16 $/kWh cost about 700 $ a year; 300 W at 30 gpm for 10 h a day 175 $.",
    seen: "copied",
  },
  korteweg: {
    short: "Korteweg",
    full: "D. J. Korteweg 1878: speed of a pressure wave in an elastic pipe, in the form that the manual of a pipe-flow program prints; modulus of PVC 400,000 psi at 73 °F, 300,000 psi warm from memory.",
    seen: "copied",
  },
  joukowsky: {
    short: "Joukowsky, Michaud",
    full: "N. Joukowsky 1898: surge of a sudden stop; J. Michaud 1878, L. Allievi: surge of a slow uniform closing; as in every text of hydraulics.",
    seen: "memory",
  },
  hammerRows: {
    short: "surges in Python",
    full: "Surges of PVC pipes worked in Python by Korteweg, Joukowsky and Michaud, minimum walls of ASTM D1785.",
    seen: "opened",
  },
  conductionTexts: {
    short: "texts of heat conduction",
    full: "Shape factor of a pipe below a level surface, 2πL/acosh(2z/D), and cooling along a pipe, as in texts of heat transfer (Incropera, Kreith) and in ht (C. Bell, MIT).",
    seen: "copied",
  },
  pipeLossRows: {
    short: "pipe losses in Python",
    full: "Losses of water pipes and hot-gas lines worked in Python by Churchill and Chu, Churchill and Bernstein, and the shape factor; the films repeat ht (C. Bell) to 1e-15.",
    seen: "opened",
  },
  freezeRows: {
    short: "freezing pipes in Python",
    full: "Still water in PVC pipes and shells to 32 °F and to ice, worked in Python with the loss at each temperature and Plank's form.",
    seen: "opened",
  },
  ashraeFreezing: {
    short: "ASHRAE Fundamentals ch. 23",
    full: "ASHRAE Handbook, Fundamentals (2009), chapter 23, equation 1, as quoted in engineers' pages.",
    seen: "copied",
  },
  gordon1996: {
    short: "Gordon 1996",
    full: "J. R. Gordon: An Investigation into Freezing and Bursting Water Pipes in Residential Construction, University of Illinois 1996, as retold in builders' pages.",
    seen: "copied",
  },
});
