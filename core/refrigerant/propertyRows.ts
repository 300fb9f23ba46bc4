/** Rows of the property tables. */
import { quantityResult, wordResult } from "../kernel/define/result";

export const PROPERTY_ROWS = {
  phase: wordResult("liquid, vapour, two-phase or supercritical"),
  density: quantityResult("density", "density"),
  enthalpy: quantityResult("enthalpy", "enthalpy over the zero named below"),
  entropy: quantityResult("entropy", "entropy over the zero named below"),
  heatCapacity: quantityResult("heat capacity", "heat capacity at constant pressure"),
  speedOfSound: quantityResult("velocity", "speed of sound"),
  viscosity: quantityResult("viscosity", "dynamic viscosity"),
  conductivity: quantityResult("conductivity", "thermal conductivity"),
} as const;

export const ZERO_ROW = { enthalpyZero: wordResult("where enthalpy and entropy count from") } as const;
