/** Rows of the property tables. */
import { of, word } from "../kernel/define/result";

export const PROPERTY_ROWS = {
  phase: word("liquid, vapour, two-phase or supercritical"),
  density: of("density", "density"),
  enthalpy: of("enthalpy", "enthalpy over the zero named below"),
  entropy: of("entropy", "entropy over the zero named below"),
  heatCapacity: of("heat capacity", "heat capacity at constant pressure"),
  speedOfSound: of("velocity", "speed of sound"),
  viscosity: of("viscosity", "dynamic viscosity"),
  conductivity: of("conductivity", "thermal conductivity"),
} as const;

export const ZERO_ROW = { enthalpyZero: word("where enthalpy and entropy count from") } as const;
