import { sourceEntries } from "./entry";

/** Water, moist air. */
export const airAndWaterSources = sourceEntries({
  kell1975: {
    short: "Kell 1975",
    full: "G. S. Kell: Density, thermal expansivity, and compressibility of liquid water from 0° to 150 °C, J. Chem. Eng. Data 20 (1975) 97–105.",
    seen: "memory",
  },
  iapwsSr6: {
    short: "IAPWS SR6-08(2011)",
    full: "IAPWS: Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa, SR6-08(2011); coefficients as carried by open-source code, checked against IAPWS-95.",
    seen: "copied",
  },
  iapwsSr1: {
    short: "IAPWS SR1-86(1992)",
    full: "W. Wagner, A. Pruss: International equations for the saturation properties of ordinary water substance, revised according to the International Temperature Scale of 1990, J. Phys. Chem. Ref. Data 22 (1993) 783–787 (IAPWS SR1-86(1992)); coefficients from memory, checked against IAPWS-95.",
    seen: "memory",
  },
  iapws95: {
    short: "IAPWS-95",
    full: "W. Wagner, A. Pruß: The IAPWS formulation 1995 for the thermodynamic properties of ordinary water substance, J. Phys. Chem. Ref. Data 31 (2002) 387–535; values as evaluated by CoolProp 8.0.0.",
    seen: "copied",
  },
  doePoolCovers: {
    short: "US DOE pool covers",
    full: "US Department of Energy: consumer guidance on swimming pool covers (1,048 BTU for each pound of 80 °F water that evaporates).",
    seen: "copied",
  },
  ashraePsychrometrics: {
    short: "ASHRAE Handbook 2017",
    full: "ASHRAE Handbook, Fundamentals (2017), chapter 1, Psychrometrics (after R. W. Hyland, A. Wexler: Formulations for the thermodynamic properties of the saturated phases of H2O, ASHRAE Transactions 89(2A), 1983, 500–519), checked beside PsychroLib 2.5.0 (MIT, npm package psychrolib 1.1.1).",
    seen: "copied",
  },
  moistAirRp1485: {
    short: "ASHRAE RP-1485",
    full: "S. Herrmann, H.-J. Kretzschmar, D. P. Gatley: Thermodynamic properties of real moist air (ASHRAE RP-1485), HVAC&R Research 15 (2009) 961–986; values as evaluated by CoolProp 8.0.0 (HAPropsSI).",
    seen: "copied",
  },
  iapwsR14: {
    short: "IAPWS R14-08(2011)",
    full: "IAPWS: Revised release on the pressure along the melting and sublimation curves of ordinary water substance, R14-08(2011) (W. Wagner, T. Riethmann, R. Feistel, A. H. Harvey, J. Phys. Chem. Ref. Data 40 (2011) 043103); coefficients from memory, checked against its value at 230 K.",
    seen: "memory",
  },
  fao56: {
    short: "FAO 56, example 8",
    full: "R. G. Allen, L. S. Pereira, D. Raes, M. Smith: Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Rome 1998, example 8; as carried by the tests of open-source code (PyETo).",
    seen: "copied",
  },
  spencer1971: {
    short: "Spencer 1971",
    full: "J. W. Spencer: Fourier series representation of the position of the sun, Search 2 (1971) 172; from memory.",
    seen: "memory",
  },
  plummerBusenberg1982: {
    short: "Plummer, Busenberg 1982",
    full: "L. N. Plummer, E. Busenberg: The solubilities of calcite, aragonite and vaterite in CO2-H2O solutions between 0 and 90 °C, Geochim. Cosmochim. Acta 46 (1982) 1011–1040: the constants as its abstract prints them.",
    seen: "opened",
  },
  standardMethods2330: {
    short: "Standard Methods 2330 B",
    full: "Standard Methods for the Examination of Water and Wastewater, 2330 B, calcium carbonate saturation indices; forms from memory and as public code of a water-quality tool prints them.",
    seen: "memory",
  },
  poolAlkalinity: {
    short: "pool chemistry notes",
    full: "Alkalinity of cyanurate (pK 6.88, from memory; one third of the cyanuric acid is usual on site) and of borate (pK 9.24; prints give up to 1.4 times this).",
    seen: "copied",
  },
  siteTable: {
    short: "site table of the saturation index",
    full: "Factor table of the saturation index used on site, as five pages print it (temperature, hardness, alkalinity; constant 12.1, 12.2 or 12.3 by dissolved solids), and sample problems of a pool operators' course: −0.9 and +1.1.",
    seen: "opened",
  },
  saturationRows: {
    short: "saturation index in Python, PHREEQC",
    full: "Made-up pool waters worked in Python with the same constants, and beside PHREEQC 3 (wateq4f.dat), which has ion pairs and lies a little lower.",
    seen: "opened",
  },
  waterQualityTable: {
    short: "water-quality tables",
    full: "Water-quality tables in installation manuals of water-source heat pumps (two printings): most chloride by metal at 50, 75 and 100 °F.",
    seen: "copied",
  },
  heatExchangerNotes: {
    short: "exchanger water table",
    full: "Water-quality table in a manual of an exchanger: free chlorine on copper alloys below 1 mg/L good, 1 to 5 doubtful, above 5 poor.",
    seen: "copied",
  },
});
