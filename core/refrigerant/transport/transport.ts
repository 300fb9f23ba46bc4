import type { SourceKey } from "../../kernel/reference";
import type { PhaseUncertainty } from "../data/transportData";
import type { Phase } from "../helmholtz/substance";
import type { Fluid } from "../refrigerant";
import { isPure } from "../refrigerant";
import { blendTransport } from "./blend";
import { pureConductivity } from "./conductivity";
import { pureViscosity, sharedState, transportOf } from "./viscosity";

/** A transport property with its uncertainty and source. */
export interface TransportValue {
  /** Pa s or W/(m K) */
  readonly value: number;
  /** Expected uncertainty as a share */
  readonly uncertainty: number;
  /** Where the model is published */
  readonly source: SourceKey;
}

const MIXING: SourceKey = "blendTransport";

// How far the mixing rules differ from V. Geller's correlations (2000, 2001) of R-404A, R-407C, R-410A and R-507A between
// -40 degC and 0.95 of the critical temperature, widened. R-452B, R-454B and R-513A have no correlation to compare with.
const BLEND_VISCOSITY: PhaseUncertainty = { liquid: 0.14, vapour: 0.09 };
const BLEND_CONDUCTIVITY: PhaseUncertainty = { liquid: 0.13, vapour: 0.08 };

/** A single-phase point: K, kg/m3. */
export interface TransportPoint {
  readonly phase: Phase;
  readonly temperature: number;
  readonly density: number;
}

interface Published {
  readonly uncertainty: PhaseUncertainty;
  readonly source: SourceKey;
}

const share = (uncertainty: PhaseUncertainty, phase: Phase) =>
  phase === "vapour" ? uncertainty.vapour : uncertainty.liquid;

const published = (value: number, { uncertainty, source }: Published, phase: Phase): TransportValue => ({
  value,
  uncertainty: share(uncertainty, phase),
  source,
});

/** Both of one phase: Pa s and W/(m K). */
export interface Transport {
  readonly viscosity: TransportValue;
  readonly conductivity: TransportValue;
}

/** Viscosity and conductivity of one phase. Uncertainties hold away from the critical point. */
export function transport(fluid: Fluid, { phase, temperature, density }: TransportPoint): Transport {
  const molar = density / fluid.substance.molarMass;
  if (!isPure(fluid)) {
    const found = blendTransport(fluid, temperature, molar);
    return {
      viscosity: { value: found.viscosity, uncertainty: share(BLEND_VISCOSITY, phase), source: MIXING },
      conductivity: { value: found.conductivity, uncertainty: share(BLEND_CONDUCTIVITY, phase), source: MIXING },
    };
  }
  const data = transportOf(fluid.name);
  const state = sharedState(data, fluid.substance, temperature, molar);
  const viscosity = pureViscosity(fluid, temperature, molar, state);
  return {
    viscosity: published(viscosity, data.viscosity, phase),
    conductivity: published(
      pureConductivity(fluid, { temperature, density: molar, viscosity, state }),
      data.conductivity,
      phase,
    ),
  };
}

/** Dynamic viscosity of one phase, Pa s. */
export function viscosity(fluid: Fluid, point: TransportPoint): TransportValue {
  if (!isPure(fluid)) return transport(fluid, point).viscosity;
  const value = pureViscosity(fluid, point.temperature, point.density / fluid.substance.molarMass);
  return published(value, transportOf(fluid.name).viscosity, point.phase);
}

/** Thermal conductivity of one phase, W/(m K). */
export const conductivity = (fluid: Fluid, point: TransportPoint): TransportValue =>
  transport(fluid, point).conductivity;
