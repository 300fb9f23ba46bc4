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
});
