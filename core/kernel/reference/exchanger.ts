import { sourceEntries } from "./entry";

/** Heat exchangers. */
export const exchangerSources = sourceEntries({
  bergman2011: {
    short: "Bergman 2011",
    full: "T. L. Bergman, A. S. Lavine, F. P. Incropera, D. P. DeWitt: Introduction to Heat Transfer, 6th ed., Wiley 2011, chapter 11 (mean difference, effectiveness and transfer units).",
    seen: "memory",
  },
  incropera2007: {
    short: "Incropera 2007, Ex. 11.5",
    full: "F. P. Incropera and others: Fundamentals of Heat and Mass Transfer, 6th ed., Wiley 2007, Example 11.5, page 696 (steam condenser), as re-worked in a public notebook (FOSSEE Python-Textbook-Companions).",
    seen: "copied",
  },
  kern1950: {
    short: "Kern 1950",
    full: "D. Q. Kern: Process Heat Transfer, McGraw-Hill 1950: Example 12.3 (condenser for butane), page 287 read in a scan's text; Example 20.2 (tube coil), page 723, as re-worked in a public notebook (FOSSEE Python-Textbook-Companions).",
    seen: "opened",
  },
  dutta2001: {
    short: "Dutta 2001, Ex. 8.1",
    full: "B. K. Dutta: Heat Transfer: Principles and Applications, PHI 2001, Example 8.1, page 303 (double pipe, benzene and water), as re-worked in a public notebook (FOSSEE Python-Textbook-Companions).",
    seen: "copied",
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
  gnielinski1976: {
    short: "Gnielinski 1976",
    full: "V. Gnielinski: New equations for heat and mass transfer in turbulent pipe and channel flow, Int. Chem. Eng. 16 (1976) 359–368; friction of smooth tubes by Petukhov. Rows worked with ht 1.0.7.",
    seen: "copied",
  },
  gnielinski2013: {
    short: "Gnielinski 2013",
    full: "V. Gnielinski: On heat transfer in tubes, Int. J. Heat Mass Transfer 63 (2013) 134–140 (linear transition from Re 2,300 to 4,000; (Pr/Prw)^0.11 for liquids, none for gas that is cooled).",
    seen: "memory",
  },
  hausen1943: {
    short: "Hausen 1943",
    full: "H. Hausen: Z. VDI Beih. Verfahrenstechnik 4 (1943) 91–98 (laminar flow in tubes, thermal entry, constant wall temperature). Rows worked with ht 1.0.7.",
    seen: "copied",
  },
  schmidt1967: {
    short: "Schmidt 1967",
    full: "E. F. Schmidt: Wärmeübergang und Druckverlust in Rohrschlangen, Chem. Ing. Tech. 39 (1967) 781–789. Rows worked with fluids 1.1.0 and ht 1.0.7; the laminar Nusselt number from memory.",
    seen: "copied",
  },
  gnielinski1986: {
    short: "Gnielinski 1986",
    full: "V. Gnielinski: Heat transfer and pressure drop in helically coiled tubes, Proc. 8th Int. Heat Transfer Conf. 6 (1986) 2847–2854 (linear transition from the critical Reynolds number to 22,000).",
    seen: "memory",
  },
  shah1979: {
    short: "Shah 1979",
    full: "M. M. Shah: A general correlation for heat transfer during film condensation inside pipes, Int. J. Heat Mass Transfer 22 (1979) 547–556. Rows worked with ht 1.0.7.",
    seen: "copied",
  },
  shah2009: {
    short: "Shah 2009",
    full: "M. M. Shah: An improved and extended general correlation for heat transfer during condensation in plain tubes, HVAC&R Research 15 (2009) 889–913: ranges as in its abstract; equations and the limits of horizontal tubes as printed by W. Roetzel, X. Luo, D. Chen: Design and Operation of Heat Exchangers and their Networks, 2020, equations 4.168 to 4.179 (there 3.81 for 3.8).",
    seen: "copied",
  },
  bellGhaly1973: {
    short: "Silver 1947, Bell and Ghaly 1973",
    full: "L. Silver: Gas cooling with aqueous condensation, Trans. Inst. Chem. Eng. 25 (1947) 30–42; K. J. Bell, M. A. Ghaly: An approximate generalized design method for multicomponent/partial condensers, AIChE Symp. Ser. 69 (1973) 72–79.",
    seen: "memory",
  },
  dittusBoelter1930: {
    short: "Dittus and Boelter 1930",
    full: "F. W. Dittus, L. M. K. Boelter, Univ. California Publ. Eng. 2 (1930) 443, in the form 0.023 Re^0.8 Pr^0.4. Rows worked with ht 1.0.7.",
    seen: "copied",
  },
  mullerSteinhagenHeck1986: {
    short: "Müller-Steinhagen and Heck 1986",
    full: "H. Müller-Steinhagen, K. Heck: A simple friction pressure drop correlation for two-phase flow in pipes, Chem. Eng. Process. 20 (1986) 297–308. Checked by an example printed by fluids (C. Bell).",
    seen: "copied",
  },
  rouhaniAxelsson1970: {
    short: "Rouhani and Axelsson 1970",
    full: "S. Z. Rouhani, E. Axelsson: Calculation of void volume fraction in the subcooled and quality boiling regions, Int. J. Heat Mass Transfer 13 (1970) 383–393, in the form for horizontal tubes by D. Steiner (VDI-Wärmeatlas 1993). Checked by an example printed by fluids (C. Bell).",
    seen: "copied",
  },
  zivi1964: {
    short: "Zivi 1964",
    full: "S. M. Zivi: Estimation of steady-state steam void-fraction by means of the principle of minimum entropy production, J. Heat Transfer 86 (1964) 247–252. Checked by an example printed by fluids (C. Bell).",
    seen: "copied",
  },
  churchillBernstein1977: {
    short: "Churchill and Bernstein 1977",
    full: "S. W. Churchill, M. Bernstein: A correlating equation for forced convection from gases and liquids to a circular cylinder in crossflow, J. Heat Transfer 99 (1977) 300–306. Rows worked with ht 1.0.7.",
    seen: "copied",
  },
  churchillChu1975: {
    short: "Churchill and Chu 1975",
    full: "S. W. Churchill, H. H. S. Chu: Correlating equations for laminar and turbulent free convection from a horizontal cylinder, Int. J. Heat Mass Transfer 18 (1975) 1049–1053. Rows worked with ht 1.0.7.",
    seen: "copied",
  },
  mixedConvectionTexts: {
    short: "Bergman 2011, mixed convection",
    full: "T. L. Bergman and others: Introduction to Heat Transfer, 6th ed. 2011, section 9.9: Nu^n = NuF^n ± NuN^n, n = 4 for cylinders in transverse flow (Churchill 1983).",
    seen: "memory",
  },
  stoeckerJones1982: {
    short: "Stoecker and Jones 1982",
    full: "W. F. Stoecker, J. W. Jones: Refrigeration and Air Conditioning, 2nd ed., McGraw-Hill 1982: clearance volumetric efficiency (chapter 11), balance of compressor, condenser and evaporator (chapter 14).",
    seen: "memory",
  },
  stopFlowRows: {
    short: "stopped exchangers in Python",
    full: "Made-up exchangers whose water stops, worked in Python as one lump at constant heat: 8.3171 lb a gallon, titanium at 0.125 BTU/(lb °F).",
    seen: "opened",
  },
  wilson1915: {
    short: "Wilson 1915",
    full: "E. E. Wilson: A basis for rational design of heat transfer apparatus, Transactions ASME 37 (1915) 47-70; form as reviewed by J. Fernández-Seara and others, Applied Thermal Engineering 27 (2007) 2745-2757 (abstract).",
    seen: "copied",
  },
  kantorExchanger: {
    short: "Kantor, double-pipe exchanger",
    full: "J. Kantor: Chemical engineering laboratory book (github jckantor/cbe31358-book @486752f8, MIT): 24 readings of a double-pipe exchanger.",
    seen: "opened",
  },
});
