/** Gas or liquid alone inside a tube, straight or coiled. */
import { silent, type Trace } from "../../kernel/define/steps";
import { frictionFactor } from "../../pipe/straight/friction";
import {
  COIL_TURBULENT_LIMIT,
  coilHighFriction,
  coilLaminarFriction,
  coilLaminarNusselt,
  coilLowFriction,
  coilTurbulentFactor,
  criticalReynolds,
} from "./coiledTubeEquations";
import {
  LAMINAR_LIMIT,
  TURBULENT_LIMIT,
  transitionalNusselt,
  filmOfNusselt,
  frictionDrop,
  gnielinskiNusselt,
  laminarNusselt,
  liquidWallFactor,
  smoothFriction,
  tubeReynolds,
} from "./equations";
import { prandtlOf, type PhaseProperties, type Tube } from "./fluid";

const turbulent = (Re: number, Pr: number, trace: Trace): number =>
  trace.step(gnielinskiNusselt, { f: trace.step(smoothFriction, { Re }), Re, Pr });

/** Nusselt number in a straight smooth tube: Hausen to Re 2,300, Gnielinski from 4,000, linear between. */
export const straightNusselt = (tube: Tube, Re: number, Pr: number, trace: Trace = silent): number => {
  if (Re >= TURBULENT_LIMIT) return turbulent(Re, Pr, trace);
  const laminar = trace.step(laminarNusselt, { D: tube.bore, L: tube.length, Re: Math.min(Re, LAMINAR_LIMIT), Pr });
  if (Re <= LAMINAR_LIMIT) return laminar;
  const Nt = turbulent(TURBULENT_LIMIT, Pr, trace);
  return trace.step(transitionalNusselt, { Nl: laminar, Nt, Re, Ra: LAMINAR_LIMIT, Rb: TURBULENT_LIMIT });
};

/** Nusselt number in a coil: Schmidt laminar to the critical Re, Gnielinski by Schmidt's gain from 22,000, linear between. */
export const coilNusselt = (d: number, Re: number, Pr: number, trace: Trace = silent): number => {
  const full = (at: number): number => trace.step(coilTurbulentFactor, { d }) * turbulent(at, Pr, trace);
  if (Re >= COIL_TURBULENT_LIMIT) return full(Re);
  const critical = trace.step(criticalReynolds, { d });
  const laminar = trace.step(coilLaminarNusselt, { d, Re: Math.min(Re, critical), Pr });
  if (Re <= critical) return laminar;
  const Nt = full(COIL_TURBULENT_LIMIT);
  return trace.step(transitionalNusselt, { Nl: laminar, Nt, Re, Ra: critical, Rb: COIL_TURBULENT_LIMIT });
};

const curvature = ({ bore, coilDiameter }: Tube): number | undefined =>
  coilDiameter === undefined ? undefined : bore / coilDiameter;

/**
 * Film coefficient inside, W/(m²·K), on the inside area.
 *
 * @param flow kg/s in one tube
 * @param wallPrandtl Prandtl number at the wall's temperature: for liquids. A cooled gas needs no correction.
 */
export const insideFilm = (
  tube: Tube,
  fluid: PhaseProperties,
  flow: number,
  wallPrandtl?: number,
  trace: Trace = silent,
): number => {
  const Re = trace.step(tubeReynolds, { m: flow, D: tube.bore, mu: fluid.mu });
  const Pr = prandtlOf(fluid, trace);
  const d = curvature(tube);
  const bulk = d === undefined ? straightNusselt(tube, Re, Pr, trace) : coilNusselt(d, Re, Pr, trace);
  const Nu = wallPrandtl === undefined ? bulk : bulk * trace.step(liquidWallFactor, { Pr, Pw: wallPrandtl });
  return trace.step(filmOfNusselt, { Nu, k: fluid.k, D: tube.bore });
};

/** Darcy friction factor of a smooth tube, straight or coiled. */
export const tubeFriction = (tube: Tube, Re: number, trace: Trace = silent): number => {
  const d = curvature(tube);
  if (d === undefined) return frictionFactor(Re, 0, tube.bore, trace);
  if (Re < trace.step(criticalReynolds, { d })) return trace.step(coilLaminarFriction, { d, Re });
  const f = frictionFactor(Re, 0, tube.bore, trace);
  return trace.step(Re < COIL_TURBULENT_LIMIT ? coilLowFriction : coilHighFriction, { d, f, Re });
};

/** Friction drop of one phase in a tube, Pa. @param flow kg/s in one tube */
export const insideDrop = (
  tube: Tube,
  { rho, mu }: Pick<PhaseProperties, "rho" | "mu">,
  flow: number,
  trace: Trace = silent,
): number => {
  const Re = trace.step(tubeReynolds, { m: flow, D: tube.bore, mu });
  const f = tubeFriction(tube, Re, trace);
  return trace.step(frictionDrop, { f, L: tube.length, D: tube.bore, m: flow, rho });
};
