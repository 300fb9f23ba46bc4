import type { Substance } from "../helmholtz/substance";
import type { Fluid } from "../refrigerant";
import { loadRefrigerant } from "../refrigerant";
import { diluteConductivity, residualConductivity } from "./conductivity";
import { diluteViscosity, residualViscosity, sharedState, transportOf } from "./viscosity";

// The dilute gas is mixed by C. R. Wilke (1950) J. Chem. Phys. 18:517-519 and, for conductivity, by E. A. Mason,
// S. C. Saxena (1958) Phys. Fluids 1:361-369. The part above the dilute gas follows corresponding states with the components
// themselves as references, at the blend's own reduced temperature and density (after A. S. Teja, P. Rice (1981) Ind. Eng.
// Chem. Fundam. 20:77-81), linear in the mole fractions.

/** One component at the blend's reduced state: temperature K, density mol/m3. */
function corresponding(fluid: Fluid, temperature: number, density: number) {
  const { reducing } = fluid.substance;
  return fluid.components.map(({ fluid: data, moleFraction }) => {
    const part = loadRefrigerant(data.name);
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

type Parts = ReturnType<typeof corresponding>;

/** The dilute gas: each component's viscosity and weight in the mixture. */
function diluteGas(parts: Parts, temperature: number) {
  const dilute = parts.map((c) => diluteViscosity(c.transport.viscosity, c.part.substance, temperature));
  const weights = wilke(
    parts.map((c) => c.moleFraction),
    dilute,
    parts.map((c) => c.part.substance.molarMass),
  );
  return { dilute, weights };
}

const viscosityUnit = ({ molarMass, reducing }: Substance): number =>
  Math.sqrt(molarMass * reducing.temperature) * reducing.density ** (2 / 3);

const conductivityUnit = ({ molarMass, reducing }: Substance): number =>
  Math.sqrt(reducing.temperature / molarMass) * reducing.density ** (2 / 3);

/** Viscosity, Pa s, and thermal conductivity without critical enhancement, W/(m K), of a blend, at K and mol/m3 of it. */
export function blendTransport(fluid: Fluid, temperature: number, density: number) {
  const parts = corresponding(fluid, temperature, density);
  const { dilute, weights } = diluteGas(parts, temperature);
  let [viscosity, conductivity, residual, conducting] = [0, 0, 0, 0];
  parts.forEach(({ part, transport, moleFraction, temperature: T, density: rho }, i) => {
    const s = part.substance;
    const state = sharedState(transport, s, T, rho);
    viscosity += dilute[i]! / weights[i]!;
    conductivity += diluteConductivity(transport.conductivity, part, temperature) / weights[i]!;
    residual += (moleFraction * residualViscosity(transport.viscosity, s, T, rho, state)) / viscosityUnit(s);
    conducting += (moleFraction * residualConductivity(transport.conductivity, s, T, rho, state)) / conductivityUnit(s);
  });
  return {
    viscosity: viscosity + residual * viscosityUnit(fluid.substance),
    conductivity: conductivity + conducting * conductivityUnit(fluid.substance),
  };
}
