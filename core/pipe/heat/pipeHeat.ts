/** Steady heat loss of a metre of pipe. Strict SI. */
import { GRAVITY } from "../../numeric/constants";
import { bracketedRoot } from "../../numeric/root";
import { silent, type Trace } from "../../kernel/define/steps";
import {
  groundResistance,
  layerResistance,
  mixedFilm,
  radiationFilm,
  stillAirNusselt,
  windNusselt,
} from "./heatEquations";

export interface Layer {
  readonly inside: number;
  readonly outside: number;
  readonly conductivity: number;
}

export interface Surroundings {
  /** K */
  readonly air: number;
  /** m/s */
  readonly wind: number;
  readonly emissivity: number;
}

export interface HeatLost {
  /** W/m */
  readonly loss: number;
  /** K */
  readonly surface: number;
  /** W/(m² K) */
  readonly convection: number;
  readonly radiation: number;
}

/** Dry air at 1 atm, by the US Standard Atmosphere's viscosity and conductivity. */
function airAt(T: number): { readonly nu: number; readonly k: number; readonly Pr: number } {
  const mu = (1.458e-6 * T ** 1.5) / (T + 110.4);
  const k = (2.64638e-3 * T ** 1.5) / (T + 245.4 * 10 ** (-12 / T));
  const rho = 101325 / (287.0529 * T);
  return { nu: mu / rho, k, Pr: (mu * 1006) / k };
}

function convectionAt(D: number, Ts: number, { air, wind }: Surroundings, trace: Trace): number {
  const T = (Ts + air) / 2;
  const { nu, k, Pr } = airAt(T);
  const Ra = ((GRAVITY * Math.abs(Ts - air)) / T) * (D ** 3 / nu ** 2) * Pr;
  const hn = (trace.step(stillAirNusselt, { Ra, Pr }) * k) / D;
  if (wind === 0) return hn;
  const hf = (trace.step(windNusselt, { Re: (wind * D) / nu, Pr }) * k) / D;
  return trace.step(mixedFilm, { hn, hf });
}

/** Resistance of all layers, K m/W. */
export function layersResistance(layers: readonly Layer[], trace: Trace = silent): number {
  return layers.reduce(
    (sum, { inside: Di, outside: Do, conductivity: k }) =>
      sum + (Do > Di ? trace.step(layerResistance, { Do, Di, k }) : 0),
    0,
  );
}

/** A pipe in air; without layers its surface is as warm as the fluid. */
export function lostToAir(
  D: number,
  fluid: number,
  layers: readonly Layer[],
  around: Surroundings,
  trace: Trace = silent,
): HeatLost {
  const R = layersResistance(layers, trace);
  const { air, emissivity: e } = around;
  const films = (Ts: number, own: Trace = silent): readonly [number, number] => [
    convectionAt(D, Ts, around, own),
    own.step(radiationFilm, { e, Ts, Ta: air }),
  ];
  const outward = (Ts: number): number => {
    const [hc, hr] = films(Ts);
    return (hc + hr) * Math.PI * D * (Ts - air);
  };
  const surface =
    R === 0 || fluid === air
      ? fluid
      : bracketedRoot((Ts) => outward(Ts) * R - (fluid - Ts), air, fluid, { tolerance: 1e-10 }).x;
  const [convection, radiation] = films(surface, trace);
  return { loss: outward(surface), surface, convection, radiation };
}

/** A pipe in the ground. */
export function lostToGround(
  D: number,
  fluid: number,
  ground: number,
  layers: readonly Layer[],
  depth: number,
  soil: number,
  trace: Trace = silent,
): number {
  return (fluid - ground) / (layersResistance(layers, trace) + trace.step(groundResistance, { z: depth, D, k: soil }));
}
