import type { Fluid } from "../refrigerant";
import { refrigerant } from "../refrigerant";
import { diluteConductivity, residualConductivity } from "./conductivity";
import { diluteViscosity, residualViscosity, transportOf } from "./viscosity";

// The dilute gas is mixed by C. R. Wilke (1950) J. Chem. Phys. 18:517-519 and, for conductivity, by E. A. Mason,
// S. C. Saxena (1958) Phys. Fluids 1:361-369. All above the dilute gas follows corresponding states with the components
// themselves as references, at the blend's own reduced temperature and density (after A. S. Teja, P. Rice (1981) Ind. Eng.
// Chem. Fundam. 20:77-81), linear in the mole fractions.

/** One component at the blend's reduced state: temperature K, density mol/m3. */
function corresponding(fluid: Fluid, temperature: number, density: number) {
  const { reducing } = fluid.substance;
  return fluid.components.map(({ fluid: data, moleFraction }) => {
    const part = refrigerant(data.name);
    const own = part.substance.reducing;
    return {
      part,
      moleFraction,
      transport: transportOf(data.name),
      temperature: (temperature * own.temperature) / reducing.temperature,
      density: (density * own.density) / reducing.density,
    };
  });
}

/** Wilke's weights: for each component, sum_j x_j phi_ij / x_i. */
function wilke(x: readonly number[], viscosity: readonly number[], M: readonly number[]): number[] {
  return x.map((xi, i) =>
    x.reduce((sum, xj, j) => {
      const ratio = 1 + Math.sqrt(viscosity[i]! / viscosity[j]!) * (M[j]! / M[i]!) ** 0.25;
      return sum + (xj * ratio * ratio) / Math.sqrt(8 * (1 + M[i]! / M[j]!)) / xi;
    }, 0),
  );
}

/** Viscosity of a blend, Pa s, at K and mol/m3 of the blend. */
export function blendViscosity(fluid: Fluid, temperature: number, density: number): number {
  const parts = corresponding(fluid, temperature, density);
  const x = parts.map((c) => c.moleFraction);
  const dilute = parts.map((c) => diluteViscosity(c.transport.viscosity, c.part.substance, temperature));
  const weights = wilke(
    x,
    dilute,
    parts.map((c) => c.part.substance.molarMass),
  );
  const unit = ({ molarMass, reducing }: Fluid["substance"]) =>
    Math.sqrt(molarMass * reducing.temperature) * reducing.density ** (2 / 3);
  const gas = dilute.reduce((sum, value, i) => sum + value / weights[i]!, 0);
  const residual = parts.reduce((sum, c) => {
    const own = residualViscosity(c.transport.viscosity, c.part.substance, c.temperature, c.density);
    return sum + (c.moleFraction * own) / unit(c.part.substance);
  }, 0);
  return gas + residual * unit(fluid.substance);
}

/** Thermal conductivity of a blend without critical enhancement, W/(m K), at K and mol/m3 of the blend. */
export function blendConductivity(fluid: Fluid, temperature: number, density: number): number {
  const parts = corresponding(fluid, temperature, density);
  const x = parts.map((c) => c.moleFraction);
  const viscosities = parts.map((c) => diluteViscosity(c.transport.viscosity, c.part.substance, temperature));
  const weights = wilke(
    x,
    viscosities,
    parts.map((c) => c.part.substance.molarMass),
  );
  const gas = parts.reduce(
    (sum, c, i) => sum + diluteConductivity(c.transport.conductivity, c.part, temperature) / weights[i]!,
    0,
  );
  const unit = ({ molarMass, reducing }: Fluid["substance"]) =>
    Math.sqrt(reducing.temperature / molarMass) * reducing.density ** (2 / 3);
  const residual = parts.reduce((sum, c) => {
    const own = residualConductivity(c.transport.conductivity, c.part.substance, c.temperature, c.density);
    return sum + (c.moleFraction * own) / unit(c.part.substance);
  }, 0);
  return gas + residual * unit(fluid.substance);
}
