import { sourceEntries } from "./entry";

/** Refrigerants: equations of state, safety, law; the cycle; lines; air conditioners. */
export const refrigerationSources = sourceEntries({
  kamei1995: {
    short: "Kamei et al. 1995",
    full: "A. Kamei, S. W. Beyerlein, R. T Jacobsen: Application of nonlinear regression in the development of a wide range formulation for HCFC-22, Int. J. Thermophys. 16 (1995) 1155–1164, doi:10.1007/BF02081283.",
    seen: "copied",
  },
  tillnerRothYokozeki1997: {
    short: "Tillner-Roth & Yokozeki 1997",
    full: "R. Tillner-Roth, A. Yokozeki: An international standard equation of state for difluoromethane (R-32), J. Phys. Chem. Ref. Data 26 (1997) 1273–1328, doi:10.1063/1.556002.",
    seen: "copied",
  },
  lemmonJacobsen2005: {
    short: "Lemmon & Jacobsen 2005",
    full: "E. W. Lemmon, R. T Jacobsen: A new functional form and new fitting techniques for equations of state with application to pentafluoroethane (HFC-125), J. Phys. Chem. Ref. Data 34 (2005) 69–108, doi:10.1063/1.1797813.",
    seen: "copied",
  },
  tillnerRothBaehr1994: {
    short: "Tillner-Roth & Baehr 1994",
    full: "R. Tillner-Roth, H. D. Baehr: An international standard formulation for the thermodynamic properties of 1,1,1,2-tetrafluoroethane (HFC-134a), J. Phys. Chem. Ref. Data 23 (1994) 657–729, doi:10.1063/1.555958.",
    seen: "copied",
  },
  lemmonJacobsen2000: {
    short: "Lemmon & Jacobsen 2000",
    full: "E. W. Lemmon, R. T Jacobsen: An international standard formulation for the thermodynamic properties of 1,1,1-trifluoroethane (HFC-143a), J. Phys. Chem. Ref. Data 29 (2000) 521–552, doi:10.1063/1.1318909.",
    seen: "copied",
  },
  lemmonMcLindenWagner2009: {
    short: "Lemmon, McLinden & Wagner 2009",
    full: "E. W. Lemmon, M. O. McLinden, W. Wagner: Thermodynamic properties of propane III, J. Chem. Eng. Data 54 (2009) 3141–3180, doi:10.1021/je900217v.",
    seen: "copied",
  },
  buckerWagner2006: {
    short: "Bücker & Wagner 2006",
    full: "D. Bücker, W. Wagner: Reference equations of state for the thermodynamic properties of fluid phase n-butane and isobutane, J. Phys. Chem. Ref. Data 35 (2006) 929–1019, doi:10.1063/1.1901687.",
    seen: "copied",
  },
  spanWagner1996: {
    short: "Span & Wagner 1996",
    full: "R. Span, W. Wagner: A new equation of state for carbon dioxide, J. Phys. Chem. Ref. Data 25 (1996) 1509–1596, doi:10.1063/1.555991.",
    seen: "copied",
  },
  lemmonAkasaka2022: {
    short: "Lemmon & Akasaka 2022",
    full: "E. W. Lemmon, R. Akasaka: An international standard formulation for 2,3,3,3-tetrafluoroprop-1-ene (R1234yf), Int. J. Thermophys. 43 (2022) 119, doi:10.1007/s10765-022-03015-y.",
    seen: "copied",
  },
  tholLemmon2016: {
    short: "Thol & Lemmon 2016",
    full: "M. Thol, E. W. Lemmon: Equation of state for the thermodynamic properties of trans-1,3,3,3-tetrafluoropropene (R-1234ze(E)), Int. J. Thermophys. 37 (2016) 28, doi:10.1007/s10765-016-2040-6.",
    seen: "copied",
  },
  lemmonJacobsen2004: {
    short: "Lemmon & Jacobsen 2004",
    full: "E. W. Lemmon, R. T Jacobsen: Equations of state for mixtures of R-32, R-125, R-134a, R-143a, and R-152a, J. Phys. Chem. Ref. Data 33 (2004) 593–620, doi:10.1063/1.1649997.",
    seen: "copied",
  },
  bell2022: {
    short: "Bell 2022",
    full: "I. H. Bell: Mixture models for refrigerants R-1234yf/134a, R-1234yf/1234ze(E), and R-134a/1234ze(E), J. Phys. Chem. Ref. Data 51 (2022) 013103, doi:10.1063/5.0086060.",
    seen: "copied",
  },
  bell2023: {
    short: "Bell 2023",
    full: "I. H. Bell: Mixture model for refrigerant pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf, J. Phys. Chem. Ref. Data 52 (2023) 013101, doi:10.1063/5.0135368.",
    seen: "copied",
  },
  refpropTable: {
    short: "printed pressure–temperature table",
    full: "Pressure–temperature tables for R-22, R-134a and R-410A as printed in the trade, of NIST REFPROP origin (bubble pressures, psig over 14.696 psia).",
    seen: "opened",
  },
  coolprop8: {
    short: "CoolProp 8.0.0",
    full: "I. H. Bell et al.: CoolProp 8.0.0 (MIT), values of the same published equations of state, evaluated independently.",
    seen: "opened",
  },
  ashrae34: {
    short: "ASHRAE Standard 34",
    full: "ANSI/ASHRAE Standard 34: Designation and Safety Classification of Refrigerants (designations, compositions, safety classes).",
    seen: "copied",
  },
  ipccAr4: {
    short: "IPCC AR4",
    full: "IPCC Fourth Assessment Report, Working Group I, 2007, table 2.14: 100-year warming potentials; for R-1234yf, R-1234ze(E), R-290 and R-600a, which it lacks, the values of Regulation (EU) No 517/2014, annexes II and IV.",
    seen: "memory",
  },
  eu2024573: {
    short: "Regulation (EU) 2024/573",
    full: "Regulation (EU) 2024/573 on fluorinated greenhouse gases, annexes I to III: single HFCs as AR4; R-1234yf 0.501, R-1234ze(E) 1.37. AR5 and AR6 figures beside it from memory.",
    seen: "copied",
  },
  totalWarming: {
    short: "EN 378-1 annex B",
    full: "EN 378-1, annex on total equivalent warming impact: leaks, losses at the end of life and energy; the equation from memory.",
    seen: "memory",
  },
  liao2000: {
    short: "Liao, Zhao & Jakobsen 2000",
    full: "S. M. Liao, T. S. Zhao, A. Jakobsen: A correlation of optimal heat rejection pressures in transcritical carbon dioxide cycles, Appl. Therm. Eng. 20 (2000) 831–841; form as carried by public code, span (evaporating -10 to 20 °C, gas cooler outlet 30 to 60 °C, 71 to 120 bar) from memory.",
    seen: "copied",
  },
  gasCoolerRules: {
    short: "Sawalha 2008, Chen & Gu 2005, Sarkar et al. 2004",
    full: "S. Sawalha 2008; Y. Chen, J. Gu 2005; J. Sarkar, S. Bhattacharyya, M. Ram Gopal 2004: optimum gas cooler pressures of transcritical carbon dioxide, Int. J. Refrig.; the three forms from memory.",
    seen: "memory",
  },
  iec60335: {
    short: "IEC 60335-2-40:2018",
    full: "IEC 60335-2-40:2018: Particular requirements for electrical heat pumps, air-conditioners and dehumidifiers, annexes BB (flammability limits) and GG (charge limits).",
    seen: "copied",
  },
  targetSuperheatNotes: {
    short: "training notes on target superheat",
    full: "Training notes for service technicians (acservicetech.com, target superheat): [(3 × WB) − 80 − DB]/2 in °F; WB 64 and DB 96 °F give 8 °F; by chart WB 66 and DB 90 °F give 13 °F.",
    seen: "opened",
  },
  superheatTable: {
    short: "superheat charging table",
    full: "Superheat charging table of a split machine's installation guide (38VTA, table 4): at 95 °F outdoors and wet bulbs of 64 to 76 °F 6, 10, 14, 18, 22, 25, 29 °F; dashes where no charging is to be tried.",
    seen: "opened",
  },
  title24Superheat: {
    short: "Title 24, RA3.2",
    full: "California Energy Commission: 2008 Residential Appendices, RA3.2 (page RA3-14): no valid charge test by superheat where the target is under 5 °F; measured and target within 5 °F pass.",
    seen: "opened",
  },
  ufgs15652: {
    short: "UFGS 15652A",
    full: "Unified Facilities Guide Specification 15652A, paragraph 3.2.1.2: a standing test of refrigerant piping is corrected by 0.3 psi for each °F between the ambient temperatures.",
    seen: "opened",
  },
  astmB280: {
    short: "ASTM B280-20",
    full: "ASTM B280-20: Standard Specification for Seamless Copper Tube for Air Conditioning and Refrigeration Field Service, table 1 (annealed coils) as opened, table 2 (drawn lengths) from memory.",
    seen: "copied",
  },
  lineChargePhysics: {
    short: "bore area × liquid density",
    full: "Liquid per foot at 100 °F from the bore areas printed in ASTM B280 and liquid densities of the published equations of state (CoolProp 8.0.0), rounded to 0.01 oz/ft.",
    seen: "opened",
  },
  usRefrigerantRule: {
    short: "40 CFR 82, 40 CFR 84",
    full: "US Code of Federal Regulations, title 40, part 82 subpart F (section 608: certified technicians, no venting) and part 84 (technology transitions: 88 FR 73098, 88 FR 88825, 89 FR 100381). In motion: check the state at the date of work.",
    seen: "copied",
  },
  cutler2013: {
    short: "Cutler et al. 2013",
    full: "D. Cutler, J. Winkler, N. Kruis, C. Christensen, M. Brandemuehl: Improved modeling of residential air conditioners and heat pumps for energy calculations, NREL/TP-5500-56354, 2013; single-speed coefficients as carried in public simulation code.",
    seen: "copied",
  },
  ahri540: {
    short: "AHRI 540",
    full: "ANSI/AHRI Standard 540: Performance rating of positive displacement refrigerant compressors (third-order polynomial of ten coefficients); form, order and units as carried in public code, the standard itself not opened.",
    seen: "copied",
  },
  dabiriRice1981: {
    short: "Dabiri and Rice 1981",
    full: "A. E. Dabiri, C. K. Rice: A compressor simulation model with corrections for the level of suction gas superheat, ASHRAE Transactions 87 (2), 1981; correction as carried in public simulation code.",
    seen: "copied",
  },
  publicCompressorMap: {
    short: "Public compressor map",
    full: "Ten coefficients each of flow and power of a 3-ton R-410A compressor in the samples of a public air conditioner simulation (ACHP); values beside them by CoolProp 8.0.0 (Bell et al. 2014).",
    seen: "copied",
  },
  ahri210Code: {
    short: "AHRI 210/240-2023",
    full: "ANSI/AHRI Standard 210/240-2023, section 11 (equations 11.55 to 11.79) as numbered in public code; the 2008 edition's quadratic for variable speed as in public NREL code. The standard itself was not opened.",
    seen: "copied",
  },
  makersTable: {
    short: "Manual of a split heat pump",
    full: "A manufacturer's installation manual of a split heat pump, page 28: expanded performance data.",
    seen: "copied",
  },
  ahri210: {
    short: "AHRI 210/240",
    full: "ANSI/AHRI Standard 210/240: Performance rating of unitary air-conditioning and air-source heat pump equipment (rating at 95 °F outdoors, 80 °F dry bulb and 67 °F wet bulb indoors; EER and SEER).",
    seen: "memory",
  },
  condenserSelection: {
    short: "condenser selection practice",
    full: "Heat rejection relations of condenser selection practice: capacity + 3,413 × kW (suction-cooled), capacity + 2,545 × brake horsepower (open).",
    seen: "opened",
  },
  erbs1983: {
    short: "Erbs, Klein & Beckman 1983",
    full: "D. G. Erbs, S. A. Klein, W. A. Beckman: Estimation of degree-days and ambient temperature bin data from monthly-average temperatures, ASHRAE Journal 25(6), 1983, 60–65; coefficients from memory, checked against degree-days of ten typical years.",
    seen: "memory",
  },
  tmy3: {
    short: "NREL TMY3",
    full: "S. Wilcox, W. Marion: Users manual for TMY3 data sets, NREL/TP-581-43156, 2008; monthly means and degree-days worked from the hourly files.",
    seen: "opened",
  },
  fullLoadHours: {
    short: "equivalent full-load hours table",
    full: "Equivalent full-load cooling hours by city and building type, United States, commercial ranges for schools and offices; and metering of 60 homes showing that published hours overstate the use of oversized units.",
    seen: "opened",
  },
  kleinEtAl1997: {
    short: "Klein, McLinden & Laesecke 1997",
    full: "S. A. Klein, M. O. McLinden, A. Laesecke: An improved extended corresponding states method for estimation of viscosity of pure refrigerants and mixtures, Int. J. Refrig. 20 (1997) 208–217, doi:10.1016/S0140-7007(96)00073-4.",
    seen: "copied",
  },
  mcLindenKleinPerkins2000: {
    short: "McLinden, Klein & Perkins 2000",
    full: "M. O. McLinden, S. A. Klein, R. A. Perkins: An extended corresponding states model for the thermal conductivity of refrigerants and refrigerant mixtures, Int. J. Refrig. 23 (2000) 43–63, doi:10.1016/S0140-7007(99)00024-9.",
    seen: "copied",
  },
  huberLaeseckePerkins2003: {
    short: "Huber, Laesecke & Perkins 2003",
    full: "M. L. Huber, A. Laesecke, R. A. Perkins: Model for the viscosity and thermal conductivity of refrigerants, including a new correlation for the viscosity of R134a, Ind. Eng. Chem. Res. 42 (2003) 3163–3178, doi:10.1021/ie0300880.",
    seen: "copied",
  },
  huberLaesecke2006: {
    short: "Huber & Laesecke 2006",
    full: "M. L. Huber, A. Laesecke: Correlation for the viscosity of pentafluoroethane (R125), Ind. Eng. Chem. Res. 45 (2006) 4447–4453, doi:10.1021/ie051367l.",
    seen: "copied",
  },
  perkinsHuber2006: {
    short: "Perkins & Huber 2006",
    full: "R. A. Perkins, M. L. Huber: Measurement and correlation of the thermal conductivity of pentafluoroethane (R125), J. Chem. Eng. Data 51 (2006) 898–904, doi:10.1021/je050372t.",
    seen: "copied",
  },
  vogel1998: {
    short: "Vogel et al. 1998",
    full: "E. Vogel, C. Küchenmeister, E. Bich, A. Laesecke: Reference correlation of the viscosity of propane, J. Phys. Chem. Ref. Data 27 (1998) 947–970, doi:10.1063/1.556025.",
    seen: "copied",
  },
  marsh2002: {
    short: "Marsh, Perkins & Ramires 2002",
    full: "K. N. Marsh, R. A. Perkins, M. L. V. Ramires: Measurement and correlation of the thermal conductivity of propane, J. Chem. Eng. Data 47 (2002) 932–940, doi:10.1021/je010001m.",
    seen: "copied",
  },
  vogel2000: {
    short: "Vogel, Küchenmeister & Bich 2000",
    full: "E. Vogel, C. Küchenmeister, E. Bich: Viscosity correlation for isobutane over wide ranges of the fluid region, Int. J. Thermophys. 21 (2000) 343–356, doi:10.1023/A:1006623310780.",
    seen: "copied",
  },
  perkins2002: {
    short: "Perkins 2002",
    full: "R. A. Perkins: Measurement and correlation of the thermal conductivity of isobutane, J. Chem. Eng. Data 47 (2002) 1272–1279, doi:10.1021/je010121u.",
    seen: "copied",
  },
  laeseckeMuzny2017: {
    short: "Laesecke & Muzny 2017",
    full: "A. Laesecke, C. D. Muzny: Reference correlation for the viscosity of carbon dioxide, J. Phys. Chem. Ref. Data 46 (2017) 013107, doi:10.1063/1.4977429.",
    seen: "copied",
  },
  huber2016: {
    short: "Huber et al. 2016",
    full: "M. L. Huber, E. A. Sykioti, M. J. Assael, R. A. Perkins: Reference correlation of the thermal conductivity of carbon dioxide, J. Phys. Chem. Ref. Data 45 (2016) 013102, doi:10.1063/1.4940892.",
    seen: "copied",
  },
  bellLaesecke2016: {
    short: "Bell & Laesecke 2016",
    full: "I. H. Bell, A. Laesecke: Viscosity of refrigerants and other working fluids from residual entropy scaling, 16th International Refrigeration and Air Conditioning Conference at Purdue, 2016.",
    seen: "copied",
  },
  perkinsHuber2011: {
    short: "Perkins & Huber 2011",
    full: "R. A. Perkins, M. L. Huber: Measurement and correlation of the thermal conductivity of R1234yf and R1234ze(E), J. Chem. Eng. Data 56 (2011) 4868–4874, doi:10.1021/je200811n.",
    seen: "copied",
  },
  mulero2012: {
    short: "Mulero, Cachadiña & Parra 2012",
    full: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended correlations for the surface tension of common fluids, J. Phys. Chem. Ref. Data 41 (2012) 043105, doi:10.1063/1.4768782.",
    seen: "copied",
  },
  mulero2014: {
    short: "Mulero & Cachadiña 2014",
    full: "A. Mulero, I. Cachadiña: Recommended correlations for the surface tension of several fluids included in the REFPROP program, J. Phys. Chem. Ref. Data 43 (2014) 023104, doi:10.1063/1.4878755.",
    seen: "copied",
  },
  blendTransport: {
    short: "Wilke 1950; Mason & Saxena 1958; Teja & Rice 1981",
    full: "Mixing rules: dilute gas by C. R. Wilke, J. Chem. Phys. 18 (1950) 517–519, and E. A. Mason, S. C. Saxena, Phys. Fluids 1 (1958) 361–369; the rest by corresponding states of the components after A. S. Teja, P. Rice, Ind. Eng. Chem. Fundam. 20 (1981) 77–81.",
    seen: "memory",
  },
  weinaugKatz1943: {
    short: "Weinaug & Katz 1943",
    full: "C. F. Weinaug, D. L. Katz: Surface tensions of methane–propane mixtures, Ind. Eng. Chem. 35 (1943) 239–246 (parachors mixed by mole).",
    seen: "memory",
  },
  jacobs1976: {
    short: "Jacobs et al. 1976",
    full: "M. L. Jacobs, F. C. Scheideman, S. M. Rich, N. A. Macken: Oil transport by refrigerant vapor, ASHRAE Transactions 82(2), 1976, 318–329: superficial vapour velocity over √(g D (ρ oil − ρ vapour)/ρ vapour) of 0.85² = 0.7225; form and constant from memory, held against remembered capacities of the ASHRAE Handbook's riser table.",
    seen: "memory",
  },
  lineVelocities: {
    short: "line sizing practice",
    full: "Line sizing practice: suction and discharge losses of 1 to 2 °F of saturation temperature, liquid lines 1 to 3 °F; from memory.",
    seen: "memory",
  },
  receiverPractice: {
    short: "receiver sizing practice",
    full: "Receivers are filled to at most 80 % of their volume at the warmest temperature that they may meet (pump-down and storage practice; EN 378 and transport rules give like limits); from memory.",
    seen: "memory",
  },
  ashraeRefrigeration: {
    short: "ASHRAE Handbook, Refrigeration",
    full: "ASHRAE Handbook, Refrigeration, Halocarbon refrigeration systems: capacities of R-22 suction lines at 2 °F loss per 100 ft (40 °F, condensing at 105 °F) and least capacities for oil entrainment up suction risers; figures from memory.",
    seen: "memory",
  },
  zivi1964: {
    short: "Zivi 1964",
    full: "S. M. Zivi: Estimation of steady-state steam void-fraction by means of the principle of minimum entropy production, J. Heat Transfer 86 (1964) 247–252: slip ratio (ρ liquid/ρ vapour)^(1/3).",
    seen: "memory",
  },
});
