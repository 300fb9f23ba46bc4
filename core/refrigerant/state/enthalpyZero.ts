/** Where enthalpy and entropy count from: the two conventions of the trade. */
import { us } from "../../kernel/values/quantity";
import type { System } from "../../kernel/values/quantity";
import type { Fluid } from "../refrigerant";
import { saturatedState } from "../saturation/saturation";

/** Values of the equation of state at the point that a convention counts from. J/kg, J/(kg K). */
export interface EnthalpyZero {
  readonly description: string;
  readonly enthalpy: number;
  readonly entropy: number;
}

const COLD = us("temperature", -40);

/** The equations of state are compiled with the IIR zero, so there is nothing to subtract. */
const IIR: EnthalpyZero = {
  description: "IIR: 200 kJ/kg and 1 kJ/(kg·K) for saturated liquid at 0 °C",
  enthalpy: 0,
  entropy: 0,
};

/** IIR for SI; for US zero enthalpy and entropy in the saturated liquid (bubble point) at −40 °F. */
export const enthalpyZero = (fluid: Fluid, system: System): EnthalpyZero => {
  if (system === "SI") return IIR;
  const { enthalpy, entropy } = saturatedState(fluid, COLD, "bubble");
  return { description: "US: 0 BTU/lb and 0 BTU/(lb·°F) for saturated liquid at -40 °F", enthalpy, entropy };
};
