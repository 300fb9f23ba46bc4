import { TRANSPORT } from "../data/transport";
import type { DenseViscosity, TransportData, ViscosityData } from "../data/transportData";
import type { Substance } from "../helmholtz/substance";
import { residualAt, setIsotherm } from "../helmholtz/residual";
import type { Fluid } from "../refrigerant";
import { loadRefrigerant } from "../refrigerant";
import { conformalState, type ConformalState } from "./conformal";

const AVOGADRO = 6.02214076e23;

/** Initial-density dependence (J. C. Rainwater, D. G. Friend (1987) Phys. Rev. A 36:4062): rows b, t of sum b T*^t. */
const RAINWATER_FRIEND = [
  [-19.572881, 0],
  [219.73999, -0.25],
  [-1015.3226, -0.5],
  [2471.0125, -0.75],
  [-3375.1717, -1],
  [2491.6597, -1.25],
  [-787.26086, -1.5],
  [14.085455, -2.5],
  [-0.34664158, -5.5],
] as const;

/** Residual-entropy scaling's universal polynomials (I. H. Bell, A. Laesecke (2016) Purdue conference): liquid and vapour. */
const ENTROPY_LIQUID = [0.6100913843, 0.4508958312, -0.017063, 0.000564];
const ENTROPY_VAPOUR = [0, 1.2, -0.308598, 0.035317];

const polynomial = (c: readonly number[], x: number) => c.reduceRight((sum, k) => sum * x + k, 0);

/** The transport data of a pure fluid. */
export function transportOf(name: string): TransportData {
  const data = TRANSPORT.find((row) => row.name === name);
  if (!data) throw new Error(`${name}: no transport data`);
  return data;
}

/** Kinetic theory with the collision integral of P. D. Neufeld et al. (1972) J. Chem. Phys. 57:1100: Pa s; sigma nm, epsilon K, M kg/mol. */
function kineticViscosity(temperature: number, sigma: number, epsilon: number, M: number): number {
  const t = temperature / epsilon;
  const omega = 1.16145 * t ** -0.14874 + 0.52487 * Math.exp(-0.7732 * t) + 2.16178 * Math.exp(-2.43787 * t);
  return (26.692e-9 * Math.sqrt(M * 1e3 * temperature)) / (sigma * sigma * omega);
}

/** Viscosity of the dilute gas, Pa s, at a temperature in K. */
export function diluteViscosity(data: ViscosityData, s: Substance, temperature: number): number {
  if (data.kind === "conformal") return kineticViscosity(temperature, data.sigma, data.epsilon, s.molarMass);
  if (data.kind === "entropy") {
    // Lennard-Jones parameters from the critical point (T. H. Chung et al. (1988) Ind. Eng. Chem. Res. 27:671-679).
    const sigma = 0.809 * Math.cbrt(1e3 / s.reducing.density);
    return kineticViscosity(temperature, sigma, s.reducing.temperature / 1.2593, s.molarMass);
  }
  const { dilute, sigma, epsilon } = data;
  if (dilute.kind === "kinetic") return kineticViscosity(temperature, sigma, epsilon, s.molarMass);
  if (dilute.kind === "collision") {
    const log = Math.log(temperature / epsilon);
    const integral = Math.exp(dilute.rows.reduce((sum, [a, t]) => sum + a * log ** t, 0));
    return (dilute.C * Math.sqrt(s.molarMass * 1e3 * temperature)) / (sigma * sigma * integral);
  }
  const [a0, a1, a2, a3, a4, a5, a6] = dilute.a as [number, number, number, number, number, number, number];
  const third = Math.cbrt(temperature);
  const root = Math.sqrt(temperature);
  const below =
    a0 + a1 * Math.sqrt(third) + a2 * Math.exp(a3 * third) + (a4 + a5 * third) / Math.exp(third) + a6 * root;
  return (0.0010055 * root) / below;
}

