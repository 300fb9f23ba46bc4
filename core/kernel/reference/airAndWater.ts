import { references } from "./entry";

/** Water, moist air. */
export const airAndWater = references({
  kell1975: {
    short: "Kell 1975",
    full: "G. S. Kell: Density, thermal expansivity, and compressibility of liquid water from 0° to 150 °C, J. Chem. Eng. Data 20 (1975) 97–105.",
    seen: "memory",
  },
  iapwsSr6: {
    short: "IAPWS SR6-08(2011)",
    full: "IAPWS: Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa, SR6-08(2011).",
    seen: "memory",
  },
  iapws95: {
    short: "IAPWS-95",
    full: "W. Wagner, A. Pruß: The IAPWS formulation 1995 for the thermodynamic properties of ordinary water substance, J. Phys. Chem. Ref. Data 31 (2002) 387–535; values as evaluated by CoolProp 8.0.0.",
    seen: "copied",
  },
});
