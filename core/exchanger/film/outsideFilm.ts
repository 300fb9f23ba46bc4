/** Water outside a coil: forced across the tube, natural, and both. */
import { silent, type Trace } from "../../kernel/define/steps";
import { filmOfNusselt } from "./equations";
import { crossReynolds, forcedNusselt, mixedNusselt, naturalNusselt, rayleigh } from "./outsideEquations";
import { prandtlOf, type PhaseProperties } from "./fluid";

export interface OutsideFlow {
  /** Outside diameter of the tube, m. */
  readonly outsideDiameter: number;
  /** Velocity between tube and shell, m/s; 0 for still water. */
  readonly velocity: number;
  /** Wall over water, K, from 0. */
  readonly difference: number;
  /** Properties at the mean of wall and water. */
  readonly water: PhaseProperties;
  /** Thermal expansion of the water at that mean, 1/K. */
  readonly expansion: number;
}

export interface OutsideFilm {
  /** W/(m²·K), on the outside area; also forced and natural alone. */
  readonly film: number;
  readonly forced: number;
  readonly natural: number;
}

/**
 * Film of the water at a turn of the coil, treated as a single horizontal cylinder. Single-cylinder relations differ by
 * some 20 to 30 % and ignore neighbouring turns.
 */
export const outsideFilm = (outside: OutsideFlow, trace: Trace = silent): OutsideFilm => {
  const { outsideDiameter: D, water } = outside;
  const Pr = prandtlOf(water, trace);
  const Re = trace.step(crossReynolds, { rho: water.rho, v: outside.velocity, D, mu: water.mu });
  const Ra = trace.step(rayleigh, {
    b: Math.abs(outside.expansion),
    dT: outside.difference,
    D,
    rho: water.rho,
    mu: water.mu,
    Pr,
  });
  const Nf = trace.step(forcedNusselt, { Re, Pr });
  const Nn = trace.step(naturalNusselt, { Ra, Pr });
  const Nu = trace.step(mixedNusselt, { Nf, Nn });
  const film = (Nu_: number): number => filmOfNusselt.code({ Nu: Nu_, k: water.k, D });
  return { film: trace.step(filmOfNusselt, { Nu, k: water.k, D }), forced: film(Nf), natural: film(Nn) };
};
