import type { SourceKey } from "../../../kernel/reference";
import type { PhaseUncertainty } from "../../data/transportData";
import type { Phase } from "../../helmholtz/substance";
import type { Fluid } from "../refrigerant";
import { isPure } from "../refrigerant";
import { blendConductivity, blendViscosity } from "./blend";
import { pureConductivity } from "./conductivity";
import { pureViscosity, transportOf } from "./viscosity";

/** A transport property with what it is worth. */
export interface TransportValue {
  /** Pa s or W/(m K) */
  readonly value: number;
  /** Expected uncertainty as a share */
  readonly uncertainty: number;
  /** Where the model is published */
  readonly source: SourceKey;
}

const MIXING: SourceKey = "blendTransport";

// What the mixing rules differ by from V. Geller's correlations (2000, 2001) of R-404A, R-407C, R-410A and R-507A between
// -40 degC and 0.95 of the critical temperature, widened. R-452B, R-454B and R-513A have no correlation to compare with.
const BLEND_VISCOSITY: PhaseUncertainty = { liquid: 0.14, vapour: 0.09 };
const BLEND_CONDUCTIVITY: PhaseUncertainty = { liquid: 0.13, vapour: 0.08 };

/** A single-phase point: K, kg/m3. */
export interface TransportPoint {
  readonly phase: Phase;
  readonly temperature: number;
  readonly density: number;
}

const share = (uncertainty: PhaseUncertainty, phase: Phase) =>
  phase === "vapour" ? uncertainty.vapour : uncertainty.liquid;

/** Dynamic viscosity of one phase, Pa s. Uncertainties hold away from the critical point. */
export function viscosity(fluid: Fluid, { phase, temperature, density }: TransportPoint): TransportValue {
  const molar = density / fluid.substance.molarMass;
  if (!isPure(fluid))
    return {
      value: blendViscosity(fluid, temperature, molar),
      uncertainty: share(BLEND_VISCOSITY, phase),
      source: MIXING,
    };
  const { source, uncertainty } = transportOf(fluid.name).viscosity;
  return { value: pureViscosity(fluid, temperature, molar), uncertainty: share(uncertainty, phase), source };
}

/** Thermal conductivity of one phase, W/(m K). Uncertainties hold away from the critical point. */
export function conductivity(fluid: Fluid, { phase, temperature, density }: TransportPoint): TransportValue {
  const molar = density / fluid.substance.molarMass;
  if (!isPure(fluid))
    return {
      value: blendConductivity(fluid, temperature, molar),
      uncertainty: share(BLEND_CONDUCTIVITY, phase),
      source: MIXING,
    };
  const { source, uncertainty } = transportOf(fluid.name).conductivity;
  return { value: pureConductivity(fluid, temperature, molar), uncertainty: share(uncertainty, phase), source };
}
