import type { ConductivityData, CriticalEnhancement } from "../data/transportData";
import type { Substance } from "../helmholtz/substance";
import { phaseState, pressureAt } from "../helmholtz/substance";
import { idealAt } from "../helmholtz/ideal";
import type { Fluid } from "../refrigerant";
import { loadRefrigerant } from "../refrigerant";
import { conformalState, type ConformalState } from "./conformal";
import { diluteViscosity, pureViscosity, transportOf } from "./viscosity";

const BOLTZMANN = 1.380649e-23;

const polynomial = (c: readonly number[], x: number) => c.reduceRight((sum, k) => sum * x + k, 0);

/** Conductivity of the dilute gas, W/(m K), at a temperature in K. */
export function diluteConductivity(data: ConductivityData, fluid: Fluid, temperature: number): number {
  const s = fluid.substance;
  if (data.kind === "correlation") {
    const { dilute } = data;
    if (dilute.kind === "polynomial") return polynomial(dilute.A, temperature / dilute.temperature);
    const tau = s.reducing.temperature / temperature;
    return 1e-3 / (Math.sqrt(tau) * polynomial(dilute.l, tau));
  }
  // Translation and the internal degrees of freedom (Eucken's split with a fitted factor).
  const R = s.gasConstant / s.molarMass;
  const viscosity = diluteViscosity(transportOf(fluid.name).viscosity, s, temperature);
  idealAt(s.ideal, temperature);
  const cp0 = R * (1 - s.ideal.out[2]!);
  return viscosity * ((data.f[0] + data.f[1] * temperature) * (cp0 - 2.5 * R) + 3.75 * R);
}

/**
 * The part above the dilute gas, without the critical enhancement, W/(m K), at K and mol/m3.
 *
 * @param state the conformal state at the point, if known
 */
export function residualConductivity(
  data: ConductivityData,
  s: Substance,
  temperature: number,
  density: number,
  state?: ConformalState,
): number {
  if (data.kind === "correlation") {
    const { residual } = data;
    const delta = (density * s.molarMass) / residual.density;
    const tau = residual.temperature / temperature;
    return residual.rows.reduce((sum, [B, t, d]) => sum + B * tau ** t * delta ** d, 0);
  }
  const reference = loadRefrigerant(data.reference).substance;
  const { temperature: T0, density: rho0, f, h } = state ?? conformalState(s, reference, temperature, density);
  const psi = polynomial(data.psi, density / data.density);
  const scale = Math.sqrt(f) * h ** (-2 / 3) * Math.sqrt(reference.molarMass / s.molarMass);
  return residualConductivity(transportOf(data.reference).conductivity, reference, T0, psi * rho0) * scale;
}

/** A point, K and mol/m3, with its viscosity, Pa s, and its conformal state if known. */
export interface ConductivityPoint {
  readonly temperature: number;
  readonly density: number;
  readonly viscosity?: number;
  readonly state?: ConformalState | undefined;
}

/**
 * Critical enhancement by the simplified crossover of G. A. Olchowy, J. V. Sengers (1989) Int. J. Thermophys. 10:417-426,
 * W/(m K).
 */
function enhancement(c: CriticalEnhancement, fluid: Fluid, at: ConductivityPoint): number {
  const { temperature, density } = at;
  const s = fluid.substance;
  const { temperature: Tc, density: rhoC } = s.reducing;
  const slot = { pressure: 0, byDensity: 0 };
  const susceptibility = (T: number) => {
    pressureAt(s, T, density, slot);
    return (fluid.critical.pressure * density) / (rhoC * rhoC * slot.byDensity);
  };
  const reference = c.reference ?? 1.5 * Tc;
  const excess = susceptibility(temperature) - (susceptibility(reference) * reference) / temperature;
  if (!(excess > 0)) return 0;
  const length = c.zeta0 * (excess / c.Gamma) ** (0.63 / 1.239);
  const { cp, cv } = phaseState(s, { phase: "vapour", temperature, density });
  const q = length * c.qD;
  const omega = (2 / Math.PI) * (((cp - cv) / cp) * Math.atan(q) + (cv / cp) * q);
  const omega0 = (2 / Math.PI) * (1 - Math.exp(-1 / (1 / q + (q * q * (rhoC / density) ** 2) / 3)));
  const viscosity = at.viscosity ?? pureViscosity(fluid, temperature, density, at.state);
  return (
    (density * s.molarMass * cp * c.R0 * BOLTZMANN * temperature * (omega - omega0)) /
    (6 * Math.PI * viscosity * length)
  );
}

/** Thermal conductivity of a pure fluid, W/(m K). */
export function pureConductivity(fluid: Fluid, at: ConductivityPoint): number {
  const data = transportOf(fluid.name).conductivity;
  return (
    diluteConductivity(data, fluid, at.temperature) +
    residualConductivity(data, fluid.substance, at.temperature, at.density, at.state) +
    enhancement(data.critical, fluid, at)
  );
}