function dense(d: DenseViscosity, s: Substance, temperature: number, density: number): number {
  if (d.kind === "R-744") {
    const T = temperature / d.temperature;
    const rho = (density * s.molarMass) / d.density;
    // The paper's reducing viscosity at the triple point; the number is the square root of 1000 N_A^(2/3).
    const unit =
      (d.density ** (2 / 3) * Math.sqrt(s.gasConstant * d.temperature)) / (s.molarMass ** (1 / 6) * 84446887.43579945);
    return unit * (d.c1 * T * rho ** 3 + (rho ** 2 + rho ** d.gamma) / (T - d.c2));
  }
  const delta = density / d.density;
  const tau = d.temperature / temperature;
  const sum = (rows: readonly (readonly [number, number])[]) => rows.reduce((total, [c, t]) => total + c * tau ** t, 0);
  const delta0 = sum(d.g) / sum(d.p);
  const first = d.a.reduce(
    (total, [a, dd, t, gamma, l]) => total + a * delta ** dd * tau ** t * Math.exp(gamma * delta ** l),
    0,
  );
  const free = d.f.reduce((total, [f, dd, t]) => total + f * delta ** dd * tau ** t, 0);
  return first + free * (1 / (delta0 - delta) - 1 / delta0);
}

/** The conformal state that a fluid's viscosity and conductivity share; undefined where they don't share one. */
export function sharedState(
  { viscosity, conductivity }: TransportData,
  s: Substance,
  temperature: number,
  density: number,
): ConformalState | undefined {
  if (viscosity.kind !== "conformal" || conductivity.kind !== "conformal") return undefined;
  if (viscosity.reference !== conductivity.reference) return undefined;
  return conformalState(s, loadRefrigerant(viscosity.reference).substance, temperature, density);
}

/**
 * The part of a correlation above the dilute gas, Pa s: the initial-density and the dense part, at K and mol/m3.
 *
 * @param state the conformal state at the point, if known
 */
export function residualViscosity(
  data: ViscosityData,
  s: Substance,
  temperature: number,
  density: number,
  state?: ConformalState,
): number {
  if (data.kind === "conformal") return conformalViscosity(data, s, temperature, density, state);
  if (data.kind === "entropy") return entropyViscosity(data, s, temperature, density);
  const t = temperature / data.epsilon;
  const B = RAINWATER_FRIEND.reduce((sum, [b, power]) => sum + b * t ** power, 0);
  const perMole = AVOGADRO * (data.sigma * 1e-9) ** 3;
  const initial = diluteViscosity(data, s, temperature) * B * perMole * density;
  return initial + dense(data.dense, s, temperature, density);
}

function conformalViscosity(
  data: Extract<ViscosityData, { kind: "conformal" }>,
  s: Substance,
  temperature: number,
  density: number,
  state?: ConformalState,
): number {
  const reference = loadRefrigerant(data.reference);
  const known = state ?? conformalState(s, reference.substance, temperature, density);
  const { temperature: T0, density: rho0, f, h } = known;
  const psi = polynomial(data.psi, density / data.density);
  const masses = Math.sqrt(s.molarMass / reference.substance.molarMass);
  const scale = Math.sqrt(f) * h ** (-2 / 3) * masses;
  return residualViscosity(transportOf(data.reference).viscosity, reference.substance, T0, psi * rho0) * scale;
}

function entropyViscosity(
  data: Extract<ViscosityData, { kind: "entropy" }>,
  s: Substance,
  temperature: number,
  density: number,
): number {
  setIsotherm(s.residual, s.reducing.temperature / temperature);
  residualAt(s.residual, density / s.reducing.density);
  const o = s.residual.out;
  const x = (density * s.gasConstant * (o[3]! - o[0]!)) / data.critical;
  const share = 1 / (1 + Math.exp(-100 * (x - 2)));
  const exponent = share * polynomial(ENTROPY_LIQUID, x) + (1 - share) * polynomial(ENTROPY_VAPOUR, x);
  return diluteViscosity(data, s, temperature) * data.C * (Math.exp(exponent) - 1);
}

/** Viscosity of a pure fluid, Pa s, at K and mol/m3. */
export function pureViscosity(fluid: Fluid, temperature: number, density: number, state?: ConformalState): number {
  const data = transportOf(fluid.name).viscosity;
  const s = fluid.substance;
  return diluteViscosity(data, s, temperature) + residualViscosity(data, s, temperature, density, state);
}
